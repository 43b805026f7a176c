"""A port of three calculations, as an example: one question per line in, one answer per line out, as JSON.

java -jar reference-checks/target/reference-checks.jar check --program "python3 reference-checks/src/test/resources/port/port.py"
"""
import json
import sys
from fractions import Fraction

UNITS = {"mm": Fraction(1), "m": Fraction(1000), "in": Fraction(254, 10), '"': Fraction(254, 10), "ft": Fraction(3048, 10)}


def millimetres(length):
    """A number or a fraction and its unit, such as 3/16", 0.3048 m or 1 in."""
    number = length.rstrip('"abcdefghijklmnopqrstuvwxyz ')
    return Fraction(number) * UNITS[length[len(number):].strip()]


def decimal(fraction):
    """A fraction as a plain decimal; all that occur here end."""
    digits = 0
    while (fraction * 10**digits).denominator != 1:
        digits += 1
    whole = str(abs(int(fraction * 10**digits))).rjust(digits + 1, "0")
    return ("-" if fraction < 0 else "") + (whole[:-digits] + "." + whole[-digits:] if digits else whole)


def equilibrium(inputs):
    """Equation 4-5 of the Wood Handbook, with the coefficients for its scale."""
    degrees, scale = inputs["temperature"].split()
    t = float(degrees)
    h = float(inputs["relativeHumidity"]) / 100
    if scale == "°C":
        w = 349 + 1.29 * t + 0.0135 * t * t
        k = 0.805 + 0.000736 * t - 0.00000273 * t * t
        k1 = 6.27 - 0.00938 * t - 0.000303 * t * t
        k2 = 1.91 + 0.0407 * t - 0.000293 * t * t
    else:
        w = 330 + 0.452 * t + 0.00415 * t * t
        k = 0.791 + 0.000463 * t - 0.000000844 * t * t
        k1 = 6.34 + 0.000775 * t - 0.0000935 * t * t
        k2 = 1.09 + 0.0284 * t - 0.0000904 * t * t
    kh = k * h
    emc = 1800 / w * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh))
    return {"percent": f"{emc:.6f}"}


CALCULATIONS = {
    "length-in-millimetres": lambda inputs: {"millimetres": decimal(millimetres(inputs["length"]))},
    "area-of-rectangle": lambda inputs: {
        "squareMetres": decimal(millimetres(inputs["length"]) * millimetres(inputs["width"]) / 10**6)},
    "equilibrium-moisture-content": equilibrium,
}

sys.stdin.reconfigure(encoding="utf-8")
sys.stdout.reconfigure(encoding="utf-8")
for line in sys.stdin:
    question = json.loads(line)
    calculation = CALCULATIONS.get(question["calculation"])
    if calculation is None:
        answer = {"unknown": True}
    else:
        try:
            answer = {"figures": calculation(question["inputs"])}
        except (KeyError, ValueError) as refused:
            answer = {"refused": str(refused)}
    print(json.dumps(answer), flush=True)
