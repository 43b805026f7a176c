"""Wedges, sealant, strips off rolls, long walls in parts and bars, from docs/cost.md, docs/underlay.md, docs/skirting.md and docs/trims.md."""
import itertools
import random
from fractions import Fraction as F
from table import plain, write

ROOMS = {"rectangle": "0 0, 4200 0, 4200 3600, 0 3600", "L": "0 0, 5000 0, 5000 2000, 2000 2000, 2000 4000, 0 4000",
         "T": "0 0, 6000 0, 6000 1500, 4000 1500, 4000 5000, 2000 5000, 2000 1500, 0 1500",
         "U": "0 0, 6000 0, 6000 5000, 4500 5000, 4500 2000, 1500 2000, 1500 5000, 0 5000",
         "Z": "0 0, 3000 0, 3000 2000, 5500 2000, 5500 4500, 2500 4500, 2500 2500, 0 2500",
         "with an island": "0 0, 6000 0, 6000 5000, 0 5000; 2000 1500, 3500 1500, 3500 3800, 2000 3800",
         "with a column": "0 0, 6000 0, 6000 5000, 0 5000; 2000 1500, 2300 1500, 2300 1800, 2000 1800",
         "narrow": "0 0, 7000 0, 7000 400, 0 400", "out of square": "0 0, 4000 0, 4600 3000, 400 3000",
         "triangle": "0 0, 5000 0, 0 4000", "far from the origin": "100000 -20000, 104000.5 -20000, 104000.5 -16999.5, 100000 -16999.5"}


def rings(text):
    return [[tuple(F(number) for number in corner.split()) for corner in ring.split(",")] for ring in text.split(";")]


def wkt(text):
    return "POLYGON (" + ", ".join("(%s)" % ", ".join(", ".join([c.strip() for c in ring.split(",")] + [ring.split(",")[0].strip()]).split(", "))
                                   for ring in text.split(";")) + ")"


def turned(corners):
    return [[(y, x) for x, y in ring] for ring in corners]


def union(spans):
    joined = []
    for low, high in sorted(spans):
        if joined and low <= joined[-1][1]:
            joined[-1][1] = max(joined[-1][1], high)
        else:
            joined.append([low, high])
    return joined


def shadow(corners, low, high):
    """Where along x the floor lies with y between low and high."""
    sides = [(ring[i], ring[(i + 1) % len(ring)]) for ring in corners for i in range(len(ring))]
    steps = sorted({low, high} | {y for ring in corners for _, y in ring if low < y < high})
    spans = []
    for a, b in zip(steps, steps[1:]):
        crossing = []
        for (x0, y0), (x1, y1) in sides:
            if min(y0, y1) <= a and max(y0, y1) >= b and y0 != y1:
                at = [x0 + (x1 - x0) * (y - y0) / (y1 - y0) for y in (a, b)]
                crossing.append((sum(at), at))
        crossing.sort()
        for left, right in zip(crossing[::2], crossing[1::2]):
            spans.append((min(left[1]), max(right[1])))
    return union(spans)


def whole_nanometres(low, high):
    """Ends outwards to a whole nanometre."""
    return F((low * 10 ** 6).__floor__(), 10 ** 6), F(-((-high * 10 ** 6).__floor__()), 10 ** 6)


def lay(corners, width, roll, lap, upturn, from_below):
    ys = [y for _, y in corners[0]]
    low, high = min(ys) - upturn, max(ys) + upturn
    count = 1
    while count * (width - lap) + lap < high - low:
        count += 1
    strips = []
    for i in range(count):
        edge = low + i * (width - lap) if from_below else high - width - i * (width - lap)
        pieces = [whole_nanometres(a, b) for a, b in shadow(corners, edge - upturn, edge + width + upturn)]
        strips.append(union([(a - upturn, b + upturn) for a, b in pieces]))
    seam = F(0)
    for one, next_one in zip(strips, strips[1:]):
        for (a, b), (c, d) in itertools.product(one, next_one):
            seam += max(F(0), min(b, d) - max(a, c))
    cuts = []
    for a, b in (piece for strip in strips for piece in strip):
        parts = 1
        while parts * roll - (parts - 1) * lap < b - a:
            parts += 1
        cuts.append((b - a) + (parts - 1) * lap)
        seam += (parts - 1) * width
    return {"across": count, "length": sum(b - a for strip in strips for a, b in strip), "seam": seam, "cut": sum(cuts)}


def strips():
    rolls = [("1000", "15000", "0", "0"), ("2000", "25000", "150", "50"), ("1500", "4000", "101.6", "0"), ("3000", "20000", "200", "100")]
    rows = []
    for (name, room), (width, roll, lap, upturn), along in itertools.product(ROOMS.items(), rolls, ("x", "y")):
        if name in ("rectangle", "narrow", "far from the origin") and along == "y" and lap == "0":
            continue
        corners = rings(room) if along == "x" else turned(rings(room))
        ways = [lay(corners, F(width), F(roll), F(lap), F(upturn), below) for below in (True, False)]
        best = min(way["length"] for way in ways)
        chosen = [way for way in ways if way["length"] == best]
        seams = {way["seam"] for way in chosen}
        cuts = {way["cut"] for way in chosen}
        if len(cuts) > 1 or len(seams) > 1:
            continue
        rows.append({"room": name, "outline_mm": wkt(room), "along": along, "width_mm": width, "roll_mm": roll, "lap_mm": lap, "upturn_mm": upturn,
                     "strips_across": chosen[0]["across"], "length_mm": plain(best), "seam_mm": plain(seams.pop()),
                     "cut_mm": plain(next(iter(cuts))), "cut_mm2": plain(cuts.pop() * F(width))})
    write("strips_computed.csv", "strips_and_bars.py", "Strips off rolls on made-up floors", "docs/underlay.md, section Strips; demo rooms",
          "exact; ends at slanted walls outwards to a whole nanometre", list(rows[0]), rows,
          "strips start at the side that takes less length; seams are counted side by side and across end laps; left out are floors where both sides take the same length and other seams")


def wedges():
    rows = []
    for (name, room), spacing in itertools.product(ROOMS.items(), ("500", "600", "350", "4200", "10000")):
        count = 0
        for ring in rings(room):
            for i in range(len(ring)):
                (x0, y0), (x1, y1) = ring[i], ring[(i + 1) % len(ring)]
                squared = (x1 - x0) ** 2 + (y1 - y0) ** 2
                one = 1
                while (one * F(spacing)) ** 2 < squared:
                    one += 1
                count += one
        rows.append({"room": name, "outline_mm": wkt(room), "spacing_mm": spacing, "wedges": count})
    write("wedges_computed.csv", "strips_and_bars.py", "Wedges along the walls of made-up floors", "docs/cost.md: ceil(L / a) along each wall; demo rooms",
          "exact", list(rows[0]), rows)


def sealant():
    made = [("12", "5", "5", "310", "0.1"), ("0", "5", "5", "310", "0.1"), ("11.16", "5", "5", "310", "0.1"), ("11.160001", "5", "5", "310", "0.1"),
            ("30", "10", "8", "310", "0.1"), ("30", "10", "8", "600", "0"), ("7.5", "6", "4", "290", "0.25"), ("100", "12.5", "6.35", "300", "0.05"),
            ("0.001", "1", "1", "310", "0.999"), ("3.1", "10", "10", "310", "0")]
    rows = []
    for length, wide, deep, holds, loss in made:
        volume = F(length) * 100 * F(wide) / 10 * F(deep) / 10
        count = 0
        while count * F(holds) * (1 - F(loss)) < volume:
            count += 1
        rows.append({"bead_m": length, "width_mm": wide, "depth_mm": deep, "cartridge_ml": holds, "loss": loss, "volume_ml": plain(volume), "cartridges": count})
    write("sealant_computed.csv", "strips_and_bars.py", "Cartridges of sealant for beads", "docs/cost.md: l * b * d of bead, and what of a cartridge is lost; demo figures",
          "exact", list(rows[0]), rows)


def parts_of(length, bar, allowance, least):
    """As few as possible, whole bars and one that takes the rest; if that is too short, it is made longer and the one before shorter."""
    most = bar - allowance
    parts = [length]
    while parts[-1] > most:
        parts[-1:] = [most, parts[-1] - most]
    if len(parts) > 1 and parts[-1] < least:
        parts[-2] -= least - parts[-1]
        parts[-1] = least
    return parts


def long_walls():
    made = [("3000", "2400", "15", "300"), ("4000", "2400", "15", "300"), ("2400", "2400", "0", "300"), ("2400.000001", "2400", "0", "300"),
            ("2385", "2400", "15", "300"), ("2386", "2400", "15", "300"), ("4800", "2400", "0", "300"), ("4801", "2400", "0", "1200"),
            ("4801", "2400", "0", "0"), ("12345.678", "2500", "12.5", "600"), ("7200", "2400", "0", "1200"), ("100000", "3000", "20", "500"),
            ("2700", "2400", "0", "300"), ("2699", "2400", "0", "300"), ("900", "2400", "15", "300")]
    rows = []
    for length, bar, allowance, least in made:
        fits = F(length) + F(allowance) <= F(bar)
        parts = [F(length)] if fits else parts_of(F(length), F(bar), F(allowance), F(least))
        assert sum(parts) == F(length)
        rows.append({"length_mm": length, "bar_mm": bar, "allowance_mm": allowance, "least_mm": least, "parts": len(parts),
                     "lengths_mm": " ".join(plain(part) for part in parts)})
    write("long_walls_computed.csv", "strips_and_bars.py", "Long walls made up of parts", "docs/skirting.md and docs/trims.md; demo figures", "exact", list(rows[0]), rows)


def least_bought(cuts, sold, kerf):
    """All ways: the least length bought, and of one length sold the fewest bars. Pieces on a bar need a kerf between them."""
    full = (1 << len(cuts)) - 1
    bar_for = [None] * (full + 1)
    for chosen in range(1, full + 1):
        picked = [cut for i, cut in enumerate(cuts) if chosen >> i & 1]
        needs = sum(picked) + kerf * (len(picked) - 1)
        fitting = [bar for bar in sold if bar >= needs]
        bar_for[chosen] = min(fitting) if fitting else None
    best = [None] * (full + 1)
    best[0] = F(0)
    for chosen in range(1, full + 1):
        first = chosen & -chosen
        part = chosen
        while part:
            if part & first and bar_for[part] is not None:
                cost = best[chosen ^ part] + bar_for[part]
                if best[chosen] is None or cost < best[chosen]:
                    best[chosen] = cost
            part = (part - 1) & chosen
    return best[full]


def bars():
    chance = random.Random(20265)
    made = [("2400", "0", "3", "0", "300", "1000 630 630 1630"), ("2400", "15", "3", "10", "300", "3000 4000 900"), ("2400 3000", "0", "0", "0", "300", "2400 3000 600 2400"),
            ("2000", "0", "0", "0", "300", "1000 1000 1000 1000"), ("2000", "0", "1", "0", "300", "1000 1000 1000 1000"),
            ("2000", "0", "3", "5", "300", "2000 1995"), ("900 2700", "0", "3", "0", "200", "840 840 840 840 840"), ("2500", "20", "3.2", "0", "600", "5200 2480")]
    for _ in range(20):
        sold = sorted(chance.sample([900, 1800, 2400, 2500, 2700, 3000], chance.choice([1, 1, 2, 3])), reverse=True)
        made.append((" ".join(map(str, sold)), chance.choice(["0", "12", "15"]), chance.choice(["0", "3", "3.2"]), chance.choice(["0", "5", "20"]), "200",
                     " ".join(str(chance.randint(150, 2600 if sold[0] > 2000 else 1700)) for _ in range(chance.randint(1, 8)))))
    rows = []
    for number, (sold, thick, kerf, allowance, least, wanted) in enumerate(made, 1):
        longest = max(F(bar) for bar in sold.split())
        cuts = []
        for piece in map(F, wanted.split()):
            if piece + F(allowance) <= longest:
                cuts.append(piece + F(allowance))
            else:
                more = F(allowance) + F(thick)
                cuts += [part + more for part in parts_of(piece, longest, more, F(least))]
        if len(cuts) > 12:
            continue
        bought = least_bought(cuts, [F(bar) for bar in sold.split()], F(kerf))
        rows.append({"id": "bars %d" % number, "sold_mm": sold, "thickness_mm": thick, "kerf_mm": kerf, "allowance_mm": allowance, "least_mm": least,
                     "pieces_mm": wanted, "net_mm": plain(sum(map(F, wanted.split()))), "bought_mm": plain(bought),
                     "bars": plain(bought / F(sold)) if " " not in sold else ""})
    write("bar_orders_computed.csv", "strips_and_bars.py", "Bars for given pieces, by trying all ways to cut them", "docs/trims.md and docs/skirting.md; demo figures",
          "exact", list(rows[0]), rows, "long pieces are made up of parts, each longer by the thickness for the scarf; each piece is longer by the allowance; bars where one length is sold")


strips()
wedges()
sealant()
long_walls()
bars()
