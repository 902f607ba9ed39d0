# Narrow no-break spaces (U+202F) stand between numbers and signs.

## Signs of units that are words

sign-per-hour = pro h
sign-percent-per-kelvin = % pro K
sign-percent-per-kilowatt = % pro kW

## Numbers, times and lists

under-a-minute = unter 1 min
# $count is $days as a number.
duration-days =
    { NUMBER($count) ->
        [one] { $days } Tag
       *[other] { $days } Tage
    }
clock-am = { $time } AM
clock-pm = { $time } PM
list-and = { $first } und { $last }
list-or = { $first } oder { $last }

## What a field takes

accepted-count = eine ganze Zahl von { $min } bis { $max }
accepted-clock = eine Uhrzeit von { $first } bis { $last }
accepted-range = von { $min } bis { $max }
accepted-number = eine Zahl { $range }
