"""Grids of levels: the greatest gap under an edge and the least filler, from docs/levels.md, to 50 digits by trying all contacts."""
import random
from decimal import Decimal as D, ROUND_CEILING, getcontext
from fractions import Fraction as F
from table import half_up, plain, write

getcontext().prec = 50
WAYS = [("row", 1, 0), ("column", 0, 1), ("rising", 1, 1), ("falling", 1, -1)]


def lines(columns, rows, step_x, step_y, heights):
    """Runs of readings in line without a place between them, or beside a step of a diagonal, that was not read."""
    for way, dx, dy in WAYS:
        for j in range(rows):
            for i in range(columns):
                if 0 <= i - dx < columns and 0 <= j - dy < rows:
                    continue
                run, x, y = [], i, j
                while 0 <= x < columns and 0 <= y < rows:
                    if (x, y) in heights and (not run or not dx or not dy or (x - dx, y) in heights and (x, y - dy) in heights):
                        run.append((x, y))
                    elif (x, y) in heights:
                        yield way, (dx * step_x) ** 2 + (dy * step_y) ** 2, run
                        run = [(x, y)]
                    elif run:
                        yield way, (dx * step_x) ** 2 + (dy * step_y) ** 2, run
                        run = []
                    x, y = x + dx, y + dy
                if run:
                    yield way, (dx * step_x) ** 2 + (dy * step_y) ** 2, run


def at(run_heights, step, place):
    """The floor between two readings is straight."""
    k = min(int(place / step), len(run_heights) - 2)
    return run_heights[k] + (run_heights[k + 1] - run_heights[k]) * (place / step - k)


def greatest(run_heights, step, span, b):
    """The greatest height over reading b of an edge that rests on two readings round it, or by its two ends anywhere on the line."""
    j, last = b * step, (len(run_heights) - 1) * step
    found = [(run_heights[a] * (c - b) + run_heights[c] * (b - a)) / (c - a)
             for a in range(b) for c in range(b + 1, len(run_heights)) if (c - a) * step <= span * (1 + D("1e-30"))]
    low, high = max(D(0), j - span), min(j, last - span)
    if low < high:
        places = sorted({low, high} | {u for k in range(len(run_heights)) for u in (k * step, k * step - span) if low < u < high})
        for u0, u1 in zip(places, places[1:]):
            def edge(u):
                return (at(run_heights, step, u) * (u + span - j) + at(run_heights, step, u + span) * (j - u)) / span
            # A parabola between two such places: its top, if it has one there.
            f0, fm, f1 = edge(u0), edge((u0 + u1) / 2), edge(u1)
            bend = 2 * (f0 - 2 * fm + f1)
            found += [f0, f1]
            if bend < -D("1e-25"):
                top = -(4 * fm - 3 * f0 - f1) / (2 * bend)
                if 0 < top < 1:
                    found.append(edge(u0 + top * (u1 - u0)))
    elif low == high:
        found.append((at(run_heights, step, low) * (low + span - j) + at(run_heights, step, low + span) * (j - low)) / span)
    return max(found)


def gaps(columns, rows, step_x, step_y, heights, span):
    worst = {}
    for way, squared, run in lines(columns, rows, step_x, step_y, heights):
        step = D(squared).sqrt()
        if len(run) < 3 or 4 * squared > span ** 2:
            continue
        numbers = [D(heights[place].numerator) / D(heights[place].denominator) for place in run]
        for b in range(1, len(run) - 1):
            gap = greatest(numbers, step, D(int(span)), b) - numbers[b]
            if way not in worst or gap > worst[way]:
                worst[way] = gap
    return worst


def signed(value):
    """To the nearest nanometre of millimetres."""
    nanometres = int((value * 10 ** 6).to_integral_value())
    return plain(F(nanometres, 10 ** 6))


def text(columns, rows, heights):
    return "; ".join(" ".join(plain(heights[i, j]) if (i, j) in heights else "-" for i in range(columns)) for j in range(rows))


def grid(lines_of_text):
    return {(i, j): F(h) for j, row in enumerate(lines_of_text) for i, h in enumerate(row.split()) if h != "-"}


def rough(chance, columns, rows, most, missing=0):
    tilt_x, tilt_y = F(chance.randint(-30, 30), 10), F(chance.randint(-30, 30), 10)
    heights = {(i, j): 20 + tilt_x * i + tilt_y * j + F(chance.randint(0, most * 10), 10) for i in range(columns) for j in range(rows)}
    for _ in range(missing):
        place = (chance.randrange(1, columns - 1), chance.randrange(1, rows - 1))
        if columns > 5 and rows > 5:
            heights.pop(place, None)
    return heights


EXAMPLE = grid(["21 20.5 20 20.5 20 19.5 19", "20.5 19.5 17.5 18 19.5 19 18.5", "20 17 13 16 19 19 18.5", "19.5 18 16.5 18 20 25.5 19", "19.5 19 19 18.5 18.5 19 18"])


def planted(columns, rows, at, height):
    """A plane that falls, with one reading up or down."""
    heights = {(i, j): F(30) - i - F(j, 2) for i in range(columns) for j in range(rows)}
    heights[at] += height
    return heights


def flatness():
    chance = random.Random(20267)
    made = [("example of the page", 7, 5, 500, 500, EXAMPLE, "2000", "3"), ("hump", 5, 5, 500, 500, planted(5, 5, (2, 2), 6), "1000", "2"),
            ("hollow", 5, 5, 500, 500, planted(5, 5, (2, 2), -6), "1000", "6"), ("hollow past its limit", 5, 5, 500, 500, planted(5, 5, (2, 2), F("-6.1")), "1000", "6"),
            ("hump at the edge", 5, 4, 500, 500, planted(5, 4, (0, 1), 4), "2000", "2"), ("plane", 4, 4, 500, 500, planted(4, 4, (0, 0), 0), "2000", "1"),
            ("too far apart", 4, 4, 1500, 1500, planted(4, 4, (1, 1), 6), "2000", "3"), ("rows alone", 6, 3, 500, 1500, planted(6, 3, (2, 1), -5), "2000", "3"),
            ("edge longer than the floor", 4, 4, 500, 500, planted(4, 4, (2, 1), -5), "10000", "3"), ("diagonals of 500 mm", 6, 6, 300, 400, planted(6, 6, (2, 3), -5), "1000", "3")]
    for number in range(20):
        columns, rows = chance.randint(3, 9), chance.randint(3, 8)
        made.append(("grid %d" % (number + 1), columns, rows, chance.choice([300, 400, 500, 600]), chance.choice([300, 400, 500]),
                     rough(chance, columns, rows, chance.choice([2, 6, 12]), chance.choice([0, 0, 0, 2, 5])), chance.choice(["1000", "1800", "2000", "2400", "3000"]),
                     chance.choice(["2", "3", "5"])))
    rows_out = []
    for name, columns, rows, step_x, step_y, heights, span, limit in made:
        worst = gaps(columns, rows, step_x, step_y, heights, F(span))
        row = {"id": name, "along_mm": step_x, "between_mm": step_y, "heights_mm": text(columns, rows, heights), "span_mm": span, "allowed_mm": limit}
        for way, _, _ in WAYS:
            row[way + "_mm"] = signed(worst[way]) if way in worst else "none"
        row["outcome"] = "not measured" if not worst else "met" if max(worst.values()) <= F(limit) else "not met"
        rows_out.append(row)
    write("grid_flatness_computed.csv", "grids.py", "Greatest gaps under an edge over grids of levels", "docs/levels.md, section Flat on a grid; demo floors",
          "to the nearest nanometre", list(rows_out[0]), rows_out, "rows of readings with a semicolon between, - where none was read; the edge rests on two readings of a line, or by its two ends between readings, where the floor is straight; the gap is that over a reading between",
          "planted: a plane with one reading up or down, whose gap is plain")


def fill(columns, rows, step_x, step_y, heights, span, limit, ground):
    """Raises readings by steps of 0.1 mm until no gap is beyond the limit; each raise is needed whatever else is done."""
    tenth = F(1, 10)
    made = {place: height - ground for place, height in heights.items()}
    moved = True
    while moved:
        moved = False
        for way, squared, run in lines(columns, rows, step_x, step_y, made):
            if len(run) < 3 or 4 * squared > span ** 2:
                continue
            step = D(squared).sqrt()
            for b in range(1, len(run) - 1):
                numbers = [D(made[place].numerator) / D(made[place].denominator) for place in run]
                short = greatest(numbers, step, D(int(span)), b) - D(int(limit)) - numbers[b]
                if short > D("1e-15"):
                    made[run[b]] += int((short * 10 - D("1e-15")).to_integral_value(ROUND_CEILING)) * tenth
                    moved = True
    return {place: max(F(0), made[place] - heights[place]) for place in heights}


def preparation():
    chance = random.Random(20268)
    made = [("example of the page", 7, 5, 500, 500, EXAMPLE, "2000", "3", "0"), ("hollow", 5, 5, 500, 500, planted(5, 5, (2, 2), -6), "2000", "2", "0"),
            ("hollow at the limit", 5, 5, 500, 500, planted(5, 5, (2, 2), -6), "2000", "6", "0"), ("hollow of a corner", 4, 4, 500, 500, planted(4, 4, (0, 0), -6), "2000", "2", "0"),
            ("hollow at a wall", 5, 4, 400, 500, planted(5, 4, (2, 0), -7), "2000", "3", "0"), ("hump, nothing ground", 5, 5, 500, 500, planted(5, 5, (2, 2), 6), "2000", "2", "0"),
            ("hump, ground", 5, 5, 500, 500, planted(5, 5, (2, 2), 6), "2000", "2", "5"), ("plane", 4, 4, 500, 500, planted(4, 4, (0, 0), 0), "2000", "2", "0")]
    for number in range(14):
        columns, rows = chance.randint(3, 7), chance.randint(3, 6)
        made.append(("grid %d" % (number + 1), columns, rows, chance.choice([300, 400, 500]), chance.choice([400, 500]), rough(chance, columns, rows, chance.choice([4, 8, 12])),
                     chance.choice(["1000", "2000", "3000"]), chance.choice(["2", "3", "5"]), chance.choice(["0", "0", "1", "2.5"])))
    rows_out = []
    for name, columns, rows, step_x, step_y, heights, span, limit, ground in made:
        if not gaps(columns, rows, step_x, step_y, heights, F(span)):
            continue
        depths = fill(columns, rows, step_x, step_y, heights, F(span), F(limit), F(ground))
        area = {place: F(0) for place in heights}
        for i in range(columns - 1):
            for j in range(rows - 1):
                for place in ((i, j), (i + 1, j), (i, j + 1), (i + 1, j + 1)):
                    area[place] += F(step_x * step_y, 4 * 10 ** 6)
        litres = sum(area[place] * depth for place, depth in depths.items())
        kilograms = litres * F("1.7")
        top = max(heights.values())
        rows_out.append({"id": name, "along_mm": step_x, "between_mm": step_y, "heights_mm": text(columns, rows, heights), "span_mm": span, "allowed_mm": limit,
                         "grind_up_to_mm": ground, "filler_l": plain(litres), "deepest_fill_mm": plain(max(depths.values())), "spots_filled": sum(d > 0 for d in depths.values()),
                         "filler_kg": plain(kilograms), "bags": -((-kilograms / 25).__floor__()), "area_m2": plain(sum(area.values())),
                         "worst_depth_times_area_l": plain((top - min(heights.values())) * sum(area.values())),
                         "mean_depth_times_area_l": half_up(sum(area[p] * (top - h) for p, h in heights.items()), 3)})
    write("subfloor_filler_computed.csv", "grids.py", "Least filler for grids of levels", "docs/levels.md, section What to grind, what to fill; demo floors",
          "exact; the mean depth times the area to a millilitre", list(rows_out[0]), rows_out,
          "filler of 1.7 kg a litre in bags of 25 kg, depths in steps of 0.1 mm; a reading stands for a quarter of each cell that it is a corner of",
          "the least at every reading: raised only where two others, raised no more than they must be, ask for it")


flatness()
preparation()
