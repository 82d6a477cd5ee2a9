# The history of a system or a site.
