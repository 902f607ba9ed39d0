# The words of Till Morning in English, the first catalogue: what stands here is what
# there is to say. Variables hold numbers with their units, written already; one that
# decides a plural is a number.

## Signs of units that are words

sign-per-hour = per h
sign-percent-per-kelvin = % per K
sign-percent-per-kilowatt = % per kW

## Numbers, times and lists

under-a-minute = under 1 min
# $count is $days as a number.
duration-days =
    { NUMBER($count) ->
        [one] { $days } day
       *[other] { $days } days
    }
clock-am = { $time } am
clock-pm = { $time } pm
list-and = { $first } and { $last }
list-or = { $first } or { $last }

## What a field takes

accepted-count = a whole number from { $min } to { $max }
accepted-clock = a clock time from { $first } to { $last }
accepted-range = from { $min } to { $max }
accepted-number = a number { $range }
