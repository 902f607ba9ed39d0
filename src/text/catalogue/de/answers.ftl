## Names

mode-numbered = Betriebsart { NUMBER($number) }
mode-only = Kühlgerät
unit-numbered = Gerät { NUMBER($number) }
mode-of-unit = { $mode }, { $unit }
run-on-bank = { $mode }, { $bank }
bank-made-of = { $volts } { $capacity }
unit-supply-title = { $unit }: Versorgung und Kabel
mode-duty-title = { $mode }: Einschaltdauer und Bereitschaft
-mode =
    { $mode ->
        [the-unit] das Kühlgerät
       *[named] { $mode }
    }
-mode-first =
    { $mode ->
        [the-unit] Das Kühlgerät
       *[named] { $mode }
    }

## What one run comes to

run-no-start = { -mode-first } startet nicht: sofortiger Stopp { $stop }.
run-lasts = { -mode-first } läuft { $hours }.
run-lasts-until = { -mode-first } läuft { $hours }, bis etwa { $clock }.
run-range = Wahrscheinliche Spanne: { $low } bis { $high }. Ende { $stop }.
run-short-no-start = startet nicht
run-short-until = { $hours }, bis { $clock }

# After "Ende", and alone in a table.

stop-empty = bei leerer Batteriebank
stop-reserve = bei { $percent } Reserve
stop-battery-cut-off = bei der Abschaltspannung der Batterie, { $volts }
stop-current-limit = an der Stromgrenze der Batteriebank, { $amps }
stop-unit-cut-off = bei der Unterspannungsabschaltung des Geräts, { $volts } an seinen Klemmen
stop-inverter-cut-off = bei der Unterspannungsabschaltung des Wechselrichters, { $volts } an seinem Eingang
stop-inverter-limit = an der Grenze des Wechselrichters, { $watts }
stop-converter-limit = an der Grenze des Wandlers, { $amps }
stop-no-current = wo kein Strom die Leistung mehr durch den Widerstand von Kabel und Batteriebank bringt

## How big a bank

sizing-hours = { -mode-first } läuft an dieser Batteriebank { $hours }.
sizing-bank = Für { $hours } braucht { -mode } { $capacity } ({ $energy }), mit Alterung und Reserve: { $batteries }.
sizing-draw = Für { $hours } an dieser Batteriebank darf { -mode } höchstens { $draw } aufnehmen.
sizing-depth = { -mode-first } entlädt diese Batteriebank in { $hours } bis zu einer Entladetiefe von { $depth }.
sizing-none = Bei keinem zulässigen Wert läuft { -mode } { $hours }.
sizing-of-bank = { $bank }: { $answer }
batteries-like-these =
    { NUMBER($count) ->
        [one] { NUMBER($count) } Batterie wie diese
       *[other] { NUMBER($count) } Batterien wie diese
    }
batteries-in-parallel = { $batteries } ({ NUMBER($parallel) } parallel)
batteries-in-series = { $batteries } ({ NUMBER($series) } in Reihe)
batteries-in-strings = { $batteries } ({ NUMBER($series) } in Reihe, { NUMBER($parallel) } Stränge parallel)
new-and-aged = { $new } im Neuzustand, { $aged } gealtert

## What a bank is

bank-facts =
    { NUMBER($count) ->
        [one] { NUMBER($count) } Batterie, { $volts }, Nennenergie { $energy }. Nutzbar: { $usable-ah }, { $usable-wh }.
       *[other] { NUMBER($count) } Batterien, { $volts }, Nennenergie { $energy }. Nutzbar: { $usable-ah }, { $usable-wh }.
    }
bank-measured = Gemessen: { $ah } der Nennkapazität, { $wh } der Nennenergie.
bank-measured-charge = Gemessen: { $ah } der Nennkapazität.
bank-measured-energy = Gemessen: { $wh } der Nennenergie.
bank-holds = Kapazität { $capacity }, davon { $usable } nutzbar, Nennspannung { $volts }.

## What widens the range

spread-share =
    { $share ->
        [most] { $field }: { $lost } weniger bis { $gained } mehr (der größte Teil der Spanne)
        [much] { $field }: { $lost } weniger bis { $gained } mehr (ein großer Teil der Spanne)
        [some] { $field }: { $lost } weniger bis { $gained } mehr (ein Teil der Spanne)
       *[little] { $field }: { $lost } weniger bis { $gained } mehr (ein kleiner Teil der Spanne)
    }

## Under a chart

chart-twice-the-bank = Mit der doppelten Batteriebank läuft { -mode } { $double } statt { $now }: etwas mehr als doppelt so lange, weil die Spannung weniger einbricht.
chart-this-bank = An dieser Batteriebank läuft { -mode } { $hours }.
chart-by-depth = { -mode-first } läuft mit der halben Batteriebank { $half }, mit der ganzen { $whole }.
chart-longest-shortest = { $longest } läuft am längsten, { $shortest } am kürzesten.
chart-volts = Läuft { -mode }, fällt die Klemmenspannung der Batteriebank bei der Entladung von { $first } auf { $last }.

## The working

formula-charge = Stunden = ∫ Kapazität ÷ Strom, über den Ladezustand vom Beginn bis zum Ende; der Strom I löst E(Ladung) · I − R · I² = Leistung, Verbraucher und Kabel eingerechnet
formula-peukert = Stunden = ∫ Kapazität · (Nennstrom ÷ Strom)^(k − 1) ÷ Strom, über den Ladezustand vom Beginn bis zum Ende; der Strom I löst E(Ladung) · I − R · I² = Leistung
formula-charge-source = Ladungsbilanz und ohmsches Gesetz, über die Ladung integriert (Gauß-Legendre mit drei Punkten zwischen den Stützstellen der Spannungskurve). Energie durch Leistung allein ließe den Spannungseinbruch außer Acht.
formula-peukert-source = Peukert-Gesetz in der Form mit Nennstunden t = H · (C ÷ (I · H))^k, entlang der Laufzeit angewandt. Unter dem Nennstrom ergibt es nicht mehr als die Nenn-Ah.
term-held-ah = Kapazität der Batteriebank
term-start-percent = Ladezustand zu Beginn
term-end-percent = Ladezustand am Ende
term-used-ah = entnommene Ladung
term-open-circuit-start-v = Leerlaufspannung zu Beginn
term-open-circuit-end-v = Leerlaufspannung am Ende
term-bank-resistance = Widerstand der Batteriebank, R
term-first-amps = Strom im Betrieb, zu Beginn
term-last-amps = Strom im Betrieb, am Ende
term-mean-amps = mittlerer Strom
term-mean-volts = mittlere Klemmenspannung
term-peukert-exponent = Peukert-Exponent, k
term-rated-amps = Nennstrom
term-hours = Stunden
term-quick-hours = zum Vergleich: Energie bei Leerlaufspannung ÷ Anfangsleistung
