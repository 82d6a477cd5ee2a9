# Wo die Anlage nach den geltenden Regeln steht, und was sie verlangen.
