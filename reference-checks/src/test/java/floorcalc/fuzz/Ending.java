package floorcalc.fuzz;

/** How a case may end; anything else is a fault. */
enum Ending {
  /** A result: a plan, a job, a length. */
  DONE,
  /** A refusal that says what is wrong and where. */
  REFUSED
}
