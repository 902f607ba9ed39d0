## Recharging the bank: headings

charging-title = ¿Se puede recargar?
charging-waiting = Calculando…
charging-no-answer = Aún no hay respuesta: corrija los campos marcados.
charging-sources = Fuentes de carga
charging-fields = Niveles de carga y precios
charging-sun = Solo sol
charging-curves = Curvas de carga
charging-sky = Cielo
charging-sky-yield = Producción solar
charging-sky-used = Consumido
charging-sky-lowest = Mínimo
charging-sky-end = Un día después
charging-sky-clear = Despejado
charging-sky-overcast = Cubierto
charging-sky-cloud = { $share } de nubes
charging-method = Corriente constante y después tensión constante, exacto en cada tramo recto de la curva de tensión en reposo; plomo según el modelo cinético de dos depósitos (Manwell & McGowan 1993).

## Chargers

charging-shore = Cargador de red
charging-engine = Cargador del motor
charging-generator = Generador
charging-numbered = { $charger } { $number }
-charging-mode =
    { $mode ->
        [the-unit] el equipo de frío
       *[named] { $mode }
    }

## The answer

charging-nothing = Nada recarga aquí el banco: añada paneles o un cargador más abajo.
charging-leaves = Tras esta noche quedan { $from }.
charging-starts = El banco empieza al { $from }.
charging-by-charger = { $charger }: de { $from } a { $goal } en { $time }.
charging-by-none = Desde { $from }, ningún cargador llega aquí a { $goal }.
charging-full-already = Al { $from } no hay nada que recargar.
charging-sun-empty = Solo con sol, el banco se vacía a las { $clock }.
charging-sun-keeps-up = El sol cubre todo lo que funciona.
charging-sun-almost = El sol de mañana casi repone lo que se consume esta noche.
charging-sun-by = El sol de mañana repone lo que se consume esta noche para las { $clock }.
charging-sun-nothing = El sol de mañana no repone nada de lo que se consume esta noche.
charging-sun-share = El sol de mañana repone { $share } de lo que se consume esta noche.
# Where charging begins: as typed, after the night with its range, or after a mode at full draw.
charging-from-stated = Desde { $likely }, como usted indicó.
charging-from-night = Desde la carga que queda por la mañana, sin cargador: { $likely } ({ $low } a { $high }).
charging-from-draw = Desde lo que deja { -charging-mode } a pleno consumo: { $likely }.
charging-missing = { $charge } por recargar, con { $power } de consumos funcionando todo el tiempo.
# Where the days lead.
charging-days-empty = Cada día aporta { $fed } y consume { $used }. Vacío en { $time }.
charging-days-falling = Cada día aporta { $fed } y consume { $used }. A este ritmo, vacío en unos { $time }.
charging-days-full = Cada día aporta { $fed } y consume { $used }. De nuevo al { $goal }, con un margen del 1 %, { $time } después de empezar la primera noche, y todos los días siguientes.
charging-days-rising = Cada día aporta { $fed } y consume { $used }. A este ritmo, al { $goal } en unos { $time }.
charging-days-level = Cada día aporta { $fed } y consume { $used }. Cada día acaba como el anterior, al { $last }.

## One charger

charging-never = no llega nunca
charging-too-long = más de { $time }
charging-refused = demasiado frío para cargar
charging-ends-at = acaba al { $percent }
charging-range = { $likely } ({ $low } a { $high })
charging-range-open = { $likely } (desde { $low }; o nunca)
charging-one-phase = Corriente constante: { $time } a { $current }. La carga termina antes de alcanzar la tensión de carga de { $volts }.
-charging-phases = Corriente constante: { $time } a { $current }. Tensión constante: { $held } a { $volts }
charging-two-phases = { -charging-phases }.
charging-called-full = { -charging-phases } hasta que el banco toma { $end }, lo que este cargador da por lleno (al { $percent } de estado de carga).
charging-cooling = Con { -charging-mode } en marcha todo el tiempo: { $time }.
charging-cooling-not = Con { -charging-mode } en marcha todo el tiempo no carga: el consumo supera lo que da.
charging-cooling-long = Con { -charging-mode } en marcha todo el tiempo: más de { $time }.
charging-cooling-below = Con { -charging-mode } en marcha todo el tiempo llega solo al { $percent }.
charging-energy =
    Toma { $taken } { $source ->
        [shore] de la red
        [engine] del motor
       *[generator] del generador
    } con un rendimiento del { $efficiency } y da { $given }: { $loads } a los consumos, { $lost } perdidos en el banco.
charging-formula = A mano: { $charge } ÷ ({ $charger } − { $loads } para los consumos) = { $time }; más lo que añade la corriente decreciente al llegar a { $volts }.
charging-fuel = Combustible: { $fuel }.
charging-cost = Coste: { $price } en su moneda.
charging-spread = La incertidumbre viene sobre todo de: { $inputs }.

## The sun

charging-runs-empty = se vacía
charging-recharged-by = repuesto para las { $clock }
charging-recharged-share = { $share } repuesto
charging-sun-course = { $start } a las { $start-clock }, mínimo { $lowest } a las { $lowest-clock }. Un día después, { $end } ({ $low } a { $high }).
charging-sun-idle = Con el equipo de frío apagado desde la mañana, el sol llega al { $goal } en { $time }, contando día y noche.
charging-sun-idle-never = Con el equipo de frío apagado desde la mañana, una semana de este sol no llega al { $goal }.
charging-sun-unused = { $energy } de energía solar quedan sin usar: no caben en el banco.
charging-empty-at = vacío a las { $clock }

## What to know of it

charging-no-charger = No hay ningún cargador en el plan: tras días oscuros nada recarga el banco. Añada uno en «Qué carga el banco».
charging-no-panels = No hay paneles en el plan: el sol no aporta nada.
charging-too-weak = { $charger }: los consumos toman { $loads } de sus { $current }. Nunca llena el banco.
charging-weak-cooling = { $charger }: con el equipo de frío en marcha llega solo al { $percent }.
charging-ends-below = { $charger }: deja de cargar al { $percent }. Para más necesita una tensión de carga mayor, si el fabricante de la batería lo permite.
charging-takes-long = { $charger }: tardaría más de { $time }.
charging-fuel-short = { $charger }: necesita { $needed } de combustible y hay { $available }.
charging-window =
    { NUMBER($days) ->
        [one] { $charger }: encendido { $daily } al día según el reloj, así que tarda { NUMBER($days) } día.
       *[other] { $charger }: encendido { $daily } al día según el reloj, así que tarda { NUMBER($days) } días.
    }
charging-too-cold = El banco no pasa de { $bank } en todo el día: por debajo de { $limit } no debe cargarse.
charging-cold-at-times = El banco baja hasta { $bank }: por debajo de { $limit } no debe cargarse. Solo cuentan las horas en que está más caliente.
charging-too-hot = El banco llega a { $bank }: por encima de { $limit } no debe cargarse.
charging-derated = { $charger }: con aire a { $air } da el { $percent } de su corriente (práctica habitual, sin fuente).
charging-source-limits = { $charger }: los { $power } disponibles permiten { $current } como máximo.
charging-above-limit = { $charger }: { $current } superan los { $limit } que admite la etiqueta de las baterías.
charging-nothing-to-fill = { $from } no es menos que { $goal }: no hay nada que recargar.
charging-no-day = El día caluroso no se puede calcular con este plan: no se cuenta el sol, y la noche va al consumo pleno del modo.

## The curves

charging-chart-charge = Estado de carga durante la recarga
charging-chart-current = Corriente hacia el banco
charging-axis-charge = Estado de carga, %
charging-axis-hours = Horas con el cargador, equipo de frío apagado
charging-until-filled = Tiempo hasta { $goal }: { $times }.
charging-item = { $charger } { $time }
charging-none-fills = Ningún cargador llega aquí a { $goal }.
charging-current-stays = La corriente se mantiene hasta el final.
charging-current-falls = La corriente se mantiene hasta alcanzar la tensión de carga y después baja durante un máximo de { $time }.
