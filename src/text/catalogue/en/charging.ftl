## Recharging the bank: headings

charging-title = Can it be recharged?
charging-waiting = Calculating…
charging-no-answer = No answer yet: correct the marked fields.
charging-sources = Charging sources
charging-fields = Charge levels and prices
charging-sun = Solar alone
charging-curves = Charging curves
charging-sky = Sky
charging-sky-yield = Solar yield
charging-sky-used = Used
charging-sky-lowest = Lowest
charging-sky-end = A day later
charging-sky-clear = Clear
charging-sky-overcast = Overcast
charging-sky-cloud = { $share } cloud
charging-method = Constant current, then constant voltage, exact on each straight piece of the open-circuit curve; lead-acid by the kinetic two-tank model (Manwell & McGowan 1993).

## Chargers

charging-shore = Shore charger
charging-engine = Engine charger
charging-generator = Generator
charging-numbered = { $charger } { $number }
-charging-mode =
    { $mode ->
        [the-unit] the cooling unit
       *[named] { $mode }
    }

## The answer

charging-nothing = Nothing here recharges the bank: add panels or a charger below.
charging-leaves = Tonight leaves { $from }.
charging-starts = The bank starts at { $from }.
charging-by-charger = { $charger }: from { $from } to { $goal } in { $time }.
charging-by-none = From { $from }, no charger here reaches { $goal }.
charging-full-already = At { $from } there is nothing to recharge.
charging-sun-empty = On solar alone the bank is empty at { $clock }.
charging-sun-keeps-up = Solar keeps up with everything that runs.
charging-sun-almost = Tomorrow’s sun almost recharges what tonight uses.
charging-sun-by = Tomorrow’s sun recharges what tonight uses by { $clock }.
charging-sun-nothing = Tomorrow’s sun recharges nothing of what tonight uses.
charging-sun-share = Tomorrow’s sun recharges { $share } of what tonight uses.
# Where charging begins: as typed, after the night with its range, or after a mode at full draw.
charging-from-stated = From { $likely }, as you entered.
charging-from-night = From what tonight leaves with no charger on: { $likely } ({ $low } to { $high }).
charging-from-draw = From what { -charging-mode } leaves at its full draw: { $likely }.
charging-missing = { $charge } to recharge, with { $power } of loads running all the time.
# Where the days lead.
charging-days-empty = Each day brings { $fed } and uses { $used }. Empty after { $time }.
charging-days-falling = Each day brings { $fed } and uses { $used }. Empty after about { $time } at this rate.
charging-days-full = Each day brings { $fed } and uses { $used }. Back at { $goal }, within 1 %, { $time } after the start of the first night, and every day after that.
charging-days-rising = Each day brings { $fed } and uses { $used }. At { $goal } after about { $time } at this rate.
charging-days-level = Each day brings { $fed } and uses { $used }. Every day ends as the one before, at { $last }.

## One charger

charging-never = never reaches it
charging-too-long = more than { $time }
charging-refused = too cold to charge
charging-ends-at = ends at { $percent }
charging-range = { $likely } ({ $low } to { $high })
charging-range-open = { $likely } (from { $low }; or never)
charging-one-phase = Constant current: { $time } at { $current }. Charging is done before the charge voltage of { $volts } is reached.
-charging-phases = Constant current: { $time } at { $current }. Constant voltage: { $held } at { $volts }
charging-two-phases = { -charging-phases }.
charging-called-full = { -charging-phases } until the bank takes { $end }, which this charger calls full (at { $percent } state of charge).
charging-cooling = With { -charging-mode } running throughout: { $time }.
charging-cooling-not = With { -charging-mode } running throughout it does not charge: the draw is more than it gives.
charging-cooling-long = With { -charging-mode } running throughout: more than { $time }.
charging-cooling-below = With { -charging-mode } running throughout it reaches only { $percent }.
charging-energy =
    Takes { $taken } from { $source ->
        [shore] shore power
        [engine] the engine
       *[generator] the generator
    } at { $efficiency } efficiency and gives { $given }: { $loads } to the loads, { $lost } lost in the bank.
charging-formula = By hand: { $charge } ÷ ({ $charger } − { $loads } for the loads) = { $time }; plus what the falling current adds once { $volts } is reached.
charging-fuel = Fuel: { $fuel }.
charging-cost = Cost: { $price } in your currency.
charging-spread = The uncertainty comes mostly from: { $inputs }.

## The sun

charging-runs-empty = runs empty
charging-recharged-by = recharged by { $clock }
charging-recharged-share = { $share } recharged
charging-sun-course = { $start } at { $start-clock }, down to { $lowest } at { $lowest-clock }. A day later { $end } ({ $low } to { $high }).
charging-sun-idle = With the cooling unit off from the morning, the sun reaches { $goal } in { $time }, day and night counted.
charging-sun-idle-never = With the cooling unit off from the morning, a week of such sun does not reach { $goal }.
charging-sun-unused = { $energy } of solar energy goes unused: the bank has no room for it.
charging-empty-at = empty at { $clock }

## What to know of it

charging-no-charger = There is no charger in the plan: after dark days nothing recharges the bank. Add one under what charges it.
charging-no-panels = There are no panels in the plan: the sun adds nothing.
charging-too-weak = { $charger }: the loads take { $loads } of its { $current }. It never fills the bank.
charging-weak-cooling = { $charger }: with the cooling unit running it reaches only { $percent }.
charging-ends-below = { $charger }: it stops charging at { $percent }. To go further it needs a higher charge voltage, if the battery’s maker allows.
charging-takes-long = { $charger }: it would take more than { $time }.
charging-fuel-short = { $charger }: it needs { $needed } of fuel and has { $available }.
charging-window =
    { NUMBER($days) ->
        [one] { $charger }: on for { $daily } a day by the clock, so it takes { NUMBER($days) } day.
       *[other] { $charger }: on for { $daily } a day by the clock, so it takes { NUMBER($days) } days.
    }
charging-too-cold = The bank is never warmer than { $bank } in the day: below { $limit } it must not be charged.
charging-cold-at-times = The bank gets as cold as { $bank }: below { $limit } it must not be charged. Only the hours when it is warmer count.
charging-too-hot = The bank gets as warm as { $bank }: above { $limit } it must not be charged.
charging-derated = { $charger }: in air of { $air } it gives { $percent } of its current (common practice, no source).
charging-source-limits = { $charger }: the { $power } available to it allow { $current } at most.
charging-above-limit = { $charger }: { $current } is more than the { $limit } that the batteries’ label allows.
charging-nothing-to-fill = { $from } is not below { $goal }: there is nothing to recharge.
charging-no-day = The hot day cannot be run as the plan stands: no sun is counted, and the night is at the mode’s full draw.

## The curves

charging-chart-charge = State of charge while charging
charging-chart-current = Current into the bank
charging-axis-charge = State of charge, %
charging-axis-hours = Hours on the charger, cooling unit off
charging-until-filled = Time to { $goal }: { $times }.
charging-item = { $charger } { $time }
charging-none-fills = No charger here reaches { $goal }.
charging-current-stays = The current stays constant to the end.
charging-current-falls = The current stays constant until the charge voltage is reached, then falls for up to { $time }.
