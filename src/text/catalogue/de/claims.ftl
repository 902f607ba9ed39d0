## Angaben: die Antwort

claims-none = Noch keine Herstellerangabe. Wählen Sie eine Aufzeichnung, oder geben Sie eine Herstellerangabe und Ihren Messwert ein.
claims-number = Herstellerangabe { $number }
claims-enter-both = { $claim }: Geben Sie den angegebenen Wert und Ihren Messwert ein.
claims-enter-claimed = { $claim }: Geben Sie den angegebenen Wert ein.
claims-enter-measured = { $claim }: Geben Sie Ihren Messwert ein.
claims-enter-valid = { $claim }: Geben Sie Zahlen innerhalb ihrer Grenzen ein.
claims-answer = { $claim }: { $measured } gemessen: { $verdict }.
claims-answer-share = { $claim }: { $measured } gemessen, { $share } der Herstellerangabe: { $verdict }.
claims-decided-none = Von { $all } Herstellerangaben ist noch keine entschieden.
claims-decided =
    { NUMBER($decided) ->
        [one] Von { $all } Herstellerangaben ist { NUMBER($decided) } entschieden.
       *[other] Von { $all } Herstellerangaben sind { NUMBER($decided) } entschieden.
    }

## Angaben: Urteile

claims-beats-it = übertrifft die Herstellerangabe
claims-meets-it = erfüllt die Herstellerangabe
claims-falls-short = bleibt hinter der Herstellerangabe zurück
claims-too-close = zu knapp für ein Urteil
claims-inside = innerhalb des angegebenen Bereichs
claims-below = unterhalb des angegebenen Bereichs
claims-above = oberhalb des angegebenen Bereichs
claims-not-judged = noch nicht geprüft
claims-not-judged-because = noch nicht geprüft ({ $why })

## Angaben: was zu einem Urteil noch fehlt

claims-lacks-meter = Messgerät nicht gewählt
    .advice = Wählen Sie das Messgerät, damit sich seine Genauigkeit berechnen lässt.
claims-lacks-limits = Fehlergrenzen des Messgeräts fehlen
    .advice = Geben Sie mindestens eine Fehlergrenze aus dem Datenblatt des Messgeräts ein.
claims-lacks-rate = Strom oder Dauer der Messung fehlt
    .advice = Geben Sie den mittleren Strom oder die Dauer der Messung ein: Davon hängen die Fehlergrenzen des Messgeräts ab.
claims-lacks-free-area = freie Fläche des Gitters fehlt
    .advice = Geben Sie die freie Fläche des Gitters ein: Das Flügelrad misst die Luftgeschwindigkeit, nicht den Volumenstrom.
claims-lacks-right-meter = dieses Messgerät misst das nicht direkt
    .advice = Ein solches Messgerät misst diese Größe nicht direkt. Wählen Sie das, mit dem gemessen wurde.
claims-lacks-bank = ihre Batteriebank ist nicht im Plan
    .advice = Die Batteriebank dieser Herstellerangabe ist nicht im Plan.
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
claims-source-stated = die angegebene Unsicherheit (bei einer Aufzeichnung: ihr Messgerät und ihre Lücken)
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

claims-air = Kälteleistung aus Luftmessungen
claims-air-hint = Berechnet die Kälteleistung aus der Luft, die hineingeht, und der, die herauskommt. Lesen Sie beide gleichzeitig ab, nach zehn Minuten gleichmäßigen Betriebs. Ohne beide Luftfeuchten lässt sich nur die sensible Kälteleistung (das Sinken der Temperatur) bestimmen.
claims-basis = Der Volumenstrom gilt
claims-basis-outlet = beim Zustand am Austritt
claims-basis-inlet = beim Zustand am Eintritt
claims-basis-standard = bei Normdichte
claims-vane = Messwerte des Flügelrads
claims-vane-hint = Ein Messwert je Punkt eines gleichmäßigen Rasters über dem Gitter, durch Leerzeichen getrennt. Gilt, wo kein Volumenstrom eingegeben ist.
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
claims-air-parts = Davon: { $parts }. Jedes ± umfasst etwa 95 % (erweiterte Unsicherheit, k = 2).
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
-claims-mode-of =
    { $mode ->
        [the-unit] des Kühlgeräts
       *[named] von { $mode }
    }
claims-next-one =
    { $how }: Die Spanne { -claims-mode-of } { $brings ->
        [two-thirds] sinkt um mehr als zwei Drittel
        [half] halbiert sich etwa
        [quarter] sinkt um etwa ein Viertel
       *[little] sinkt ein wenig
    } (vorher { $now }, dann { $then }). { $share } davon: { $field }.
claims-how-clamp = Die Aufnahme { $duration } lang mit dem Zangenamperemeter messen
claims-how-whole-run = Einen Lauf von voller Ladung bis zu seinem eigenen Ende aufzeichnen (etwa { $duration })
claims-how-two-loads = Die Spannung bei zwei Lasten messen
claims-how-volts-at-stop = Die Spannung beim Abschalten notieren
claims-how-fill-first = Vorher mit dem Ladegerät vollladen
claims-how-both-sides = Die Leistung { $duration } lang vor und hinter dem Wandler messen

## Angaben: Faustformeln

claims-pocket = Faustformeln
claims-pocket-hint = Nutzbare Wh = Nennspannung × Kapazität in Ah × Entladetiefe. Für Nächte ohne Sonne.
claims-pocket-holds = { $mode }: Stunden = { $per-wh } × nutzbare Wh (= { $per-ah } × nutzbare Ah bei { $volts }, { $chemistry }); von { $low } bis { $high } nutzbaren Wh, auf { $error } genau.
claims-pocket-lead-acid = { $mode }: keine Faustformel. Eine größere Blei-Säure-Batteriebank gibt je Ah mehr ab, eine Zeile kann daher nicht für alle Größen gelten.
claims-pocket-fixed-start = { $mode }: keine Faustformel, weil die Batteriebank nicht voll beginnt.
claims-pocket-sun = { $mode }: keine Faustformel, weil der Anteil der Sonne von der Uhrzeit abhängt.
claims-pocket-limits = { $mode }: keine Faustformel, weil Abschaltungen oder Stromgrenzen manche Größen früher beenden.
claims-pocket-nothing = { $mode }: keine Faustformel, weil die Batteriebank keine nutzbare Ladung hat.
chemistry-lfp-short = LFP
chemistry-nmc-short = NMC
chemistry-sodium-ion-short = Natrium-Ionen
chemistry-agm-short = Blei-Säure AGM
chemistry-gel-short = Blei-Säure Gel
chemistry-flooded-short = Blei-Säure nass

## Angaben: der Bericht und seine Felder

claims-report = Prüfbericht
claims-report-note = Ein Urteil gibt es nur, wo es für jeden Wert innerhalb der Unsicherheit gilt. Quelle: JCGM 106:2012, Schutzabstände so breit wie die erweiterte Unsicherheit, 95 %.
claims-head-claim = Herstellerangabe
claims-head-claimed = Angegeben
claims-head-measured = Gemessen
claims-head-share = Anteil der Herstellerangabe
claims-head-verdict = Urteil
claims-claims = Herstellerangaben
claims-add-claim = Herstellerangabe hinzufügen
claims-remove-claim = Diese Herstellerangabe entfernen
claims-claim-name = Name im Bericht
claims-about = Größe
claims-claim-bank = Batteriebank
claims-meter = Gemessen mit
claims-more = Fehlergrenzen, Bedingungen und wiederholte Messungen
claims-full-by = Vollgeladen laut
claims-end-by = Beendet durch
claims-not-stated = nicht angegeben
claims-runs = Ergebnisse wiederholter Messungen
claims-runs-hint = Durch Leerzeichen getrennt, etwa 4310 4325 4319. Zwei oder mehr haben Vorrang vor dem Wert oben; wie weit sie auseinanderliegen, erhöht die Unsicherheit.
claims-list-bad = Geben Sie Zahlen ein, durch Leerzeichen getrennt, jede { $accepted }.
