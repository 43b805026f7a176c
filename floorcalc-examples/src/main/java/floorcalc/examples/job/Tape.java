package floorcalc.examples.job;

/** In which units a job was measured. */
public enum Tape {
  /** Millimetres, centimetres or metres throughout. */
  METRIC,
  /** At least one length in feet or inches: what is shown to people shows both. */
  FEET_AND_INCHES
}
