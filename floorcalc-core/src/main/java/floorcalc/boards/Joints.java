package floorcalc.boards;

/** Joints of one run as an array of places along the row. */
final class Joints {
  private static final long[] NONE = new long[0];

  private Joints() {}

  /** A start piece, then whole boards of one length; no joints if the start piece fills the run. */
  static long[] every(Run run, long start, long board) {
    long span = run.span();
    if (start >= span) {
      return NONE;
    }
    int count = (int) ((span - start - 1) / board) + 1;
    long[] joints = new long[count];
    for (int i = 0; i < count; i++) {
      joints[i] = run.from() + start + i * board;
    }
    return joints;
  }

  static long startPiece(Run run, long[] joints) {
    return joints.length == 0 ? run.span() : joints[0] - run.from();
  }

  static long endPiece(Run run, long[] joints) {
    return joints.length == 0 ? run.span() : run.to() - joints[joints.length - 1];
  }
}
