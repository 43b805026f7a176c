package floorcalc.examples.explain;

import floorcalc.working.Outcome;
import java.util.Locale;

/** Lines below the working, each with a line break before it. */
final class Lines {
  private final StringBuilder text = new StringBuilder();

  void add(String line) {
    text.append('\n').append(line);
  }

  void addIfAny(String indent, String line) {
    if (!line.isEmpty()) {
      add(indent + line);
    }
  }

  /** For example "not met". */
  static String words(Outcome outcome) {
    return outcome.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
