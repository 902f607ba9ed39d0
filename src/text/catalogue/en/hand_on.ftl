## Handing on

hand-on-copy = Copy the sentence
hand-on-copied = Copied.
hand-on-not-copied = The browser does not let the page copy: select the text and copy it.
hand-on-qr-title = The link as a QR code
hand-on-qr-name = QR code of the link to this plan
hand-on-qr-save = Save the code
hand-on-qr-too-long = This plan’s link is too long for a QR code. Copy the link, or send the file.
# The length of a link, for those who paste it somewhere narrow.
hand-on-link-length =
    { NUMBER($characters) ->
        [one] With a link of { $characters } character.
       *[other] With a link of { $characters } characters.
    }
hand-on-report = A report to print, one or two pages
hand-on-report-print = Print it
hand-on-report-save = Save as a page
hand-on-figures = Figures
hand-on-figures-hint = On white, with title and source inside. SVG stays sharp at any size; PNG opens anywhere.
hand-on-tables = Tables
hand-on-tables-hint = CSV for a spreadsheet (decimal point, columns separated by commas), Markdown for a post.
hand-on-whole = The whole answer
hand-on-whole-hint = All results as JSON, for a program. Format: see the README of the module.
hand-on-save-answer = Save the answer as JSON
# What a file of this kind is called on its button, for those who do not see what stands
# beside it.
hand-on-save-as = Save “{ $title }” as { $kind }
hand-on-saved = Download started: { $name }
hand-on-nothing-yet = Nothing to share yet: correct the marked fields first.
hand-on-not-saved = The browser does not let the page save files here.
hand-on-png-failed = The browser could not make the PNG. The SVG shows the same figure.

## The sentence to copy

# $run and $detail are whole sentences.
hand-on-sentence = { $run } Bank: { $bank } ({ $chemistry }), depth of discharge { $depth }. { $detail }
hand-on-sentence-no-depth = { $run } Bank: { $bank } ({ $chemistry }). { $detail }

## The report

hand-on-report-title = A night on a battery bank
hand-on-report-plan = The plan
hand-on-report-findings = Notes on the inputs
hand-on-report-link = Open this plan
hand-on-made-with = { $page }, method { $method }. Estimates are not guarantees.
hand-on-from-to = { $low } to { $high }
# When a run is over, by the day of its start.
hand-on-until =
    { NUMBER($days) ->
        [0] { $clock }, the same day
        [1] { $clock }, the next day
       *[other] { $clock }, { $days } days later
    }
# How a unit is fed.
hand-on-feed = Power supply
hand-on-fed = { hand-on-feed }: { $how }
hand-on-feed-direct = directly from the bank
hand-on-feed-dc = through a DC-DC converter
hand-on-feed-inverter = through an inverter

## Parts of the plan

hand-on-part-night = Night
hand-on-part-cabin = Cabin
hand-on-part-panels = Panel group { $number }
hand-on-part-charger = Charger { $number }
hand-on-part-supply = Charging sources
hand-on-part-claim = Claim { $number }
hand-on-part-air = Cooling from air readings
hand-on-part-price = Price

## Titles of tables

hand-on-table-runs = Hours of each mode
hand-on-table-sizes = Sizing results
hand-on-table-plan = The plan with its assumed values
hand-on-table-moments = The hot day, step by step
hand-on-table-days = The hot day, daily totals
hand-on-table-claims = Claims and measurements
hand-on-table-air = Cooling from air readings
hand-on-table-price = Cost of a watt-hour

## Columns that several tables have

hand-on-head-mode = Mode
hand-on-head-unit-name = Cooling unit
hand-on-head-bank = Bank
hand-on-head-what = Quantity
hand-on-head-value = Value
hand-on-head-unit = Unit
hand-on-head-uncertainty = Expanded uncertainty (k ≈ 2)

## Columns of the table of runs

hand-on-head-hours = Hours
hand-on-head-likely = Hours, likely (h)
hand-on-head-low = Hours, low (h)
hand-on-head-high = Hours, high (h)
hand-on-head-range = Range
hand-on-head-until = Until about
hand-on-head-end = How it ends
hand-on-head-mean-power = Mean power at the bank (W)
hand-on-head-mean-current = Mean current (A)
hand-on-head-drawn-ah = Drawn from the bank (Ah)
hand-on-head-drawn-wh = Drawn from the bank (Wh)
hand-on-head-unit-wh = Delivered to the unit (Wh)
hand-on-head-lost-wh = Lost in the bank (Wh)

## Columns of the hot day

hand-on-head-after-start = Time after the start (h)
hand-on-head-clock = Clock
hand-on-head-charge = State of charge (%)
hand-on-head-volts = Terminal voltage (V)
hand-on-head-amps-out = Current out of the bank (A)
hand-on-head-cabin = Cabin ({ $unit })
hand-on-head-outdoors = Outdoors ({ $unit })
hand-on-head-humidity = Relative humidity in the cabin (%)
hand-on-head-panels = From the panels (W)
hand-on-head-chargers = From chargers (W)
hand-on-head-loads = Loads (W)
hand-on-head-unit-power = Cooling unit (W)
hand-on-head-cooling = Cooling capacity used (W)
hand-on-head-day = Day
hand-on-head-day-panels = From the panels (Wh)
hand-on-head-day-chargers = From chargers (Wh)
hand-on-head-day-loads = Loads (Wh)
hand-on-head-day-unit = Cooling unit (Wh)
hand-on-head-least = Lowest state of charge (%)
hand-on-head-at-end = State of charge at the end (%)
hand-on-head-warmest = Warmest cabin while the unit should run ({ $unit })
hand-on-head-off = Bank switched off (h)
hand-on-head-unit-off = Only the unit stopped (h)
hand-on-head-above = Above the set point (h)

## Columns and words of the claims

hand-on-head-claim = Claim
hand-on-head-about = About
hand-on-head-claimed = Claimed
hand-on-head-claimed-most = Claimed at most
hand-on-head-measured = Measured
hand-on-head-share = Measured of claimed (%)
hand-on-head-verdict = Verdict
hand-on-head-why-none = Why there is no uncertainty
hand-on-claimed-charge = capacity ({ $unit })
hand-on-claimed-energy = energy ({ $unit })
hand-on-claimed-draw = power draw ({ $unit })
hand-on-claimed-airflow = airflow ({ $unit })
hand-on-claimed-temperature = temperature ({ $unit })
hand-on-claimed-cooling = cooling capacity ({ $unit })
hand-on-claimed-eer = energy efficiency ratio (BTU/Wh)

## Columns and rows of what was asked

hand-on-head-wanted = Hours wanted (h)
hand-on-size-hours = hours on this bank
hand-on-size-draw = highest power draw
hand-on-size-depth = depth of discharge
hand-on-size-new = minimum when new
hand-on-size-reserve = with ageing and margin
hand-on-size-batteries = batteries
hand-on-size-runs-new = running time when new
hand-on-size-runs-aged = running time when aged

## Columns of the plan

hand-on-head-part = Part
hand-on-head-origin = Source
hand-on-head-spread = Uncertainty (%)
hand-on-head-stated = Entered or assumed
hand-on-head-key = Key
hand-on-stated = entered
hand-on-assumed = assumed
