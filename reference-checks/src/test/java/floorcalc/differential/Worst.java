package floorcalc.differential;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Keeps the largest difference seen, and the case it was seen in. */
final class Worst {
  private long cases;
  private double worst;
  private String where = "";
  private final List<String> notes = new ArrayList<>();

  /** Counts a case; any number of differences may follow. */
  void nextCase() {
    cases++;
  }

  void see(double difference, Supplier<String> what) {
    double size = Math.abs(difference);
    if (!Double.isNaN(worst) && !(size <= worst)) {
      worst = size;
      where = what.get();
    }
  }

  void note(String text) {
    notes.add(text);
  }

  DifferentialResult result(double tolerance) {
    return new DifferentialResult(cases, worst, where, tolerance, List.copyOf(notes));
  }
}
