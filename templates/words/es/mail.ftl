# El correo y las ediciones.
