## A page for readers

maker-title = A page for readers
maker-hint = The same answer with a few numbers left open: readers enter their own bank and see their own hours. Your plan is in the link; nothing else is stored or sent.
maker-page-title = Title
maker-page-note = Message (optional)
maker-open = Open to readers (1 to 4)
maker-open-as-one = If capacity or voltage is open, readers see your batteries as one bank.
# Why a fifth is not taken.
maker-too-many = At most { $most }: remove one first.
maker-units = Units
maker-units-plan = as in this plan
maker-units-metric = metric
maker-units-us = US (ft, °F, cfm)
maker-theme = Appearance
maker-theme-device = as the reader’s device has it
maker-theme-light = light
maker-theme-dark = dark
maker-language = Language
maker-language-browser = the reader’s browser language, if available
# How this language calls itself: languages are offered by their own names.
maker-see = Show the page
maker-copy-link = Copy its link
maker-frame = Paste into your site
maker-frame-hint = A frame with the page in it, as one file. It needs only scripts allowed, and works where storage is blocked.
maker-copy-frame = Copy the HTML
maker-script-hint = Add this once to that page if the frame’s height should follow its content:
maker-copy-script = Copy the script
maker-one-file = The page as one file, for a server of your own

## The reader's page

reader-yours = Your numbers
reader-back = Back to the published numbers
# What the reader's bank does to the author's numbers.
reader-other-voltage = Your bank has another voltage than the published one: cut-offs and the unit’s rated supply voltage are scaled in proportion.
reader-not-the-measured = Your bank is not the one that was measured: the measured charge and energy are left out, and the label is used.
# Names of fields: a bank of one battery is the bank.
reader-capacity = Capacity of the bank
reader-voltage = Voltage of the bank
# A field of a mode or a load.
reader-of = { $name }: { $field }
# Why a text is not taken.
reader-trouble = { $label }: enter { $accepted }.
reader-on-paper = Rule of thumb
reader-on-paper-hint = One line for each mode. Usable Wh = nominal voltage × capacity in Ah × depth of discharge.
reader-in-full = Open in full
reader-in-full-hint = The whole plan with your numbers: what was assumed, curves, and how big a bank is needed.
reader-foot = { $page }. Calculated in this browser; nothing is sent anywhere.
