"""Bays: how deep inner corners lie, parts between breaks, the least length of breaks, from docs/bays.md, by trying all bays of small rooms."""
import math
import random
from fractions import Fraction as F
from table import plain, write

DEEPEST = 500
WIDEST = 1000
ROOMS = {
    "L": "0 0, 6000 0, 6000 3000, 2500 3000, 2500 7000, 0 7000", "T": "0 0, 9000 0, 9000 2500, 6000 2500, 6000 6000, 3500 6000, 3500 2500, 0 2500",
    "U": "0 0, 8000 0, 8000 6000, 5500 6000, 5500 2000, 2000 2000, 2000 6000, 0 6000",
    "H": "0 0, 2000 0, 2000 2500, 5000 2500, 5000 0, 7500 0, 7500 7000, 5000 7000, 5000 4500, 2000 4500, 2000 7000, 0 7000",
    "Z": "0 0, 4000 0, 4000 2000, 7000 2000, 7000 5000, 3000 5000, 3000 3000, 0 3000",
    "comb": "0 0, 9000 0, 9000 4000, 7500 4000, 7500 1500, 6000 1500, 6000 3500, 4500 3500, 4500 1500, 2000 1500, 2000 4500, 0 4500",
    "plus": "2000 0, 4500 0, 4500 2000, 7000 2000, 7000 5000, 4500 5000, 4500 7000, 2000 7000, 2000 5000, 0 5000, 0 2000, 2000 2000",
    "chimney breast of 450 mm": "0 0, 5000 0, 5000 4000, 3500 4000, 3500 3550, 2000 3550, 2000 4000, 0 4000",
    "chimney breast of 500 mm": "0 0, 5000 0, 5000 4000, 3500 4000, 3500 3500, 2000 3500, 2000 4000, 0 4000",
    "chimney breast of 501 mm": "0 0, 5000 0, 5000 4000, 3500 4000, 3500 3499, 2000 3499, 2000 4000, 0 4000",
    "wide column": "0 0, 6000 0, 6000 5000, 0 5000; 2000 1500, 3500 1500, 3500 3800, 2000 3800",
    "hearth of 1000 mm": "0 0, 6000 0, 6000 5000, 0 5000; 2000 1500, 3000 1500, 3000 3800, 2000 3800",
    "hearth of 1001 mm": "0 0, 6000 0, 6000 5000, 0 5000; 2000 1500, 3001 1500, 3001 3800, 2000 3800",
    "L with a column": "0 0, 6000 0, 6000 3000, 2500 3000, 2500 7000, 0 7000; 1000 1000, 1400 1000, 1400 1500, 1000 1500",
    "rectangle": "0 0, 5000 0, 5000 4000, 0 4000",
}
SLANTED = {
    "inner corner in a slanted wall": "0 0, 6000 0, 6000 4000, 3000 3200, 0 4500", "arrow": "0 0, 4000 2000, 8000 0, 4000 7000",
    "turned square column": "0 0, 6000 0, 6000 5000, 0 5000; 3000 1500, 3800 2300, 3000 3100, 2200 2300",
    "triangular column": "0 0, 6000 0, 6000 5000, 0 5000; 2000 1500, 3600 1500, 2500 2600", "star recess": "0 0, 6000 0, 6000 5000, 4000 5000, 3000 4200, 2500 4600, 1000 5000, 0 5000",
}


def rings(text):
    return [[tuple(int(n) for n in corner.split()) for corner in ring.split(",")] for ring in text.split(";")]


def wkt(corners):
    return "POLYGON (" + ", ".join("(%s)" % ", ".join("%d %d" % p for p in ring + ring[:1]) for ring in corners) + ")"


def cross(a, b, c):
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def anticlockwise(ring):
    return ring if sum(a[0] * b[1] - a[1] * b[0] for a, b in zip(ring, ring[1:] + ring[:1])) > 0 else ring[::-1]


def hull(points):
    """A corner belongs to it if some line through it has no point on one side and none of others on it beyond it: gift wrapping."""
    points = sorted(set(points))
    first = points[0]
    found = [first]
    while True:
        here = found[-1]
        ahead = next(p for p in points if p != here)
        for p in points:
            turn = cross(here, ahead, p)
            if turn < 0 or turn == 0 and math.dist(here, p) > math.dist(here, ahead):
                ahead = p
        if ahead == first:
            return found
        found.append(ahead)


def depths(ring):
    """Each inner corner and the square of its depth inside the line across its recess, as a fraction."""
    ring = anticlockwise(ring)
    outer = set(hull(ring))
    size = len(ring)
    found = []
    for i, corner in enumerate(ring):
        if cross(ring[i - 1], corner, ring[(i + 1) % size]) >= 0:
            continue
        before, after = i, i
        while ring[before % size] not in outer:
            before -= 1
        while ring[after % size] not in outer:
            after += 1
        a, b = ring[before % size], ring[after % size]
        found.append((corner, F(cross(a, b, corner) ** 2, (b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2)))
    return found


def width_squared(ring):
    outer = hull(ring)
    best = None
    for i in range(len(outer)):
        a, b = outer[i], outer[(i + 1) % len(outer)]
        far = max(F(cross(a, b, p) ** 2, (b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2) for p in outer)
        best = far if best is None else min(best, far)
    return best


def root(value, decimals):
    """Half up at the given decimals."""
    scaled = value * 10 ** (2 * decimals + 2)
    digits = (math.isqrt(scaled.__floor__()) + 5) // 10
    text = str(digits).rjust(decimals + 1, "0")
    return text[:-decimals] + "." + text[-decimals:]


def freedom():
    rows = []
    for name, text in list(ROOMS.items()) + list(SLANTED.items()):
        corners = rings(text)
        inner = [depth for _, depth in depths(corners[0])]
        voids = [width_squared(ring) for ring in corners[1:]]
        beyond = sum(d > DEEPEST ** 2 for d in inner) + sum(w > WIDEST ** 2 for w in voids)
        rows.append({"room": name, "outline_mm": wkt(corners), "inner_corners": len(inner), "voids": len(voids), "beyond": beyond, "free": "no" if beyond else "yes",
                     "deepest_corner_mm": root(max(inner), 4) if inner else "", "widest_void_mm": root(max(voids), 4) if voids else "",
                     "closing_mm": root(max(inner) * F(9, 4000000), 5) if inner else ""})
    write("bay_freedom_computed.csv", "bays.py", "How deep inner corners lie inside the line across their recess, how wide voids are", "docs/bays.md, sections Rules and Formula; demo rooms",
          "lengths to 0.0001 mm, what is taken of the gap to 0.00001 mm", list(rows[0]), rows, "up to 500 mm deep and 1000 mm wide a bay is free; a gap closes by 0.0015 of the depth")


class Cells:
    """A right-angled room in the rectangles between all its walls' lines and more lines."""

    def __init__(self, corners, more_x=(), more_y=()):
        self.xs = sorted({x for ring in corners for x, _ in ring} | set(more_x))
        self.ys = sorted({y for ring in corners for _, y in ring} | set(more_y))
        self.inside = {(i, j) for i in range(len(self.xs) - 1) for j in range(len(self.ys) - 1)
                       if self.holds(corners, F(self.xs[i] + self.xs[i + 1], 2), F(self.ys[j] + self.ys[j + 1], 2))}

    @staticmethod
    def holds(corners, x, y):
        crossings = 0
        for ring in corners:
            for (x0, y0), (x1, y1) in zip(ring, ring[1:] + ring[:1]):
                if x0 == x1 and x0 > x and min(y0, y1) < y < max(y0, y1):
                    crossings += 1
        return crossings % 2 == 1

    def area(self, cell):
        i, j = cell
        return (self.xs[i + 1] - self.xs[i]) * (self.ys[j + 1] - self.ys[j])

    def borders(self):
        """Pairs of cells side by side with the stretch between them."""
        for i, j in sorted(self.inside):
            if (i + 1, j) in self.inside:
                yield (i, j), (i + 1, j), (self.xs[i + 1], self.ys[j], self.xs[i + 1], self.ys[j + 1])
            if (i, j + 1) in self.inside:
                yield (i, j), (i, j + 1), (self.xs[i], self.ys[j + 1], self.xs[i + 1], self.ys[j + 1])


def joined(cells, pairs):
    group = {cell: cell for cell in cells}

    def top(cell):
        while group[cell] != cell:
            cell = group[cell]
        return cell
    for one, other in pairs:
        group[top(one)] = top(other)
    found = {}
    for cell in sorted(cells):
        found.setdefault(top(cell), []).append(cell)
    return list(found.values())


def on(stretch, lines):
    x0, y0, x1, y1 = stretch
    return any(a <= x0 and x1 <= c and b <= y0 and y1 <= d and ((a == c) == (x0 == x1)) for a, b, c, d in lines)


def parts():
    made = [("L", [(0, 3000, 2500, 3000)]), ("L", [(2500, 0, 2500, 3000)]), ("T", [(3500, 2500, 6000, 2500)]), ("T", [(3500, 0, 3500, 2500), (6000, 0, 6000, 2500)]),
            ("U", [(0, 2000, 2000, 2000), (5500, 2000, 8000, 2000)]), ("H", [(2000, 2500, 2000, 4500), (5000, 2500, 5000, 4500)]), ("rectangle", []),
            ("rectangle", [(2000, 0, 2000, 4000), (0, 2500, 2000, 2500)]), ("rectangle", [(2000, 0, 2000, 4000), (0, 2500, 5000, 2500)]),
            ("rectangle", [(1000, 0, 1000, 4000), (1000, 1000, 5000, 1000), (3000, 1000, 3000, 4000)]),
            ("wide column", [(0, 2000, 2000, 2000), (3500, 2000, 6000, 2000)]),
            ("wide column", [(2000, 0, 2000, 1500), (3500, 3800, 3500, 5000)]), ("comb", [(4500, 0, 4500, 1500), (7500, 1500, 9000, 1500), (0, 1500, 2000, 1500)]),
            ("comb", [(7500, 0, 7500, 1500)]), ("plus", [(2000, 2000, 4500, 2000), (2000, 5000, 4500, 5000)]),
            ("rectangle", [(1000, 1000, 5000, 1000), (1000, 0, 1000, 3000), (0, 3000, 4000, 3000), (4000, 1000, 4000, 4000)])]
    rows = []
    for number, (name, lines) in enumerate(made, 1):
        corners = rings(ROOMS[name])
        cells = Cells(corners, [x for line in lines for x in line[::2]], [y for line in lines for y in line[1::2]])
        found = joined(cells.inside, [(a, b) for a, b, stretch in cells.borders() if not on(stretch, lines)])
        found.sort(key=lambda part: min((cells.ys[j], cells.xs[i]) for i, j in part))
        rows.append({"id": "%s %d" % (name, number), "outline_mm": wkt(corners), "breaks_mm": "; ".join("%d %d %d %d" % line for line in lines), "parts": len(found),
                     "areas_mm2": " ".join(str(sum(map(cells.area, part))) for part in found), "length_mm": sum(c - a + d - b for a, b, c, d in lines)})
    write("bay_parts_computed.csv", "bays.py", "Rooms parted along breaks", "docs/bays.md; demo rooms", "exact", list(rows[0]), rows,
          "parts in the order of their lowest corners, of equally low ones the leftmost first")


def boundary(cells, bay):
    """Rings of a bay, the floor on the left, corners alone; None where two corners of it touch."""
    ahead = {}
    for i, j in bay:
        x0, x1, y0, y1 = cells.xs[i], cells.xs[i + 1], cells.ys[j], cells.ys[j + 1]
        for beside, start, end in [((i, j - 1), (x0, y0), (x1, y0)), ((i + 1, j), (x1, y0), (x1, y1)), ((i, j + 1), (x1, y1), (x0, y1)),
                                   ((i - 1, j), (x0, y1), (x0, y0))]:
            if beside not in bay:
                if start in ahead:
                    return None
                ahead[start] = end
    found = []
    while ahead:
        start, here = next(iter(sorted(ahead.items())))
        ring = [start]
        del ahead[start]
        while here != start:
            ring.append(here)
            here = ahead.pop(here)
        found.append([p for k, p in enumerate(ring) if cross(ring[k - 1], p, ring[(k + 1) % len(ring)]) != 0])
    return found


def inner_corners(corners):
    """Corners where the floor takes three of four quarters."""
    found = set()
    for number, ring in enumerate(corners):
        ring = anticlockwise(ring) if number == 0 else anticlockwise(ring)[::-1]
        for k, p in enumerate(ring):
            if cross(ring[k - 1], p, ring[(k + 1) % len(ring)]) < 0:
                found.add((p, ring[k - 1], ring[(k + 1) % len(ring)], number))
    return found


def least_breaks(corners):
    cells = Cells(corners)
    inner = inner_corners(corners)
    lines = []
    for p, before, after, number in inner:
        if number and width_squared(corners[number]) <= WIDEST ** 2:
            continue
        for wall_end in (before, after):
            dx, dy = (p[0] > wall_end[0]) - (p[0] < wall_end[0]), (p[1] > wall_end[1]) - (p[1] < wall_end[1])
            end = p
            while True:
                i, j = cells.xs.index(end[0]), cells.ys.index(end[1])
                beside = [(i if dx > 0 else i - 1, j), (i if dx > 0 else i - 1, j - 1)] if dx else [(i, j if dy > 0 else j - 1), (i - 1, j if dy > 0 else j - 1)]
                void = len(corners) > 1 and not all(cell in cells.inside for cell in beside)
                if not all(cell in cells.inside for cell in beside):
                    if not void or not (0 < i + (dx < 0) * -1 + (dx > 0) < len(cells.xs) and 0 < j + (dy < 0) * -1 + (dy > 0) < len(cells.ys)):
                        break
                    if not any(Cells.holds([ring], F(cells.xs[c[0]] + cells.xs[c[0] + 1], 2), F(cells.ys[c[1]] + cells.ys[c[1] + 1], 2))
                               for ring in corners[1:] for c in beside if c[0] + 1 < len(cells.xs) and c[1] + 1 < len(cells.ys) and min(c) >= 0):
                        break
                end = (cells.xs[i + dx], cells.ys[j + dy])
            lines.append((min(p[0], end[0]), min(p[1], end[1]), max(p[0], end[0]), max(p[1], end[1])))
    regions = joined(cells.inside, [(a, b) for a, b, stretch in cells.borders() if not on(stretch, lines)])
    home = {cell: k for k, region in enumerate(regions) for cell in region}
    between = {}
    for a, b, (x0, y0, x1, y1) in cells.borders():
        if home[a] != home[b]:
            pair = (min(home[a], home[b]), max(home[a], home[b]))
            between[pair] = between.get(pair, 0) + x1 - x0 + y1 - y0
    count = len(regions)
    if count > 11:
        return None
    room_inner = {p for p, _, _, _ in inner}
    bays = {}
    for chosen in range(1, 1 << count):
        picked = [k for k in range(count) if chosen >> k & 1]
        if len(joined(picked, [pair for pair in between if pair[0] in picked and pair[1] in picked])) > 1:
            continue
        outline = boundary(cells, {cell for k in picked for cell in regions[k]})
        if outline is None:
            continue
        shell = max(outline, key=lambda ring: max(x for x, _ in ring) - min(x for x, _ in ring))
        holes = [ring for ring in outline if ring is not shell]
        if any(p not in room_inner for p, _, _, _ in inner_corners([shell] + holes)):
            continue
        if any(d > DEEPEST ** 2 for _, d in depths(shell)) or any(width_squared(ring) > WIDEST ** 2 for ring in holes):
            continue
        bays[chosen] = sum(length for (a, b), length in between.items() if (chosen >> a & 1) != (chosen >> b & 1))
    best = {0: 0}

    def least(rest):
        if rest not in best:
            low = rest & -rest
            best[rest] = min((bays[bay] + least(rest ^ bay) for bay in bays if bay & low and bay & rest == bay), default=math.inf)
        return best[rest]
    twice = least((1 << count) - 1)
    return None if twice == math.inf else F(twice, 2)


def random_room(chance):
    """Some squares of a checked sheet, with columns and rows of many widths."""
    wide, high = chance.randint(2, 4), chance.randint(2, 4)
    xs, ys = [0], [0]
    for places, count, most in ((xs, wide, 11500), (ys, high, 7500)):
        for _ in range(count):
            places.append(places[-1] + chance.choice([300, 400, 700, 900, 1200, 1500, 1900, 2300]))
    taken = {(chance.randrange(wide), chance.randrange(high))}
    for _ in range(chance.randint(2, wide * high - 1)):
        i, j = chance.choice(sorted(taken))
        step = chance.choice([(1, 0), (-1, 0), (0, 1), (0, -1)])
        if 0 <= i + step[0] < wide and 0 <= j + step[1] < high:
            taken.add((i + step[0], j + step[1]))

    class Sheet:
        pass
    sheet = Sheet()
    sheet.xs, sheet.ys = xs, ys
    outline = boundary(sheet, taken)
    if outline is None or len(outline) > 2:
        return None
    shell = max(outline, key=lambda ring: max(x for x, _ in ring) - min(x for x, _ in ring))
    corners = [shell] + [ring for ring in outline if ring is not shell]
    inner = sorted({p for p, _, _, _ in inner_corners(corners)})
    if not 1 <= len(inner) <= 8 or max(xs) > 11500 or max(ys) > 7500:
        return None
    for a in inner:
        for b in inner:
            dx, dy = abs(a[0] - b[0]), abs(a[1] - b[1])
            if dx and dy and min(dx, dy) < 0.06 * max(dx, dy):
                return None
    return corners


def splits():
    rows = []
    for name, text in ROOMS.items():
        corners = rings(text)
        length = least_breaks(corners)
        rows.append({"id": name, "outline_mm": wkt(corners), "length_mm": plain(length), "how": "all bays tried"})
    chance = random.Random(20266)
    seen = set()
    while len(rows) < 55:
        corners = random_room(chance)
        if corners is None or wkt(corners) in seen:
            continue
        seen.add(wkt(corners))
        length = least_breaks(corners)
        if length is None or length == 0 and chance.random() < 0.8:
            continue
        rows.append({"id": "room %d" % len(rows), "outline_mm": wkt(corners), "length_mm": plain(length), "how": "all bays tried"})
    # Each line along a rectangle crosses so many breaks at least, and as many equal bays need no more.
    for long, wide in [(11000, 7000), (20000, 5000), (5000, 12000), (20000, 12000), (30000, 5000), (30000, 20000), (11000, 23000)]:
        breaks = (-(-long // 12000) - 1) * wide + (-(-wide // 8000) - 1) * long
        rows.append({"id": "rectangle of %d by %d mm" % (long, wide), "outline_mm": wkt([[(0, 0), (long, 0), (long, wide), (0, wide)]]), "length_mm": breaks,
                     "how": "rectangle"})
    write("bay_splits_computed.csv", "bays.py", "Least lengths of expansion breaks in right-angled rooms", "docs/bays.md, section Formula; demo rooms",
          "exact", list(rows[0]), rows, "boards along x, bays up to 12 m along and 8 m across, recesses up to 500 mm deep and voids up to 1000 mm wide let pass",
          "all bays tried: of the cells between lines from inner corners along and square to the boards; rectangle: each line along the room crosses as many breaks at least, equal bays need no more")


freedom()
parts()
splits()
