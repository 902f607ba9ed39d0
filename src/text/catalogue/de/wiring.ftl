## Wiring and charging: the page

wiring-no-answer = Noch keine Antwort: Bitte korrigieren Sie die markierten Felder.
wiring-circuits = Kabel für Kabel
wiring-circuits-hint = Öffnen Sie ein Kabel, um die entscheidende Regel und ihre Quelle zu sehen. Die Größen sind die kleinsten jedes Systems, die alle Regeln erfüllen.
wiring-rule = Regel
wiring-yours = Ihres
wiring-passes = erfüllt
wiring-fails = nicht erfüllt
wiring-decides = { $rule } (entscheidet)
wiring-none = keiner
wiring-sources = Quellen der Regeln
wiring-the-fuse = Sicherung
wiring-recommended = Empfohlen: { $fuse }
wiring-place = Einbauort: { $places }.
wiring-kind = Bauart
wiring-breaks = Ausschaltvermögen
wiring-here = In diesem Stromkreis
wiring-kinds-source = Ausschaltvermögen je Bauart: typische Werte aus dem Gedächtnis, vorsichtig angesetzt. Prüfen Sie das Datenblatt der Sicherung.
wiring-batteries = Batterien
wiring-for-hours = Dauerbetrieb
wiring-at-start = Beim Anlauf
wiring-one-open = Ein Strang abgeschaltet
wiring-charging = Laden
wiring-panels = Solarmodule
wiring-cautions = Sicherheit
wiring-fields = Ihre Kabel
wiring-bank-limits = Grenzwerte der Batterien und Anlauf
wiring-supply = Was die Batteriebank lädt
wiring-where = Wo die Anlage ist
wiring-take-off = Anschluss der Hauptkabel
wiring-strands = Leiteraufbau
wiring-fuse-kind = Bauart der Hauptsicherung
wiring-not-entered = nicht angegeben
wiring-engine-space = Führt durch einen Motorraum
wiring-enclosed = Verläuft in Wand, Rohr oder Kanal
wiring-mixed = Batterien verschiedenen Alters, Fabrikats oder Gebrauchs sind zusammengeschaltet
wiring-laid = Verlegung und Sicherung

## The page to take to an electrician

wiring-sheet = Ein Blatt für die Elektrofachkraft
wiring-sheet-print = Dieses Blatt für die Elektrofachkraft drucken
wiring-sheet-title = Verkabelung, zur Prüfung durch eine Elektrofachkraft
wiring-sheet-method = Von Till Morning aus den folgenden Zahlen berechnet. Gleichstrom, nur Kupfer. Eine Grundlage für eine Elektrofachkraft: Es gelten die örtlichen Vorschriften.
wiring-sheet-taken = Eingaben
wiring-assumed = { $text } (angenommen)
wiring-sheet-fault-not-entered = Ausschaltvermögen: nicht geprüft, Kurzschlussstrom nicht angegeben
wiring-sheet-fault = Ausschaltvermögen: mindestens { $fault } bei { $volts }
wiring-sheet-sign = Geprüft von, Zulassung, Datum:
wiring-sheet-cable = Kabel, einfache Länge
wiring-sheet-amps = Strom: Nennspannung / niedrigste Spannung / Anlauf
wiring-sheet-there = Vorhanden
wiring-sheet-smallest = Mindestgröße
wiring-sheet-decided = Entscheidend
wiring-sheet-drop = Spannungsfall, Leiter betriebswarm
wiring-nothing-passes = keine Größe genügt
wiring-paper-drop = { $drop } ({ $percent }) von { $volts }
wiring-paper-fuse = { $rating } (höchstens { $most } an { $conductor }); { $breaking }
wiring-paper-fuse-fitted = { wiring-paper-fuse }; vorhanden: { $fitted }
wiring-none-fits = keine passt
-wiring-paper-bank = Batteriebank: { $chemistry }; { $series } in Reihe, { $parallel } parallel, je { $volts } und { $charge }; Nennspannung { $nominal }, beim Laden { $charging }
wiring-paper-bank = { -wiring-paper-bank }.
wiring-paper-bank-lowest = { -wiring-paper-bank }, mindestens { $lowest }.
wiring-paper-unit = Gerät: { $unit }, direkt an der Batteriebank.
wiring-paper-unit-converter = Gerät: { $unit }, über einen DC-DC-Wandler auf { $volts }, { $rating }.
wiring-paper-unit-inverter = Gerät: { $unit }, über einen Wechselrichter, { $rating }.
wiring-rating-missing = Nennwert nicht angegeben
wiring-taken-system = Anlage: { $place }. Anschluss der Hauptkabel: { $take-off }. Ladespannung bis { $volts }.
-wiring-taken-cable = { $circuit }: Isolierung { $insulation }, Anschlüsse { $terminals }, Luft { $air }, { $bundle }, { $strands }
wiring-taken-cable = { -wiring-taken-cable }.
wiring-taken-cable-engine = { -wiring-taken-cable }, durch einen Motorraum.
wiring-bundle =
    { NUMBER($count) ->
        [one] { NUMBER($count) } Leiter im Bündel
       *[other] { NUMBER($count) } Leiter im Bündel
    }

## Names of circuits, fuses, conductors and places

wiring-circuit-distribution = Batteriebank zur Verteilung
wiring-circuit-unit = Zum Gerät
wiring-circuit-charger = Ladegerät zur Batteriebank
wiring-circuit-panel = Solarmodule zum Laderegler
wiring-place-vehicle = in einem Fahrzeug
wiring-place-boat = auf einem Boot
wiring-place-cabin = in einer Hütte oder einem Haus
wiring-take-off-same-end = gleiches Ende, beide an der ersten Batterie
wiring-take-off-diagonal = diagonal, Plus an der ersten und Minus an der letzten Batterie
wiring-take-off-busbar = Sammelschienen mit gleich langen Leitungen
wiring-strands-fine = feindrähtig, blankes Kupfer
wiring-strands-tinned = feindrähtig, verzinntes Kupfer
wiring-strands-few = mehrdrähtig, wenige dicke Drähte
wiring-strands-solid = eindrähtig, massiv
wiring-fuse-blade = Flachsicherung
wiring-fuse-strip = geschraubte Streifensicherung (ANL)
wiring-fuse-post = Polsicherung auf der Batterieklemme (MRBF)
wiring-fuse-class-t = Klasse-T-Sicherung
wiring-fuse-breaker = DC-Leitungsschutzschalter
# The cable of a circuit within a sentence.
-wiring-cable =
    { $circuit ->
        [distribution] das Kabel zur Verteilung
        [unit] das Kabel zum Gerät
        [charger] das Ladekabel
       *[panel] das Modulkabel
    }

## The answer, and verdicts

wiring-carries = ausreichend
wiring-fails-because = unzureichend: { $why }
wiring-needs-sizes = noch nicht angegeben, nötig: { $sizes }
wiring-needs-no-size = noch nicht angegeben; kein einzelner Leiter der Tabellen ist groß genug
wiring-not-judged-yet = noch nicht geprüft
wiring-waits-for = noch nicht geprüft, es fehlt: { $names }
wiring-line = { $size }, { $verdict }
wiring-quoted = „{ $name }“
wiring-names-and-more = { $names } und { NUMBER($count) } weitere
wiring-no-size = keine verfügbare Größe
wiring-headline-yes = Ja, nach Ihren Angaben: Das Kabel zum Gerät führt { $current } bei einem Spannungsfall von { $drop }.
wiring-headline-fifty = Nur nach Tabellen, die bei 50 V enden, was diese Batteriebank beim Laden überschreitet: Das Kabel zum Gerät führt { $current } bei einem Spannungsfall von { $drop }.
wiring-more-cables =
    { NUMBER($count) ->
        [one] Ein weiteres Kabel ist noch nicht angegeben.
       *[other] { NUMBER($count) } weitere Kabel sind noch nicht angegeben.
    }
wiring-headline-unnamed = Noch nicht geprüft: Der Leiterquerschnitt des Kabels zum Gerät ist nicht angegeben. Nötig: { $sizes }.
wiring-headline-no-size = Noch nicht geprüft: Der Leiter des Kabels zum Gerät ist nicht angegeben, und kein einzelner Leiter der Tabellen ist groß genug für { $current } über { $length }. Kürzen Sie das Kabel, verringern Sie die Last oder erhöhen Sie die Systemspannung.
wiring-headline-open = Noch nicht geprüft: Es hängt von fehlenden oder nur geschätzten Angaben ab. Bitte angeben: { $names }.
wiring-headline-beyond = Nicht geprüft: Eine Zahl für das Kabel zum Gerät liegt außerhalb der Tabellen.
wiring-headline-fails = Nein, nicht nach diesen Angaben: { $troubles }.
wiring-more-troubles =
    { NUMBER($count) ->
        [one] { $troubles }; und { NUMBER($count) } weiterer Mangel unten
       *[other] { $troubles }; und { NUMBER($count) } weitere Mängel unten
    }

## What is wrong

wiring-trouble-power = kein Strom bringt die Leistung durch { -wiring-cable }
wiring-trouble-ampacity = { -wiring-cable } ({ $size }) ist für dauernd { $current } nicht ausgelegt
wiring-trouble-drop = { -wiring-cable } hat einen Spannungsfall von { $drop }
wiring-trouble-fuse-fit = keine Sicherung, die die Last führt, schützt { -wiring-cable } ({ $size })
wiring-trouble-minimum = { -wiring-cable } unterschreitet den vorgeschriebenen Mindestquerschnitt
wiring-trouble-fuse =
    { $circuit ->
        [distribution] Sicherung im Kabel zur Verteilung
        [unit] Sicherung im Kabel zum Gerät
        [charger] Sicherung im Ladekabel
       *[panel] Sicherung im Modulkabel
    }: { $fault }
wiring-trouble-battery =
    eine Batterie muss { $when ->
        [start] beim Anlauf
       *[hours] dauernd
    } { $current } liefern, ihr Grenzwert ist { $limit }
wiring-trouble-charging = eine Batterie wird mit { $current } geladen, ihr Grenzwert ist { $limit }
wiring-trouble-panels = die Solarmodule überschreiten am kältesten Morgen den Grenzwert des Ladereglers
wiring-short-power = kein Strom bringt die Leistung hindurch
wiring-short-ampacity = zu klein für den Strom
wiring-short-fuse-fit = keine Sicherung passt
wiring-short-drop = Spannungsfall { $drop }
wiring-short-minimum = unter dem vorgeschriebenen Mindestquerschnitt
wiring-short-fuse = Sicherung: { $fault }

## The rules

wiring-rule-ampacity = Dauerstrombelastbarkeit
wiring-rule-fuse = Passende Sicherung
wiring-rule-drop = Spannungsfall, Leiter betriebswarm
wiring-rule-minimum = Mindestquerschnitt (mechanische Festigkeit)
wiring-rule-ampacity-source = 33 CFR 183.425, Tabelle 5 mit Anmerkungen; Temperaturkorrektur nach der Gleichung in NFPA 70, Abschnitt 310.15(B)
wiring-rule-fuse-source = NFPA 70, Abschnitte 210.20(A) und 240.6(A); kleine Leiter in Fahrzeugen und Hütten nach Tabelle 552.10(E)(1). Was hier aus NFPA 70 steht, ist nicht am Text der Norm geprüft. Für Caravans und Motorcaravans gilt in Deutschland DIN VDE 0100-721 (aus dem Gedächtnis, hier nicht gerechnet).
wiring-rule-drop-source = Ohmsches Gesetz; Kupfer nach IEC 60028, Leiteraufbau nach IEC 60228 und ASTM B8; den Grenzwert setzen Sie (3 % sind üblich, ohne Quelle)
wiring-rule-minimum-source = 33 CFR 183.425(d) und (e)
wiring-needs-ampacity = Mindestens { $sizes }. Entscheidend ist die Dauerstrombelastbarkeit.
wiring-needs-fuse = Mindestens { $sizes }. Entscheidend ist die Sicherung: Sie muss die Last führen und darf die Belastbarkeit des Leiters nicht überschreiten.
wiring-needs-drop = Mindestens { $sizes }. Entscheidend ist der Spannungsfall, den Sie zulassen.
wiring-needs-minimum = Mindestens { $sizes }. Entscheidend ist der Mindestquerschnitt für die mechanische Festigkeit.
wiring-needs-none = Keine Größe in beiden Systemen genügt.
wiring-remedies-any = Jedes davon würde helfen: { $ways }.
wiring-remedies-yours = Ein größerer Leiter würde helfen, oder eines davon mit Ihrem: { $ways }.
wiring-remedies-lighter = Nur eine kleinere Last oder eine Batteriebank höherer Spannung würde helfen.
wiring-remedies-larger = Nur ein größerer Leiter würde helfen.
wiring-remedy-ratings =
    { $parts ->
        [both] Isolierung, Kabelschuhe und Halter
        [insulation] Isolierung
       *[terminals] Kabelschuhe und Halter
    } für { $temperature }
wiring-remedy-air = ein Ort, an dem die Luft unter { $temperature } bleibt
wiring-remedy-alone = dieses Leiterpaar allein, außerhalb des Bündels
wiring-remedy-shorter = eine kürzere Strecke, etwa { $length }
wiring-remedy-cut-off = eine Unterspannungsabschaltung bei { $volts } oder darüber, was den Strom senkt
wiring-remedy-two = zwei Leitungen, jede mit eigener Sicherung

## One cable: current, rating and drop

wiring-sized-mode =
    Ausgelegt für { $mode ->
        [the-unit] das Kühlgerät
       *[named] { $mode }, die Betriebsart mit der höchsten Aufnahme
    }.
wiring-sized-rating = Ausgelegt für die volle Nennleistung des Wandlers oder Wechselrichters von { $unit }: Daran kann alles angeschlossen werden.
wiring-sized-all = Ausgelegt für das Gerät und alle anderen Verbraucher.
wiring-sized-charger = Ausgelegt für Ladegerät { $number }, das stärkste.
wiring-sized-controller = Ausgelegt für den Solarladeregler.
wiring-sized-panels = Ausgelegt für { $current } Kurzschlussstrom, mal 1,25 für starke Sonne: { $design }. Die 125 % der Sicherung sind der zweite Faktor 1,25 der Norm.
wiring-current = Strom: { $current }.
wiring-current-low = Strom: { $nominal } bei Nennspannung, { $low } bei { $volts }, der niedrigsten Spannung der Quelle; damit wird bemessen.
wiring-current-start = Etwa { $current } kurzzeitig beim Anlauf.
wiring-ampacity = { $size }: { $table } in der Spalte für { $column }{ $factors } = { $allowed } dauernd.
wiring-ampacity-none = { $size } ist kleiner als die Tabelle reicht: keine Belastbarkeit.
wiring-read-as = { $size }, bemessen als { $row }, die nächstkleinere Größe
wiring-factor-air = { $factor } für Luft von { $temperature }
wiring-factor-bundle = { $factor } für das Bündel
wiring-factor-enclosed = { $factor } für die Umhüllung
wiring-drop = { $length } einfache Länge: { $cold } ({ $cold-percent }) bei kaltem Kupfer, { $hot } ({ $hot-percent }) bei { $temperature }, seiner höchsten Temperatur. Sie lassen { $allowed } von { $volts } zu.
wiring-note-no-room = Die Luft erreicht mit { $air } den niedrigeren Nennwert von Isolierung und Anschlüssen, { $rating }: Es darf kein Strom fließen.
wiring-note-no-gauge = Keine Größe bis 4/0 AWG genügt.
wiring-note-no-metric = Kein Querschnitt bis 120 mm² genügt.
wiring-note-no-current = Kein Strom bringt diese Leistung bei dieser Spannung hindurch, gleich bei welcher Größe.
wiring-note-solid = Massive Leiter brechen bei Vibration und sind auf Booten verboten (33 CFR 183.425(a)).
wiring-note-between = { $size } liegt zwischen zwei Größen und wird als die kleinere bemessen.
wiring-note-length = Keine Länge angegeben: { $length } angenommen.
wiring-note-connections = Kabelschuhe, Schalter und Sicherungshalter verlieren weitere { $volts }, die dem Kabel nicht mehr zur Verfügung stehen.
wiring-note-enclosed = Bemessen wie in Wand oder Rohr verlegt: In einem Gebäude sieht niemand, wo es verläuft.

## The fuse of a cable

wiring-fuse =
    { $rating }: 125 % des Stroms sind { $least }, und dies ist { $list ->
        [vehicle] eine für Fahrzeuge gefertigte Größe (übliche Praxis)
       *[standard] die nächste Normgröße
    }; { $conductor } darf mit höchstens { $most } abgesichert werden.
wiring-fuse-none = Keine: 125 % des Stroms sind { $least }, und { $conductor } darf mit höchstens { $most } abgesichert werden. Der Leiter muss größer sein; eine kleinere Sicherung würde im Betrieb auslösen.
wiring-fuse-start = Der Anlaufstrom, etwa { $current }, liegt kurzzeitig über der Sicherung: Eine träge hält das aus, eine flinke kann auslösen. Ihr Datenblatt sagt, wie lange.
wiring-fuse-source-bank = Die Quelle ist die Batteriebank, gleich in welche Richtung der Strom fließt: Die Sicherung gehört an das Ende der Batteriebank.
wiring-fuse-marine = Auf Booten wären hier bis { $most } erlaubt (33 CFR 183.455(c)); nicht empfohlen.
wiring-fitted-good = Die vorhandene Sicherung, { $rating }, passt zu Last und Leiter: von { $least } bis { $most } ist zulässig.
wiring-fitted-wrong = Vorhandene Sicherung, { $rating }: { $faults }.
wiring-fitted-kind = Die Sicherung: { $faults }.
# After the words ‘the fuse’.
wiring-fault-above = über der Belastbarkeit des Leiters, { $most }
wiring-fault-below = löst im Betrieb aus, mindestens { $least } nötig
wiring-fault-far = zu weit von der Quelle, höchstens { $most } zulässig
wiring-fault-kind = Bauart ({ $kind }), die den dort möglichen Strom nicht abschaltet
wiring-place-source = direkt an der Quelle
wiring-place-within = wo das nicht möglich ist, innerhalb von { $distance }
wiring-place-enclosed = innerhalb von { $distance }, wenn der Leiter durchgehend ummantelt oder umhüllt ist
wiring-place-close = so nah wie möglich, höchstens { $distance } entfernt
wiring-interrupt-maker = Sie muss { $current } bei { $volts } DC abschalten, nach dem Kurzschlussstrom des Herstellers für alle Batterien zusammen.
wiring-interrupt-resistance = Sie muss { $current } bei { $volts } DC abschalten, nach dem niedrigsten wahrscheinlichen Widerstand der Batterien. Ein Wert des Herstellers ist besser.
wiring-interrupt-panels = Sie muss { $current } bei { $volts } DC abschalten: Kurzgeschlossene Module liefern kaum mehr als im Betrieb.
wiring-interrupt-guess = Ausschaltvermögen: noch nicht geprüft. Nach einer Schätzung des Widerstands könnten { $current } bei { $volts } DC fließen. Bitte angeben: { $field }.
wiring-interrupt-far = Ein Kurzschluss am fernen Ende dieses Kabels zieht { $current }.
wiring-kind-not-at-volts = nicht bei dieser Spannung
wiring-kind-suits = geeignet
wiring-kind-no-size = mit diesem Nennstrom nicht erhältlich
wiring-kind-unsuitable = ungeeignet

## Batteries and panels

wiring-when = Wann
wiring-whole-bank = Ganze Batteriebank
wiring-most-loaded = Am stärksten belastete Batterie
wiring-limit = Grenzwert
wiring-burden-enough = im Grenzwert
wiring-burden-above = über dem Grenzwert
wiring-worst-battery = Die am stärksten belastete Batterie liefert { $current } von zulässigen { $limit }.
wiring-worst-battery-open = Die am stärksten belastete Batterie liefert { $current }; ihr Grenzwert ist nicht angegeben.
wiring-worst-bank = Die Batteriebank liefert { $current } von zulässigen { $limit }.
wiring-worst-bank-open = Die Batteriebank liefert { $current }; ihr Grenzwert ist nicht angegeben.
wiring-shares = Ein gleicher Anteil wäre { $even }. Die am stärksten belastete Batterie liefert { $each }. (Kirchhoffsche Regeln über Batterien und Verbinder.)
wiring-string-fuse = Jeder der { NUMBER($count) } Stränge braucht eine eigene Sicherung: empfohlen { $rating }, sofern seine Leitung das zulässt.
wiring-string-interrupt = Sie muss { $current } abschalten. Geeignet: { $kinds }.
wiring-string-interrupt-none = Sie muss { $current } abschalten, und keine hier genannte Bauart kann das: Fragen Sie den Hersteller.
wiring-surge-held = Der Anlaufstrom von { $time } wird mit dem Dauergrenzwert verglichen: Ein Spitzenwert für diese Dauer ist nicht angegeben.
wiring-solar-short = { $current } Kurzschlussstrom laut Typenschild: Leitung und Sicherung für das 1,25 × 1,25-Fache auslegen, { $design } (NFPA 70, Abschnitt 690.8; was hier aus NFPA 70 steht, ist nicht am Text der Norm geprüft).
wiring-solar-short-watts = { $current } Kurzschlussstrom, aus der Leistung berechnet, 8 % über dem Strom bei Höchstleistung (übliche Praxis): Leitung und Sicherung für das 1,25 × 1,25-Fache auslegen, { $design } (NFPA 70, Abschnitt 690.8; was hier aus NFPA 70 steht, ist nicht am Text der Norm geprüft).
-wiring-solar-cold = An einem Morgen mit { $temperature } hat der längste Strang eine Leerlaufspannung von { $volts }
wiring-solar-cold-within = { -wiring-solar-cold }; der Laderegler verträgt { $limit } (NFPA 70, Abschnitt 690.7).
wiring-solar-cold-above = { -wiring-solar-cold }; der Laderegler verträgt nur { $limit }, und schon ein Augenblick darüber kann ihn zerstören (NFPA 70, Abschnitt 690.7).
wiring-solar-cold-open = { -wiring-solar-cold }; was der Laderegler verträgt, ist nicht angegeben (NFPA 70, Abschnitt 690.7).
wiring-solar-fuses = { NUMBER($count) } Stränge parallel: jeder mit eigener Sicherung, { $rating }.
wiring-solar-no-fuses = Weniger als drei Stränge parallel: Keiner braucht eine eigene Sicherung (NFPA 70, Abschnitt 690.9).

## What to know of these numbers

wiring-beyond-tables = { $circuit }: nicht geprüft, eine Zahl liegt außerhalb der Tabellen.
wiring-no-kind = { $circuit }: Keine hier genannte Sicherungsbauart gibt es mit diesem Nennstrom und mit Ausschaltvermögen für die möglichen { $current }. Geben Sie jedem Strang eine eigene Klasse-T-Sicherung, und fragen Sie die Hersteller von Batterie und Sicherung nach ihren Werten.
wiring-one-opens = Schaltet sich ein Strang ab, bleiben einem anderen { $current } bei zulässigen { $limit }: Er schaltet sich ebenfalls ab, und alles fällt aus.
wiring-fuse-each = { NUMBER($count) } Stränge parallel: Jeder braucht eine eigene Sicherung an seiner Klemme, weil die anderen einen Fehler in ihm mit vollem Strom speisen.
wiring-unequal = Der Anschluss der Hauptkabel belastet eine Batterie über ihren Anteil: { $current } statt { $even }. Ein diagonaler Anschluss gleicht das an, Sammelschienen mit gleichen Leitungen gleichen es ganz aus.
wiring-mixed-note = Batterien verschiedenen Alters, Fabrikats oder Gebrauchs teilen Strom und Ladung nicht wie hier berechnet: Die alte bestimmt das Ende, und die neue verschleißt. Mischen Sie sie nicht.
wiring-precharge = Ein Wechselrichter oder Wandler zieht beim Anschließen einen Einschaltstrom, der das BMS abschalten und Kontakte verbrennen kann: Laden Sie seine Kondensatoren zuerst über einen Widerstand vor.
wiring-inverter-peak = Der Anlauf des Geräts braucht etwa { $start }, und die Spitzenleistung des Wechselrichters ist { $peak }: Es startet möglicherweise nicht.
wiring-behind-converter = Das Kabel vom Wandler oder Wechselrichter zum Gerät wird hier nicht geprüft. Hinter einem Wechselrichter ist es eine 230-V-Installation, mit denselben Gefahren wie im Haus.
wiring-drops-together = Über beide Kabel gehen bis zum Gerät { $drop } verloren: 5 % sind das übliche Höchstmaß.
wiring-cold-panels = Am kältesten Morgen beträgt die Leerlaufspannung der Module { $volts }, und der Laderegler verträgt { $limit }: Schon ein Augenblick davon kann ihn zerstören. Schalten Sie weniger in Reihe.
wiring-controller-open = Die Module erreichen am kältesten Morgen { $volts }: Stellen Sie sicher, dass der Laderegler mehr verträgt.
wiring-panels-below = Heiß in der Sonne liefern die Module { $best }, und die Batteriebank wird mit bis zu { $charging } geladen: Nur ein aufwärts wandelnder Laderegler lädt sie voll.
wiring-fuse-panel-strings = { NUMBER($count) } Modulstränge parallel: Jeder braucht eine eigene Sicherung, weil die anderen einen kurzgeschlossenen überlasten können.
wiring-source-practice = übliche Praxis
wiring-source-interrupting = Ausschaltvermögen: typische Werte, aus dem Gedächtnis
wiring-source-kirchhoff = Kirchhoffsche Regeln
wiring-source-drop = informative Anmerkung zu NFPA 70, Abschnitt 210.19(A), nicht am Text der Norm geprüft
wiring-source-cold = NFPA 70, Abschnitt 690.7, nicht am Text der Norm geprüft
wiring-source-strings = NFPA 70, Abschnitt 690.9(A), nicht am Text der Norm geprüft
