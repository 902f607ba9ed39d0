## What is wrong with a number

finding-plan = El plan
finding-out-of-range = { $field }: { $value } está fuera del intervalo. Se admite: { $range }.
finding-not-a-number = { $field }: esto no es un número. Se admite: { $range }.
finding-too-many = { $field }: hay { NUMBER($count) } en la lista y se responden como máximo { NUMBER($most) }.
finding-none-given = { $field }: añada al menos uno.
finding-bad-table = { $field }: la fila { NUMBER($row) } está fuera de orden. El estado de carga debe subir de fila en fila, la tensión no debe bajar y hacen falta dos filas o más.
finding-bad-map = { $field }: la fila { NUMBER($row) } falta o está incompleta y no se usa. Cada fila necesita los cuatro números y el mapa dos filas o más.
finding-starts-cost =
    { NUMBER($starts) ->
        [one] El equipo arranca una vez, y ese arranque cuesta
       *[other] El equipo arranca { NUMBER($starts) } veces, y esos arranques cuestan en total
    } el { $lost } del frío: el compresor consume antes de que el evaporador esté frío. Una histéresis del termostato mayor o un modo más bajo pierde menos.
finding-no-such-mode = { $field }: esta fila del plan de modos nombra un modo que no está en la lista.
finding-bad-import = { $field }: la hora { NUMBER($row) } está fuera del intervalo, o las listas tienen distinta longitud. Cada hora necesita una temperatura { $temperature } y una irradiancia { $irradiance }.
finding-standby-above-draw = { $field }: { $standby } supera los { $draw } consumidos en marcha. Revise ambos: en espera es lo que toma el equipo con el compresor parado.
finding-no-such-coil = { $field }: ninguna batería de frío da la capacidad de este equipo con { $airflow } y una fracción sensible del { $share }. Revise los tres; el cálculo mantiene esa fracción en todas las condiciones.
finding-open-below-best = { $field }: Voc, { $open }, es menor que Vmp, { $best }, y ningún panel es así. Revise ambos; se toma { $best } como Voc.
finding-no-such-day = { $field }: este mes no tiene día { NUMBER($stated) }. Se usa el último, { NUMBER($taken) }.
finding-wanted-beyond-span = { $field }: se desean { $wanted }, y el día de calor se calcula para { $span } como máximo. Lo que se dice de él vale para estas { $span }.
finding-unreachable = { $field }: ningún valor admitido ({ $range }) da estas horas.

## What was read or assumed

finding-nominal-reading =
    { NUMBER($cells) ->
        [one] «{ $stated }» se lee como { NUMBER($cells) } celda con { $taken } nominales: { $energy } por batería.
       *[other] «{ $stated }» se lee como { NUMBER($cells) } celdas con { $taken } nominales: { $energy } por batería.
    }
finding-amps-at-other-voltage = Los amperios medidos a { $measured } no valen para un banco de { $bank }. Se usa la misma potencia, { $power }.
finding-amps-behind-converter = Los amperios de un equipo tras un convertidor o inversor se leen como potencia: a { $measured } son { $power }.
finding-supply-mismatch = El equipo necesita { $supply } y el banco da { $bank }. Cambie el número de baterías en serie o ponga un convertidor entre ambos.
finding-measured-implausible = Los Wh medidos entre los Ah medidos dan { $mean } de media, donde este banco mostraría unos { $expected }. Revise ambos y las baterías en serie; los Wh medidos no se usan.
finding-measured-load-taken = La medición no indica la carga. Se usa la carga a la corriente nominal, { $load }.
finding-depth-beyond-start = El banco empieza al { $start } y se reserva el { $floor }: no queda nada que usar.
finding-typical-curve = La curva de tensión de esta química es una típica: las horas hasta un corte por tensión son menos seguras.
finding-no-rate-measured = La caída de tensión de estas celdas bajo carga, además de la de su resistencia, no está medida. No se supone ninguna; el margen es mayor cuanto más rápida es la descarga.
finding-rate-not-measured = La descarga es de { $rate } veces los Ah de la batería ({ $rate }C), y tales celdas se midieron hasta { $measured }C. Por encima, la tensión bajo carga es menos segura.
finding-fast-lead-acid = Esta descarga es de { $rate }C. Por encima de 0,3C las baterías de plomo-ácido suelen durar menos de lo que dice el exponente de Peukert habitual, una cuarta parte menos a 0,5C: ponga el exponente que resulta de la tabla de su batería.
finding-equal-sharing = Las horas suponen que { NUMBER($parallel) } ramas reparten la corriente por igual: embarrado, o cables iguales y conexión en diagonal. En el cableado se comprueba la conexión que indique allí o, si falta, la peor.
finding-deep-lead-acid = Las baterías de plomo-ácido con una profundidad de descarga del { $depth } se desgastan pronto; lo habitual es la mitad.
finding-low-above-high = La mínima, { $low }, está por encima de la máxima, { $high }: se intercambian.

## Where imported sun comes from

sun-parts-file = La irradiancia directa y la difusa son las del archivo meteorológico.
sun-parts-one-of-file = El archivo meteorológico solo tiene una de las dos, directa o difusa. La otra es el resto de su total.
sun-parts-estimated = El archivo meteorológico solo tiene la irradiancia total. La directa y la difusa se estiman a partir de ella (Erbs, Klein and Duffie 1982), y la difusa puede errar en un tercio.

## How a typed text was read

entry-trouble = { $field }: introduzca { $range }.
echo-value = leído como { $value }
echo-strings =
    { NUMBER($count) ->
        [one] leído como { NUMBER($count) } rama de { $each }
       *[other] leído como { NUMBER($count) } ramas de { $each }
    }
echo-between = leído como { $value } ±{ $half }
echo-amps = leído como { $amps } a { $volts }
echo-amps-between = leído como { $amps } ±{ $half } a { $volts }
echo-watts = leído como { $watts }: { $amps } a { $volts }
