## Registros: un archivo

log-title = Un registro o notas
log-hint = Elija un archivo CSV de un monitor o registrador, o suéltelo aquí. Se lee en este dispositivo y no se envía a ninguna parte.
log-pick = Elegir un registro
log-try = Probar el registro inventado
log-invented = Inventado para la demostración: no se midió ninguna furgoneta, banco de baterías ni equipo de refrigeración así.
log-invented-name = Del registro inventado
log-reading = Leyendo el registro: { $share } completado.
log-columns = Cómo se leen las columnas
log-read-as = Leer como
log-in-unit = Unidad
log-read-again = Volver a leer así
log-column = Columna { $number }: { $why }
log-column-headed = Columna { $number }, «{ $heading }»: { $why }

## Registros: columnas

log-role-time = hora
log-role-date = fecha
log-role-volts = tensión
log-role-amps = corriente
log-role-watts = potencia
log-role-amp-hours = contador de Ah
log-role-watt-hours = contador de Wh
log-role-temperature = temperatura en el habitáculo
log-role-outdoors = temperatura exterior
log-role-ignored = no leer
log-unit-plain = unidad básica (V, A, W)
log-unit-milli = mili (mV, mA, mW)
log-unit-kilo = kilo (kW, kWh)
log-unit-milliseconds = milisegundos
log-unit-seconds = segundos
log-unit-minutes = minutos
log-unit-hours = horas
log-unit-days = días
log-unit-hours-minutes = h:mm
log-unit-minutes-seconds = m:ss
log-unit-clock = hora del reloj
log-unit-calendar = fecha y hora
log-unit-epoch-seconds = tiempo Unix en segundos
log-unit-epoch-milliseconds = tiempo Unix en milisegundos
log-why-given = elegido por usted
log-why-heading = el encabezado indica la unidad
log-why-name-only = el encabezado no indica la unidad, compruébelo
log-why-cells = por sus valores
log-why-nothing = sin reconocer

## Registros: por qué se rechazó un archivo

log-refused = Línea { $line }, columna { $column }: { $fault }. No se tomó nada del archivo.
log-fault-bytes = El archivo supera los { $size } MB, lo máximo que se lee.
log-fault-rows = más de { $most } filas; acorte el archivo
log-fault-cells =
    { NUMBER($columns) ->
        [one] más celdas que la { NUMBER($columns) } columna; a menudo una coma decimal en un archivo separado por comas
       *[other] más celdas que las { NUMBER($columns) } columnas; a menudo una coma decimal en un archivo separado por comas
    }
log-fault-no-table = no se encontraron dos filas seguidas de números
log-fault-no-time = no se encontró ninguna columna de horas; elíjala abajo
log-fault-no-flow = no se encontró ni corriente ni potencia; elija la columna abajo
log-fault-column = esta columna no se puede leer así
log-fault-number = esta celda no es un número
log-fault-unit = este número lleva la unidad de otra magnitud
log-fault-range = este número está fuera de lo que admite la columna, { $low } a { $high }
log-fault-time = esta celda no es una hora con el formato de las filas anteriores
log-fault-zones = unas horas llevan zona horaria y otras no
log-fault-quote = hay unas comillas sin cerrar
log-fault-overlap = la hora retrocede sobre lo ya registrado; separe las dos descargas
log-fault-few = menos de dos filas con hora y lectura

## Registros: qué se hizo con las filas

log-rows = Cómo se leyó el archivo:
log-sign-reversed =
    { $of ->
        [amps] La descarga se registró en negativo; aquí la corriente se muestra en positivo.
        [watts] La descarga se registró en negativo; aquí la potencia se muestra en positivo.
       *[both] La descarga se registró en negativo; aquí la corriente y la potencia se muestran en positivo.
    }
log-sign-by-amps = La potencia está registrada sin signo: tomó el de la corriente.
log-newest-first = La fila más reciente estaba primero: se invirtió el orden.
log-cut-short = La última fila estaba incompleta y se omitió.
log-out-of-order =
    { NUMBER($count) ->
        [one] Se ordenó { NUMBER($count) } salto atrás en el tiempo.
       *[other] Se ordenaron { NUMBER($count) } saltos atrás en el tiempo.
    }
log-repeated =
    { NUMBER($count) ->
        [one] Se omitió { NUMBER($count) } fila duplicada.
       *[other] Se omitieron { NUMBER($count) } filas duplicadas.
    }
log-same-time =
    { NUMBER($count) ->
        [one] { NUMBER($count) } fila tiene la misma hora que otra: cuenta su media.
       *[other] { NUMBER($count) } filas tienen la misma hora que otras: cuenta su media.
    }
log-missing-cells =
    { NUMBER($count) ->
        [one] { NUMBER($count) } celda está vacía.
       *[other] { NUMBER($count) } celdas están vacías; donde faltan pocas, se interpolan en línea recta.
    }
log-without-time =
    { NUMBER($count) ->
        [one] { NUMBER($count) } fila no tiene hora y se omitió.
       *[other] { NUMBER($count) } filas no tienen hora y se omitieron.
    }
log-remarks =
    { NUMBER($count) ->
        [one] Se saltó { NUMBER($count) } línea de texto.
       *[other] Se saltaron { NUMBER($count) } líneas de texto.
    }
log-watts-none = No hay ni tensión ni potencia: la corriente sola da la carga, pero no la energía.
log-watts-product = La potencia es tensión por corriente, fila a fila.
log-watts-column = La potencia viene de la columna del propio registrador.
log-watts-apart = La potencia viene de la columna del propio registrador, pero tensión por corriente da el { $share } de ella: revise las unidades, o si es corriente alterna.
log-counter = El contador del propio registrador avanzó { $own }; las filas suman { $rows }.
log-counter-reset = El contador de { $unit } del propio registrador avanzó y retrocedió o se puso a cero: no se compara.

## Registros: cifras

log-duration = Duración
log-without-gaps = { $span }, { $covered } sin los huecos
log-charge = Carga
log-energy = Energía
log-volts = Tensión
log-amps = Corriente
log-watts = Potencia
log-means = media { $mean }, { $low } a { $high }
log-ran = Funcionó { $duration }; { $cause }.
log-ran-last = Funcionó { $duration }, al final { $volts } y { $amps }; { $cause }.
log-end-unknown = el registro no muestra qué terminó la descarga
log-end-bms = probablemente cortó el BMS
log-end-unit = probablemente cortó el equipo o el inversor
log-end-hand = probablemente se apagó a mano
log-gaps = Huecos: { $count }, { $duration } en total. No se rellena nada; pueden añadir { $ah-low } a { $ah-high } y { $wh-low } a { $wh-high }.
log-sampling-pulses = Las filas están demasiado separadas para esta carga: sin una de cada dos, el total cambia un { $share }. No se puede indicar la incertidumbre.
log-sampling-counters = Los contadores del propio registrador difieren de las filas un { $share }: hubo pulsos entre las filas. No se puede indicar la incertidumbre.
log-sampling-few = Demasiado pocas filas para saber si siguen la carga.

## Registros: el instrumento y su desviación de cero

log-meter = Corriente medida con
log-meter-shunt = shunt de { $current }
log-meter-clamp = pinza amperimétrica
log-offset = Corriente indicada en reposo
log-offset-hint = Una desviación de cero de { $current } añade en { $duration } { $charge } falsos.
log-offset-bad = Introduzca una corriente { $accepted }.
log-offset-from-log = Tomar el cero del inicio del registro
log-offset-none = El registro empieza bajo carga: no tiene ninguna lectura en reposo.
log-offset-taken = Restado: añadía { $charge } falsos a lo largo del registro.

## Registros: tramos estables

log-stretches = Tramos estables del registro
log-stretches-hint = Un tramo nuevo empieza donde cambia el consumo medio. Arrastre un borde, o muévalo con las flechas, de minuto en minuto. Método: PELT (Killick, Fearnhead and Eckley 2012).
log-shortest = Tramo más corto
log-shortest-hint = Más largo que un ciclo del compresor, para que la media incluya las pausas.
log-find-again = Volver a buscarlos
log-leave-out = Omitir
    .which = Omitir, tramo { $number }
log-split = Dividir en dos
    .which = Dividir en dos, tramo { $number }
log-edge-start = Inicio del tramo { $number }
log-edge-end = Final del tramo { $number }
log-moment = { $duration } desde el inicio del registro
log-stretch = { $number }. { $start } a { $end } ({ $duration }): { $draw }
log-detail = { $parts }.
log-detail-amps = media { $current }
log-detail-totals = { $totals } en total
log-draw = Consumo
log-chart-label = Consumo a lo largo del registro, con los tramos sombreados
log-axis-watts = Consumo, W
log-axis-amps = Consumo, A
log-axis-hours = Horas desde el inicio del registro

## Registros: al plan

log-bank = Banco registrado
-log-mode-of =
    { $mode ->
        [the-unit] del equipo de frío
       *[named] de { $mode }
    }
log-make-bank = Usar los totales como banco medido
log-make-claims = Comparar los totales con la etiqueta
log-make-mode = Usar el tramo { $number } como consumo { -log-mode-of }
log-make-noted = Usarlo como consumo { -log-mode-of }
log-taken = Añadido al plan, marcado como medido, con su margen. «Deshacer» lo revierte.
log-not-taken = No añadido: su incertidumbre es desconocida, o está fuera de lo que admite el plan.

## Registros: una noche

log-night-title = Ajustar el plan a esta noche
log-night-hint = Un registro de { $least } o más con un termómetro en el habitáculo muestra cuánto calor deja entrar su vehículo y cuánto consume su equipo. Un segundo termómetro en el exterior ayuda. Lo que más ayuda es una hora con el equipo apagado.
log-night-try = Probar una noche inventada
log-night-fit = Ajustar el plan a este registro
log-night-fitting = Ajustando…
log-night-take = Usar en el plan los valores ajustados
log-night-taken = Los valores ajustados están en el plan, con sus dispersiones. Deshacer lo revierte. No ajuste otra vez el mismo registro: sus lecturas cuentan una sola vez.
log-night-changed = El plan ha cambiado desde el ajuste: ajústelo de nuevo.
log-night-other-bank = El día caluroso usa el primer banco; este registro es de otro. Póngalo como primer banco para ajustarlo.
log-night-unready = El plan tiene errores que impiden calcular el día caluroso. Corríjalos y después ajuste.
log-night-short = El registro tiene { $covered } con lecturas; un ajuste necesita { $least } o más.
log-night-other-voltage = El registro se hizo a unos { $log } y el banco del plan es de { $bank }: es otra instalación, y el plan no se ajusta a él.
log-night-figure = Magnitud
log-night-assumed = Supuesto
log-night-fitted = Ajustado
log-night-tells = ¿Lo muestra el registro?
log-night-told = sí
log-night-too-little = no: su dispersión es casi tan amplia como antes
log-night-without-thermometer = no: el registro no tiene temperatura del habitáculo
log-night-without-outdoors = no: el registro no tiene temperatura exterior
log-night-steady-weather = no: la temperatura exterior apenas cambió mientras el equipo funcionaba
log-night-unit-off = no: el equipo no estuvo encendido
log-night-rows-apart = no: las filas están demasiado separadas para ver las conmutaciones del equipo; tres minutos como máximo
log-night-follows-load = no: un equipo modulante no tiene un consumo único
log-night-own-runs = no: se mantienen las mediciones propias del equipo que tiene el plan
log-night-without-volts = no: el registro no tiene tensión
log-night-loss = Calor que entra en el habitáculo por cada kelvin
log-night-capacity = Calor que absorben aire, contenido y carrocería
log-night-per-watt = Refrigeración por vatio consumido
log-night-per-watt-at = Refrigeración por vatio consumido, con { $weather } en el exterior
log-night-draw = Consumo del equipo encendido
log-night-draw-at = Consumo del equipo encendido, con { $weather } en el exterior
log-night-slope = Cambio del consumo por cada kelvin en el exterior
log-night-usable = Energía útil del banco, de lleno a vacío
log-night-no-cabin = El registro no tiene temperatura del habitáculo: solo se ajusta la parte eléctrica. Si alguna columna la tiene, elija «temperatura en el habitáculo» para esa columna y vuelva a leer el archivo.
log-night-no-outdoors = El registro no tiene temperatura exterior: se toma el tiempo del plan, lo que amplía las dispersiones.
log-night-no-clock = El registro no tiene horas de reloj: se supone que empieza a las { $clock }, como la noche del plan.
log-night-cut = Solo se ajustan las primeras { $most } del registro.
log-night-charged = El banco se cargó durante el { $share } del tiempo. Lo que consumió el equipo entonces no se puede separar: registre una noche sin carga, o el circuito propio del equipo.
log-night-misfit = El modelo se desvía de la temperatura del habitáculo { $times } veces la dispersión de un termómetro: algo más cambió esa noche. Las dispersiones se han ampliado por ello.
log-night-not-ahead = No se pudo predecir el último tercio: los dos primeros tercios del registro son demasiado cortos.
log-night-held = El termostato mantuvo { $held } en el termómetro del registro; la predicción usa este valor en lugar de la consigna, { $set }.
log-night-predicts = El último tercio, predicho a partir de los dos primeros
log-night-predicts-hint = Ajustado solo a los dos primeros tercios, el plan recorre el último tercio, con la temperatura exterior registrada.
log-night-measured = medido
log-night-predicted = predicho
log-night-from-here = predicho desde aquí
log-night-cabin = Temperatura del habitáculo
log-night-used = Carga usada
log-night-volts = Tensión de la batería
log-night-cabin-miss = Se desvía { $miss } (media cuadrática), { $mean } de media. El plan antes del ajuste: { $before }.
log-night-used-miss = En las últimas { $hours } el banco dio { $measured }; se predijeron { $predicted }, una diferencia de { $miss }. El plan antes del ajuste: { $before }.
log-night-volts-miss = Se desvía { $miss } (media cuadrática). El plan antes del ajuste: { $before }.

## Notas a mano

log-notes = Notas a mano
log-notes-hint = El inicio, el final o la media, y los minutos dan el consumo de un modo.
log-note-start-volts = Tensión al inicio
log-note-end-volts = Tensión al final
log-note-start-amps = Corriente al inicio
log-note-end-amps = Corriente al final
log-note-average = Consumo medio, si se leyó
log-note-minutes = Tiempo de funcionamiento
log-note-bad = { $field }: introduzca un número { $accepted }.
log-noted = Resultado: { $figures }.
