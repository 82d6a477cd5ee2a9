# Le bilan du fluide et les taux de fuite.
