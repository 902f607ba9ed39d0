## Cautions

# In other languages each stands beside its English until a speaker of the trade has read
# it: meaning and numbers must be exactly these.

caution-never-leave = Never leave children, animals or anyone who cannot get out unattended and relying on a battery-run cooler. A closed vehicle heats up by about 3.2 °F (1.8 °C) every 5 minutes, and most of the rise comes in the first 30.
caution-heat-unattended = { caution-never-leave } In this plan’s weather the closed cabin reaches { $temperature } with no cooling.
caution-beyond-fifty-volts = While it charges, the bank is at { $volts }. The cable table and the fuse rule used here are made for less than 50 V: above that other rules apply, and direct current kills and keeps arcing. This is work for a licensed electrician.
caution-generator = Run a generator outdoors only, 20 ft (6 m) away from every opening, exhaust turned away: its carbon monoxide kills unnoticed.
caution-engine = Never run an engine while people sleep, nor in a closed space: its carbon monoxide kills unnoticed. Fit a carbon monoxide alarm.
caution-runs-at-night = By the clock it runs during the night of this plan: do not sleep near it.
caution-charged-cold = Lithium must not be charged below { $least }, and this bank may be as cold as { $coldest }: keep every charger and the panels off until it is warm. Charging frozen cells plates metal and can start a fire.
caution-lead-acid-gas = Lead-acid batteries give off hydrogen while they charge. Their compartment needs { $air } of air an hour, vented to the outside: one opening of { $opening } low and another high.
caution-path-without-fuse = { $circuit }: { $current } and no fuse entered for it. Without a fuse, a short circuit heats the cable until it burns.
caution-alternator = If the BMS disconnects while the engine charges, the alternator’s voltage spikes and can destroy it and the vehicle’s electronics. Put a charger made for this between them.
caution-series-beyond-maker = { $count } batteries in series, and the manufacturer allows { $most }: do not do it.
caution-series-as-allowed = { $count } batteries in series: only if the manufacturer allows that many. The BMS of each must withstand the whole bank’s voltage when it disconnects.
caution-parallel-as-allowed = { $count } strings in parallel: only as the battery’s manufacturer allows.
caution-bms-is-no-fuse = The battery’s BMS does not replace a fuse: it may fail closed, with the current still flowing.
caution-fuse-at-source = The fuse belongs at the source of the current, as near the battery as possible and before the first branch.
caution-copper-only = Copper only. Copper-clad aluminium of the same size has about 1.6 times the resistance and carries less: do not use it here.
caution-automotive-gauge = Cable sold by an automotive gauge (SAE) holds less copper than cable of the same number in the American wire gauge (AWG).
caution-printed-rating-decides = The DC voltage and the DC breaking capacity (interrupting rating) printed on the fuse take precedence over any table.
caution-codes-govern = Local codes and licensed practice govern, and may ask for more.
caution-local-codes = { caution-codes-govern } Take the printed page to an electrician before you buy or install anything.
caution-estimates = This does not replace local codes or a licensed electrician. Estimates are not guarantees.
# Which bank, where there are several.
caution-of-bank = { $bank }: { $caution }

## Where cautions come from

caution-source-heat = McLaren, Null & Quinn, Pediatrics 116 (2005) e109
caution-source-fifty-volts = Scope of 33 CFR 183.425 and 183.455; NFPA 70 chapter 4 and article 480, not checked against the standard’s text
caution-source-generator = US Consumer Product Safety Commission
caution-source-engine = US Consumer Product Safety Commission on carbon monoxide, not checked against its text
caution-source-cold = usual limit of cell manufacturers
caution-source-gas = 33 CFR 183.420; EN 50272-3 / IEC 62485-3
caution-source-fuse = 33 CFR 183.455; NFPA 70 section 240.21, not checked against the standard’s text
caution-source-maker = the manufacturer’s figure, as entered
caution-source-gauge = SAE against ASTM B258 areas; common practice
caution-source-practice = common practice
