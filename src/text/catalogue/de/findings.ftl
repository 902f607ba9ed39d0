## What is wrong with a number

finding-plan = Der Plan
finding-out-of-range = { $field }: { $value } liegt außerhalb des Bereichs. Zulässig: { $range }.
finding-not-a-number = { $field }: das ist keine Zahl. Zulässig: { $range }.
finding-too-many = { $field }: { NUMBER($count) } sind aufgeführt, höchstens { NUMBER($most) } werden beantwortet.
finding-none-given = { $field }: bitte mindestens eines angeben.
finding-bad-table = { $field }: Zeile { NUMBER($row) } passt nicht. Der Ladezustand muss von Zeile zu Zeile steigen, die Spannung darf nicht fallen, und es braucht zwei Zeilen oder mehr.
finding-bad-map = { $field }: Zeile { NUMBER($row) } fehlt oder ist unvollständig und bleibt außer Betracht. Jede Zeile braucht alle vier Zahlen, ein Kennfeld zwei Zeilen oder mehr.
finding-starts-cost =
    { NUMBER($starts) ->
        [one] Das Gerät startet einmal; dieser Start kostet
       *[other] Das Gerät startet { NUMBER($starts) }-mal; diese Starts kosten zusammen
    } { $lost } der Kühlung: Der Kompressor zieht Strom, bevor der Verdampfer kalt ist. Eine größere Schaltdifferenz oder eine schwächere Betriebsart verliert weniger.
finding-no-such-mode = { $field }: diese Zeile des Betriebsplans nennt eine Betriebsart, die nicht aufgeführt ist.
finding-bad-import = { $field }: Stunde { NUMBER($row) } liegt außerhalb des Bereichs, oder die Listen sind verschieden lang. Jede Stunde braucht eine Temperatur { $temperature } und eine Bestrahlungsstärke { $irradiance }.
finding-standby-above-draw = { $field }: { $standby } ist mehr als die { $draw } im Betrieb. Bitte beides prüfen: Bereitschaft ist, was das Gerät aufnimmt, während der Kompressor steht.
finding-no-such-coil = { $field }: kein Verdampfer bringt die Kälteleistung dieses Geräts mit { $airflow } bei einem sensiblen Anteil von { $share }. Bitte alle drei prüfen; gerechnet wird unter allen Bedingungen mit diesem Anteil.
finding-open-below-best = { $field }: Voc, { $open }, liegt unter Vmp, { $best }; das hat kein Modul. Bitte beides prüfen; als Voc gilt { $best }.
finding-no-such-day = { $field }: dieser Monat hat keinen Tag { NUMBER($stated) }. Es gilt sein letzter, { NUMBER($taken) }.
finding-wanted-beyond-span = { $field }: gewünscht sind { $wanted }, und der heiße Tag ist für höchstens { $span } berechnet. Was darüber gesagt wird, gilt für diese { $span }.
finding-unreachable = { $field }: kein zulässiger Wert ({ $range }) ergibt diese Stunden.

## What was read or assumed

finding-nominal-reading =
    { NUMBER($cells) ->
        [one] „{ $stated }“ wird als { NUMBER($cells) } Zelle mit { $taken } Nennspannung gelesen: { $energy } je Batterie.
       *[other] „{ $stated }“ wird als { NUMBER($cells) } Zellen mit { $taken } Nennspannung gelesen: { $energy } je Batterie.
    }
finding-amps-at-other-voltage = Ampere, gemessen bei { $measured }, gelten nicht für eine Batteriebank mit { $bank }. Es gilt dieselbe Leistung, { $power }.
finding-amps-behind-converter = Ampere am Gerät hinter einem Wandler oder Wechselrichter gelten als Leistung: bei { $measured } sind es { $power }.
finding-supply-mismatch = Das Gerät braucht { $supply }, und die Batteriebank liefert { $bank }. Ändern Sie die Zahl der Batterien in Reihe oder setzen Sie einen Wandler dazwischen.
finding-measured-implausible = Gemessene Wh durch gemessene Ah ergeben im Mittel { $mean }, wo diese Batteriebank etwa { $expected } zeigen würde. Bitte beides prüfen und die Batterien in Reihe; die gemessenen Wh werden nicht verwendet.
finding-measured-load-taken = Die Messung nennt keine Last. Es gilt die Last beim Nennstrom, { $load }.
finding-depth-beyond-start = Die Batteriebank beginnt bei { $start }, und { $floor } bleiben in Reserve: es ist nichts zu nutzen.
finding-typical-curve = Die Spannungskurve dieser Zellchemie ist eine typische: Stunden bis zu einer Abschaltspannung sind weniger sicher.
finding-no-rate-measured = Der Spannungsabfall dieser Zellen unter Last über ihren Widerstand hinaus ist nicht gemessen. Keiner ist angenommen; die Spanne ist weiter, je schneller entladen wird.
finding-rate-not-measured = Entladen wird mit dem { $rate }-Fachen der Ah-Zahl ({ $rate }C), gemessen wurden solche Zellen bis { $measured }C. Darüber ist die Spannung unter Last weniger sicher.
finding-fast-lead-acid = Entladen wird mit { $rate }C. Über 0,3C halten Bleibatterien oft kürzer, als der übliche Peukert-Exponent sagt, bei 0,5C um ein Viertel: Tragen Sie den Exponenten ein, der aus der Tabelle des Herstellers folgt.
finding-equal-sharing = Die Stunden setzen voraus, dass { NUMBER($parallel) } Stränge den Strom gleich teilen: Sammelschienen, oder gleiche Kabel und diagonaler Anschluss. Unter Verkabelung wird der dort angegebene Anschluss geprüft, sonst der ungünstigste.
finding-deep-lead-acid = Bleibatterien altern bei einer Entladetiefe von { $depth } früh; die Hälfte ist üblich.
finding-low-above-high = Die Tiefsttemperatur, { $low }, liegt über der Höchsttemperatur, { $high }: beide werden vertauscht.

## Where imported sun comes from

sun-parts-file = Direkte und diffuse Strahlung kommen aus der Wetterdatei.
sun-parts-one-of-file = Die Wetterdatei hat nur eine von direkter und diffuser Strahlung. Die andere ist der Rest ihrer Summe.
sun-parts-estimated = Die Wetterdatei hat nur die Globalstrahlung. Direkte und diffuse sind daraus geschätzt (Erbs, Klein and Duffie 1982), und die diffuse kann um ein Drittel falsch sein.

## How a typed text was read

entry-trouble = { $field }: Geben Sie { $range } ein.
echo-value = gelesen als { $value }
echo-strings =
    { NUMBER($count) ->
        [one] gelesen als { NUMBER($count) } Strang zu { $each }
       *[other] gelesen als { NUMBER($count) } Stränge zu je { $each }
    }
echo-between = gelesen als { $value } ±{ $half }
echo-amps = gelesen als { $amps } bei { $volts }
echo-amps-between = gelesen als { $amps } ±{ $half } bei { $volts }
echo-watts = gelesen als { $watts }: { $amps } bei { $volts }
