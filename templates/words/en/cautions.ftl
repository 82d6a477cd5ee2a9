# Cautions that the page carries.
