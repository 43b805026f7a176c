package floorcalc.examples.job;

import floorcalc.drawing.Measures;

/** In which units a job was measured. */
public enum Tape {
  /** Millimetres, centimetres or metres throughout. */
  METRIC(Measures.MILLIMETRES),
  /** At least one length in feet or inches: what is shown to people shows both. */
  FEET_AND_INCHES(Measures.FEET_AND_INCHES);

  private final Measures measures;

  Tape(Measures measures) {
    this.measures = measures;
  }

  /**
   * Returns how drawings write lengths.
   *
   * @return the measures, not null
   */
  public Measures measures() {
    return measures;
  }
}
