## Claims: the answer

claims-none = No claim yet. Choose a log file, or enter a claim and what you measured.
claims-number = Claim { $number }
claims-enter-both = { $claim }: enter what is claimed and what you measured.
claims-enter-claimed = { $claim }: enter what is claimed.
claims-enter-measured = { $claim }: enter what you measured.
claims-enter-valid = { $claim }: enter numbers within their ranges.
claims-answer = { $claim }: { $measured } measured: { $verdict }.
claims-answer-share = { $claim }: { $measured } measured, { $share } of the claim: { $verdict }.
claims-decided-none = None of the { $all } claims is decided yet.
claims-decided =
    { NUMBER($decided) ->
        [one] { NUMBER($decided) } of { $all } claims is decided.
       *[other] { NUMBER($decided) } of { $all } claims are decided.
    }

## Claims: verdicts

claims-beats-it = beats it
claims-meets-it = meets it
claims-falls-short = falls short
claims-too-close = too close to call
claims-inside = inside the claimed range
claims-below = below the claimed range
claims-above = above the claimed range
claims-not-judged = not checked yet
claims-not-judged-because = not checked yet ({ $why })

## Claims: what a verdict still needs

claims-lacks-meter = meter not chosen
    .advice = Choose the meter, so that its accuracy can be worked out.
claims-lacks-limits = meter limits missing
    .advice = Enter at least one limit from the meter’s data sheet.
claims-lacks-rate = current or duration of the run missing
    .advice = Enter the mean current of the run or its duration: the meter’s limits depend on it.
claims-lacks-free-area = free area of the grille missing
    .advice = Enter the free area of the grille: the vane reads air speed, not airflow.
claims-lacks-right-meter = this meter cannot read this directly
    .advice = A meter of this kind cannot read this directly. Choose the meter that did.
claims-lacks-bank = its bank is not in the plan
    .advice = The bank of this claim is not in the plan.
claims-lacks-conditions = current or temperature of the run missing
    .advice = Lead-acid: enter the mean current and the battery temperature, so that the result can be corrected to rated conditions.

## Claims: quantities and figures

claims-about-charge = Capacity in Ah
claims-about-energy = Energy in Wh
claims-about-draw = Power draw
claims-about-airflow = Airflow
claims-about-temperature = Temperature
claims-about-cooling = Cooling capacity
claims-about-eer = EER in Btu/Wh
claims-range = { $low } to { $high }
claims-uncertainty-unknown = { $figure }, uncertainty unknown

## Claims: conditions of a test

claims-conditions = Conditions: { $conditions }.
claims-no-conditions = No conditions are stated.
claims-from-air = calculated from the air side below
claims-mean-of-runs =
    { NUMBER($count) ->
        [one] { NUMBER($count) } run
       *[other] mean of { NUMBER($count) } runs
    }
claims-for-duration = for { $duration }
claims-at-current = at { $current }
claims-at-temperature = at { $temperature }
claims-full-charge = full charge judged by: { $by }
claims-run-end = run ended by: { $by }
claims-read-with = measured with: { $meter }
claims-corrected = measured { $measured }, corrected by a factor of { $temperature } for temperature and { $rate } for rate
claims-full-charger = charger finished
claims-full-volts = absorption voltage held
claims-full-monitor = battery monitor showed full
claims-end-bms = low-voltage cut-off of the BMS
claims-end-unit = low-voltage cut-off of the unit
claims-end-volts = set end voltage reached
claims-end-hand = switched off by hand
claims-class-clamp = clamp meter
claims-class-shunt = battery monitor with a class 0.5 shunt
claims-class-multimeter = multimeter
claims-class-watt-meter = plug-in power meter
claims-class-vane = handheld vane anemometer
claims-class-thermometer = thermometer
claims-class-hygrometer = hygrometer
claims-class-sheet = limits from the data sheet

## Claims: what limits a figure, and what would decide it

claims-limited = Main source of uncertainty (k = { $k }): { $source }, { $share }.
claims-source-stated = the stated spread (for a log: its meter and its gaps)
claims-source-meter = the meter
claims-source-voltmeter = the voltmeter
claims-source-sampling = the logging interval
claims-source-scatter = the scatter of the runs
claims-source-timing = start and end of the run
claims-source-correction = the correction to rated conditions
claims-decided-below = An uncertainty below ±{ $below } decides it: { $ways }.
claims-decided-not-alone = An uncertainty below ±{ $below } decides it. Neither more time nor a better meter is enough by itself.
claims-way-time = measure for { $duration } in all
claims-way-class = use a { $meter }, read with care
claims-way-limit = use a meter accurate to ±{ $limit }

## Claims: cooling from the air side

claims-air = Cooling capacity from air readings
claims-air-hint = Works out the cooling from the air that goes in and the air that comes out. Read both at the same time, after ten minutes of steady running. Without both humidities only the sensible cooling (the fall in temperature) can be known.
claims-basis = Airflow is stated
claims-basis-outlet = at outlet conditions
claims-basis-inlet = at inlet conditions
claims-basis-standard = at standard density
claims-vane = Vane anemometer readings
claims-vane-hint = One reading for each point of an even grid across the grille, separated by spaces. Used where no airflow is entered.
claims-air-total = Total cooling: { $cooling } ±{ $expanded }.
claims-air-sensible = Sensible cooling only: { $cooling } ±{ $expanded }. Humidity was not read at both faces; on a wet coil more than half can be missing.
claims-air-efficiency = COP { $cop }, EER { $eer }.
claims-air-limited = Main source of uncertainty: { $reading }, { $share }.
claims-read-flow = airflow
claims-read-free-area = free area
claims-read-inlet-temperature = inlet temperature
claims-read-inlet-humidity = inlet humidity
claims-read-outlet-temperature = outlet temperature
claims-read-outlet-humidity = outlet humidity
claims-read-pressure = air pressure
claims-air-no-temperatures = Enter both air temperatures: inlet and outlet.
claims-air-no-flow = Enter the airflow, or anemometer readings and the free area of the grille.
claims-air-out-of-range = One of these numbers is outside what can be calculated.
claims-air-too-wet = Air cannot hold that much water: check humidity and temperature.
claims-air-parts = Of this: { $parts }. Each ± covers about 95 % (expanded uncertainty, k = 2).
claims-air-split = sensible { $sensible }, latent { $latent }
claims-air-condensate = condensate { $rate }
claims-air-flow = airflow { $flow } ±{ $expanded }
claims-air-cop = COP { $cop } ±{ $expanded }
claims-budget-reading = Reading
claims-budget-standard = Standard uncertainty
claims-budget-share = Share
claims-row-total = Total cooling
claims-row-sensible-only = Sensible cooling only
claims-row-sensible = Sensible cooling
claims-row-latent = Latent cooling
claims-row-condensate = Condensate
claims-row-airflow = Airflow
claims-row-cop = COP
claims-row-eer = EER

## Claims: price

claims-price = Price of a watt-hour
claims-money = { $measured } per measured Wh, { $usable } per usable Wh, in the currency of the price.
claims-money-life = Over its cycle life it delivers { $energy }, at { $price } per kWh.
claims-row-measured-energy = Measured energy
claims-row-measured-price = Price of a measured Wh
claims-row-usable-price = Price of a usable Wh
claims-row-life-energy = Energy over the cycle life
claims-row-life-price = Price over the cycle life
claims-per-wh = per Wh
claims-per-kwh = per kWh

## Claims: what to measure next

claims-next = What to measure next
claims-next-none = Nothing that an ordinary meter could improve.
-claims-mode-of =
    { $mode ->
        [the-unit] of the cooling unit
       *[named] of { $mode }
    }
claims-next-one =
    { $how }: the range { -claims-mode-of } { $brings ->
        [two-thirds] shrinks by more than two thirds
        [half] about halves
        [quarter] shrinks by about a quarter
       *[little] shrinks a little
    }, from { $now } to { $then }. { $field } makes { $share } of it.
claims-how-clamp = Measure the draw for { $duration } with a clamp meter
claims-how-whole-run = Log one run from full charge to its own end (about { $duration })
claims-how-two-loads = Measure the voltage at two loads
claims-how-volts-at-stop = Note the voltage as it stops
claims-how-fill-first = Charge the bank full with the charger beforehand
claims-how-both-sides = Measure the power on both sides of the converter for { $duration }

## Claims: pocket formulas

claims-pocket = Pocket formulas
claims-pocket-hint = Usable Wh = nominal voltage × capacity in Ah × depth of discharge. For nights without sun.
claims-pocket-holds = { $mode }: hours = { $per-wh } × usable Wh (= { $per-ah } × usable Ah at { $volts }, { $chemistry }); from { $low } to { $high } usable Wh, within { $error }.
claims-pocket-lead-acid = { $mode }: no pocket formula. A larger lead-acid bank gives more for each Ah, so one line cannot serve all sizes.
claims-pocket-fixed-start = { $mode }: no pocket formula, because the bank does not start full.
claims-pocket-sun = { $mode }: no pocket formula, because the solar share depends on the clock.
claims-pocket-limits = { $mode }: no pocket formula, because cut-offs or current limits end some sizes early.
claims-pocket-nothing = { $mode }: no pocket formula, because the bank has no usable charge.
chemistry-lfp-short = LFP
chemistry-nmc-short = NMC
chemistry-sodium-ion-short = sodium-ion
chemistry-agm-short = AGM lead-acid
chemistry-gel-short = gel lead-acid
chemistry-flooded-short = flooded lead-acid

## Claims: the report and its fields

claims-report = Bench report
claims-report-note = A verdict is given only where it holds for every value within the uncertainty. Source: JCGM 106:2012, guard bands as wide as the expanded uncertainty, 95 %.
claims-head-claim = Claim
claims-head-claimed = Claimed
claims-head-measured = Measured
claims-head-share = Share of the claim
claims-head-verdict = Verdict
claims-claims = Claims
claims-add-claim = Add a claim
claims-remove-claim = Remove this claim
claims-claim-name = Name in the report
claims-about = Quantity
claims-claim-bank = Bank
claims-meter = Measured with
claims-more = Limits, conditions and repeated runs
claims-full-by = Full charge judged by
claims-end-by = Run ended by
claims-not-stated = not stated
claims-runs = Results of repeated runs
claims-runs-hint = Separated by spaces, as 4310 4325 4319. Two or more take precedence over the figure above; how far they differ adds to the uncertainty.
claims-list-bad = Enter numbers separated by spaces, each { $accepted }.
