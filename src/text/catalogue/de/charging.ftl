## Recharging the bank: headings

charging-title = Lässt sich die Batteriebank wieder laden?
charging-waiting = Wird berechnet…
charging-no-answer = Noch keine Antwort: Bitte korrigieren Sie die markierten Felder.
charging-sources = Ladequellen
charging-fields = Ladegrenzen und Preise
charging-sun = Nur Sonne
charging-curves = Ladekurven
charging-sky = Himmel
charging-sky-yield = Solarertrag
charging-sky-used = Verbraucht
charging-sky-lowest = Tiefststand
charging-sky-end = Einen Tag später
charging-sky-clear = Klar
charging-sky-overcast = Bedeckt
charging-sky-cloud = { $share } bewölkt
charging-method = Konstantstrom, dann Konstantspannung, exakt auf jedem geraden Stück der Ruhespannungskurve; Blei nach dem kinetischen Zwei-Behälter-Modell (Manwell & McGowan 1993).

## Chargers

charging-shore = Landstrom-Ladegerät
charging-engine = Motor-Ladegerät
charging-generator = Generator
charging-numbered = { $charger } { $number }
-charging-mode =
    { $mode ->
        [the-unit] das Kühlgerät
       *[named] { $mode }
    }

## The answer

charging-nothing = Hier lädt nichts die Batteriebank: Fügen Sie unten Solarmodule oder ein Ladegerät hinzu.
charging-leaves = Nach dieser Nacht bleiben { $from }.
charging-starts = Die Batteriebank beginnt bei { $from }.
charging-by-charger = { $charger }: { $time } von { $from } auf { $goal }.
charging-by-none = Von { $from } aus erreicht kein Ladegerät hier { $goal }.
charging-full-already = Bei { $from } ist nichts nachzuladen.
charging-sun-empty = Mit Sonne allein ist die Batteriebank um { $clock } leer.
charging-sun-keeps-up = Die Sonne deckt alles, was läuft.
charging-sun-almost = Die Sonne von morgen lädt den Verbrauch dieser Nacht fast nach.
charging-sun-by = Die Sonne von morgen lädt den Verbrauch dieser Nacht bis { $clock } nach.
charging-sun-nothing = Die Sonne von morgen lädt nichts vom Verbrauch dieser Nacht nach.
charging-sun-share = Die Sonne von morgen lädt { $share } vom Verbrauch dieser Nacht nach.
# Where charging begins: as typed, after the night with its range, or after a mode at full draw.
charging-from-stated = Von { $likely } aus, wie Sie angegeben haben.
charging-from-night = Ausgehend vom Ladezustand am Morgen, ohne Ladegerät: { $likely } ({ $low } bis { $high }).
charging-from-draw = Ausgehend vom Ladezustand, den { -charging-mode } bei voller Aufnahme übrig lässt: { $likely }.
charging-missing = { $charge } nachzuladen, während ständig { $power } an Verbrauchern laufen.
# Where the days lead.
charging-days-empty = Jeder Tag bringt { $fed } und verbraucht { $used }. Es reicht { $time }, dann ist die Batteriebank leer.
charging-days-falling = Jeder Tag bringt { $fed } und verbraucht { $used }. Bei diesem Verlauf reicht es etwa { $time }, dann ist die Batteriebank leer.
charging-days-full = Jeder Tag bringt { $fed } und verbraucht { $used }. Wieder bei { $goal }, auf 1 % genau: { $time } nach Beginn der ersten Nacht, und an jedem Tag danach.
charging-days-rising = Jeder Tag bringt { $fed } und verbraucht { $used }. Bei diesem Verlauf dauert es etwa { $time } bis { $goal }.
charging-days-level = Jeder Tag bringt { $fed } und verbraucht { $used }. Jeder Tag endet wie der vorige, bei { $last }.

## One charger

charging-never = erreicht es nie
charging-too-long = mehr als { $time }
charging-refused = zu kalt zum Laden
charging-ends-at = endet bei { $percent }
charging-range = { $likely } ({ $low } bis { $high })
charging-range-open = { $likely } (mindestens { $low }; oder nie)
charging-one-phase = Konstantstrom: { $time } mit { $current }. Das Laden endet, bevor die Ladespannung von { $volts } erreicht ist.
-charging-phases = Konstantstrom: { $time } mit { $current }. Konstantspannung: { $held } bei { $volts }
charging-two-phases = { -charging-phases }.
charging-called-full = { -charging-phases }, bis die Batteriebank { $end } aufnimmt, was dieses Ladegerät als voll meldet (bei { $percent } Ladezustand).
charging-cooling = Während { -charging-mode } durchgehend läuft: { $time }.
charging-cooling-not = Während { -charging-mode } durchgehend läuft, lädt es nicht: Die Aufnahme ist größer als das, was es liefert.
charging-cooling-long = Während { -charging-mode } durchgehend läuft: mehr als { $time }.
charging-cooling-below = Während { -charging-mode } durchgehend läuft, erreicht es nur { $percent }.
charging-energy =
    Nimmt { $taken } { $source ->
        [shore] vom Landstrom
        [engine] vom Motor
       *[generator] vom Generator
    } auf, bei { $efficiency } Wirkungsgrad, und liefert { $given }: { $loads } an die Verbraucher, { $lost } Verlust in der Batteriebank.
charging-formula = Von Hand: { $charge } ÷ ({ $charger } − { $loads } für die Verbraucher) = { $time }; dazu kommt, was der fallende Strom ab { $volts } hinzufügt.
charging-fuel = Kraftstoff: { $fuel }.
charging-cost = Kosten: { $price } in Ihrer Währung.
charging-spread = Die Unsicherheit stammt vor allem aus: { $inputs }.

## The sun

charging-runs-empty = wird leer
charging-recharged-by = nachgeladen bis { $clock }
charging-recharged-share = { $share } nachgeladen
charging-sun-course = { $start } um { $start-clock }, Tiefststand { $lowest } um { $lowest-clock }. Einen Tag später { $end } ({ $low } bis { $high }).
charging-sun-idle = Mit dem Kühlgerät ab dem Morgen aus braucht die Sonne { $time } bis { $goal }, Tag und Nacht gezählt.
charging-sun-idle-never = Mit dem Kühlgerät ab dem Morgen aus erreicht auch eine Woche mit solcher Sonne { $goal } nicht.
charging-sun-unused = { $energy } Solarenergie bleiben ungenutzt: Die Batteriebank hat keinen Platz dafür.
charging-empty-at = leer um { $clock }

## What to know of it

charging-no-charger = Im Plan gibt es kein Ladegerät: Nach trüben Tagen lädt nichts die Batteriebank. Fügen Sie bei „Was die Batteriebank lädt“ eines hinzu.
charging-no-panels = Im Plan gibt es keine Solarmodule: Die Sonne bringt nichts.
charging-too-weak = { $charger }: Die Verbraucher nehmen { $loads } von seinen { $current }. Die Batteriebank wird nie voll.
charging-weak-cooling = { $charger }: Mit laufendem Kühlgerät werden nur { $percent } erreicht.
charging-ends-below = { $charger }: Es beendet das Laden bei { $percent }. Für mehr braucht es eine höhere Ladespannung, sofern der Hersteller der Batterie das zulässt.
charging-takes-long = { $charger }: Das würde mehr als { $time } dauern.
charging-fuel-short = { $charger }: Nötig sind { $needed } Kraftstoff, vorhanden sind { $available }.
charging-window =
    { NUMBER($days) ->
        [one] { $charger }: nach der Uhr { $daily } am Tag an, also { NUMBER($days) } Tag.
       *[other] { $charger }: nach der Uhr { $daily } am Tag an, also { NUMBER($days) } Tage.
    }
charging-too-cold = Die Batteriebank wird am Tag nie wärmer als { $bank }: Unter { $limit } darf sie nicht geladen werden.
charging-cold-at-times = Die Batteriebank wird bis zu { $bank } kalt: Unter { $limit } darf sie nicht geladen werden. Nur die Stunden, in denen sie wärmer ist, zählen.
charging-too-hot = Die Batteriebank wird bis zu { $bank } warm: Über { $limit } darf sie nicht geladen werden.
charging-derated = { $charger }: In Luft von { $air } liefert es { $percent } seines Stroms (übliche Praxis, ohne Quelle).
charging-source-limits = { $charger }: Die verfügbaren { $power } lassen höchstens { $current } zu.
charging-above-limit = { $charger }: { $current } sind mehr als die { $limit }, die das Typenschild der Batterien zulässt.
charging-nothing-to-fill = { $from } liegen nicht unter { $goal }: Es gibt nichts nachzuladen.
charging-no-day = Der heiße Tag lässt sich mit diesem Plan nicht rechnen: Sonne zählt nicht, und die Nacht läuft mit voller Aufnahme der Betriebsart.

## The curves

charging-chart-charge = Ladezustand beim Laden
charging-chart-current = Strom in die Batteriebank
charging-axis-charge = Ladezustand, %
charging-axis-hours = Stunden am Ladegerät, Kühlgerät aus
charging-until-filled = Zeit bis { $goal }: { $times }.
charging-item = { $charger } { $time }
charging-none-fills = Kein Ladegerät hier erreicht { $goal }.
charging-current-stays = Der Strom bleibt bis zum Ende konstant.
charging-current-falls = Der Strom bleibt konstant, bis die Ladespannung erreicht ist, und fällt dann bis zu { $time } lang.
