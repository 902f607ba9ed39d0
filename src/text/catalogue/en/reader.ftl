## A page for readers

maker-title = A page for readers
maker-hint = The same answer with a few numbers left open: readers enter their own bank and see their own hours. Your plan is in the link; nothing else is stored or sent.
maker-page-title = Title
maker-page-note = A line from you
maker-open = What readers may change, one to four
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
maker-see = Show the page
maker-copy-link = Copy its link
maker-frame = In a page of your own
maker-frame-hint = A frame that contains the page as one file. It needs permission for scripts only, and works where storage is blocked.
maker-copy-frame = Copy the frame
maker-script-hint = Add this once to that page if the frame’s height should follow its content:
maker-copy-script = Copy the script
maker-one-file = The page as one file, for a server of your own
