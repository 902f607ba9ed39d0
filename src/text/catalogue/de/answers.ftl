## Names

mode-numbered = Betriebsart { NUMBER($number) }
mode-only = Kühlgerät
unit-numbered = Gerät { NUMBER($number) }
mode-of-unit = { $mode }, { $unit }
run-on-bank = { $mode }, { $bank }
bank-made-of = { $volts } { $capacity }
unit-supply-title = { $unit }: Versorgung und Kabel
mode-duty-title = { $mode }: Einschaltdauer und Bereitschaft

## What one run comes to

run-no-start = { $mode } startet nicht: sofortiger Stopp { $stop }.
run-lasts = { $mode } läuft { $hours }.
run-lasts-until = { $mode } läuft { $hours }, bis etwa { $clock }.
run-range = Wahrscheinliche Spanne: { $low } bis { $high }. Ende { $stop }.
run-short-no-start = startet nicht
run-short-until = { $hours }, bis { $clock }

# After "Ende", and alone in a table.

stop-empty = bei leerer Bank
stop-reserve = bei { $percent } Reserve
stop-battery-cut-off = bei der Abschaltspannung der Batterie, { $volts }
stop-current-limit = an der Stromgrenze der Bank, { $amps }
stop-unit-cut-off = bei der Unterspannungsabschaltung des Geräts, { $volts } an seinen Klemmen
stop-inverter-cut-off = bei der Unterspannungsabschaltung des Wechselrichters, { $volts } an seinem Eingang
stop-inverter-limit = an der Grenze des Wechselrichters, { $watts }
stop-converter-limit = an der Grenze des Wandlers, { $amps }
stop-no-current = wo kein Strom die Leistung mehr durch den Widerstand von Kabel und Bank bringt

## How big a bank

sizing-hours = { $mode } läuft an dieser Bank { $hours }.
sizing-bank = { $mode } über { $hours } braucht { $capacity } ({ $energy }) mit Alterung und Reserve: { $batteries }.
sizing-draw = Für { $hours } an dieser Bank darf { $mode } höchstens { $draw } aufnehmen.
sizing-depth = { $mode } über { $hours } entlädt diese Bank bis zu einer Entladetiefe von { $depth }.
sizing-none = Kein zulässiger Wert ergibt { $hours } mit { $mode }.
sizing-of-bank = { $bank }: { $answer }
batteries-like-these =
    { NUMBER($count) ->
        [one] { NUMBER($count) } Batterie wie diese
       *[other] { NUMBER($count) } Batterien wie diese
    }
batteries-in-parallel = { $batteries } ({ NUMBER($parallel) } parallel)
batteries-in-series = { $batteries } ({ NUMBER($series) } in Reihe)
batteries-in-strings = { $batteries } ({ NUMBER($series) } in Reihe, { NUMBER($parallel) } Stränge)
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
        [most] { $field }: das meiste (kann { $lost } kosten, { $gained } bringen)
        [much] { $field }: viel davon (kann { $lost } kosten, { $gained } bringen)
        [some] { $field }: ein Teil (kann { $lost } kosten, { $gained } bringen)
       *[little] { $field }: ein wenig (kann { $lost } kosten, { $gained } bringen)
    }

## Under a chart

chart-twice-the-bank = Mit der doppelten Bank läuft { $mode } { $double } statt { $now }: etwas mehr als doppelt so lange, weil die Spannung weniger einbricht.
chart-this-bank = An dieser Bank läuft { $mode } { $hours }.
chart-by-depth = { $mode } läuft mit der halben Bank { $half }, mit der ganzen { $whole }.
chart-longest-shortest = { $longest } läuft am längsten, { $shortest } am kürzesten.
chart-volts = Mit { $mode } fällt die Klemmenspannung der Bank bei der Entladung von { $first } auf { $last }.

## The working

formula-charge = Stunden = ∫ Kapazität ÷ Strom, über den Ladezustand vom Beginn bis zum Ende; der Strom I löst E(Ladung) · I − R · I² = Leistung, Verbraucher und Kabel eingerechnet
formula-peukert = Stunden = ∫ Kapazität · (Nennstrom ÷ Strom)^(k − 1) ÷ Strom, über den Ladezustand vom Beginn bis zum Ende; der Strom I löst E(Ladung) · I − R · I² = Leistung
formula-charge-source = Ladungsbilanz und ohmsches Gesetz, über die Ladung integriert (Gauß-Legendre mit drei Punkten zwischen den Stützstellen der Spannungskurve). Energie durch Leistung allein ließe den Spannungseinbruch außer Acht.
formula-peukert-source = Peukert-Gesetz in der Form mit Nennstunden t = H · (C ÷ (I · H))^k, entlang der Laufzeit angewandt. Unter dem Nennstrom ergibt es nicht mehr als die Nenn-Ah.
term-held-ah = Kapazität der Bank
term-start-percent = Ladezustand zu Beginn
term-end-percent = Ladezustand am Ende
term-used-ah = entnommene Ladung
term-open-circuit-start-v = Leerlaufspannung zu Beginn
term-open-circuit-end-v = Leerlaufspannung am Ende
term-bank-resistance = Widerstand der Bank, R
term-first-amps = Strom im Betrieb, zu Beginn
term-last-amps = Strom im Betrieb, am Ende
term-mean-amps = mittlerer Strom
term-mean-volts = mittlere Klemmenspannung
term-peukert-exponent = Peukert-Exponent, k
term-rated-amps = Nennstrom
term-hours = Stunden
term-quick-hours = zum Vergleich: Energie bei Leerlaufspannung ÷ Anfangsleistung
