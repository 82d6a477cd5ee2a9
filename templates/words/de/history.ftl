# Die Vorgeschichte einer Anlage oder eines Standorts.
