# Narrow no-break spaces (U+202F) stand between numbers and signs.

## Signs of units that are words

sign-per-hour = por h
sign-percent-per-kelvin = % por K
sign-percent-per-kilowatt = % por kW

## Numbers, times and lists

under-a-minute = menos de 1 min
# $count is $days as a number.
duration-days =
    { NUMBER($count) ->
        [one] { $days } día
       *[other] { $days } días
    }
clock-am = { $time } a. m.
clock-pm = { $time } p. m.
list-and = { $first } y { $last }
list-or = { $first } o { $last }

## What a field takes

accepted-count = un número entero de { $min } a { $max }
accepted-clock = una hora de { $first } a { $last }
accepted-range = de { $min } a { $max }
accepted-number = un número { $range }
