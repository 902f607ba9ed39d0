## Names

mode-numbered = Modo { NUMBER($number) }
mode-only = Equipo de frío
unit-numbered = Equipo { NUMBER($number) }
mode-of-unit = { $mode }, { $unit }
run-on-bank = { $mode }, { $bank }
bank-made-of = { $volts } { $capacity }
unit-supply-title = { $unit }: alimentación y cable
mode-duty-title = { $mode }: ciclo de trabajo y espera
-mode =
    { $mode ->
        [the-unit] el equipo de frío
       *[named] { $mode }
    }
-mode-first =
    { $mode ->
        [the-unit] El equipo de frío
       *[named] { $mode }
    }

## What one run comes to

run-no-start = { -mode-first } no arranca: se pararía al instante, { $stop }.
run-lasts = { -mode-first } funciona { $hours }.
run-lasts-until = { -mode-first } funciona { $hours }, hasta cerca de las { $clock }.
run-range = Margen probable: de { $low } a { $high }. Se para { $stop }.
run-short-no-start = no arranca
run-short-until = { $hours }, hasta las { $clock }

# After "Se para", and alone in a table.

stop-empty = con el banco vacío
stop-reserve = en la reserva del { $percent }
stop-battery-cut-off = en la tensión de corte de la batería, { $volts }
stop-current-limit = en el límite de corriente del banco, { $amps }
stop-unit-cut-off = en el corte por baja tensión del equipo, { $volts } en sus bornes
stop-inverter-cut-off = en el corte por baja tensión del inversor, { $volts } en su entrada
stop-inverter-limit = en el límite del inversor, { $watts }
stop-converter-limit = en el límite del convertidor, { $amps }
stop-no-current = donde ninguna corriente puede llevar la potencia a través de la resistencia del cable y del banco

## How big a bank

sizing-hours = { -mode-first } funciona { $hours } con este banco.
sizing-bank = Para { $hours }, { -mode } necesita { $capacity } ({ $energy }), con envejecimiento y margen: { $batteries }.
sizing-draw = Para { $hours } con este banco, { -mode } puede consumir como máximo { $draw }.
sizing-depth = { -mode-first } lleva este banco en { $hours } a una profundidad de descarga del { $depth }.
sizing-none = Con ningún valor admitido funciona { -mode } { $hours }.
sizing-of-bank = { $bank }: { $answer }
batteries-like-these =
    { NUMBER($count) ->
        [one] { NUMBER($count) } batería como esta
       *[other] { NUMBER($count) } baterías como estas
    }
batteries-in-parallel = { $batteries } ({ NUMBER($parallel) } en paralelo)
batteries-in-series = { $batteries } ({ NUMBER($series) } en serie)
batteries-in-strings = { $batteries } ({ NUMBER($series) } en serie, { NUMBER($parallel) } ramas)
new-and-aged = { $new } nuevas, { $aged } envejecidas

## What a bank is

bank-facts =
    { NUMBER($count) ->
        [one] { NUMBER($count) } batería, { $volts }, energía nominal { $energy }. Utilizable: { $usable-ah }, { $usable-wh }.
       *[other] { NUMBER($count) } baterías, { $volts }, energía nominal { $energy }. Utilizable: { $usable-ah }, { $usable-wh }.
    }
bank-measured = Medido: { $ah } de la capacidad nominal, { $wh } de la energía nominal.
bank-measured-charge = Medido: { $ah } de la capacidad nominal.
bank-measured-energy = Medido: { $wh } de la energía nominal.
bank-holds = Capacidad { $capacity }, de los que { $usable } son utilizables, tensión nominal { $volts }.

## What widens the range

spread-share =
    { $share ->
        [most] { $field }: de { $lost } menos a { $gained } más (la mayor parte del margen)
        [much] { $field }: de { $lost } menos a { $gained } más (buena parte del margen)
        [some] { $field }: de { $lost } menos a { $gained } más (una parte del margen)
       *[little] { $field }: de { $lost } menos a { $gained } más (una pequeña parte del margen)
    }

## Under a chart

chart-twice-the-bank = Con el doble de banco, { -mode } funciona { $double } en lugar de { $now }: algo más del doble, porque la tensión cae menos.
chart-this-bank = Con este banco, { -mode } funciona { $hours }.
chart-by-depth = { -mode-first } funciona { $half } con medio banco, { $whole } con el banco entero.
chart-longest-shortest = { $longest } es el que más dura, { $shortest } el que menos.
chart-volts = Con { -mode }, la tensión en bornes del banco baja de { $first } a { $last } al descargarse.

## The working

formula-charge = horas = ∫ capacidad ÷ corriente, a lo largo del estado de carga del inicio al final; la corriente I resuelve E(carga) · I − R · I² = potencia, con consumos y cable incluidos
formula-peukert = horas = ∫ capacidad · (corriente nominal ÷ corriente)^(k − 1) ÷ corriente, a lo largo del estado de carga del inicio al final; la corriente I resuelve E(carga) · I − R · I² = potencia
formula-charge-source = Balance de carga y ley de Ohm, integrados en la carga (Gauss-Legendre de tres puntos entre los nodos de la curva de tensión). Dividir la energía entre la potencia sin más pasaría por alto la caída de tensión.
formula-peukert-source = Ley de Peukert en la forma con horas nominales t = H · (C ÷ (I · H))^k, aplicada a lo largo de la descarga. Por debajo de la corriente nominal no da más que los Ah nominales.
term-held-ah = capacidad del banco
term-start-percent = estado de carga al inicio
term-end-percent = estado de carga al final
term-used-ah = carga extraída
term-open-circuit-start-v = tensión en circuito abierto al inicio
term-open-circuit-end-v = tensión en circuito abierto al final
term-bank-resistance = resistencia del banco, R
term-first-amps = corriente en marcha, al inicio
term-last-amps = corriente en marcha, al final
term-mean-amps = corriente media
term-mean-volts = tensión media en bornes
term-peukert-exponent = exponente de Peukert, k
term-rated-amps = corriente nominal
term-hours = horas
term-quick-hours = para comparar: energía en circuito abierto ÷ potencia inicial
