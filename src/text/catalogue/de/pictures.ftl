## The wiring diagram

picture-wiring = Verkabelung, einpoliger Übersichtsplan
picture-wiring-hint = Tippen Sie auf ein Kabel für seine Regeln und Quellen. Haken: trägt den Strom. Kreuz: reicht nicht. Raute: noch nicht geprüft.
picture-wiring-caption = Eine Linie steht für Plus und Minus. Symbole nach IEC 60617: Batterie, Sicherung, Wandler, Solarmodul, Motor.
picture-bank = Batteriebank
picture-begin-at-bank = Die Kabel beginnen an ihren Klemmen.
picture-controller = Solarladeregler
picture-loads = Andere Verbraucher
picture-not-worked-out = Das Kabel dorthin wird hier nicht berechnet.
picture-beyond-tables = nicht geprüft: eine Zahl liegt außerhalb der Tabellen
# How a path is opened, as it is read out.
picture-opens = { $title }: { $verdict }. Regeln anzeigen.
picture-counts-as = { $size } (bemessen als { $other })
picture-size-in-both = { $size } ({ $other })
picture-each-way = { $length } einfache Länge
picture-each-way-assumed = { $length } einfache Länge (angenommen)
picture-conductor = { $size }, { $length }
picture-current = { $current } bei { $volts }
picture-current-drops = { $current } bei { $volts }, Spannungsfall { $drop } ({ $percent })
picture-current-would-drop = { $current } bei { $volts }; mit { $size } wäre der Spannungsfall { $drop } ({ $percent })
picture-fuse = Sicherung { $rating }
picture-fuse-missing = Sicherung nicht angegeben, { $rating } passt
picture-fuse-none-fits = Sicherung nicht angegeben, keine passt
picture-panel-fuses =
    { NUMBER($strings) ->
        [one] { $strings } Strang, mit einer Sicherung von { $rating }
       *[other] { $strings } Stränge, in jedem eine Sicherung von { $rating }
    }
# $volts: the panels' open-circuit voltage on the coldest morning.
picture-cold-fits = Leerlaufspannung { $volts } bei { $temperature }, Grenze des Reglers { $limit }
picture-cold-fails = reicht nicht: Leerlaufspannung { $volts } bei { $temperature }, Grenze des Reglers { $limit }
picture-cold-open = Leerlaufspannung { $volts } bei { $temperature }; die Grenze des Reglers ist nicht angegeben
picture-batteries = { $count } × { $volts }, { $capacity }, { $chemistry }
picture-string-fuse = Je Strang eine Sicherung: { $rating } (empfohlen)
picture-dc-converter = DC-DC-Wandler auf { $volts }
picture-inverter = Wechselrichter
picture-inverter-rated = Wechselrichter, { $power }
picture-sized-for-mode =
    ausgelegt für { $mode ->
        [the-unit] das Kühlgerät
       *[named] { $mode }, die Betriebsart mit der höchsten Aufnahme
    }
picture-sized-for-rating = ausgelegt für die volle Nennleistung
picture-charger = Ladegerät { $number }, Quelle: { $source }
picture-at-most = höchstens { $current }
picture-panels = Solarmodule, { $power }
picture-panel-groups =
    { NUMBER($groups) ->
        [one] Solarmodule, { $groups } Gruppe, { $power }
       *[other] Solarmodule, { $groups } Gruppen, { $power }
    }

## The bank, the flows and the claims

picture-the-bank = Die Batteriebank, Batterie für Batterie
picture-the-bank-caption = Jedes Zeichen ist eine Batterie, die lange Platte ihr Pluspol. Parallele Stränge teilen den Strom je nach Anschluss der Hauptleitungen (Kirchhoffsche Regeln).
picture-many = × { $count }
picture-strings = × { $count } Stränge
picture-bank-counts = { NUMBER($series) } in Reihe, { NUMBER($parallel) } parallel
picture-main-cables = Hauptleitungen: { $place }
picture-main-cables-assumed = Hauptleitungen: { $place } (angenommen)
picture-battery-gives = Dauerstrom: { $current }
picture-batteries-alike = Alle gleich: je { $current }
picture-most-loaded = Höchstbelastete Batterie: { $current }
picture-of-limit = { $what }, Grenze { $limit }: { $verdict }
picture-no-limit = { $what }; Grenze nicht angegeben
picture-at-start = Beim Anlauf: { $current }
picture-one-open = Wenn ein Strang ausfällt: { $current }
picture-while-charging = Beim Laden: { $current }
picture-energy = Wohin die Energie geht
picture-energy-caption = Die Bänder sind so breit wie ihre Wattstunden; beide Seiten ergeben dieselbe Summe.
picture-heat = Woher die Wärme im Innenraum kommt
picture-heat-caption = Wärme, die die Temperatur hebt (sensible Wärme), über die ganze Zeit; die Bänder sind so breit wie ihre Wattstunden.
picture-claims = Angegeben und gemessen
picture-claims-caption = Der Punkt ist der Messwert, der Balken seine Unsicherheit (k = 2, etwa 95 %). Der senkrechte Strich ist die Herstellerangabe.
picture-comes-in = kommt herein
picture-goes-out = geht hinaus
picture-flow-what = Was
picture-flow-direction = Richtung
picture-flow-wh = Energie (Wh)
picture-flow = { $energy }, { $percent }
picture-flow-small = { $energy }, < 1 %
picture-in-all = { $energy } gesamt
picture-from-panels = Module
picture-from-chargers = Ladegeräte
picture-from-bank = Aus der Batteriebank
picture-to-unit = Kühlgerät mit Wandler und Kabel
picture-to-loads = Andere Verbraucher
picture-to-losses = Verlust in der Batteriebank
picture-to-bank = In die Batteriebank
picture-spilled = Solarertrag, nicht genutzt
picture-unit-heat = Kühlgerät
picture-heat-sun-glass = Sonne durch Glas
picture-heat-out-glass = Durch Glas hinaus
picture-heat-sun-shell = Sonne auf Wände und Dach
picture-heat-to-sky = Wände und Dach an den Himmel
picture-heat-glass = Durch Glas
picture-heat-shell = Durch Wände und Dach
picture-heat-out-shell = Durch Wände und Dach hinaus
picture-heat-air-in = Zuluft
picture-heat-air-out = Abluft
picture-heat-people = Menschen und Tiere
picture-heat-things = Andere Wärmequellen innen
picture-heat-from-store = Aus Luft, Inhalt und Wänden
picture-heat-to-store = In Luft, Inhalt und Wänden gespeichert
picture-measured = gemessen { $value }
picture-claimed = angegeben { $value }
picture-claimed-within = angegeben { $value } ±{ $percent } %
