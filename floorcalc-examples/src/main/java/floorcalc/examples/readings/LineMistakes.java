package floorcalc.examples.readings;

import floorcalc.examples.job.Mistake;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers the mistakes of one file, whatever order they are found in. Not thread-safe. */
final class LineMistakes {
  private static final int LISTED = 100;

  private record OnLine(int line, Mistake mistake) {}

  private final List<OnLine> found = new ArrayList<>();

  /** Adds a mistake in a column of a line. */
  void add(int line, String column, String message) {
    found.add(new OnLine(line, mistake("line " + line + (column.isEmpty() ? "" : ", " + column), message)));
  }

  /** Adds a mistake of the whole file, which stands at the end. */
  void add(String message) {
    found.add(new OnLine(Integer.MAX_VALUE, mistake("readings", message)));
  }

  private static Mistake mistake(String place, String message) {
    return new Mistake(Mistake.Kind.UNREADABLE_READINGS.code(), place, message);
  }

  boolean none() {
    return found.isEmpty();
  }

  /** Throws if there is any. */
  void check() {
    if (found.isEmpty()) {
      return;
    }
    found.sort(Comparator.comparingInt(OnLine::line));
    List<Mistake> all = new ArrayList<>(found.stream().limit(LISTED).map(OnLine::mistake).toList());
    if (found.size() > LISTED) {
      all.add(new Mistake(Mistake.Kind.MORE_MISTAKES.code(), "(and more)",
          found.size() - LISTED + " more mistakes are not listed; mend these first"));
    }
    throw new BadReadingsException(all);
  }
}
