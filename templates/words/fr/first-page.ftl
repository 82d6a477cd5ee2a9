# La première page : en-tête, résultat, faits, points ouverts, échéances.

visit = Visite
the-contractor = L’entreprise
certificate-of-firm = certificat { $number }
certificate-of-person = certificat { $number }
certificate-with-category = certificat { $number }, catégorie { $category }
signs-for-contractor = Pour l’entreprise
signs-for-operator = Reçu pour l’exploitant
state-earlier-repair-holding = réparé auparavant, tient
state-repaired-proved = réparé, prouvé
state-repaired-not-proved = réparé, non prouvé
state-temporary = réparation provisoire
state-isolated = isolé
state-left-open = laissé ouvert
state-suspect = suspect
state-suspect-cleared = soupçon levé
class-flammable = { $class }, inflammable
class-not-flammable = { $class }, non inflammable
plant-operator = Exploitant
plant-address = Adresse
plant-category = Catégorie
plant-in-service-since = En service depuis
plant-complaint = Réclamation
plant-air-outside = Air extérieur
plant-left = Laissé
plant-back-in-normal-operation = Retour à la marche normale
