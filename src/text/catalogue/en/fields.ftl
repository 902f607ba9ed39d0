## Lists and whole parts

lists-banks = Banks
lists-open-circuit = Open-circuit voltage table
lists-unit-map = Measured performance map
    .hint = Two to twenty settled readings of this unit, better at different outdoor temperatures. They set how draw and capacity change with the air; published curves give the rest.
lists-units = Cooling units
lists-modes = Modes
lists-loads = Other loads
lists-imported = Hours from a weather file
lists-arrays = Panels
lists-chargers = Chargers
lists-mode-plan = Mode plan
lists-check-ins = Readings in the night
lists-claims = Claims

## Bank

bank-battery-nominal-v = Nominal voltage of one battery
bank-battery-rated-ah = Capacity of one battery
    .hint = As printed on it. “2x100” and “1280 Wh” are understood.
bank-rated-hours-h = Hour rate of the capacity
    .hint = 20 h is C/20.
bank-series-count = Batteries in series
bank-parallel-count = Batteries or strings in parallel
bank-health-percent = State of health
bank-start-charge-percent = State of charge at the start
bank-depth-percent = Maximum depth of discharge
    .hint = Share of the capacity you are willing to use.
bank-cutoff-v = Battery cut-off voltage
    .hint = At the bank’s terminals. Lithium: BMS low-voltage cut-off; lead-acid: end-of-discharge voltage.
bank-battery-current-limit-a = Max continuous current of one battery
    .hint = Left empty: no limit is checked.
bank-battery-resistance-mohm = Internal resistance of one battery
bank-polarisation-percent = Polarisation, share of the usual
    .hint = Voltage drop beyond the internal resistance, larger at high current and in the cold. A resistance from a label or a meter does not include it; from a load test of minutes it does: then 0 %.
bank-peukert-exponent = Peukert exponent
bank-parasitic-w = BMS and monitor standby draw
bank-measured-ah = Measured capacity, whole bank
    .hint = From full to the battery’s own cut-off. It replaces rated capacity and state of health.
bank-measured-wh = Measured energy, whole bank
    .hint = At the terminals, in the same run.
bank-measured-load-w = Load during that measurement

## Cooling unit's supply and cable

unit-supply-v = Rated supply voltage
unit-cutoff-v = Unit low-voltage cut-off
    .hint = At the unit’s terminals, after the cable. Left empty: none.
unit-cable-length-m = Cable length, one way
unit-cable-area-mm2 = Conductor size
    .hint = “16”, “16 mm2” or “6 AWG”. Left empty: not checked, and the hours assume 16 mm².
unit-cable-temperature-c = Conductor temperature
unit-connections-mohm = Resistance of fuses, switches and lugs
unit-output-v = Converter output voltage
unit-efficiency-percent = Converter efficiency
unit-idle-w = Converter no-load draw
unit-limit-a = Converter current limit
unit-no-load-w = Inverter no-load draw
unit-proportional-loss-percent = Inverter proportional loss
unit-square-loss-percent-per-kw = Inverter square-law loss
unit-limit-w = Inverter continuous power
unit-inverter-cutoff-v = Inverter low-voltage cut-off
    .hint = At its input, after the cable. Left empty: none.

## Modes, night and loads

mode-power-w = Draw while on
    .hint = Watts into the unit while it runs.
mode-current-a = Current while on
    .hint = Amps into the unit while it runs.
mode-measured-at-v = Voltage it was measured at
mode-duty-percent = Compressor duty cycle
mode-standby-w = Standby draw, compressor off
mode-cooling-w = Cooling capacity while on
night-start-clock-min = Start time
night-wanted-h = Hours wanted
night-ageing-percent = Design for this remaining capacity
    .hint = The bank is sized so that it is still enough when ageing has left only this.
night-margin-percent = Extra margin
load-power-w = Draw

## The hot day

day-days-count = Days
day-year = Year
day-month = Month
day-day-of-month = Day of the month
day-utc-offset-min = UTC offset of the clock
day-latitude-deg = Latitude, north positive
day-longitude-deg = Longitude, east positive
day-altitude-m = Altitude
day-high-c = High of the day
day-low-c = Low of the night
day-dew-point-c = Outdoor dew point
day-humidity-percent = Relative humidity at the high
day-cloud-percent = Cloud cover
day-linke-turbidity = Haze (Linke turbidity)
day-wind-m-s = Wind speed
day-ground-albedo-percent = Ground reflectance (albedo)
day-samples-count = Simulated nights
day-seed-number = Random seed

## The cabin

cabin-inside-length-m = Inside length
cabin-shade-percent = Shade
cabin-people-count = People
cabin-animals-count = Animals
cabin-animal-kg = Weight of each animal
cabin-away-from-clock-min = Everyone is out from
cabin-away-until-clock-min = Back at
cabin-air-changes-per-h = Air changes
cabin-aired-changes-per-h = Air changes with everything open
cabin-set-point-c = Set point
cabin-dead-band-k = Thermostat swing, from switch-on to switch-off
cabin-start-c = Cabin temperature at the start
cabin-gains-w = Other heat sources inside
cabin-floor-m2 = Floor area
cabin-volume-m3 = Air volume
cabin-roof-m2 = Roof area
cabin-walls-m2 = Wall area
cabin-wall-glass-m2 = Window area
cabin-roof-glass-m2 = Roof light area
cabin-lit-walls-percent = Share of walls the sun can reach
cabin-shell-w-m2-k = U-value of walls and roof
cabin-glass-w-m2-k = U-value of glass
cabin-glass-gain-percent = Solar heat gain coefficient (SHGC)
cabin-absorptance-percent = Solar absorptance outside
cabin-air-capacity-kj-k = Heat capacity of air and contents
cabin-shell-capacity-kj-k = Heat capacity of the shell
cabin-moisture-buffer = Moisture held by lining and bedding

## What the cooling unit gives

cooling-cooling-w = Full-load capacity at rating conditions
cooling-cop = COP
cooling-rated-outdoor-c = Outdoor temperature at rating
cooling-rated-wet-bulb-c = Entering wet bulb at rating
cooling-floor-percent = Minimum capacity
cooling-airflow-m3-h = Airflow through the coil
cooling-sensible-percent = Sensible share
cooling-intake-rise-k = Condenser inlet air above ambient
cooling-start-loss-min = Cooling lost at each start
    .hint = Minutes at full capacity: the compressor draws before the coil is cold. None for variable speed.

## A reading of the performance map

map-outdoor-c = Condenser inlet air
map-entering-wet-bulb-c = Entering wet bulb
map-draw-w = Draw
map-cooling-w = Total capacity

## Charge controller, panels and chargers

supply-controller-limit-a = Controller current limit
supply-controller-limit-v = Controller max input voltage
supply-controller-efficiency-percent = Controller efficiency
supply-panel-power-percent-per-k = Temperature coefficient of Pmax
supply-panel-volts-percent-per-k = Temperature coefficient of Voc
supply-array-loss-percent = Loss to dust, cable and age
supply-bank-c = Bank temperature
supply-refill-from-percent = Recharge from
supply-refill-to-percent = Recharge to
supply-fuel-price-per-l = Fuel price per litre
supply-shore-price-per-kwh = Shore power price per kWh
array-rated-w = Rated power, all these panels
array-tilt-deg = Tilt
array-azimuth-deg = Direction, clockwise from north
array-shading-percent = Loss to shade
array-panels-series-count = Panels in series
array-panels-parallel-count = Panel strings in parallel
array-panel-best-v = Vmp of one panel
array-panel-open-v = Voc of one panel
array-panel-short-a = Isc of one panel
charger-most-a = Max charger current
charger-efficiency-percent = Charger efficiency
charger-hold-v = Charge voltage (absorption, CV)
charger-from-clock-min = On from
charger-until-clock-min = On until
charger-source-w = Power available to the charger
charger-fuel-l = Fuel available
charger-fuel-l-per-kwh = Fuel per kWh
mode-row-from-clock-min = From
check-in-clock-min = Time
check-in-day-count = Nights before that one
check-in-charge-percent = State of charge on the monitor
check-in-cabin-c = Cabin temperature

## Claims

claim-claimed = Claimed
claim-claimed-most = Claimed, up to
claim-measured = Measured
claim-tolerance-percent = Tolerance stated by the claim
claim-of-reading-percent = Meter error limit, of reading
claim-of-full-scale-percent = Meter error limit, of full scale
claim-full-scale-number = Full scale of the meter
claim-counts-number = Meter error limit, counts of the last digit
claim-one-count-number = Value of one count
claim-measured-min = Length of the measurement
claim-rate-a = Mean current of the run
claim-test-c = Temperature in the test
claim-rated-c = Temperature of the claim
claim-grille-m2 = Free area of the grille

## Air side

air-altitude-m = Altitude
air-inlet-c = Air temperature at the inlet
air-inlet-humidity-percent = Relative humidity at the inlet
air-outlet-c = Air temperature at the outlet
air-outlet-humidity-percent = Relative humidity at the outlet
air-airflow-m3-h = Airflow
air-free-area-m2 = Free area of the grille
air-power-w = Draw at the same time

## Price

price-price-number = Price paid for the bank
price-cycles-count = Claimed cycle life
price-cycle-depth-percent = Depth of discharge in each cycle
price-left-percent = Capacity left after those cycles

## Wiring

wiring-distribution-m = Cable, one way
    .hint = Left empty: the cables begin at the bank. Question 1 counts this copper too.
wiring-one-way-m = Cable, one way
wiring-conductor-mm2 = Conductor size
    .hint = “16”, “16 mm2” or “6 AWG”. Copper.
wiring-start-a = Unit surge current at start
wiring-start-ms = Duration of that surge
wiring-inverter-peak-w = Inverter surge power
wiring-battery-peak-a = Surge current of one battery
    .hint = Left empty: its continuous limit is compared with the surge.
wiring-battery-peak-ms = Duration of that battery surge
wiring-battery-charge-a = Max charge current of one battery
wiring-charge-least-c = Low-temperature charging cut-off
wiring-battery-fault-a = Short-circuit current of one battery
    .hint = From its data sheet. Left empty: worked out from the voltage and the lowest likely resistance.
wiring-link-mohm = Resistance of one link between batteries
    .hint = With its lugs; with busbars, one lead.
wiring-most-series-count = Batteries in series the maker allows
wiring-coldest-c = Coldest morning of the year
installation-insulation-c = Insulation temperature rating
installation-terminal-c = Lowest terminal temperature rating
installation-air-c = Hottest air around it
installation-bundled-count = Conductors in the bundle
    .hint = Those that carry current, including this circuit’s own two.
installation-allowed-drop-percent = Allowed voltage drop
installation-fuse-a = Fuse that is fitted
    .hint = As printed on it. Left empty: one is recommended.
installation-fuse-along-m = Distance of the fuse from the source

## Chemistries

chemistry-lfp = LFP (lithium iron phosphate)
chemistry-nmc = NMC (lithium nickel manganese cobalt)
chemistry-sodium-ion = Sodium-ion
chemistry-agm = AGM lead-acid
chemistry-gel = Gel lead-acid
chemistry-flooded = Flooded lead-acid

## Where a number comes from

origin-label = from label
origin-measured = measured
origin-guess = estimate
origin-question = { $field }: where the number comes from
