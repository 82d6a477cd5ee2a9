# Druck- und Vakuumprüfungen: Urteile, Gründe, Diagramme, Rechengänge.

# Überschriften und Angaben einer Prüfung.

pressure-test-heading = Druckprüfung { $test }: { $part }
vacuum-test-heading = Vakuumprüfung { $test }: { $part }
test-part-whole = { $circuit ->
    [none] der ganze Kreislauf
   *[other] der ganze Kreislauf { $circuit }
}
test-part-section = { $about ->
    [none] Abschnitt { $section }
   *[other] { $about } (Abschnitt { $section })
}{ $circuit ->
    [none] {""}
   *[other] {" "}von Kreislauf { $circuit }
}
test-reading = { $moment }: { $pressure }{ $temperature ->
    [none] {""}
   *[other] , { $temperature }
}
test-gas = Prüfgas
test-start = Beginn
test-end = Ende
test-held = Gehalten
test-highest-allowable = Maximal zulässiger Druck (PS)
test-gauge = Messgerät
test-limit-asked = Verlangter Grenzwert
test-isolated = Abgesperrt
test-watched = Beobachtet
test-warmest-pipe = Wärmste Leitung
test-leak-limit = Grenzwert für ein Leck

# Ergebnisse einer Prüfung.

result-expected = Erwarteter Enddruck
result-lost = Druckverlust ohne Temperatureinfluss
result-mean-leak = Mittleres Leck
result-largest-leak = Größtes noch mögliches Leck
result-as-nitrogen = Als Stickstoff
result-smallest-shown = Kleinstes nachweisbares Leck
result-mean-rise = Mittlerer Anstieg, Leck und Feuchte zusammen
result-late-rise = Anstieg im letzten Drittel
result-smallest-leak = Kleinstmögliches Leck
result-as-air = Als einströmende Luft
result-water = Wasser allein erreicht höchstens

# Diagramme.

chart-pressure-gauge = Druck (Überdruck)
chart-pressure-absolute = Druck (absolut)
chart-time-since-start = Zeit seit dem Beginn
chart-time-since-isolation = Zeit seit dem Absperren
chart-measured = gemessen
chart-corrected = auf die Anfangstemperatur umgerechnet
chart-alt-corrected = Auf die Temperatur am Anfang umgerechnet: von { $first } auf { $last }.
chart-late-slope = Steigung des letzten Drittels
chart-largest-leak = größtes noch mögliches Leck, für sich allein
chart-limit = { $by ->
    [none] Grenzwert, { $limit }
    [maker] Grenzwert des Herstellers, { $limit }
   *[other] Grenzwert ({ $by }), { $limit }
}
chart-alt = { $name } über { $time }: von { $first } am Anfang bis { $last } am Ende{ $limit ->
    [none] {""}
   *[other] ; { $limit }
}.

# Unsicherheitsbilanz einer Druckprüfung.

budget-title = Unsicherheitsbilanz des Druckverlusts
budget-contribution = Beitrag
budget-standard-uncertainty = Standardunsicherheit, { $unit }
budget-share = Anteil an der Varianz
budget-from = Herkunft
budget-together = Gesamt
budget-root = Wurzel aus der Summe der Quadrate
budget-gauge-start = Manometer am Anfang
budget-gauge-end = Manometer am Ende
budget-thermometer = Thermometer, je 0,3 K an Anfang und Ende
budget-lag = Gas folgt der Leitung verzögert, je 0,7 K an Anfang und Ende
budget-not-followed = 10 % der Temperaturänderung nicht mitgemacht
budget-air = Änderung des Luftdrucks, höchstens 5 hPa
budget-scatter = Streuung um die Ausgleichskurve, mit ihrer Autokorrelation
budget-share-followed = Anteil der Erwärmung, dem das Gas gefolgt ist, aus dem Ausgleich
budget-step = Schrittweite des Manometers
help-temperature = Die Temperatur macht { $share } der Varianz aus: Um kleinere Lecks zu zeigen, einen ganzen Tag bei gleichmäßigerer Temperatur aufzeichnen{ $finer ->
    [little] ; ein feineres Manometer brächte wenig
   *[some] {""}
}.
help-scatter = Was der Ausgleich der Aufzeichnung übrig lässt, macht { $share } der Varianz aus: Um kleinere Lecks zu zeigen, Leitung und Thermometer beschatten und Türen und Lüfter lassen, wie sie sind{ $finer ->
    [little] ; ein feineres Manometer brächte wenig
   *[some] {""}
}.
help-gauge = Das Manometer macht { $share } der Varianz aus: Um kleinere Lecks zu zeigen, ein feineres Manometer ablesen oder länger halten.
help-air = Der Luftdruck macht { $share } der Varianz aus: Um kleinere Lecks zu zeigen, am Anfang und am Ende ein Barometer ablesen oder absolut messen{ $finer ->
    [little] ; ein feineres Manometer brächte wenig
   *[some] {""}
}.

# Was eine Druckprüfung zeigt, als Satz und in wenigen Worten.

hold-nothing-larger = Es zeigte sich kein Leck über { $size }.
hold-nothing-larger-short = Kein Leck über { $size } gezeigt
hold-leak = Es ging mehr Druck verloren, als Temperatur und Ablesungen erklären: Der geprüfte Teil ist undicht.
hold-leak-short = Druck ging verloren
hold-inconclusive = Die Prüfung entscheidet nicht.
hold-inconclusive-short = Nicht entschieden
hold-no-size = Der Druck hielt innerhalb seiner Unsicherheit; ohne das Volumen lässt sich keine Leckgröße angeben.
hold-no-size-short = Druck hielt; keine Größe angebbar
hold-strength = Festigkeitsprüfung: Sie sagt nichts über kleine Lecks.
hold-strength-short = Nur Festigkeitsprüfung

# Warum eine Druckprüfung nicht entscheidet, und was zur Klärung führt.

hold-reason-no-temperature = Die Temperatur wurde nicht an beiden Enden abgelesen, so dass sich eine Druckänderung nicht von Erwärmung oder Abkühlung trennen lässt. Zur Klärung: die Temperatur der Leitung zu jedem Druck ablesen oder aufzeichnen.
hold-reason-nitrogen-only = Die Temperaturkorrektur gibt es nur für Stickstoff.
hold-reason-outside-table = Die Ablesungen liegen außerhalb der Tabelle für Stickstoff (0,5 bis 60 bar absolut, −40 bis 70 °C).
hold-reason-log-short = Die Aufzeichnung ist kürzer als 23 Stunden: Nur ihre erste und ihre letzte Zeile werden ausgewertet, die Zeilen dazwischen gezeichnet.
hold-reason-log-unfit = Die Aufzeichnung hat für einen Ausgleich zu wenige Zeilen oder Zeilen außerhalb der Tabelle für Stickstoff: Nur ihre erste und ihre letzte Zeile werden ausgewertet.
hold-reason-unsteady = Die Prüfung war kürzer als 23 Stunden, und ihre Temperaturen am Anfang und am Ende liegen mehr als 2 K auseinander: Das Gas kann hinter der Leitung um mehr zurückbleiben, als ein Leck zeigen würde.
hold-settle-unsteady = Zur Klärung: noch einmal ablesen, wenn die Leitung bis auf 2 K so warm ist wie am Anfang, oder Druck und Temperatur 23 Stunden oder länger aufzeichnen.
hold-reason-rose = Der Druck stieg stärker, als die Ablesungen erklären; zu prüfen ist, wo das Thermometer sitzt und ob ein Ventil Gas einließ.
hold-reason-no-volume = Das geprüfte Volumen ist nicht notiert, so dass sich keine Leckgröße angeben lässt; es gehört ins Verzeichnis oder zur Prüfung.
hold-reason-coarse = Was sie hätte zeigen können, ist gröber als der verlangte Grenzwert. Zur Klärung: länger halten, bei gleichmäßigerer Temperatur, oder einen kleineren Abschnitt prüfen.
hold-reason-near = Der Verlust liegt zu nah am verlangten Grenzwert, um so oder so zu entscheiden. Zur Klärung: die Prüfung länger wiederholen oder die Verbindungen mit Schaummittel oder Lecksuchgerät absuchen.

# Rechengänge einer Druckprüfung: Überschriften und Anmerkungen.

hold-expected-title = Am Ende der Prüfung zu erwartender Druck
hold-change-title = Druckverlust über das hinaus, was die Temperatur erklärt
hold-leak-title = Mittleres Leck während der Prüfung
hold-limit-title = Größtes Leck, das diese Prüfung möglich lässt
hold-smallest-title = Kleinstes Leck, das diese Prüfung hätte zeigen können
hold-limit-mass-title = Dasselbe Leck als Masse Stickstoff beim Druck der Prüfung
hold-note-hydrogen = Fünf Prozent Wasserstoff im Stickstoff sind in Z nicht berücksichtigt.
hold-note-gauge-cancels = Ein gleichbleibender Fehler des Manometers hebt sich auf, da beide Ablesungen vom selben Manometer stammen.
hold-note-smaller = Ein kleineres Leck lässt sich mit dieser Prüfung nicht von gar keinem unterscheiden.
hold-note-gaps = Die Aufzeichnung hat Lücken von mehr als einer Stunde; was darin geschah, ist nicht zu sehen.
hold-note-temperature-still = Die Temperatur bewegte sich kaum, so dass die Aufzeichnung nicht zeigt, wie das Gas ihr folgt; es wird angenommen, dass es folgt.

# Ob der Grenzwert einer Vakuumprüfung eingehalten wurde.

vacuum-limit-met = Der Druck blieb { $within } lang unter { $limit }{ $by ->
    [none] {""}
    [maker] {" "}(Grenzwert des Herstellers)
   *[other] {" "}(Grenzwert: { $by })
}: Grenzwert eingehalten.
vacuum-limit-not-met = Der Druck blieb nicht { $within } lang unter { $limit }{ $by ->
    [none] {""}
    [maker] {" "}(Grenzwert des Herstellers)
   *[other] {" "}(Grenzwert: { $by })
}: Grenzwert nicht eingehalten.
vacuum-limit-too-short = Nur { $watched } lang beobachtet; verlangt sind { $within }{ $by ->
    [none] {""}
    [maker] {" "}(Grenzwert des Herstellers)
   *[other] {" "}(Grenzwert: { $by })
}.
vacuum-no-limit = Kein Grenzwert für den Druck ist notiert.

# Was eine Vakuumprüfung über ein Leck zeigt, und was zur Klärung führt.

vacuum-nothing-larger = Es zeigte sich kein Leck über { $upper }.
vacuum-nothing-larger-above-hold = Es zeigte sich kein Leck über { $upper }, aber das Vakuum wurde nicht gehalten: Feuchte, Gas aus dem Öl oder nicht tief genug evakuiert.
vacuum-leak = Der Druck steigt geradlinig, wie bei einströmender Luft: zwischen { $lower } und { $upper }.
vacuum-moisture = { $upper ->
    [none] Der Anstieg flacht ab, wie bei Feuchte und Gas aus dem Öl; ohne das Volumen lässt sich keine Leckgröße angeben. Trocknen und wiederholen.
   *[other] Der Anstieg flacht ab, wie bei Feuchte und Gas aus dem Öl; ein Leck bis { $upper } kann sich darin verbergen. Trocknen und wiederholen.
}
vacuum-levels-above-water = { $upper ->
    [none] Der Anstieg flacht über dem ab, was Wasser bei dieser Temperatur erreichen kann: nicht Wasser allein, sondern Kältemittel aus dem Öl oder Luft.
   *[other] Der Anstieg flacht über dem ab, was Wasser bei dieser Temperatur erreichen kann: nicht Wasser allein, sondern Kältemittel aus dem Öl oder Luft; ein Leck bis { $upper } kann sich darin verbergen.
}
vacuum-bending = Die Prüfung entscheidet nicht: Der Druck steigt immer langsamer, und abgegebenes Gas lässt sich nicht von einem Leck bis { $upper } unterscheiden.
vacuum-uneven = Die Prüfung entscheidet nicht: Der Druck steigt bald schneller, bald langsamer, was ein gleichmäßiges Leck nicht tut; bis { $upper } bleibt möglich.
vacuum-coarse = Die Prüfung entscheidet nicht: Bis { $upper } bleibt möglich, mehr als der verlangte Grenzwert.
vacuum-no-size = Der Anstieg flacht nicht ab; ohne das Volumen lässt sich keine Leckgröße angeben.
vacuum-acceptance-only = Über ein Leck sagt die Prüfung nichts weiter aus.
vacuum-settle-second-fact = Ein Anstieg allein ist noch kein Nachweis eines Lecks. Zur Klärung: eine Druckprüfung mit Stickstoff und Schaummittel, oder eine Stunde weiter evakuieren und den Anstieg wiederholen; steigt das letzte Drittel wieder so schnell, strömt Luft ein, steigt es langsamer, ist es abgegebenes Gas.
vacuum-settle-dry = Zur Klärung: das Vakuum mit trockenem Stickstoff brechen, den Filtertrockner wechseln, erneut evakuieren, bis es hält, und den Anstieg wiederholen. Eine feuchte Anlage verbirgt ein Leck; dies ist also keine Freigabe.
vacuum-settle-above-water = Zur Klärung: bei warmem Öl erneut evakuieren, den Anstieg wiederholen und die Verbindungen unter Druck mit Stickstoff und Schaummittel prüfen.
vacuum-settle-uneven = Zur Klärung: erneut evakuieren, Ventile, Schläuche und Temperatur lassen, wie sie sind, und den Anstieg wiederholen. Eine Druckprüfung mit Stickstoff zeigt ein Leck, das kommt und geht, wenn es zu dieser Zeit offen ist.
vacuum-settle-coarse = Zur Klärung: ein längerer Anstieg, ein feineres Messgerät oder ein kleinerer Teil des Kreislaufs; oder eine Druckprüfung mit Stickstoff und Schaummittel.
vacuum-settle-no-size = Zur Klärung: das geprüfte Volumen notieren oder die Verbindungen unter Druck mit Stickstoff und Schaummittel prüfen.
vacuum-no-place = Eine Vakuumprüfung zeigt nicht, wo ein Leck liegt.

# Warum eine Vakuumprüfung nicht mehr zeigt.

vacuum-reason-above-water = Der Druck überschritt, was Wasser allein an der wärmsten Stelle erreichen kann: Auch Luft oder Kältemittel kam hinzu.
vacuum-reason-water-unchecked = Weder die wärmste Leitung noch die Luft wurde gemessen, so dass nicht geprüft ist, ob Wasser diesen Druck erreichen kann.
vacuum-reason-no-volume = Das geprüfte Volumen ist nicht notiert, so dass sich keine Leckgröße angeben lässt.
vacuum-reason-no-leak-limit = Kein Grenzwert für ein Leck ist notiert, so dass der Anstieg an keinem gemessen wird.
vacuum-reason-inward = { $refrigerant } siedet in den kalten Teilen dieser Anlage unter dem Druck der Luft, so dass ein Leck dort im Betrieb Luft ansaugt, wie in dieser Prüfung.
vacuum-reason-two-readings = Zwei Ablesungen und keine Aufzeichnung, so dass die Prüfung nur zeigt, ob der Grenzwert eingehalten wurde: Zwischen zwei Ablesungen steigt der Druck durch ein Leck, durch Feuchte und durch Gas aus dem Öl gleich.
vacuum-reason-moving-temperature = Die Temperatur bewegte sich um { $moved }, mehr als { $most }, so dass die Prüfung nur zeigt, ob der Grenzwert eingehalten wurde: Ein Anstieg bei veränderter Temperatur zeigt die Wärme und nicht das Leck.
vacuum-reason-no-temperature = Keine Temperatur wurde aufgezeichnet: Dass sie gleich blieb, wird vorausgesetzt.
vacuum-reason-short = Die Aufzeichnung ist kürzer als 20 Minuten, so dass die Prüfung nur zeigt, ob der Grenzwert eingehalten wurde.
vacuum-reason-few-rows = Die Aufzeichnung hat weniger als 30 Zeilen, so dass die Prüfung nur zeigt, ob der Grenzwert eingehalten wurde.
vacuum-reason-uneven = Ein Drittel der Aufzeichnung hat zu wenige Zeilen, so dass die Prüfung nur zeigt, ob der Grenzwert eingehalten wurde.
vacuum-reason-not-vacuum = Die Aufzeichnung geht über ein Zehntel des Luftdrucks hinaus, wo ein Leck nicht mehr gleichmäßig einströmt, so dass die Prüfung nur zeigt, ob der Grenzwert eingehalten wurde.
vacuum-reason-constant = Das Messgerät zeigte in jeder Zeile denselben Wert, wie eines, das hängt oder abgesperrt ist, so dass die Prüfung nur zeigt, ob der Grenzwert eingehalten wurde.
vacuum-reason-stopped = Der Anstieg brach von einer Zeile zur nächsten ab, wie am oberen Ende eines Messbereichs, so dass die Prüfung nur zeigt, ob der Grenzwert eingehalten wurde.
vacuum-reason-fell = Der Druck fiel, durch die Pumpe, durch Abkühlung, durch ein wanderndes Messgerät oder ins Öl, so dass die Prüfung nur zeigt, ob der Grenzwert eingehalten wurde.

# Rechengänge einer Vakuumprüfung: Überschriften und Anmerkungen.

vacuum-rise-title = Mittlerer Druckanstieg im Vakuum
vacuum-late-title = Anstieg im letzten Drittel, Leck und Ausgasung zusammen
vacuum-whole-title = Anstieg der ganzen Aufzeichnung längs einer Geraden
vacuum-mass-title = Dasselbe Leck als Masse einströmender Luft, über ein Jahr von 365 Tagen
vacuum-note-upper = Nicht darin: ein Fehler des Messgeräts im Verhältnis zu seiner Anzeige, ein Leck, das kommt und geht, und Gas, das abkühlendes Öl oder die Wände wieder aufnehmen.
vacuum-note-rise = Feuchte und Ausgasung erhöhen den Druck wie ein Leck: Bis auf die Unsicherheit von Volumen und Messgerät, die hier nicht errechnet ist, ist ein Leck allein nicht größer als dies, es sei denn, die Anlage kühlte während der Prüfung ab.
water-title = Höchster Druck, den Wasser allein erreichen kann
water-note-air = Die wärmste Leitung wurde nicht gemessen: mit der Temperatur der Luft gerechnet.

# Was der Grenzwert einer Prüfung im Betrieb bedeutet.

service-note-between = Viskose und molekulare Strömung sind die beiden Enden: Was durch die Öffnung austräte, liegt dazwischen; wo, kann die Prüfung nicht zeigen.
service-note-molecular-only = Die viskose Strömung lässt sich nicht errechnen, da die Viskosität eines der Gase nicht vorliegt.
service-note-inwards = Nicht über dem Druck der Außenluft: Hier träte durch ein Leck Luft ein, nicht Kältemittel aus.
service-pressure-title = Druck von { $refrigerant } im Betrieb
service-viscous-title = Dieser Grenzwert im Betrieb, als Dampf von { $refrigerant }, viskose Strömung
service-molecular-title = Dieser Grenzwert im Betrieb, als Dampf von { $refrigerant }, molekulare Strömung
service-saturation = Sättigung von { $refrigerant }, CoolProp 8.0.0
service-note-no-saturation = Bei 40 °C (20 °C auf einer Niederdruckseite) liegt kein Sättigungsdruck vor, wie oberhalb des kritischen Punktes: Für den Betrieb steht der maximal zulässige Druck (PS) des Typenschilds.
service-note-vapour = Als Dampf. Ein Leck unter dem Flüssigkeitsspiegel lässt mehr heraus, was hier nicht errechnet ist.
service-note-year = Ein Jahr hat 365 Tage, und der Druck gilt das ganze Jahr als gleich.
molar-mass-of = { $mass } ({ $gas })
viscosity-of = { $viscosity } ({ $gas })
