package floorcalc.examples.explain;

import floorcalc.examples.job.Tape;
import floorcalc.measure.Length;
import floorcalc.measure.TapeNotation;
import floorcalc.working.Outcome;
import java.util.Locale;

/** Lines below the working, each with a line break before it. */
final class Lines {
  private static final TapeNotation FEET = TapeNotation.feetAndInches(16);
  private static final TapeNotation INCHES = TapeNotation.inches(64);

  private final Tape tape;
  private final StringBuilder text = new StringBuilder();

  /** Lines about a floor that was measured in some unit. */
  Lines(Tape tape) {
    this.tape = tape;
  }

  /** A place or a span, with feet and inches beside it where the floor was measured so. */
  String place(Length length) {
    return tape == Tape.METRIC ? length.toString() : length + " (" + FEET.format(length) + ")";
  }

  /** A gap, a depth or a height, with inches to 1/64 beside it where the floor was measured so. */
  String depth(Length length) {
    return tape == Tape.METRIC ? length.toString() : length + " (" + INCHES.format(length) + ")";
  }

  /** Says before any figure that some readings are doubtful, if they are. */
  void doubts(int number) {
    if (number > 0) {
      add("doubtful: " + number + (number == 1 ? " warning" : " warnings") + " above on the readings themselves; what follows is worked out"
          + " with them as they stand, so read them again before anything is done by it");
    }
  }

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
