# Le courriel et les éditions.
