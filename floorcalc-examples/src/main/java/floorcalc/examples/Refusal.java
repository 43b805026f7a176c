package floorcalc.examples;

import java.util.List;

/** Thrown when what was asked for cannot be done for reasons that the user can mend: exit 2. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** What is wrong, one line each. */
  @SuppressWarnings("serial")
  private final List<String> lines;

  Refusal(List<String> lines) {
    super(String.join("\n", lines));
    this.lines = List.copyOf(lines);
  }

  Refusal(String line) {
    this(List.of(line));
  }

  List<String> lines() {
    return lines;
  }
}
