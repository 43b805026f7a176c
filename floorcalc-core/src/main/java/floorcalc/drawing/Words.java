package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.plan.PieceKind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Numbers and sentences of a drawing. */
final class Words {
  private Words() {
  }

  /** Returns millimetres to one decimal, half a tenth rounded up, without a trailing zero and without unit. */
  static String tenths(Length length) {
    return plain(length.toNanometres(), 1);
  }

  /** Returns whole millimetres, half a millimetre rounded up, without unit. */
  static String whole(Length length) {
    return plain(length.toNanometres(), 0);
  }

  private static String plain(long nanometres, int decimals) {
    BigDecimal value = BigDecimal.valueOf(nanometres, 6).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    if (value.signum() == 0) {
      return "0";
    }
    return value.scale() <= 0 ? grouped(value.longValueExact()) : value.toPlainString();
  }

  /** Returns an angle to two decimals at most. */
  static String degrees(BigDecimal exact) {
    BigDecimal value = exact.setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
    return (value.signum() == 0 ? "0" : value.toPlainString()) + '\u00b0';
  }

  static Length fromMillimetres(double millimetres) {
    return Length.fromMillimetres(millimetres, RoundingMode.HALF_EVEN);
  }

  static String count(long number, String one, String many) {
    return grouped(number) + ' ' + (number == 1 ? one : many);
  }

  /** Returns a number with a space between thousands. */
  static String grouped(long number) {
    String digits = Long.toString(number);
    if (Math.abs(number) < 10_000) {
      return digits;
    }
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < digits.length(); i++) {
      if (i > 0 && (digits.length() - i) % 3 == 0) {
        text.append('\u00a0');
      }
      text.append(digits.charAt(i));
    }
    return text.toString();
  }

  static String kind(PieceKind kind) {
    return switch (kind) {
      case START -> "start piece";
      case FULL -> "full board";
      case END -> "end piece";
      case SINGLE -> "single piece";
    };
  }

  /** Returns a list in words; of a long one the beginning and how many more there are. */
  static String list(List<String> items, int most) {
    List<String> shown = items.size() > most ? items.subList(0, most) : items;
    String text = String.join(", ", shown);
    return items.size() > most ? text + " and " + grouped(items.size() - most) + " more" : text;
  }

  /** Breaks a text into lines of at most a width; a word wider than that is cut. */
  static List<String> wrap(String text, double size, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ")) {
      String longer = line.isEmpty() ? word : line + ' ' + word;
      if (TextSize.width(longer) * size <= width) {
        line = longer;
      } else {
        if (!line.isEmpty()) {
          lines.add(line);
        }
        line = TextSize.cut(word, size, width);
      }
    }
    if (!line.isEmpty()) {
      lines.add(line);
    }
    return lines;
  }
}
