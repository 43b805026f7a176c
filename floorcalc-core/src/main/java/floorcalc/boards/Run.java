package floorcalc.boards;

import floorcalc.measure.Length;
import java.util.Arrays;
import java.util.List;

/**
 * A connected part of a row that is filled with boards from its low to its high end, with gaps at both ends. Immutable and
 * thread-safe.
 * <p>
 * Places are distances along the row in the frame of a bay, in whole nanometres. A run knows which runs of the row
 * before it touches, and where, because end joints must keep their distance there.
 *
 * @since 0.1
 */
public final class Run {
  private final int row;
  private final long from;
  private final long to;
  private final int[] neighbours;
  private final long[][] contacts;

  private Run(int row, long from, long to, int[] neighbours, long[][] contacts) {
    if (to <= from) {
      throw new IllegalArgumentException("a run must end beyond its start, but runs from " + Length.ofNanometres(from)
          + " to " + Length.ofNanometres(to));
    }
    this.row = row;
    this.from = from;
    this.to = to;
    this.neighbours = neighbours;
    this.contacts = contacts;
  }

  /**
   * Returns a run that touches no run before it.
   *
   * @param row its row, from 0, counted over the whole job in laying order
   * @param from its low end in nanometres
   * @param to its high end in nanometres, more than {@code from}
   * @return the run, not null
   */
  public static Run of(int row, long from, long to) {
    return new Run(row, from, to, new int[0], new long[0][]);
  }

  /**
   * Returns a run that touches runs of the row before it.
   *
   * @param row its row, from 0, counted over the whole job in laying order
   * @param from its low end in nanometres
   * @param to its high end in nanometres, more than {@code from}
   * @param neighbours the places of the touched runs in the list of all runs, not null
   * @param contacts for each touched run where they touch: low and high ends in turn, in nanometres; not null
   * @return the run, not null
   */
  public static Run touching(int row, long from, long to, List<Integer> neighbours, List<long[]> contacts) {
    int[] places = neighbours.stream().mapToInt(Integer::intValue).toArray();
    long[][] stretches = contacts.stream().map(long[]::clone).toArray(long[][]::new);
    if (places.length != stretches.length) {
      throw new IllegalArgumentException("each neighbour needs its contacts, but there are " + places.length
          + " neighbours and " + stretches.length + " lists of contacts");
    }
    return new Run(row, from, to, places, stretches);
  }

  /**
   * Returns equal rows, one run each, every one touching the one before over its whole length.
   *
   * @param count the number of rows, at least 1
   * @param length the length of each row, not null, more than zero
   * @return the runs in laying order, not null
   */
  public static List<Run> equalRows(int count, Length length) {
    long[] contact = {0, length.toNanometres()};
    Run[] runs = new Run[count];
    for (int k = 0; k < count; k++) {
      runs[k] = k == 0
          ? of(0, 0, length.toNanometres())
          : new Run(k, 0, length.toNanometres(), new int[] {k - 1}, new long[][] {contact});
    }
    return List.copyOf(Arrays.asList(runs));
  }

  /**
   * Returns the row, counted over the whole job in laying order.
   *
   * @return the row, from 0
   */
  public int row() {
    return row;
  }

  /**
   * Returns the low end in nanometres.
   *
   * @return the low end
   */
  public long from() {
    return from;
  }

  /**
   * Returns the high end in nanometres.
   *
   * @return the high end
   */
  public long to() {
    return to;
  }

  /**
   * Returns the length from end to end.
   *
   * @return the length, not null
   */
  public Length length() {
    return Length.ofNanometres(to - from);
  }

  long span() {
    return to - from;
  }

  /** Tells whether this run touches another one before it, told by its place in the list of all runs. */
  boolean touches(int other) {
    return Arrays.stream(neighbours).anyMatch(neighbour -> neighbour == other);
  }

  int neighbourCount() {
    return neighbours.length;
  }

  int neighbour(int index) {
    return neighbours[index];
  }

  long[] contact(int index) {
    return contacts[index];
  }
}
