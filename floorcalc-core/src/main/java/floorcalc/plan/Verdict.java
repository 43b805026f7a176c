package floorcalc.plan;

/** What a check came to. */
public enum Verdict {
  /** The limit is kept. */
  MET,
  /** The limit is not kept. */
  NOT_MET,
  /** What the check needs was not measured. This is never a pass. */
  NOT_MEASURED
}
