"""Floors through several rooms, worked out from the definitions in docs/start-line.md.

python3 floors.py floor_stops_computed.csv prints that table.
"""
import math
from fractions import Fraction
from table import mm, nearest, nm, run, table


def corners_of(text):
    return [tuple(nm(part) for part in pair.split(" ")) for pair in text.split("; ")]


def near(point, ring, within):
    """Whether a point lies in a ring or no farther from its sides than so much, by exact numbers."""
    x, y = point
    inside = False
    for (ax, ay), (bx, by) in zip(ring, ring[1:] + ring[:1]):
        dx, dy = bx - ax, by - ay
        t = max(Fraction(0), min(Fraction(1), Fraction((x - ax) * dx + (y - ay) * dy, dx * dx + dy * dy)))
        if (ax + t * dx - x) ** 2 + (ay + t * dy - y) ** 2 <= within * within:
            return True
        if (ay > y) != (by > y) and x < ax + Fraction((y - ay) * dx, dy):
            inside = not inside
    return inside


HALL, STUDY, DOOR = "0 0; 2000 0; 2000 4000; 0 4000", "2200 500; 5200 500; 5200 3300; 2200 3300", "2000 1200; 2200 1200; 2200 2100; 2000 2100"
FLOORS = [
    ("one room", "0 0 1000 0", [("hall", HALL, [])]),
    ("two rooms and a doorway", "0 0 1000 0", [("hall", HALL, []), ("study", STUDY, []), ("door", DOOR, [])]),
    ("lines the other way round", "1000 4000 0 4000", [("hall", HALL, []), ("study", STUDY, []), ("door", DOOR, [])]),
    ("boards across", "2200 500 2200 1500", [("hall", HALL, []), ("study", STUDY, []), ("door", DOOR, [])]),
    ("a line through the room", "0 1800 1000 1800", [("hall", HALL, [])]),
    ("a column", "0 0 1000 0", [("hall", HALL, ["800 1500; 800 1900; 1100 1900; 1100 1500"])]),
    ("rooms that share a wall line", "0 0 1000 0", [("left", "0 0; 2000 0; 2000 3000; 0 3000", []), ("right", "2000 0; 4000 0; 4000 2500; 2000 2500", [])]),
    ("rooms one above the other", "0 0 1000 0", [("low", "0 0; 3000 0; 3000 2000; 0 2000", []), ("high", "0 2000; 3000 2000; 3000 3500; 0 3500", [])]),
    ("one above the other, half a millimetre apart", "0 0 1000 0", [("low", "0 0; 3000 0; 3000 2000; 0 2000", []), ("high", "0 2000.5; 3000 2000.5; 3000 3500; 0 3500", [])]),
    ("one above the other, two millimetres apart", "0 0 1000 0", [("low", "0 0; 3000 0; 3000 2000; 0 2000", []), ("high", "0 2002; 3000 2002; 3000 3500; 0 3500", [])]),
    ("only a part of the wall is open", "0 0 1000 0", [("low", "0 0; 3000 0; 3000 2000; 0 2000", []), ("high", "1000 2000; 2000 2000; 2000 3500; 1000 3500", [])]),
    ("a slanted wall", "0 0 1000 0", [("room", "0 0; 4000 0; 4000 3300; 0 3000", [])]),
    ("a wall too steep for rows", "0 0 1000 0", [("room", "0 0; 4000 0; 2500 3000; 0 2600", [])]),
    ("a line askew, room square to it", "100 200 500 500", [("room", "100 200; 3300 2600; 1500 5000; -1700 2600", [])]),
    ("a line askew, room not", "0 0 4000 3000", [("room", "0 0; 3000 0; 3000 2000; 0 2000", [])]),
    ("an L", "0 0 1000 0", [("L", "0 0; 5000 0; 5000 2000; 2500 2000; 2500 4000; 0 4000", [])]),
]


def stops():
    rows = []
    for about, line, parts in FLOORS:
        x0, y0, x1, y1 = (nm(part) for part in line.split(" "))
        ux, uy = x1 - x0, y1 - y0
        length = math.isqrt(ux * ux + uy * uy)
        if length * length != ux * ux + uy * uy:
            raise ValueError("take a line whose length is a whole number")

        def height(point):
            return Fraction((point[1] - y0) * ux - (point[0] - x0) * uy, length)

        def along(point):
            return Fraction((point[0] - x0) * ux + (point[1] - y0) * uy, length)
        rings = [(name, corners_of(shell), [corners_of(void) for void in voids]) for name, shell, voids in parts]
        found = []
        for name, shell, voids in rings:
            others = [other for label, other, _ in rings if label != name]
            # The floor is on the left of a room's walls walked against the clock, and of a void's walked with it.
            sides = [(f"{name}, wall {i + 1}", p, q) for i, (p, q) in enumerate(zip(shell, shell[1:] + shell[:1]))]
            for k, void in enumerate(voids):
                sides += [(f"{name}, void {k + 1} side {i + 1}", p, q) for i, (p, q) in enumerate(zip(void, void[1:] + void[:1]))]
            for label, p, q in sides:
                middle = (Fraction(p[0] + q[0], 2), Fraction(p[1] + q[1], 2))
                if any(all(near(point, other, nm(1)) for point in (p, middle, q)) for other in others):
                    continue
                run_along, rise = along(q) - along(p), height(q) - height(p)
                if run_along == 0 or 2 * abs(rise) > abs(run_along):
                    continue
                low, high = sorted((nearest(height(p)), nearest(height(q))))
                found.append((label, "above" if run_along > 0 else "below", low, high))
        levels = [nearest(height(point)) for _, shell, _ in rings for point in shell]
        rows.append((about, line, "; ".join(f"{name}: {shell.replace('; ', ', ')}" + "".join(" without " + void.replace("; ", ", ") for void in voids)
                                            for name, shell, voids in parts), len(found),
                     "; ".join(" ".join([label + ":", side, mm(low), mm(high)]) for label, side, low, high in sorted(found)),
                     mm(min(levels)), mm(max(levels))))
    table("floors.py", "Every place where a floor through several rooms ends across its rows", "sides of rooms that lie in no other room or along one, by exact numbers",
          "exact, heights rounded to a nanometre", ("about", "line", "parts", "count", "stops", "lowMillimetres", "highMillimetres"), rows,
          "line: two points, x y x y in mm; parts: name and corners, against the clock, those of voids, with it, behind the word without; stops: name, side on which the floor "
          "lies, lowest and highest level")


U_SHAPE = "0 0, 2000 0, 2000 3000, 4000 3000, 4000 0, 6000 0, 6000 5000, 0 5000"
E_SHAPE = "0 0, 1000 0, 1000 3000, 2000 3000, 2000 500, 3000 500, 3000 3000, 4000 3000, 4000 -200, 5000 -200, 5000 4000, 0 4000"


def row_line(first, pitch, level):
    """The first row line over a start line that lies at a level or beyond it."""
    line = nm(first)
    while line < nm(level):
        line += nm(pitch)
    return mm(line)


def order():
    """Floors made up so that what is laid back, and where arms meet, is seen on a sketch; row lines are counted."""
    rows = []
    for about, line, parts, pitch, first, tongue, turns, meetings, said in [
            ("from wall to wall", "0 0 1000 0", "hall: 0 0, 5000 0, 5000 3000, 0 3000", "185", "185", "0", [], "none", "none"),
            ("both ways from a line through the room", "0 1200 1000 1200", "hall: 0 0, 5000 0, 5000 3000, 0 3000", "185", "185", "5000", [], "none", "none"),
            ("from the far wall", "5000 3000 4000 3000", "hall: 0 0, 5000 0, 5000 3000, 0 3000", "185", "185", "0", [], "none", "none"),
            ("round an island", "0 0 1000 0", "hall: 0 0, 5000 0, 5000 3000, 0 3000 without 2000 1500, 2000 1900, 2400 1900, 2400 1500", "185", "185", "0", [],
             "1900 2000 2400 SIDE_BY_SIDE", "arms-meet"),
            ("round two islands", "0 0 1000 0", "hall: 0 0, 5000 0, 5000 3000, 0 3000 without 1000 800, 1000 1200, 1500 1200, 1500 800 without 3000 1700, 3000 2000, 3300 2000, 3300 1700",
             "185", "185", "0", [], "1200 1000 1500 SIDE_BY_SIDE; 2000 3000 3300 SIDE_BY_SIDE", "arms-meet"),
            ("both ways from a line between two islands", "0 1500 1000 1500",
             "hall: 0 0, 5000 0, 5000 3000, 0 3000 without 1000 800, 1000 1200, 1500 1200, 1500 800 without 3000 1700, 3000 2000, 3300 2000, 3300 1700", "185", "185", "5000", [],
             "-700 1000 1500 SIDE_BY_SIDE; 500 3000 3300 SIDE_BY_SIDE", "arms-meet"),
            ("two legs, from the left one", "0 0 1000 0", "U: " + U_SHAPE, "185", "185", "0", [("3000", "4000", "6000", "0", "U, wall 5")], "none", "laid-back"),
            ("two legs, from the right one", "4000 0 5000 0", "U: " + U_SHAPE, "185", "185", "0", [("3000", "-4000", "-2000", "0", "U, wall 1")], "none", "laid-back"),
            ("two legs, a narrow first row", "0 0 1000 0", "U: " + U_SHAPE, "185", "117.5", "0", [("3000", "4000", "6000", "0", "U, wall 5")], "none", "laid-back"),
            ("two legs, a row line where they part", "0 0 1000 0", "U: " + U_SHAPE, "200", "200", "0", [("3000", "4000", "6000", "0", "U, wall 5")], "none", "laid-back"),
            ("two legs, a nanometre beyond it", "0 0 1000 0", "U: " + U_SHAPE, "200", "199.999999", "0", [("3000", "4000", "6000", "0", "U, wall 5")], "none", "laid-back"),
            ("two legs, from where they part", "0 3000 1000 3000", "U: " + U_SHAPE, "185", "185", "4000", [], "none", "none"),
            ("from the top of two legs", "6000 5000 5000 5000", "U: " + U_SHAPE, "185", "185", "0", [], "none", "none"),
            ("three legs", "0 0 1000 0", "E: " + E_SHAPE, "140", "140", "0", [("3000", "2000", "3000", "500", "E, wall 5"), ("3000", "4000", "5000", "-200", "E, wall 9")], "none",
             "laid-back"),
            ("two rooms that do not hang together", "0 0 1000 0", "hall: 0 0, 2000 0, 2000 3000, 0 3000; study: 2500 0, 4500 0, 4500 3000, 2500 3000", "185", "185", "0", [], "none",
             "not-reached")]:
        back = "; ".join(" ".join([row_line(first, pitch, level), start, end, farthest, "to", walls]) for level, start, end, farthest, walls in turns)
        rows.append((about, line, parts, pitch + " mm", first + " mm", tongue, back or "none", meetings, said))
    table("floors.py", "What is laid back from a row, and where arms of a floor meet", "floors made up for it; the row line at or beyond the place where a part begins is counted",
          "exact", ("about", "line", "parts", "pitch", "firstRow", "tongueAtLineMillimetres", "turns", "meetings", "findings"), rows,
          "line, parts: as in floor_stops_computed.csv; turns: row line, from, to, farthest back, walls there; meetings: height over the line, from, to, how")


if __name__ == "__main__":
    run({"floor_stops_computed.csv": stops, "laying_order_constructed.csv": order})
