package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;

/** What about readings looks like a slip of the reader or of the unit. */
final class ProfileDoubts {
  /** A staff read a decimetre off; an inch mark off. With how near to it a slip is taken for one. */
  private static final Slip[] SLIPS = {
      new Slip(Length.ofMillimetres(100), Length.ofMillimetres(5), "a decimetre of the staff"),
      new Slip(Length.ofInches(1, 0, 1), Length.ofMillimetres("1.5"), "an inch mark")};
  /** Fewer readings cannot tell which of them is off. */
  private static final int LEAST = 4;
  /** A slip shows in the reading itself and in its neighbours. */
  private static final int MOST_DISTURBED = 5;
  private static final int STEEPEST = 10;
  private static final Length NARROWEST_SPACING = Length.ofMillimetres(1);
  private static final Length WIDEST_SPACING = Length.ofMillimetres(10_000);

  private record Slip(Length size, Length near, String of) {}

  private ProfileDoubts() {}

  static List<Finding> of(HeightProfile profile) {
    List<Finding> doubts = new ArrayList<>();
    units(profile, doubts);
    if (profile.size() >= LEAST) {
      slips(profile, doubts);
    }
    return List.copyOf(doubts);
  }

  private static void units(HeightProfile profile, List<Finding> doubts) {
    long low = Long.MAX_VALUE;
    long high = Long.MIN_VALUE;
    long narrowest = Long.MAX_VALUE;
    for (int i = 0; i < profile.size(); i++) {
      low = Math.min(low, profile.height(i));
      high = Math.max(high, profile.height(i));
      if (i > 0) {
        narrowest = Math.min(narrowest, profile.place(i) - profile.place(i - 1));
      }
    }
    Length range = Length.ofNanometres(high - low);
    if (range.multipliedBy(STEEPEST).compareTo(profile.length()) > 0) {
      add(doubts, "unit-doubtful", "", "the heights range over " + range + " in a line of " + profile.length()
          + ", more than 1 in " + STEEPEST + "; check the units of heights and places");
    }
    Length spacing = Length.ofNanometres(narrowest);
    if (spacing.compareTo(NARROWEST_SPACING) < 0) {
      add(doubts, "unit-doubtful", "", "two readings are only " + spacing + " apart, less than " + NARROWEST_SPACING
          + "; check the unit of the places");
    }
    if (profile.widestSpacing().compareTo(WIDEST_SPACING) > 0) {
      add(doubts, "unit-doubtful", "", "two neighbouring readings are " + profile.widestSpacing() + " apart, more than "
          + WIDEST_SPACING + "; check the unit of the places");
    }
  }

  private static void slips(HeightProfile profile, List<Finding> doubts) {
    double[] off = new double[profile.size()];
    for (int i = 0; i < off.length; i++) {
      off[i] = off(profile, i, -1, 0);
    }
    for (Slip slip : SLIPS) {
      double size = slip.size().toNanometres();
      int disturbed = 0;
      for (double each : off) {
        disturbed += Math.abs(each) >= size / 4 ? 1 : 0;
      }
      if (disturbed == 0 || disturbed > MOST_DISTURBED) {
        continue;
      }
      for (int i = 0; i < off.length; i++) {
        double by = Math.signum(off[i]) * size;
        if (Math.abs(off[i] - by) <= slip.near().toNanometres() && calmWithout(profile, i, by, size / 4)) {
          ProfilePoint reading = profile.reading(i);
          add(doubts, "reading-slip", "reading " + (i + 1) + " at " + reading.place(), "the height of reading " + (i + 1)
              + ", " + reading.height() + ", is " + slip.size() + (by > 0 ? " too high" : " too low")
              + " beside its neighbours, within " + slip.near() + ": it looks like " + slip.of() + " misread; read it again");
          return;
        }
      }
    }
  }

  /** Whether nothing stands out any more once a reading is put right. */
  private static boolean calmWithout(HeightProfile profile, int index, double by, double limit) {
    for (int i = 0; i < profile.size(); i++) {
      if (Math.abs(off(profile, i, index, by)) >= limit) {
        return false;
      }
    }
    return true;
  }

  /** How far a reading is off the line through its two neighbours, or at an end through the next two. */
  private static double off(HeightProfile profile, int i, int slipped, double by) {
    int last = profile.size() - 1;
    int left = i == 0 ? 1 : i == last ? last - 2 : i - 1;
    int right = i == 0 ? 2 : i == last ? last - 1 : i + 1;
    double width = profile.place(right) - profile.place(left);
    double share = (profile.place(i) - profile.place(left)) / width;
    double from = profile.height(left) - (left == slipped ? by : 0);
    double to = profile.height(right) - (right == slipped ? by : 0);
    return profile.height(i) - (i == slipped ? by : 0) - (from + (to - from) * share);
  }

  private static void add(List<Finding> doubts, String code, String where, String message) {
    doubts.add(new Finding(code, Severity.WARNING, where, message, Source.COMMON_PRACTICE));
  }
}
