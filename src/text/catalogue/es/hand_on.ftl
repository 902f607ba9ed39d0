## Handing on

hand-on-copy = Copiar la frase
hand-on-copied = Copiado.
hand-on-not-copied = El navegador no permite que la página copie: seleccione el texto y cópielo.
hand-on-qr-title = El enlace como código QR
hand-on-qr-name = Código QR del enlace a este plan
hand-on-qr-save = Guardar el código
hand-on-qr-too-long = El enlace de este plan es demasiado largo para un código QR. Copie el enlace o envíe el archivo.
# The length of a link, for those who paste it somewhere narrow.
hand-on-link-length =
    { NUMBER($characters) ->
        [one] Con un enlace de { $characters } carácter.
       *[other] Con un enlace de { $characters } caracteres.
    }
hand-on-report = Un informe para imprimir, una o dos páginas
hand-on-report-print = Imprimir
hand-on-report-save = Guardar como página
hand-on-figures = Figuras
hand-on-figures-hint = Sobre blanco, con el título y la fuente dentro. SVG es nítido a cualquier tamaño; PNG se abre en todas partes.
hand-on-tables = Tablas
hand-on-tables-hint = CSV para una hoja de cálculo (punto decimal, columnas separadas por comas), Markdown para una publicación.
hand-on-whole = La respuesta completa
hand-on-whole-hint = Todos los resultados como JSON, para un programa. Formato: véase el README del módulo.
hand-on-save-answer = Guardar la respuesta como JSON
# What a file of this kind is called on its button, for those who do not see what stands
# beside it.
hand-on-save-as = Guardar «{ $title }» como { $kind }
hand-on-saved = Descarga iniciada: { $name }
hand-on-nothing-yet = Aún no hay nada que compartir: corrija primero los campos marcados.
hand-on-not-saved = El navegador no permite que la página guarde archivos aquí.
hand-on-png-failed = El navegador no pudo crear el PNG. El SVG muestra la misma figura.

## The sentence to copy

# $run and $detail are whole sentences.
hand-on-sentence = { $run } Banco: { $bank } ({ $chemistry }), profundidad de descarga { $depth }. { $detail }
hand-on-sentence-no-depth = { $run } Banco: { $bank } ({ $chemistry }). { $detail }

## The report

hand-on-report-title = Una noche con un banco de baterías
hand-on-report-plan = El plan
hand-on-report-findings = Notas sobre los datos
hand-on-report-link = Abrir este plan
hand-on-made-with = { $page }, método { $method }. Las estimaciones no son garantías.
hand-on-from-to = de { $low } a { $high }
# When a run is over, by the day of its start.
hand-on-until =
    { NUMBER($days) ->
        [0] { $clock }, el mismo día
        [1] { $clock }, al día siguiente
       *[other] { $clock }, { $days } días después
    }
# How a unit is fed.
hand-on-feed = Alimentación
hand-on-fed = { hand-on-feed }: { $how }
hand-on-feed-direct = directamente del banco
hand-on-feed-dc = mediante un convertidor CC-CC
hand-on-feed-inverter = mediante un inversor

## Parts of the plan

hand-on-part-night = Noche
hand-on-part-cabin = Cabina
hand-on-part-panels = Grupo de paneles { $number }
hand-on-part-charger = Cargador { $number }
hand-on-part-supply = Fuentes de carga
hand-on-part-claim = Dato declarado { $number }
hand-on-part-air = Frío medido en el aire
hand-on-part-price = Precio

## Titles of tables

hand-on-table-runs = Horas de cada modo
hand-on-table-sizes = Resultados del dimensionado
hand-on-table-plan = El plan con los valores supuestos
hand-on-table-moments = El día caluroso, paso a paso
hand-on-table-days = El día caluroso, totales diarios
hand-on-table-claims = Datos declarados y mediciones
hand-on-table-air = Frío medido en el aire
hand-on-table-price = Coste de un vatio-hora

## Columns that several tables have

hand-on-head-mode = Modo
hand-on-head-unit-name = Equipo de frío
hand-on-head-bank = Banco
hand-on-head-what = Magnitud
hand-on-head-value = Valor
hand-on-head-unit = Unidad
hand-on-head-uncertainty = Incertidumbre expandida (k ≈ 2)

## Columns of the table of runs

hand-on-head-hours = Horas
hand-on-head-likely = Horas, valor probable (h)
hand-on-head-low = Horas, extremo inferior (h)
hand-on-head-high = Horas, extremo superior (h)
hand-on-head-range = Intervalo
hand-on-head-until = Hasta aproximadamente
hand-on-head-end = Cómo termina
hand-on-head-mean-power = Potencia media en el banco (W)
hand-on-head-mean-current = Corriente media (A)
hand-on-head-drawn-ah = Extraído del banco (Ah)
hand-on-head-drawn-wh = Extraído del banco (Wh)
hand-on-head-unit-wh = Entregado al equipo (Wh)
hand-on-head-lost-wh = Perdido en el banco (Wh)

## Columns of the hot day

hand-on-head-after-start = Tiempo desde el inicio (h)
hand-on-head-clock = Hora
hand-on-head-charge = Estado de carga (%)
hand-on-head-volts = Tensión en bornes (V)
hand-on-head-amps-out = Corriente que sale del banco (A)
hand-on-head-cabin = Cabina ({ $unit })
hand-on-head-outdoors = Exterior ({ $unit })
hand-on-head-humidity = Humedad relativa en la cabina (%)
hand-on-head-panels = De los paneles (W)
hand-on-head-chargers = De los cargadores (W)
hand-on-head-loads = Consumos (W)
hand-on-head-unit-power = Equipo de frío (W)
hand-on-head-cooling = Potencia frigorífica usada (W)
hand-on-head-day = Día
hand-on-head-day-panels = De los paneles (Wh)
hand-on-head-day-chargers = De los cargadores (Wh)
hand-on-head-day-loads = Consumos (Wh)
hand-on-head-day-unit = Equipo de frío (Wh)
hand-on-head-least = Estado de carga mínimo (%)
hand-on-head-at-end = Estado de carga al final (%)
hand-on-head-warmest = Máxima en la cabina cuando debe funcionar el equipo ({ $unit })
hand-on-head-off = Banco desconectado (h)
hand-on-head-unit-off = Solo el equipo parado (h)
hand-on-head-above = Por encima de la consigna (h)

## Columns and words of the claims

hand-on-head-claim = Dato declarado
hand-on-head-about = Sobre
hand-on-head-claimed = Declarado
hand-on-head-claimed-most = Declarado como máximo
hand-on-head-measured = Medido
hand-on-head-share = Medido sobre declarado (%)
hand-on-head-verdict = Veredicto
hand-on-head-why-none = Por qué no hay incertidumbre
hand-on-claimed-charge = capacidad ({ $unit })
hand-on-claimed-energy = energía ({ $unit })
hand-on-claimed-draw = potencia consumida ({ $unit })
hand-on-claimed-airflow = caudal de aire ({ $unit })
hand-on-claimed-temperature = temperatura ({ $unit })
hand-on-claimed-cooling = potencia frigorífica ({ $unit })
hand-on-claimed-eer = relación de eficiencia energética EER (BTU/Wh)

## Columns and rows of what was asked

hand-on-head-wanted = Horas deseadas (h)
hand-on-size-hours = horas con este banco
hand-on-size-draw = consumo máximo
hand-on-size-depth = profundidad de descarga
hand-on-size-new = mínimo, nuevo
hand-on-size-reserve = con envejecimiento y margen
hand-on-size-batteries = baterías
hand-on-size-runs-new = duración cuando es nuevo
hand-on-size-runs-aged = duración cuando está envejecido

## Columns of the plan

hand-on-head-part = Parte
hand-on-head-origin = Origen
hand-on-head-spread = Incertidumbre (%)
hand-on-head-stated = Introducido o supuesto
hand-on-head-key = Clave
hand-on-stated = introducido
hand-on-assumed = supuesto
