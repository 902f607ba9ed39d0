## Datos declarados: la respuesta

claims-none = Aún no hay ningún dato declarado. Elija un registro, o introduzca lo declarado y lo que midió.
claims-number = Dato declarado { $number }
claims-enter-both = { $claim }: introduzca lo declarado y lo que midió.
claims-enter-claimed = { $claim }: introduzca lo declarado.
claims-enter-measured = { $claim }: introduzca lo que midió.
claims-enter-valid = { $claim }: introduzca números dentro de sus límites.
claims-answer = { $claim }: { $measured } según medición: { $verdict }.
claims-answer-share = { $claim }: { $measured } según medición, { $share } de lo declarado: { $verdict }.
claims-decided-none = De { $all } datos declarados, ninguno está decidido todavía.
claims-decided =
    { NUMBER($decided) ->
        [one] De { $all } datos declarados, { NUMBER($decided) } está decidido.
       *[other] De { $all } datos declarados, { NUMBER($decided) } están decididos.
    }

## Datos declarados: veredictos

claims-beats-it = supera lo declarado
claims-meets-it = cumple lo declarado
claims-falls-short = no cumple lo declarado
claims-too-close = demasiado ajustado para decidir
claims-inside = dentro del intervalo declarado
claims-below = por debajo del intervalo declarado
claims-above = por encima del intervalo declarado
claims-not-judged = sin comprobar
claims-not-judged-because = sin comprobar ({ $why })

## Datos declarados: lo que falta para un veredicto

claims-lacks-meter = instrumento sin elegir
    .advice = Elija el instrumento de medida, para poder calcular su exactitud.
claims-lacks-limits = faltan los límites de error del instrumento
    .advice = Introduzca al menos un límite de error de la hoja de datos del instrumento.
claims-lacks-rate = falta la corriente o la duración de la prueba
    .advice = Introduzca la corriente media de la prueba o su duración: de ellas dependen los límites de error del instrumento.
claims-lacks-free-area = falta el área libre de la rejilla
    .advice = Introduzca el área libre de la rejilla: el molinete mide la velocidad del aire, no el caudal.
claims-lacks-right-meter = este instrumento no lo mide directamente
    .advice = Un instrumento así no mide esta magnitud directamente. Elija el que se usó.
claims-lacks-bank = su banco de baterías no está en el plan
    .advice = El banco de baterías de este dato declarado no está en el plan.
claims-lacks-conditions = falta la corriente o la temperatura de la prueba
    .advice = Plomo-ácido: introduzca la corriente media y la temperatura de la batería, para poder corregir el resultado a las condiciones nominales.

## Datos declarados: magnitudes y cifras

claims-about-charge = Capacidad en Ah
claims-about-energy = Energía en Wh
claims-about-draw = Potencia consumida
claims-about-airflow = Caudal de aire
claims-about-temperature = Temperatura
claims-about-cooling = Potencia frigorífica
claims-about-eer = EER en Btu/Wh
claims-range = { $low } a { $high }
claims-uncertainty-unknown = { $figure }, incertidumbre desconocida

## Datos declarados: condiciones de una prueba

claims-conditions = Condiciones: { $conditions }.
claims-no-conditions = No se indica ninguna condición.
claims-from-air = calculado abajo a partir del aire
claims-mean-of-runs =
    { NUMBER($count) ->
        [one] { NUMBER($count) } prueba
       *[other] media de { NUMBER($count) } pruebas
    }
claims-for-duration = durante { $duration }
claims-at-current = a { $current }
claims-at-temperature = a { $temperature }
claims-full-charge = carga completa según: { $by }
claims-run-end = final de la prueba: { $by }
claims-read-with = medido con: { $meter }
claims-corrected = medido { $measured }, corregido con un factor de { $temperature } por temperatura y de { $rate } por régimen de descarga
claims-full-charger = fin de carga del cargador
claims-full-volts = tensión de absorción mantenida
claims-full-monitor = indicación del monitor de batería
claims-end-bms = corte por baja tensión del BMS
claims-end-unit = corte por baja tensión del equipo
claims-end-volts = tensión final fijada alcanzada
claims-end-hand = apagado a mano
claims-class-clamp = pinza amperimétrica
claims-class-shunt = monitor de batería con shunt de clase 0,5
claims-class-multimeter = multímetro
claims-class-watt-meter = vatímetro de enchufe
claims-class-vane = anemómetro de molinete portátil
claims-class-thermometer = termómetro
claims-class-hygrometer = higrómetro
claims-class-sheet = límites de error de la hoja de datos

## Datos declarados: qué limita una cifra y qué la decidiría

claims-limited = Fuente principal de incertidumbre (k = { $k }): { $source }, { $share }.
claims-source-stated = el margen indicado (en un registro: su instrumento y sus huecos)
claims-source-meter = el instrumento
claims-source-voltmeter = el voltímetro
claims-source-sampling = el intervalo de registro
claims-source-scatter = la dispersión de las pruebas
claims-source-timing = el inicio y el final de la prueba
claims-source-correction = la corrección a las condiciones nominales
claims-decided-below = Una incertidumbre inferior a ±{ $below } lo decide: { $ways }.
claims-decided-not-alone = Una incertidumbre inferior a ±{ $below } lo decide. Ni más tiempo ni un instrumento mejor bastan por sí solos.
claims-way-time = medir durante { $duration } en total
claims-way-class = medir con cuidado con otro instrumento ({ $meter })
claims-way-limit = medir con un instrumento de exactitud ±{ $limit }

## Datos declarados: potencia frigorífica por el lado del aire

claims-air = Potencia frigorífica a partir del aire
claims-air-hint = Calcula el frío a partir del aire que entra y del que sale. Lea los dos a la vez, tras diez minutos de marcha estable. Sin las dos humedades solo se puede conocer la potencia sensible (la bajada de temperatura).
claims-basis = El caudal se refiere
claims-basis-outlet = a las condiciones de salida
claims-basis-inlet = a las condiciones de entrada
claims-basis-standard = a la densidad normal
claims-vane = Lecturas del anemómetro
claims-vane-hint = Una lectura por cada punto de una cuadrícula uniforme sobre la rejilla, separadas por espacios. Se usan cuando no se indica el caudal.
claims-air-total = Potencia frigorífica total: { $cooling } ±{ $expanded }.
claims-air-sensible = Solo potencia frigorífica sensible: { $cooling } ±{ $expanded }. No se leyó la humedad en las dos caras; con la batería de frío húmeda puede faltar más de la mitad.
claims-air-efficiency = COP { $cop }, EER { $eer }.
claims-air-limited = Fuente principal de incertidumbre: { $reading }, { $share }.
claims-read-flow = caudal de aire
claims-read-free-area = área libre
claims-read-inlet-temperature = temperatura de entrada
claims-read-inlet-humidity = humedad de entrada
claims-read-outlet-temperature = temperatura de salida
claims-read-outlet-humidity = humedad de salida
claims-read-pressure = presión del aire
claims-air-no-temperatures = Introduzca las dos temperaturas del aire: entrada y salida.
claims-air-no-flow = Introduzca el caudal de aire, o las lecturas del anemómetro y el área libre de la rejilla.
claims-air-out-of-range = Uno de estos números está fuera de lo que se puede calcular.
claims-air-too-wet = El aire no puede contener tanta agua: revise la humedad y la temperatura.
claims-air-parts = De ello: { $parts }. Cada ± abarca cerca del 95 % (incertidumbre expandida, k = 2).
claims-air-split = sensible { $sensible }, latente { $latent }
claims-air-condensate = condensado { $rate }
claims-air-flow = caudal de aire { $flow } ±{ $expanded }
claims-air-cop = COP { $cop } ±{ $expanded }
claims-budget-reading = Lectura
claims-budget-standard = Incertidumbre típica
claims-budget-share = Proporción
claims-row-total = Potencia frigorífica total
claims-row-sensible-only = Solo potencia frigorífica sensible
claims-row-sensible = Potencia frigorífica sensible
claims-row-latent = Potencia frigorífica latente
claims-row-condensate = Condensado
claims-row-airflow = Caudal de aire
claims-row-cop = COP
claims-row-eer = EER

## Datos declarados: precio

claims-price = Precio de un vatio-hora
claims-money = { $measured } por Wh medido, { $usable } por Wh utilizable, en la moneda del precio.
claims-money-life = A lo largo de su vida en ciclos entrega { $energy }, a { $price } por kWh.
claims-row-measured-energy = Energía medida
claims-row-measured-price = Precio de un Wh medido
claims-row-usable-price = Precio de un Wh utilizable
claims-row-life-energy = Energía a lo largo de la vida en ciclos
claims-row-life-price = Precio a lo largo de la vida en ciclos
claims-per-wh = por Wh
claims-per-kwh = por kWh

## Datos declarados: qué medir a continuación

claims-next = Qué medir a continuación
claims-next-none = Nada que un instrumento corriente pueda mejorar.
-claims-mode-of =
    { $mode ->
        [the-unit] del equipo de frío
       *[named] de { $mode }
    }
claims-next-one =
    { $how }: el margen { -claims-mode-of } { $brings ->
        [two-thirds] se reduce en más de dos tercios
        [half] se reduce a la mitad, aproximadamente
        [quarter] se reduce en un cuarto, aproximadamente
       *[little] se reduce un poco
    }, de { $now } a { $then }. El { $share } viene de: { $field }.
claims-how-clamp = Medir el consumo durante { $duration } con pinza amperimétrica
claims-how-whole-run = Registrar una descarga desde plena carga hasta su propio final (alrededor de { $duration })
claims-how-two-loads = Medir la tensión con dos cargas distintas
claims-how-volts-at-stop = Anotar la tensión en el momento de la parada
claims-how-fill-first = Cargar antes el banco por completo con el cargador
claims-how-both-sides = Medir la potencia a ambos lados del convertidor durante { $duration }

## Datos declarados: fórmulas de bolsillo

claims-pocket = Fórmulas de bolsillo
claims-pocket-hint = Wh utilizables = tensión nominal × capacidad en Ah × profundidad de descarga. Para noches sin sol.
claims-pocket-holds = { $mode }: horas = { $per-wh } × Wh utilizables (= { $per-ah } × Ah utilizables a { $volts }, { $chemistry }); de { $low } a { $high } Wh utilizables, con un error de hasta { $error }.
claims-pocket-lead-acid = { $mode }: sin fórmula de bolsillo. Un banco de plomo-ácido mayor entrega más por cada Ah, así que una sola línea no sirve para todos los tamaños.
claims-pocket-fixed-start = { $mode }: sin fórmula de bolsillo, porque el banco no empieza lleno.
claims-pocket-sun = { $mode }: sin fórmula de bolsillo, porque el aporte solar depende de la hora.
claims-pocket-limits = { $mode }: sin fórmula de bolsillo, porque los cortes o los límites de corriente detienen antes algunos tamaños.
claims-pocket-nothing = { $mode }: sin fórmula de bolsillo, porque el banco no tiene carga utilizable.
chemistry-lfp-short = LFP
chemistry-nmc-short = NMC
chemistry-sodium-ion-short = ion de sodio
chemistry-agm-short = plomo-ácido AGM
chemistry-gel-short = plomo-ácido de gel
chemistry-flooded-short = plomo-ácido abierto (líquido)

## Datos declarados: el informe y sus campos

claims-report = Informe de ensayo
claims-report-note = Solo se da un veredicto cuando vale para todos los valores dentro de la incertidumbre. Fuente: JCGM 106:2012, bandas de guarda tan anchas como la incertidumbre expandida, 95 %.
claims-head-claim = Magnitud
claims-head-claimed = Declarado
claims-head-measured = Medido
claims-head-share = Proporción de lo declarado
claims-head-verdict = Veredicto
claims-claims = Datos declarados
claims-add-claim = Añadir un dato declarado
claims-remove-claim = Quitar este dato declarado
claims-claim-name = Nombre en el informe
claims-about = Magnitud
claims-claim-bank = Banco de baterías
claims-meter = Medido con
claims-more = Límites de error, condiciones y pruebas repetidas
claims-full-by = Carga completa según
claims-end-by = Final de la prueba
claims-not-stated = sin indicar
claims-runs = Resultados de pruebas repetidas
claims-runs-hint = Separados por espacios, como 4310 4325 4319. Dos o más tienen prioridad sobre la cifra de arriba; cuánto difieren aumenta la incertidumbre.
claims-list-bad = Introduzca números separados por espacios, cada uno { $accepted }.
