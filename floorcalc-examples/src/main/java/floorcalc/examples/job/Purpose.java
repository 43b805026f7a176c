package floorcalc.examples.job;

/** What a job is read for. */
enum Purpose {
  /** To be planned: each room needs a shape. */
  TO_LAY,
  /** To see what its surveys are worth: one that fixes no shape is no mistake, and nothing is held against its walls. */
  SURVEYS
}
