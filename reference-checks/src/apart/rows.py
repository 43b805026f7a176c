"""Rows of a floor, worked out from the definitions in docs/row-division.md, docs/irregular-walls.md and docs/laying.md.

python3 rows.py row_division_computed.csv prints that table.
"""
from fractions import Fraction
from table import mm, nm, run, table, words


def row_count(width, pitch):
    """The fewest rows that cover a width, by counting."""
    rows = 0
    while rows * pitch < width:
        rows += 1
    return rows


def divide(width, pitch, minimum, way):
    """Number of rows, first row, last row, the minimum in force and what there is to say."""
    said = []
    if minimum > pitch:
        said.append("boards-narrower-than-minimum")
    least = min(minimum, pitch)
    rows = row_count(width, pitch)
    if rows == 1:
        first = last = width
        said.append("one-row")
    else:
        shared = width - (rows - 2) * pitch
        equal = (-(-shared // 2), shared // 2)
        full = (pitch, shared - pitch)
        first, last = equal
        if way in ("AS_NEEDED", "LEAST_CUT", "FEWEST_BOARDS") and full[1] >= least:
            first, last = full
        elif way == "LEAST_CUT" and shared - least >= least:
            first, last = shared - least, least
    if min(first, last) < least:
        said.append("row-narrower-than-minimum")
    full_rows = sum(1 for row in ([first] if rows == 1 else [first, last]) if row == pitch) + max(0, rows - 2)
    return rows, first, last, least, full_rows, said


WIDTHS = [
    ("last row wide enough", "3480", "185", "70"), ("last row too narrow", "3735", "185", "70"),
    ("last row just the minimum", "3770", "185", "70"), ("last row a nanometre short of the minimum", "3769.999999", "185", "70"),
    ("whole number of rows", "3700", "185", "70"), ("a nanometre more than whole rows", "3700.000001", "185", "70"),
    ("a nanometre less than whole rows", "3699.999999", "185", "70"), ("one row", "120", "185", "70"),
    ("one row, too narrow", "55", "185", "70"), ("one full row", "185", "185", "70"), ("two rows that can only be narrow", "110", "100", "70"),
    ("two rows, shared exactly twice the minimum", "140", "100", "70"), ("boards narrower than the minimum", "1000", "57", "70"),
    ("boards as narrow as the minimum", "1000", "70", "70"), ("no minimum", "3735", "185", "0"),
    ("strip flooring of 2 1/4 in, 3 5/8 in left", "3238.5", "57.15", "25.4"), ("a width that cannot be halved", "1000.000001", "185.3", "80"),
    ("a hall", "48213.7", "129.95", "60"),
]


def row_division():
    rows = []
    for about, width, pitch, minimum in WIDTHS:
        for way in ("AS_NEEDED", "LEAST_CUT", "BALANCED", "WIDEST_STRIP"):
            n, first, last, least, full, said = divide(nm(width), nm(pitch), nm(minimum), way)
            rows.append((f"{about}, {way.lower().replace('_', ' ')}", width + " mm", pitch + " mm", minimum + " mm", way, n, mm(first), mm(last),
                         mm(least), full, words(said)))
    table("rows.py", "A width divided into rows", "rows by counting; both outer rows as docs/row-division.md says for each way", "exact",
          ("about", "width", "pitch", "minimum", "way", "rows", "firstRowMillimetres", "lastRowMillimetres", "minimumInForceMillimetres", "fullRows",
           "findings"), rows)


def row_drift():
    rows = []
    cases = [("wide boards gain", "3480", "185", "185.1", "70", "AS_NEEDED"), ("wide boards fall behind", "3480", "185", "184.9", "70", "AS_NEEDED"),
             ("true boards", "3480", "185", "185", "70", "AS_NEEDED"), ("narrow last row eaten up", "3735", "185", "187", "20", "AS_NEEDED"),
             ("narrow last row below the minimum", "3735", "185", "186", "20", "AS_NEEDED"), ("another row needed", "3700", "185", "184.5", "70", "AS_NEEDED"),
             ("ripped first row", "3735", "185", "185.2", "70", "LEAST_CUT"), ("just the minimum", "3735", "185", "185.000001", "70", "LEAST_CUT"),
             ("one row never drifts", "120", "185", "190", "70", "AS_NEEDED"), ("alike on both sides", "4000", "185", "185.05", "70", "BALANCED"),
             ("strips of 2 1/4 in that lie 1/64 in apart", "3048", "57.15", "57.546875", "25.4", "BALANCED")]
    for about, width, nominal, laid, minimum, way in cases:
        n, first, last, least, _, _ = divide(nm(width), nm(nominal), nm(minimum), way)
        # Where each row line of the floor lies as set out and as laid, counted one by one: the rows before the last one.
        set_out = laid_at = 0
        for _ in range(n - 1):
            set_out += nm(nominal)
            laid_at += nm(laid)
        drift = laid_at - set_out
        left = last - drift
        said = []
        if last < abs(drift):
            said = ["last-row-narrower-than-drift"]
        elif left > nm(laid):
            said = ["drift-adds-row"]
        elif left < min(least, nm(laid)):
            said = ["drift-narrows-last-row"]
        rows.append((about, width + " mm", nominal + " mm", laid + " mm", minimum + " mm", way, n - 1, mm(drift), mm(left), words(said)))
    table("rows.py", "Rows that drift from where they were set out", "both sets of row lines added up row by row", "exact",
          ("about", "width", "nominalPitch", "laidPitch", "minimum", "way", "rows", "driftMillimetres", "lastRowMillimetres", "findings"), rows)


def outer(width, pitch):
    """Rows on one side of a line and the strip at the edge."""
    n = row_count(width, pitch)
    return (n, width - (n - 1) * pitch) if n else (0, 0)


def rows_both_ways():
    rows = []
    cases = [("row line, both wide enough", "2000", "2000", "185", "70"), ("row on the line is better", "1900", "1900", "185", "70"),
             ("row on the line, strips unlike", "1880", "2250", "185", "70"), ("neither keeps the minimum", "1880", "2000", "100", "90"),
             ("both leave the same", "1900", "1950", "100", "90"), ("line at a wall", "0", "2000", "185", "70"), ("line near a wall", "60", "2000", "185", "70"),
             ("whole rows both ways", "1850", "925", "185", "70"), ("whole rows with half a board over", "1942.5", "1017.5", "185", "120"),
             ("no minimum", "1860", "1860", "185", "0"), ("boards narrower than the minimum", "1000", "1010", "57", "70"),
             ("one nanometre too narrow", "254.999999", "2000", "185", "70"), ("just wide enough", "255", "2000", "185", "70"),
             ("half a board before the line", "92.5", "2000", "185", "70"), ("strips of 2 1/4 in", "1524", "1600.2", "57.15", "38.1")]
    for about, before, beyond, pitch, minimum in cases:
        b, y, p = nm(before), nm(beyond), nm(pitch)
        least = min(nm(minimum), p)
        said = ["boards-narrower-than-minimum"] if nm(minimum) > p else []
        ways = [("ROW_LINE_ON_LINE", outer(b, p), outer(y, p), 0)]
        if b >= p // 2 and y >= p - p // 2:
            ways.append(("ROW_ON_LINE", outer(b - p // 2, p), outer(y - (p - p // 2), p), 1))

        def narrowest(way):
            return min([strip for n, strip in way[1:3] if n] or [p])
        chosen = ways[0]
        if narrowest(chosen) < least and len(ways) > 1 and narrowest(ways[1]) > narrowest(chosen):
            chosen = ways[1]
        if narrowest(chosen) < least:
            said.append("strip-narrower-than-minimum")
        joint, (n1, s1), (n2, s2), on = chosen
        rows.append((about, before + " mm", beyond + " mm", pitch + " mm", minimum + " mm", joint, n1, n2, n1 + n2 + on, mm(s1), mm(s2), words(said)))
    table("rows.py", "Rows laid both ways from a line", "both ways tried: a row line on the line, a row with its middle on it", "exact",
          ("about", "before", "beyond", "pitch", "minimum", "joint", "rowsBefore", "rowsBeyond", "rows", "stripBeforeMillimetres", "stripBeyondMillimetres",
           "findings"), rows)


def in_phase(f, level, pitch):
    """How far the next row line lies above a level, more than zero and at most the pitch."""
    rest = (f - level) % pitch
    return rest if rest else pitch


def strip(stop, f, pitch, error=0):
    """The narrowest strip at a stop (side, low, high), anywhere on its way and anywhere within the error; zero if a row line meets it."""
    side, low, high = stop
    reach = high - low + 2 * error
    width = in_phase(f, high + error, pitch) if side == "above" else in_phase(low - error, f, pitch)
    return width if width + reach <= pitch else 0


def strip_table():
    rows = []
    cases = [("wall to wall", "above 0; below 1900", "0", "185", "70", "20", "3"),
             ("a column", "above 0; below 1000; above 1300; below 1900", "0", "185", "70", "15", "3"),
             ("a slanted wall", "above 0; below 2400 2430", "0", "185", "70", "25", "0"),
             ("a slanted wall and a hearth, lowest level not zero", "above 120; below 900; above 1260 1281; below 2500", "120", "140", "60", "10", "2.5"),
             ("strips of 2 1/4 in", "above 0; below 609.6; above 914.4; below 3048", "0", "57.15", "25.4", "6.35", "3.175"),
             ("no error", "above 0; below 733; above 1000; below 2001", "0", "120", "50", "12", "0"),
             ("runs off by more than a board", "above 0; below 1900 2100; below 3000", "0", "185", "70", "40", "2")]
    for about, stops, low, pitch, minimum, step, error in cases:
        p, e = nm(pitch), nm(error)
        parsed = []
        for text in stops.split("; "):
            parts = text.split(" ")
            parsed.append((parts[0], nm(parts[1]), nm(parts[-1])))
        counted = [stop for stop in parsed if stop[2] - stop[1] < p]
        first = parsed[0]

        def narrowest(f):
            return min(strip(stop, nm(low) + f, p) for stop in counted)
        # Between breaks the strips rise or fall evenly: the best line is at a break or half way between two edges, all tried in steps of half a nanometre.
        ends = sorted({(h - nm(low)) % p for s in counted for h in (s[1], s[2])} | {0, p})
        tried = sorted({c for a in ends for b in ends for c in ((a + b) // 2, (a + b + 1) // 2, (a + b + p) // 2 % p, a) for c in (c, c - 1, c + 1)
                        if 0 < c <= p} | {p})
        best = max(tried, key=lambda f: (narrowest(f), f))
        lines = sorted(set(range(nm(step), p + 1, nm(step))) | {best, p})
        entries = []
        for f in lines:
            at = nm(low) + f
            within = min(strip(stop, at, p, 0 if stop == first else e) for stop in counted)
            entries.append(" ".join([mm(f) + ":"] + [mm(strip(stop, at, p)) for stop in parsed] + ["|", mm(narrowest(f)), mm(within)]))
        rows.append((about, stops, low + " mm", pitch + " mm", minimum + " mm", step + " mm", error + " mm", mm(best), mm(narrowest(best)), len(lines),
                     "; ".join(entries)))
    table("rows.py", "The strips at all stops while the start line goes through one board",
          "each row line counted from the lowest level; the best line found by trying each that could be", "exact",
          ("about", "stops", "lowest", "pitch", "minimum", "step", "plusMinus", "bestFirstRowMillimetres", "bestNarrowestMillimetres", "entries",
           "strips"), rows,
          "stops: side on which the floor lies, its level, or its lowest and highest; strips: first row, strip at each stop, narrowest, narrowest within the error")


def closure():
    rows = []
    cases = [("in phase", ("0", 12, "185", "0", "0", "1000"), ("0", 12, "185", "0", "0", "1000"), "2000", "0.2"),
             ("another number of rows", ("0", 12, "185", "0", "0", "1000"), ("370", 10, "185", "0", "0", "1000"), "2000", "0.2"),
             ("out of phase", ("0", 12, "185", "0", "0", "1000"), ("92", 11, "185", "0", "0", "1000"), "2000", "0.2"),
             ("a little ahead", ("0", 12, "185", "0", "0", "1000"), ("184.7", 11, "185", "0", "0", "1000"), "2000", "0.2"),
             ("a little behind", ("0", 12, "185", "0", "0", "1000"), ("185.3", 11, "185", "0", "0", "1000"), "2000", "0.2"),
             ("pitches not alike", ("0", 20, "185.02", "0", "0", "1000"), ("0", 20, "185", "0", "0", "1000"), "3000", "0.2"),
             ("errors of both pitches", ("0", 20, "185", "0.02", "0", "1000"), ("185", 19, "185", "0.03", "0", "1000"), "3000", "0.2"),
             ("at an angle", ("0", 8, "140", "0", "1.5", "2000"), ("0", 8, "140", "0", "-0.5", "1000"), "4200", "0.5"),
             ("turned alike", ("0", 8, "140", "0", "1.5", "3000"), ("0", 8, "140", "0", "1", "2000"), "4200", "0.5"),
             ("thirds of a nanometre", ("0", 8, "140", "0.01", "1", "3000"), ("0", 8, "140", "0.01", "0", "1000"), "1000", "0.5"),
             ("no row at all", ("0", 0, "140", "0.01", "0", "1000"), ("1400.1", 0, "140", "0.01", "0", "1000"), "1000", "0.5")]
    for about, one, other, joined, allowed in cases:
        at = [nm(arm[0]) + arm[1] * nm(arm[2]) for arm in (one, other)]
        p = nm(one[2])
        # The nearest whole row: of all shifts by whole rows the one that leaves least.
        mismatch = min(((at[0] - at[1]) + k * p for k in range(-100, 101)), key=abs)
        off = one[1] * nm(one[3]) + other[1] * nm(other[3])
        parting = round(Fraction(nm(joined)) * (Fraction(nm(one[4]), nm(one[5])) - Fraction(nm(other[4]), nm(other[5]))))
        said = []
        if abs(mismatch) > nm(allowed):
            said.append("arms-out-of-phase")
        elif abs(mismatch) + off > nm(allowed):
            said.append("arms-may-be-out-of-phase")
        if abs(parting) > nm(allowed):
            said.append("arms-at-an-angle")
        cells = [cell if isinstance(cell, int) else cell + " mm" for arm in (one, other) for cell in arm]
        rows.append((about, *cells, joined + " mm", allowed + " mm", mm(at[0]), mm(at[1]), mm(mismatch), mm(off), mm(parting), words(said)))
    arm = ("Start", "Rows", "Pitch", "PlusMinus", "RunOff", "Over")
    table("rows.py", "Two arms of a floor that meet again behind an obstacle", "row lines of both arms counted; all shifts by whole rows tried",
          "exact; parting rounded to a nanometre", ("about", *("one" + a for a in arm), *("other" + a for a in arm), "joined", "allowed",
          "oneArrivalMillimetres", "otherArrivalMillimetres", "mismatchMillimetres", "plusMinusMillimetres", "partingMillimetres", "findings"), rows)


if __name__ == "__main__":
    run({"row_division_computed.csv": row_division, "row_drift_computed.csv": row_drift, "rows_both_ways_computed.csv": rows_both_ways,
         "strip_table_computed.csv": strip_table, "arms_that_meet_computed.csv": closure})
