# Wörter der Notizen, die auf der Seite stehen, nach ihrem Englisch.
