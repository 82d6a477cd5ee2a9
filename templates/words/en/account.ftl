# The refrigerant account and the leak rates.
