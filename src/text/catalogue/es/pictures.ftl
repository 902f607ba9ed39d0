## The wiring diagram

picture-wiring = Cableado, esquema unifilar
picture-wiring-hint = Toque un cable para ver sus reglas y fuentes. Visto (✓): soporta la corriente. Cruz: no es suficiente. Rombo: sin comprobar.
picture-wiring-caption = Una línea representa positivo y negativo. Símbolos según IEC 60617: batería, fusible, convertidor, panel fotovoltaico, motor.
picture-bank = Banco
picture-begin-at-bank = Los cables empiezan en sus bornes.
picture-controller = Regulador de carga solar
picture-loads = Otros consumos
picture-not-worked-out = Su cable no se calcula aquí.
picture-beyond-tables = sin comprobar: un valor está fuera de las tablas
# How a path is opened, as it is read out.
picture-opens = { $title }: { $verdict }. Mostrar sus reglas.
picture-counts-as = { $size } (calculado como { $other })
picture-size-in-both = { $size } ({ $other })
picture-each-way = { $length }, solo ida
picture-each-way-assumed = { $length }, solo ida (supuesto)
picture-conductor = { $size }, { $length }
picture-current = { $current } a { $volts }
picture-current-drops = { $current } a { $volts }, caída de tensión { $drop } ({ $percent })
picture-current-would-drop = { $current } a { $volts }; con { $size } la caída de tensión sería { $drop } ({ $percent })
picture-fuse = fusible { $rating }
picture-fuse-missing = fusible no indicado, sirve { $rating }
picture-fuse-none-fits = fusible no indicado, ninguno sirve
picture-panel-fuses =
    { NUMBER($strings) ->
        [one] { $strings } rama, con un fusible de { $rating }
       *[other] { $strings } ramas, un fusible de { $rating } en cada una
    }
# $volts: the panels' open-circuit voltage on the coldest morning.
picture-cold-fits = Voc { $volts } a { $temperature }, límite del regulador { $limit }
picture-cold-fails = no es suficiente: Voc { $volts } a { $temperature }, límite del regulador { $limit }
picture-cold-open = Voc { $volts } a { $temperature }; el límite del regulador no está indicado
picture-batteries = { $count } × { $volts }, { $capacity }, { $chemistry }
picture-string-fuse = Un fusible por rama: { $rating } (recomendado)
picture-dc-converter = Convertidor CC-CC a { $volts }
picture-inverter = Inversor
picture-inverter-rated = Inversor, { $power }
picture-sized-for-mode =
    dimensionado para { $mode ->
        [the-unit] el equipo de frío
       *[named] { $mode }, el modo de mayor consumo
    }
picture-sized-for-rating = dimensionado para toda su potencia nominal
picture-charger = Cargador { $number }, fuente: { $source }
picture-at-most = { $current } como máximo
picture-panels = Paneles, { $power }
picture-panel-groups =
    { NUMBER($groups) ->
        [one] Paneles, { $groups } grupo, { $power }
       *[other] Paneles, { $groups } grupos, { $power }
    }

## The bank, the flows and the claims

picture-the-bank = El banco, batería a batería
picture-the-bank-caption = Cada símbolo es una batería; la placa larga es su positivo. Las ramas en paralelo reparten la corriente según dónde se conectan los cables principales (leyes de Kirchhoff).
picture-many = × { $count }
picture-strings = × { $count } ramas
picture-bank-counts = { NUMBER($series) } en serie, { NUMBER($parallel) } en paralelo
picture-main-cables = Cables principales: { $place }
picture-main-cables-assumed = Cables principales: { $place } (supuesto)
picture-battery-gives = Continua: { $current }
picture-batteries-alike = Todas igual: { $current } cada una
picture-most-loaded = Batería con más corriente: { $current }
picture-of-limit = { $what }, límite { $limit }: { $verdict }
picture-no-limit = { $what }; límite no indicado
picture-at-start = Al arrancar: { $current }
picture-one-open = Con una rama abierta: { $current }
picture-while-charging = Al cargar: { $current }
picture-energy = Adónde va la energía
picture-energy-caption = El ancho de cada banda son sus vatios-hora; ambos lados suman lo mismo.
picture-heat = De dónde viene el calor del habitáculo
picture-heat-caption = Calor que sube la temperatura (calor sensible), en todo el periodo; el ancho de cada banda son sus vatios-hora.
picture-claims = Declarado y medido
picture-claims-caption = El punto es el valor medido y la barra su incertidumbre (k = 2, cerca del 95 %). La línea vertical es lo declarado.
picture-comes-in = entra
picture-goes-out = sale
picture-flow-what = Concepto
picture-flow-direction = Sentido
picture-flow-wh = Energía (Wh)
picture-flow = { $energy }, { $percent }
picture-flow-small = { $energy }, < 1 %
picture-in-all = { $energy } total
picture-from-panels = Paneles
picture-from-chargers = Cargadores
picture-from-bank = Del banco
picture-to-unit = Equipo, convertidor y cable
picture-to-loads = Otros consumos
picture-to-losses = Pérdidas en el banco
picture-to-bank = Al banco
picture-spilled = Solar disponible, no usada
picture-unit-heat = Equipo de frío
picture-heat-sun-glass = Sol por los cristales
picture-heat-out-glass = Sale por los cristales
picture-heat-sun-shell = Sol en paredes y techo
picture-heat-to-sky = Paredes y techo hacia el cielo
picture-heat-glass = Por los cristales
picture-heat-shell = Por paredes y techo
picture-heat-out-shell = Sale por paredes y techo
picture-heat-air-in = Aire que entra
picture-heat-air-out = Aire que sale
picture-heat-people = Personas y animales
picture-heat-things = Otras fuentes de calor
picture-heat-from-store = Cedido por aire, contenido y paredes
picture-heat-to-store = Acumulado en aire, contenido y paredes
picture-measured = medido { $value }
picture-claimed = declarado { $value }
picture-claimed-within = declarado { $value } ±{ $percent } %
