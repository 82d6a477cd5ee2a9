# Pressure and vacuum tests: verdicts, reasons, charts, workings.
