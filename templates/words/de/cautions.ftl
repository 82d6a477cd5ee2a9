# Warnungen, die die Seite trägt: jede beginnt klein und endet ohne Punkt, beides ergänzt die Seite.
# Unter jeder steht, warum sie wichtig ist; ihr Englisch ist `matters` in src/caution.

caution-background-hides-leak = maßgebend war ein Lecksuchgerät in Luft, die schon Kältemittel enthielt
phrase-the-detector-takes-the-gas-in-the-air-for-its-zero-or-alarms-ever = Das Gerät nimmt das Gas in der Luft als Nullpunkt oder schlägt überall an: Ein kleines Leck fällt nicht auf.
caution-brazed-without-purge = diese Verbindung wurde ohne Stickstoffspülung hartgelötet
phrase-scale-forms-inside-the-hot-pipe-comes-loose-and-blocks-driers-str = Im heißen Rohr bildet sich Zunder, löst sich und verstopft Filtertrockner, Siebe und Ventile.
caution-bubbles-before-detector = an „{ $finding }“ wurde { $method ->
    [electronic] mit dem elektronischen Lecksuchgerät
    [tracer] mit Spürgas
   *[other] mit der Lecksuchlampe
} erst nach dem Schaummittel gesucht
phrase-solution-closes-small-leaks-for-a-while-and-wets-or-poisons-a-sen = Schaummittel verschließt kleine Lecks für eine Weile und benetzt oder vergiftet einen Sensor: Stille danach zeigt wenig, und ein Alarm kann vom Schaummittel kommen.
caution-certificate-category-wrong = die Kategorie { $category } von { $person } deckt diese Arbeit nicht ab
phrase-the-law-asks-for-a-certificate-that-covers-the-work-what-was-done = Das Recht verlangt ein Zertifikat, das die Arbeit abdeckt: Was ohne ein solches getan wurde, zählt womöglich nicht.
caution-certificate-expired = das Zertifikat von { $person } war am { $day } abgelaufen
phrase-work-on-refrigerant-circuits-is-for-certified-people-a-leak-check = Arbeiten am Kältekreislauf sind Sache zertifizierter Personen; eine Dichtheitskontrolle oder Reparatur durch jemand anderen zählt womöglich nicht.
caution-certificate-missing = { $person } hat am Kältekreislauf gearbeitet, und das Anlagenbuch enthält kein Zertifikat dieser Person
phrase-work-on-refrigerant-circuits-is-for-certified-people-and-the-reco = Arbeiten am Kältekreislauf sind Sache zertifizierter Personen, und die Aufzeichnung muss deren Zertifikat nennen; eine Dichtheitskontrolle oder Reparatur durch jemanden ohne Zertifikat zählt womöglich nicht.
caution-charged-without-evacuation = { $circuit ->
    [none] die Anlage
   *[other] Kreislauf { $circuit }
} wurde nach Prüfung „{ $test }“ gefüllt, ohne zwischendurch evakuiert zu werden
phrase-test-gas-and-moisture-left-inside-raise-the-pressures-spoil-the-o = Prüfgas und Feuchtigkeit, die darin bleiben, erhöhen die Drücke, verderben das Öl und machen die Füllmenge und jede spätere Druckmessung zweifelhaft.
caution-cylinder-does-not-add-up = Flasche „{ $cylinder }“ wog { $mass } { $than ->
    [more] mehr
   *[less] weniger
} als bei der letzten Wägung
phrase-refrigerant-went-into-or-out-of-the-cylinder-that-no-note-tells-o = In die Flasche kam Kältemittel, oder es kam heraus, ohne dass eine Notiz davon berichtet; um so viel stimmt die Kältemittelbilanz nicht.
caution-detector-not-proved = { $detector ->
    [none] das Lecksuchgerät
   *[other] Lecksuchgerät „{ $detector }“
} wurde am { $day } nicht an einem Prüfleck erprobt
phrase-a-sensor-that-is-worn-flooded-or-switched-off-is-silent-everywher = Ein Sensor, der verbraucht, übersättigt oder ausgeschaltet ist, bleibt überall still, und Stille liest sich wie dicht.
caution-drier-not-replaced = der Kreislauf wurde hier geöffnet, und von seinem Filtertrockner ist nichts notiert
phrase-a-drier-that-has-been-open-to-the-air-takes-up-moisture-and-is-so = Ein Filtertrockner, der an der Luft offen war, nimmt Feuchtigkeit auf und ist bald erschöpft; Wasser, das darin bleibt, bildet Säure, Eis am Expansionsventil und neue Lecks.
caution-dye-from-earlier-leak = das Fluoreszenzmittel an „{ $finding }“ kann von einem früheren Leck stammen
phrase-dye-stays-where-it-came-out-and-glows-for-years-this-may-be-the-o = Fluoreszenzmittel bleibt, wo es austrat, und leuchtet jahrelang: Dies kann das des alten Lecks sein.
caution-flame-near-flammable = eine offene Flamme ({ $method ->
    [halide] Lecksuchlampe
   *[other] { $method }
}) wurde an einem Kreislauf mit { $refrigerant } benutzt
phrase-leaking-gas-can-catch-fire-or-explode-at-the-flame = Austretendes Gas kann sich an der Flamme entzünden oder explodieren.
caution-gas-added-leak-not-found = in { $circuit ->
    [none] die Anlage
   *[other] Kreislauf { $circuit }
} wurde Kältemittel nachgefüllt, das Leck wurde nicht gefunden
phrase-refrigerant-is-not-used-up-what-was-added-will-leak-too-until-the = Kältemittel verbraucht sich nicht: Was nachgefüllt wurde, tritt ebenfalls aus, bis das Leck gefunden und repariert ist.
caution-gas-added-without-repair = { $circuit ->
    [none] in die Anlage
   *[other] in Kreislauf { $circuit }
} wurde Kältemittel nachgefüllt, obwohl ein bekanntes Leck noch nicht repariert war
phrase-what-was-added-leaks-out-again-whether-a-rule-sets-a-time-for-the = Was nachgefüllt wurde, tritt wieder aus. Ob eine Vorschrift eine Frist für die Reparatur setzt, steht im rechtlichen Teil des Berichts.
caution-gas-added-without-search = { $circuit ->
    [none] in die Anlage
   *[other] in Kreislauf { $circuit }
} wurde Kältemittel nachgefüllt und das Leck nicht gesucht
phrase-refrigerant-is-not-used-up-what-is-missing-has-leaked-and-what-wa = Kältemittel verbraucht sich nicht: Was fehlt, ist ausgetreten, und was nachgefüllt wurde, wird folgen. Ob eine Vorschrift eine Frist setzt, das Leck zu finden und zu reparieren, steht im rechtlichen Teil des Berichts.
caution-gauge-beyond-its-range = { $pressure } liegt außerhalb des Messbereichs des Manometers von Prüfung „{ $test }“
phrase-beyond-its-range-a-gauge-is-wrong-or-damaged-and-so-is-what-the-t = Außerhalb seines Messbereichs zeigt ein Manometer falsch oder nimmt Schaden, und damit ist auch falsch, was die Prüfung zeigt.
caution-hold-at-moving-temperature = eine Druckprüfung ohne gleichbleibende Temperatur ist der einzige Nachweis für „{ $finding }“
phrase-the-gas-in-the-pipe-follows-its-own-warmth-not-that-of-the-thermo = Das Gas im Rohr folgt seiner eigenen Wärme, nicht der des Thermometers: Bei kurzer Standzeit verdeckt eine Temperaturänderung ein Leck oder täuscht eines vor.
caution-hold-too-coarse-for-leak = Prüfung „{ $test }“ hätte das Leck „{ $finding }“ nicht zeigen können
phrase-the-gauge-would-have-stood-still-with-the-leak-as-it-was-before-t = Das Manometer wäre auch bei dem Leck, wie es vor der Reparatur war, stehen geblieben: Die Druckprüfung beweist darüber nichts.
caution-hydrogen-above-five-percent = Prüfung „{ $test }“ wurde mit mehr als 5 % Wasserstoff gemacht
phrase-above-about-5-5-hydrogen-in-nitrogen-the-mixture-can-burn-in-air = Über etwa 5,5 % Wasserstoff in Stickstoff kann das Gemisch in Luft brennen.
caution-hydrogen-mixed-on-site = das Gas von Prüfung „{ $test }“ wurde vor Ort gemischt
phrase-a-mixture-made-on-site-is-nowhere-the-same-part-of-it-can-hold-mo = Ein vor Ort gemischtes Gas ist nirgends gleich: Ein Teil davon kann mehr Wasserstoff enthalten, als in Luft sein darf, ohne zu brennen, und eine Flasche mit reinem Wasserstoff ist eine Gefahr für sich.
caution-instrument-check-overdue = Lecksuchgerät „{ $detector }“ war zuletzt am { $day } geprüft worden, mehr als 12 Monate zuvor
phrase-a-check-with-it-may-not-count-as-the-leak-check-that-the-rule-ask = Eine Kontrolle mit ihm zählt womöglich nicht als die vorgeschriebene Dichtheitskontrolle, und seine Empfindlichkeit ist nicht bekannt.
caution-low-pressure-search = mit einem Lecksuchgerät wurde bei nur { $pressure } gesucht
phrase-a-leak-lets-out-less-the-lower-the-pressure-at-or-below-the-press = Je niedriger der Druck, desto weniger lässt ein Leck heraus; bei Luftdruck oder darunter tritt gar nichts aus.
caution-method-blind-to-refrigerant = { $method ->
    [litmus] Lackmus
   *[other] eine Lecksuchlampe
} kann { $refrigerant } nicht anzeigen
phrase-litmus-turns-with-ammonia-only-and-the-flame-of-the-torch-colours = Lackmus verfärbt sich nur bei Ammoniak, und die Flamme der Lampe nur bei Chlor: Bei anderen Kältemitteln zeigen beide nichts an, wie groß das Leck auch ist.
caution-moisture-read-as-leak = „{ $finding }“ beruht auf einem Druckanstieg, der abflacht
phrase-a-leak-goes-on-rising-to-the-pressure-of-the-air-a-rise-that-leve = Bei einem Leck steigt der Druck weiter bis zum Luftdruck. Ein Anstieg, der abflacht, ist Feuchtigkeit oder Gas aus dem Öl: Die Suche nach einem Leck, das nicht da ist, kostet einen Tag, und das Wasser bleibt darin.
caution-moved-more-than-charge = { $mass }, { $kind ->
    [charged] { $circuit ->
        [none] in die Anlage
       *[other] in Kreislauf { $circuit }
    } gefüllt
    [recovered] { $circuit ->
        [none] aus der Anlage
       *[other] aus Kreislauf { $circuit }
    } zurückgewonnen
   *[other] { $circuit ->
        [none] aus der Anlage
       *[other] aus Kreislauf { $circuit }
    } abgelassen
}, sind mehr als die ganze Füllmenge von { $full }
phrase-it-is-most-likely-a-slip-a-decimal-point-lost-pounds-read-as-kilo = Höchstwahrscheinlich ein Versehen: ein verlorenes Komma, Pfund als Kilogramm gelesen, Bruttogewicht einer Flasche statt netto, oder die Bewegung eines anderen Kreislaufs. Bilanz und Leckrate beruhen darauf.
caution-no-bubbles-too-soon = Schaummittel, das weniger als 20 min beobachtet wurde, ist der einzige Nachweis für „{ $finding }“
phrase-a-small-leak-may-take-many-minutes-to-raise-a-bubble-a-short-look = Ein kleines Leck braucht womöglich viele Minuten, bis es eine Blase bildet; ein kurzer Blick zeigt nur, dass das Leck nicht groß ist.
caution-oil-at-service-valve = Öl ist das einzige Anzeichen an „{ $finding }“
phrase-drops-from-the-hoses-stay-at-a-service-valve-after-every-service-t = Tropfen aus den Schläuchen bleiben nach jedem Service an einem Serviceventil; sie zeigen nicht, dass es leckt.
caution-outcome-beyond-evidence = das notierte Ergebnis „{ $claim }“ geht über das hinaus, was die Notizen zeigen: { $shown }
phrase-less-was-shown-than-was-claimed-the-report-keeps-to-what-the-note = Gezeigt wurde weniger, als behauptet wurde: Der Bericht hält sich an das, was die Notizen zeigen.
caution-oxygen-or-air-used = Prüfung „{ $test }“ wurde mit { $gas ->
    [oxygen] Sauerstoff
   *[other] Luft
} gemacht
phrase-oxygen-or-compressed-air-and-oil-can-explode-air-also-leaves-mois = Sauerstoff oder Druckluft kann mit Öl explodieren; Luft hinterlässt außerdem Feuchtigkeit.
caution-pressure-above-plate = Prüfung „{ $test }“ wurde bei { $pressure } gemacht, über den { $plate } des Typenschilds
phrase-a-part-held-above-the-pressure-it-was-made-for-can-burst-at-once-o = Ein Teil, das über dem Druck gehalten wird, für den es gebaut ist, kann bersten, sofort oder später.
caution-pressure-test-as-leak-inspection = eine Druck- oder Vakuumprüfung steht hier an Stelle einer Lecksuche
phrase-such-a-test-shows-that-a-circuit-leaks-or-does-not-never-where-it = Eine solche Prüfung zeigt, ob ein Kreislauf leckt, nie wo; sie zählt für sich allein nicht als Dichtheitskontrolle.
caution-proof-before-repair = „{ $finding }“ wurde nach dem letzten Nachweis noch einmal repariert
phrase-a-test-made-before-the-last-work-at-a-joint-does-not-show-how-the = Eine Prüfung vor der letzten Arbeit an einer Verbindung zeigt nicht, wie sie jetzt ist.
caution-proof-coarser-than-leak = der einzige Nachweis für „{ $finding }“ hätte dieses Leck nicht zeigen können
phrase-the-detector-would-have-been-silent-before-the-repair-as-well-its = Das Lecksuchgerät wäre auch vor der Reparatur still geblieben; seine Stille beweist nichts.
caution-proved-by-looking = der Erfolg der Reparatur an „{ $finding }“ wurde nur durch Hinsehen nachgewiesen
phrase-a-joint-can-leak-for-weeks-before-oil-or-a-low-charge-shows-it-th = Eine Verbindung kann wochenlang lecken, bevor Öl oder eine zu kleine Füllmenge es zeigt; dass kein Anzeichen zu sehen ist, zeigt sehr wenig.
caution-recovered-gas-to-another-owner = Flasche „{ $cylinder }“ enthielt Gas, das an diesem Standort zurückgewonnen worden war: { $site }
phrase-used-gas-may-carry-moisture-acid-and-other-gases-from-the-first-p = Gebrauchtes Gas kann Feuchtigkeit, Säure und andere Gase aus der ersten Anlage in die zweite tragen; nach manchen Gesetzen darf es den Eigentümer erst wechseln, wenn ein Aufbereiter es gereinigt und geprüft hat.
caution-reference-leak-of-another-kind = das Lecksuchgerät wurde an { $tried } erprobt und für { $held } benutzt
phrase-a-sensor-for-one-kind-of-gas-may-not-answer-to-the-other-at-all-t = Ein Sensor für die eine Art Gas spricht auf die andere womöglich gar nicht an: Die Erprobung zeigt, dass er arbeitet, nicht dass er dieses Leck gefunden hätte.
caution-repaired-not-retested = „{ $finding }“ wurde repariert und nicht noch einmal geprüft
phrase-many-repairs-do-not-hold-at-once-until-it-is-tested-nobody-knows-a = Viele Reparaturen halten nicht auf Anhieb; bis geprüft ist, weiß es niemand, und der Verlust kann weitergehen.
caution-rise-at-moving-temperature = ein Druckanstieg im Vakuum bei wechselnder Temperatur ist der einzige Nachweis für „{ $finding }“
phrase-as-a-system-warms-oil-and-walls-give-off-more-gas-as-it-cools-les = Wenn eine Anlage wärmer wird, geben Öl und Wände mehr Gas ab, wenn sie kälter wird, weniger: Der Anstieg zeigt dann die Wärme und nicht das Leck.
caution-search-in-moving-air = maßgebend war ein Lecksuchgerät in bewegter Luft („{ $word }“)
phrase-moving-air-carries-leaking-gas-away-before-it-reaches-the-sensor-s = Bewegte Luft trägt austretendes Gas fort, bevor es den Sensor erreicht: Stille zeigt dann wenig.
caution-search-stopped-at-first-leak = ein Leck wurde gefunden, und diese Stellen wurden nicht abgesucht: { $points }{ $more ->
    [0] {""}
   *[other] {" "}und { $more } weitere
}
phrase-one-leak-found-does-not-mean-the-only-leak-the-rest-of-the-loss-m = Ein gefundenes Leck heißt nicht, dass es das einzige ist; der Rest des Verlusts kann von einer Stelle kommen, die niemand angesehen hat.
caution-searched-while-empty = diese Suche wurde an der entleerten Anlage gemacht
phrase-without-pressure-inside-nothing-comes-out-of-a-leak-and-silence-s = Ohne Druck im Innern tritt aus einem Leck nichts aus, und Stille zeigt nichts.
caution-sensitivity-below-rule = Lecksuchgerät „{ $detector }“ findet Lecks erst ab { $leak }
phrase-a-search-with-it-may-not-count-as-the-leak-check-that-the-rule-as = Eine Suche mit ihm zählt womöglich nicht als die vorgeschriebene Dichtheitskontrolle: Kleinere Lecks bleiben verborgen.
caution-sensor-disturbed = „{ $finding }“ beruht auf einem { $sensor ->
    [infrared] Infrarotsensor
    [heated-diode] Sensor mit beheizter Diode
   *[other] Halbleitersensor
} in der Nähe von „{ $word }“
phrase-such-a-sensor-alarms-at-these-things-or-stays-dull-for-a-while-af = Ein solcher Sensor schlägt bei diesen Stoffen an oder bleibt danach eine Weile stumpf: Der Alarm muss kein Kältemittel sein.
caution-sign-without-direct-check = „{ $finding }“ beruht allein auf einem Anzeichen
phrase-a-sign-alone-neither-shows-a-leak-nor-clears-it-and-the-rule-asks = Ein Anzeichen allein zeigt weder ein Leck noch schließt es eines aus, und die Vorschrift verlangt danach ein direktes Verfahren.
caution-strength-pressure-without-source = Festigkeitsprüfung „{ $test }“ wurde beim { $factor }-Fachen des Typenschilds gemacht, und keine Notiz sagt, von wem dieser Wert stammt
phrase-a-strength-test-that-is-too-low-shows-nothing-beyond-daily-use-on = Eine zu niedrige Festigkeitsprüfung zeigt nichts über den täglichen Betrieb hinaus; eine zu hohe kann Teile überdehnen oder bersten lassen.
caution-test-coarser-than-limit = Prüfung „{ $test }“ kann diesen Grenzwert nicht zeigen: Ein Schritt des Manometers entspricht einem Leck von { $leak }
phrase-a-leak-of-the-limit-would-not-have-moved-the-gauge-by-one-step-th = Ein Leck von der Größe des Grenzwerts hätte das Manometer nicht um einen Schritt bewegt: Dass es still stand, zeigt über den Grenzwert nichts.
caution-test-gas-with-refrigerant-inside = bei Prüfung „{ $test }“ kam Prüfgas { $circuit ->
    [none] in die Anlage
   *[other] in Kreislauf { $circuit }
}, während noch Kältemittel darin war
phrase-the-mixture-cannot-be-recovered-as-refrigerant-and-goes-to-waste-o = Das Gemisch kann nicht als Kältemittel zurückgewonnen werden und geht in den Abfall oder in die Luft; der Druck der Flüssigkeit kommt hinzu, und die Prüfung zeigt nichts.
caution-test-too-short = ein Druckanstieg im Vakuum über { $minutes } min ist der einzige Nachweis für „{ $finding }“
phrase-in-so-short-a-time-a-rise-cannot-tell-a-small-leak-from-moisture-o = In so kurzer Zeit unterscheidet ein Anstieg ein kleines Leck nicht von Feuchtigkeit oder von Gas aus dem Öl; er zeigt nur, ob der Grenzwert eingehalten wurde.
caution-ultrasonic-in-noise = maßgebend war ein Ultraschall-Lecksuchgerät im Lärm („{ $word }“)
phrase-compressors-fans-and-escaping-steam-or-air-make-the-same-sound-as = Verdichter, Ventilatoren und ausströmender Dampf oder Luft klingen wie ein Leck: Sie verdecken eines oder täuschen eines vor.
caution-vacuum-gauge-too-coarse = das Vakuummeter von Prüfung „{ $test }“ kann deren Grenzwert nicht anzeigen
phrase-such-a-gauge-shows-zero-long-before-the-limit-is-reached-that-the = Ein solches Messgerät zeigt null, lange bevor der Grenzwert erreicht ist: Ob er eingehalten wurde, ist nicht bekannt.
caution-vented = { $refrigerant } wurde absichtlich abgelassen
phrase-letting-such-gas-out-on-purpose-is-forbidden-in-most-countries-an = Solches Gas absichtlich abzulassen ist in den meisten Ländern verboten und gilt als Freisetzung.
caution-volume-missing = über den Leck-Grenzwert von Prüfung „{ $test }“ lässt sich nichts sagen
phrase-a-change-of-pressure-becomes-a-leak-rate-only-with-the-volume-wit = Aus einer Druckänderung wird erst mit dem Volumen eine Leckrate; ohne es lässt sich über den Grenzwert nichts sagen.
caution-wrong-cylinder = { $kind ->
    [charged] { $circuit ->
        [none] { $held } wurde in die Anlage gefüllt, die { $wanted } enthält
       *[other] { $held } wurde in Kreislauf { $circuit } gefüllt, der { $wanted } enthält
    }
   *[recovered] { $wanted } aus { $circuit ->
        [none] der Anlage
       *[other] Kreislauf { $circuit }
    } wurde in eine Flasche mit { $held } zurückgewonnen
}
phrase-a-mixture-has-unknown-pressures-and-an-unknown-safety-class-and-s = Ein Gemisch hat unbekannte Drücke und eine unbekannte Sicherheitsklasse und verdirbt beide Gase; oft kann es nur noch vernichtet werden.

# Was die Belege zeigen, wo mehr behauptet wurde.
