"""Packs, money in boards, stacks and ledgers, from the formulas in docs/packs-and-waste.md and docs/cost.md, in whole numbers and fractions."""
import random
from fractions import Fraction as F
from table import half_up, plain, write

DIGITS = {"EUR": 2, "USD": 2, "GBP": 2, "JPY": 0, "KWD": 3}


def up(value):
    return -((-F(value)).__floor__())


def fewest_packs(content, used, spare):
    """Counts up from nought: enough boards of each length, and enough in all for the spare ones."""
    packs = 0
    while (any(packs * k < u for k, u in zip(content, used)) or packs * sum(content) < sum(used) + spare):
        packs += 1
    return packs


def orders():
    chance = random.Random(20261)
    made = [([2200], [6], [57], "0.02", "118.40", "19.4"), ([2200], [6], [0], "0.02", "118.40", "19.4"), ([2200], [6], [60], "0", "118.40", ""),
            ([2200], [6], [60], "0.02", "", "19.4"), ([2200], [6], [61], "1", "99.995", "25.001"), ([1820], [1], [1], "0.0001", "7", "3"),
            ([2200, 1100], [5, 2], [50, 3], "0.02", "80.25", "17.5"), ([2200, 1100], [5, 2], [10, 21], "0.02", "80.25", "17.5"),
            ([2200, 1100, 600], [4, 1, 1], [40, 10, 10], "0.05", "64.01", "14"), ([2200, 1100, 600], [4, 1, 1], [0, 0, 7], "0.10", "64.01", "14"),
            ([2200, 1100], [3, 3], [9, 9], "0.05", "50", "11.25"), ([1200], [8], [800], "0.02", "1234", "22.2")]
    for _ in range(20):
        kinds = chance.randint(1, 4)
        lengths = sorted(chance.sample(range(400, 2500, 100), kinds), reverse=True)
        made.append((lengths, [chance.randint(1, 6) for _ in lengths], [chance.randint(0, 90) for _ in lengths],
                     chance.choice(["0", "0.01", "0.02", "0.025", "0.1", "0.333"]), plain(F(chance.randint(1, 20000), 100)),
                     plain(F(chance.randint(1, 300), 10))))
    currencies = ["EUR", "JPY", "KWD", "USD", "GBP"]
    rows = []
    for number, (lengths, content, used, share, price, mass) in enumerate(made, 1):
        spare = up(F(share) * sum(used))
        packs = fewest_packs(content, used, spare)
        over = [packs * k - u for k, u in zip(content, used)]
        kept, find = [], spare
        for left in over:
            kept.append(min(left, find))
            find -= kept[-1]
        rounding = packs * sum(content) - sum(used) - spare
        percent = half_up(F(100 * (spare + rounding), sum(used)), 1) if sum(used) else "0"
        currency = currencies[number % len(currencies)]
        digits = DIGITS[currency]
        keep = number % 4
        back = ["0", "0.5", "0.85", "1"][number % 4]
        boards = half_up(packs * F(price), digits) if price else ""
        # The ledger: areas in mm2 of boards 185 mm wide.
        bought = packs * 185 * sum(a * b for a, b in zip(lengths, content))
        laid = 0 if bought == 0 else (bought * (61 + number)) // 100 if bought * (61 + number) // 100 < bought else bought
        waste = "" if not price else half_up(0, digits) if bought == 0 else half_up(packs * F(price) * F(bought - laid, bought), digits)
        unopened = min(left // k for left, k in zip(over, content))
        rows.append({"id": "order %d" % number, "lengths_mm": join(lengths), "per_pack": join(content), "used": join(used), "spare_share": share,
                     "pack_price": price, "currency": currency, "pack_mass_kg": mass, "kept_back": keep, "return_share": back, "laid_mm2": laid,
                     "spare": spare, "packs": packs, "pack_rounding": rounding, "spare_by_length": join(kept),
                     "left_over_by_length": join(over), "over_used_pct": percent, "price": plain(packs * F(price)) if price else "",
                     "mass_kg": plain(packs * F(mass)) if mass else "", "boards_price": boards, "bought_mm2": bought, "waste_price": waste,
                     "unopened": unopened, "returned": half_up(F(price) * unopened * F(back), digits) if price else "",
                     "kept_back_price": half_up(F(price) * keep, digits) if price else ""})
    write("packs_computed.csv", "packs.py", "Packs for given numbers of boards, and the money in them", "docs/packs-and-waste.md and docs/cost.md; demo figures",
          "exact; percentages to one decimal, money to the decimals of the currency, both half up", list(rows[0]), rows,
          "boards are 185 mm wide; bought_mm2 is what the packs would cover, laid_mm2 a made-up floor")


def join(values):
    return " ".join(str(value) for value in values)


def costs():
    chance = random.Random(20262)
    made = [[("19", "118.40", "EUR"), ("50.25", "1.105", "EUR")], [], [("3", "", "")], [("3", "", ""), ("2", "0.335", "EUR")],
            [("1", "0.005", "EUR")], [("1", "0.004999", "EUR")], [("1", "0.5", "JPY"), ("1", "0.0005", "KWD")], [("0", "118.40", "EUR")],
            [("3", "0.335", "EUR"), ("1", "10", "USD"), ("2", "99.995", "EUR"), ("7", "33", "JPY")],
            [("1", "1.004", "EUR"), ("1", "1.004", "EUR"), ("1", "1.004", "EUR")]]
    for _ in range(15):
        made.append([(plain(F(chance.randint(0, 5000), chance.choice([1, 10, 100]))),) + (("", "") if chance.random() < 0.2 else
                     (plain(F(chance.randint(1, 300000), chance.choice([100, 1000]))), chance.choice(list(DIGITS))))
                     for _ in range(chance.randint(1, 7))])
    rows = []
    for number, lines in enumerate(made, 1):
        sums = {}
        for quantity, price, currency in lines:
            if price:
                sums[currency] = sums.get(currency, 0) + F(quantity) * F(price)
        rows.append({"id": "list %d" % number, "lines": "; ".join(" ".join(part for part in line if part) for line in lines),
                     "totals": "; ".join("%s %s" % (half_up(sums[c], DIGITS[c]), c) for c in sorted(sums)),
                     "unpriced": sum(1 for line in lines if not line[1])})
    write("cost_computed.csv", "packs.py", "What order lists cost, by currency", "docs/cost.md, section Money; demo figures",
          "rounded half up once, to the decimals of the currency", list(rows[0]), rows,
          "lines: quantity, price of one and currency; a quantity alone has no price")


def ledgers():
    chance = random.Random(20263)
    names = ["laid", "trimmed", "kerf", "usable", "short", "spare", "rounding"]
    made = [([0] * 7, 0), ([22000000, 300000, 99000, 1021000, 300000, 500000, 200000], 0), ([1, 0, 0, 0, 0, 0, 0], 0),
            ([1000, 1, 1, 1, 1, 1, 1], 0), ([10000, 25, 25, 0, 0, 0, 0], 0), ([10000, 25, 25, 0, 0, 0, 0], 7), ([0, 0, 5, 0, 0, 100, 100], 0),
            ([10000, 25, 25, 0, 0, 0, 0], -7)]
    for _ in range(12):
        made.append(([chance.randint(0, 10 ** chance.randint(2, 8)) for _ in names], chance.choice([0, 0, 0, 1, 100])))
    rows = []
    for number, (parts, gap) in enumerate(made, 1):
        row = {"id": "ledger %d" % number}
        row.update({name + "_mm2": value for name, value in zip(names, parts)})
        bought = sum(parts) + gap
        lost = parts[1] + parts[2] + parts[4]
        row.update({"bought_mm2": bought, "difference_mm2": gap, "cutting_waste_mm2": lost,
                    "waste_of_bought_pct": half_up(F(100 * lost, bought), 1) if bought else "0",
                    "waste_of_laid_pct": half_up(F(100 * lost, parts[0]), 2) if parts[0] else "0"})
        rows.append(row)
    write("ledgers_computed.csv", "packs.py", "Ledgers of boards: what is lost in cutting and what is not accounted for", "docs/packs-and-waste.md, section Waste; demo figures",
          "areas exact; of what was bought to one decimal, of the floor laid to two, half up", list(rows[0]), rows)


def stacks():
    chance = random.Random(20264)
    made = [([2200], [6], 185, "14", 19, "1000", "19.4"), ([2200], [6], 185, "14", 0, "1000", "19.4"), ([2200], [6], 185, "14", 11, "84", ""),
            ([2200], [6], 185, "14", 11, "83.999", ""), ([2200], [6], 185, "14", 11, "168", "25"), ([2200, 1100], [5, 2], 190, "15.5", 12, "1000", "25.1"),
            ([600], [20], 70, "10", 60, "1000", "9.8"), ([600], [120], 70, "10", 60, "1000", "9.8"), ([2400], [1], 240, "21", 1, "21", "12")]
    for _ in range(12):
        made.append(([chance.randint(8, 26) * 100], [chance.randint(2, 10)], chance.randint(60, 300), plain(F(chance.randint(80, 220), 10)),
                     chance.randint(1, 80), str(chance.randint(60, 1500)), plain(F(chance.randint(50, 400), 10))))
    rows = []
    for number, (lengths, content, width, thick, packs, highest, mass) in enumerate(made, 1):
        high = sum(content) * F(thick)
        each = 1
        while (each + 1) * high <= F(highest):
            each += 1
        count = 0
        while count * each < packs:
            count += 1
        rows.append({"id": "stack %d" % number, "lengths_mm": join(lengths), "per_pack": join(content), "width_mm": width, "thickness_mm": thick,
                     "packs": packs, "highest_mm": highest, "pack_mass_kg": mass, "pack_height_mm": plain(high),
                     "volume_m3": plain(F(max(lengths) * width, 10 ** 9) * high * packs), "stacks": count,
                     "floor_mm2": count * max(lengths) * width, "mass_kg": plain(packs * F(mass)) if mass else "",
                     "heavy": "yes" if mass and F(mass) > 25 else "no"})
    write("pack_stacks_computed.csv", "packs.py", "Packs stacked in a room", "docs/cost.md, section Mass and room; demo figures", "exact",
          list(rows[0]), rows, "heavy: a pack of more than 25 kg")


orders()
costs()
ledgers()
stacks()
