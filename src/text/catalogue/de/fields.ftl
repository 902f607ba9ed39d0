## Lists and whole parts

lists-banks = Batteriebänke
lists-open-circuit = Tabelle der Leerlaufspannung
lists-unit-map = Gemessenes Leistungskennfeld
    .hint = Zwei bis zwanzig eingeschwungene Messungen dieses Geräts, möglichst bei verschiedenen Außentemperaturen. Sie bestimmen, wie sich Leistungsaufnahme und Kälteleistung mit der Luft ändern; den Rest geben veröffentlichte Kennlinien.
lists-units = Kühlgeräte
lists-modes = Betriebsarten
lists-loads = Andere Verbraucher
lists-imported = Stunden aus einer Wetterdatei
lists-arrays = Solarmodule
lists-chargers = Ladegeräte
lists-mode-plan = Betriebsplan
lists-check-ins = Ablesungen in der Nacht
lists-claims = Herstellerangaben

## Bank

bank-battery-nominal-v = Nennspannung einer Batterie
bank-battery-rated-ah = Kapazität einer Batterie
    .hint = Wie aufgedruckt. „2x100“ und „1280 Wh“ werden verstanden.
bank-rated-hours-h = Entladezeit der Kapazitätsangabe
    .hint = 20 h bedeutet C20.
bank-series-count = Batterien in Reihe
bank-parallel-count = Batterien oder Stränge parallel
bank-health-percent = Alterungszustand (SOH)
bank-start-charge-percent = Ladezustand zu Beginn
bank-depth-percent = Maximale Entladetiefe
    .hint = Anteil der Kapazität, den Sie nutzen wollen.
bank-cutoff-v = Abschaltspannung der Batterie
    .hint = An den Klemmen der Batteriebank. Lithium: Unterspannungsabschaltung des BMS; Blei: Entladeschlussspannung.
bank-battery-current-limit-a = Maximaler Dauerstrom einer Batterie
    .hint = Leer: keine Grenze wird geprüft.
bank-battery-resistance-mohm = Innenwiderstand einer Batterie
bank-polarisation-percent = Polarisation, Anteil des Üblichen
    .hint = Spannungsabfall über den Innenwiderstand hinaus, größer bei hohem Strom und Kälte. Ein Widerstand vom Typenschild oder Messgerät enthält sie nicht; aus einem Lastversuch über Minuten enthält er sie: dann 0 %.
bank-peukert-exponent = Peukert-Exponent
bank-parasitic-w = Eigenverbrauch von BMS und Batteriemonitor
bank-measured-ah = Gemessene Kapazität, ganze Batteriebank
    .hint = Von voll bis zur Abschaltung der Batterie. Ersetzt Nennkapazität und Alterungszustand.
bank-measured-wh = Gemessene Energie, ganze Batteriebank
    .hint = An den Klemmen, in derselben Messung.
bank-measured-load-w = Last bei dieser Messung

## Cooling unit's supply and cable

unit-supply-v = Nennspannung des Geräts
unit-cutoff-v = Unterspannungsabschaltung des Geräts
    .hint = An den Klemmen des Geräts, nach dem Kabel. Leer: keine.
unit-cable-length-m = Kabellänge, einfacher Weg
unit-cable-area-mm2 = Leiterquerschnitt
    .hint = „16“, „16 mm2“ oder „6 AWG“. Leer: nicht geprüft, und die Stunden rechnen mit 16 mm².
unit-cable-temperature-c = Leitertemperatur
unit-connections-mohm = Widerstand von Sicherungen, Schaltern und Kabelschuhen
unit-output-v = Ausgangsspannung des Wandlers
unit-efficiency-percent = Wirkungsgrad des Wandlers
unit-idle-w = Leerlaufverbrauch des Wandlers
unit-limit-a = Stromgrenze des Wandlers
unit-no-load-w = Leerlaufverbrauch des Wechselrichters
unit-proportional-loss-percent = Proportionaler Verlust des Wechselrichters
unit-square-loss-percent-per-kw = Quadratischer Verlust des Wechselrichters
unit-limit-w = Dauerleistung des Wechselrichters
unit-inverter-cutoff-v = Unterspannungsabschaltung des Wechselrichters
    .hint = An seinem Eingang, nach dem Kabel. Leer: keine.

## Modes, night and loads

mode-power-w = Leistungsaufnahme im Betrieb
    .hint = Watt in das Gerät, solange es läuft.
mode-current-a = Stromaufnahme im Betrieb
    .hint = Ampere in das Gerät, solange es läuft.
mode-measured-at-v = Gemessen bei der Spannung
mode-duty-percent = Einschaltdauer des Kompressors
mode-standby-w = Bereitschaftsleistung, Kompressor aus
mode-cooling-w = Kälteleistung im Betrieb
night-start-clock-min = Beginn
night-wanted-h = Gewünschte Stunden
night-ageing-percent = Ausgelegt für diese Restkapazität
    .hint = Die Batteriebank wird so bemessen, dass sie noch genügt, wenn durch Alterung nur dieser Rest bleibt.
night-margin-percent = Zusätzliche Reserve
load-power-w = Leistungsaufnahme

## The hot day

day-days-count = Tage
day-year = Jahr
day-month = Monat
day-day-of-month = Tag im Monat
day-utc-offset-min = Abstand der Uhr zu UTC
day-latitude-deg = Geografische Breite, Nord positiv
day-longitude-deg = Geografische Länge, Ost positiv
day-altitude-m = Höhe über dem Meer
day-high-c = Höchsttemperatur des Tages
day-low-c = Tiefsttemperatur der Nacht
day-dew-point-c = Taupunkt außen
day-humidity-percent = Relative Feuchte bei der Höchsttemperatur
day-cloud-percent = Bewölkung
day-linke-turbidity = Trübung (nach Linke)
day-wind-m-s = Windgeschwindigkeit
day-ground-albedo-percent = Bodenreflexion (Albedo)
day-samples-count = Simulierte Nächte
day-seed-number = Startwert der Zufallszahlen

## The cabin

cabin-inside-length-m = Innenlänge
cabin-shade-percent = Schatten
cabin-people-count = Personen
cabin-animals-count = Tiere
cabin-animal-kg = Gewicht je Tier
cabin-away-from-clock-min = Alle sind weg ab
cabin-away-until-clock-min = Zurück um
cabin-air-changes-per-h = Luftwechsel
cabin-aired-changes-per-h = Luftwechsel, alles offen
cabin-set-point-c = Solltemperatur
cabin-dead-band-k = Schaltdifferenz, von Ein bis Aus
cabin-start-c = Innentemperatur zu Beginn
cabin-gains-w = Andere Wärmequellen innen
cabin-floor-m2 = Bodenfläche
cabin-volume-m3 = Luftvolumen
cabin-roof-m2 = Dachfläche
cabin-walls-m2 = Wandfläche
cabin-wall-glass-m2 = Fensterfläche
cabin-roof-glass-m2 = Fläche der Dachfenster
cabin-lit-walls-percent = Anteil der Wände, den die Sonne erreicht
cabin-shell-w-m2-k = U-Wert von Wänden und Dach
cabin-glass-w-m2-k = U-Wert der Verglasung
cabin-glass-gain-percent = g-Wert der Verglasung
cabin-absorptance-percent = Solarer Absorptionsgrad außen
cabin-air-capacity-kj-k = Wärmekapazität von Luft und Einrichtung
cabin-shell-capacity-kj-k = Wärmekapazität der Hülle
cabin-moisture-buffer = Feuchte in Verkleidung und Bettzeug

## What the cooling unit gives

cooling-cooling-w = Volllast-Kälteleistung bei Nennbedingungen
cooling-cop = Leistungszahl (COP)
cooling-rated-outdoor-c = Außentemperatur der Nennbedingungen
cooling-rated-wet-bulb-c = Feuchtkugeltemperatur am Eintritt, Nennbedingungen
cooling-floor-percent = Kleinste Kälteleistung
cooling-airflow-m3-h = Luftstrom durch den Verdampfer
cooling-sensible-percent = Sensibler Anteil
cooling-intake-rise-k = Kondensator-Zuluft über Umgebung
cooling-start-loss-min = Kühlung, die jeder Start kostet
    .hint = Minuten bei voller Kälteleistung: Der Kompressor zieht Strom, bevor der Verdampfer kalt ist. Keine bei Drehzahlregelung.

## A reading of the performance map

map-outdoor-c = Zuluft des Kondensators
map-entering-wet-bulb-c = Feuchtkugel am Eintritt
map-draw-w = Leistungsaufnahme
map-cooling-w = Gesamte Kälteleistung

## Charge controller, panels and chargers

supply-controller-limit-a = Stromgrenze des Ladereglers
supply-controller-limit-v = Maximale Eingangsspannung des Ladereglers
supply-controller-efficiency-percent = Wirkungsgrad des Ladereglers
supply-panel-power-percent-per-k = Temperaturkoeffizient von Pmax
supply-panel-volts-percent-per-k = Temperaturkoeffizient von Voc
supply-array-loss-percent = Verlust durch Staub, Kabel und Alter
supply-bank-c = Temperatur der Batteriebank
supply-refill-from-percent = Aufladen von
supply-refill-to-percent = Aufladen bis
supply-fuel-price-per-l = Kraftstoffpreis je Liter
supply-shore-price-per-kwh = Landstrompreis je kWh
array-rated-w = Nennleistung, alle diese Module
array-tilt-deg = Neigung
array-azimuth-deg = Ausrichtung, im Uhrzeigersinn ab Nord
array-shading-percent = Verlust durch Schatten
array-panels-series-count = Module in Reihe
array-panels-parallel-count = Modulstränge parallel
array-panel-best-v = Vmp eines Moduls
array-panel-open-v = Voc eines Moduls
array-panel-short-a = Isc eines Moduls
charger-most-a = Maximaler Ladestrom des Geräts
charger-efficiency-percent = Wirkungsgrad des Ladegeräts
charger-hold-v = Ladeschlussspannung (Absorption, CV)
charger-from-clock-min = Ein ab
charger-until-clock-min = Ein bis
charger-source-w = Verfügbare Leistung für das Ladegerät
charger-fuel-l = Verfügbarer Kraftstoff
charger-fuel-l-per-kwh = Kraftstoff je kWh
mode-row-from-clock-min = Ab
check-in-clock-min = Uhrzeit
check-in-day-count = Nächte davor
check-in-charge-percent = Ladezustand laut Monitor
check-in-cabin-c = Innentemperatur

## Claims

claim-claimed = Angegeben
claim-claimed-most = Angegeben, bis zu
claim-measured = Gemessen
claim-tolerance-percent = Toleranz laut Herstellerangabe
claim-of-reading-percent = Fehlergrenze, vom Messwert
claim-of-full-scale-percent = Fehlergrenze, vom Endwert
claim-full-scale-number = Messbereichsendwert
claim-counts-number = Fehlergrenze, Digits der letzten Stelle
claim-one-count-number = Wert eines Digits
claim-measured-min = Dauer der Messung
claim-rate-a = Mittlerer Strom der Messung
claim-test-c = Temperatur bei der Messung
claim-rated-c = Temperatur der Herstellerangabe
claim-grille-m2 = Freie Fläche des Gitters

## Air side

air-altitude-m = Höhe über dem Meer
air-inlet-c = Lufttemperatur am Eintritt
air-inlet-humidity-percent = Relative Feuchte am Eintritt
air-outlet-c = Lufttemperatur am Austritt
air-outlet-humidity-percent = Relative Feuchte am Austritt
air-airflow-m3-h = Luftstrom
air-free-area-m2 = Freie Fläche des Gitters
air-power-w = Leistungsaufnahme zur selben Zeit

## Price

price-price-number = Kaufpreis der Batteriebank
price-cycles-count = Angegebene Zyklenzahl
price-cycle-depth-percent = Entladetiefe je Zyklus
price-left-percent = Restkapazität nach diesen Zyklen

## Wiring

wiring-distribution-m = Kabel, einfacher Weg
    .hint = Leer: die Kabel beginnen an der Batteriebank. Frage 1 rechnet dieses Kupfer mit.
wiring-one-way-m = Kabel, einfacher Weg
wiring-conductor-mm2 = Leiterquerschnitt
    .hint = „16“, „16 mm2“ oder „6 AWG“. Kupfer.
wiring-start-a = Anlaufstrom des Geräts
wiring-start-ms = Dauer des Anlaufstroms
wiring-inverter-peak-w = Spitzenleistung des Wechselrichters
wiring-battery-peak-a = Spitzenstrom einer Batterie
    .hint = Leer: der Anlaufstrom wird mit dem Dauerstrom verglichen.
wiring-battery-peak-ms = Zulässige Dauer dieses Spitzenstroms
wiring-battery-charge-a = Maximaler Ladestrom einer Batterie
wiring-charge-least-c = Kein Laden unter (Kältesperre)
wiring-battery-fault-a = Kurzschlussstrom einer Batterie
    .hint = Laut Datenblatt. Leer: aus der Spannung und dem kleinsten wahrscheinlichen Widerstand berechnet.
wiring-link-mohm = Widerstand einer Verbindung zwischen Batterien
    .hint = Mit Kabelschuhen; bei Sammelschienen eine Zuleitung.
wiring-most-series-count = Vom Hersteller erlaubte Batterien in Reihe
wiring-coldest-c = Kältester Morgen des Jahres
installation-insulation-c = Temperaturbeständigkeit der Isolierung
installation-terminal-c = Niedrigste zulässige Klemmentemperatur
installation-air-c = Heißeste Luft ringsum
installation-bundled-count = Leiter im Bündel
    .hint = Die stromführenden, samt den zwei dieses Stromkreises.
installation-allowed-drop-percent = Zulässiger Spannungsfall
installation-fuse-a = Eingebaute Sicherung
    .hint = Wie aufgedruckt. Leer: eine wird empfohlen.
installation-fuse-along-m = Abstand der Sicherung von der Quelle

## Chemistries

chemistry-lfp = LFP (Lithium-Eisenphosphat)
chemistry-nmc = NMC (Lithium-Nickel-Mangan-Kobalt)
chemistry-sodium-ion = Natrium-Ionen
chemistry-agm = Blei-Säure, AGM
chemistry-gel = Blei-Säure, Gel
chemistry-flooded = Blei-Säure, nass

## Where a number comes from

origin-label = Etikett
origin-measured = gemessen
origin-guess = geschätzt
origin-question = { $field }: woher die Zahl kommt
