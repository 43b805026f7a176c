package floorcalc.examples.lines;

/** What became of a line, or of all lines: the worst of them. */
public enum Outcome {
  /** A plan was made. */
  PLANNED,
  /** The job was refused for what is wrong with it. */
  REFUSED,
  /** The program itself failed. */
  FAULT;

  Outcome worse(Outcome other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
