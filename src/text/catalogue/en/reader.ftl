## A page for readers

maker-title = A page for readers
maker-hint = The same answer with a few numbers left open: whoever opens it puts in their own bank and reads their own hours. Your plan is in the link; nothing else is kept or sent.
maker-page-title = Its title
maker-page-note = A line from you
maker-open = What readers may change, one to four
maker-open-as-one = Where charge or voltage is open, readers see your batteries as one bank.
maker-units = Units
maker-theme = Looks
maker-language = Language
maker-see = See it
maker-copy-link = Copy its link
maker-frame = In a page of your own
maker-frame-hint = A frame with the page as one file in it: it asks for scripts and nothing else, and works where storage is blocked.
maker-copy-frame = Copy the frame
maker-script-hint = Once on that page, if the frame is to be as tall as what is in it:
maker-copy-script = Copy the script
maker-one-file = The page as one file, to put on a host of your own
