"""Writes tables of worked-out figures for the reference suite. Standard library only.

Lengths are whole nanometres while they are worked out; what is not whole is a Fraction or a Decimal until it is rounded once.
"""
import csv
import io
import sys
from decimal import Decimal, getcontext
from fractions import Fraction

getcontext().prec = 60
NM = 1_000_000


def nm(millimetres):
    """A length of so many millimetres, a text or a whole number, in whole nanometres."""
    value = Fraction(str(millimetres)) * NM
    if value.denominator != 1:
        raise ValueError(f"not a whole nanometre: {millimetres}")
    return int(value)


def nearest(value):
    """The whole number nearest to a Fraction or Decimal, a tie to the even one."""
    if isinstance(value, Decimal):
        return int(value.to_integral_value(rounding="ROUND_HALF_EVEN"))
    return round(Fraction(value))


def mm(nanometres):
    """Whole nanometres as plain millimetres without trailing zeros."""
    sign = "-" if nanometres < 0 else ""
    whole, rest = divmod(abs(nanometres), NM)
    return sign + (f"{whole}.{rest:06d}".rstrip("0") if rest else str(whole))


def decimal(value):
    """A Fraction as a Decimal, to 60 digits."""
    value = Fraction(value)
    return Decimal(value.numerator) / Decimal(value.denominator)


def fixed(value, places):
    """A Fraction or Decimal with so many decimals, a tie to the even digit."""
    value = value if isinstance(value, Decimal) else decimal(value)
    text = f"{value.quantize(Decimal(1).scaleb(-places), rounding='ROUND_HALF_EVEN'):f}"
    return text[1:] if text.startswith("-") and not text.strip("-0.") else text


def words(names):
    """Names in the order of the alphabet with blanks between, or none."""
    return " ".join(sorted(names)) or "none"


def table(program, title, locator, precision, columns, rows, note=""):
    """Prints the table with the lines that tell where it comes from."""
    out = io.StringIO()
    out.write(f"# title: {title}\n# publisher: worked out apart from this library\n# year: 2026\n# locator: {locator}\n")
    out.write(f"# known: computed in another language by src/apart/{program}\n# precision: {precision}\n")
    if note:
        out.write(f"# note: {note}\n")
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(columns)
    seen = set()
    for row in rows:
        if len(row) != len(columns):
            raise ValueError(f"{title}: {len(row)} cells for {len(columns)} columns: {row}")
        if row[0] in seen:
            raise ValueError(f"{title}: twice the case {row[0]}")
        seen.add(row[0])
        writer.writerow(row)
    sys.stdout.write(out.getvalue())


def plain(number):
    """A fraction or decimal that ends, without zeros behind the last digit."""
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
    whole = (Fraction(number) * 10 ** decimals + Fraction(1, 2)).__floor__()
    text = str(whole).rjust(decimals + 1, "0")
    return text if decimals == 0 else text[:-decimals] + "." + text[-decimals:]


def write(name, program, title, locator, precision, columns, rows, *notes):
    """Prints the table if the command line names it; rows are dictionaries."""
    if len(sys.argv) != 2:
        sys.exit("name a table, such as " + name)
    if sys.argv[1] != name:
        return
    out = io.StringIO()
    out.write(f"# title: {title}\n# publisher: worked out apart from this library\n# year: 2026\n# locator: {locator}\n")
    out.write(f"# known: computed in another language by src/apart/{program}\n# precision: {precision}\n")
    for note in notes:
        out.write(f"# note: {note}\n")
    writer = csv.DictWriter(out, columns, lineterminator="\n")
    writer.writeheader()
    for row in rows:
        writer.writerow(row)
    sys.stdout.write(out.getvalue())


def run(tables):
    """Prints the table that the command line names."""
    if len(sys.argv) != 2 or sys.argv[1] not in tables:
        sys.exit("name one of: " + ", ".join(tables))
    tables[sys.argv[1]]()
