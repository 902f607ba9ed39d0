## Handing on

hand-on-copy = Satz kopieren
hand-on-copied = Kopiert.
hand-on-not-copied = Der Browser lässt die Seite nicht kopieren: markieren Sie den Text und kopieren Sie ihn.
hand-on-qr-title = Der Link als QR-Code
hand-on-qr-name = QR-Code des Links zu diesem Plan
hand-on-qr-save = Code speichern
hand-on-qr-too-long = Der Link dieses Plans ist für einen QR-Code zu lang. Kopieren Sie den Link oder senden Sie die Datei.
# The length of a link, for those who paste it somewhere narrow.
hand-on-link-length =
    { NUMBER($characters) ->
        [one] Mit einem Link von { $characters } Zeichen.
       *[other] Mit einem Link von { $characters } Zeichen.
    }
hand-on-report = Ein Bericht zum Drucken, ein bis zwei Seiten
hand-on-report-print = Drucken
hand-on-report-save = Als Seite speichern
hand-on-figures = Abbildungen
hand-on-figures-hint = Auf Weiß, mit Titel und Quelle im Bild. SVG bleibt in jeder Größe scharf; PNG lässt sich überall öffnen.
hand-on-tables = Tabellen
hand-on-tables-hint = CSV für eine Tabellenkalkulation (Dezimalpunkt, Spalten durch Komma getrennt), Markdown für einen Beitrag.
hand-on-whole = Die ganze Antwort
hand-on-whole-hint = Alle Ergebnisse als JSON, für ein Programm. Format: siehe README des Moduls.
hand-on-save-answer = Antwort als JSON speichern
# What a file of this kind is called on its button, for those who do not see what stands
# beside it.
hand-on-save-as = „{ $title }“ als { $kind } speichern
hand-on-saved = Download gestartet: { $name }
hand-on-nothing-yet = Noch nichts weiterzugeben: berichtigen Sie zuerst die markierten Felder.
hand-on-not-saved = Der Browser lässt die Seite hier keine Dateien speichern.
hand-on-png-failed = Der Browser konnte das PNG nicht erzeugen. Das SVG zeigt dieselbe Abbildung.

## The sentence to copy

# $run and $detail are whole sentences.
hand-on-sentence = { $run } Batteriebank: { $bank } ({ $chemistry }), Entladetiefe { $depth }. { $detail }
hand-on-sentence-no-depth = { $run } Batteriebank: { $bank } ({ $chemistry }). { $detail }

## The report

hand-on-report-title = Eine Nacht an der Batteriebank
hand-on-report-plan = Der Plan
hand-on-report-findings = Hinweise zu den Eingaben
hand-on-report-link = Diesen Plan öffnen
hand-on-made-with = { $page }, Methode { $method }. Schätzungen sind keine Garantie.
hand-on-from-to = { $low } bis { $high }
# When a run is over, by the day of its start.
hand-on-until =
    { NUMBER($days) ->
        [0] { $clock }, am selben Tag
        [1] { $clock }, am nächsten Tag
       *[other] { $clock }, { $days } Tage später
    }
# How a unit is fed.
hand-on-feed = Stromversorgung
hand-on-fed = { hand-on-feed }: { $how }
hand-on-feed-direct = direkt aus der Batteriebank
hand-on-feed-dc = über einen DC-DC-Wandler
hand-on-feed-inverter = über einen Wechselrichter

## Parts of the plan

hand-on-part-night = Nacht
hand-on-part-cabin = Kabine
hand-on-part-panels = Modulgruppe { $number }
hand-on-part-charger = Ladegerät { $number }
hand-on-part-supply = Ladequellen
hand-on-part-claim = Herstellerangabe { $number }
hand-on-part-air = Kälteleistung aus Luftmessungen
hand-on-part-price = Preis

## Titles of tables

hand-on-table-runs = Laufzeit jeder Betriebsart
hand-on-table-sizes = Ergebnisse der Auslegung
hand-on-table-plan = Der Plan mit den angenommenen Werten
hand-on-table-moments = Der heiße Tag, Schritt für Schritt
hand-on-table-days = Der heiße Tag, Tagessummen
hand-on-table-claims = Herstellerangaben und Messungen
hand-on-table-air = Kälteleistung aus Luftmessungen
hand-on-table-price = Kosten einer Wattstunde

## Columns that several tables have

hand-on-head-mode = Betriebsart
hand-on-head-unit-name = Kühlgerät
hand-on-head-bank = Batteriebank
hand-on-head-what = Größe
hand-on-head-value = Wert
hand-on-head-unit = Einheit
hand-on-head-uncertainty = Erweiterte Unsicherheit (k ≈ 2)

## Columns of the table of runs

hand-on-head-hours = Laufzeit
hand-on-head-likely = Laufzeit, wahrscheinlich (h)
hand-on-head-low = Laufzeit, unteres Ende (h)
hand-on-head-high = Laufzeit, oberes Ende (h)
hand-on-head-range = Spanne
hand-on-head-until = Bis etwa
hand-on-head-end = Wie sie endet
hand-on-head-mean-power = Mittlere Leistung an der Batteriebank (W)
hand-on-head-mean-current = Mittlerer Strom (A)
hand-on-head-drawn-ah = Aus der Batteriebank entnommen (Ah)
hand-on-head-drawn-wh = Aus der Batteriebank entnommen (Wh)
hand-on-head-unit-wh = Am Gerät angekommen (Wh)
hand-on-head-lost-wh = In der Batteriebank verloren (Wh)

## Columns of the hot day

hand-on-head-after-start = Zeit nach dem Beginn (h)
hand-on-head-clock = Uhrzeit
hand-on-head-charge = Ladezustand (%)
hand-on-head-volts = Klemmenspannung (V)
hand-on-head-amps-out = Strom aus der Batteriebank (A)
hand-on-head-cabin = Kabine ({ $unit })
hand-on-head-outdoors = Außen ({ $unit })
hand-on-head-humidity = Relative Luftfeuchte in der Kabine (%)
hand-on-head-panels = Von den Solarmodulen (W)
hand-on-head-chargers = Von Ladegeräten (W)
hand-on-head-loads = Verbraucher (W)
hand-on-head-unit-power = Kühlgerät (W)
hand-on-head-cooling = Genutzte Kälteleistung (W)
hand-on-head-day = Tag
hand-on-head-day-panels = Von den Solarmodulen (Wh)
hand-on-head-day-chargers = Von Ladegeräten (Wh)
hand-on-head-day-loads = Verbraucher (Wh)
hand-on-head-day-unit = Kühlgerät (Wh)
hand-on-head-least = Niedrigster Ladezustand (%)
hand-on-head-at-end = Ladezustand am Ende (%)
hand-on-head-warmest = Wärmste Kabine, während das Gerät laufen soll ({ $unit })
hand-on-head-off = Batteriebank abgeschaltet (h)
hand-on-head-unit-off = Nur das Gerät angehalten (h)
hand-on-head-above = Über dem Sollwert (h)

## Columns and words of the claims

hand-on-head-claim = Herstellerangabe
hand-on-head-about = Worüber
hand-on-head-claimed = Angegeben
hand-on-head-claimed-most = Angegeben, höchstens
hand-on-head-measured = Gemessen
hand-on-head-share = Gemessen von angegeben (%)
hand-on-head-verdict = Urteil
hand-on-head-why-none = Warum keine Unsicherheit angegeben ist
hand-on-claimed-charge = Kapazität ({ $unit })
hand-on-claimed-energy = Energie ({ $unit })
hand-on-claimed-draw = Leistungsaufnahme ({ $unit })
hand-on-claimed-airflow = Luftstrom ({ $unit })
hand-on-claimed-temperature = Temperatur ({ $unit })
hand-on-claimed-cooling = Kälteleistung ({ $unit })
hand-on-claimed-eer = Energieeffizienzverhältnis EER (BTU/Wh)

## Columns and rows of what was asked

hand-on-head-wanted = Gewünschte Stunden (h)
hand-on-size-hours = Laufzeit an dieser Batteriebank
hand-on-size-draw = höchste Leistungsaufnahme
hand-on-size-depth = Entladetiefe
hand-on-size-new = mindestens, im Neuzustand
hand-on-size-reserve = mit Alterung und Reserve
hand-on-size-batteries = Batterien
hand-on-size-runs-new = Laufzeit in neuem Zustand
hand-on-size-runs-aged = Laufzeit in gealtertem Zustand

## Columns of the plan

hand-on-head-part = Teil
hand-on-head-origin = Herkunft
hand-on-head-spread = Unsicherheit (%)
hand-on-head-stated = Eingegeben oder angenommen
hand-on-head-key = Schlüssel
hand-on-stated = eingegeben
hand-on-assumed = angenommen
