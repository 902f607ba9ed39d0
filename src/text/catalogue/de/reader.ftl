## A page for readers

maker-title = Eine Seite für Leser
maker-hint = Dieselbe Antwort, bei der einige Zahlen offen bleiben: Leser geben ihre eigene Batteriebank ein und sehen ihre eigenen Stunden. Ihr Plan steht im Link; sonst wird nichts gespeichert oder gesendet.
maker-page-title = Titel
maker-page-note = Nachricht (optional)
maker-open = Für Leser offen (1 bis 4)
maker-open-as-one = Sind Kapazität oder Spannung offen, sehen Leser Ihre Batterien als eine Batteriebank.
# Why a fifth is not taken.
maker-too-many = Höchstens { $most }: entfernen Sie zuerst eines.
maker-units = Einheiten
maker-units-plan = wie in diesem Plan
maker-units-metric = metrisch
maker-units-us = US (ft, °F, cfm)
maker-theme = Aussehen
maker-theme-device = wie auf dem Gerät des Lesers
maker-theme-light = hell
maker-theme-dark = dunkel
maker-language = Sprache
maker-language-browser = die des Browsers, falls vorhanden
# How this language calls itself: languages are offered by their own names.
maker-see = Seite ansehen
maker-copy-link = Link kopieren
maker-frame = HTML-Code zum Einbetten
maker-frame-hint = Ein Rahmen (iframe) mit der Seite als einer Datei. Skripte müssen erlaubt sein, sonst nichts; er funktioniert auch, wo Speicher gesperrt ist.
maker-copy-frame = HTML-Code kopieren
maker-script-hint = Einmal in jene Seite, wenn die Höhe des Rahmens seinem Inhalt folgen soll:
maker-copy-script = Skript kopieren
maker-one-file = Die Seite als eine Datei, für einen eigenen Server

## The reader's page

reader-yours = Ihre Zahlen
reader-back = Zurück zu den veröffentlichten Zahlen
# What the reader's bank does to the author's numbers.
reader-other-voltage = Ihre Batteriebank hat eine andere Spannung als die veröffentlichte: Abschaltspannungen und Nennspannung des Geräts sind im gleichen Verhältnis umgerechnet.
reader-not-the-measured = Ihre Batteriebank ist nicht die gemessene: gemessene Ladung und Energie bleiben außer Betracht, es gilt das Typenschild.
# Names of fields: a bank of one battery is the bank.
reader-capacity = Kapazität der Batteriebank
reader-voltage = Spannung der Batteriebank
# A field of a mode or a load.
reader-of = { $name }: { $field }
# Why a text is not taken.
reader-trouble = { $label }: Geben Sie { $accepted } ein.
reader-on-paper = Faustformel
reader-on-paper-hint = Eine Zeile je Betriebsart. Nutzbare Wh = Nennspannung × Kapazität in Ah × Entladetiefe.
reader-in-full = Ganz öffnen
reader-in-full-hint = Der ganze Plan mit Ihren Zahlen: was angenommen wurde, Kurven, und wie groß die Batteriebank sein muss.
reader-foot = { $page }. In diesem Browser berechnet; nichts wird irgendwohin gesendet.
