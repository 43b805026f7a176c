package floorcalc.recheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;

/** Gathers faults, what is left out, and how much was looked at. Used by one thread. */
final class Faults {
  final Tally tally = new Tally();
  private final List<Fault> list = new ArrayList<>();
  private final List<LeftOut> leftOut = new ArrayList<>();
  private int more;

  void add(Rule rule, String place, String found, String allowed) {
    if (list.size() < RecheckReport.MOST_FAULTS) {
      list.add(new Fault(rule, place, found, allowed));
    } else {
      more++;
    }
  }

  void leaveOut(String what, String because) {
    leftOut.add(new LeftOut(what, because));
  }

  boolean none(Rule rule) {
    return list.stream().noneMatch(fault -> fault.rule() == rule);
  }

  /** Whether nothing is wrong with the plan by itself. */
  boolean onlyBytesDiffer() {
    return list.stream().allMatch(fault -> fault.rule() == Rule.SAME_BYTES);
  }

  RecheckReport report() {
    return new RecheckReport(list, more, tally.checked(), leftOut);
  }

  /** A length in words: millimetres with at most six decimals. */
  static String mm(double millimetres) {
    String text = String.format(Locale.ROOT, "%.6f", millimetres);
    return text.replaceFirst("\\.?0+$", "") + " mm";
  }

  /** A point in words. */
  static String at(Coordinate point) {
    return "(" + mm(point.x) + ", " + mm(point.y) + ")";
  }

  static String mm(long nanometres) {
    return mm(nanometres / Lengths.PER_MILLIMETRE);
  }
}
