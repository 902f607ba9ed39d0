## Cautions

# In other languages each stands beside its English until a speaker of the trade has read
# it: meaning and numbers must be exactly these.

caution-never-leave = Lassen Sie Kinder, Tiere oder Menschen, die sich nicht selbst befreien können, nie unbeaufsichtigt und auf ein batteriebetriebenes Kühlgerät angewiesen zurück. Ein geschlossenes Fahrzeug heizt sich alle 5 Minuten um etwa 1,8 °C (3,2 °F) auf, das meiste davon in den ersten 30.
caution-heat-unattended = { caution-never-leave } Beim Wetter dieses Plans erreicht die geschlossene Kabine ohne Kühlung { $temperature }.
caution-beyond-fifty-volts = Beim Laden liegt die Batteriebank bei { $volts }. Die hier verwendete Kabeltabelle und die Regel für die Absicherung gelten für weniger als 50 V: darüber gelten andere Regeln, und Gleichstrom tötet und hält Lichtbögen aufrecht. Das ist Arbeit für eine Elektrofachkraft.
caution-generator = Betreiben Sie einen Generator nur im Freien, 6 m (20 ft) von jeder Öffnung entfernt, den Auspuff abgewandt: sein Kohlenmonoxid tötet unbemerkt.
caution-engine = Lassen Sie nie einen Motor laufen, während Menschen schlafen, und nie in einem geschlossenen Raum: sein Kohlenmonoxid tötet unbemerkt. Bringen Sie einen Kohlenmonoxidmelder an.
caution-runs-at-night = Nach der Uhr läuft er in der Nacht dieses Plans: schlafen Sie nicht in seiner Nähe.
caution-charged-cold = Lithium darf unter { $least } nicht geladen werden, und diese Batteriebank kann { $coldest } kalt werden: halten Sie alle Ladegeräte und die Solarmodule abgeschaltet, bis sie warm ist. Beim Laden gefrorener Zellen scheidet sich Metall ab; das kann einen Brand auslösen.
caution-lead-acid-gas = Bleibatterien geben beim Laden Wasserstoff ab. Ihr Raum braucht { $air } Luft je Stunde, ins Freie entlüftet: eine Öffnung von { $opening } unten und eine weitere oben.
caution-path-without-fuse = { $circuit }: { $current }, und dafür ist keine Sicherung eingegeben. Ohne Sicherung erhitzt ein Kurzschluss das Kabel, bis es brennt.
caution-alternator = Trennt das BMS, während der Motor lädt, steigt die Spannung der Lichtmaschine sprunghaft an und kann sie und die Fahrzeugelektronik zerstören. Setzen Sie ein dafür gebautes Ladegerät dazwischen.
caution-series-beyond-maker = { $count } Batterien in Reihe, und der Hersteller erlaubt { $most }: tun Sie das nicht.
caution-series-as-allowed = { $count } Batterien in Reihe: nur, wenn der Hersteller so viele erlaubt. Das BMS jeder Batterie muss beim Trennen die Spannung der ganzen Batteriebank aushalten.
caution-parallel-as-allowed = { $count } Stränge parallel: nur so, wie der Hersteller der Batterie es erlaubt.
caution-bms-is-no-fuse = Das BMS der Batterie ersetzt keine Sicherung: Es kann im leitenden Zustand ausfallen.
caution-fuse-at-source = Die Sicherung gehört an die Quelle des Stroms, so nah wie möglich an die Batterie und vor die erste Abzweigung.
caution-copper-only = Nur Kupfer. Kupferkaschiertes Aluminium (CCA) gleichen Querschnitts hat etwa den 1,6-fachen Widerstand und trägt weniger Strom: verwenden Sie es hier nicht.
caution-automotive-gauge = Kabel, das nach SAE-Leiterstärke verkauft wird, enthält weniger Kupfer als die amerikanische Drahtstärke (AWG) gleicher Nummer.
caution-printed-rating-decides = Was für Gleichstrom auf der Sicherung aufgedruckt ist, Spannung und Ausschaltvermögen, geht jeder Tabelle vor.
caution-codes-govern = Örtliche Vorschriften und die Praxis zugelassener Fachbetriebe sind maßgebend und können mehr verlangen.
caution-local-codes = { caution-codes-govern } Zeigen Sie die gedruckte Seite einer Elektrofachkraft, bevor Sie etwas kaufen oder verlegen.
caution-estimates = Das ersetzt weder örtliche Vorschriften noch eine Elektrofachkraft. Schätzungen sind keine Garantie.
# Which bank, where there are several.
caution-of-bank = { $bank }: { $caution }

## Where cautions come from

caution-source-heat = McLaren, Null & Quinn, Pediatrics 116 (2005) e109
caution-source-fifty-volts = Geltungsbereich von 33 CFR 183.425 und 183.455; NFPA 70 Kapitel 4 und Artikel 480, nicht am Text der Norm geprüft
caution-source-generator = US Consumer Product Safety Commission
caution-source-engine = US Consumer Product Safety Commission zu Kohlenmonoxid, nicht an deren Text geprüft
caution-source-cold = übliche Grenze der Zellhersteller
caution-source-gas = 33 CFR 183.420; EN 50272-3 / IEC 62485-3
caution-source-fuse = 33 CFR 183.455; NFPA 70 Abschnitt 240.21, nicht am Text der Norm geprüft
caution-source-maker = Angabe des Herstellers, wie eingegeben
caution-source-gauge = SAE gegen Querschnitte nach ASTM B258; übliche Praxis
caution-source-practice = übliche Praxis
