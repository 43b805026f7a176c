"""Writes a data file of the suite: lines that name its source, then a table."""
import csv
import pathlib

FOLDER = pathlib.Path(__file__).resolve().parent.parent / "main" / "resources" / "reference"


def write(name, program, title, locator, precision, columns, rows, *notes):
    """rows are dictionaries; the file is written with line feeds alone."""
    with open(FOLDER / name, "w", encoding="utf-8", newline="") as out:
        for key, text in [("title", title), ("publisher", "worked out apart from this library"), ("year", "2026"), ("locator", locator),
                          ("known", "computed in another language by src/apart/" + program), ("precision", precision)]:
            out.write("# %s: %s\n" % (key, text))
        for note in notes:
            out.write("# note: %s\n" % note)
        table = csv.DictWriter(out, columns, lineterminator="\n")
        table.writeheader()
        for row in rows:
            table.writerow(row)


def plain(number):
    """A fraction or decimal that ends, without zeros behind the last digit."""
    from fractions import Fraction
    number = Fraction(number)
    if number < 0:
        return "-" + plain(-number)
    digits = 0
    while (number * 10 ** digits).denominator != 1:
        digits += 1
        if digits > 40:
            raise ValueError("does not end: %s" % number)
    text = str(int(number * 10 ** digits)).rjust(digits + 1, "0")
    return text if digits == 0 else text[:-digits] + "." + text[-digits:]


def half_up(number, decimals):
    """A fraction that is not negative, rounded half away from zero."""
    from fractions import Fraction
    whole = (Fraction(number) * 10 ** decimals + Fraction(1, 2)).__floor__()
    text = str(whole).rjust(decimals + 1, "0")
    return text if decimals == 0 else text[:-decimals] + "." + text[-decimals:]
