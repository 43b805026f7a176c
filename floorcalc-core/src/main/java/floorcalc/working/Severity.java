package floorcalc.working;

/**
 * How much a finding matters.
 *
 * @since 0.1
 */
public enum Severity {
  /** Good to know; nothing needs doing. */
  NOTE,
  /** The floor can be laid, but a rule is not kept or something should be looked at. */
  WARNING,
  /** The floor should not be laid like this. */
  SERIOUS
}
