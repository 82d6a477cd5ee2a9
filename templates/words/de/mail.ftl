# Die E-Mail und die Ausgaben.
