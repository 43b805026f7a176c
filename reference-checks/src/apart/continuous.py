"""Gaps against the movement of the seasons, and breaks in floors through several rooms, from docs/movement.md, by trying all openings."""
import itertools
import random
from fractions import Fraction as F
from table import plain, write


def up(value, step):
    """Up to a whole step."""
    return -((-value / step).__floor__()) * step


NANOMETRE = F(1, 10 ** 6)


def checks():
    chance = random.Random(20269)
    made = [("0.0033", 9, 6, 12, [(2500, 25, 40)]), ("0.0033", 9, 6, 12, [(2500, 24, 40)]), ("0.0033", 9, 6, 12, [(2500, 25, 49)]),
            ("0.0033", 9, 6, 12, [(2500, 25, None)]), ("0.0025", 8, 7, 9, [(-1000, 10, 15)]), ("0.0025", 8, 7, 9, [(-4000, 10, 15)]),
            ("0.0025", 8, 8, 8, [(3000, 0, 0)]), ("0.0025", 8, 7, 9, [(3000, 8, 20), (3000, 7, None)]), ("0.0025", 8, 7, 9, [(4000, 10, 20), (4000, 9, 20), (-500, 1, 12)])]
    for _ in range(15):
        now = chance.randint(7, 11)
        made.append((plain(F(chance.randint(3, 40), 10000)), now, now - chance.randint(0, 3), now + chance.randint(0, 3),
                     [(chance.choice([1, 1, 1, -1]) * chance.randint(200, 6000), chance.randint(3, 30), chance.choice([None, chance.randint(10, 60), chance.randint(20, 80)]))
                      for _ in range(chance.randint(1, 4))]))
    rows = []
    for number, (share, now, dry, damp, points) in enumerate(made, 1):
        left, over, bare = [], [], False
        for far, gap, cover in points:
            swells, shrinks = abs(far) * F(share) * (damp - now), abs(far) * F(share) * (now - dry)
            closes, opens = (swells, shrinks) if far > 0 else (shrinks, swells)
            left.append(gap - up(closes, NANOMETRE))
            if cover is None:
                bare = True
            else:
                over.append(cover - gap - up(opens, NANOMETRE))
        rows.append({"id": "gaps %d" % number, "coefficient": share, "now_pct": now, "driest_pct": dry, "dampest_pct": damp,
                     "points": "; ".join("%d %d %s" % (far, gap, "-" if cover is None else cover) for far, gap, cover in points),
                     "narrowest_mm": plain(min(left)), "least_overlap_mm": plain(min(over)) if over else "none",
                     "wide_enough": "met" if min(left) >= 0 else "not met",
                     "covered": "not met" if over and min(over) < 0 else "not measured" if bare else "met"})
    write("gap_checks_computed.csv", "continuous.py", "Gaps at places of a floor against the movement of the seasons", "docs/movement.md, section The gap, three ways; demo floors",
          "exact, movements up to a whole nanometre", list(rows[0]), rows, "points: distance across the boards from what stays put, negative on the far side of a column, gap, reach of the trim or -; walls along the boards")


def chain(widths, side=()):
    """Rooms one behind another across the boards, 100 mm of wall between; side rooms beside one of them."""
    rooms, openings, low = [], [], 0
    for k, width in enumerate(widths, 1):
        rooms.append(("r%d" % k, 0, low, 5000, low + width))
        if k > 1:
            openings.append(("o%d" % (k - 1), "r%d" % (k - 1), "r%d" % k, 1000, low - 100, 1900, low))
        low += width + 100
    for k, (beside, down, above) in enumerate(side, 1):
        _, _, y0, _, y1 = rooms[beside - 1]
        rooms.append(("s%d" % k, 5100, y0 - down, 8000, y1 + above))
        openings.append(("p%d" % k, "r%d" % beside, "s%d" % k, 5000, y0 + 200, 5100, y0 + 1100))
    return rooms, openings


def bays(rooms, openings, broken):
    found, left = [], [room[0] for room in rooms]
    while left:
        group = {left[0]}
        while True:
            more = {end for name, one, other, *_ in openings if name not in broken and (one in group or other in group) for end in (one, other)} - group
            if not more:
                break
            group |= more
        shapes = [room[1:] for room in rooms if room[0] in group] + [o[3:] for o in openings if o[1] in group or o[2] in group]
        found.append(([room[0] for room in rooms if room[0] in group], max(s[3] for s in shapes) - min(s[1] for s in shapes),
                      max(s[2] for s in shapes) - min(s[0] for s in shapes)))
        left = [name for name in left if name not in group]
    return found


def advice():
    chance = random.Random(20270)
    made = [((3900, 3900, 3900), (), "0.0025", 8, 9, 10), ((3900, 3900), (), "0.0025", 8, 9, 10), ((3000, 4000, 5000, 2000), (), "0.003", 8, 10, 10),
            ((9000, 2000), (), "0.003", 8, 10, 10), ((4000,), (), "0.0025", 8, 9, 10), ((2000, 2500, 3100, 3600, 4300), (), "0.0036", 9, 11, 12),
            ((3900, 3900), ((1, 0, 0),), "0.0025", 8, 9, 10), ((3000, 3100), ((2, 1500, 2500),), "0.0036", 8, 9, 10), ((5000,), ((1, 3000, 0),), "0.003", 8, 10, 15)]
    for _ in range(16):
        widths = tuple(chance.randint(20, 60) * 100 + 10 * k for k in range(chance.randint(2, 5)))
        side = tuple((chance.randint(1, len(widths)), chance.choice([0, 700]), chance.choice([0, 900])) for _ in range(chance.choice([0, 0, 1])))
        made.append((widths, side, plain(F(chance.randint(15, 40), 10000)), 8, chance.choice([9, 10, 11]), chance.choice([8, 10, 12, 15])))
    rows_out = []
    for number, (widths, side, share, now, damp, rule) in enumerate(made, 1):
        rooms, openings = chain(widths, side)
        rate = F(share) * (damp - now)

        def needed(bay):
            return up(bay[1] * rate / 2, NANOMETRE)

        def fits(bay):
            return needed(bay) <= rule
        chosen = None
        for count in range(len(openings) + 1):
            ways = []
            for broken in itertools.combinations([o[0] for o in openings], count):
                parts = bays(rooms, openings, broken)
                if all(fits(bay) or len(bay[0]) == 1 for bay in parts):
                    ways.append((max(map(needed, parts)), broken, parts))
            if ways:
                least = min(way[0] for way in ways)
                ways = [way for way in ways if way[0] == least]
                chosen = ways[0] if len(ways) == 1 else None
                break
        if chosen is None:
            continue
        asked = []
        for name, one, other, *_ in openings:
            if name in chosen[1]:
                both = sum(next(needed(bay) for bay in chosen[2] if end in bay[0]) for end in (one, other))
                asked.append("%s %s" % (name, plain(max(F(rule), up(both, 1)))))
        whole = bays(rooms, openings, ())
        rows_out.append({"id": "floor %d" % number, "rooms_mm": "; ".join("%s %d %d %d %d" % room for room in rooms),
                         "openings_mm": "; ".join("%s %s %s %d %d %d %d" % o for o in openings), "coefficient": share, "now_pct": now, "dampest_pct": damp, "rule_gap_mm": rule,
                         "across_mm": " ".join(str(bay[1]) for bay in whole), "along_mm": " ".join(str(bay[2]) for bay in whole),
                         "needed_as_one_mm": " ".join(plain(needed(bay)) for bay in whole), "breaks": "; ".join(asked),
                         "bays": "; ".join("+".join(bay[0]) for bay in chosen[2]), "bays_across_mm": " ".join(str(bay[1]) for bay in chosen[2])})
    write("continuous_floors_computed.csv", "continuous.py", "Floors through several rooms, and at which openings they need a break", "docs/movement.md, section Through openings; demo floors",
          "exact, gaps needed up to a whole nanometre, breaks in whole millimetres", list(rows_out[0]), rows_out,
          "rooms: name and two corners; openings: name, the two rooms, two corners; boards along x, runs up to 100 m; left out are floors where two choices are equally good")


checks()
advice()
