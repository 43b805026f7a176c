package floorcalc.plan;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Thrown when a job cannot be planned; it carries all faults, not only the first.
 *
 * @since 0.1
 */
public final class UnsoundJobException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial")
  private final List<JobFault> faults;

  /**
   * Makes an exception that lists faults.
   *
   * @param faults the faults, not null, not empty
   */
  public UnsoundJobException(List<JobFault> faults) {
    super(faults.stream().map(JobFault::message).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /**
   * Returns the faults.
   *
   * @return an unmodifiable list, not null, not empty
   */
  public List<JobFault> faults() {
    return faults;
  }
}
