package floorcalc.levels;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Thrown when readings of a floor cannot be worked with; names everything that is wrong with them.
 *
 * @since 0.1
 */
public final class BadLevelsException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** What is wrong; a list that can be serialised. */
  @SuppressWarnings("serial")
  private final List<LevelFault> faults;

  BadLevelsException(List<LevelFault> faults) {
    super(faults.stream().map(LevelFault::message).collect(Collectors.joining("; also: ")));
    this.faults = List.copyOf(faults);
  }

  /**
   * Returns what is wrong.
   *
   * @return an unmodifiable list, not null, not empty
   */
  public List<LevelFault> faults() {
    return faults;
  }
}
