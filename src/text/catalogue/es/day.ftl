## Gráficos

day-temperatures = Cabina y exterior
day-charge = Estado de carga
day-power = Carga y consumo
day-axis-celsius = °C
day-axis-fahrenheit = °F
day-axis-charge = %
day-axis-power = W: carga arriba, consumo abajo
day-cabin = Cabina
day-outdoors = Exterior
day-set-point = Consigna
day-from-reading = Desde ahora
day-charge-short = Carga
day-sun-in = Paneles
day-charger-in = Cargadores
day-loads-out = Consumos
day-unit-out = Equipo
day-charts-hint = Toque un gráfico, o use las flechas, para leer los tres. Sombreado: entre la puesta y la salida del sol. La banda abarca 19 de cada 20 días simulados; la línea usa los valores del plan.
day-band-coming = Calculando la banda…
day-band-stale = La banda corresponde todavía a los valores anteriores.
day-band-none = Sin banda: el número de noches simuladas es 0.

## Títulos y textos breves de la página

day-no-answer = Todavía no hay respuesta para estos días: corrija los campos indicados abajo.
day-events = Sucesos por hora
day-by-day = Día a día
day-books = Mostrar el cálculo
day-energy-book = Balance de energía del banco
day-heat-book = Balance térmico de la cabina
day-method = Posición del sol: Meeus, Astronomical Algorithms (2nd ed.). Cielo despejado: Ineichen and Perez (Solar Energy 73, 2002) con la turbidez de Linke indicada. Temperaturas del día: fracciones horarias del ASHRAE Handbook of Fundamentals (2009 y posteriores). Calor: dos masas térmicas, aire y envolvente, con el sol exterior como temperatura sol-aire de ese manual. Capacidad y consumo del equipo: curvas de laboratorio publicadas de aires acondicionados domésticos. Entre conmutaciones la temperatura de la cabina es exacta; conmutaciones, banco agotado y cortes se localizan en el tiempo.
day-start = Estos días
day-from-file = La temperatura y el sol de cada hora vienen del archivo meteorológico; la máxima indicada aquí desplaza sus temperaturas.
day-rests-on = Datos de entrada
day-weather = Lugar, fecha y tiempo
day-weather-hint = Un clima completa los campos vacíos; sus valores son inventados para esta página. Es mejor un pronóstico de su lugar, y mejor aún un archivo meteorológico.
day-climate = Clima
day-my-place = Usar mi posición
day-today = Usar la fecha de hoy
day-weather-rest = Aire y suelo en detalle
day-place-asked = Consultando la posición del dispositivo…
day-place-taken = Latitud, longitud y reloj se toman del dispositivo. No se envía nada.
day-place-refused = El navegador no permite conocer la posición. Escriba latitud y longitud, o elija un clima.
day-place-missing = El dispositivo no conoce su posición. Escriba latitud y longitud, o elija un clima.
day-weather-file = Horas de un archivo meteorológico
day-weather-file-hint = EPW, TMY2, TMY3 o una tabla con las columnas hour, temperature e irradiance (W/m², horizontal); opcional: dni (directa normal) y dhi (difusa horizontal). Elija el archivo o suéltelo aquí; se lee en este dispositivo.
day-pick-weather = Elegir un archivo meteorológico
day-forget-weather = Quitar el archivo meteorológico
day-stretch = Días que se toman del archivo
day-stretch-hottest = los más calurosos
day-stretch-date = desde la fecha indicada arriba
day-stamp = En una tabla, el sol de una hora es la media
day-stamp-before = de la hora anterior
day-stamp-about = de las medias horas anterior y posterior
day-stamp-after = de la hora siguiente
day-the-cabin = La cabina
day-body = Tipo de cabina
day-insulation = Aislamiento
day-colour = Color exterior
day-glazing = Ventanas
day-covers = Cubiertas de ventanas
day-derived = Valores derivados
day-derived-hint = Un campo vacío muestra el valor que resulta de las respuestas de arriba. Un número escrito aquí lo sustituye.
day-the-unit = Capacidad del equipo de frío
day-unit-hint = Si se deja vacío, se usa el COP de un equipo de ventana corriente. Con la capacidad de la placa, o una medición propia, la respuesta es más segura.
day-curves = Curvas de rendimiento
day-add-map-row = Añadir una lectura
day-remove-map-row = Quitar esta lectura
day-map-row = Lectura
day-control = Regulación
day-mode-plan = Plan de modos por hora
day-mode-plan-hint = Igual todos los días: desde cada hora, el modo que figura al lado. Mientras nada funciona, se suponen abiertas puertas y claraboya.
day-add-mode-row = Añadir una hora
day-clear-mode-plan = Quitar el plan de modos
day-remove-mode-row = Quitar esta hora
day-mode-row = Funciona
day-mode-off = nada
day-mode-plan-taken = No hay plan de modos. Según las horas deseadas: { $modes }.
day-supply = Qué alimenta el banco
day-drawn = Noches simuladas
day-drawn-hint = Más noches simuladas dan probabilidades más finas y tardan más. Otra semilla aleatoria muestra cuánto se debe al azar.
day-changes = Qué ayudaría
day-changes-coming = Probando los cambios uno por uno…
day-changes-none = No hay cambios que probar: el plan no puede calcularse.
day-changes-rest = Otros cambios probados
day-changes-hint = Cada cambio por separado en estos días, tres como mínimo. Ordenados por horas hasta agotarse, luego por horas en la consigna, luego por energía sobrante. Los pesos son valores usuales (práctica común, sin fuente).
day-try-change = Probar
day-try-change-of = Probar en el plan: { $what }
day-bedtime = Última hora para bajar de modo
day-bedtime-coming = Buscando la última hora…
day-bedtime-none = No hay ningún modo previsto antes de la hora deseada, así que no hay nada que cambiar.
day-longest = La noche fresca más larga
day-longest-coming = Buscando entre los planes de modos…
day-longest-none = No hay ningún modo previsto, o el plan no puede calcularse.
day-take-longest = Usarlo como plan de modos
day-enough = ¿Cuánto es suficiente?
day-enough-coming = Buscando…
day-enough-none = Nada que calcular: el plan no puede calcularse o aún no tiene esta parte. Añádala primero.
day-take-enough = Pasarlo al plan
day-check-ins = Lecturas de la noche: monitor y termómetro
day-checked = La noche según sus lecturas
day-take-fit = Pasar al plan los valores ajustados
day-check-in = Lectura
day-check-in-hint = Lo que marcan ahora el monitor y el termómetro, con el mismo reloj que el inicio.
day-check-in-log = El registro de una noche entera, con termómetro, ajusta mejor el plan: déselo en «{ $question }».
day-add-check-in = Añadir una lectura, ahora
day-remove-check-in = Quitar esta lectura
day-panels = Paneles
day-array = Grupo de paneles
day-add-array = Añadir paneles
day-remove-array = Quitar estos paneles
day-no-array = Ningún panel alimenta el banco.
day-mounting = Montaje
day-panel-sheet = De la hoja de datos del panel
day-controller = Regulador de carga
day-controller-rest = Regulador de carga y pérdidas
day-chargers = Cargadores
day-charger = Cargador
day-add-charger = Añadir un cargador
day-remove-charger = Quitar este cargador
day-no-charger = Ningún cargador alimenta el banco.
day-fed-by = Alimentado por
day-bank-warmth = Temperatura del banco
day-bank-place = Ubicación del banco

## Momentos y fechas

day-moment-of-date = { $date }, { $clock }
day-moment-night = noche { $number }, { $clock }
day-moment-morning = mañana { $number }, { $clock }
day-moment-afternoon = tarde { $number }, { $clock }
day-moment-next-day = { $clock } del día siguiente
day-of-date = { $weekday } { $day } { $month }
day-of-month = { $day } { $month }
day-of-weekday = { $weekday } { $day }
day-of-number = día { $day }
day-weekday-mon = lun
day-weekday-tue = mar
day-weekday-wed = mié
day-weekday-thu = jue
day-weekday-fri = vie
day-weekday-sat = sáb
day-weekday-sun = dom
day-month-jan = ene
day-month-feb = feb
day-month-mar = mar
day-month-apr = abr
day-month-may = may
day-month-jun = jun
day-month-jul = jul
day-month-aug = ago
day-month-sep = sep
day-month-oct = oct
day-month-nov = nov
day-month-dec = dic
# Stand as $until in the sentences below.
day-until = hasta { $moment }
day-until-clock = hasta las { $clock }
day-for-duration = durante { $duration }
-day-mode =
    { $mode ->
        [the-unit] el equipo de frío
       *[named] { $mode }
    }
-day-mode-first =
    { $mode ->
        [the-unit] El equipo de frío
       *[named] { $mode }
    }
-day-mode-of =
    { $mode ->
        [the-unit] del equipo de frío
       *[named] de { $mode }
    }

## La respuesta

day-no-mode = ningún modo
day-modes-then = { $first } y después { $last }
day-lasts-all = Dura todo el periodo ({ $days }): con { $modes } cada noche, el banco no baja de { $least }.
day-lasts = Llega { $until }: con { $modes }, el banco no baja de { $least }.
day-lasts-then-empty = Dura la noche, { $until }; el banco se agota después, aprox. { $moment }.
day-does-not-last = No llega { $until }: con { $modes }, el banco se agota tras { $duration }, aprox. { $moment }.
# The same where there is one mode without a name.
day-lasts-all-plain = Dura todo el periodo ({ $days }): el banco no baja de { $least }.
day-lasts-plain = Llega { $until }: el banco no baja de { $least }.
day-does-not-last-plain = No llega { $until }: el banco se agota tras { $duration }, aprox. { $moment }.
day-nothing-cooled = No hay ningún modo previsto, así que no se enfría nada.
day-stays-cool = Aun así, esa noche la cabina no pasa de { $warmest }.
day-keeps-set-point = La primera noche la cabina mantiene sus { $set }: { $warmest } como máximo una vez enfriada.
day-loses-set-point = La cabina no mantiene sus { $set }: hacia { $moment } está más caliente, { $warmest } como máximo una vez enfriada.
day-duty-from-weather = Aquí el tiempo que funciona el compresor resulta del clima y del termostato; no se usa el ciclo de trabajo de arriba.
day-warmest-in-all = Máxima en las horas en que debe funcionar el equipo, en todo el periodo ({ $days }): { $warmest } (enfriamiento inicial incluido).
day-unit-stopped-for = El equipo de frío está parado { $duration } cuando debería funcionar: se para { $stop }. Todo lo demás sigue funcionando.
day-chance-certain = casi seguro
day-chance-none = casi imposible
day-chance-under-tenth = menos del 10 %
day-chance-over-nine = más del 90 %
day-chance-tens = cerca del { $share }
day-odds-lasting = Llega { $until }: { $chance }.
day-odds-holding = Mantiene además { $set }: { $chance }.
day-odds-never-empty = Sin agotarse en { $days }: { $chance }.
day-odds-assume = Probabilidades de { NUMBER($count) } { NUMBER($count) ->
        [one] día simulado
       *[other] días simulados
    }: cada valor varía dentro de su incertidumbre, independiente de los demás. No se incluye un pronóstico errado en el mismo sentido toda la semana, ni lo que no figura en el plan. Está comprobado este cálculo, no las incertidumbres.
day-ends = Se detiene: { $stop }.
day-ends-at-start = Ocurre al arrancar { -day-mode }: el banco puede con los consumos solos.
day-ends-after = En 39 de cada 40 días simulados ocurre después de { $low }; en algunos, nunca.
day-ends-between = En 19 de cada 20 días simulados ocurre entre { $low } y { $high }.
day-warmest-between = La cabina más caliente de la noche, una vez enfriada, está entre { $low } y { $high }.

## Sucesos

day-mark-empty = agotado
day-mark-back-on = vuelve
day-mark-full = lleno
day-mark-unit-stops = el equipo para
day-mark-too-warm = demasiado calor
day-mark-cool-again = en consigna
day-mark-unit-off = equipo apagado
day-mark-no-charging = no carga
day-mark-charging-again = carga de nuevo
day-mark-fuel-gone = sin combustible
day-event-empty = Todo lo que depende del banco está apagado: { $stop }.
day-event-empty-at-start = Todo lo que depende del banco está apagado: lo detiene el arranque { -day-mode-of }, { $stop }. El banco puede con los consumos solos.
day-event-back-on = El banco vuelve a tener carga suficiente: consumos y equipo se encienden de nuevo.
day-event-full = El banco está lleno.
day-event-unit-stopped = Solo se para el equipo de frío, { $stop }.
day-event-too-warm = Demasiado calor: la cabina supera la consigna y la histéresis del termostato.
day-event-cool-again = La cabina vuelve a su consigna.
day-event-mode-begins = Empieza { -day-mode }.
day-event-unit-off = El equipo de frío está apagado según el plan; puertas y claraboya están abiertas.
day-event-charging-refused = El banco está a { $temperature } y no acepta carga: no cargue litio bajo cero ni caliente.
day-event-charging-again = El banco vuelve a aceptar carga.
day-event-fuel-gone = Se acabó el combustible del generador.

## Lo que muestran los gráficos

day-outdoors-from-to = Exterior: de { $low } a { $high }.
day-unit-off-cabin-hot = Con el equipo apagado la cabina llega a { $temperature }: no deje dentro a ninguna persona ni animal.
day-lowest-charge = Mínimo: { $least } ({ $moment }). Al final: { $end }.
day-in-panels = paneles { $energy }
day-in-chargers = cargadores { $energy }
day-in-store = de la batería { $energy }
day-in-and-out = Entra en { $days }: { $ways_in }. Se consume: equipo { $unit }, otros { $loads }.

## Lo primero que conviene saber

day-all-off-for = Todo lo eléctrico está apagado { $duration } en estos días: también lámparas, ventilador y nevera.
day-too-warm-for = Demasiado calor durante { $duration } cuando debe funcionar el equipo: por encima de { $set } y la histéresis del termostato.
day-runs-down = Cada día salen del banco unos { $energy } más de los que entran.
day-spilled = Los paneles podrían dar { $energy } más: para entonces el banco está lleno.
day-no-weather = Sin datos meteorológicos: se supone un día caluroso en una llanura alta de lago salado, 38° N.

## Balances

day-head-from = Día, desde { $clock }
day-head-panels = Paneles, Wh
day-head-chargers = Cargadores, Wh
day-head-unit = Equipo, Wh
day-head-loads = Consumos, Wh
day-head-least = Mínimo
day-head-end = Al final
day-energy-panels = De los paneles, después del regulador de carga
day-energy-chargers = De los cargadores
day-energy-store = De la carga almacenada en el banco
day-energy-unit = Al equipo de frío, su convertidor y cable
day-energy-loads = A los demás consumos
day-energy-lost = Perdido como calor en el banco
day-energy-spilled = Disponible de los paneles, no aprovechado
day-energy-fuel = Combustible usado
day-heat-sun-glass = Sol a través del vidrio
day-heat-sun-shell = Sol sobre paredes y techo
day-heat-glass = Conducción por el vidrio
day-heat-shell = Conducción por paredes y techo
day-heat-air = Renovación de aire
day-heat-people = Personas y animales
day-heat-gains = Otras fuentes en el interior
day-heat-unit = Extraído por el equipo
day-heat-stored = Almacenado en aire, contenido, paredes y techo
day-heat-condensed = Agua condensada por el equipo
day-heat-latent = Calor latente de esa agua

## Cambios que dan más horas

day-change-string =
    { $kind ->
        [battery] Una batería más en paralelo ({ NUMBER($count) } en total)
       *[string] Una rama de baterías más ({ NUMBER($count) } en paralelo)
    }
day-change-more-panels = { $more } más de paneles, { $all } en total
day-change-panels = { $power } de paneles, planos sobre el techo
day-change-panels-in-open = Los paneles fuera de la sombra
day-change-charger = Un cargador más potente: { $current }
day-change-full-at-start = El banco lleno al inicio
day-change-set-point = Una consigna de { $temperature }
day-change-lower-mode = { $lower } en lugar de { $mode }
day-change-covers = Cubiertas de ventanas: { $covers }
day-change-shade = Aparcado a la sombra: { $share } menos de sol, también en los paneles
day-change-insulation = Aislamiento: { $insulation }
day-change-colour = Color exterior: { $colour }
day-change-load = Sin «{ $name }»
day-change-load-number = Sin el consumo { $number }
day-gain-never-empty =
    { NUMBER($count) ->
        [one] dura el día entero
       *[other] dura los { NUMBER($count) } días
    }
day-gain-hours = { $duration } más hasta agotarse (en { $days })
day-gain-fewer-hours = peor: { $duration } menos hasta agotarse (en { $days })
day-gain-holding = la consigna mantenida { $duration } más (en { $days })
day-gain-spare = { $energy } más de reserva en el punto más bajo
day-gain-less-spare = peor: { $energy } menos de reserva en el punto más bajo
day-gain-none = sin ganancia real
day-gain-keeps-heat = el aislamiento también retiene de noche el calor del día
day-gain-chance = probabilidad de durar la noche: { $then }, ahora { $now }
day-gain-warmest = la cabina, una vez enfriada, hasta { $temperature }
day-gain-mass = unos { $mass } más de peso
day-gain-cost = por { $cost } según su precio
day-bedtime-no-need = No hace falta bajar de modo: con { -day-mode } todo el tiempo, al menos nueve de cada diez noches llegan { $until }.
day-bedtime-change = Cambie de { $mode } a { $lower } a más tardar a las { $clock }: así nueve de cada diez noches llegan { $until }.
day-bedtime-off = Apague { -day-mode } a más tardar a las { $clock }: así nueve de cada diez noches llegan { $until }.
day-bedtime-change-late = Ni cambiando de { $mode } a { $lower } al inicio se llega en nueve de cada diez noches. Así llega { $until }: { $chance }.
day-bedtime-off-late = Ni apagando { -day-mode } al inicio se llega en nueve de cada diez noches. Así llega { $until }: { $chance }.

## Lecturas de la noche

day-check-in-read = { $moment }: el banco está al { $charge } (previsto { $expected_charge }), la cabina a { $cabin } (previsto { $expected_cabin }).
day-check-in-used-since-start = Gastado desde el inicio: { $ratio } veces lo previsto.
day-check-in-used-since-reading = Gastado desde la lectura anterior: { $ratio } veces lo previsto.
day-onward-empty = Desde ahí el banco se agota aprox. { $moment }, antes de { $goal }.
day-onward-lasts-with = Desde ahí llega hasta { $goal }, con { $charge } restante.
day-onward-lasts = Desde ahí llega hasta { $goal }.
day-advice-go-on = Siga según el plan. Llega hasta { $goal }: { $chance }.
day-advice-switch = Cambie ahora a { $mode }. Así llega hasta { $goal }: { $chance }.
day-advice-off = Apague el equipo ahora. Así llega hasta { $goal }: { $chance }.
day-advice-nothing = Ningún cambio llega hasta { $goal } en nueve de cada diez noches. Con el equipo apagado desde ahora: { $chance }.
day-advice-as-planned = Según el plan: { $chance }.
day-fit-too-few = El plan se ajusta a partir de { NUMBER($least) } lecturas; por ahora { NUMBER($readings) ->
        [0] no hay ninguna
        [one] hay 1
       *[other] hay { NUMBER($readings) }
    }.
day-fit-untold = { NUMBER($readings) ->
        [one] La lectura no aporta
       *[other] Las { NUMBER($readings) } lecturas no aportan
    } nada nuevo sobre calor de la cabina, consumo ni energía útil.
day-fit-cabin-loss = Calor que entra en la cabina
day-fit-draw = Consumo del equipo
day-fit-usable = Energía útil del banco
day-fit-factor = { $what }: { $factor } veces el valor del plan, ±{ $after }. Antes de las lecturas: ±{ $before }.
day-fit-factor-untold = { $what }: las lecturas no mejoran el ±{ $before }.
day-fit-misfit = { NUMBER($readings) ->
        [one] La lectura no encaja
       *[other] Las { NUMBER($readings) } lecturas no encajan
    } solo con estos tres valores: hay algo más en el plan que no es correcto.

## Cuánto es suficiente, y la noche fresca más larga

day-unknown-bank = capacidad de una batería
day-unknown-panels = potencia de los paneles
day-unknown-charger = corriente del cargador
day-unknown-set-point = consigna más baja
day-unknown-high = día más caluroso
day-enough-bank = Baterías de { $value } cada una, tantas como ahora, bastan { $until } con la consigna mantenida.
day-enough-panels = { $value } en el primer grupo de paneles bastan { $until } con la consigna mantenida.
day-enough-charger = Un primer cargador de { $value } basta { $until } con la consigna mantenida.
day-enough-set-point = { $value } es la consigna más baja que se mantiene { $until }.
day-enough-high = Una máxima de { $value } es el día más caluroso que se aguanta { $until }, con la consigna mantenida y la noche más calurosa en la misma medida.
day-enough-any =
    { $kind ->
        [panels] No hacen falta paneles para mantener la consigna { $until }.
        [charger] No hace falta cargador para mantener la consigna { $until }.
        [set-point] Incluso una consigna de { $value } se mantiene { $until }.
        [high] Incluso con una máxima de { $value } la consigna se mantiene { $until }.
       *[other] Incluso { $value } basta para mantener la consigna { $until }.
    }
day-enough-unit-too-small = Ningún valor mantiene la consigna { $until }: el banco basta, pero el equipo de frío es demasiado débil.
day-enough-nothing = Con ningún valor llega { $until }.
day-mode-from = desde las { $clock }, { -day-mode }
day-modes-next = { $first }, después { $next }
day-held-all = todo el tiempo considerado ({ $duration })
day-held-until = { $duration }, hasta las { $clock }
day-longest-never = Con este banco ningún modo enfría la cabina a { $limit } en el tiempo previsto para enfriarla.
day-longest-is = A { $limit } o menos: { $held }, con { $charge } restante en el banco. Plan de modos: { $modes }.
day-alone-open = Nada encendido, puertas y claraboya abiertas
day-alone-mode = Solo { -day-mode }
day-alone-never = { $name }: nunca tan fresco.
day-alone-held = { $name }: { $held }.
day-longest-stands = El mejor plan encontrado con { NUMBER($switches) } { NUMBER($switches) ->
        [one] cambio
       *[other] cambios
    } de modo como máximo, en pasos de { $minutes }. La cabina puede tardar { $duration } en enfriarse primero. Con los valores del plan, sin su incertidumbre.
day-longest-cut-short = La búsqueda descartó algunos planes por falta de memoria: puede haber uno más largo.

## Archivos meteorológicos

day-file-latitude = la latitud
day-file-longitude = la longitud
day-file-altitude = la altitud
day-file-utc-offset = el reloj respecto a UTC (h)
day-file-date = la fecha
day-file-hour = la hora
day-file-temperature = la temperatura
day-file-dew-point = el punto de rocío
day-file-wind = el viento
day-file-global = la irradiancia global horizontal
day-file-beam = la irradiancia directa normal
day-file-diffuse = la irradiancia difusa horizontal
day-file-fault-at-column = Línea { $line }, columna { $column }: { $fault }. No se cambió nada.
day-file-fault-at-line = Línea { $line }: { $fault }. No se cambió nada.
day-file-fault = No se leyó: { $fault }. No se cambió nada.
day-file-too-short = El archivo tiene { NUMBER($hours) } { NUMBER($hours) ->
        [one] hora
       *[other] horas
    }; hace falta un día entero de 24. No se cambió nada.
day-file-too-large = el archivo supera el límite de 4 MB
day-file-too-many-columns = la línea tiene más columnas que cualquier tabla meteorológica
day-file-too-many-hours = el archivo tiene más horas que un año
day-file-unknown-format = el archivo no es EPW, TMY2 ni TMY3, ni una tabla con las columnas hour, temperature e irradiance
day-file-no-hours = el archivo no tiene horas
day-file-no-such-date = esa fecha no existe
day-file-not-next-hour = esta no es la hora siguiente a la anterior
day-file-missing = falta { $field }
day-file-not-a-number = { $field } no es un número
day-file-long-gap = desde aquí faltan más de tres horas: { $field }
day-file-out-of-range = { $field } está fuera de rango: se admite de { $least } a { $most }
day-file-table = Tabla
day-file-read = { $format }, { NUMBER($hours) } { NUMBER($hours) ->
        [one] hora
       *[other] horas
    }.
day-file-taken = Se toman: { NUMBER($days) } { NUMBER($days) ->
        [one] día
       *[other] días
    }, de { $low } a { $high }.
day-file-taken-from = Se toman: { NUMBER($days) } { NUMBER($days) ->
        [one] día
       *[other] días
    } desde el { $day } { $month }, de { $low } a { $high }.
day-file-other-date = La fecha indicada arriba no está en el archivo; estos son sus días más calurosos.
day-file-place = También el lugar y el reloj ({ $utc }) vienen del archivo.
day-file-filled = { NUMBER($count) } { NUMBER($count) ->
        [one] valor faltante se completó
       *[other] valores faltantes se completaron
    } por interpolación lineal.
day-file-undo = Deshacer restituye lo que había antes.

## Nombres de las opciones

day-assumed-choice = { $name } ({ $assumed })
day-charger-hint-shore = Si no se indican horas, está encendido todo el día.
day-charger-hint-engine = Si no se indican horas, nunca funciona. No haga funcionar nunca un motor mientras duermen personas.
day-charger-hint-generator = Si no se indican horas, nunca funciona. Coloque el generador fuera, a 6 m (20 ft) y a sotavento (CPSC), y no lo haga funcionar nunca mientras duermen personas al lado.
day-climate-salt-lake-plain = Llanura de lago salado, 38° N
day-climate-low-desert = Desierto pedregoso bajo, 33° N
day-climate-high-plateau = Meseta alta y seca, 36° N
day-climate-gulf-coast = Costa húmeda de golfo, 29° N
day-climate-humid-forest = Bosque húmedo, 34° N
day-climate-inland-valley = Valle interior seco, 37° N
day-climate-southern-river-plain = Llanura fluvial del sur, 38° N
day-climate-mild-sea-shore = Costa marina templada, 36° N
day-climate-northern-heat-wave = Ola de calor del norte, 50° N
day-climate-dusty-steppe = Estepa polvorienta, 27° N
day-climate-red-inland-plain = Llanura interior roja, 24° S
day-climate-tropical-coast = Costa tropical, 17° S
day-body-van = furgoneta
day-body-trailer = caravana o remolque
day-body-tent-cabin = tienda o cabina de lona
day-body-boat = cabina de barco
day-body-small-cabin = cabaña pequeña
day-insulation-bare = ninguno: chapa o tela
day-insulation-partial = parcial, refuerzos sin aislar
day-insulation-normal = completo, unos 30 mm
day-insulation-heavy = grueso, sin refuerzos descubiertos
day-colour-light = claro
day-colour-medium = medio
day-colour-dark = oscuro
day-glazing-single = simples
day-glazing-double = dobles
day-covers-none = ninguna
day-covers-curtains = cortinas
day-covers-inside-mats = láminas reflectantes interiores
day-covers-outside-covers = cubiertas exteriores
day-curves-window-unit = equipo de ventana, una velocidad
day-curves-single-speed = split o equipo central, una velocidad
day-curves-two-stage = equipo de dos etapas
day-control-thermostat = encendido y apagado (termostato)
day-control-modulating = velocidad variable, con un mínimo
day-mounting-flat-on-roof = planos sobre el techo
day-mounting-stood-off = elevados, ventilados por detrás
day-controller-tracking = MPPT
day-controller-direct = PWM
day-charger-shore = red exterior
day-charger-engine = motor
day-charger-generator = generador
day-bank-place-cabin = en la cabina
day-bank-place-locker = en un compartimento, bajo el asiento o el suelo
day-bank-place-outside = en el exterior
