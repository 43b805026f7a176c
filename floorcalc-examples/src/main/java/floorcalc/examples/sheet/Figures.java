package floorcalc.examples.sheet;

import floorcalc.drawing.Measures;
import floorcalc.examples.job.Tape;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.measure.TapeNotation;
import floorcalc.measure.TapeNotationException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Figures as they are read on site: millimetres to a tenth, or inches to a sixteenth with millimetres beside them where a
 * job has inches.
 */
public final class Figures {
  private static final TapeNotation TENTHS = TapeNotation.millimetres(1);
  private static final TapeNotation INCHES = TapeNotation.feetAndInches(16);
  /** 1 ft² = 0.3048² m², exact. */
  private static final double SQUARE_METRES_PER_SQUARE_FOOT = 0.09290304;

  private static final Pattern LENGTH = Pattern.compile("(?<![0-9.])-?[0-9]{1,12}(\\.[0-9]{1,6})? mm\\b");
  private static final Pattern METRES = Pattern.compile("(?<![0-9.])-?[0-9]{1,9}(\\.[0-9]{1,6})? m(?![\\w²])");

  private static final Pattern SHARE = Pattern.compile("(?<![0-9.])-?[0-9]{1,12}\\.[0-9]{3,}(?= %| percentage points)");
  private static final Length FOOT = Length.ofInches(12, 0, 1);

  private final Tape tape;

  /**
   * Figures of a job.
   *
   * @param tape in which units the job was measured, not null
   */
  public Figures(Tape tape) {
    this.tape = tape;
  }

  /**
   * Tells whether inches stand first.
   *
   * @return true for a job in feet and inches
   */
  public boolean inches() {
    return tape == Tape.FEET_AND_INCHES;
  }

  /**
   * Returns how drawings write lengths.
   *
   * @return the measures, not null
   */
  public Measures measures() {
    return tape.measures();
  }

  /** One figure alone, for lists of them: {@code 141.5}, or {@code 5 9/16"} where a job has inches. */
  String plain(Length length) {
    return inches() ? INCHES.format(length) : millimetres(length);
  }

  /**
   * Returns a length for a column of millimetres.
   *
   * @param length the length, not null
   * @return for example {@code 141.5} or {@code 5 9/16" (141.5)}, not null
   */
  public String bare(Length length) {
    return inches() ? INCHES.format(length) + " (" + millimetres(length) + ")" : millimetres(length);
  }

  /**
   * Returns a length with its unit.
   *
   * @param length the length, not null
   * @return for example {@code 141.5 mm} or {@code 5 9/16" (141.5 mm)}, not null
   */
  public String withUnit(Length length) {
    return inches() ? INCHES.format(length) + " (" + millimetres(length) + " mm)" : millimetres(length) + " mm";
  }

  private static String millimetres(Length length) {
    String text = TENTHS.format(length).replace(" mm", "");
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /** A text that may hold a length, alone or behind "at least" or "at most": the length as it is read on site. */
  String inText(String text) {
    for (String before : new String[] {"at least ", "at most ", ""}) {
      if (text.startsWith(before) && text.endsWith(" mm")) {
        try {
          return before + withUnit(Length.parse(text.substring(before.length())));
        } catch (TapeNotationException notALength) {
          return text;
        }
      }
    }
    return text;
  }

  /**
   * Returns a text with any lengths and shares in it, such as {@code 3 mm under 2438.4 mm}: each as it is read on site, percent to
   * two decimals. Metres stay as they are where the job has no inches.
   *
   * @param text the text, not null
   * @return the text as it is read on site, not null
   */
  public String inWords(String text) {
    String metres = inches() ? METRES.matcher(text).replaceAll(found -> Length.parse(found.group()).toString()) : text;
    String lengths = LENGTH.matcher(metres).replaceAll(found -> Matcher.quoteReplacement(inFeet(Length.parse(found.group()))));
    return SHARE.matcher(lengths).replaceAll(found ->
        new BigDecimal(found.group()).setScale(2, RoundingMode.HALF_UP).toPlainString());
  }

  /** An edge that is sold by the foot is asked for by the foot. */
  private String inFeet(Length length) {
    boolean soldByFoot = !inches() && length.isPositive() && length.remainder(FOOT).isZero()
        && !length.remainder(Length.ofMillimetres(1)).isZero();
    return soldByFoot ? length.dividedBy(FOOT) + " ft (" + withUnit(length) + ")" : withUnit(length);
  }

  /** For example {@code 14.89 m²}. */
  String area(Area area) {
    String metric = area.toSquareMetreString(2) + " m²";
    return inches()
        ? metric + " (" + PlainNumber.text(area.toSquareMetres() / SQUARE_METRES_PER_SQUARE_FOOT, 1) + " ft²)"
        : metric;
  }
}
