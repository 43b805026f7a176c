package floorcalc.examples.readings;

import floorcalc.examples.job.Mistake;
import java.util.List;
import java.util.stream.Collectors;

/** Thrown when a file of readings cannot be used; it holds everything that is wrong with it, not only the first thing. */
public final class BadReadingsException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** What is wrong, in the order of the file. */
  @SuppressWarnings("serial")
  private final List<Mistake> mistakes;

  BadReadingsException(List<Mistake> mistakes) {
    super(mistakes.stream().map(Mistake::toString).collect(Collectors.joining("\n")));
    this.mistakes = List.copyOf(mistakes);
  }

  /**
   * Returns everything that is wrong with the file.
   *
   * @return an unmodifiable list in the order of the file, not null, not empty
   */
  public List<Mistake> mistakes() {
    return mistakes;
  }
}
