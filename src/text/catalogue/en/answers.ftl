## Names

mode-numbered = Mode { NUMBER($number) }
mode-only = Cooling unit
unit-numbered = Unit { NUMBER($number) }
mode-of-unit = { $mode }, { $unit }
run-on-bank = { $mode }, { $bank }
bank-made-of = { $volts } { $capacity }
unit-supply-title = { $unit }: supply and cable
mode-duty-title = { $mode }: duty cycle and standby
-mode =
    { $mode ->
        [the-unit] the cooling unit
       *[named] { $mode }
    }
-mode-first =
    { $mode ->
        [the-unit] The cooling unit
       *[named] { $mode }
    }

## What one run comes to

run-no-start = { -mode-first } does not start: it would stop at once, { $stop }.
run-lasts = { -mode-first } runs { $hours }.
run-lasts-until = { -mode-first } runs { $hours }, until about { $clock }.
run-range = Likely range: { $low } to { $high }. It stops { $stop }.
run-short-no-start = does not start
run-short-until = { $hours }, to { $clock }

# After "It stops", and alone in a table.

stop-empty = when the bank is empty
stop-reserve = at the { $percent } reserve
stop-battery-cut-off = at the battery’s cut-off voltage, { $volts }
stop-current-limit = at the bank’s current limit, { $amps }
stop-unit-cut-off = at the unit’s low-voltage cut-off, { $volts } at its terminals
stop-inverter-cut-off = at the inverter’s low-voltage cut-off, { $volts } at its input
stop-inverter-limit = at the inverter’s limit, { $watts }
stop-converter-limit = at the converter’s limit, { $amps }
stop-no-current = where no current can carry the power through the resistance of cable and bank

## How big a bank

sizing-hours = { -mode-first } runs { $hours } on this bank.
sizing-bank = For { $hours }, { -mode } needs { $capacity } ({ $energy }) with ageing and margin: { $batteries }.
sizing-draw = For { $hours } on this bank, { -mode } may draw { $draw } at most.
sizing-depth = { -mode-first } for { $hours } takes this bank to a depth of discharge of { $depth }.
sizing-none = No accepted value lets { -mode } run { $hours }.
sizing-of-bank = { $bank }: { $answer }
batteries-like-these =
    { NUMBER($count) ->
        [one] { NUMBER($count) } battery like this one
       *[other] { NUMBER($count) } batteries like these
    }
batteries-in-parallel = { $batteries } ({ NUMBER($parallel) } in parallel)
batteries-in-series = { $batteries } ({ NUMBER($series) } in series)
batteries-in-strings = { $batteries } ({ NUMBER($series) } in series, { NUMBER($parallel) } strings)
new-and-aged = { $new } when new, { $aged } when aged

## What a bank is

bank-facts =
    { NUMBER($count) ->
        [one] { NUMBER($count) } battery, { $volts }, { $energy } rated. Usable: { $usable-ah }, { $usable-wh }.
       *[other] { NUMBER($count) } batteries, { $volts }, { $energy } rated. Usable: { $usable-ah }, { $usable-wh }.
    }
bank-measured = Measured: { $ah } of the rated capacity, { $wh } of the rated energy.
bank-measured-charge = Measured: { $ah } of the rated capacity.
bank-measured-energy = Measured: { $wh } of the rated energy.
bank-holds = Capacity { $capacity }, of which { $usable } usable, { $volts } nominal.

## What widens the range

spread-share =
    { $share ->
        [most] { $field }: { $lost } less to { $gained } more (most of the range)
        [much] { $field }: { $lost } less to { $gained } more (a large part of the range)
        [some] { $field }: { $lost } less to { $gained } more (part of the range)
       *[little] { $field }: { $lost } less to { $gained } more (a small part of the range)
    }

## Under a chart

chart-twice-the-bank = Twice the bank runs { -mode } { $double } instead of { $now }: a little more than double, because the voltage sags less.
chart-this-bank = On this bank { -mode } runs { $hours }.
chart-by-depth = { -mode-first } runs { $half } on half the bank, { $whole } on all of it.
chart-longest-shortest = { $longest } lasts longest, { $shortest } shortest.
chart-volts = With { -mode }, the bank’s terminal voltage falls from { $first } to { $last } as it discharges.

## The working

formula-charge = hours = ∫ capacity ÷ current, over the state of charge from start to end; the current I solves E(charge) · I − R · I² = power, with loads and cable included
formula-peukert = hours = ∫ capacity · (rated current ÷ current)^(k − 1) ÷ current, over the state of charge from start to end; the current I solves E(charge) · I − R · I² = power
formula-charge-source = Charge balance and Ohm’s law, integrated over charge (three-point Gauss–Legendre between the knots of the voltage curve). Energy divided by power alone would ignore the voltage sag.
formula-peukert-source = Peukert’s law in the rated-hour form t = H · (C ÷ (I · H))^k, applied along the run. Below the rated current it gives no more than the rated Ah.
term-held-ah = capacity of the bank
term-start-percent = state of charge at the start
term-end-percent = state of charge at the end
term-used-ah = charge drawn
term-open-circuit-start-v = open-circuit voltage at the start
term-open-circuit-end-v = open-circuit voltage at the end
term-bank-resistance = resistance of the bank, R
term-first-amps = current while on, at the start
term-last-amps = current while on, at the end
term-mean-amps = mean current
term-mean-volts = mean terminal voltage
term-peukert-exponent = Peukert exponent, k
term-rated-amps = rated current
term-hours = hours
term-quick-hours = for comparison: open-circuit energy ÷ first power
