"""Borders, profiles, pipes and notches, worked out from the definitions in docs/fittings.md and docs/transitions.md.

python3 fittings.py apron_computed.csv prints that table.
"""
import math
from decimal import Decimal
from fractions import Fraction
from table import fixed, mm, nm, run, table, words


def apron():
    rows = []
    for about, width, pitch, least in [("wide enough", "4000", "185", "300"), ("just a whole number of boards", "2450", "185", "300"), ("a nanometre too wide", "2450.000001", "185", "300"),
                                       ("no border asked for", "3700", "185", "0"), ("no room for a board", "700", "185", "300"), ("borders alone", "600", "185", "300"),
                                       ("just one board", "785", "185", "300"), ("a nanometre short of one board", "784.999999", "185", "300"), ("modules of a foot", "5181.6", "304.8", "152.4"),
                                       ("strips of 2 1/4 in", "3352.8", "57.15", "228.6"), ("a hall", "18543.21", "129.7", "450"), ("module of a pattern", "6020", "412.5", "250")]:
        w, p, a = nm(width), nm(pitch), nm(least)
        # One board more as long as both borders, the rest shared, are wide enough.
        n = 0
        while (w - (n + 1) * p) // 2 >= a:
            n += 1
        rest = w - n * p
        rows.append((about, width + " mm", pitch + " mm", least + " mm", n, mm(rest // 2), mm(rest - rest // 2)))
    table("fittings.py", "A field of whole boards between two equal borders", "boards added one by one", "exact; the nanometre that cannot be halved goes to the second border",
          ("about", "width", "pitch", "least", "boards", "firstMillimetres", "secondMillimetres"), rows)


def pipes():
    rows = []
    for diameter in ("15", "22", "26.9", "60.3", "114.3"):
        for gap, collar in (("10", "70"), ("8", "55"), ("0", "40"), ("12.7", "150.000001")):
            d, g, c = nm(diameter), nm(gap), nm(collar)
            hole = d + 2 * g
            # Pushed over, the pipe touches the hole on one side; on the other the hole is its whole width less half a pipe away, the collar half of itself.
            over = math.floor(Fraction(c, 2) - (hole - Fraction(d, 2)))
            rows.append((f"pipe {diameter}, gap {gap}, collar {collar}", diameter + " mm", gap + " mm", collar + " mm", mm(hole), mm(over)))
    table("fittings.py", "The hole for a pipe, and by how much a collar still covers it", "the floor pushed over as far as the hole lets it", "exact; overlap rounded down to a nanometre",
          ("about", "diameter", "allRound", "collar", "holeMillimetres", "overlapMillimetres"), rows)


def points_of(text):
    return [tuple(nm(part) for part in pair.split(" ")) for pair in text.split("; ")]


def unit(p, q):
    dx, dy = Decimal(q[0]) - Decimal(p[0]), Decimal(q[1]) - Decimal(p[1])
    length = (dx * dx + dy * dy).sqrt()
    return dx / length, dy / length


def meeting(p, u, q, v):
    """Where two lines through p and q in the directions u and v meet; p moved on to q's foot where they run in one line."""
    cross = u[0] * v[1] - u[1] * v[0]
    if abs(cross) < Decimal("1e-30"):
        return q
    t = ((q[0] - p[0]) * v[1] - (q[1] - p[1]) * v[0]) / cross
    return p[0] + t * u[0], p[1] + t * u[1]


def moved(p, u, depth):
    """A point moved to the left of a direction."""
    return Decimal(p[0]) - u[1] * depth, Decimal(p[1]) + u[0] * depth


def turn_degrees(u, v):
    return math.degrees(math.atan2(float(u[0] * v[1] - u[1] * v[0]), float(u[0] * v[0] + u[1] * v[1])))


def plain(text):
    return text[1:] if text.startswith("-") and not text.strip("-0.") else text


def millimetres(value):
    return fixed(value / 10**6, 3)


def border():
    rows = []
    room, hearth = "0 0; 4000 0; 4000 3000; 0 3000", "0 0; 0 500; 1200 500; 1200 0"
    for about, way, ring, width, count in [
            ("a rectangle", "inside", room, "90", 1), ("three rows", "inside", room, "185", 3), ("round a hearth", "around", hearth, "90", 1), ("two rows round a hearth", "around", hearth, "120", 2),
            ("an L with a reflex corner", "inside", "0 0; 5000 0; 5000 2000; 2500 2000; 2500 4000; 0 4000", "140", 2), ("a bay with corners of 135 degrees", "inside",
             "0 0; 3000 0; 4000 1000; 4000 3000; 0 3000", "140", 1), ("a triangle of three, four and five", "inside", "0 0; 4000 0; 0 3000", "100", 2),
            ("an obtuse and a sharp corner", "inside", "0 0; 4000 0; 5200 2500; 0 2500", "70", 1), ("round an L", "around", "0 0; 0 900; 400 900; 400 300; 1000 300; 1000 0", "60", 1),
            ("just a little field", "inside", "0 0; 1000 0; 1000 600; 0 600", "299", 1), ("round a column set askew", "around", "0 0; -300 400; 100 700; 400 300", "80", 1),
            ("a room set askew", "inside", "0 0; 3200 2400; 1400 4800; -1800 2400", "130", 2)]:
        corners, w = points_of(ring), nm(width)
        n = len(corners)
        along = [unit(corners[i], corners[(i + 1) % n]) for i in range(n)]

        def at_depth(depth):
            lines = [(moved(corners[i], along[i], depth), along[i]) for i in range(n)]
            return [meeting(*lines[i - 1], *lines[i]) for i in range(n)]
        boards, stock = [], Decimal(0)
        for row in range(1, count + 1):
            outer, inner = at_depth(w * (row - 1)), at_depth(w * row)
            for i in range(n):
                j, u = (i + 1) % n, along[i]
                line = [p[0] * u[0] + p[1] * u[1] for p in (outer[i], outer[j], inner[i], inner[j])]
                takes = max(line) - min(line)
                stock += takes
                mitres = [turn_degrees(along[i - 1], u) / 2, turn_degrees(u, along[j]) / 2]
                boards.append(f"{row} {i + 1} {millimetres(line[1] - line[0])} {millimetres(line[3] - line[2])} {millimetres(takes)} "
                              + " ".join(plain(f"{mitre:.4f}") for mitre in mitres))
        field = "; ".join(f"{millimetres(x)} {millimetres(y)}" for x, y in at_depth(w * count))
        rows.append((about, way, ring, width + " mm", count, n * count, "; ".join(boards), millimetres(stock), field))
    table("fittings.py", "A border of straight boards with mitres", "each side moved by the border's depth, neighbours cut with each other", "0.001 mm, 0.0001 degrees",
          ("about", "way", "line", "width", "rows", "count", "boards", "stockMillimetres", "field"), rows,
          "line: corners in mm, the border on its left; boards: row, side, edge at the line, edge at the field, length of board, both mitres")


def profile():
    rows = []
    for about, line, width in [("straight", "0 0; 2400 0", "40"), ("round a hearth", "0 0; 0 600; 1500 600; 1500 0", "40"), ("to the right and to the left", "0 0; 1000 0; 1000 800; 2200 800", "50"),
                               ("half a right angle", "0 0; 1000 0; 1700 700", "30"), ("three by four", "0 0; 1000 0; 1300 400; 1300 2400", "44"), ("straight on at a corner", "0 0; 1000 0; 2500 0", "30"),
                               ("sharp corner", "0 0; 1000 0; 200 600", "30"), ("mitres that cross", "0 0; 1000 0; 1000 30; 0 30", "40"), ("mitres that just meet", "0 0; 1000 0; 1000 40; 0 40", "40"),
                               ("feet and inches", "0 0; 914.4 0; 914.4 1219.2", "50.8"), ("slanted throughout", "100 200; 900 800; 300 1600; 1500 2500", "60")]:
        corners, w = points_of(line), nm(width)
        n = len(corners)
        along = [unit(p, q) for p, q in zip(corners, corners[1:])]
        pieces, said, total = [], [], Decimal(0)
        for i, u in enumerate(along):
            ends = []
            for side in (1, -1):
                edge = moved(corners[i], u, side * Decimal(w) / 2)
                start, end = edge, moved(corners[i + 1], u, side * Decimal(w) / 2)
                if i > 0:
                    start = meeting(moved(corners[i], along[i - 1], side * Decimal(w) / 2), along[i - 1], edge, u)
                if i + 1 < len(along):
                    end = meeting(edge, u, moved(corners[i + 1], along[i + 1], side * Decimal(w) / 2), along[i + 1])
                ends.append([p[0] * u[0] + p[1] * u[1] for p in (start, end)])
            starts, stops = [e[0] for e in ends], [e[1] for e in ends]
            length = (Decimal(corners[i + 1][0]) - corners[i][0]) * u[0] + (Decimal(corners[i + 1][1]) - corners[i][1]) * u[1]
            total += length
            full = min(stops) - max(starts)
            if full < Decimal("0.5"):
                said = ["mitres-cross"]
            cuts = [turn_degrees(along[i - 1], u) / 2 if i else 0, turn_degrees(u, along[i + 1]) / 2 if i + 1 < len(along) else 0]
            pieces.append(f"{millimetres(length)} {millimetres(max(stops) - min(starts))} {millimetres(full)} " + " ".join(plain(f"{cut:.4f}") for cut in cuts))
        rows.append((about, line, width + " mm", "; ".join(pieces), millimetres(total), words(said)))
    table("fittings.py", "A profile along several straight lines, mitred where they meet", "both edges of each piece cut with those of its neighbours", "0.001 mm, 0.0001 degrees",
          ("about", "line", "width", "pieces", "lengthMillimetres", "findings"), rows,
          "line: points of the middle line in mm; pieces: length, long point, full width, both cuts, to the left positive")


if __name__ == "__main__":
    run({"apron_computed.csv": apron, "pipe_allowance_computed.csv": pipes, "mitred_border_computed.csv": border, "profile_line_computed.csv": profile})
