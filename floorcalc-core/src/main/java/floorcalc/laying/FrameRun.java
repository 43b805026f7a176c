package floorcalc.laying;

/**
 * A run in the frame of its bay: a connected piece of a row's floor.
 *
 * @param index its place in the list of all runs of the job
 * @param floor its floor
 * @param lowContacts where it borders on its row's low line, as pairs of places
 * @param highContacts where it borders on its row's high line, as pairs of places
 */
record FrameRun(int index, Patch floor, long[] lowContacts, long[] highContacts) {

  long from() {
    return floor.shell().minX;
  }

  long to() {
    return floor.shell().maxX;
  }
}
