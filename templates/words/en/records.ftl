# The records pack for an inspector.
