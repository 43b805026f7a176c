package floorcalc.audit;

import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;

/** Gathers what the audit finds. Of one code only the first findings are kept in words; all are counted. */
final class Breaches {
  /** So many findings of one code are kept in words; a thousand more of the same tell nobody anything. */
  static final int KEPT = 200;

  private final List<Finding> found = new ArrayList<>();
  private final List<Finding> notes = new ArrayList<>();
  private final int[] counts = new int[Code.values().length];

  void add(Code code, String where, String message) {
    add(code, where, message, Source.DEFINITION);
  }

  void add(Code code, String where, String message, Source source) {
    if (counts[code.ordinal()]++ < KEPT) {
      found.add(new Finding(code.text(), Severity.SERIOUS, where, message, source));
    }
  }

  void note(Code code, String where, String message, Source source) {
    if (counts[code.ordinal()]++ < KEPT) {
      notes.add(new Finding(code.text(), Severity.NOTE, where, message, source));
    }
  }

  /** Whether so many of a code are kept already that no more words need be made. */
  boolean isFull(Code code) {
    return counts[code.ordinal()] >= KEPT;
  }

  int count(Code code) {
    return counts[code.ordinal()];
  }

  List<Finding> found() {
    List<Finding> all = new ArrayList<>(found);
    for (Code code : Code.values()) {
      int more = counts[code.ordinal()] - KEPT;
      if (more > 0) {
        all.add(new Finding(code.text(), Severity.SERIOUS, "", "and " + more + " more of " + code.text(),
            Source.DEFINITION));
      }
    }
    return all;
  }

  List<Finding> notes() {
    return notes;
  }
}
