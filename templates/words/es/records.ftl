# La carpeta de registros para un inspector.
