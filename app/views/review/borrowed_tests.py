"""Words of the figures of tests as they are shown: named here, to be messages; see `borrowed`."""

from app.views.translation import message

NAMES = (
    message("Counter-movement jump, height over time to take-off"),
    message("Jumps that ended in the square"),
    message("One-rep maximum, estimated (Epley)"),
    message("One-rep maximum, estimated (Brzycki)"),
    message("One-rep maximum, estimated (Lombardi)"),
    message("Epley 1985, from memory"),
    message("Brzycki 1993, from memory"),
    message("Lombardi 1989, from memory"),
    message("Jumps that ended in the square, last day"),
    message("Landing errors, last mean"),
    message("Reach forwards, sides apart"),
    message("Set to the last rep"),
    message("Ten hops: contacts of 250 ms or longer"),
    message("best"),
    message("last"),
    message("change"),
    message("slope"),
    message("rank test"),
    message("limb symmetry index"),
    message("difference of the sides"),
    message("typical error"),
    message("minimal detectable change"),
    message("smallest worthwhile change"),
    message("variation of a try"),
    message("first try less second"),
    message("repeatability"),
    message("intraclass correlation"),
)
"""Tests, and what is told of them."""

FORMULAS = (
    message("best day; best of a day's tries"),
    message("best day; mean of a day's tries"),
    message("best day; mean of best five of a day's tries"),
    message("best day; last of a day's tries"),
    message("last day; best of a day's tries"),
    message("last day; mean of a day's tries"),
    message("last day; mean of best five of a day's tries"),
    message("last day; last of a day's tries"),
    message("last day less first day"),
    message("median of the slopes of all pairs of days"),
    message("Mann-Kendall, (S -+ 1) / sqrt Var, ties corrected"),
    message("other side / reference side x 100; turned over where less is better"),
    message("index of the right side, reference left: right / left x 100; turned if less is better"),
    message("index of the left side, reference right: left / right x 100; turned if less is better"),
    message("(greater - smaller) / greater x 100"),
    message("standard deviation of the differences between the first two tries of a day / sqrt 2"),
    message("1.96 x sqrt 2 x typical error"),
    message("0.2 x standard deviation between athletes, freed of the error that their means hold"),
    message("100 x typical error / mean of all tries"),
    message("mean of the differences of two tries of a day; limits of agreement -+ 2 SD"),
    message("root mean square of the differences of two tries"),
    message("ICC(3,1) = (BMS - EMS) / (BMS + EMS), of the first two tries of a day"),
    message("greater - smaller; above 4 cm is a limit found in school basketball, no limit for everybody"),
    message("jumps inside / all jumps x 100"),
    message("of the ten rebounds of the last day"),
    message("load x (1 + reps / 30); one rep returns the load"),
    message("mean of the jumps of the last day; bands to 4, 5, 6 and above, from memory"),
)

SOURCES = (
    message("Common practice, no source."),
    message("Common practice, no source. Interval: Wilson 1927, J Am Stat Assoc 22:209-212."),
    message("Gokeler et al. 2017 (PMC5315711); for times Noyes et al. 1991, from memory."),
    message("Bishop et al. 2018, Strength Cond J, from memory."),
    message("Mann 1945, Econometrica 13:245-259; ties as in Gilbert 1987."),
    message("Hopkins 2000, Sports Med 30:1-15 (secondary: course notes)."),
    message("Plisky et al. 2006, J Orthop Sports Phys Ther 36:911-919 (secondary)."),
    message("Schmidtbleicher 1992 (secondary)."),
    message("Epley 1985, from memory; the others from memory too. No estimate holds for work to a tempo."),
    message("Padua et al. 2009. Under 5 is a limit used for the return to sport; no verdict by itself."),
)
"""Sources of which more is said than where they are found."""

REASONS = (
    message("No jump was counted."),
    message("The reach forwards of one side is missing."),
    message("No landing was looked at."),
    message(
        "Tries of one day; from one day to another a test can stray more, and the best of tries strays less."
    ),
    message("All tries were the same, so that there is no spread to share out."),
)

INPUTS = (
    message("change over the first, %"),
    message("Kendall's tau a"),
    message("Kendall's tau b, with ties"),
    message("reference side"),
    message("side behind"),
    message("apart"),
    message("against its error"),
    message("symmetry angle, left first, %"),
    message("(G - S) / (G + S), %"),
    message("(G - S) / mean, %"),
    message("(G - S) / S, %"),
    message("repeated medians (Siegel 1982)"),
    message("the test can show it"),
    message("standard deviation"),
    message("lower limit of agreement"),
    message("upper limit of agreement"),
    message("ICC(1,2), of the mean of two"),
    message("ICC(2,2), of the mean of two"),
    message("ICC(3,2), of the mean of two"),
    message("reach forwards, cm"),
    message("reach backwards and inwards, cm"),
    message("reach backwards and outwards, cm"),
    message("limb length, cm"),
    message("more than 4 cm"),
    message("inside"),
    message("flight over contact, best five"),
    message("height over contact, best five, m/s"),
    message("band"),
    message("load, kg"),
    message("load of the maximum by a table, %"),
)
"""What went into a figure."""

VALUES = (
    message("both"),
    message("none"),
    message("unknown"),
    message("within error"),
    message("beyond error"),
    message("yes"),
    message("no"),
    message("excellent"),
    message("good"),
    message("moderate"),
    message("poor"),
)
"""What stands for a number where there is none."""

PARTS = (
    message("contact"),
    message("flight"),
    message("time to take-off"),
    message("load"),
    message("reps"),
    message("outside"),
    message("both legs, firm"),
    message("one leg, firm"),
    message("heel to toe, firm"),
    message("both legs, foam"),
    message("one leg, foam"),
    message("heel to toe, foam"),
)
"""What a try is made of."""

UNITS = (
    message("contacts"),
    message("errors"),
    message("jumps"),
    message("deg"),
)

BORROWED_OF_TESTS = (*NAMES, *FORMULAS, *SOURCES, *REASONS, *INPUTS, *VALUES, *PARTS, *UNITS)
