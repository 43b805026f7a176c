package floorcalc;

import floorcalc.audit.AuditReport;
import floorcalc.working.Finding;
import java.util.stream.Collectors;

/**
 * Thrown when the audit does not pass a plan that this library made: a fault of the library, never of the job. The plan
 * does not leave the library.
 *
 * @since 0.1
 */
public final class UnsoundPlanException extends IllegalStateException {
  private static final long serialVersionUID = 1L;
  private static final int SHOWN = 5;

  private final transient AuditReport report;

  UnsoundPlanException(AuditReport report) {
    super("the plan did not pass its own audit and is held back; please report this fault with the job that led to it: "
        + report.breaches().stream().limit(SHOWN).map(Finding::message).collect(Collectors.joining("; ")));
    this.report = report;
  }

  /**
   * Returns what the audit found.
   *
   * @return the report, not null unless the exception was read back from a stream
   */
  public AuditReport report() {
    return report;
  }
}
