# El balance de refrigerante y las tasas de fuga.
