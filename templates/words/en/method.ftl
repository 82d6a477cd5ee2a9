# Method, limits, readings, rooms, the drawn circuit.
