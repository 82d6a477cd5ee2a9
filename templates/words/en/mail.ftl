# The mail and the issues.
