## Wiring and charging: the page

wiring-no-answer = No answer yet: correct the marked fields.
wiring-circuits = Cable by cable
wiring-circuits-hint = Open a cable to see the rule that decides and its source. Sizes are the smallest in each system that pass every rule.
wiring-rule = Rule
wiring-yours = Yours
wiring-passes = passes
wiring-fails = fails
wiring-decides = { $rule } (decides)
wiring-none = none
wiring-sources = Sources of the rules
wiring-the-fuse = Fuse
wiring-recommended = Recommended: { $fuse }
wiring-place = Location: { $places }.
wiring-kind = Type
wiring-breaks = Breaking capacity (interrupting rating)
wiring-here = In this circuit
wiring-kinds-source = Breaking capacity of each type: typical values from memory, on the cautious side. Check the fuse’s data sheet.
wiring-batteries = Batteries
wiring-for-hours = Continuous
wiring-at-start = At start-up
wiring-one-open = One string disconnected
wiring-charging = Charging
wiring-panels = Panels
wiring-cautions = Safety
wiring-fields = Your cables
wiring-bank-limits = Battery limits and start-up
wiring-supply = What charges it
wiring-where = Where the system is
wiring-take-off = Main cable connection
wiring-strands = Conductor construction
wiring-fuse-kind = Type of main fuse
wiring-not-entered = not entered
wiring-engine-space = Passes through an engine space
wiring-enclosed = Runs inside a wall, conduit or duct
wiring-mixed = Batteries of different age, make or use are combined
wiring-laid = Installation and fuse

## The page to take to an electrician

wiring-sheet = A page to take to an electrician
wiring-sheet-print = Print this page for an electrician
wiring-sheet-title = Wiring, for review by an electrician
wiring-sheet-method = Calculated by Till Morning from the figures below. Direct current, copper only. A starting point for a licensed electrician: local codes govern.
wiring-sheet-taken = Inputs
wiring-assumed = { $text } (assumed)
wiring-sheet-fault-not-entered = breaking capacity: not checked, short-circuit current not given
wiring-sheet-fault = breaking capacity: at least { $fault } at { $volts }
wiring-sheet-sign = Checked by, licence, date:
wiring-sheet-cable = Cable, one way
wiring-sheet-amps = Current: nominal / lowest voltage / start-up
wiring-sheet-there = Fitted now
wiring-sheet-smallest = Minimum size
wiring-sheet-decided = Decided by
wiring-sheet-drop = Voltage drop, conductor at working temperature
wiring-nothing-passes = nothing passes
wiring-paper-drop = { $drop } ({ $percent }) of { $volts }
wiring-paper-fuse = { $rating } (at most { $most } on { $conductor }); { $breaking }
wiring-paper-fuse-fitted = { wiring-paper-fuse }; fitted now: { $fitted }
wiring-none-fits = none fits
-wiring-paper-bank = Bank: { $chemistry }; { $series } in series, { $parallel } in parallel, each { $volts } and { $charge }; { $nominal } nominal, { $charging } while charging
wiring-paper-bank = { -wiring-paper-bank }.
wiring-paper-bank-lowest = { -wiring-paper-bank }, { $lowest } at its lowest.
wiring-paper-unit = Unit: { $unit }, directly on the bank.
wiring-paper-unit-converter = Unit: { $unit }, through a DC-DC converter to { $volts }, { $rating }.
wiring-paper-unit-inverter = Unit: { $unit }, through an inverter, { $rating }.
wiring-rating-missing = rating not entered
wiring-taken-system = System: { $place }. Main cable connection: { $take-off }. Charging voltage up to { $volts }.
-wiring-taken-cable = { $circuit }: insulation { $insulation }, terminals { $terminals }, air { $air }, { $bundle }, { $strands }
wiring-taken-cable = { -wiring-taken-cable }.
wiring-taken-cable-engine = { -wiring-taken-cable }, through an engine space.
wiring-bundle =
    { NUMBER($count) ->
        [one] { NUMBER($count) } conductor in the bundle
       *[other] { NUMBER($count) } conductors in the bundle
    }

## Names of circuits, fuses, conductors and places

wiring-circuit-distribution = Bank to distribution
wiring-circuit-unit = To the unit
wiring-circuit-charger = Charger to bank
wiring-circuit-panel = Panels to controller
wiring-place-vehicle = in a vehicle
wiring-place-boat = on a boat
wiring-place-cabin = in a cabin or house
wiring-take-off-same-end = same end, both on the first battery
wiring-take-off-diagonal = diagonal, plus on the first and minus on the last battery
wiring-take-off-busbar = busbars with equal leads
wiring-strands-fine = fine-stranded, bare copper
wiring-strands-tinned = fine-stranded, tinned copper
wiring-strands-few = a few thick strands
wiring-strands-solid = solid
wiring-fuse-blade = blade fuse
wiring-fuse-strip = bolt-down strip fuse (ANL)
wiring-fuse-post = terminal fuse on the battery post (MRBF)
wiring-fuse-class-t = class T fuse
wiring-fuse-breaker = DC circuit breaker
# The cable of a circuit within a sentence.
-wiring-cable =
    { $circuit ->
        [distribution] the cable to the distribution
        [unit] the cable to the unit
        [charger] the charger cable
       *[panel] the panel cable
    }

## The answer, and verdicts

wiring-carries = carries it
wiring-fails-because = fails: { $why }
wiring-needs-sizes = not entered yet, needs { $sizes }
wiring-needs-no-size = not entered yet; no single conductor in the tables is large enough
wiring-not-judged-yet = not checked yet
wiring-waits-for = not checked yet, missing: { $names }
wiring-line = { $size }, { $verdict }
wiring-quoted = “{ $name }”
wiring-names-and-more = { $names } and { NUMBER($count) } more
wiring-no-size = no size available
wiring-headline-yes = Yes, for what you entered: the cable to the unit carries { $current } with a voltage drop of { $drop }.
wiring-headline-fifty = Only by tables that end at 50 V, which this bank exceeds while charging: the cable to the unit carries { $current } with a voltage drop of { $drop }.
wiring-more-cables =
    { NUMBER($count) ->
        [one] One more cable is not entered yet.
       *[other] { NUMBER($count) } more cables are not entered yet.
    }
wiring-headline-unnamed = Not checked yet: the conductor size of the cable to the unit is not entered. It needs { $sizes }.
wiring-headline-no-size = Not checked yet: the conductor of the cable to the unit is not entered, and no single one in the tables is large enough for { $current } over { $length }. Shorten the cable, reduce the load, or use a higher system voltage.
wiring-headline-open = Not checked yet: it depends on what is missing or only estimated. Enter { $names }.
wiring-headline-beyond = Not checked: a number for the cable to the unit is beyond what the tables cover.
wiring-headline-fails = No, not as entered: { $troubles }.
wiring-more-troubles = { $troubles }; and { NUMBER($count) } more below

## What is wrong

wiring-trouble-power = no current can carry the power through { -wiring-cable }
wiring-trouble-ampacity = { -wiring-cable } ({ $size }) is not rated for { $current } continuously
wiring-trouble-drop = { -wiring-cable } has a voltage drop of { $drop }
wiring-trouble-fuse-fit = no fuse that carries the load protects { -wiring-cable } ({ $size })
wiring-trouble-minimum = { -wiring-cable } is below the legal minimum size
wiring-trouble-fuse =
    { $circuit ->
        [distribution] the fuse in the cable to the distribution
        [unit] the fuse in the cable to the unit
        [charger] the fuse in the charger cable
       *[panel] the fuse in the panel cable
    } { $fault }
wiring-trouble-battery =
    one battery must supply { $current } { $when ->
        [start] at start-up
       *[hours] continuously
    }, and its limit is { $limit }
wiring-trouble-charging = one battery is charged with { $current }, and its limit is { $limit }
wiring-trouble-panels = the panels exceed the controller’s limit on the coldest morning
wiring-short-power = no current can carry the power
wiring-short-ampacity = too small for the current
wiring-short-fuse-fit = no fuse fits it
wiring-short-drop = voltage drop { $drop }
wiring-short-minimum = below the legal minimum size
wiring-short-fuse = fuse { $fault }

## The rules

wiring-rule-ampacity = Continuous current rating (ampacity)
wiring-rule-fuse = A fuse that fits
wiring-rule-drop = Voltage drop, conductor at working temperature
wiring-rule-minimum = Minimum size for mechanical strength
wiring-rule-ampacity-source = 33 CFR 183.425 table 5 with its notes; temperature correction by the equation of NFPA 70 section 310.15(B)
wiring-rule-fuse-source = NFPA 70 sections 210.20(A) and 240.6(A); small conductors in vehicles and cabins by its table 552.10(E)(1). All that is quoted here from NFPA 70 is not checked against the standard’s text.
wiring-rule-drop-source = Ohm’s law; copper by IEC 60028, strands by IEC 60228 and ASTM B8; the limit is yours (3 % is usual, no source)
wiring-rule-minimum-source = 33 CFR 183.425(d) and (e)
wiring-needs-ampacity = At least { $sizes }. What decides is the continuous current rating.
wiring-needs-fuse = At least { $sizes }. What decides is the fuse: it must carry the load, and must not exceed the conductor’s rating.
wiring-needs-drop = At least { $sizes }. What decides is the voltage drop that you allow.
wiring-needs-minimum = At least { $sizes }. What decides is the minimum size for mechanical strength.
wiring-needs-none = No size in either system passes.
wiring-remedies-any = Any of these would help: { $ways }.
wiring-remedies-yours = A larger conductor would help, or one of these with yours: { $ways }.
wiring-remedies-lighter = Only a smaller load or a bank of higher voltage would help.
wiring-remedies-larger = Only a larger conductor would help.
wiring-remedy-ratings =
    { $parts ->
        [both] insulation, lugs and holders
        [insulation] insulation
       *[terminals] lugs and holders
    } rated for { $temperature }
wiring-remedy-air = a place where the air stays below { $temperature }
wiring-remedy-alone = this pair alone, outside the bundle
wiring-remedy-shorter = a shorter run, such as { $length }
wiring-remedy-cut-off = a low-voltage cut-off at { $volts } or above, which lowers the current
wiring-remedy-two = two runs, each with its own fuse

## One cable: current, rating and drop

wiring-sized-mode =
    Sized for { $mode ->
        [the-unit] the cooling unit
       *[named] { $mode }, the mode with the highest draw
    }.
wiring-sized-rating = Sized for the full rating of the converter or inverter of { $unit }: anything may be connected to it.
wiring-sized-all = Sized for the unit and everything else that runs.
wiring-sized-charger = Sized for charger { $number }, the most powerful.
wiring-sized-controller = Sized for the solar charge controller.
wiring-sized-panels = Sized for { $current } of short-circuit current, times 1.25 for bright sun: { $design }. The fuse’s 125 % is the code’s second 1.25.
wiring-current = Current: { $current }.
wiring-current-low = Current: { $nominal } at nominal voltage, { $low } at { $volts }, the lowest voltage of the source; this is used for sizing.
wiring-current-start = About { $current } for a moment at start-up.
wiring-ampacity = { $size }: { $table } in the column for { $column }{ $factors } = { $allowed } continuous.
wiring-ampacity-none = { $size } is smaller than the table covers: no rating.
wiring-read-as = { $size }, rated as { $row }, the next smaller gauge
wiring-factor-air = { $factor } for air at { $temperature }
wiring-factor-bundle = { $factor } for the bundle
wiring-factor-enclosed = { $factor } for the enclosure
wiring-drop = { $length } one way: { $cold } ({ $cold-percent }) with the copper cold, { $hot } ({ $hot-percent }) at { $temperature }, as hot as it gets. You allow { $allowed } of { $volts }.
wiring-note-no-room = The air, { $air }, is as hot as the lower rating of insulation and terminals, { $rating }: no current is allowed.
wiring-note-no-gauge = No gauge up to 4/0 AWG passes.
wiring-note-no-metric = No metric size up to 120 mm² passes.
wiring-note-no-current = No current can carry that power at that voltage, whatever the size.
wiring-note-solid = Solid wire cracks under vibration, and is forbidden on boats (33 CFR 183.425(a)).
wiring-note-between = { $size } lies between two gauges and is rated as the smaller one.
wiring-note-length = No length entered: { $length } assumed.
wiring-note-connections = Lugs, switches and fuse holders drop another { $volts }, which leaves less for the cable.
wiring-note-enclosed = Rated as enclosed in a wall or conduit: in a building its route cannot be seen.

## The fuse of a cable

wiring-fuse =
    { $rating }: 125 % of the current is { $least }, and this is { $list ->
        [vehicle] a size made for vehicles (common practice)
       *[standard] the next standard size
    }; { $conductor } may be fused at { $most } at most.
wiring-fuse-none = None: 125 % of the current is { $least }, and { $conductor } may be fused at { $most } at most. The conductor must be larger; a smaller fuse would blow in use.
wiring-fuse-start = The start-up current, about { $current }, is above the fuse for a moment: a slow fuse carries that, a fast one may blow. Its data sheet says how long.
wiring-fuse-source-bank = The source is the bank, whichever way the current flows: the fuse goes at the bank’s end.
wiring-fuse-marine = On boats up to { $most } would be legal here (33 CFR 183.455(c)); not recommended.
wiring-fitted-good = The { $rating } fuse fitted suits load and conductor: from { $least } to { $most } would.
wiring-fitted-wrong = The { $rating } fuse fitted { $faults }.
wiring-fitted-kind = The fuse { $faults }.
# After the words ‘the fuse’.
wiring-fault-above = is above what the conductor may carry, { $most }
wiring-fault-below = blows in use, it must be at least { $least }
wiring-fault-far = is too far from the source, at most { $most } is allowed
wiring-fault-kind = is of a type ({ $kind }) that cannot break the short-circuit current there
wiring-place-source = at the source itself
wiring-place-within = where that is impractical, within { $distance }
wiring-place-enclosed = within { $distance } if the conductor is sheathed or enclosed all the way
wiring-place-close = as close as practicable, and no further than { $distance }
wiring-interrupt-maker = It must break { $current } at { $volts } DC (breaking capacity), by the maker’s short-circuit current of all batteries together.
wiring-interrupt-resistance = It must break { $current } at { $volts } DC (breaking capacity), by the lowest likely resistance of the batteries. A maker’s figure is better.
wiring-interrupt-panels = It must break { $current } at { $volts } DC (breaking capacity): shorted panels give little more than in normal use.
wiring-interrupt-guess = Breaking capacity: not checked yet. By a rough estimate of the resistance, it could be { $current } at { $volts } DC. Enter { $field }.
wiring-interrupt-far = A short circuit at the far end of this cable draws { $current }.
wiring-kind-not-at-volts = not at this voltage
wiring-kind-suits = suitable
wiring-kind-no-size = not made with this rating
wiring-kind-unsuitable = not suitable

## Batteries and panels

wiring-when = When
wiring-whole-bank = Whole bank
wiring-most-loaded = Most-loaded battery
wiring-limit = Limit
wiring-burden-enough = within the limit
wiring-burden-above = above the limit
wiring-worst-battery = The most-loaded battery supplies { $current } of the { $limit } it may.
wiring-worst-battery-open = The most-loaded battery supplies { $current }; its limit is not entered.
wiring-worst-bank = The bank supplies { $current } of the { $limit } it may.
wiring-worst-bank-open = The bank supplies { $current }; its limit is not entered.
wiring-shares = An even share is { $even }. The most-loaded battery supplies { $each }. (Kirchhoff’s laws over batteries and links.)
wiring-string-fuse = Each of the { NUMBER($count) } strings needs a fuse of its own: { $rating } is recommended, where its lead can carry that.
wiring-string-interrupt = It must break { $current }. Suitable: { $kinds }.
wiring-string-interrupt-none = It must break { $current }, and no type listed here does: ask the maker.
wiring-surge-held = The start-up surge of { $time } is compared with the continuous limit: no peak limit for that long is entered.
wiring-solar-short = { $current } of short-circuit current by the label: size wire and fuse for 1.25 × 1.25 times that, { $design } (NFPA 70 section 690.8; all that is quoted here from NFPA 70 is not checked against the standard’s text).
wiring-solar-short-watts = { $current } of short-circuit current, worked out from the watts, 8 % above the current at maximum power (common practice): size wire and fuse for 1.25 × 1.25 times that, { $design } (NFPA 70 section 690.8; all that is quoted here from NFPA 70 is not checked against the standard’s text).
-wiring-solar-cold = On a morning of { $temperature } the longest string has an open-circuit voltage of { $volts }
wiring-solar-cold-within = { -wiring-solar-cold }; the controller takes { $limit } (NFPA 70 section 690.7).
wiring-solar-cold-above = { -wiring-solar-cold }; the controller takes only { $limit }, and a moment above that can destroy it (NFPA 70 section 690.7).
wiring-solar-cold-open = { -wiring-solar-cold }; what the controller takes is not entered (NFPA 70 section 690.7).
wiring-solar-fuses = { NUMBER($count) } strings in parallel: each with its own fuse, { $rating }.
wiring-solar-no-fuses = Fewer than three strings in parallel: none needs a fuse of its own (NFPA 70 section 690.9).

## What to know of these numbers

wiring-beyond-tables = { $circuit }: not checked, a number is beyond what the tables cover.
wiring-no-kind = { $circuit }: no type of fuse listed here is made with that rating and breaks the { $current } that may flow. Give each string its own class T fuse, and ask the makers of battery and fuse for their figures.
wiring-one-opens = If one string disconnects, another is left with { $current } and may supply { $limit }: it will disconnect too, and all power is lost.
wiring-fuse-each = { NUMBER($count) } strings in parallel: each needs its own fuse at its terminal, because a fault in one is fed by all the others.
wiring-unequal = The main cable connection loads one battery above its share: { $current } instead of { $even }. A diagonal connection evens it out, busbars with equal leads do so fully.
wiring-mixed-note = Batteries of different age, make or use do not share current and charge as calculated here: the old one sets the end, and the new one wears. Do not mix them.
wiring-precharge = An inverter or converter draws an inrush current when it is connected, which can open the BMS and burn contacts: precharge its capacitors through a resistor first.
wiring-inverter-peak = The unit’s start takes about { $start } and the inverter’s peak is { $peak }: it might not start.
wiring-behind-converter = The cable from the converter or inverter to the unit is not checked here. Behind an inverter it is mains wiring (120 or 230 V), with the same dangers as at home.
wiring-drops-together = Along both cables { $drop } is lost before the unit: 5 % is the usual maximum.
wiring-cold-panels = On the coldest morning the panels’ open-circuit voltage is { $volts } and the controller takes { $limit }: a moment of it can destroy the controller. Connect fewer in series.
wiring-controller-open = The panels reach { $volts } on the coldest morning: make sure that the controller takes more than that.
wiring-panels-below = Hot in the sun the panels give { $best }, and the bank charges at up to { $charging }: only a step-up controller fills it.
wiring-fuse-panel-strings = { NUMBER($count) } strings of panels in parallel: each needs its own fuse, because the others can overload one that is shorted.
wiring-source-practice = common practice
wiring-source-interrupting = breaking capacity: typical values, from memory
wiring-source-kirchhoff = Kirchhoff’s laws
wiring-source-drop = informational note to NFPA 70 section 210.19(A), not checked against the standard’s text
wiring-source-cold = NFPA 70 section 690.7, not checked against the standard’s text
wiring-source-strings = NFPA 70 section 690.9(A), not checked against the standard’s text
