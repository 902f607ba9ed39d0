## A page for readers

maker-title = Una página para lectores
maker-hint = La misma respuesta con algunos números abiertos: los lectores introducen su propio banco y ven sus propias horas. Su plan va en el enlace; no se guarda ni se envía nada más.
maker-page-title = Título
maker-page-note = Una línea de usted
maker-open = Lo que los lectores pueden cambiar, de uno a cuatro
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
maker-see = Ver la página
maker-copy-link = Copiar su enlace
maker-frame = En una página propia
maker-frame-hint = Un marco que contiene la página como un solo archivo. Solo necesita permiso para scripts y funciona donde el almacenamiento está bloqueado.
maker-copy-frame = Copiar el marco
maker-script-hint = Una vez en esa página, si la altura del marco debe seguir a su contenido:
maker-copy-script = Copiar el script
maker-one-file = La página como un solo archivo, para un servidor propio
