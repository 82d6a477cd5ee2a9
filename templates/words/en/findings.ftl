# Findings and points: facts, evidence, states.
