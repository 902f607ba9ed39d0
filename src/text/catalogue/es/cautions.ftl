## Cautions

# In other languages each stands beside its English until a speaker of the trade has read
# it: meaning and numbers must be exactly these.

caution-never-leave = Nunca deje a niños, animales ni a nadie que no pueda salir por sí mismo sin vigilancia y dependiendo de un equipo de frío alimentado por batería. Un vehículo cerrado se calienta unos 1,8 °C (3,2 °F) cada 5 minutos, y la mayor parte de la subida se produce en los primeros 30.
caution-heat-unattended = { caution-never-leave } Con el tiempo previsto en este plan, la cabina cerrada alcanza { $temperature } sin refrigeración.
caution-beyond-fifty-volts = Mientras se carga, el banco está a { $volts }. La tabla de cables y la regla de fusibles que se usan aquí valen para menos de 50 V: por encima rigen otras reglas, y la corriente continua mata y mantiene el arco. Es trabajo para un electricista autorizado.
caution-generator = Use el generador solo al aire libre, a 6 m (20 ft) de toda abertura y con el escape en dirección contraria: su monóxido de carbono mata sin que se note.
caution-engine = No tenga nunca un motor en marcha mientras alguien duerme ni en un espacio cerrado: su monóxido de carbono mata sin que se note. Instale un detector de monóxido de carbono.
caution-runs-at-night = Según el reloj funciona durante la noche de este plan: no duerma cerca.
caution-charged-cold = El litio no debe cargarse por debajo de { $least }, y este banco puede llegar a { $coldest }: mantenga apagados todos los cargadores y los paneles hasta que esté caliente. Cargar celdas congeladas deposita metal y puede provocar un incendio.
caution-lead-acid-gas = Las baterías de plomo desprenden hidrógeno al cargarse. Su compartimento necesita { $air } de aire por hora, con salida al exterior: una abertura de { $opening } abajo y otra arriba.
caution-path-without-fuse = { $circuit }: { $current } y no se ha introducido ningún fusible. Sin él, un cortocircuito calienta el cable hasta que arde.
caution-alternator = Si el BMS desconecta mientras el motor carga, la tensión del alternador se dispara y puede destruir el alternador y la electrónica del vehículo. Instale entre ambos un cargador hecho para ello.
caution-series-beyond-maker = { $count } baterías en serie, y el fabricante admite { $most }: no lo haga.
caution-series-as-allowed = { $count } baterías en serie: solo si el fabricante admite tantas. El BMS de cada una debe soportar la tensión de todo el banco al desconectar.
caution-parallel-as-allowed = { $count } ramas en paralelo: solo como lo admite el fabricante de la batería.
caution-bms-is-no-fuse = El BMS de la batería no sustituye a un fusible: puede fallar en estado cerrado y seguir conduciendo.
caution-fuse-at-source = El fusible va en la fuente de la corriente, lo más cerca posible de la batería y antes de la primera derivación.
caution-copper-only = Solo cobre. El aluminio revestido de cobre (CCA) de igual sección tiene unas 1,6 veces la resistencia y soporta menos corriente: no lo use aquí.
caution-automotive-gauge = El cable que se vende por calibre de automoción (SAE) tiene menos cobre que el calibre americano (AWG) del mismo número.
caution-printed-rating-decides = Lo impreso en el fusible para corriente continua, tensión y poder de corte, prevalece sobre cualquier tabla.
caution-codes-govern = Rigen las normas locales y la práctica de los profesionales autorizados, que pueden exigir más.
caution-local-codes = { caution-codes-govern } Lleve la página impresa a un electricista antes de comprar o instalar nada.
caution-estimates = Esto no sustituye a las normas locales ni a un electricista autorizado. Las estimaciones no son garantías.
# Which bank, where there are several.
caution-of-bank = { $bank }: { $caution }

## Where cautions come from

caution-source-heat = McLaren, Null & Quinn, Pediatrics 116 (2005) e109
caution-source-fifty-volts = Ámbito de 33 CFR 183.425 y 183.455; NFPA 70, capítulo 4 y artículo 480, sin cotejar con el texto de la norma
caution-source-generator = US Consumer Product Safety Commission
caution-source-engine = US Consumer Product Safety Commission sobre el monóxido de carbono, sin cotejar con su texto
caution-source-cold = límite habitual de los fabricantes de celdas
caution-source-gas = 33 CFR 183.420; EN 50272-3 / IEC 62485-3
caution-source-fuse = 33 CFR 183.455; NFPA 70, sección 240.21, sin cotejar con el texto de la norma
caution-source-maker = dato del fabricante, tal como se introdujo
caution-source-gauge = SAE frente a las secciones de ASTM B258; práctica habitual
caution-source-practice = práctica habitual
