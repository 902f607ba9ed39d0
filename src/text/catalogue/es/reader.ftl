## A page for readers

maker-title = Una página para lectores
maker-hint = La misma respuesta con algunos números abiertos: los lectores introducen su propio banco y ven sus propias horas. Su plan va en el enlace; no se guarda ni se envía nada más.
maker-page-title = Título
maker-page-note = Su mensaje (opcional)
maker-open = Abierto a los lectores (1 a 4)
maker-open-as-one = Si la capacidad o la tensión están abiertas, los lectores ven sus baterías como un solo banco.
# Why a fifth is not taken.
maker-too-many = Como máximo { $most }: quite uno primero.
maker-units = Unidades
maker-units-plan = como en este plan
maker-units-metric = métricas
maker-units-us = EE. UU. (ft, °F, cfm)
maker-theme = Aspecto
maker-theme-device = como lo tenga el dispositivo del lector
maker-theme-light = claro
maker-theme-dark = oscuro
maker-language = Idioma
maker-language-browser = el del navegador, si está disponible
# How this language calls itself: languages are offered by their own names.
maker-see = Ver la página
maker-copy-link = Copiar su enlace
maker-frame = Pegar en su sitio web
maker-frame-hint = Un marco (iframe) con la página como un solo archivo. Solo necesita que se permitan scripts y funciona donde el almacenamiento está bloqueado.
maker-copy-frame = Copiar el HTML
maker-script-hint = Una vez en esa página, si la altura del marco debe seguir a su contenido:
maker-copy-script = Copiar el script
maker-one-file = La página como un solo archivo, para un servidor propio

## The reader's page

reader-yours = Sus números
reader-back = Volver a los números publicados
# What the reader's bank does to the author's numbers.
reader-other-voltage = Su banco tiene una tensión distinta de la publicada: las tensiones de corte y la tensión nominal del equipo se ajustan en la misma proporción.
reader-not-the-measured = Su banco no es el que se midió: la carga y la energía medidas no se tienen en cuenta y vale la etiqueta.
# Names of fields: a bank of one battery is the bank.
reader-capacity = Capacidad del banco
reader-voltage = Tensión del banco
# A field of a mode or a load.
reader-of = { $name }: { $field }
# Why a text is not taken.
reader-trouble = { $label }: introduzca { $accepted }.
reader-on-paper = Regla práctica
reader-on-paper-hint = Una línea por modo. Wh utilizables = tensión nominal × capacidad en Ah × profundidad de descarga.
reader-in-full = Abrir completo
reader-in-full-hint = El plan completo con sus números: lo que se supuso, las curvas y qué tamaño de banco hace falta.
reader-foot = { $page }. Calculado en este navegador; no se envía nada a ninguna parte.
