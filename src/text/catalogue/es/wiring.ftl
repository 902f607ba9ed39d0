## Wiring and charging: the page

wiring-no-answer = Aún no hay respuesta: corrija los campos marcados.
wiring-circuits = Cable por cable
wiring-circuits-hint = Abra un cable para ver la regla que decide y su fuente. Los tamaños son los menores de cada sistema que cumplen todas las reglas.
wiring-rule = Regla
wiring-yours = El suyo
wiring-passes = cumple
wiring-fails = no cumple
wiring-decides = { $rule } (decide)
wiring-none = ninguno
wiring-sources = Fuentes de las reglas
wiring-the-fuse = Fusible
wiring-recommended = Recomendado: { $fuse }
wiring-place = Ubicación: { $places }.
wiring-kind = Tipo
wiring-breaks = Poder de corte
wiring-here = En este circuito
wiring-kinds-source = Poder de corte de cada tipo: valores típicos, de memoria, por el lado prudente. Consulte la hoja de datos del fusible.
wiring-batteries = Baterías
wiring-for-hours = En continuo
wiring-at-start = En el arranque
wiring-one-open = Una rama desconectada
wiring-charging = En carga
wiring-panels = Paneles
wiring-cautions = Seguridad
wiring-fields = Sus cables
wiring-bank-limits = Límites de las baterías y arranque
wiring-supply = Qué carga el banco
wiring-where = Dónde está la instalación
wiring-take-off = Conexión de los cables principales
wiring-strands = Construcción del conductor
wiring-fuse-kind = Tipo de fusible principal
wiring-not-entered = sin indicar
wiring-engine-space = Pasa por un compartimento del motor
wiring-enclosed = Discurre dentro de una pared, tubo o canal
wiring-mixed = Se combinan baterías de distinta edad, marca o uso
wiring-laid = Instalación y fusible

## The page to take to an electrician

wiring-sheet = Una hoja para el electricista
wiring-sheet-print = Imprimir esta hoja para el electricista
wiring-sheet-title = Cableado, para revisión por un electricista
wiring-sheet-method = Calculado por Till Morning a partir de los datos siguientes. Corriente continua, solo cobre. Un punto de partida para un electricista autorizado: rigen las normas locales.
wiring-sheet-taken = Datos de partida
wiring-assumed = { $text } (supuesto)
wiring-sheet-fault-not-entered = poder de corte: sin comprobar, corriente de cortocircuito no indicada
wiring-sheet-fault = poder de corte: como mínimo { $fault } a { $volts }
wiring-sheet-sign = Revisado por, licencia, fecha:
wiring-sheet-cable = Cable, solo ida
wiring-sheet-amps = Corriente: nominal / tensión mínima / arranque
wiring-sheet-there = Instalado
wiring-sheet-smallest = Tamaño mínimo
wiring-sheet-decided = Decide
wiring-sheet-drop = Caída de tensión, conductor a temperatura de servicio
wiring-nothing-passes = ninguno cumple
wiring-paper-drop = { $drop } ({ $percent }) de { $volts }
wiring-paper-fuse = { $rating } (máximo { $most } en { $conductor }); { $breaking }
wiring-paper-fuse-fitted = { wiring-paper-fuse }; instalado: { $fitted }
wiring-none-fits = ninguno sirve
-wiring-paper-bank = Banco: { $chemistry }; { $series } en serie, { $parallel } en paralelo, cada una de { $volts } y { $charge }; { $nominal } nominal, { $charging } en carga
wiring-paper-bank = { -wiring-paper-bank }.
wiring-paper-bank-lowest = { -wiring-paper-bank }, { $lowest } como mínimo.
wiring-paper-unit = Equipo: { $unit }, directo al banco.
wiring-paper-unit-converter = Equipo: { $unit }, por un convertidor CC-CC a { $volts }, { $rating }.
wiring-paper-unit-inverter = Equipo: { $unit }, por un inversor, { $rating }.
wiring-rating-missing = potencia o corriente nominal sin indicar
wiring-taken-system = Instalación: { $place }. Conexión de los cables principales: { $take-off }. Tensión de carga hasta { $volts }.
-wiring-taken-cable = { $circuit }: aislamiento { $insulation }, terminales { $terminals }, aire { $air }, { $bundle }, { $strands }
wiring-taken-cable = { -wiring-taken-cable }.
wiring-taken-cable-engine = { -wiring-taken-cable }, por un compartimento del motor.
wiring-bundle =
    { NUMBER($count) ->
        [one] { NUMBER($count) } conductor en el mazo
       *[other] { NUMBER($count) } conductores en el mazo
    }

## Names of circuits, fuses, conductors and places

wiring-circuit-distribution = Del banco al cuadro de distribución
wiring-circuit-unit = Al equipo
wiring-circuit-charger = Del cargador al banco
wiring-circuit-panel = De los paneles al regulador
wiring-place-vehicle = en un vehículo
wiring-place-boat = en una embarcación
wiring-place-cabin = en una cabaña o casa
wiring-take-off-same-end = mismo extremo, ambos en la primera batería
wiring-take-off-diagonal = en diagonal, positivo en la primera y negativo en la última batería
wiring-take-off-busbar = embarrado con cables iguales
wiring-strands-fine = flexible de hilo fino, cobre desnudo
wiring-strands-tinned = flexible de hilo fino, cobre estañado
wiring-strands-few = cableado de pocos hilos gruesos
wiring-strands-solid = rígido, de un solo hilo
wiring-fuse-blade = fusible de pala (ATO)
wiring-fuse-strip = fusible de lámina atornillado (ANL)
wiring-fuse-post = fusible sobre el borne de la batería (MRBF)
wiring-fuse-class-t = fusible de clase T
wiring-fuse-breaker = interruptor automático de CC
# The cable of a circuit within a sentence.
-wiring-cable =
    { $circuit ->
        [distribution] el cable al cuadro de distribución
        [unit] el cable al equipo
        [charger] el cable del cargador
       *[panel] el cable de los paneles
    }

## The answer, and verdicts

wiring-carries = suficiente
wiring-fails-because = insuficiente: { $why }
wiring-needs-sizes = aún sin indicar, se necesita { $sizes }
wiring-needs-no-size = aún sin indicar; ningún conductor de las tablas es lo bastante grueso
wiring-not-judged-yet = sin comprobar
wiring-waits-for = sin comprobar, falta: { $names }
wiring-line = { $size }, { $verdict }
wiring-quoted = «{ $name }»
wiring-names-and-more = { $names } y { NUMBER($count) } más
wiring-no-size = ningún tamaño disponible
wiring-headline-yes = Sí, con los datos indicados: el cable al equipo conduce { $current } con una caída de tensión de { $drop }.
wiring-headline-fifty = Solo según tablas que terminan en 50 V, valor que este banco supera en carga: el cable al equipo conduce { $current } con una caída de tensión de { $drop }.
wiring-more-cables =
    { NUMBER($count) ->
        [one] Falta indicar un cable más.
       *[other] Falta indicar { NUMBER($count) } cables más.
    }
wiring-headline-unnamed = Sin comprobar: falta indicar la sección del cable al equipo. Se necesita { $sizes }.
wiring-headline-no-size = Sin comprobar: falta indicar el conductor del cable al equipo, y ninguno de las tablas basta para { $current } a { $length }. Acorte el cable, reduzca la carga o use una tensión de sistema más alta.
wiring-headline-open = Sin comprobar: depende de datos que faltan o son solo estimados. Indique { $names }.
wiring-headline-beyond = Sin comprobar: un dato del cable al equipo queda fuera de las tablas.
wiring-headline-fails = No con los datos indicados: { $troubles }.
wiring-more-troubles =
    { NUMBER($count) ->
        [one] { $troubles }; y { NUMBER($count) } fallo más abajo
       *[other] { $troubles }; y { NUMBER($count) } fallos más abajo
    }

## What is wrong

wiring-trouble-power = ninguna corriente puede llevar la potencia por { -wiring-cable }
wiring-trouble-ampacity = { -wiring-cable } ({ $size }) no es apto para { $current } en continuo
wiring-trouble-drop = { -wiring-cable } tiene una caída de tensión de { $drop }
wiring-trouble-fuse-fit = ningún fusible que soporte la carga protege { -wiring-cable } ({ $size })
wiring-trouble-minimum = { -wiring-cable } no alcanza la sección mínima reglamentaria
wiring-trouble-fuse =
    { $circuit ->
        [distribution] fusible del cable al cuadro de distribución
        [unit] fusible del cable al equipo
        [charger] fusible del cable del cargador
       *[panel] fusible del cable de los paneles
    }: { $fault }
wiring-trouble-battery =
    una batería debe dar { $current } { $when ->
        [start] en el arranque
       *[hours] en continuo
    }, y su límite es { $limit }
wiring-trouble-charging = una batería se carga con { $current }, y su límite es { $limit }
wiring-trouble-panels = los paneles superan el límite del regulador en la mañana más fría
wiring-short-power = ninguna corriente puede llevar la potencia
wiring-short-ampacity = sección insuficiente para la corriente
wiring-short-fuse-fit = ningún fusible sirve
wiring-short-drop = caída de tensión { $drop }
wiring-short-minimum = por debajo de la sección mínima reglamentaria
wiring-short-fuse = fusible: { $fault }

## The rules

wiring-rule-ampacity = Corriente admisible en continuo
wiring-rule-fuse = Fusible adecuado
wiring-rule-drop = Caída de tensión, conductor a temperatura de servicio
wiring-rule-minimum = Sección mínima por resistencia mecánica
wiring-rule-ampacity-source = 33 CFR 183.425, tabla 5 con sus notas; corrección por temperatura según la ecuación de NFPA 70, sección 310.15(B)
wiring-rule-fuse-source = NFPA 70, secciones 210.20(A) y 240.6(A); conductores pequeños en vehículos y cabañas según su tabla 552.10(E)(1). Lo que aquí se cita de NFPA 70 está sin cotejar con el texto de la norma.
wiring-rule-drop-source = Ley de Ohm; cobre según IEC 60028, hilos según IEC 60228 y ASTM B8; el límite lo fija usted (3 % es habitual, sin fuente)
wiring-rule-minimum-source = 33 CFR 183.425(d) y (e)
wiring-needs-ampacity = Como mínimo { $sizes }. Decide la corriente admisible en continuo.
wiring-needs-fuse = Como mínimo { $sizes }. Decide el fusible: debe soportar la carga sin superar la corriente admisible del conductor.
wiring-needs-drop = Como mínimo { $sizes }. Decide la caída de tensión que usted admite.
wiring-needs-minimum = Como mínimo { $sizes }. Decide la sección mínima por resistencia mecánica.
wiring-needs-none = Ningún tamaño de los dos sistemas cumple.
wiring-remedies-any = Cualquiera de estos cambios ayudaría: { $ways }.
wiring-remedies-yours = Ayudaría un conductor mayor, o uno de estos cambios con el suyo: { $ways }.
wiring-remedies-lighter = Solo ayudaría una carga menor o un banco de mayor tensión.
wiring-remedies-larger = Solo ayudaría un conductor mayor.
wiring-remedy-ratings =
    { $parts ->
        [both] aislamiento, terminales y portafusibles
        [insulation] aislamiento
       *[terminals] terminales y portafusibles
    } para { $temperature }
wiring-remedy-air = un lugar donde el aire no llegue a { $temperature }
wiring-remedy-alone = este par solo, fuera del mazo
wiring-remedy-shorter = un tramo más corto, por ejemplo { $length }
wiring-remedy-cut-off = un corte por baja tensión a { $volts } o más, que reduce la corriente
wiring-remedy-two = dos tramos, cada uno con su fusible

## One cable: current, rating and drop

wiring-sized-mode =
    Dimensionado para { $mode ->
        [the-unit] el equipo de frío
       *[named] { $mode }, el modo de mayor consumo
    }.
wiring-sized-rating = Dimensionado para toda la potencia nominal del convertidor o inversor de { $unit }: se le puede conectar cualquier cosa.
wiring-sized-all = Dimensionado para el equipo y todo lo demás que funciona.
wiring-sized-charger = Dimensionado para el cargador { $number }, el de mayor corriente.
wiring-sized-controller = Dimensionado para el regulador de carga solar.
wiring-sized-panels = Dimensionado para { $current } de corriente de cortocircuito, por 1,25 por sol intenso: { $design }. El 125 % del fusible es el segundo 1,25 de la norma.
wiring-current = Corriente: { $current }.
wiring-current-low = Corriente: { $nominal } a tensión nominal, { $low } a { $volts }, la tensión mínima de la fuente; con esta se dimensiona.
wiring-current-start = Unos { $current } por un momento en el arranque.
wiring-ampacity = { $size }: { $table } en la columna de { $column }{ $factors } = { $allowed } en continuo.
wiring-ampacity-none = { $size } es menor de lo que cubre la tabla: sin corriente admisible.
wiring-read-as = { $size }, calculado como { $row }, el calibre inmediatamente inferior
wiring-factor-air = { $factor } por aire a { $temperature }
wiring-factor-bundle = { $factor } por el mazo
wiring-factor-enclosed = { $factor } por el tubo o canal
wiring-drop = { $length }, solo ida: { $cold } ({ $cold-percent }) con el cobre frío, { $hot } ({ $hot-percent }) a { $temperature }, lo máximo que se calienta. Usted admite { $allowed } de { $volts }.
wiring-note-no-room = El aire, a { $air }, alcanza el menor de los límites de aislamiento y terminales, { $rating }: no debe circular corriente.
wiring-note-no-gauge = Ningún calibre hasta 4/0 AWG cumple.
wiring-note-no-metric = Ninguna sección hasta 120 mm² cumple.
wiring-note-no-current = Ninguna corriente puede llevar esa potencia a esa tensión, sea cual sea el tamaño.
wiring-note-solid = El hilo rígido se rompe con la vibración y está prohibido en embarcaciones (33 CFR 183.425(a)).
wiring-note-between = { $size } queda entre dos tamaños y se calcula como el menor.
wiring-note-length = Longitud sin indicar: se supone { $length }.
wiring-note-connections = Terminales, interruptores y portafusibles pierden otros { $volts }, que se restan de lo admisible para el cable.
wiring-note-enclosed = Calculado como instalado en pared o tubo: en un edificio nadie puede ver por dónde pasa.

## The fuse of a cable

wiring-fuse =
    { $rating }: el 125 % de la corriente es { $least }, y este es { $list ->
        [vehicle] un calibre fabricado para vehículos (práctica habitual)
       *[standard] el siguiente calibre normalizado
    }; { $conductor } admite un fusible de { $most } como máximo.
wiring-fuse-none = Ninguno: el 125 % de la corriente es { $least }, y { $conductor } admite un fusible de { $most } como máximo. El conductor debe ser mayor; un fusible menor se fundiría en servicio.
wiring-fuse-start = La corriente de arranque, unos { $current }, supera el fusible por un momento: uno lento lo soporta, uno rápido puede fundirse. Su hoja de datos indica cuánto tiempo.
wiring-fuse-source-bank = La fuente es el banco, sea cual sea el sentido de la corriente: el fusible va en el extremo del banco.
wiring-fuse-marine = En embarcaciones se permitirían aquí hasta { $most } (33 CFR 183.455(c)); no se recomienda.
wiring-fitted-good = El fusible instalado, { $rating }, es adecuado para la carga y el conductor: valen de { $least } a { $most }.
wiring-fitted-wrong = Fusible instalado, { $rating }: { $faults }.
wiring-fitted-kind = El fusible: { $faults }.
# After the words ‘the fuse’.
wiring-fault-above = por encima de lo que admite el conductor, { $most }
wiring-fault-below = se funde en servicio, debe ser de { $least } como mínimo
wiring-fault-far = demasiado lejos de la fuente, como máximo a { $most }
wiring-fault-kind = de un tipo ({ $kind }) que no corta la corriente que puede circular allí
wiring-place-source = en la propia fuente
wiring-place-within = donde no sea posible, a menos de { $distance }
wiring-place-enclosed = a menos de { $distance } si el conductor va protegido o entubado en todo el trayecto
wiring-place-close = lo más cerca posible, y nunca a más de { $distance }
wiring-interrupt-maker = Debe cortar { $current } a { $volts } CC, según la corriente de cortocircuito del fabricante para todas las baterías juntas.
wiring-interrupt-resistance = Debe cortar { $current } a { $volts } CC, según la menor resistencia probable de las baterías. Es mejor un dato del fabricante.
wiring-interrupt-panels = Debe cortar { $current } a { $volts } CC: en cortocircuito los paneles dan poco más que en servicio.
wiring-interrupt-guess = Poder de corte: sin comprobar. Según una estimación de la resistencia podrían circular { $current } a { $volts } CC. Indique { $field }.
wiring-interrupt-far = Un cortocircuito en el extremo lejano de este cable toma { $current }.
wiring-kind-not-at-volts = no a esta tensión
wiring-kind-suits = adecuado
wiring-kind-no-size = no se fabrica en ese calibre
wiring-kind-unsuitable = no adecuado

## Batteries and panels

wiring-when = Cuándo
wiring-whole-bank = Todo el banco
wiring-most-loaded = Batería con más corriente
wiring-limit = Límite
wiring-burden-enough = dentro del límite
wiring-burden-above = por encima del límite
wiring-worst-battery = La batería con más corriente da { $current } de los { $limit } que admite.
wiring-worst-battery-open = La batería con más corriente da { $current }; su límite está sin indicar.
wiring-worst-bank = El banco da { $current } de los { $limit } que admite.
wiring-worst-bank-open = El banco da { $current }; su límite está sin indicar.
wiring-shares = Un reparto igual sería { $even }. La batería con más corriente da { $each }. (Leyes de Kirchhoff sobre baterías y puentes.)
wiring-string-fuse = Cada una de las { NUMBER($count) } ramas necesita su propio fusible: se recomienda { $rating }, si su cable lo admite.
wiring-string-interrupt = Debe cortar { $current }. Adecuado: { $kinds }.
wiring-string-interrupt-none = Debe cortar { $current }, y ningún tipo de esta lista lo hace: consulte al fabricante.
wiring-surge-held = El pico de arranque de { $time } se compara con el límite continuo: no se ha indicado un límite de pico para esa duración.
wiring-solar-short = { $current } de corriente de cortocircuito según la etiqueta: dimensione cable y fusible para 1,25 × 1,25 veces ese valor, { $design } (NFPA 70, sección 690.8; lo que aquí se cita de NFPA 70 está sin cotejar con el texto de la norma).
wiring-solar-short-watts = { $current } de corriente de cortocircuito, calculada a partir de los vatios, un 8 % por encima de la corriente a máxima potencia (práctica habitual): dimensione cable y fusible para 1,25 × 1,25 veces ese valor, { $design } (NFPA 70, sección 690.8; lo que aquí se cita de NFPA 70 está sin cotejar con el texto de la norma).
-wiring-solar-cold = En una mañana a { $temperature } la rama más larga tiene una tensión en circuito abierto de { $volts }
wiring-solar-cold-within = { -wiring-solar-cold }; el regulador admite { $limit } (NFPA 70, sección 690.7).
wiring-solar-cold-above = { -wiring-solar-cold }; el regulador admite solo { $limit }, y un instante por encima puede destruirlo (NFPA 70, sección 690.7).
wiring-solar-cold-open = { -wiring-solar-cold }; lo que admite el regulador está sin indicar (NFPA 70, sección 690.7).
wiring-solar-fuses = { NUMBER($count) } ramas en paralelo: cada una con su propio fusible, { $rating }.
wiring-solar-no-fuses = Menos de tres ramas en paralelo: ninguna necesita fusible propio (NFPA 70, sección 690.9).

## What to know of these numbers

wiring-beyond-tables = { $circuit }: sin comprobar, un dato queda fuera de las tablas.
wiring-no-kind = { $circuit }: ningún tipo de fusible de esta lista se fabrica en ese calibre y corta los { $current } que pueden circular. Ponga a cada rama su propio fusible de clase T y pida sus datos a los fabricantes de la batería y del fusible.
wiring-one-opens = Si una rama se desconecta, a otra le quedan { $current } y admite { $limit }: también se desconectará, y se pierde toda la alimentación.
wiring-fuse-each = { NUMBER($count) } ramas en paralelo: cada una necesita su propio fusible en su borne, porque las demás alimentan un cortocircuito en ella a plena corriente.
wiring-unequal = La conexión de los cables principales exige a una batería más de lo que le toca: { $current } en vez de { $even }. Una conexión en diagonal lo iguala, y un embarrado con cables iguales lo iguala del todo.
wiring-mixed-note = Las baterías de distinta edad, marca o uso no reparten corriente ni carga como aquí se calcula: la vieja marca el final y la nueva se desgasta. No las mezcle.
wiring-precharge = Un inversor o convertidor toma al conectarlo un pico de conexión que puede abrir el BMS y quemar contactos: precargue antes sus condensadores a través de una resistencia.
wiring-inverter-peak = El arranque del equipo pide unos { $start } y el pico del inversor es de { $peak }: puede que no arranque.
wiring-behind-converter = El cable del convertidor o inversor al equipo no se comprueba aquí. Detrás de un inversor es una instalación de 230 V, con los mismos peligros que en casa.
wiring-drops-together = En los dos cables se pierde { $drop } antes del equipo: el máximo habitual es 5 %.
wiring-cold-panels = En la mañana más fría la tensión en circuito abierto de los paneles es { $volts } y el regulador admite { $limit }: un instante así puede destruirlo. Conecte menos en serie.
wiring-controller-open = Los paneles alcanzan { $volts } en la mañana más fría: asegúrese de que el regulador admite más.
wiring-panels-below = Calientes al sol los paneles dan { $best }, y el banco se carga hasta { $charging }: solo un regulador elevador lo llena.
wiring-fuse-panel-strings = { NUMBER($count) } ramas de paneles en paralelo: cada una necesita su propio fusible, porque las demás pueden sobrecargar una en cortocircuito.
wiring-source-practice = práctica habitual
wiring-source-interrupting = poder de corte: valores típicos, de memoria
wiring-source-kirchhoff = leyes de Kirchhoff
wiring-source-drop = nota informativa de NFPA 70, sección 210.19(A), sin cotejar con el texto de la norma
wiring-source-cold = NFPA 70, sección 690.7, sin cotejar con el texto de la norma
wiring-source-strings = NFPA 70, sección 690.9(A), sin cotejar con el texto de la norma
