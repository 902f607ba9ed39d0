## Logs: a file

log-title = A log or notes
log-hint = Drop a CSV file from a monitor or logger here, or choose one. It is read on this device and sent nowhere.
log-pick = Choose a log
log-try = Try the invented log
log-invented = Invented for the demonstration: no such van, bank or cooling unit was measured.
log-invented-name = From the invented log
log-reading = Reading the log: { $share } done.
log-columns = How the columns are read
log-read-as = Read as
log-in-unit = Unit
log-read-again = Read it again this way
log-column = Column { $number }: { $why }
log-column-headed = Column { $number }, “{ $heading }”: { $why }

## Logs: columns

log-role-time = time
log-role-date = date
log-role-volts = voltage
log-role-amps = current
log-role-watts = power
log-role-amp-hours = Ah counter
log-role-watt-hours = Wh counter
log-role-temperature = temperature in the cabin
log-role-outdoors = temperature outdoors
log-role-ignored = not read
log-unit-plain = base unit (V, A, W)
log-unit-milli = milli (mV, mA, mW)
log-unit-kilo = kilo (kW, kWh)
log-unit-milliseconds = milliseconds
log-unit-seconds = seconds
log-unit-minutes = minutes
log-unit-hours = hours
log-unit-days = days
log-unit-hours-minutes = h:mm
log-unit-minutes-seconds = m:ss
log-unit-clock = clock time
log-unit-calendar = date and time
log-unit-epoch-seconds = Unix time in seconds
log-unit-epoch-milliseconds = Unix time in milliseconds
log-why-given = as you chose
log-why-heading = the heading names the unit
log-why-name-only = the heading names no unit, please check
log-why-cells = by its values
log-why-nothing = not recognized

## Logs: why a file was refused

log-refused = Line { $line }, column { $column }: { $fault }. Nothing was taken from the file.
log-fault-bytes = The file is larger than { $size } MB, the most that is read.
log-fault-rows = more than { $most } rows; shorten the file
log-fault-cells =
    { NUMBER($columns) ->
        [one] more cells than the { NUMBER($columns) } column; often a decimal comma in a file separated by commas
       *[other] more cells than the { NUMBER($columns) } columns; often a decimal comma in a file separated by commas
    }
log-fault-no-table = no two consecutive rows of numbers were found
log-fault-no-time = no time column was found; choose it below
log-fault-no-flow = neither current nor power was found; choose the column below
log-fault-column = this column cannot be read that way
log-fault-number = this cell is not a number
log-fault-unit = this number has the unit of another quantity
log-fault-range = this number is outside what the column accepts, { $low } to { $high }
log-fault-time = this cell is not a time in the format of the rows before
log-fault-zones = some times have a time zone and others do not
log-fault-quote = a quotation mark is not closed
log-fault-overlap = time goes back over what was already logged; split the two runs
log-fault-few = fewer than two rows with a time and a reading

## Logs: what was done to the rows

log-rows = How the file was read:
log-sign-reversed =
    { $of ->
        [amps] The draw is logged with a minus sign: the sign of the current was reversed.
        [watts] The draw is logged with a minus sign: the sign of the power was reversed.
       *[both] The draw is logged with a minus sign: the signs of current and power were reversed.
    }
log-sign-by-amps = The power is logged without a sign: it took the sign of the current.
log-newest-first = The newest row came first: the order was reversed.
log-cut-short = The last row was incomplete and was left out.
log-out-of-order =
    { NUMBER($count) ->
        [one] { NUMBER($count) } step back in time was sorted.
       *[other] { NUMBER($count) } steps back in time were sorted.
    }
log-repeated =
    { NUMBER($count) ->
        [one] { NUMBER($count) } duplicate row was left out.
       *[other] { NUMBER($count) } duplicate rows were left out.
    }
log-same-time =
    { NUMBER($count) ->
        [one] { NUMBER($count) } row has the same time as another: their mean counts.
       *[other] { NUMBER($count) } rows have the same time as others: their mean counts.
    }
log-missing-cells =
    { NUMBER($count) ->
        [one] { NUMBER($count) } cell is empty.
       *[other] { NUMBER($count) } cells are empty; where only a few are missing, they are interpolated in a straight line.
    }
log-without-time =
    { NUMBER($count) ->
        [one] { NUMBER($count) } row has no time and was left out.
       *[other] { NUMBER($count) } rows have no time and were left out.
    }
log-remarks =
    { NUMBER($count) ->
        [one] { NUMBER($count) } line of text was skipped.
       *[other] { NUMBER($count) } lines of text were skipped.
    }
log-watts-none = There is no voltage and no power: current alone gives charge, but no energy.
log-watts-product = Power is voltage times current, row by row.
log-watts-column = Power is as logged.
log-watts-apart = Power is as logged, but voltage times current makes { $share } of it: check the units, or whether it is alternating current.
log-counter = The logger’s own counter went through { $own }; the rows add up to { $rows }.
log-counter-reset = The logger’s own counter of { $unit } went both ways or was reset: it is not compared.

## Logs: figures

log-duration = Duration
log-without-gaps = { $span }, { $covered } without the gaps
log-charge = Charge
log-energy = Energy
log-volts = Voltage
log-amps = Current
log-watts = Power
log-means = average { $mean }, { $low } to { $high }
log-ran = It ran { $duration }; { $cause }.
log-ran-last = It ran { $duration }, last at { $volts } and { $amps }; { $cause }.
log-end-unknown = the log ends under load or the load faded, and does not show why
log-end-bms = the BMS probably cut off
log-end-unit = the unit or the inverter probably cut off
log-end-hand = it was probably switched off by hand
log-gaps = Gaps: { $count }, { $duration } in all. Nothing is filled in; they may add { $ah-low } to { $ah-high }, { $wh-low } to { $wh-high }.
log-sampling-pulses = Logged too rarely: leaving out every other row changes the total by { $share }. No uncertainty can be stated.
log-sampling-counters = The logger’s own counters differ from the rows by { $share }: pulses fell between the rows. No uncertainty can be stated.
log-sampling-few = Too few rows to tell whether they follow the load.

## Logs: the meter and its offset

log-meter = Current measured with
log-meter-shunt = { $current } shunt
log-meter-clamp = clamp meter
log-offset = Current shown at rest
log-offset-hint = An offset of { $current } over { $duration } adds a false { $charge }.
log-offset-bad = Enter a current { $accepted }.
log-offset-from-log = Read it from the start of the log
log-offset-none = The log starts under load: it has no reading at rest.
log-offset-taken = Subtracted: it added a false { $charge } over the log.

## Logs: steady stretches

log-stretches = Steady stretches
log-stretches-hint = Found where the mean changes (PELT; Killick, Fearnhead and Eckley 2012). Drag an edge, or move it with the arrow keys, a minute at a time.
log-shortest = Shortest stretch
log-shortest-hint = Longer than one compressor cycle, so that the mean includes the off time.
log-find-again = Find them again
log-leave-out = Leave out
    .which = Leave out, stretch { $number }
log-split = Split in two
    .which = Split in two, stretch { $number }
log-edge-start = Start of stretch { $number }
log-edge-end = End of stretch { $number }
log-moment = { $duration } after the start of the log
log-stretch = { $number }. { $start } to { $end } ({ $duration }): { $draw }
log-detail = { $parts }.
log-detail-amps = average { $current }
log-detail-totals = { $totals } in all
log-draw = Draw
log-chart-label = Draw over the log, its stretches shaded
log-axis-watts = Draw, W
log-axis-amps = Draw, A
log-axis-hours = Hours from the start of the log

## Logs: into the plan

log-bank = Bank that was logged
log-make-bank = Use the totals as the measured bank
log-make-claims = Check the totals against the label
log-into = Use as the draw of
log-make-mode = Use stretch { $number } as the draw of { $mode }
log-make-noted = Use it as the draw of { $mode }
log-taken = Added to the plan, marked measured, with its spread. Undo reverses it.
log-not-taken = Not added: its uncertainty is unknown, or it is outside what the plan accepts.

## Notes by hand

log-notes = Notes by hand
log-notes-hint = Start, end or average, and minutes give a mode’s draw.
log-note-start-volts = Voltage at the start
log-note-end-volts = Voltage at the end
log-note-start-amps = Current at the start
log-note-end-amps = Current at the end
log-note-average = Average draw, if read
log-note-minutes = Running time
log-note-bad = { $field }: enter a number { $accepted }.
log-noted = That makes { $figures }.
