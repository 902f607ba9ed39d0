## The wiring diagram

picture-wiring = Wiring, single-line diagram
picture-wiring-hint = Tap a cable for its rules and sources. Tick: carries the current. Cross: fails. Diamond: not checked yet.
picture-wiring-caption = One line stands for plus and minus. Symbols by IEC 60617: battery, fuse, converter, PV panel, motor.
picture-bank = Bank
picture-begin-at-bank = The cables begin at its terminals.
picture-controller = Solar charge controller
picture-loads = Other loads
picture-not-worked-out = Its cable is not worked out here.
picture-beyond-tables = not checked: a number is outside the tables
# How a path is opened, as it is read out.
picture-opens = { $title }: { $verdict }. Show its rules.
picture-counts-as = { $size } (rated as { $other })
picture-size-in-both = { $size } ({ $other })
picture-each-way = { $length } each way
picture-each-way-assumed = { $length } each way (assumed)
picture-conductor = { $size }, { $length }
picture-current = { $current } at { $volts }
picture-current-drops = { $current } at { $volts }, drops { $drop } ({ $percent })
picture-current-would-drop = { $current } at { $volts }; { $size } would drop { $drop } ({ $percent })
picture-fuse = fuse { $rating }
picture-fuse-missing = fuse not given, { $rating } fits
picture-fuse-none-fits = fuse not given, none fits
picture-panel-fuses =
    { NUMBER($strings) ->
        [one] { $strings } string, with a fuse of { $rating }
       *[other] { $strings } strings, a fuse of { $rating } in each
    }
# $volts: the panels' open-circuit voltage on the coldest morning.
picture-cold-fits = Voc { $volts } at { $temperature }, controller limit { $limit }
picture-cold-fails = fails: Voc { $volts } at { $temperature }, controller limit { $limit }
picture-cold-open = Voc { $volts } at { $temperature }; the controller’s limit is not given
picture-batteries = { $count } × { $volts }, { $capacity }, { $chemistry }
picture-string-fuse = Each string needs a fuse: { $rating } (recommended)
picture-dc-converter = DC-DC converter to { $volts }
picture-inverter = Inverter
picture-inverter-rated = Inverter, { $power }
picture-sized-for-mode =
    sized for { $mode ->
        [the-unit] the cooling unit
       *[named] { $mode }, the mode with the highest draw
    }
picture-sized-for-rating = sized for its full rating
picture-charger = Charger { $number }, from { $source }
picture-at-most = { $current } at most
picture-panels = Panels, { $power }
picture-panel-groups =
    { NUMBER($groups) ->
        [one] Panels, { $groups } group, { $power }
       *[other] Panels, { $groups } groups, { $power }
    }

## The bank, the flows and the claims

picture-the-bank = The bank, battery by battery
picture-the-bank-caption = Each sign is one battery, the long plate its plus. Parallel strings share the current by where the main cables connect (Kirchhoff’s laws).
picture-many = × { $count }
picture-strings = × { $count } strings
picture-bank-counts = { NUMBER($series) } in series, { NUMBER($parallel) } in parallel
picture-main-cables = Main cables: { $place }
picture-main-cables-assumed = Main cables: { $place } (assumed)
picture-battery-gives = Continuous: { $current }
picture-batteries-alike = All equal: { $current } each
picture-most-loaded = Most-loaded battery: { $current }
picture-of-limit = { $what }, limit { $limit }: { $verdict }
picture-no-limit = { $what }; its limit is not given
picture-at-start = At start: { $current }
picture-one-open = With one string open: { $current }
picture-while-charging = While charging: { $current }
picture-energy = Where the energy goes
picture-energy-caption = Bands are as wide as their watt-hours; both sides add up to the same.
picture-heat = Where the cabin’s heat comes from
picture-heat-caption = Heat that raises the temperature (sensible heat), over the whole time; bands are as wide as their watt-hours.
picture-claims = Claimed and measured
picture-claims-caption = The dot is the measured value, its whisker the uncertainty (k = 2, about 95 %). The upright line is the claim.
picture-comes-in = comes in
picture-goes-out = goes out
picture-flow-what = What
picture-flow-direction = Direction
picture-flow-wh = Energy (Wh)
picture-flow = { $energy }, { $percent }
picture-flow-small = { $energy }, < 1 %
picture-in-all = { $energy } in all
picture-from-panels = Panels
picture-from-chargers = Chargers
picture-from-bank = Out of the bank
picture-to-unit = Cooling unit incl. inverter and cable
picture-to-loads = Other loads
picture-to-losses = Lost in the bank
picture-to-bank = Into the bank
picture-spilled = Solar available, not used
picture-unit-heat = Cooling unit
picture-heat-sun-glass = Sun through glass
picture-heat-out-glass = Out through glass
picture-heat-sun-shell = Sun on walls and roof
picture-heat-to-sky = Walls and roof to the sky
picture-heat-glass = Through glass
picture-heat-shell = Through walls and roof
picture-heat-out-shell = Out through walls and roof
picture-heat-air-in = Incoming air
picture-heat-air-out = Outgoing air
picture-heat-people = People and animals
picture-heat-things = Other heat sources inside
picture-heat-from-store = Released by air, contents and walls
picture-heat-to-store = Stored in air, contents and walls
picture-measured = measured { $value }
picture-claimed = claimed { $value }
picture-claimed-within = claimed { $value } ±{ $percent } %
