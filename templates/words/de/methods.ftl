# Namen und Quellen der Rechenverfahren, nach ihrem Englisch.
