package floorcalc.examples.lines;

/** What is said when the program itself fails. */
public final class ProgramFault {
  /** What stands for it among the codes of mistakes. */
  public static final String CODE = "program-fault";

  private ProgramFault() {
  }

  /**
   * Says what failed, on one line.
   *
   * @param fault what was thrown, not null
   * @return the line, not null
   */
  public static String message(Throwable fault) {
    String cause = fault.getMessage() == null ? "" : " (" + fault.getMessage().replaceAll("\\s+", " ") + ")";
    return "internal fault: " + fault.getClass().getSimpleName() + cause + ". This is a mistake in the program, not"
        + " in your job: please report it with the job file, the version and what --trace prints.";
  }
}
