"""Rows along walls that are not straight or not square, worked out from the definitions in docs/irregular-walls.md and docs/start-line.md.

python3 walls.py scribe_computed.csv prints that table.
"""
from fractions import Fraction
import math
from table import decimal, fixed, mm, nearest, nm, run, table, words

BOW = "0,0; 1000,8; 2000,14; 3000,9; 4000,2"
WALLS = [("a bow", BOW), ("a straight wall", "0,5; 3000,5"), ("a wall that runs off", "0,0; 4000,30"), ("a wall that comes nearer", "0,-12; 1500,-3; 4200,-20"),
         ("a step", "0,0; 1000,0; 1001,25; 3000,25"), ("a dip and a bulge", "0,0; 500,-7.5; 900,3.2; 1700,11.7; 2500,-4.1")]


def wall_of(text):
    return [(nm(a), nm(d)) for a, d in (pair.split(",") for pair in text.split("; "))]


def at(wall, place):
    """The distance of the wall at a place, a fraction of a nanometre."""
    for (a, d), (b, e) in zip(wall, wall[1:]):
        if a <= place <= b:
            return Fraction(d) + Fraction(e - d) * Fraction(place - a, b - a)
    raise ValueError("not measured there")


def millimetre_text(text):
    return "; ".join(pair.replace(",", " ") for pair in text.split("; "))


def scribe():
    rows = []
    trims = [("no trim", "185", "70", "10", ""), ("a trim of 18", "185", "70", "10", "18 3"), ("a trim that hides much", "120", "100", "8", "40 2"),
             ("a narrow board", "30", "20", "8", "")]
    for name, text in WALLS:
        wall = wall_of(text)
        place = nm(1250) if wall[-1][0] > nm(1250) else nm(100)
        for about, pitch, minimum, gap, trim in trims:
            hidden = 0
            if trim:
                cover, bearing = trim.split(" ")
                hidden = nm(cover) - nm(bearing) - nm(gap)
            p, g = nm(pitch), nm(gap)
            # The row line lies as far as a full board reaches to within the widest gap everywhere; and as near as leaves the narrowest row everywhere.
            line = min(p + g + hidden - d for _, d in wall)
            nearest_line = max(nm(minimum) + g - d for _, d in wall)

            # A board from the row line ends where the gap to the wall is the least one, at its own edge if the gap is no less there.
            def width(d):
                return min(Fraction(p), line + d - g)
            depths = [p - width(d) for _, d in wall]
            between = nearest(p - width(at(wall, place)))
            said = []
            if p - max(depths) < nm(minimum):
                said.append("scribe-too-deep")
            if max(depths) == 0:
                said.append("no-scribe-needed")
            rows.append((f"{name}, {about}", millimetre_text(text), pitch + " mm", minimum + " mm", gap + " mm", trim.split(" ")[0] + " mm" if trim else "",
                         trim.split(" ")[1] + " mm" if trim else "", mm(place) + " mm", mm(line), mm(nearest_line), mm(int(max(depths))),
                         " ".join(mm(int(depth)) for depth in depths), mm(between), words(said)))
    table("walls.py", "A row scribed along a wall that is not straight", "the widest board that leaves the gap, place by place",
          "exact; between two places rounded to a nanometre",
          ("about", "wall", "pitch", "minimum", "gap", "trimCover", "trimBearing", "place", "rowLineMillimetres", "nearestRowLineMillimetres", "deepestMillimetres",
           "depths", "depthAtPlaceMillimetres", "findings"), rows, "wall: place along the string and distance beyond it in mm; depths: at these places, in mm")


def trim():
    rows = []
    for cover, bearing, gap in [("18", "3", "10"), ("13", "3", "10"), ("40", "2", "8"), ("19.05", "3.175", "12.7"), ("60", "0", "0")]:
        for variation in ("0", "5", "5.000001", "14", "3.175", "120"):
            # The widest gap at which the trim still rests is the cover less the bearing.
            span = nm(cover) - nm(bearing) - nm(gap)
            v = nm(variation)
            saw = v - span if v > span else 0
            half = -(-v // 2)
            each = half - span if half > span else 0
            rows.append((f"trim {cover} on {bearing}, gap {gap}, wall varies by {variation}", cover + " mm", bearing + " mm", gap + " mm", variation + " mm",
                         mm(span), mm(saw), mm(each), "trim-hides-part" if saw else "trim-hides-all"))
    table("walls.py", "What a trim hides of a wall that varies", "cover less bearing less least gap; of what is more, the rest is sawn",
          "exact; half of a variation rounded up to a nanometre",
          ("about", "cover", "bearing", "leastGap", "variation", "spanMillimetres", "toSawMillimetres", "toSawAtEachOfTwoMillimetres", "findings"), rows)


def rips(wall, pitch, gap):
    """Row by row along each straight part of a wall: where its edge is in the row, and how wide the row is there."""
    found = []
    for (a, d), (b, e) in zip(wall, wall[1:]):
        y0, y1 = d - gap, e - gap
        here = []
        for row in range(1, max(y0, y1) // pitch + 2):
            foot, head = (row - 1) * pitch, row * pitch
            if y0 == y1:
                if foot < y0 < head:
                    here.append((Fraction(0), row, Fraction(0), Fraction(1)))
                continue
            # Shares of the way at which the edge passes the row's two lines.
            s, t = sorted((Fraction(foot - y0, y1 - y0), Fraction(head - y0, y1 - y0)))
            s, t = max(s, Fraction(0)), min(t, Fraction(1))
            if s < t:
                here.append((s, row, s, t))
        for _, row, s, t in sorted(here):
            widths = [y0 + (y1 - y0) * share - (row - 1) * pitch for share in (s, t)]
            found.append((row, nearest(a + (b - a) * s), nearest(a + (b - a) * t), int(widths[0]), int(widths[1])))
    return found


def tapered():
    rows = []
    cases = [("from row 21 into row 20", "0,3730; 5500,3620", "185", "10", ""), ("within one row", "0,3700; 4000,3640", "185", "10", ""),
             ("parallel", "0,3600; 4000,3600", "185", "10", ""), ("along a row line", "0,3710; 4000,3710", "185", "10", ""),
             ("begins on a row line", "0,3710; 4000,3600", "185", "10", ""), ("ends on a row line", "0,3650; 4000,3710", "185", "10", ""),
             ("through five rows", "0,1000; 3000,1500", "120", "8", ""), ("up and down again", "0,1000; 1500,1300; 3100,950", "140", "12", ""),
             ("places that do not come out even", "0,1000; 3100,1700", "130", "10", ""), ("a strip floor", "0,914.4; 3048,965.2", "57.15", "12.7", ""),
             ("less than one row", "0,60; 2000,130", "185", "10", ""), ("nearly to nothing", "0,10.000001; 2000,130", "185", "10", ""),
             ("a trim hides it", "0,3700; 4000,3694", "185", "10", "20 3"), ("a trim hides a row line", "0,3712; 4000,3706", "185", "10", "20 3"),
             ("a trim hides part", "0,3700; 4000,3640", "185", "10", "20 3"), ("a trim hides just all", "0,3700; 4000,3693", "185", "10", "20 3")]
    for about, text, pitch, gap, over in cases:
        wall = wall_of(text)
        p, g = nm(pitch), nm(gap)
        found, straight, said = rips(wall, p, g), "none", []
        if over:
            cover, bearing = (nm(part) for part in over.split(" "))
            near, far = min(d for _, d in wall), max(d for _, d in wall)
            if near - g + (cover - bearing) >= far:
                # One straight edge: beneath the trim all along, and on a row line if one is there.
                edges = [k * p for k in range(1, near // p + 2) if k * p <= near - g and far - k * p <= cover - bearing]
                straight = mm(p) if edges else mm((near - g) % p)
                found, said = [], ["trim-hides-all"]
            else:
                said = ["trim-hides-part"]
        if any(0 in rip[3:] for rip in found):
            said.append("row-comes-to-a-point")
        rows.append((about, millimetre_text(text), pitch + " mm", gap + " mm", over.split(" ")[0] + " mm" if over else "", over.split(" ")[1] + " mm" if over else "",
                     "; ".join(" ".join([str(rip[0])] + [mm(each) for each in rip[1:]]) for rip in found) or "none", straight, words(said)))
    table("walls.py", "Rows that a wall cuts off at a taper", "each row line crossed with each straight part of the wall", "widths exact, places rounded to a nanometre",
          ("about", "wall", "pitch", "gap", "trimCover", "trimBearing", "rips", "straightRowMillimetres", "findings"), rows,
          "wall: place along the line and distance from it in mm; rips: row, from, to, width there and there, in mm")


def right_angle():
    rows = []
    cases = [("4 m by 3 m in decimetres", "4000", "3000", "100"), ("3 m by 4 m in decimetres", "3000", "4000", "100"), ("along is short", "950", "5000", "100"),
             ("in feet", "4267.2", "3352.8", "304.8"), ("in inches", "4267.2", "3352.8", "25.4"), ("just one unit", "400", "300", "100"),
             ("a nanometre short of two", "799.999999", "600", "100"), ("a hall", "24650", "18200", "1000"), ("in millimetres", "3817", "2911", "1")]
    for about, along, square, unit in cases:
        a, s, u = nm(along), nm(square), nm(unit)
        found = [(k, x, y) for k in range(1, 8000) for x, y in ((3, 4), (4, 3)) if k * x * u <= a and k * y * u <= s]
        best = max(k for k, _, _ in found)
        ways = [(x, y) for k, x, y in found if k == best]
        legs = (mm(best * ways[0][0] * u), mm(best * ways[0][1] * u)) if len(ways) == 1 else ("", "")
        rows.append((about, along + " mm", square + " mm", unit + " mm", *legs, mm(5 * best * u)))
    table("walls.py", "The largest right angle of three, four and five that a floor has room for", "every multiple of the unit tried, both ways round", "exact",
          ("about", "roomAlong", "roomSquare", "unit", "alongMillimetres", "squareMillimetres", "diagonalMillimetres"), rows)


def diagonal():
    rows = []
    for one, other, off in [("3000", "4000", "0"), ("3000", "4000", "5"), ("3000", "4000", "-5"), ("5000", "12000", "10"), ("3657.6", "2743.2", "-6.35"), ("1000", "1000", "1"),
                            ("4821.3", "3377.9", "2.5"), ("8000", "600", "-1"), ("600", "8000", "-1"), ("20000", "15000", "40")]:
        a, b = nm(one), nm(other)
        true = nearest(decimal(a * a + b * b).sqrt())
        measured = true + nm(off)
        # The end of the other leg at (x, y): x^2 + y^2 = b^2 and (x - a)^2 + y^2 = d^2, so x = (a^2 + b^2 - d^2) / 2a; it leans away by -x.
        lean = nearest(Fraction(measured * measured - a * a - b * b, 2 * a))
        rows.append((f"{one} and {other}, diagonal off by {off}", one + " mm", other + " mm", mm(measured) + " mm", mm(true), mm(lean)))
    table("walls.py", "The diagonal of a right angle, and how far it is off square if it measures otherwise", "two circles about the marks; square roots to 60 digits",
          "rounded to a nanometre", ("about", "one", "other", "measured", "diagonalMillimetres", "leanMillimetres"), rows)


def end_cut():
    rows = []
    cases = [("square", "0 0 1000 0", "2000 0 2000 1500"), ("45 degrees", "0 0 1000 0", "0 0 1500 1500"), ("30 degrees off, nearly", "0 0 1000 0", "0 0 577.350269 1000"),
             ("three by four", "0 0 1000 0", "0 0 3000 4000"), ("leaning back", "0 0 1000 0", "3000 0 1200 2400"), ("boards along a slant", "0 0 4000 3000", "1000 0 1000 2500"),
             ("boards along a slant, wall square to it", "0 0 4000 3000", "0 0 -1500 2000"), ("downwards", "0 0 1000 0", "0 4000 800 0"),
             ("nearly along", "0 0 1000 0", "0 0 5000 120"), ("boards along a falling line", "500 900 3500 -3100", "0 0 4000 0")]
    for about, line, wall in cases:
        for pitch in ("185", "57.15"):
            a, b = (vector(text) for text in (line, wall))
            along = abs(a[0] * b[0] + a[1] * b[1])
            across = abs(a[0] * b[1] - a[1] * b[0])
            slope = Fraction(along, across)
            p = nm(pitch)
            off = p * slope
            cut = (decimal(p * p + off * off)).sqrt()
            rows.append((f"{about}, {pitch}", line, wall, pitch + " mm", f"{math.degrees(math.atan2(along, across)):.4f}", fixed(off / 10**6, 5),
                         fixed(cut / 10**6, 5)))
    table("walls.py", "Boards cut at a wall that is not square to them", "products of the directions of boards and wall", "degrees to four decimals, lengths to 0.00001 mm",
          ("about", "line", "wall", "pitch", "offSquareDegrees", "runOffMillimetres", "cutMillimetres"), rows, "line, wall: two points, x y x y in mm")


def vector(text):
    x0, y0, x1, y1 = (nm(part) for part in text.split(" "))
    return x1 - x0, y1 - y0


def corner_pieces():
    rows = []
    cases = [("a kite", "0 0 1000 0", "0,0; 2000,1000; 0,2500; -1500,1200", "185"), ("a rectangle has none", "0 0 1000 0", "0,0; 4000,0; 4000,3000; 0,3000", "185"),
             ("a rectangle, boards along its diagonal", "0 0 4000 3000", "0,0; 4000,0; 4000,3000; 0,3000", "185"),
             ("a triangle with a wall along the boards", "0 0 1000 0", "0,0; 4000,0; 1500,2100", "140"), ("an arrowhead with a reflex corner", "0 0 1000 0",
             "0,0; 2000,1500; 4000,0; 2000,3000", "120"), ("a corner on a row line", "0 0 1000 0", "0,0; 2000,1000; 0,1850; -1500,1000", "185"),
             ("below the line", "0 0 1000 0", "0,-3000; 2000,-1700; 300,-500; -1200,-1400", "185")]
    for about, line, room, pitch in cases:
        ax, ay = vector(line)
        ox, oy = (nm(part) for part in line.split(" ")[:2])
        length = Fraction(math.isqrt(ax * ax + ay * ay))
        if length * length != ax * ax + ay * ay:
            raise ValueError("take a line whose length is a whole number")
        points = [tuple(nm(part) for part in pair.split(",")) for pair in room.split("; ")]
        place = [((x - ox) * ax + (y - oy) * ay, (y - oy) * ax - (x - ox) * ay) for x, y in points]
        place = [(along / length, height / length) for along, height in place]
        p, found = nm(pitch), []
        for i, (x, y) in enumerate(place):
            (bx, by), (cx, cy) = place[i - 1], place[(i + 1) % len(place)]
            turn = (x - bx) * (cy - y) - (y - by) * (cx - x)
            if turn <= 0 or (by - y) * (cy - y) <= 0:
                continue
            k = y / p
            height = (math.floor(k) + 1) * p - y if by > y else y - (math.ceil(k) - 1) * p
            # Where both walls cross that row line, one on each side of the corner.
            spread = abs(height * (bx - x) / abs(by - y) - height * (cx - x) / abs(cy - y))
            found.append((spread, i + 1, height))
        rows.append((about, line, "; ".join(pair.replace(",", " ") for pair in room.split("; ")), pitch + " mm",
                     "; ".join(f"{corner} {fixed(height / 10**6, 4)} {fixed(spread / 10**6, 4)}" for spread, corner, height in sorted(found)) or "none"))
    table("walls.py", "The pointed pieces of rows at the corners of a room", "walls crossed with the next row line, corner by corner", "0.0001 mm",
          ("about", "line", "room", "pitch", "pieces"), rows, "pieces: corner, height to the row line, length along it in mm, the shortest first")


if __name__ == "__main__":
    run({"scribe_computed.csv": scribe, "trim_cover_computed.csv": trim, "tapered_rows_computed.csv": tapered, "right_angle_computed.csv": right_angle,
         "diagonal_computed.csv": diagonal, "end_cut_computed.csv": end_cut, "corner_pieces_computed.csv": corner_pieces})
