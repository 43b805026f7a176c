"""Notches of pieces, thin parts beside them and holes for pipes, worked out from the definitions in docs/fittings.md.

python3 pieces.py piece_notches_computed.csv prints that table.
"""
from fractions import Fraction
from table import mm, nm, run, table, words

SIDES = ("START_END", "FAR_END", "START_EDGE", "FAR_EDGE")


def corners_of(text):
    return [tuple(nm(part) for part in pair.split(" ")) for pair in text.split("; ")]


def inside(x, y, ring):
    """Whether a point that is on no side lies in a ring of sides along the axes."""
    found = False
    for (ax, ay), (bx, by) in zip(ring, ring[1:] + ring[:1]):
        if ax == bx and ax > x and min(ay, by) < y < max(ay, by):
            found = not found
    return found


def square(area):
    """Square nanometres as square millimetres."""
    value = Fraction(area, 10**12)
    text = f"{value.numerator * 10**12 // value.denominator:013d}"
    return (text[:-12] + "." + text[-12:]).rstrip("0").rstrip(".")


def parts_of(outline, holes):
    """Parts of the rectangle round a piece that are not of it, found cell by cell: kind, open sides, place, size and area."""
    xs = sorted({x for ring in [outline] + holes for x, _ in ring})
    ys = sorted({y for ring in [outline] + holes for _, y in ring})
    cells = set()
    for i in range(len(xs) - 1):
        for j in range(len(ys) - 1):
            x, y = Fraction(xs[i] + xs[i + 1], 2), Fraction(ys[j] + ys[j + 1], 2)
            if not inside(x, y, outline) or any(inside(x, y, hole) for hole in holes):
                cells.add((i, j))
    found = []
    while cells:
        todo, part = [cells.pop()], []
        while todo:
            i, j = todo.pop()
            part.append((i, j))
            for cell in ((i + 1, j), (i - 1, j), (i, j + 1), (i, j - 1)):
                if cell in cells:
                    cells.remove(cell)
                    todo.append(cell)
        left, right = min(i for i, _ in part), max(i for i, _ in part) + 1
        low, high = min(j for _, j in part), max(j for _, j in part) + 1
        touched = [name for name, there in zip(SIDES, (left == 0, right == len(xs) - 1, low == 0, high == len(ys) - 1)) if there]
        kind = {0: "HOLE", 2: "CORNER"}.get(len(touched)) or ("END_NOTCH" if touched[0].endswith("END") else "EDGE_NOTCH")
        area = sum((xs[i + 1] - xs[i]) * (ys[j + 1] - ys[j]) for i, j in part)
        found.append((kind, touched, xs[left] - xs[0], xs[right] - xs[left], ys[low] - ys[0], ys[high] - ys[low], area))
    return found


def described(part):
    kind, touched, at, along, edge, across, area = part
    return f"{kind} {'+'.join(sorted(touched)) or 'none'} {mm(at)} {mm(along)} {mm(edge)} {mm(across)} {square(area)}"


def notches():
    rows = []
    cases = [("a rectangle", "100 40; 1300 40; 1300 225; 100 225", ""), ("a notch in the far edge", "100 40; 1300 40; 1300 225; 490 225; 490 180; 310 180; 310 225; 100 225", ""),
             ("a notch in the start edge", "0 0; 200 0; 200 60; 380 60; 380 0; 900 0; 900 185; 0 185", ""), ("a notch in an end and a corner out",
              "0 0; 900 0; 900 60; 840 60; 840 140; 900 140; 900 185; 120 185; 120 150; 0 150", ""), ("a hole", "0 0; 1000 0; 1000 185; 0 185", "400 50; 500 50; 500 120; 400 120"),
             ("two holes and a notch", "0 0; 1500 0; 1500 185; 700 185; 700 165; 600 165; 600 185; 0 185", "200 50; 260 50; 260 90; 200 90 / 900 30; 1000 30; 1000 80; 900 80"),
             ("all four corners out", "50 0; 950 0; 950 30; 1000 30; 1000 140; 900 140; 900 185; 80 185; 80 100; 0 100; 0 20; 50 20", ""),
             ("a stepped notch", "0 0; 1200 0; 1200 185; 800 185; 800 150; 700 150; 700 100; 500 100; 500 150; 400 150; 400 185; 0 185", ""),
             ("a stepped corner", "0 0; 1200 0; 1200 90; 1100 90; 1100 130; 1000 130; 1000 185; 0 185", ""),
             ("notches in both edges", "0 0; 300 0; 300 40; 500 40; 500 0; 1200 0; 1200 185; 600 185; 600 120; 350 120; 350 185; 0 185", ""),
             ("two notches in one edge", "0 0; 1200 0; 1200 185; 900 185; 900 150; 800 150; 800 185; 400 185; 400 165; 250 165; 250 185; 0 185", ""),
             ("notches wider within", "0 0; 1000 0; 1000 185; 600 185; 600 120; 700 120; 700 60; 300 60; 300 120; 400 120; 400 185; 0 185", ""),
             ("parts of a sixteenth of an inch", "0 0; 609.6 0; 609.6 57.15; 305.59375 57.15; 305.59375 55.5625; 304.00625 55.5625; 304.00625 57.15; 0 57.15", "")]
    for about, outline, holes in cases:
        ring = corners_of(outline)
        cut = [corners_of(hole) for hole in holes.split(" / ")] if holes else []
        parts = parts_of(ring, cut)
        size = [max(p[axis] for p in ring) - min(p[axis] for p in ring) for axis in (0, 1)]
        rows.append((about, outline, holes.replace("; ", ", ").replace(" / ", "; "), len(parts), "; ".join(sorted(described(part) for part in parts)) or "none", mm(size[0]), mm(size[1]),
                     square(size[0] * size[1] - sum(part[-1] for part in parts))))
    table("pieces.py", "What is sawn off the rectangle of a piece, and out of it", "the rectangle in cells; those that are not of the piece put together", "exact",
          ("about", "outline", "holes", "count", "notches", "lengthMillimetres", "widthMillimetres", "squareMillimetres"), rows,
          "notches: kind, sides that it is open to, from the start end, along, from the start edge, across, area")


def thin():
    """Pieces made up so that one part or two are thin; what is left beside the notch is a difference."""
    rows = []
    whole = "0 0; 1200 0; 1200 185; {} 0 185"

    def far(start, end, deep):
        return f"{end} 185; {end} {mm(nm(185) - nm(deep))}; {start} {mm(nm(185) - nm(deep))}; {start} 185;"
    for about, outline, hole, least, expected in [
            ("a bridge beside a notch", whole.format(far("400", "600", "150")), "", "50", "BRIDGE ALONG 35 200 400 0"),
            ("wide enough beside a notch", whole.format(far("400", "600", "120")), "", "50", "none"),
            ("just wide enough", whole.format(far("400", "600", "135")), "", "50", "none"),
            ("a nanometre too narrow", whole.format(far("400", "600", "135.000001")), "", "50", "BRIDGE ALONG 49.999999 200 400 0"),
            ("another limit", whole.format(far("400", "600", "150")), "", "30", "none"),
            ("a tongue at a corner", "0 0; 1200 0; 1200 185; 300 185; 300 35; 0 35", "", "50", "TONGUE ALONG 35 300 0 0"),
            ("wider than long", whole.format(far("400", "430", "150")), "", "50", "none"),
            ("a tongue across the end", whole.format(far("30", "200", "100")), "", "50", "TONGUE ACROSS 30 100 0 85"),
            ("both sides of a hole", "0 0; 1200 0; 1200 185; 0 185", "500 40; 700 40; 700 145; 500 145", "50", "BRIDGE ALONG 40 200 500 0; BRIDGE ALONG 40 200 500 145"),
            ("between notches of both edges", "0 0; 400 0; 400 70; 600 70; 600 0; 1200 0; 1200 185; 600 185; 600 115; 400 115; 400 185; 0 185", "", "50", "BRIDGE ALONG 45 200 400 70"),
            ("beside a notch in an end", "0 0; 1200 0; 1200 40; 1100 40; 1100 145; 1200 145; 1200 185; 0 185", "", "50", "TONGUE ALONG 40 100 1100 0; TONGUE ALONG 40 100 1100 145"),
            ("between two notches", whole.format(far("530", "700", "120") + " " + far("300", "500", "120")), "", "50", "TONGUE ACROSS 30 120 500 65"),
            ("a narrow strip all along", "0 0; 1200 0; 1200 30; 0 30", "", "50", "none"),
            ("a corner out that leaves enough", "0 0; 1200 0; 1200 185; 300 185; 300 60; 0 60", "", "50", "none")]:
        said = {"thin-" + part.split(" ")[0].lower() for part in expected.split("; ")} if expected != "none" else []
        rows.append((about, outline, hole.replace("; ", ", "), least + " mm", expected, words(said)))
    table("pieces.py", "Thin parts of a piece beside a notch or a hole", "pieces made up for it", "exact", ("about", "outline", "holes", "least", "parts", "findings"), rows,
          "parts: kind, which way it is long, width, length, from the start end, from the start edge")


BOARDS = {"a": (0, 0, 1200, 185), "b": (1200, 0, 2400, 185), "c": (0, 185, 800, 370), "d": (800, 185, 2400, 370)}


def pipe_holes():
    rows = []
    boards = {name: tuple(nm(value) for value in box) for name, box in BOARDS.items()}
    cases = [("in the middle of a board", "600 92.5 22"), ("glued to the near end", "60 92.5 22"), ("glued to the edge at the wall", "700 60 22"), ("glued to the far wall", "1500 310 15"),
             ("too near to the wall", "700 35 22"), ("too near to a row line", "700 150 22"), ("too near to a joint", "1235 92.5 22"), ("through a joint", "1200 92.5 22"),
             ("through a row line", "500 185 15"), ("through a row line, off the middle", "500 176 15"), ("where three boards meet", "800 185 15"), ("beyond the edge of the floor", "700 10 22"),
             ("in the gap", "700 -60 22"), ("touches no board", "-17.5 92.5 15"), ("a large pipe", "1800 277.5 60.3"), ("just enough wood to the wall", "1500 41 22"),
             ("a nanometre too little wood to the wall", "1500 40.999999 22"), ("a far end nearer than the wall", "2330 92.5 15"),
             ("nearest side joins a board, the wall is near enough", "1600 105 15")]
    gap = "10"
    for about, pipe in cases:
        x, y, d = (nm(part) for part in pipe.split(" "))
        hole = d + 2 * nm(gap)
        r = hole // 2
        touched = []
        for name, (x0, y0, x1, y1) in boards.items():
            # From the middle of the hole to the nearest place of the board.
            dx, dy = max(x0 - x, x - x1, 0), max(y0 - y, y - y1, 0)
            if dx * dx + dy * dy < r * r:
                touched.append(name)
        wood = side = depth = "none"
        if not touched:
            way = "IN_THE_GAP"
        elif len(touched) > 1:
            way = "SHARED"
        else:
            x0, y0, x1, y1 = boards[touched[0]]
            away = {"START_END": x - x0, "FAR_END": x1 - x, "START_EDGE": y - y0, "FAR_EDGE": y1 - y}
            gaps = [name for name, at in (("START_END", x0 == 0), ("FAR_END", x1 == nm(2400)), ("START_EDGE", y0 == 0), ("FAR_EDGE", y1 == nm(370))) if at]
            nearest = min(away, key=away.get)
            left = away[nearest] - r
            if left < 0:
                way = "OPEN_NOTCH"
            elif left < nm(20):
                way, wood = ("OPEN_NOTCH" if nearest in gaps else "OPEN_TO_JOINT"), mm(left)
            else:
                way, wood = "HOLE", mm(left)
                side = min(gaps, key=away.get)
                side = side if away[side] <= y1 - y0 else nearest
                depth = mm(away[side])
        rows.append((about, pipe, gap + " mm", 1, " ".join([way, mm(hole), wood, side, depth]), " ".join(touched) or "none"))
    for about, pipe, slot in [("two pipes of a radiator", "600 92.5 15; 650 92.5 15", True), ("just enough wood between", "600 92.5 15; 655 92.5 15", False),
                              ("a nanometre too little", "600 92.5 15; 654.999999 92.5 15", True), ("one behind the other", "600 70 15; 600 110 15", True)]:
        # Two holes of 35 mm: less than 20 mm of wood between them make one slot.
        (ax, ay, ad), (bx, by, _) = [tuple(nm(part) for part in one.split(" ")) for one in pipe.split("; ")]
        hole = ad + nm(20)
        apart = max(abs(bx - ax), abs(by - ay)) - hole
        if (apart < nm(20)) != slot:
            raise ValueError(about)

        def single(px, py):
            return min(px, nm(1200) - px, py, nm(185) - py) - hole // 2
        wood = [single(ax, ay), single(bx, by)]
        rows.append((about, pipe, "10 mm", 1 if slot else 2, f"wood {mm(min(wood))}" if slot else f"wood {mm(wood[0])}; wood {mm(wood[1])}", "a"))
    table("pieces.py", "Holes for pipes in four boards", "the distance of each board from the middle of the hole", "exact", ("about", "pipes", "allRound", "count", "holes", "pieces"), rows,
          "boards: a 0 0 1200 185, b 1200 0 2400 185, c 0 185 800 370, d 800 185 2400 370, the gap all round; pipes: x, y, diameter in mm; "
          "holes: way, width, least wood to a side, side and length of the part that is glued back; of two pipes the wood alone")


if __name__ == "__main__":
    run({"piece_notches_computed.csv": notches, "thin_parts_constructed.csv": thin, "pipe_holes_computed.csv": pipe_holes})
