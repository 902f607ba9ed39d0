## Charts

day-temperatures = Cabin and outdoors
day-charge = State of charge
day-power = Charging and use
day-axis-celsius = °C
day-axis-fahrenheit = °F
day-axis-charge = %
day-axis-power = W: charging up, use down
day-cabin = Cabin
day-outdoors = Outdoors
day-set-point = Set point
day-from-reading = From now
day-charge-short = Charge
day-sun-in = Panels
day-charger-in = Chargers
day-loads-out = Loads
day-unit-out = Unit
day-charts-hint = Touch a chart, or use the arrow keys, to read all three. Shaded: between sunset and sunrise. The band covers 19 of 20 simulated days; the line uses the plan’s own numbers.
day-band-coming = Working out the band…
day-band-stale = The band still belongs to the earlier numbers.
day-band-none = No band: the number of simulated nights is 0.

## Headings and short texts of the page

day-no-answer = No answer for these days yet: correct the fields named below.
day-events = Events by time
day-by-day = Day by day
day-books = Show the working
day-energy-book = Energy balance of the bank
day-heat-book = Heat balance of the cabin
day-method = Sun position: Meeus, Astronomical Algorithms (2nd ed.). Clear sky: Ineichen and Perez (Solar Energy 73, 2002) with the Linke turbidity given. Temperatures through the day: hourly fractions of the ASHRAE Handbook of Fundamentals (2009 and later). Heat: two stores, air and shell, with sun on the outside by that handbook’s sol-air temperature. Capacity and draw of the unit: published laboratory curves of room units. Between switching events the cabin temperature is exact; switching, empty and cut-offs are located in time.
day-start = These days
day-from-file = Temperature and sun of each hour come from the weather file; the high entered here shifts its temperatures.
day-rests-on = Inputs
day-weather = Place, date and weather
day-weather-hint = A climate fills every field left empty; its figures are invented for this page. A forecast for your place is better, a weather file better still.
day-climate = Climate
day-my-place = Take my position
day-today = Take today’s date
day-weather-rest = Air and ground in detail
day-place-asked = Asking the device for its position…
day-place-taken = Latitude, longitude and clock are taken from the device. Nothing is sent anywhere.
day-place-refused = The browser does not let the page know where it is. Enter latitude and longitude, or choose a climate.
day-place-missing = The device does not know where it is. Enter latitude and longitude, or choose a climate.
day-weather-file = Hours from a weather file
day-weather-file-hint = EPW, TMY2, TMY3, or a table with the headings hour, temperature and irradiance (W/m², horizontal); optional: dni (direct normal) and dhi (diffuse horizontal). Choose the file or drop it here; it is read on this device.
day-pick-weather = Choose a weather file
day-forget-weather = Remove the weather file
day-stretch = Days taken from the file
day-stretch-hottest = the hottest
day-stretch-date = from the date above on
day-stamp = In a table, an hour’s sun is the mean
day-stamp-before = of the hour before
day-stamp-about = of the half hours before and after
day-stamp-after = of the hour after
day-the-cabin = The cabin
day-body = Type of cabin
day-insulation = Insulation
day-colour = Colour outside
day-glazing = Windows
day-covers = Window covers
day-derived = Derived values
day-derived-hint = An empty field shows the value that follows from the answers above. A number entered here replaces it.
day-the-unit = Capacity of the cooling unit
day-unit-hint = Left empty, the COP of a plain window unit is used. The capacity on the label, or your own measurement, makes the answer surer.
day-curves = Performance curves
day-add-map-row = Add a reading
day-remove-map-row = Remove this reading
day-map-row = Reading
day-control = Control
day-mode-plan = Mode plan by the clock
day-mode-plan-hint = The same every day: from each time on, the mode beside it. While nothing is on, doors and roof light are assumed open.
day-add-mode-row = Add a time
day-clear-mode-plan = Remove the mode plan
day-remove-mode-row = Remove this time
day-mode-row = Run
day-mode-off = nothing
day-mode-plan-taken = No mode plan is entered. From the hours wanted: { $modes }.
day-supply = What feeds the bank
day-drawn = Simulated nights
day-drawn-hint = More simulated nights make the odds finer and take longer. Another random seed shows how much of the result is chance.
day-changes = What would help
day-changes-coming = Trying the changes one by one…
day-changes-none = No change to try: the plan cannot be run.
day-changes-rest = Other changes tried
day-changes-hint = Each change alone on these days, three at least. Ranked by hours until empty, then hours at the set point, then energy left to spare. Weights are usual figures (common practice, no source).
day-try-change = Try it
day-try-change-of = Try it in the plan: { $what }
day-bedtime = Latest time to switch down
day-bedtime-coming = Looking for the latest time…
day-bedtime-none = No mode is planned before the wanted hour, so there is none to switch.
day-longest = The longest cool night
day-longest-coming = Searching mode plans…
day-longest-none = No mode is planned, or the plan cannot be run.
day-take-longest = Take it as the mode plan
day-enough = How much is enough?
day-enough-coming = Searching…
day-enough-none = Nothing to work out: the plan cannot be run, or this part is not in it yet. Add it first.
day-take-enough = Take it into the plan
day-check-ins = Readings at night: monitor and thermometer
day-checked = The night by your readings
day-take-fit = Take the fitted figures into the plan
day-check-in = Reading
day-check-in-hint = What the monitor and a thermometer show now, on the same clock as the start.
day-check-in-log = The log of a whole night, with a thermometer, fits the plan better: give it under “{ $question }”.
day-add-check-in = Add a reading, now
day-remove-check-in = Remove this reading
day-panels = Panels
day-array = Panel group
day-add-array = Add panels
day-remove-array = Remove these panels
day-no-array = No panels feed the bank.
day-mounting = Mounting
day-panel-sheet = From the panel’s data sheet
day-controller = Controller
day-controller-rest = Controller and losses
day-chargers = Chargers
day-charger = Charger
day-add-charger = Add a charger
day-remove-charger = Remove this charger
day-no-charger = No charger feeds the bank.
day-fed-by = Fed by
day-bank-warmth = Temperature of the bank
day-bank-place = Location of the bank

## Moments and dates

day-moment-of-date = { $date }, { $clock }
day-moment-night = night { $number }, { $clock }
day-moment-morning = morning { $number }, { $clock }
day-moment-afternoon = afternoon { $number }, { $clock }
day-moment-next-day = { $clock } the next day
day-of-date = { $weekday } { $day } { $month }
day-of-month = { $day } { $month }
day-of-weekday = { $weekday } { $day }
day-of-number = day { $day }
day-weekday-mon = Mon
day-weekday-tue = Tue
day-weekday-wed = Wed
day-weekday-thu = Thu
day-weekday-fri = Fri
day-weekday-sat = Sat
day-weekday-sun = Sun
day-month-jan = Jan
day-month-feb = Feb
day-month-mar = Mar
day-month-apr = Apr
day-month-may = May
day-month-jun = Jun
day-month-jul = Jul
day-month-aug = Aug
day-month-sep = Sep
day-month-oct = Oct
day-month-nov = Nov
day-month-dec = Dec
# Stand as $until in the sentences below.
day-until = until { $moment }
day-until-clock = until { $clock }
day-for-duration = for { $duration }
-day-mode =
    { $mode ->
        [the-unit] the cooling unit
       *[named] { $mode }
    }
-day-mode-first =
    { $mode ->
        [the-unit] The cooling unit
       *[named] { $mode }
    }

## The answer

day-no-mode = no mode
day-modes-then = { $first } then { $last }
day-lasts-all = It lasts all { $days }: with { $modes } each night the bank goes no lower than { $least }.
day-lasts = It lasts { $until }: with { $modes } the bank goes no lower than { $least }.
day-lasts-then-empty = It lasts the night, { $until }; the bank is empty about { $moment }.
day-does-not-last = It does not last { $until }: with { $modes } the bank is empty about { $moment }, after { $duration }.
# The same where there is one mode without a name.
day-lasts-all-plain = It lasts all { $days }: the bank goes no lower than { $least }.
day-lasts-plain = It lasts { $until }: the bank goes no lower than { $least }.
day-does-not-last-plain = It does not last { $until }: the bank is empty about { $moment }, after { $duration }.
day-nothing-cooled = No mode is planned, so nothing is cooled.
day-stays-cool = The cabin still stays at { $warmest } or below that night.
day-keeps-set-point = The first night the cabin keeps its { $set }: { $warmest } at the warmest once cooled down.
day-loses-set-point = The cabin does not keep its { $set }: at about { $moment } it is above it, { $warmest } at the warmest once cooled down.
day-duty-from-weather = How long the compressor runs follows from the weather and the thermostat here; the duty cycle above is not used.
day-warmest-in-all = Warmest in the hours the unit should run, over all { $days }: { $warmest } (cooling down included).
day-unit-stopped-for = The cooling unit is off for { $duration } while it should run: it stops { $stop }. Everything else runs on.
day-chance-certain = almost certain
day-chance-none = almost no chance
day-chance-under-tenth = less than 10 %
day-chance-over-nine = more than 90 %
day-chance-tens = about { $share }
day-odds-lasting = Lasts { $until }: { $chance }.
day-odds-holding = Also holds { $set }: { $chance }.
day-odds-never-empty = Never empty in { $days }: { $chance }.
day-odds-assume = Chances from { NUMBER($count) } simulated { NUMBER($count) ->
        [one] day
       *[other] days
    }: each number varies within its own uncertainty, independently of the others. Not included: a forecast wrong the same way all week, and whatever the plan leaves out. Our tests check this arithmetic, not the uncertainties.
day-ends = It stops { $stop }.
day-ends-at-start = That is when { -day-mode } starts: the bank can carry the loads alone.
day-ends-after = In 39 of 40 simulated days that is after { $low }, in some not at all.
day-ends-between = In 19 of 20 simulated days that is between { $low } and { $high }.
day-warmest-between = The warmest cabin of the night, once cooled down, is between { $low } and { $high }.

## Events

day-mark-empty = empty
day-mark-back-on = back on
day-mark-full = full
day-mark-unit-stops = unit stops
day-mark-too-warm = too warm
day-mark-cool-again = at set point
day-mark-unit-off = unit off
day-mark-no-charging = no charging
day-mark-charging-again = charging again
day-mark-fuel-gone = fuel gone
day-event-empty = Everything on the bank is off: it stops { $stop }.
day-event-empty-at-start = Everything on the bank is off: starting { -day-mode } stops it, { $stop }. The bank can carry the loads alone.
day-event-back-on = The bank has enough charge again: loads and unit come back on.
day-event-full = The bank is full.
day-event-unit-stopped = Only the cooling unit stops, { $stop }.
day-event-too-warm = Too warm: the cabin is above the set point and the thermostat swing.
day-event-cool-again = The cabin is back at its set point.
day-event-mode-begins = { -day-mode-first } starts.
day-event-unit-off = The cooling unit is off by the plan; doors and roof light are open.
day-event-charging-refused = The bank is at { $temperature } and accepts no charge: do not charge lithium below freezing or when hot.
day-event-charging-again = The bank accepts charge again.
day-event-fuel-gone = The generator’s fuel is used up.

## What the charts show

day-outdoors-from-to = Outside: { $low } to { $high }.
day-unit-off-cabin-hot = With the unit off the cabin reaches { $temperature }: leave no person or animal in it.
day-lowest-charge = Lowest: { $least } ({ $moment }). At the end: { $end }.
day-in-panels = panels { $energy }
day-in-chargers = chargers { $energy }
day-in-store = from the battery { $energy }
day-in-and-out = In over { $days }: { $ways_in }. Used: unit { $unit }, loads { $loads }.

## What to know first

day-all-off-for = Everything electric is off for { $duration } of these days: lamps, fan and fridge too.
day-too-warm-for = Too warm for { $duration } while the unit should run: above { $set } and the thermostat swing.
day-runs-down = Each day takes about { $energy } more out of the bank than comes in.
day-spilled = The panels could give { $energy } more: the bank is full by then.
day-no-weather = No weather entered: a hot day on a high salt lake plain at 38° N is assumed.

## Balances

day-head-from = Day, from { $clock }
day-head-panels = Panels, Wh
day-head-chargers = Chargers, Wh
day-head-unit = Unit, Wh
day-head-loads = Loads, Wh
day-head-least = Lowest
day-head-end = At the end
day-energy-panels = From the panels, after the controller
day-energy-chargers = From chargers
day-energy-store = From the charge stored in the bank
day-energy-unit = To the cooling unit, its converter and cable
day-energy-loads = To the other loads
day-energy-lost = Lost as heat in the bank
day-energy-spilled = Available from the panels, not used
day-energy-fuel = Fuel used
day-heat-sun-glass = Sun through glass
day-heat-sun-shell = Sun on walls and roof
day-heat-glass = Conduction through glass
day-heat-shell = Conduction through walls and roof
day-heat-air = Air exchange
day-heat-people = People and animals
day-heat-gains = Other sources inside
day-heat-unit = Removed by the unit
day-heat-stored = Stored in air, contents, walls and roof
day-heat-condensed = Water condensed by the unit
day-heat-latent = Latent heat of that water

## Changes that gain hours

day-change-string =
    { $kind ->
        [battery] One more battery in parallel ({ NUMBER($count) } in all)
       *[string] One more string of batteries ({ NUMBER($count) } in parallel)
    }
day-change-more-panels = { $more } more of panels, { $all } in all
day-change-panels = { $power } of panels, flat on the roof
day-change-panels-in-open = The panels out of the shade
day-change-charger = A stronger charger: { $current }
day-change-full-at-start = The bank full at the start
day-change-set-point = A set point of { $temperature }
day-change-lower-mode = { $lower } instead of { $mode }
day-change-covers = Window covers: { $covers }
day-change-shade = Parked in the shade: { $share } less sun, on the panels too
day-change-insulation = Insulation: { $insulation }
day-change-colour = Colour outside: { $colour }
day-change-load = Without “{ $name }”
day-change-load-number = Without load { $number }
day-gain-never-empty = lasts all { NUMBER($count) } { NUMBER($count) ->
        [one] day
       *[other] days
    }
day-gain-hours = { $duration } more until empty (over { $days })
day-gain-fewer-hours = worse: { $duration } less until empty (over { $days })
day-gain-holding = the set point held { $duration } longer (over { $days })
day-gain-spare = { $energy } more left at the lowest point
day-gain-less-spare = worse: { $energy } less left at the lowest point
day-gain-none = no real gain
day-gain-keeps-heat = insulation also keeps the day’s heat in at night
day-gain-chance = chance of lasting the night: { $then }, now { $now }
day-gain-warmest = the cabin up to { $temperature } once cooled down
day-gain-mass = about { $mass } more weight
day-gain-cost = for { $cost } at your price
day-bedtime-no-need = No need to switch to a lower mode: with { -day-mode } all along at least nine nights in ten last { $until }.
day-bedtime-change = Switch from { $mode } to { $lower } by { $clock } at the latest: then nine nights in ten last { $until }.
day-bedtime-off = Turn { -day-mode } off by { $clock } at the latest: then nine nights in ten last { $until }.
day-bedtime-change-late = Even switching from { $mode } to { $lower } at the start is too late for nine nights in ten. Then it lasts { $until }: { $chance }.
day-bedtime-off-late = Even turning { -day-mode } off at the start is too late for nine nights in ten. Then it lasts { $until }: { $chance }.

## Readings at night

day-check-in-read = { $moment }: the bank is at { $charge } (expected { $expected_charge }), the cabin at { $cabin } (expected { $expected_cabin }).
day-check-in-used-since-start = Used since the start: { $ratio } times what was expected.
day-check-in-used-since-reading = Used since the reading before: { $ratio } times what was expected.
day-onward-empty = From there the bank is empty about { $moment }, before { $goal }.
day-onward-lasts-with = From there it lasts until { $goal }, with { $charge } left.
day-onward-lasts = From there it lasts until { $goal }.
day-advice-go-on = Go on as planned. Lasts until { $goal }: { $chance }.
day-advice-switch = Switch to { -day-mode } now. Then it lasts until { $goal }: { $chance }.
day-advice-off = Turn the unit off now. Then it lasts until { $goal }: { $chance }.
day-advice-nothing = No switching makes it last until { $goal } in nine nights of ten. With the unit off from now on: { $chance }.
day-advice-as-planned = As planned: { $chance }.
day-fit-too-few = { NUMBER($least) } readings or more are fitted to the plan; so far there { NUMBER($readings) ->
        [0] is none
        [one] is 1
       *[other] are { NUMBER($readings) }
    }.
day-fit-untold = The { NUMBER($readings) ->
        [one] reading tells
       *[other] { NUMBER($readings) } readings tell
    } nothing new about cabin heat, draw or usable energy.
day-fit-cabin-loss = Heat that enters the cabin
day-fit-draw = Draw of the unit
day-fit-usable = Usable energy of the bank
day-fit-factor = { $what }: { $factor } times the plan’s value, ±{ $after }. Before the readings: ±{ $before }.
day-fit-factor-untold = { $what }: the readings do not improve on ±{ $before }.
day-fit-misfit = The { NUMBER($readings) ->
        [one] reading does
       *[other] { NUMBER($readings) } readings do
    } not fit with these three alone: something else in the plan is off.

## How much is enough, and the longest cool night

day-unknown-bank = capacity of one battery
day-unknown-panels = panel power
day-unknown-charger = charger current
day-unknown-set-point = coolest set point
day-unknown-high = hottest day
day-enough-bank = Batteries of { $value } each, as many as now, last { $until } with the set point held.
day-enough-panels = { $value } in the first panel group lasts { $until } with the set point held.
day-enough-charger = A first charger of { $value } lasts { $until } with the set point held.
day-enough-set-point = { $value } is the coolest set point that is held { $until }.
day-enough-high = A high of { $value } is the hottest day that works { $until }, the set point held and the night as much hotter.
day-enough-any =
    { $kind ->
        [panels] No panels are needed to hold the set point { $until }.
        [charger] No charger is needed to hold the set point { $until }.
        [set-point] Even a set point of { $value } is held { $until }.
        [high] Even at a high of { $value } the set point is held { $until }.
       *[other] Even { $value } is enough to hold the set point { $until }.
    }
day-enough-unit-too-small = No value of this holds the set point { $until }: the bank lasts, but the cooling unit is too weak.
day-enough-nothing = No value of this makes it last { $until }.
day-mode-from = from { $clock } { -day-mode }
day-modes-next = { $first }, then { $next }
day-held-all = all { $duration } looked at
day-held-until = { $duration }, until { $clock }
day-longest-never = On this bank no mode cools the cabin to { $limit } within the time allowed for cooling down.
day-longest-is = At or below { $limit }: { $held }, with { $charge } left in the bank. Mode plan: { $modes }.
day-alone-open = Nothing on, doors and roof light open
day-alone-mode = { -day-mode-first } alone
day-alone-never = { $name }: never that cool.
day-alone-held = { $name }: { $held }.
day-longest-stands = Best plan found with up to { NUMBER($switches) } { NUMBER($switches) ->
        [one] change
       *[other] changes
    } of mode, in steps of { $minutes }. The cabin may take { $duration } to cool down first. By the plan’s own numbers, without their uncertainty.
day-longest-cut-short = The search dropped some plans to save memory: there may be a longer one.

## Weather files

day-file-latitude = latitude
day-file-longitude = longitude
day-file-altitude = altitude
day-file-utc-offset = clock against UTC (h)
day-file-date = date
day-file-hour = hour
day-file-temperature = temperature
day-file-dew-point = dew point
day-file-wind = wind
day-file-global = global horizontal irradiance
day-file-beam = direct normal irradiance
day-file-diffuse = diffuse horizontal irradiance
day-file-fault-at-column = Line { $line }, column { $column }: { $fault }. Nothing was changed.
day-file-fault-at-line = Line { $line }: { $fault }. Nothing was changed.
day-file-fault = Not read: { $fault }. Nothing was changed.
day-file-too-short = The file has { NUMBER($hours) } { NUMBER($hours) ->
        [one] hour
       *[other] hours
    }; a whole day of 24 is needed. Nothing was changed.
day-file-too-large = the file is larger than the limit of 4 MB
day-file-too-many-columns = the line has more columns than any weather table
day-file-too-many-hours = the file has more hours than a year
day-file-unknown-format = the file is neither EPW, TMY2 nor TMY3, nor a table with the headings hour, temperature and irradiance
day-file-no-hours = the file has no hours
day-file-no-such-date = there is no such date
day-file-not-next-hour = this is not the hour after the one before
day-file-missing = { $field } is missing
day-file-not-a-number = { $field } is not a number
day-file-long-gap = more than three hours of { $field } are missing from here on
day-file-out-of-range = { $field } is out of range: from { $least } to { $most } is accepted
day-file-table = Table
day-file-read = { $format }, { NUMBER($hours) } { NUMBER($hours) ->
        [one] hour
       *[other] hours
    }.
day-file-taken = Taken: { NUMBER($days) } { NUMBER($days) ->
        [one] day
       *[other] days
    }, { $low } to { $high }.
day-file-taken-from = Taken: { NUMBER($days) } { NUMBER($days) ->
        [one] day
       *[other] days
    } from { $day } { $month } on, { $low } to { $high }.
day-file-other-date = The date above is not in the file, so these are its hottest days.
day-file-place = Place and clock ({ $utc }) come from the file too.
day-file-filled = { NUMBER($count) } missing { NUMBER($count) ->
        [one] value was
       *[other] values were
    } filled by linear interpolation.
day-file-undo = Undo restores what was there before.

## Names of choices

day-assumed-choice = { $name } ({ $assumed })
day-charger-hint-shore = With no hours entered it is on all day.
day-charger-hint-engine = With no hours entered it never runs. Never run an engine while people sleep.
day-charger-hint-generator = With no hours entered it never runs. Place a generator outside, 20 ft (6 m) away and downwind (CPSC), and never run it while people sleep beside it.
day-climate-salt-lake-plain = Salt lake plain, 38° N
day-climate-low-desert = Low stony desert, 33° N
day-climate-high-plateau = High dry plateau, 36° N
day-climate-gulf-coast = Humid gulf coast, 29° N
day-climate-humid-forest = Humid forest, 34° N
day-climate-inland-valley = Dry inland valley, 37° N
day-climate-southern-river-plain = Southern river plain, 38° N
day-climate-mild-sea-shore = Mild sea shore, 36° N
day-climate-northern-heat-wave = Northern heat wave, 50° N
day-climate-dusty-steppe = Dusty steppe, 27° N
day-climate-red-inland-plain = Red inland plain, 24° S
day-climate-tropical-coast = Tropical coast, 17° S
day-body-van = panel van
day-body-trailer = trailer
day-body-tent-cabin = tent or canvas cabin
day-body-boat = boat cabin
day-body-small-cabin = small hut
day-insulation-bare = none: bare metal or cloth
day-insulation-partial = partial, ribs bare
day-insulation-normal = all round, about 30 mm
day-insulation-heavy = thick, no bare ribs
day-colour-light = light
day-colour-medium = medium
day-colour-dark = dark
day-glazing-single = single
day-glazing-double = double
day-covers-none = none
day-covers-curtains = curtains
day-covers-inside-mats = reflective mats inside
day-covers-outside-covers = covers outside
day-curves-window-unit = window unit, single speed
day-curves-single-speed = split or central unit, single speed
day-curves-two-stage = two-stage unit
day-control-thermostat = on and off (thermostat)
day-control-modulating = variable speed, with a minimum
day-mounting-flat-on-roof = flat on the roof
day-mounting-stood-off = raised, ventilated behind
day-controller-tracking = MPPT
day-controller-direct = PWM
day-charger-shore = shore power
day-charger-engine = the engine
day-charger-generator = a generator
day-bank-place-cabin = in the cabin
day-bank-place-locker = in a locker, under seat or floor
day-bank-place-outside = outside
