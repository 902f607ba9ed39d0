## Lists and whole parts

lists-banks = Bancos de baterías
lists-open-circuit = Tabla de tensión en circuito abierto
lists-unit-map = Mapa de rendimiento medido
    .hint = De dos a veinte lecturas en régimen estable de este equipo, mejor a distintas temperaturas exteriores. Fijan cómo cambian el consumo y la capacidad con el aire; las curvas publicadas dan el resto.
lists-units = Equipos de frío
lists-modes = Modos
lists-loads = Otros consumos
lists-imported = Horas de un archivo meteorológico
lists-arrays = Paneles
lists-chargers = Cargadores
lists-mode-plan = Plan de modos
lists-check-ins = Lecturas de la noche
lists-claims = Datos del fabricante

## Bank

bank-battery-nominal-v = Tensión nominal de una batería
bank-battery-rated-ah = Capacidad de una batería
    .hint = Como está impresa. Se entienden «2x100» y «1280 Wh».
bank-rated-hours-h = Tiempo de descarga de la capacidad nominal
    .hint = 20 h es C20.
bank-series-count = Baterías en serie
bank-parallel-count = Baterías o ramas en paralelo
bank-health-percent = Estado de salud (SOH)
bank-start-charge-percent = Estado de carga al inicio
bank-depth-percent = Profundidad de descarga máxima
    .hint = Parte de la capacidad que está dispuesto a usar.
bank-cutoff-v = Tensión de corte de la batería
    .hint = En los bornes del banco. Litio: corte por baja tensión del BMS; plomo: tensión final de descarga.
bank-battery-current-limit-a = Corriente continua máxima de una batería
    .hint = Vacío: no se comprueba ningún límite.
bank-battery-resistance-mohm = Resistencia interna de una batería
bank-polarisation-percent = Polarización, parte de la habitual
    .hint = Caída de tensión además de la resistencia interna, mayor con mucha corriente y con frío. Una resistencia de etiqueta o de instrumento no la incluye; la de un ensayo de carga de minutos sí: entonces 0 %.
bank-peukert-exponent = Exponente de Peukert
bank-parasitic-w = Consumo en reposo del BMS y del monitor
bank-measured-ah = Capacidad medida, banco completo
    .hint = De llena al corte de la propia batería. Sustituye a la capacidad nominal y al estado de salud.
bank-measured-wh = Energía medida, banco completo
    .hint = En los bornes, en la misma prueba.
bank-measured-load-w = Carga durante esa medición

## Cooling unit's supply and cable

unit-supply-v = Tensión nominal de alimentación
unit-cutoff-v = Corte por baja tensión del equipo
    .hint = En los bornes del equipo, después del cable. Vacío: ninguno.
unit-cable-length-m = Longitud del cable, solo ida
unit-cable-area-mm2 = Sección del conductor
    .hint = «16», «16 mm2» o «6 AWG». Vacío: sin comprobar, y las horas suponen 16 mm².
unit-cable-temperature-c = Temperatura del conductor
unit-connections-mohm = Resistencia de fusibles, interruptores y terminales
unit-output-v = Tensión de salida del convertidor
unit-efficiency-percent = Rendimiento del convertidor
unit-idle-w = Consumo en vacío del convertidor
unit-limit-a = Límite de corriente del convertidor
unit-no-load-w = Consumo en vacío del inversor
unit-proportional-loss-percent = Pérdida proporcional del inversor
unit-square-loss-percent-per-kw = Pérdida cuadrática del inversor
unit-limit-w = Potencia continua del inversor
unit-inverter-cutoff-v = Corte por baja tensión del inversor
    .hint = En su entrada, después del cable. Vacío: ninguno.

## Modes, night and loads

mode-power-w = Consumo en marcha
    .hint = Vatios que toma el equipo mientras funciona.
mode-current-a = Corriente en marcha
    .hint = Amperios que toma el equipo mientras funciona.
mode-measured-at-v = Tensión a la que se midió
mode-duty-percent = Ciclo de trabajo del compresor
mode-standby-w = Consumo en espera, compresor parado
mode-cooling-w = Capacidad frigorífica en marcha
night-start-clock-min = Hora de inicio
night-wanted-h = Horas deseadas
night-ageing-percent = Dimensionar para esta capacidad restante
    .hint = El banco se dimensiona para que aún baste cuando el envejecimiento solo deje esto.
night-margin-percent = Margen adicional
load-power-w = Consumo

## The hot day

day-days-count = Días
day-year = Año
day-month = Mes
day-day-of-month = Día del mes
day-utc-offset-min = Desfase del reloj respecto a UTC
day-latitude-deg = Latitud, norte positiva
day-longitude-deg = Longitud, este positiva
day-altitude-m = Altitud
day-high-c = Máxima del día
day-low-c = Mínima de la noche
day-dew-point-c = Punto de rocío exterior
day-humidity-percent = Humedad relativa a la máxima
day-cloud-percent = Nubosidad
day-linke-turbidity = Turbiedad (de Linke)
day-wind-m-s = Velocidad del viento
day-ground-albedo-percent = Reflectancia del suelo (albedo)
day-samples-count = Noches simuladas
day-seed-number = Semilla aleatoria

## The cabin

cabin-inside-length-m = Longitud interior
cabin-shade-percent = Sombra
cabin-people-count = Personas
cabin-animals-count = Animales
cabin-animal-kg = Peso de cada animal
cabin-away-from-clock-min = Todos fuera desde
cabin-away-until-clock-min = De vuelta a las
cabin-air-changes-per-h = Renovaciones de aire
cabin-aired-changes-per-h = Renovaciones de aire con todo abierto
cabin-set-point-c = Temperatura de consigna
cabin-dead-band-k = Histéresis del termostato, de encendido a apagado
cabin-start-c = Temperatura interior al inicio
cabin-gains-w = Otras fuentes de calor interiores
cabin-floor-m2 = Superficie del suelo
cabin-volume-m3 = Volumen de aire
cabin-roof-m2 = Superficie del techo
cabin-walls-m2 = Superficie de las paredes
cabin-wall-glass-m2 = Superficie de las ventanas
cabin-roof-glass-m2 = Superficie de las claraboyas
cabin-lit-walls-percent = Parte de las paredes que alcanza el sol
cabin-shell-w-m2-k = Valor U de paredes y techo
cabin-glass-w-m2-k = Valor U del vidrio
cabin-glass-gain-percent = Factor solar (SHGC)
cabin-absorptance-percent = Absortancia solar exterior
cabin-air-capacity-kj-k = Capacidad térmica del aire y el contenido
cabin-shell-capacity-kj-k = Capacidad térmica de la envolvente
cabin-moisture-buffer = Humedad retenida por revestimiento y ropa de cama

## What the cooling unit gives

cooling-cooling-w = Capacidad a plena carga en condiciones nominales
cooling-cop = COP
cooling-rated-outdoor-c = Temperatura exterior nominal
cooling-rated-wet-bulb-c = Bulbo húmedo de entrada nominal
cooling-floor-percent = Capacidad mínima
cooling-airflow-m3-h = Caudal de aire por la batería de frío
cooling-sensible-percent = Fracción sensible
cooling-intake-rise-k = Aire de entrada al condensador sobre el ambiente
cooling-start-loss-min = Frío perdido en cada arranque
    .hint = Minutos a plena capacidad: el compresor consume antes de que el evaporador esté frío. Ninguno con velocidad variable.

## A reading of the performance map

map-outdoor-c = Aire de entrada al condensador
map-entering-wet-bulb-c = Bulbo húmedo de entrada
map-draw-w = Consumo
map-cooling-w = Capacidad total

## Charge controller, panels and chargers

supply-controller-limit-a = Límite de corriente del regulador
supply-controller-limit-v = Tensión máxima de entrada del regulador
supply-controller-efficiency-percent = Rendimiento del regulador
supply-panel-power-percent-per-k = Coeficiente de temperatura de Pmax
supply-panel-volts-percent-per-k = Coeficiente de temperatura de Voc
supply-array-loss-percent = Pérdida por polvo, cable y edad
supply-bank-c = Temperatura del banco
supply-refill-from-percent = Recargar desde
supply-refill-to-percent = Recargar hasta
supply-fuel-price-per-l = Precio del combustible por litro
supply-shore-price-per-kwh = Precio de la toma de red por kWh
array-rated-w = Potencia nominal, todos estos paneles
array-tilt-deg = Inclinación
array-azimuth-deg = Orientación, en sentido horario desde el norte
array-shading-percent = Pérdida por sombra
array-panels-series-count = Paneles en serie
array-panels-parallel-count = Ramas de paneles en paralelo
array-panel-best-v = Vmp de un panel
array-panel-open-v = Voc de un panel
array-panel-short-a = Isc de un panel
charger-most-a = Corriente máxima del cargador
charger-efficiency-percent = Rendimiento del cargador
charger-hold-v = Tensión de carga (absorción, CV)
charger-from-clock-min = Encendido desde
charger-until-clock-min = Encendido hasta
charger-source-w = Potencia disponible para el cargador
charger-fuel-l = Combustible disponible
charger-fuel-l-per-kwh = Combustible por kWh
mode-row-from-clock-min = Desde
check-in-clock-min = Hora
check-in-day-count = Noches anteriores a esa
check-in-charge-percent = Estado de carga según el monitor
check-in-cabin-c = Temperatura interior

## Claims

claim-claimed = Declarado
claim-claimed-most = Declarado, hasta
claim-measured = Medido
claim-tolerance-percent = Tolerancia indicada en la declaración
claim-of-reading-percent = Límite de error, de la lectura
claim-of-full-scale-percent = Límite de error, del fondo de escala
claim-full-scale-number = Fondo de escala del instrumento
claim-counts-number = Límite de error, cuentas del último dígito
claim-one-count-number = Valor de una cuenta
claim-measured-min = Duración de la medición
claim-rate-a = Corriente media de la prueba
claim-test-c = Temperatura en la prueba
claim-rated-c = Temperatura de la declaración
claim-grille-m2 = Área libre de la rejilla

## Air side

air-altitude-m = Altitud
air-inlet-c = Temperatura del aire a la entrada
air-inlet-humidity-percent = Humedad relativa a la entrada
air-outlet-c = Temperatura del aire a la salida
air-outlet-humidity-percent = Humedad relativa a la salida
air-airflow-m3-h = Caudal de aire
air-free-area-m2 = Área libre de la rejilla
air-power-w = Consumo en el mismo momento

## Price

price-price-number = Precio pagado por el banco
price-cycles-count = Ciclos de vida declarados
price-cycle-depth-percent = Profundidad de descarga en cada ciclo
price-left-percent = Capacidad restante tras esos ciclos

## Wiring

wiring-distribution-m = Cable, solo ida
    .hint = Vacío: los cables empiezan en el banco. La pregunta 1 también cuenta este cobre.
wiring-one-way-m = Cable, solo ida
wiring-conductor-mm2 = Sección del conductor
    .hint = «16», «16 mm2» o «6 AWG». Cobre.
wiring-start-a = Corriente de arranque del equipo
wiring-start-ms = Duración de ese arranque
wiring-inverter-peak-w = Potencia de pico del inversor
wiring-battery-peak-a = Corriente de pico de una batería
    .hint = Vacío: el arranque se compara con su límite continuo.
wiring-battery-peak-ms = Duración admisible de ese pico
wiring-battery-charge-a = Corriente de carga máxima de una batería
wiring-charge-least-c = Corte de carga por baja temperatura
wiring-battery-fault-a = Corriente de cortocircuito de una batería
    .hint = Según su hoja de datos. Vacío: se calcula con la tensión y la menor resistencia probable.
wiring-link-mohm = Resistencia de una unión entre baterías
    .hint = Con sus terminales; con embarrado, un cable.
wiring-most-series-count = Baterías en serie que permite el fabricante
wiring-coldest-c = Mañana más fría del año
installation-insulation-c = Temperatura nominal del aislamiento
installation-terminal-c = Menor temperatura nominal de los bornes
installation-air-c = Aire más caliente alrededor
installation-bundled-count = Conductores en el mazo
    .hint = Los que llevan corriente, incluidos los dos de este circuito.
installation-allowed-drop-percent = Caída de tensión admisible
installation-fuse-a = Fusible instalado
    .hint = Como está impreso. Vacío: se recomienda uno.
installation-fuse-along-m = Distancia del fusible a la fuente

## Chemistries

chemistry-lfp = LFP (litio hierro fosfato)
chemistry-nmc = NMC (litio níquel manganeso cobalto)
chemistry-sodium-ion = Ion de sodio
chemistry-agm = Plomo-ácido AGM
chemistry-gel = Plomo-ácido de gel
chemistry-flooded = Plomo-ácido abierto (líquido)

## Where a number comes from

origin-label = etiqueta
origin-measured = medido
origin-guess = estimado
origin-question = { $field }: de dónde viene el número
