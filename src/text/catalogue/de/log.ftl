## Aufzeichnungen: eine Datei

log-title = Eine Aufzeichnung oder Notizen
log-hint = Wählen Sie eine CSV-Datei eines Batteriemonitors oder Datenloggers, oder legen Sie sie hier ab. Sie wird auf diesem Gerät gelesen und nirgendwohin gesendet.
log-pick = Aufzeichnung wählen
log-try = Erfundene Aufzeichnung ausprobieren
log-invented = Für die Vorführung erfunden: Weder ein solches Fahrzeug noch eine solche Batteriebank oder ein solches Kühlgerät wurde gemessen.
log-invented-name = Aus der erfundenen Aufzeichnung
log-reading = Die Aufzeichnung wird gelesen: { $share } fertig.
log-columns = Wie die Spalten gelesen werden
log-read-as = Lesen als
log-in-unit = Einheit
log-read-again = So noch einmal lesen
log-column = Spalte { $number }: { $why }
log-column-headed = Spalte { $number }, „{ $heading }“: { $why }

## Aufzeichnungen: Spalten

log-role-time = Zeit
log-role-date = Datum
log-role-volts = Spannung
log-role-amps = Strom
log-role-watts = Leistung
log-role-amp-hours = Ah-Zähler
log-role-watt-hours = Wh-Zähler
log-role-temperature = Temperatur im Innenraum
log-role-outdoors = Außentemperatur
log-role-ignored = nicht lesen
log-unit-plain = Grundeinheit (V, A, W)
log-unit-milli = Milli (mV, mA, mW)
log-unit-kilo = Kilo (kW, kWh)
log-unit-milliseconds = Millisekunden
log-unit-seconds = Sekunden
log-unit-minutes = Minuten
log-unit-hours = Stunden
log-unit-days = Tage
log-unit-hours-minutes = h:mm
log-unit-minutes-seconds = m:ss
log-unit-clock = Uhrzeit
log-unit-calendar = Datum und Uhrzeit
log-unit-epoch-seconds = Unixzeit in Sekunden
log-unit-epoch-milliseconds = Unixzeit in Millisekunden
log-why-given = von Ihnen gewählt
log-why-heading = die Überschrift nennt die Einheit
log-why-name-only = die Überschrift nennt keine Einheit, bitte prüfen
log-why-cells = nach den Werten
log-why-nothing = nicht erkannt

## Aufzeichnungen: warum eine Datei abgelehnt wurde

log-refused = Zeile { $line }, Spalte { $column }: { $fault }. Aus der Datei wurde nichts übernommen.
log-fault-bytes = Die Datei ist größer als { $size } MB; mehr wird nicht gelesen.
log-fault-rows = mehr als { $most } Zeilen; kürzen Sie die Datei
log-fault-cells =
    { NUMBER($columns) ->
        [one] mehr Zellen als die { NUMBER($columns) } Spalte; oft ein Dezimalkomma in einer durch Kommas getrennten Datei
       *[other] mehr Zellen als die { NUMBER($columns) } Spalten; oft ein Dezimalkomma in einer durch Kommas getrennten Datei
    }
log-fault-no-table = keine zwei Zeilen mit Zahlen untereinander gefunden
log-fault-no-time = keine Spalte mit Zeiten gefunden; wählen Sie sie unten
log-fault-no-flow = weder Strom noch Leistung gefunden; wählen Sie die Spalte unten
log-fault-column = diese Spalte lässt sich so nicht lesen
log-fault-number = diese Zelle ist keine Zahl
log-fault-unit = diese Zahl trägt die Einheit einer anderen Größe
log-fault-range = diese Zahl liegt außerhalb dessen, was die Spalte annimmt, { $low } bis { $high }
log-fault-time = diese Zelle ist keine Zeit in der Form der Zeilen davor
log-fault-zones = manche Zeiten nennen eine Zeitzone, andere nicht
log-fault-quote = ein Anführungszeichen ist nicht geschlossen
log-fault-overlap = die Zeit springt hinter schon Aufgezeichnetes zurück; trennen Sie die beiden Läufe
log-fault-few = weniger als zwei Zeilen mit Zeit und Messwert

## Aufzeichnungen: was mit den Zeilen geschah

log-rows = So wurde die Datei gelesen:
log-sign-reversed =
    { $of ->
        [amps] Die Entladung ist mit Minus aufgezeichnet; der Strom steht hier mit Plus.
        [watts] Die Entladung ist mit Minus aufgezeichnet; die Leistung steht hier mit Plus.
       *[both] Die Entladung ist mit Minus aufgezeichnet; Strom und Leistung stehen hier mit Plus.
    }
log-sign-by-amps = Die Leistung ist ohne Vorzeichen aufgezeichnet: Sie erhielt das des Stroms.
log-newest-first = Die neueste Zeile stand zuerst: Die Reihenfolge wurde umgekehrt.
log-cut-short = Die letzte Zeile war unvollständig und wurde ausgelassen.
log-out-of-order =
    { NUMBER($count) ->
        [one] { NUMBER($count) } Zeitsprung zurück wurde einsortiert.
       *[other] { NUMBER($count) } Zeitsprünge zurück wurden einsortiert.
    }
log-repeated =
    { NUMBER($count) ->
        [one] { NUMBER($count) } doppelte Zeile wurde ausgelassen.
       *[other] { NUMBER($count) } doppelte Zeilen wurden ausgelassen.
    }
log-same-time =
    { NUMBER($count) ->
        [one] { NUMBER($count) } Zeile hat dieselbe Zeit wie eine andere: Es zählt das Mittel.
       *[other] { NUMBER($count) } Zeilen haben dieselbe Zeit wie andere: Es zählt das Mittel.
    }
log-missing-cells =
    { NUMBER($count) ->
        [one] { NUMBER($count) } Zelle ist leer.
       *[other] { NUMBER($count) } Zellen sind leer; wo nur wenige fehlen, wird geradlinig interpoliert.
    }
log-without-time =
    { NUMBER($count) ->
        [one] { NUMBER($count) } Zeile hat keine Zeit und wurde ausgelassen.
       *[other] { NUMBER($count) } Zeilen haben keine Zeit und wurden ausgelassen.
    }
log-remarks =
    { NUMBER($count) ->
        [one] { NUMBER($count) } Textzeile wurde übersprungen.
       *[other] { NUMBER($count) } Textzeilen wurden übersprungen.
    }
log-watts-none = Es gibt weder Spannung noch Leistung: Der Strom allein ergibt Ladung, aber keine Energie.
log-watts-product = Die Leistung ist Spannung mal Strom, Zeile für Zeile.
log-watts-column = Die Leistung stammt aus der eigenen Spalte des Loggers.
log-watts-apart = Die Leistung stammt aus der eigenen Spalte des Loggers, Spannung mal Strom ergibt aber { $share } davon: Prüfen Sie die Einheiten, oder ob es Wechselstrom ist.
log-counter = Der eigene Zähler des Loggers lief um { $own } weiter; die Zeilen ergeben { $rows }.
log-counter-reset = Der eigene { $unit }-Zähler des Loggers lief vor und zurück oder wurde zurückgesetzt: Er wird nicht verglichen.

## Aufzeichnungen: Werte

log-duration = Dauer
log-without-gaps = { $span }, ohne Lücken { $covered }
log-charge = Ladung
log-energy = Energie
log-volts = Spannung
log-amps = Strom
log-watts = Leistung
log-means = im Mittel { $mean }, { $low } bis { $high }
log-ran = Laufzeit { $duration }; { $cause }.
log-ran-last = Laufzeit { $duration }, zuletzt { $volts } und { $amps }; { $cause }.
log-end-unknown = was den Lauf beendet hat, zeigt die Aufzeichnung nicht
log-end-bms = vermutlich schaltete das BMS ab
log-end-unit = vermutlich schaltete das Gerät oder der Wechselrichter ab
log-end-hand = vermutlich wurde von Hand ausgeschaltet
log-gaps = Lücken: { $count }, zusammen { $duration }. Nichts wird ergänzt; sie können { $ah-low } bis { $ah-high } und { $wh-low } bis { $wh-high } hinzufügen.
log-sampling-pulses = Die Zeilen liegen für diese Last zu weit auseinander: Ohne jede zweite ändert sich die Summe um { $share }. Eine Unsicherheit lässt sich nicht angeben.
log-sampling-counters = Die eigenen Zähler des Loggers weichen um { $share } von den Zeilen ab: Zwischen den Zeilen lagen Stromspitzen. Eine Unsicherheit lässt sich nicht angeben.
log-sampling-few = Zu wenige Zeilen, um zu erkennen, ob sie der Last folgen.

## Aufzeichnungen: das Messgerät und sein Nullpunktfehler

log-meter = Strom gemessen mit
log-meter-shunt = Shunt für { $current }
log-meter-clamp = Zangenamperemeter
log-offset = Angezeigter Strom in Ruhe
log-offset-hint = Ein Nullpunktfehler von { $current } über { $duration } täuscht { $charge } vor.
log-offset-bad = Geben Sie einen Strom { $accepted } ein.
log-offset-from-log = Nullwert vom Beginn der Aufzeichnung übernehmen
log-offset-none = Die Aufzeichnung beginnt unter Last: Es gibt keinen Messwert in Ruhe.
log-offset-taken = Abgezogen: Der Nullpunktfehler täuschte über die Aufzeichnung { $charge } vor.

## Aufzeichnungen: gleichmäßige Abschnitte

log-stretches = Gleichmäßige Abschnitte der Aufzeichnung
log-stretches-hint = Ein neuer Abschnitt beginnt, wo sich der mittlere Verbrauch ändert. Ziehen Sie einen Rand, oder verschieben Sie ihn mit den Pfeiltasten um je eine Minute. Verfahren: PELT (Killick, Fearnhead and Eckley 2012).
log-shortest = Kürzester Abschnitt
log-shortest-hint = Länger als ein Zyklus des Kompressors, damit das Mittel die Pausen enthält.
log-find-again = Neu suchen
log-leave-out = Auslassen
    .which = Auslassen, Abschnitt { $number }
log-split = Teilen
    .which = Teilen, Abschnitt { $number }
log-edge-start = Beginn von Abschnitt { $number }
log-edge-end = Ende von Abschnitt { $number }
log-moment = { $duration } nach Beginn der Aufzeichnung
log-stretch = { $number }. { $start } bis { $end } ({ $duration }): { $draw }
log-detail = { $parts }.
log-detail-amps = im Mittel { $current }
log-detail-totals = insgesamt { $totals }
log-draw = Verbrauch
log-chart-label = Verbrauch über die Aufzeichnung, Abschnitte schattiert
log-axis-watts = Verbrauch, W
log-axis-amps = Verbrauch, A
log-axis-hours = Stunden ab Beginn der Aufzeichnung

## Aufzeichnungen: in den Plan

log-bank = Aufgezeichnete Batteriebank
-log-mode-of =
    { $mode ->
        [the-unit] des Kühlgeräts
       *[named] von { $mode }
    }
log-make-bank = Summen als gemessene Batteriebank übernehmen
log-make-claims = Summen mit dem Typenschild vergleichen
log-make-mode = Abschnitt { $number } als Verbrauch { -log-mode-of } übernehmen
log-make-noted = Als Verbrauch { -log-mode-of } übernehmen
log-taken = In den Plan übernommen, als gemessen vermerkt, mit seiner Spanne. „Rückgängig“ nimmt es zurück.
log-not-taken = Nicht übernommen: Die Unsicherheit ist unbekannt, oder der Wert liegt außerhalb dessen, was der Plan annimmt.

## Aufzeichnungen: eine Nacht

log-night-title = Den Plan an diese Nacht anpassen
log-night-hint = Eine Aufzeichnung von { $least } oder länger mit einem Thermometer im Innenraum zeigt, wie viel Wärme Ihr Fahrzeug hereinlässt und was Ihr Kühlgerät aufnimmt. Ein zweites Thermometer außen hilft. Am meisten hilft eine Stunde mit ausgeschaltetem Gerät.
log-night-try = Eine erfundene Nacht ausprobieren
log-night-fit = Den Plan an diese Aufzeichnung anpassen
log-night-fitting = Wird angepasst …
log-night-take = Angepasste Werte in den Plan übernehmen
log-night-taken = Die angepassten Werte stehen im Plan, mit ihren Streuungen. „Rückgängig“ nimmt sie zurück. Passen Sie dieselbe Aufzeichnung nicht noch einmal an: Ihre Messwerte zählen nur einmal.
log-night-changed = Der Plan wurde seit der Anpassung geändert: Passen Sie ihn erneut an.
log-night-other-bank = Der heiße Tag läuft mit der ersten Batteriebank; diese Aufzeichnung ist von einer anderen. Machen Sie sie zur ersten Bank, um sie anzupassen.
log-night-unready = Der Plan hat Fehler, mit denen der heiße Tag nicht gerechnet werden kann. Beheben Sie diese zuerst.
log-night-short = Die Aufzeichnung hat { $covered } mit Messwerten; für eine Anpassung braucht es { $least } oder mehr.
log-night-other-voltage = Die Aufzeichnung entstand bei etwa { $log }, und die Batteriebank des Plans hat { $bank }: Das ist eine andere Anlage, und der Plan wird nicht daran angepasst.
log-night-figure = Größe
log-night-assumed = Angenommen
log-night-fitted = Angepasst
log-night-tells = Sagt es die Aufzeichnung?
log-night-told = ja
log-night-too-little = nein: Die Streuung ist fast so groß wie zuvor
log-night-without-thermometer = nein: keine Innentemperatur in der Aufzeichnung
log-night-without-outdoors = nein: keine Außentemperatur in der Aufzeichnung
log-night-steady-weather = nein: Die Außentemperatur änderte sich kaum, während das Gerät lief
log-night-unit-off = nein: Das Gerät war nie an
log-night-rows-apart = nein: Die Zeilen liegen zu weit auseinander, um das Schalten des Geräts zu sehen; höchstens drei Minuten
log-night-follows-load = nein: Ein geregeltes Gerät hat keine feste Leistungsaufnahme
log-night-own-runs = nein: Die eigenen gemessenen Läufe des Geräts im Plan bleiben
log-night-without-volts = nein: keine Spannung in der Aufzeichnung
log-night-loss = Wärme, die je Kelvin in den Innenraum kommt
log-night-capacity = Wärme, die Luft, Inhalt und Hülle aufnehmen
log-night-per-watt = Kühlleistung je aufgenommenem Watt
log-night-per-watt-at = Kühlleistung je aufgenommenem Watt, bei { $weather } außen
log-night-draw = Leistungsaufnahme des laufenden Geräts
log-night-draw-at = Leistungsaufnahme des laufenden Geräts, bei { $weather } außen
log-night-slope = Änderung der Leistungsaufnahme je Kelvin außen
log-night-usable = Nutzbare Energie der Bank, von voll bis leer
log-night-no-cabin = Die Aufzeichnung hat keine Innentemperatur: Nur die elektrische Seite wird angepasst. Enthält eine Spalte sie, wählen Sie für diese Spalte „Temperatur im Innenraum“ und lesen Sie die Datei erneut ein.
log-night-no-outdoors = Die Aufzeichnung hat keine Außentemperatur: Es gilt das Wetter des Plans, das die Streuungen vergrößert.
log-night-no-clock = Die Aufzeichnung hat keine Uhrzeiten: Als Beginn gilt { $clock }, wie die Nacht des Plans.
log-night-cut = Nur die ersten { $most } der Aufzeichnung werden angepasst.
log-night-charged = Während { $share } der Zeit wurde die Bank geladen. Was das Gerät dabei aufnahm, lässt sich nicht trennen: Zeichnen Sie eine Nacht ohne Laden auf, oder den eigenen Stromkreis des Geräts.
log-night-misfit = Das Modell verfehlt die Innentemperatur um das { $times }-Fache der Streuung eines Thermometers: In dieser Nacht änderte sich noch etwas anderes. Die Streuungen sind dafür vergrößert.
log-night-not-ahead = Das letzte Drittel ließ sich nicht vorhersagen: Die ersten zwei Drittel der Aufzeichnung sind zu kurz.
log-night-held = Der Thermostat hielt { $held } am Thermometer der Aufzeichnung; die Vorhersage nimmt dies statt des Sollwerts, { $set }.
log-night-predicts = Das letzte Drittel, aus den ersten zwei vorhergesagt
log-night-predicts-hint = Nur an die ersten zwei Drittel angepasst, läuft der Plan durch das letzte Drittel, bei der aufgezeichneten Außentemperatur.
log-night-measured = gemessen
log-night-predicted = vorhergesagt
log-night-from-here = ab hier vorhergesagt
log-night-cabin = Temperatur im Innenraum
log-night-used = Entnommene Ladung
log-night-volts = Batteriespannung
log-night-cabin-miss = Weicht um { $miss } ab (quadratisches Mittel), im Mittel um { $mean }. Der Plan vor der Anpassung: { $before }.
log-night-used-miss = In den letzten { $hours } gab die Bank { $measured } ab; vorhergesagt waren { $predicted }, eine Differenz von { $miss }. Der Plan vor der Anpassung: { $before }.
log-night-volts-miss = Weicht um { $miss } ab (quadratisches Mittel). Der Plan vor der Anpassung: { $before }.

## Notizen von Hand

log-notes = Notizen von Hand
log-notes-hint = Anfang, Ende oder Mittel und die Minuten ergeben den Verbrauch einer Betriebsart.
log-note-start-volts = Spannung am Anfang
log-note-end-volts = Spannung am Ende
log-note-start-amps = Strom am Anfang
log-note-end-amps = Strom am Ende
log-note-average = Mittlerer Verbrauch, falls abgelesen
log-note-minutes = Laufzeit
log-note-bad = { $field }: Geben Sie eine Zahl { $accepted } ein.
log-noted = Das ergibt { $figures }.
