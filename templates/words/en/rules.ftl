# Where the system stands under the rules in force, and what they ask for.
