## Angaben: die Antwort

claims-none = Noch keine Angabe. Legen Sie hier eine Aufzeichnung ab, oder geben Sie eine Herstellerangabe und Ihren Messwert ein.
claims-number = Angabe { $number }
claims-enter-both = { $claim }: Geben Sie den angegebenen Wert und Ihren Messwert ein.
claims-enter-claimed = { $claim }: Geben Sie den angegebenen Wert ein.
claims-enter-measured = { $claim }: Geben Sie Ihren Messwert ein.
claims-enter-valid = { $claim }: Geben Sie Zahlen innerhalb ihrer Grenzen ein.
claims-answer = { $claim }: { $measured } gemessen: { $verdict }.
claims-answer-share = { $claim }: { $measured } gemessen, { $share } der Angabe: { $verdict }.
claims-decided-none = Von { $all } Angaben ist noch keine entschieden.
claims-decided =
    { NUMBER($decided) ->
        [one] Von { $all } Angaben ist { NUMBER($decided) } entschieden.
       *[other] Von { $all } Angaben sind { NUMBER($decided) } entschieden.
    }

## Angaben: Urteile

claims-beats-it = übertrifft die Angabe
claims-meets-it = erfüllt die Angabe
claims-falls-short = bleibt hinter der Angabe zurück
claims-too-close = zu knapp für ein Urteil
claims-inside = innerhalb des angegebenen Bereichs
claims-below = unterhalb des angegebenen Bereichs
claims-above = oberhalb des angegebenen Bereichs
claims-not-judged = nicht beurteilt
claims-not-judged-because = nicht beurteilt ({ $why })

## Angaben: was zu einem Urteil noch fehlt

claims-lacks-meter = kein Messgerät genannt
    .advice = Nennen Sie das Messgerät: Ohne eines gibt es kein Urteil.
claims-lacks-limits = Fehlergrenzen des Messgeräts fehlen
    .advice = Geben Sie mindestens eine Fehlergrenze aus dem Datenblatt des Messgeräts ein.
claims-lacks-rate = Strom oder Dauer der Messung fehlt
    .advice = Geben Sie den mittleren Strom oder die Dauer der Messung ein: Davon hängen die Fehlergrenzen des Messgeräts ab.
claims-lacks-free-area = freie Fläche des Gitters fehlt
    .advice = Geben Sie die freie Fläche des Gitters ein: Das Flügelrad misst die Luftgeschwindigkeit, nicht den Volumenstrom.
claims-lacks-right-meter = dieses Messgerät misst diese Größe nicht
    .advice = Dieses Messgerät misst diese Größe nicht. Wählen Sie ein anderes.
claims-lacks-bank = ihre Batteriebank ist nicht im Plan
    .advice = Die Batteriebank dieser Angabe ist nicht im Plan.
claims-lacks-conditions = Strom oder Temperatur der Messung fehlt
    .advice = Blei-Säure: Geben Sie den mittleren Strom und die Batterietemperatur ein, damit sich das Ergebnis auf Nennbedingungen umrechnen lässt.

## Angaben: Größen und Werte

claims-about-charge = Kapazität in Ah
claims-about-energy = Energie in Wh
claims-about-draw = Leistungsaufnahme
claims-about-airflow = Volumenstrom
claims-about-temperature = Temperatur
claims-about-cooling = Kälteleistung
claims-about-eer = EER in Btu/Wh
claims-range = { $low } bis { $high }
claims-uncertainty-unknown = { $figure }, Unsicherheit unbekannt

## Angaben: Bedingungen einer Messung

claims-conditions = Bedingungen: { $conditions }.
claims-no-conditions = Es sind keine Bedingungen angegeben.
claims-from-air = unten aus der Luftseite berechnet
claims-mean-of-runs =
    { NUMBER($count) ->
        [one] { NUMBER($count) } Messung
       *[other] Mittel aus { NUMBER($count) } Messungen
    }
claims-for-duration = Dauer { $duration }
claims-at-current = bei { $current }
claims-at-temperature = bei { $temperature }
claims-full-charge = vollgeladen laut: { $by }
claims-run-end = beendet durch: { $by }
claims-read-with = gemessen mit: { $meter }
claims-corrected = gemessen { $measured }, korrigiert mit dem Faktor { $temperature } für die Temperatur und { $rate } für den Entladestrom
claims-full-charger = Ladegerät fertig
claims-full-volts = Absorptionsspannung gehalten
claims-full-monitor = Anzeige des Batteriemonitors
claims-end-bms = Unterspannungsabschaltung des BMS
claims-end-unit = Unterspannungsabschaltung des Geräts
claims-end-volts = eingestellte Schlussspannung erreicht
claims-end-hand = von Hand ausgeschaltet
claims-class-clamp = Zangenamperemeter
claims-class-shunt = Batteriemonitor mit Shunt der Klasse 0,5
claims-class-multimeter = Multimeter
claims-class-watt-meter = Steckdosen-Leistungsmessgerät
claims-class-vane = Flügelrad-Anemometer
claims-class-thermometer = Thermometer
claims-class-hygrometer = Hygrometer
claims-class-sheet = Fehlergrenzen aus dem Datenblatt

## Angaben: was einen Wert begrenzt und was entscheiden würde

claims-limited = Größter Beitrag zur Unsicherheit (k = { $k }): { $source }, { $share }.
claims-source-stated = die angegebene Spanne (bei einer Aufzeichnung: ihr Messgerät und ihre Lücken)
claims-source-meter = das Messgerät
claims-source-voltmeter = das Voltmeter
claims-source-sampling = der Abstand der Messwerte
claims-source-scatter = die Streuung der Messungen
claims-source-timing = Beginn und Ende der Messung
claims-source-correction = die Umrechnung auf Nennbedingungen
claims-decided-below = Eine Unsicherheit unter ±{ $below } entscheidet: { $ways }.
claims-decided-not-alone = Eine Unsicherheit unter ±{ $below } entscheidet. Weder mehr Zeit noch ein besseres Messgerät genügt allein.
claims-way-time = insgesamt { $duration } lang messen
claims-way-class = mit einem anderen Gerät sorgfältig messen ({ $meter })
claims-way-limit = mit einem Gerät messen, das auf ±{ $limit } genau ist

## Angaben: Kälteleistung von der Luftseite

claims-air = Kälteleistung von der Luftseite
claims-air-hint = Lesen Sie beide Seiten gleichzeitig ab, nach zehn Minuten gleichmäßigen Betriebs. Ohne beide Luftfeuchten lässt sich nur die sensible Kälteleistung bestimmen.
claims-basis = Der Volumenstrom gilt
claims-basis-outlet = beim Zustand am Austritt
claims-basis-inlet = beim Zustand am Eintritt
claims-basis-standard = bei Normdichte
claims-vane = Messwerte des Flügelrads
claims-vane-hint = Einer je Punkt eines gleichmäßigen Messrasters, durch Leerzeichen getrennt. Gilt, wo kein Volumenstrom eingegeben ist.
claims-air-total = Gesamte Kälteleistung: { $cooling } ±{ $expanded }.
claims-air-sensible = Nur sensible Kälteleistung: { $cooling } ±{ $expanded }. Die Luftfeuchte wurde nicht auf beiden Seiten gemessen; bei nassem Verdampfer kann mehr als die Hälfte fehlen.
claims-air-efficiency = COP { $cop }, EER { $eer }.
claims-air-limited = Größter Beitrag zur Unsicherheit: { $reading }, { $share }.
claims-read-flow = Volumenstrom
claims-read-free-area = freie Fläche
claims-read-inlet-temperature = Eintrittstemperatur
claims-read-inlet-humidity = Eintrittsfeuchte
claims-read-outlet-temperature = Austrittstemperatur
claims-read-outlet-humidity = Austrittsfeuchte
claims-read-pressure = Luftdruck
claims-air-no-temperatures = Geben Sie beide Lufttemperaturen ein: Eintritt und Austritt.
claims-air-no-flow = Geben Sie den Volumenstrom ein, oder Messwerte des Flügelrads und die freie Fläche des Gitters.
claims-air-out-of-range = Eine dieser Zahlen liegt außerhalb dessen, was berechnet werden kann.
claims-air-too-wet = So viel Wasser kann die Luft nicht aufnehmen: Prüfen Sie Feuchte und Temperatur.
claims-air-parts = Davon: { $parts }. Alle Unsicherheiten sind erweitert, k = 2.
claims-air-split = sensibel { $sensible }, latent { $latent }
claims-air-condensate = Kondensat { $rate }
claims-air-flow = Volumenstrom { $flow } ±{ $expanded }
claims-air-cop = COP { $cop } ±{ $expanded }
claims-budget-reading = Messgröße
claims-budget-standard = Standardunsicherheit
claims-budget-share = Anteil
claims-row-total = Gesamte Kälteleistung
claims-row-sensible-only = Nur sensible Kälteleistung
claims-row-sensible = Sensible Kälteleistung
claims-row-latent = Latente Kälteleistung
claims-row-condensate = Kondensat
claims-row-airflow = Volumenstrom
claims-row-cop = COP
claims-row-eer = EER

## Angaben: Preis

claims-price = Preis einer Wattstunde
claims-money = { $measured } je gemessene Wh, { $usable } je nutzbare Wh, in der Währung des Preises.
claims-money-life = Über ihre Zyklenlebensdauer gibt sie { $energy } ab, zu { $price } je kWh.
claims-row-measured-energy = Gemessene Energie
claims-row-measured-price = Preis einer gemessenen Wh
claims-row-usable-price = Preis einer nutzbaren Wh
claims-row-life-energy = Energie über die Zyklenlebensdauer
claims-row-life-price = Preis über die Zyklenlebensdauer
claims-per-wh = je Wh
claims-per-kwh = je kWh

## Angaben: was als Nächstes zu messen ist

claims-next = Was als Nächstes zu messen ist
claims-next-none = Nichts, was ein übliches Messgerät verbessern könnte.
claims-next-one =
    { $field }: { $share } der Spanne von { $mode }. { $how }: { $brings ->
        [two-thirds] die Spanne sinkt um mehr als zwei Drittel
        [half] die Spanne halbiert sich etwa
        [quarter] die Spanne sinkt um etwa ein Viertel
       *[little] die Spanne sinkt ein wenig
    }, von { $now } auf { $then }.
claims-how-clamp = { $duration } mit dem Zangenamperemeter messen
claims-how-whole-run = Einen Lauf von voller Ladung bis zu seinem eigenen Ende aufzeichnen (etwa { $duration })
claims-how-two-loads = Die Spannung bei zwei Lasten messen
claims-how-volts-at-stop = Die Spannung beim Abschalten notieren
claims-how-fill-first = Vorher mit dem Ladegerät vollladen
claims-how-both-sides = { $duration } die Leistung vor und hinter dem Wandler messen

## Angaben: Faustformeln

claims-pocket = Faustformeln
claims-pocket-hint = Nutzbare Wh = Nennspannung × Kapazität in Ah × Entladetiefe. Für Nächte ohne Sonne.
claims-pocket-holds = { $mode }: Stunden = { $per-wh } × nutzbare Wh (= { $per-ah } × nutzbare Ah bei { $volts }, { $chemistry }); von { $low } bis { $high } nutzbaren Wh, auf { $error } genau.
claims-pocket-lead-acid = { $mode }: keine Faustformel. Eine größere Blei-Säure-Bank gibt je Ah mehr ab, eine Zeile kann daher nicht für alle Größen gelten.
claims-pocket-fixed-start = { $mode }: keine Faustformel, weil die Bank nicht voll beginnt.
claims-pocket-sun = { $mode }: keine Faustformel, weil der Anteil der Sonne von der Uhrzeit abhängt.
claims-pocket-limits = { $mode }: keine Faustformel, weil Abschaltungen oder Stromgrenzen manche Größen früher beenden.
claims-pocket-nothing = { $mode }: keine Faustformel, weil die Bank keine nutzbare Ladung hat.
chemistry-lfp-short = LFP
chemistry-nmc-short = NMC
chemistry-sodium-ion-short = Natrium-Ionen
chemistry-agm-short = Blei-Säure AGM
chemistry-gel-short = Blei-Säure Gel
chemistry-flooded-short = Blei-Säure nass

## Angaben: der Bericht und seine Felder

claims-report = Prüfbericht
claims-report-note = Ein Urteil gibt es nur, wo das ganze Unsicherheitsintervall damit übereinstimmt (JCGM 106:2012, Schutzabstände so breit wie die erweiterte Unsicherheit, 95 %).
claims-head-claim = Angabe
claims-head-claimed = Angegeben
claims-head-measured = Gemessen
claims-head-share = Anteil der Angabe
claims-head-verdict = Urteil
claims-claims = Angaben
claims-add-claim = Angabe hinzufügen
claims-remove-claim = Diese Angabe entfernen
claims-claim-name = Name im Bericht
claims-about = Größe
claims-claim-bank = Batteriebank
claims-meter = Gemessen mit
claims-more = Fehlergrenzen, Bedingungen und wiederholte Messungen
claims-full-by = Vollgeladen laut
claims-end-by = Beendet durch
claims-not-stated = nicht angegeben
claims-runs = Ergebnisse wiederholter Messungen
claims-runs-hint = Durch Leerzeichen getrennt, etwa 4310 4325 4319. Zwei oder mehr haben Vorrang vor dem Wert oben, und ihre Streuung zählt.
claims-list-bad = Geben Sie Zahlen ein, durch Leerzeichen getrennt, jede { $accepted }.
