# The first page: head, outcome, facts, what is open, what comes next.

visit = Visit
the-contractor = The contractor
certificate-of-firm = certificate { $number }
certificate-of-person = certificate { $number }
certificate-with-category = certificate { $number }, category { $category }
signs-for-contractor = For the contractor
signs-for-operator = Received for the operator
state-earlier-repair-holding = repaired earlier, holding
state-repaired-proved = repaired, proved
state-repaired-not-proved = repaired, not proved
state-temporary = temporary repair
state-isolated = isolated
state-left-open = left open
state-suspect = suspect
state-suspect-cleared = suspect cleared
class-flammable = { $class }, flammable
class-not-flammable = { $class }, not flammable
plant-operator = Operator
plant-address = Address
plant-category = Category
plant-in-service-since = In service since
plant-complaint = Complaint
plant-air-outside = Air outside
plant-left = Left
plant-back-in-normal-operation = Back in normal operation
