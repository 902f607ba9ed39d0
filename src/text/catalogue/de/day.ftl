## Diagramme

day-temperatures = Kabine und draußen
day-charge = Ladezustand
day-power = Ladung und Verbrauch
day-axis-celsius = °C
day-axis-fahrenheit = °F
day-axis-charge = %
day-axis-power = W: Ladung oben, Verbrauch unten
day-cabin = Kabine
day-outdoors = Draußen
day-set-point = Sollwert
day-from-reading = Ab jetzt
day-charge-short = Ladung
day-sun-in = Module
day-charger-in = Ladegeräte
day-loads-out = Verbraucher
day-unit-out = Gerät
day-charts-hint = Berühren Sie ein Diagramm oder benutzen Sie die Pfeiltasten, um alle drei abzulesen. Dunkel: zwischen Sonnenuntergang und Sonnenaufgang. Das Band umfasst 19 von 20 simulierten Tagen; die Linie gilt für die Zahlen des Plans.
day-band-coming = Das Band wird berechnet…
day-band-stale = Das Band gehört noch zu den vorigen Zahlen.
day-band-none = Kein Band: Die Zahl der simulierten Nächte ist 0.

## Überschriften und kurze Texte der Seite

day-no-answer = Noch keine Antwort für diese Tage: Berichtigen Sie die unten genannten Felder.
day-events = Ereignisse nach Zeit
day-by-day = Tag für Tag
day-books = Rechenweg zeigen
day-energy-book = Energiebilanz der Batteriebank
day-heat-book = Wärmebilanz der Kabine
day-method = Sonnenstand: Meeus, Astronomical Algorithms (2nd ed.). Klarer Himmel: Ineichen and Perez (Solar Energy 73, 2002) mit der angegebenen Linke-Trübung. Temperaturen im Tageslauf: stündliche Anteile nach ASHRAE Handbook of Fundamentals (2009 und später). Wärme: zwei Speicher, Luft und Hülle, Sonne auf der Außenseite als Sol-Air-Temperatur nach demselben Handbuch. Leistung und Aufnahme des Geräts: veröffentlichte Laborkurven von Raumklimageräten. Zwischen zwei Schaltvorgängen ist die Kabinentemperatur exakt; Schaltpunkte, leere Batteriebank und Abschaltungen werden auf die Zeit genau bestimmt.
day-start = Diese Tage
day-from-file = Temperatur und Sonne jeder Stunde stammen aus der Wetterdatei; der Höchstwert hier verschiebt deren Temperaturen.
day-rests-on = Eingaben
day-weather = Ort, Datum und Wetter
day-weather-hint = Ein Klima füllt jedes leere Feld; seine Zahlen sind für diese Seite erfunden. Besser ist eine Vorhersage für Ihren Ort, noch besser eine Wetterdatei.
day-climate = Klima
day-my-place = Meine Position übernehmen
day-today = Heutiges Datum übernehmen
day-weather-rest = Luft und Boden im Einzelnen
day-place-asked = Die Position wird beim Gerät abgefragt…
day-place-taken = Breite, Länge und Uhr sind vom Gerät übernommen. Es wird nichts übertragen.
day-place-refused = Der Browser gibt die Position nicht frei. Geben Sie Breite und Länge ein oder wählen Sie ein Klima.
day-place-missing = Das Gerät kennt seine Position nicht. Geben Sie Breite und Länge ein oder wählen Sie ein Klima.
day-weather-file = Stundenwerte aus einer Wetterdatei
day-weather-file-hint = EPW, TMY2, TMY3 oder eine Tabelle mit den Spalten hour, temperature und irradiance (W/m², horizontal); zusätzlich möglich: dni (direkt, senkrecht zur Sonne) und dhi (diffus, horizontal). Datei auswählen oder hierher ziehen; sie wird auf diesem Gerät gelesen.
day-pick-weather = Wetterdatei auswählen
day-forget-weather = Wetterdatei entfernen
day-stretch = Tage aus der Datei
day-stretch-hottest = die heißesten
day-stretch-date = ab dem Datum oben
day-stamp = In einer Tabelle ist die Sonne einer Stunde der Mittelwert
day-stamp-before = der Stunde davor
day-stamp-about = der halben Stunden davor und danach
day-stamp-after = der Stunde danach
day-the-cabin = Die Kabine
day-body = Art der Kabine
day-insulation = Dämmung
day-colour = Farbe außen
day-glazing = Fenster
day-covers = Fensterabdeckung
day-derived = Abgeleitete Werte
day-derived-hint = Ein leeres Feld zeigt den Wert, der aus den Antworten oben folgt. Eine Zahl, die Sie hier eingeben, ersetzt ihn.
day-the-unit = Leistung des Kühlgeräts
day-unit-hint = Bleibt das Feld leer, gilt die Leistungszahl eines einfachen Fenstergeräts. Mit der Kälteleistung vom Typenschild oder einer eigenen Messung ist die Antwort sicherer.
day-curves = Leistungskennlinien
day-add-map-row = Messung hinzufügen
day-remove-map-row = Diese Messung entfernen
day-map-row = Messung
day-control = Regelung
day-mode-plan = Betriebsplan nach Uhrzeit
day-mode-plan-hint = Jeden Tag gleich: ab jeder Uhrzeit die Betriebsart daneben. Solange nichts läuft, gelten Türen und Dachluke als offen.
day-add-mode-row = Uhrzeit hinzufügen
day-clear-mode-plan = Betriebsplan entfernen
day-remove-mode-row = Diese Uhrzeit entfernen
day-mode-row = Betrieb
day-mode-off = nichts
day-mode-plan-taken = Kein Betriebsplan angegeben. Aus den gewünschten Stunden folgt: { $modes }.
day-supply = Was die Batteriebank lädt
day-drawn = Simulierte Nächte
day-drawn-hint = Mehr simulierte Nächte machen die Wahrscheinlichkeiten genauer und dauern länger. Ein anderer Startwert des Zufallsgenerators zeigt, wie viel davon Zufall ist.
day-changes = Was helfen würde
day-changes-coming = Die Änderungen werden einzeln geprüft…
day-changes-none = Keine Änderung zu prüfen: Der Plan lässt sich nicht rechnen.
day-changes-rest = Weitere geprüfte Änderungen
day-changes-hint = Jede Änderung für sich an diesen Tagen, mindestens drei. Geordnet nach Stunden bis leer, dann nach Stunden am Sollwert, dann nach verbleibender Energie. Gewichte sind übliche Werte (gängige Praxis, ohne Quelle).
day-try-change = Ausprobieren
day-try-change-of = Im Plan ausprobieren: { $what }
day-bedtime = Späteste Zeit zum Zurückschalten
day-bedtime-coming = Die späteste Zeit wird gesucht…
day-bedtime-none = Vor der gewünschten Uhrzeit ist keine Betriebsart geplant, also gibt es nichts umzuschalten.
day-longest = Die längste kühle Nacht
day-longest-coming = Betriebspläne werden durchsucht…
day-longest-none = Es ist keine Betriebsart geplant, oder der Plan lässt sich nicht rechnen.
day-take-longest = Als Betriebsplan übernehmen
day-enough = Wie viel reicht?
day-enough-coming = Wird gesucht…
day-enough-none = Nichts zu berechnen: Der Plan lässt sich nicht rechnen, oder dieser Teil fehlt noch. Fügen Sie ihn zuerst hinzu.
day-take-enough = In den Plan übernehmen
day-check-ins = Ablesungen in der Nacht: Monitor und Thermometer
day-checked = Die Nacht nach Ihren Ablesungen
day-take-fit = Angepasste Werte in den Plan übernehmen
day-check-in = Ablesung
day-check-in-hint = Was Monitor und Thermometer jetzt anzeigen, nach derselben Uhr wie der Start.
day-check-in-log = Besser passt die Aufzeichnung einer ganzen Nacht mit Thermometer den Plan an: Geben Sie sie unter „{ $question }“ an.
day-add-check-in = Ablesung hinzufügen, jetzt
day-remove-check-in = Diese Ablesung entfernen
day-panels = Module
day-array = Modulgruppe
day-add-array = Module hinzufügen
day-remove-array = Diese Module entfernen
day-no-array = Keine Module laden die Batteriebank.
day-mounting = Montage
day-panel-sheet = Aus dem Datenblatt des Moduls
day-controller = Laderegler
day-controller-rest = Laderegler und Verluste
day-chargers = Ladegeräte
day-charger = Ladegerät
day-add-charger = Ladegerät hinzufügen
day-remove-charger = Dieses Ladegerät entfernen
day-no-charger = Kein Ladegerät lädt die Batteriebank.
day-fed-by = Gespeist durch
day-bank-warmth = Temperatur der Batteriebank
day-bank-place = Ort der Batteriebank

## Zeitpunkte und Daten

day-moment-of-date = { $date }, { $clock }
day-moment-night = Nacht { $number }, { $clock }
day-moment-morning = Morgen { $number }, { $clock }
day-moment-afternoon = Nachmittag { $number }, { $clock }
day-moment-next-day = { $clock } am nächsten Tag
day-of-date = { $weekday } { $day }. { $month }
day-of-month = { $day }. { $month }
day-of-weekday = { $weekday } { $day }.
day-of-number = Tag { $day }
day-weekday-mon = Mo
day-weekday-tue = Di
day-weekday-wed = Mi
day-weekday-thu = Do
day-weekday-fri = Fr
day-weekday-sat = Sa
day-weekday-sun = So
day-month-jan = Jan.
day-month-feb = Feb.
day-month-mar = März
day-month-apr = Apr.
day-month-may = Mai
day-month-jun = Juni
day-month-jul = Juli
day-month-aug = Aug.
day-month-sep = Sept.
day-month-oct = Okt.
day-month-nov = Nov.
day-month-dec = Dez.
# Stand as $until in the sentences below.
day-until = bis { $moment }
day-until-clock = bis { $clock }
day-for-duration = für { $duration }
-day-mode =
    { $mode ->
        [the-unit] das Kühlgerät
       *[named] { $mode }
    }
-day-mode-first =
    { $mode ->
        [the-unit] Das Kühlgerät
       *[named] { $mode }
    }
-day-mode-of =
    { $mode ->
        [the-unit] des Kühlgeräts
       *[named] von { $mode }
    }
-day-mode-dative =
    { $mode ->
        [the-unit] dem Kühlgerät
       *[named] { $mode }
    }

## Die Antwort

day-no-mode = keiner Betriebsart
day-modes-then = { $first }, dann { $last }
day-lasts-all = Es reicht für alle { $days }: Mit { $modes } jede Nacht sinkt die Batteriebank nicht unter { $least }.
day-lasts = Es reicht { $until }: Mit { $modes } sinkt die Batteriebank nicht unter { $least }.
day-lasts-then-empty = Es reicht die Nacht über, { $until }; leer ist die Batteriebank etwa { $moment }.
day-does-not-last = Es reicht nicht { $until }: Mit { $modes } ist die Batteriebank etwa { $moment } leer; sie reicht { $duration }.
# The same where there is one mode without a name.
day-lasts-all-plain = Es reicht für alle { $days }: Die Batteriebank sinkt nicht unter { $least }.
day-lasts-plain = Es reicht { $until }: Die Batteriebank sinkt nicht unter { $least }.
day-does-not-last-plain = Es reicht nicht { $until }: Die Batteriebank ist etwa { $moment } leer; sie reicht { $duration }.
day-nothing-cooled = Es ist keine Betriebsart geplant, also wird nichts gekühlt.
day-stays-cool = Die Kabine bleibt in dieser Nacht dennoch bei höchstens { $warmest }.
day-keeps-set-point = In der ersten Nacht hält die Kabine ihre { $set }: nach dem Abkühlen höchstens { $warmest }.
day-loses-set-point = Die Kabine hält ihre { $set } nicht: Gegen { $moment } ist sie wärmer, nach dem Abkühlen höchstens { $warmest }.
day-duty-from-weather = Wie lange der Kompressor läuft, folgt hier aus Wetter und Thermostat; die Einschaltdauer von oben gilt nicht.
day-warmest-in-all = Wärmster Wert in den Stunden, in denen das Gerät laufen soll, über alle { $days }: { $warmest } (Abkühlen eingerechnet).
day-unit-stopped-for = Das Kühlgerät steht { $duration } lang still, obwohl es laufen soll: Ende { $stop }. Alles andere läuft weiter.
day-chance-certain = fast sicher
day-chance-none = fast ausgeschlossen
day-chance-under-tenth = weniger als 10 %
day-chance-over-nine = mehr als 90 %
day-chance-tens = etwa { $share }
day-odds-lasting = Reicht { $until }: { $chance }.
day-odds-holding = Hält auch { $set }: { $chance }.
day-odds-never-empty = Nie leer, über { $days }: { $chance }.
day-odds-assume = Wahrscheinlichkeiten aus { NUMBER($count) } { NUMBER($count) ->
        [one] simulierten Tag
       *[other] simulierten Tagen
    }: Jede Zahl streut innerhalb ihrer Unsicherheit, unabhängig von den anderen. Nicht enthalten: eine Vorhersage, die die ganze Woche in dieselbe Richtung irrt, und was nicht im Plan steht. Geprüft ist diese Rechnung, nicht die Unsicherheiten.
day-ends = Ende: { $stop }.
day-ends-at-start = Das ist beim Einschalten { -day-mode-of }: Die Verbraucher allein trägt die Batteriebank.
day-ends-after = An 39 von 40 simulierten Tagen ist das nach { $low }, an manchen gar nicht.
day-ends-between = An 19 von 20 simulierten Tagen ist das zwischen { $low } und { $high }.
day-warmest-between = Die wärmste Kabine der Nacht liegt nach dem Abkühlen zwischen { $low } und { $high }.

## Ereignisse

day-mark-empty = leer
day-mark-back-on = wieder an
day-mark-full = voll
day-mark-unit-stops = Gerät stoppt
day-mark-too-warm = zu warm
day-mark-cool-again = am Sollwert
day-mark-unit-off = Gerät aus
day-mark-no-charging = lädt nicht
day-mark-charging-again = lädt wieder
day-mark-fuel-gone = Tank leer
day-event-empty = Alles an der Batteriebank ist aus: { $stop }.
day-event-empty-at-start = Alles an der Batteriebank ist aus: Das Einschalten { -day-mode-of } beendet den Betrieb, { $stop }. Die Verbraucher allein trägt die Batteriebank.
day-event-back-on = Die Batteriebank ist wieder ausreichend geladen: Verbraucher und Gerät gehen wieder an.
day-event-full = Die Batteriebank ist voll.
day-event-unit-stopped = Nur das Kühlgerät stoppt, { $stop }.
day-event-too-warm = Zu warm: Die Kabine liegt über dem Sollwert samt Schaltdifferenz.
day-event-cool-again = Die Kabine ist wieder am Sollwert.
day-event-mode-begins = { -day-mode-first } beginnt.
day-event-unit-off = Das Kühlgerät ist laut Plan aus; Türen und Dachluke sind offen.
day-event-charging-refused = Die Batteriebank hat { $temperature } und nimmt keine Ladung an: Lithium weder unter dem Gefrierpunkt noch heiß laden.
day-event-charging-again = Die Batteriebank nimmt wieder Ladung an.
day-event-fuel-gone = Der Kraftstoff des Generators ist verbraucht.

## Was die Diagramme zeigen

day-outdoors-from-to = Draußen: { $low } bis { $high }.
day-unit-off-cabin-hot = Bei ausgeschaltetem Gerät erreicht die Kabine { $temperature }: Lassen Sie keinen Menschen und kein Tier darin zurück.
day-lowest-charge = Tiefster Stand: { $least } ({ $moment }). Am Ende: { $end }.
day-in-panels = Module { $energy }
day-in-chargers = Ladegeräte { $energy }
day-in-store = aus der Batterie { $energy }
day-in-and-out = Ladung über { $days }: { $ways_in }. Verbrauch: Gerät { $unit }, Verbraucher { $loads }.

## Was zuerst zu wissen ist

day-all-off-for = Alles Elektrische ist an diesen Tagen { $duration } lang aus: auch Lampen, Lüfter und Kühlschrank.
day-too-warm-for = Zu warm, { $duration } lang, während das Gerät laufen soll: über { $set } samt Schaltdifferenz.
day-runs-down = Jeder Tag entnimmt der Batteriebank etwa { $energy } mehr, als hineinkommt.
day-spilled = Die Module könnten { $energy } mehr liefern: Die Batteriebank ist dann schon voll.
day-no-weather = Kein Wetter angegeben: Angenommen ist ein heißer Tag auf einer hohen Salzseeebene, 38° N.

## Bilanzen

day-head-from = Tag, ab { $clock }
day-head-panels = Module, Wh
day-head-chargers = Ladegeräte, Wh
day-head-unit = Gerät, Wh
day-head-loads = Verbraucher, Wh
day-head-least = Tiefster Stand
day-head-end = Am Ende
day-energy-panels = Von den Modulen, nach dem Laderegler
day-energy-chargers = Von Ladegeräten
day-energy-store = Aus der gespeicherten Ladung der Batteriebank
day-energy-unit = Zum Kühlgerät, seinem Wandler und Kabel
day-energy-loads = Zu den anderen Verbrauchern
day-energy-lost = Als Wärme in der Batteriebank verloren
day-energy-spilled = Von den Modulen verfügbar, nicht genutzt
day-energy-fuel = Verbrauchter Kraftstoff
day-heat-sun-glass = Sonne durch Glas
day-heat-sun-shell = Sonne auf Wänden und Dach
day-heat-glass = Wärmeleitung durch Glas
day-heat-shell = Wärmeleitung durch Wände und Dach
day-heat-air = Luftwechsel
day-heat-people = Menschen und Tiere
day-heat-gains = Andere Quellen im Innern
day-heat-unit = Vom Gerät abgeführt
day-heat-stored = In Luft, Einrichtung, Wänden und Dach gespeichert
day-heat-condensed = Vom Gerät auskondensiertes Wasser
day-heat-latent = Latente Wärme dieses Wassers

## Änderungen, die Stunden bringen

day-change-string =
    { $kind ->
        [battery] Eine Batterie mehr parallel (zusammen { NUMBER($count) })
       *[string] Ein Batteriestrang mehr ({ NUMBER($count) } parallel)
    }
day-change-more-panels = { $more } mehr Modulleistung, zusammen { $all }
day-change-panels = { $power } Module, flach auf dem Dach
day-change-panels-in-open = Die Module aus dem Schatten
day-change-charger = Ein stärkeres Ladegerät: { $current }
day-change-full-at-start = Die Batteriebank beim Start voll
day-change-set-point = Ein Sollwert von { $temperature }
day-change-lower-mode = { $lower } statt { $mode }
day-change-covers = Fensterabdeckung: { $covers }
day-change-shade = Im Schatten geparkt: { $share } weniger Sonne, auch auf den Modulen
day-change-insulation = Dämmung: { $insulation }
day-change-colour = Farbe außen: { $colour }
day-change-load = Ohne „{ $name }“
day-change-load-number = Ohne Verbraucher { $number }
day-gain-never-empty = reicht für { NUMBER($count) ->
        [one] den ganzen Tag
       *[other] alle { NUMBER($count) } Tage
    }
day-gain-hours = { $duration } mehr bis leer (über { $days })
day-gain-fewer-hours = schlechter: { $duration } weniger bis leer (über { $days })
day-gain-holding = der Sollwert { $duration } länger gehalten (über { $days })
day-gain-spare = { $energy } mehr übrig am tiefsten Stand
day-gain-less-spare = schlechter: { $energy } weniger übrig am tiefsten Stand
day-gain-none = kein echter Gewinn
day-gain-keeps-heat = Dämmung hält nachts auch die Wärme des Tages drinnen
day-gain-chance = Chance für die Nacht: { $then }, jetzt { $now }
day-gain-warmest = die Kabine nach dem Abkühlen bis { $temperature }
day-gain-mass = etwa { $mass } mehr Gewicht
day-gain-cost = für { $cost } nach Ihrem Preis
day-bedtime-no-need = Kein Zurückschalten nötig: Mit { -day-mode-dative } durchgehend reicht es in mindestens neun von zehn Nächten { $until }.
day-bedtime-change = Spätestens { $clock } von { $mode } auf { $lower } schalten: Dann reicht es in neun von zehn Nächten { $until }.
day-bedtime-off = { -day-mode-first } spätestens { $clock } ausschalten: Dann reicht es in neun von zehn Nächten { $until }.
day-bedtime-change-late = Selbst ein Wechsel von { $mode } auf { $lower } gleich zu Beginn kommt für neun von zehn Nächten zu spät. Dann reicht es { $until }: { $chance }.
day-bedtime-off-late = Selbst das Ausschalten { -day-mode-of } gleich zu Beginn kommt für neun von zehn Nächten zu spät. Dann reicht es { $until }: { $chance }.

## Ablesungen in der Nacht

day-check-in-read = { $moment }: Die Batteriebank steht bei { $charge } (erwartet { $expected_charge }), die Kabine bei { $cabin } (erwartet { $expected_cabin }).
day-check-in-used-since-start = Verbrauch seit dem Start: das { $ratio }-Fache des Erwarteten.
day-check-in-used-since-reading = Verbrauch seit der Ablesung davor: das { $ratio }-Fache des Erwarteten.
day-onward-empty = Von da an ist die Batteriebank etwa { $moment } leer, vor { $goal }.
day-onward-lasts-with = Von da an reicht es bis { $goal }, mit { $charge } Rest.
day-onward-lasts = Von da an reicht es bis { $goal }.
day-advice-go-on = Machen Sie weiter wie geplant. Reicht bis { $goal }: { $chance }.
day-advice-switch = Schalten Sie jetzt auf { -day-mode }. Dann reicht es bis { $goal }: { $chance }.
day-advice-off = Schalten Sie das Gerät jetzt aus. Dann reicht es bis { $goal }: { $chance }.
day-advice-nothing = Kein Umschalten reicht in neun von zehn Nächten bis { $goal }. Mit dem Gerät ab jetzt aus: { $chance }.
day-advice-as-planned = Wie geplant: { $chance }.
day-fit-too-few = Ab { NUMBER($least) } Ablesungen wird der Plan angepasst; bisher { NUMBER($readings) ->
        [0] gibt es keine
        [one] gibt es 1
       *[other] gibt es { NUMBER($readings) }
    }.
day-fit-untold = { NUMBER($readings) ->
        [one] Die eine Ablesung sagt
       *[other] Die { NUMBER($readings) } Ablesungen sagen
    } über Wärmeeintrag, Aufnahme und nutzbare Energie nichts Neues.
day-fit-cabin-loss = Wärme, die in die Kabine kommt
day-fit-draw = Aufnahme des Geräts
day-fit-usable = Nutzbare Energie der Batteriebank
day-fit-factor = { $what }: das { $factor }-Fache des Planwerts, ±{ $after }. Vor den Ablesungen: ±{ $before }.
day-fit-factor-untold = { $what }: Die Ablesungen sind nicht genauer als ±{ $before }.
day-fit-misfit = { NUMBER($readings) ->
        [one] Die Ablesung passt
       *[other] Die { NUMBER($readings) } Ablesungen passen
    } mit diesen drei Werten allein nicht zusammen: Etwas anderes im Plan stimmt nicht.

## Wie viel reicht, und die längste kühle Nacht

day-unknown-bank = Kapazität einer Batterie
day-unknown-panels = Modulleistung
day-unknown-charger = Strom des Ladegeräts
day-unknown-set-point = kühlster Sollwert
day-unknown-high = heißester Tag
day-enough-bank = Batterien von je { $value }, so viele wie jetzt, reichen { $until }, der Sollwert gehalten.
day-enough-panels = { $value } in der ersten Modulgruppe reichen { $until }, der Sollwert gehalten.
day-enough-charger = Ein erstes Ladegerät mit { $value } reicht { $until }, der Sollwert gehalten.
day-enough-set-point = { $value } ist der kühlste Sollwert, der { $until } gehalten wird.
day-enough-high = Ein Höchstwert von { $value } ist der heißeste Tag, der { $until } geht, der Sollwert gehalten und die Nacht um ebenso viel heißer.
day-enough-any =
    { $kind ->
        [panels] Es braucht keine Module, um den Sollwert { $until } zu halten.
        [charger] Es braucht kein Ladegerät, um den Sollwert { $until } zu halten.
        [set-point] Sogar ein Sollwert von { $value } wird { $until } gehalten.
        [high] Sogar bei einem Höchstwert von { $value } wird der Sollwert { $until } gehalten.
       *[other] Schon { $value } genügt, um den Sollwert { $until } zu halten.
    }
day-enough-unit-too-small = Kein Wert davon hält den Sollwert { $until }: Die Batteriebank reicht, aber das Kühlgerät ist zu schwach.
day-enough-nothing = Kein Wert davon reicht { $until }.
day-mode-from = ab { $clock } { -day-mode }
day-modes-next = { $first }, dann { $next }
day-held-all = die ganzen betrachteten { $duration }
day-held-until = { $duration }, bis { $clock }
day-longest-never = Keine Betriebsart kühlt die Kabine mit dieser Batteriebank in der zum Abkühlen vorgesehenen Zeit auf { $limit }.
day-longest-is = Bei höchstens { $limit }: { $held }, mit { $charge } Rest in der Batteriebank. Betriebsplan: { $modes }.
day-alone-open = Nichts an, Türen und Dachluke offen
day-alone-mode = Nur { -day-mode }
day-alone-never = { $name }: nie so kühl.
day-alone-held = { $name }: { $held }.
day-longest-stands = Bester gefundener Plan mit höchstens { NUMBER($switches) } { NUMBER($switches) ->
        [one] Umschaltung
       *[other] Umschaltungen
    }, in Schritten von { $minutes }. Die Kabine darf zuerst { $duration } zum Abkühlen brauchen. Mit den Zahlen des Plans, ohne deren Unsicherheit.
day-longest-cut-short = Die Suche hat einige Pläne aus Speichergründen verworfen: Es kann einen längeren geben.

## Wetterdateien

day-file-latitude = Breite
day-file-longitude = Länge
day-file-altitude = Höhe
day-file-utc-offset = Uhr gegen UTC (h)
day-file-date = Datum
day-file-hour = Stunde
day-file-temperature = Temperatur
day-file-dew-point = Taupunkt
day-file-wind = Wind
day-file-global = Globalstrahlung, horizontal
day-file-beam = Direktstrahlung, senkrecht zur Sonne
day-file-diffuse = Diffusstrahlung, horizontal
day-file-fault-at-column = Zeile { $line }, Spalte { $column }: { $fault }. Nichts wurde geändert.
day-file-fault-at-line = Zeile { $line }: { $fault }. Nichts wurde geändert.
day-file-fault = Nicht gelesen: { $fault }. Nichts wurde geändert.
day-file-too-short = Die Datei hat { NUMBER($hours) } { NUMBER($hours) ->
        [one] Stunde
       *[other] Stunden
    }; ein ganzer Tag mit 24 ist nötig. Nichts wurde geändert.
day-file-too-large = die Datei ist größer als die Grenze von 4 MB
day-file-too-many-columns = die Zeile hat mehr Spalten als jede Wettertabelle
day-file-too-many-hours = die Datei hat mehr Stunden als ein Jahr
day-file-unknown-format = die Datei ist weder EPW, TMY2 oder TMY3 noch eine Tabelle mit den Spalten hour, temperature und irradiance
day-file-no-hours = die Datei hat keine Stunden
day-file-no-such-date = dieses Datum gibt es nicht
day-file-not-next-hour = das ist nicht die Stunde nach der vorigen
day-file-missing = { $field } fehlt
day-file-not-a-number = { $field } ist keine Zahl
day-file-long-gap = ab hier fehlen mehr als drei Stunden: { $field }
day-file-out-of-range = { $field } liegt außerhalb: zulässig ist { $least } bis { $most }
day-file-table = Tabelle
day-file-read = { $format }, { NUMBER($hours) } { NUMBER($hours) ->
        [one] Stunde
       *[other] Stunden
    }.
day-file-taken = Übernommen: { NUMBER($days) } { NUMBER($days) ->
        [one] Tag
       *[other] Tage
    }, { $low } bis { $high }.
day-file-taken-from = Übernommen: { NUMBER($days) } { NUMBER($days) ->
        [one] Tag
       *[other] Tage
    } ab { $day }. { $month }, { $low } bis { $high }.
day-file-other-date = Das Datum oben steht nicht in der Datei, darum sind dies ihre heißesten Tage.
day-file-place = Auch Ort und Uhr ({ $utc }) kommen aus der Datei.
day-file-filled = { NUMBER($count) } { NUMBER($count) ->
        [one] fehlender Wert wurde
       *[other] fehlende Werte wurden
    } linear interpoliert.
day-file-undo = Rückgängig stellt den vorigen Stand wieder her.

## Namen der Auswahlmöglichkeiten

day-assumed-choice = { $name } ({ $assumed })
day-charger-hint-shore = Ohne angegebene Stunden ist es den ganzen Tag an.
day-charger-hint-engine = Ohne angegebene Stunden läuft er nie. Lassen Sie nie einen Motor laufen, während Menschen schlafen.
day-charger-hint-generator = Ohne angegebene Stunden läuft er nie. Stellen Sie einen Generator draußen auf, 6 m (20 ft) entfernt und auf der windabgewandten Seite (CPSC), und lassen Sie ihn nie laufen, während Menschen daneben schlafen.
day-climate-salt-lake-plain = Salzseeebene, 38° N
day-climate-low-desert = Niedrige Steinwüste, 33° N
day-climate-high-plateau = Trockene Hochebene, 36° N
day-climate-gulf-coast = Feuchte Golfküste, 29° N
day-climate-humid-forest = Feuchter Wald, 34° N
day-climate-inland-valley = Trockenes Binnental, 37° N
day-climate-southern-river-plain = Südliche Flussebene, 38° N
day-climate-mild-sea-shore = Milde Meeresküste, 36° N
day-climate-northern-heat-wave = Hitzewelle im Norden, 50° N
day-climate-dusty-steppe = Staubige Steppe, 27° N
day-climate-red-inland-plain = Rote Binnenebene, 24° S
day-climate-tropical-coast = Tropische Küste, 17° S
day-body-van = Kastenwagen
day-body-trailer = Wohnanhänger
day-body-tent-cabin = Zelt oder Stoffkabine
day-body-boat = Bootskabine
day-body-small-cabin = kleine Hütte
day-insulation-bare = keine: blankes Blech oder Stoff
day-insulation-partial = teilweise, Spanten ungedämmt
day-insulation-normal = rundum, etwa 30 mm
day-insulation-heavy = dick, keine ungedämmten Spanten
day-colour-light = hell
day-colour-medium = mittel
day-colour-dark = dunkel
day-glazing-single = einfach verglast
day-glazing-double = doppelt verglast
day-covers-none = keine
day-covers-curtains = Vorhänge
day-covers-inside-mats = Reflexionsmatten innen
day-covers-outside-covers = Abdeckungen außen
day-curves-window-unit = Fenstergerät, eine Drehzahl
day-curves-single-speed = Split- oder Zentralgerät, eine Drehzahl
day-curves-two-stage = zweistufiges Gerät
day-control-thermostat = ein und aus (Thermostat)
day-control-modulating = drehzahlgeregelt, mit Mindestwert
day-mounting-flat-on-roof = flach auf dem Dach
day-mounting-stood-off = abgesetzt, hinterlüftet
day-controller-tracking = MPPT
day-controller-direct = PWM
day-charger-shore = Landstrom
day-charger-engine = Motor
day-charger-generator = Generator
day-bank-place-cabin = in der Kabine
day-bank-place-locker = im Staufach, unter Sitz oder Boden
day-bank-place-outside = draußen
