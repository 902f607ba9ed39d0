## What is wrong with a number

finding-plan = The plan
finding-out-of-range = { $field }: { $value } is out of range. Accepted: { $range }.
finding-not-a-number = { $field }: this is not a number. Accepted: { $range }.
finding-too-many = { $field }: { NUMBER($count) } are listed, and at most { NUMBER($most) } are answered.
finding-none-given = { $field }: add at least one.
finding-bad-table = { $field }: row { NUMBER($row) } is out of order. State of charge must rise from row to row, voltage must not fall, and two rows or more are needed.
finding-bad-map = { $field }: row { NUMBER($row) } is missing or lacks a number and is left out. Each row needs all four numbers, and a map needs two rows or more.
finding-starts-cost =
    { NUMBER($starts) ->
        [one] The unit starts once, and that start wastes { $lost } of the cooling
       *[other] The unit starts { NUMBER($starts) } times, and these starts waste { $lost } of the cooling
    }: the compressor draws power before the coil is cold. A wider thermostat swing or a lower mode wastes less.
finding-no-such-mode = { $field }: this row of the mode plan names a mode that is not listed.
finding-bad-import = { $field }: hour { NUMBER($row) } is out of range, or the lists differ in length. Each hour needs a temperature { $temperature } and an irradiance { $irradiance }.
finding-standby-above-draw = { $field }: { $standby } is above the { $draw } drawn while on. Check both: standby is what the unit draws while its compressor is off.
finding-no-such-coil = { $field }: no coil gives this unit’s capacity on { $airflow } with a sensible share of { $share }. Check the three; the calculation keeps that share in all conditions.
finding-open-below-best = { $field }: Voc, { $open }, is below Vmp, { $best }, which no panel has. Check both; Voc is taken as { $best }.
finding-no-such-day = { $field }: this month has no day { NUMBER($stated) }. Its last day, { NUMBER($taken) }, is used.
finding-wanted-beyond-span = { $field }: { $wanted } are wanted, and the hot day is calculated for { $span } at most. What is said about it holds for these { $span }.
finding-unreachable = { $field }: no accepted value ({ $range }) gives these hours.

## What was read or assumed

finding-nominal-reading =
    { NUMBER($cells) ->
        [one] “{ $stated }” is read as { NUMBER($cells) } cell with { $taken } nominal: { $energy } for each battery.
       *[other] “{ $stated }” is read as { NUMBER($cells) } cells with { $taken } nominal: { $energy } for each battery.
    }
finding-amps-at-other-voltage = Amps measured at { $measured } do not apply to a { $bank } bank. The same power, { $power }, is used.
finding-amps-behind-converter = Amps into a unit behind a converter or inverter are read as power: at { $measured } they are { $power }.
finding-supply-mismatch = The unit needs { $supply } and the bank supplies { $bank }. Change the number of batteries in series, or put a converter between them.
finding-measured-implausible = Measured Wh divided by measured Ah gives { $mean } on average, where this bank would show about { $expected }. Check both, and the batteries in series; the measured Wh are not used.
finding-measured-load-taken = The measurement states no load. The load at rated current, { $load }, is used.
finding-depth-beyond-start = The bank starts at { $start } and { $floor } is kept in reserve: nothing is left to use.
finding-typical-curve = The voltage curve of this chemistry is a typical one: hours that end at a voltage cut-off are less certain.
finding-no-rate-measured = The voltage drop of these cells under load beyond their resistance has not been measured. None is assumed; the range is wider the faster they are discharged.
finding-rate-not-measured = The draw is { $rate } times the battery’s Ah rating ({ $rate }C), and such cells were measured up to { $measured }C. Beyond that the voltage under load is less certain.
finding-fast-lead-acid = This draw is { $rate }C. Above 0.3C lead-acid batteries often last less than the usual Peukert exponent says, at 0.5C a quarter less: enter the exponent that follows from your battery’s rate table.
finding-equal-sharing = The hours assume that { NUMBER($parallel) } strings share the current equally: busbars, or equal cables and a diagonal connection. Wiring checks the connection you enter there, or else the worst one.
finding-deep-lead-acid = Lead-acid at a depth of discharge of { $depth } wears out early; half is usual.
finding-low-above-high = The low, { $low }, is above the high, { $high }: the two are swapped.

## Where imported sun comes from

sun-parts-file = Direct and diffuse irradiance come from the weather file.
sun-parts-one-of-file = The weather file has only one of direct and diffuse irradiance. The other is the rest of its total.
sun-parts-estimated = The weather file has total irradiance only. Direct and diffuse are estimated from it (Erbs, Klein and Duffie 1982), and the diffuse may be a third off.

## How a typed text was read

entry-trouble = { $field }: enter { $range }.
echo-value = read as { $value }
echo-strings =
    { NUMBER($count) ->
        [one] read as { NUMBER($count) } string of { $each }
       *[other] read as { NUMBER($count) } strings of { $each }
    }
echo-between = read as { $value } ±{ $half }
echo-amps = read as { $amps } at { $volts }
echo-amps-between = read as { $amps } ±{ $half } at { $volts }
echo-watts = read as { $watts }: { $amps } at { $volts }
