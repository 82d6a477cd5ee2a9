# Worte der Regelwerke, nach ihrem Englisch.
