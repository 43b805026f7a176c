package floorcalc.working;

/**
 * What became of a limit that was held against what was found.
 *
 * @since 0.1
 */
public enum Outcome {
  /** The limit is kept. */
  MET,
  /** The limit is not kept. */
  NOT_MET,
  /** What the judgement needs was not measured or not stated. This is never a pass. */
  NOT_MEASURED
}
