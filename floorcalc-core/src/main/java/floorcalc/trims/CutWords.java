package floorcalc.trims;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Which piece is cut from which bar or roll, in words, for those who saw. */
final class CutWords {
  /** Beyond so many bars the cut list is left to those who ask for the cutting itself. */
  private static final int MOST_BARS = 200;

  private CutWords() {}

  static Optional<Step> step(String id, String what, TrimCutting cutting) {
    List<TrimBar> bars = cutting.bars();
    if (bars.size() > MOST_BARS) {
      return Optional.empty();
    }
    List<String> lines = new ArrayList<>();
    int from = 0;
    while (from < bars.size()) {
      String line = words(bars.get(from));
      int to = from;
      while (to + 1 < bars.size() && words(bars.get(to + 1)).equals(line)) {
        to++;
      }
      lines.add((to == from ? what + " " + (from + 1) : what + "s " + (from + 1) + " to " + (to + 1)) + ": " + line);
      from = to + 1;
    }
    return Optional.of(new Step(id, "Which piece is cut from which " + what + ", to a tenth of a millimetre?", "value as stated", List.of(),
        String.join("; ", lines), Source.DEFINITION));
  }

  private static String words(TrimBar bar) {
    return tenths(bar.stock().length()) + " gives " + bar.pieces().stream().map(CutWords::words).collect(Collectors.joining(" + "))
        + ", left " + tenths(bar.leftover());
  }

  private static String words(TrimPiece piece) {
    return tenths(piece.cutLength()) + " (" + piece.name() + ")";
  }

  /** For people: half up; the cutting itself is exact. */
  private static String tenths(Length length) {
    BigDecimal rounded = BigDecimal.valueOf(length.toNanometres(), 6).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
    return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString() + " mm";
  }
}
