"""Arcs, walls that are not straight and running dimensions, worked out from the definitions in docs/wall-shapes.md and docs/running-dimensions.md.

python3 shapes.py arc_computed.csv prints that table.
"""
from decimal import Decimal
from fractions import Fraction
from table import decimal, fixed, mm, nearest, nm, run, table


def arctangent(x):
    """The angle of a tangent, halved four times and then by its series."""
    for _ in range(4):
        x = x / (1 + (1 + x * x).sqrt())
    total, power, k = Decimal(0), x, 0
    while abs(power) > Decimal("1e-70"):
        total += (power if k % 2 == 0 else -power) / (2 * k + 1)
        power, k = power * x * x, k + 1
    return 16 * total


PI = 4 * arctangent(Decimal(1))


def sine(x):
    """The sine by its series, of an angle up to a full circle."""
    total, term, k = Decimal(0), x, 1
    while abs(term) > Decimal("1e-70"):
        total += term
        term = -term * x * x / ((k + 1) * (k + 2))
        k += 2
    return total


def cosine(x):
    return sine(PI / 2 - x)


def arc_of(chord, rise):
    """Radius and angle at the centre, from the circle through both ends and the middle of the arc."""
    half = Decimal(chord) / 2
    radius = (half * half + Decimal(rise) * rise) / (2 * Decimal(rise))
    # Seen from an end, the middle of the arc lies at a quarter of its angle.
    return radius, 4 * arctangent(Decimal(rise) / half)


def arc():
    rows = []
    for about, chord, rise in [("half circle of 6 ft", "3657.6", "1828.8"), ("half circle of 8 in", "406.4", "203.2"), ("flat bow", "4000", "12"), ("very flat bow", "6000", "0.006"),
                               ("a millionth of the chord", "1000", "0.001"), ("sixth of a circle", "1000", "133.974596"), ("bay", "2400", "600"),
                               ("three by four", "8000", "2000"), ("more than a half circle", "1000", "1500"), ("nearly a whole circle", "10", "2000"),
                               ("a thousand times the chord", "1", "1000"), ("turret", "1800", "2600"), ("chord of an odd length", "1234.567891", "98.765432"),
                               ("a hall's apse", "18288", "6096")]:
        c, h = nm(chord), nm(rise)
        radius, angle = arc_of(c, h)
        area = radius * radius * (angle - sine(angle)) / 2
        rows.append((about, chord + " mm", rise + " mm", mm(nearest(radius)), fixed(angle * 180 / PI, 8), mm(nearest(radius * angle)), str(nearest(area / 10**12))))
    table("shapes.py", "An arc by chord and rise", "circle through three points; series of arctangent and sine to 60 digits",
          "radius and length to a nanometre, angle to eight decimals, area to a square millimetre",
          ("about", "chord", "rise", "radiusMillimetres", "degrees", "lengthMillimetres", "segmentSquareMillimetres"), rows)


def points_of(text):
    return [nm(part) for part in text.split(" ")]


def place(ends, along, left):
    """The point so far along a straight wall and so far to its left, along and left being lengths in nanometres."""
    x0, y0, x1, y1 = points_of(ends)
    dx, dy = x1 - x0, y1 - y0
    length = decimal(dx * dx + dy * dy).sqrt()
    along, left = (value if isinstance(value, Decimal) else decimal(value) for value in (along, left))
    return x0 + (along * dx - left * dy) / length, y0 + (along * dy + left * dx) / length


def points_text(points):
    return "; ".join(f"{fixed(x / 10**6, 4)} {fixed(y / 10**6, 4)}" for x, y in points) or "none"


def length_of(ends):
    x0, y0, x1, y1 = points_of(ends)
    return decimal((x1 - x0) ** 2 + (y1 - y0) ** 2).sqrt()


def chain():
    rows = []
    for about, ends, rise, within in [("outwards in three parts", "0 0 4000 0", "1000", "200"), ("inwards", "0 0 4000 0", "-1000", "200"), ("fine", "0 0 4000 0", "1000", "20"),
                                      ("half circle", "0 0 3000 4000", "2500", "50"), ("more than a half circle", "500 300 1500 300", "1500", "40"),
                                      ("the chord is near enough", "0 0 4000 0", "5", "6"), ("just not near enough", "0 0 4000 0", "5", "4.99"),
                                      ("slanted", "100 200 2100 1700", "-310", "8"), ("flat", "0 0 0 6000", "24", "1"), ("backwards", "4000 0 0 0", "700", "60")]:
        r = nm(rise)
        chord = length_of(ends)
        radius, angle = arc_of(chord, abs(r))
        # A part of angle f stands off its chord by R (1 - cos(f / 2)): the fewest parts for which that is within the bound.
        parts = 1
        while radius * (1 - cosine(angle / parts / 2)) > nm(within):
            parts += 1
        found = []
        for k in range(1, parts):
            turn = angle * (2 * Decimal(k) / parts - 1) / 2
            along = chord / 2 + radius * sine(turn)
            off = radius * cosine(turn) - (radius - abs(r))
            found.append(place(ends, along, -off if r > 0 else off))
        rows.append((about, ends, rise + " mm", within + " mm", len(found), points_text(found)))
    table("shapes.py", "An arc over a wall as a chain of straight walls", "fewest equal parts by trying one after the other; points on the circle", "0.0001 mm",
          ("about", "wall", "rise", "within", "count", "points"), rows, "wall: its two corners, x y x y in mm; points between them")


def offsets():
    rows = []
    for about, ends, measured, text in [
            ("niche", "0 0 4000 0", "", "1000 0; 1000 -100; 1600 -100; 1600 0"), ("chimney breast", "0 0 4000 0", "", "1200 0; 1200 350; 2300 350; 2300 0"),
            ("bow", "0 0 3000 4000", "", "1250 20; 2500 31; 3750 18"), ("wall runs to the left", "4000 3000 0 3000", "", "1000 15; 2500 -4"),
            ("measured longer than it came out", "0 0 4000 0", "4010", "1000 12; 2005 20; 3007.5 9"), ("measured shorter", "500 500 3500 4500", "4990", "998 12; 2495 20"),
            ("points at both corners fall away", "0 0 4000 0", "", "0 0; 2000 10; 4000 0"), ("step at the first corner", "0 0 4000 0", "", "0 50; 900 50; 900 0"),
            ("a point twice", "0 0 4000 0", "", "1000 10; 1000 10; 2000 10"), ("slanted, feet", "304.8 609.6 3048 1524", "", "762 25.4; 1524 -12.7")]:
        stretch = length_of(ends) / nm(measured) if measured else Decimal(1)
        x0, y0, x1, y1 = points_of(ends)
        found, last = [], (x0, y0)
        for pair in text.split("; "):
            along, left = (nm(part) for part in pair.split(" "))
            point = place(ends, along * stretch, left)
            rounded = tuple(nearest(value) for value in point)
            if rounded != last and rounded != (x0, y0):
                found.append(point)
            last = rounded
        if found and tuple(nearest(value) for value in found[-1]) == (x1, y1):
            found.pop()
        rows.append((about, ends, measured + " mm" if measured else "", text, len(found), points_text(found)))
    table("shapes.py", "The face of a wall from distances off its straight line", "each point along and square to the wall", "0.0001 mm",
          ("about", "wall", "measured", "offsets", "count", "points"), rows,
          "wall: its two corners, x y x y in mm; offsets: along it and to the inside (left) in mm; points between the corners")


def bay():
    rows = []
    for about, ends, depth, front in [("outwards", "0 0 4000 0", "600", "2800"), ("inwards", "0 0 4000 0", "-450", "1500"), ("square sides", "0 0 0 2400", "700", "2400"),
                                      ("slanted", "0 0 1500 2000", "500", "1200"), ("a point, nearly", "0 0 3000 0", "900", "0.001"), ("feet", "0 0 3657.6 0", "762", "1828.8")]:
        half = (length_of(ends) - nm(front)) / 2
        found = [place(ends, half, -nm(depth)), place(ends, length_of(ends) - half, -nm(depth))]
        rows.append((about, ends, depth + " mm", front + " mm", len(found), points_text(found)))
    table("shapes.py", "The inner corners of a bay of three straight walls", "its middle wall parallel to the opening, alike on both sides", "0.0001 mm",
          ("about", "wall", "depth", "front", "count", "points"), rows, "wall: both ends of the opening, x y x y in mm")


def running():
    rows = []
    # The whole wall once more: a tape of 2 mm and 0.2 mm a metre, three standard deviations of the difference of two lengths.
    again = {"feet and inches": "3876.675", "parts of 10.4": "40", "one reading": "2758", "centimetres": "5024", "ten parts": "3046", "sixteenths": "3657.6",
             "halves go to the even step": "35.5"}
    for about, readings, step in [("feet and inches", "1412.875 2343.15 3851.275", "1.5875"), ("parts of 10.4", "10.4 20.8 31.2", "1"), ("one reading", "2750.5", "1"),
                                  ("halves go to the even step", "10.5 21.5 32.5 44", "1"), ("centimetres", "1234 2346 3458 5015", "10"),
                                  ("close together", "100 100.000001 250", "0.0001"), ("sixteenths", "914.4 1828.8 2746.375 3657.6", "25.4"),
                                  ("ten parts", "303 607 911 1214 1518 1822 2125 2429 2733 3037", "5")]:
        marks = [nm(reading) for reading in readings.split(" ")]
        lengths = [b - a for a, b in zip([0] + marks, marks)]
        s = nm(step)
        to_step = [round(Fraction(mark, s)) * s for mark in marks]
        usable = all(b > a for a, b in zip([0] + to_step, to_step))
        overall, said = again.get(about, ""), ""
        if overall:
            spread = sum(4 + (Fraction(2, 10) * Fraction(length, 10**9)) ** 2 for length in (marks[-1], nm(overall)))
            said = "overall-differs" if Fraction(nm(overall) - marks[-1], 10**6) ** 2 > 9 * spread else "none"
        rows.append((about, readings, overall + " mm" if overall else "", step + " mm" if usable else "", " ".join(mm(each) for each in lengths), " ".join(mm(each) for each in to_step) if usable else "",
                     " ".join(mm(b - a) for a, b in zip([0] + to_step, to_step)) if usable else "", said))
    table("shapes.py", "Lengths between readings of one tape", "differences of neighbours; readings, not lengths, rounded to the nearest step, a half to the even one", "exact",
          ("about", "readings", "overall", "step", "lengths", "roundedReadings", "roundedLengths", "findings"), rows, "lists in mm")


if __name__ == "__main__":
    run({"arc_computed.csv": arc, "arc_chain_computed.csv": chain, "wall_offsets_computed.csv": offsets, "bay_computed.csv": bay,
         "running_dimensions_computed.csv": running})
