"""Whether boards have come to terms with the room, from docs/moisture.md and equation 4-5 of the Wood Handbook."""
import random
from fractions import Fraction as F
from table import half_up, write


def settles_at(celsius, humidity):
    """Moisture content in per cent, the coefficients for degrees Celsius."""
    t, h = float(celsius), float(humidity) / 100
    w, k, k1, k2 = (a + b * t + c * t * t for a, b, c in [(349, 1.29, 0.0135), (0.805, 0.000736, -0.00000273), (6.27, -0.00938, -0.000303), (1.91, 0.0407, -0.000293)])
    return 1800 / w * (k * h / (1 - k * h) + (k1 * k * h + 2 * k1 * k2 * k * k * h * h) / (1 + k1 * k * h + k1 * k2 * k * k * h * h))


def rows():
    chance = random.Random(20271)
    made = [("closed", "4", "20", "50", "9 9.5 9.2"), ("opened", "4", "20", "50", "9 9.5 9.2"), ("", "4", "20", "50", "9 9.5 9.2"), ("closed", "2.9", "20", "50", "9 9.5 9.2"),
            ("closed", "3", "20", "50", "9 9.5 9.2"), ("closed", "", "20", "50", "9 9.5 9.2"), ("closed", "30", "20", "50", "13 13.4"), ("closed", "30", "20", "50", "6 6.4"),
            ("closed", "30", "", "", "9"), ("closed", "30", "20", "50", ""), ("", "", "", "", ""), ("closed", "2", "20", "50", ""), ("closed", "4", "20", "50", "8.9 9 9")]
    while len(made) < 32:
        boards = [F(chance.randint(50, 150), 10) for _ in range(chance.randint(1, 7))]
        made.append((chance.choice(["closed", "closed", "opened", ""]), chance.choice(["", "1", "2.5", "3", "5", "14"]), str(chance.randint(12, 28)), str(chance.randint(25, 75)),
                     " ".join(half_up(b, 1) for b in boards)))
    for number, (packs, days, celsius, humidity, boards) in enumerate(made, 1):
        readings = [F(b) for b in boards.split()]
        mean = sum(readings) / len(readings) if readings else None
        if readings and celsius:
            off = abs(float(mean) - settles_at(celsius, humidity)) - 2
            if abs(off) < 0.05:
                continue
            agree = "met" if off < 0 else "not met"
        else:
            agree = "not measured"
        yield {"id": "boards %d" % number, "packs": packs, "days": days, "celsius": celsius, "humidity_pct": humidity, "boards_pct": boards,
               "mean_pct": half_up(mean, 4) if readings else "", "packs_closed": {"closed": "met", "opened": "not met", "": "not measured"}[packs],
               "days_in_room": "not measured" if not days else "not met" if F(days) < 3 else agree, "agreement": agree}


made = list(rows())
write("acclimatisation_computed.csv", "acclimatisation.py", "Boards against the air of the room", "docs/moisture.md; equation 4-5 of the Wood Handbook, coefficients for degrees Celsius; demo readings",
      "means half up to four decimals", list(made[0]), made, "within 2 percentage points, at least 3 days, both common practice; readings within 0.05 points of the limit are left out, since the two published sets of coefficients differ by up to 0.013")
