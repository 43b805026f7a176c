package floorcalc.examples.job;

import java.util.ArrayList;
import java.util.List;

/** Gathers the mistakes of one file in the order in which they are found. Not thread-safe. */
final class Mistakes {
  private final List<Mistake> list = new ArrayList<>();
  private long more;

  void add(Mistake.Kind kind, Place place, String message) {
    add(kind.code(), place, message);
  }

  void add(String code, Place place, String message) {
    add(code, areListed() ? place.toString() : "", message);
  }

  void add(String code, String place, String message) {
    if (areListed()) {
      list.add(new Mistake(code, place, message));
    } else {
      more++;
    }
  }

  /** Whether the next mistake is listed and not only counted, so that its words are worth making. */
  boolean areListed() {
    return list.size() < JobLimits.MISTAKES_LISTED;
  }

  boolean none() {
    return list.isEmpty();
  }

  /** The number found up to now, to tell whether a part was read without any. */
  long count() {
    return list.size() + more;
  }

  List<Mistake> list() {
    if (more == 0) {
      return List.copyOf(list);
    }
    List<Mistake> all = new ArrayList<>(list);
    all.add(new Mistake(Mistake.Kind.MORE_MISTAKES, "(and more)", more + " more mistakes are not listed; mend these first"));
    return all;
  }
}
