## Logs: a file

log-title = A log or notes
log-hint = Choose a CSV file from a monitor or logger, or drop it here. It is read on this device and sent nowhere.
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
        [amps] Discharge was logged as minus; the current is shown here as plus.
        [watts] Discharge was logged as minus; the power is shown here as plus.
       *[both] Discharge was logged as minus; current and power are shown here as plus.
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
log-watts-column = Power comes from the logger’s own column.
log-watts-apart = Power comes from the logger’s own column, but voltage times current makes { $share } of it: check the units, or whether it is alternating current.
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
log-end-unknown = the log does not show what ended the run
log-end-bms = the BMS probably cut off
log-end-unit = the unit or the inverter probably cut off
log-end-hand = it was probably switched off by hand
log-gaps = Gaps: { $count }, { $duration } in all. Nothing is filled in; they may add { $ah-low } to { $ah-high }, { $wh-low } to { $wh-high }.
log-sampling-pulses = The rows are too far apart for this load: leaving out every other row changes the total by { $share }. No uncertainty can be stated.
log-sampling-counters = The logger’s own counters differ from the rows by { $share }: pulses fell between the rows. No uncertainty can be stated.
log-sampling-few = Too few rows to tell whether they follow the load.

## Logs: the meter and its offset

log-meter = Current measured with
log-meter-shunt = { $current } shunt
log-meter-clamp = clamp meter
log-offset = Current shown at rest
log-offset-hint = An offset of { $current } over { $duration } adds a false { $charge }.
log-offset-bad = Enter a current { $accepted }.
log-offset-from-log = Take the zero reading from the start of the log
log-offset-none = The log starts under load: it has no reading at rest.
log-offset-taken = Subtracted: it added a false { $charge } over the log.

## Logs: steady stretches

log-stretches = Steady periods found in the log
log-stretches-hint = A new period begins where the average draw changes. Drag an edge, or move it with the arrow keys, a minute at a time. Method: PELT (Killick, Fearnhead and Eckley 2012).
log-shortest = Shortest period
log-shortest-hint = Longer than one compressor cycle, so that the mean includes the off time.
log-find-again = Find them again
log-leave-out = Leave out
    .which = Leave out, period { $number }
log-split = Split in two
    .which = Split in two, period { $number }
log-edge-start = Start of period { $number }
log-edge-end = End of period { $number }
log-moment = { $duration } after the start of the log
log-stretch = { $number }. { $start } to { $end } ({ $duration }): { $draw }
log-detail = { $parts }.
log-detail-amps = average { $current }
log-detail-totals = { $totals } in all
log-draw = Draw
log-chart-label = Draw over the log, its steady periods shaded
log-axis-watts = Draw, W
log-axis-amps = Draw, A
log-axis-hours = Hours from the start of the log

## Logs: into the plan

log-bank = Bank that was logged
-log-mode-of =
    { $mode ->
        [the-unit] of the cooling unit
       *[named] of { $mode }
    }
log-make-bank = Use the totals as the measured bank
log-make-claims = Check the totals against the label
log-make-mode = Use period { $number } as the draw { -log-mode-of }
log-make-noted = Use it as the draw { -log-mode-of }
log-taken = Added to the plan, marked measured, with its spread. Undo reverses it.
log-not-taken = Not used: its uncertainty is unknown, or its value is outside what the plan accepts.

## Logs: one night

log-night-title = Fit the plan to this night
log-night-hint = A log of { $least } or more with a thermometer in the cabin shows how much heat your van lets in and what your unit draws. A second thermometer outdoors helps. An hour with the unit off helps most.
log-night-try = Try an invented night
log-night-fit = Fit the plan to this log
log-night-fitting = Fitting…
log-night-take = Use the fitted figures in the plan
log-night-taken = The fitted figures are in the plan, with their spreads. Undo reverses it. Do not fit the same log again: its readings count once.
log-night-changed = The plan has changed since the fit: fit it again.
log-night-other-bank = The day runs on the first bank; this log is of another one. Make it the first bank to fit it.
log-night-unready = The plan has errors that keep its hot day from running. Correct them, then fit.
log-night-short = The log has { $covered } with readings; a fit takes { $least } or more.
log-night-other-voltage = The log was made at about { $log } and the plan’s bank is one of { $bank }: it is another system, and the plan is not fitted to it.
log-night-figure = Figure
log-night-assumed = Assumed
log-night-fitted = Fitted
log-night-tells = Does the log show it?
log-night-told = yes
log-night-too-little = no: its spread is nearly as wide as before
log-night-without-thermometer = no: no cabin temperature in the log
log-night-without-outdoors = no: no outdoor temperature in the log
log-night-steady-weather = no: the weather hardly changed while the unit ran
log-night-unit-off = no: the unit was never on
log-night-rows-apart = no: rows are too far apart to see the unit switch; three minutes at the most
log-night-follows-load = no: a unit that follows the load has no one draw
log-night-own-runs = no: the plan’s own measured runs of the unit stay
log-night-without-volts = no: no voltage in the log
log-night-loss = Heat that enters the cabin for each kelvin
log-night-capacity = Heat that air, contents and shell take up
log-night-per-watt = Cooling for each watt drawn
log-night-per-watt-at = Cooling for each watt drawn, at { $weather } outdoors
log-night-draw = Draw of the unit while on
log-night-draw-at = Draw of the unit while on, at { $weather } outdoors
log-night-slope = Change of the draw for each kelvin outdoors
log-night-usable = Usable energy of the bank, full to empty
log-night-no-cabin = The log has no cabin temperature: only the electric side is fitted. If a column has it, choose “temperature in the cabin” for that column and read the file again.
log-night-no-outdoors = The log has no outdoor temperature: the plan’s weather is taken, which widens the spreads.
log-night-no-clock = The log has no clock times: it is taken to start at { $clock }, as the plan’s night does.
log-night-cut = Only the first { $most } of the log are fitted.
log-night-charged = The bank was charged for { $share } of the time. What the unit drew then cannot be separated: log a night without charging, or the unit’s own circuit.
log-night-misfit = The model misses the cabin temperature by { $times } times a thermometer’s scatter: something else changed in that night. The spreads are widened for it.
log-night-not-ahead = The last third could not be predicted: the log’s first two thirds are too short.
log-night-held = The thermostat held { $held } on the log’s thermometer; the prediction uses this instead of the set point, { $set }.
log-night-predicts = The last third, predicted from the first two
log-night-predicts-hint = Fitted again to the first two thirds alone, the plan runs through the last third, in the logged weather.
log-night-measured = measured
log-night-predicted = predicted
log-night-from-here = predicted from here
log-night-cabin = Cabin temperature
log-night-used = Charge used
log-night-volts = Battery voltage
log-night-cabin-miss = Misses by { $miss } (root mean square), { $mean } on average. The plan before the fit: { $before }.
log-night-used-miss = In the last { $hours } the bank gave { $measured }; predicted were { $predicted }, a difference of { $miss }. The plan before the fit: { $before }.
log-night-volts-miss = Misses by { $miss } (root mean square). The plan before the fit: { $before }.

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
