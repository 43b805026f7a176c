package floorcalc.outline;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** Reads one polygon from well-known text, from left to right. */
final class WktReader {
  /** Longer numbers are refused: they are nonsense, and would be slow. */
  private static final int LONGEST_NUMBER = 40;
  private static final int MOST_EXPONENT_DIGITS = 2;
  private static final BigDecimal LONG_MAX = BigDecimal.valueOf(Long.MAX_VALUE);

  private final CharSequence text;
  private final int decimals;
  private final RoundingMode mode;
  private int at;

  WktReader(CharSequence text, Wkt.Unit unit, RoundingMode mode) {
    this.text = Objects.requireNonNull(text, "text");
    this.decimals = Objects.requireNonNull(unit, "unit").decimals;
    this.mode = Objects.requireNonNull(mode, "mode");
  }

  List<Ring> rings() {
    keyword();
    List<Ring> rings = new ArrayList<>();
    require('(', "a '(' before the rings of the polygon");
    do {
      rings.add(ring());
    } while (skip(','));
    require(')', "a ',' before another ring or a ')' after the last");
    space();
    if (at < text.length()) {
      throw fault(at, "nothing may follow the polygon");
    }
    return List.copyOf(rings);
  }

  private void keyword() {
    space();
    int start = at;
    String word = word();
    if (!word.equals("POLYGON")) {
      throw fault(start, word.isEmpty() ? "it must start with POLYGON" : word.equals("MULTIPOLYGON")
          ? "a MULTIPOLYGON is more than one room; give each its own POLYGON"
          : "only POLYGON is read, but it starts with " + shown(word));
    }
    space();
    start = at;
    word = word();
    if (word.equals("EMPTY")) {
      throw fault(start, "the polygon is EMPTY; a room needs at least 3 corners");
    }
    if (!word.isEmpty()) {
      throw fault(start, "only x and y are read; leave out " + shown(word));
    }
  }

  private Ring ring() {
    require('(', "a '(' before the points of a ring");
    List<Point> points = new ArrayList<>();
    do {
      space();
      long x = coordinate("x");
      long y = coordinate("y");
      points.add(Point.ofNanometres(x, y));
    } while (skip(','));
    space();
    if (at < text.length() && text.charAt(at) != ')') {
      throw fault(at, "expected a ',' before another point or a ')' after the last; a point is an x and a y");
    }
    if (points.size() < 2 || !points.get(0).equals(points.get(points.size() - 1))) {
      throw fault(at, "the last point of a ring must repeat the first");
    }
    require(')', "a ')' after the last point");
    return Ring.of(points.subList(0, points.size() - 1));
  }

  private long coordinate(String name) {
    space();
    int start = at;
    while (at < text.length() && "+-.0123456789eE".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    String number = text.subSequence(start, at).toString();
    if (number.isEmpty()) {
      throw fault(start, "a number is missing, the " + name + " of a point");
    }
    int exponent = Math.max(number.indexOf('e'), number.indexOf('E'));
    String digits = exponent < 0 ? "" : number.substring(exponent + 1).replaceFirst("^[+-]", "");
    if (number.length() > LONGEST_NUMBER || digits.length() > MOST_EXPONENT_DIGITS) {
      throw fault(start, "the number is too long");
    }
    BigDecimal nanometres;
    try {
      nanometres = new BigDecimal(number).movePointRight(decimals);
    } catch (NumberFormatException e) {
      throw fault(start, "\"" + number + "\" is not a number");
    }
    if (nanometres.abs().compareTo(LONG_MAX) > 0) {
      throw fault(start, number + " is out of range");
    }
    try {
      return nanometres.setScale(0, mode).longValueExact();
    } catch (ArithmeticException e) {
      throw fault(start, number + " is finer than a nanometre; give at most " + decimals + " decimals");
    }
  }

  private String word() {
    int start = at;
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      at++;
    }
    return text.subSequence(start, at).toString().toUpperCase(Locale.ROOT);
  }

  private static String shown(String word) {
    return word.length() <= LONGEST_NUMBER ? word : word.substring(0, LONGEST_NUMBER) + "…";
  }

  private void space() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }

  private boolean skip(char expected) {
    space();
    if (at < text.length() && text.charAt(at) == expected) {
      at++;
      return true;
    }
    return false;
  }

  private void require(char expected, String what) {
    if (!skip(expected)) {
      throw fault(at, "expected " + what);
    }
  }

  private WktException fault(int position, String reason) {
    return new WktException(text, position, reason);
  }
}
