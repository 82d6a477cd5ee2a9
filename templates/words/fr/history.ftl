# L’historique d’une installation ou d’un site.
