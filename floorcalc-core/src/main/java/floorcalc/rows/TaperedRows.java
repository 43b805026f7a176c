package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The rows that a wall cuts off at a taper, when rows are laid from a line and the wall is not parallel to it.
 * <p>
 * Row {@code k} lies between {@code (k - 1) * p} and {@code k * p} from the line, the floor's edge at {@code y(x) = d(x) - g}. Each
 * straight part of the wall crosses the rows one after the other: a row is ripped from the place where the edge comes into it to
 * the place where it leaves it, from one width to another. A taper of more than a pitch crosses several rows. Widths are exact,
 * places are rounded to the nearest nanometre. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class TaperedRows {
  private static final long MOST_ROWS = 10_000;

  private final List<Rip> rips;
  private final Length straightRow;

  /**
   * A row, or a part of one, that is ripped in a straight line.
   *
   * @param row the row, counted from 1 at the line
   * @param from where the rip begins along the line, not null
   * @param to where it ends, not null, more than {@code from}
   * @param widthFrom what is left of the row where the rip begins, from zero to the pitch; not null
   * @param widthTo what is left of it where the rip ends, from zero to the pitch; not null
   * @since 0.1
   */
  public record Rip(long row, Length from, Length to, Length widthFrom, Length widthTo) {
    /** Checks that no part is null. */
    public Rip {
      Objects.requireNonNull(from, "from");
      Objects.requireNonNull(to, "to");
      Objects.requireNonNull(widthFrom, "widthFrom");
      Objects.requireNonNull(widthTo, "widthTo");
    }
  }

  private TaperedRows(List<Rip> rips, Length straightRow) {
    this.rips = List.copyOf(rips);
    this.straightRow = straightRow;
  }

  /**
   * Returns the rows ripped along a wall with the same gap all along.
   *
   * @param wall the face of the wall, from the line that the rows are laid from; not null
   * @param pitch the laid pitch, not null, more than zero
   * @param gap the gap to the wall, across the rows, not null, not negative
   * @return the rows with the steps {@code rip-begins} and {@code rip-ends} of each, and the finding {@code row-comes-to-a-point}
   *     where a rip begins or ends at nothing; not null
   * @throws IllegalArgumentException if a length is out of range, the gap reaches the line, or more than 10000 rows are crossed
   */
  public static Calculated<TaperedRows> of(WallFace wall, Length pitch, Length gap) {
    Widths.requirePositive(pitch, "laid pitch", "give the width that a laid board covers");
    Widths.requireNotNegative(gap, "gap", "give 0 mm for no gap");
    if (wall.nearest().distance().compareTo(gap) <= 0) {
      throw new IllegalArgumentException("at " + wall.nearest().at() + " the wall is " + wall.nearest().distance()
          + " from the line, no more than the gap of " + gap + "; take a line that is farther from it");
    }
    if (wall.variation().dividedBy(pitch) > MOST_ROWS) {
      throw new IllegalArgumentException("the wall runs off by " + wall.variation() + ", more than " + MOST_ROWS
          + " rows of " + pitch + "; give the part of it that is wanted");
    }
    List<Rip> rips = new ArrayList<>();
    List<WallFace.Offset> offsets = wall.offsets();
    for (int i = 1; i < offsets.size(); i++) {
      addRips(offsets.get(i - 1), offsets.get(i), pitch, gap, rips);
    }
    List<Step> steps = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (Rip rip : rips) {
      steps.add(step("rip-begins", rip, rip.from(), rip.widthFrom(), pitch, gap));
      steps.add(step("rip-ends", rip, rip.to(), rip.widthTo(), pitch, gap));
      if (rip.widthFrom().isZero() || rip.widthTo().isZero()) {
        findings.add(new Finding("row-comes-to-a-point", Severity.NOTE, "row " + rip.row(), "from " + rip.from() + " to "
            + rip.to() + " the row is ripped from " + rip.widthFrom() + " to " + rip.widthTo() + ": fix its pointed piece well,"
            + " or turn the line", Source.DEFINITION));
      }
    }
    return Calculated.of(new TaperedRows(rips, null), steps, findings);
  }

  /**
   * Returns the rows ripped along a wall beneath a trim: one straight row if the trim hides the taper, else as with the least gap
   * all along.
   *
   * @param wall the face of the wall, from the line that the rows are laid from; not null
   * @param pitch the laid pitch, not null, more than zero
   * @param trim what the trim hides, and the least gap, not null
   * @return the rows, with the steps {@code trim-span} and {@code left-to-saw} before those of the rips, and the finding
   *     {@code trim-hides-all} or {@code trim-hides-part}; with {@code straight-row} in place of the rips if it hides all; not null
   * @throws IllegalArgumentException as {@link #of(WallFace, Length, Length)}
   */
  public static Calculated<TaperedRows> of(WallFace wall, Length pitch, TrimCover trim) {
    Calculated<Length> saw = trim.toSaw(wall.variation());
    Calculated<TaperedRows> ripped = of(wall, pitch, trim.leastGap());
    List<Step> steps = new ArrayList<>(saw.steps());
    List<Finding> findings = new ArrayList<>(saw.findings());
    if (!saw.value().isZero()) {
      steps.addAll(ripped.steps());
      findings.addAll(ripped.findings());
      return Calculated.of(ripped.value(), steps, findings);
    }
    Length edge = wall.nearest().distance().minus(trim.leastGap());
    Length farthest = wall.farthest().distance().minus(trim.leastGap()).minus(trim.span());
    Length full = pitch.multipliedBy(edge.dividedBy(pitch));
    boolean isFull = full.isPositive() && full.compareTo(farthest) >= 0;
    Length last = isFull ? pitch : edge.minus(full);
    steps.add(isFull
        ? new Step("straight-row", "How wide is the last row? A row line lies where the trim hides it: full.", "w = p",
            List.of(Term.of("p", "laid pitch", pitch)), last, Source.DEFINITION)
        : new Step("straight-row", "How wide is the last row, ripped parallel to the line?", "w = d - g - k * p",
            List.of(Term.of("d", "least distance of the wall", wall.nearest().distance()),
                Term.of("g", "least gap", trim.leastGap()), Term.of("k", "full rows", edge.dividedBy(pitch)),
                Term.of("p", "laid pitch", pitch)), last, Source.DEFINITION));
    return Calculated.of(new TaperedRows(List.of(), last), steps, findings);
  }

  private static void addRips(WallFace.Offset start, WallFace.Offset end, Length pitch, Length gap, List<Rip> rips) {
    long p = pitch.toNanometres();
    long y0 = start.distance().minus(gap).toNanometres();
    long y1 = end.distance().minus(gap).toNanometres();
    long low = Math.min(y0, y1);
    long high = Math.max(y0, y1);
    long first = Math.floorDiv(low, p) + 1;
    long last = Math.floorDiv(high - 1, p) + 1;
    if (low == high) {
      if (Math.floorMod(low, p) != 0) {
        Length width = Length.ofNanometres(Math.floorMod(low, p));
        rips.add(new Rip(first, start.at(), end.at(), width, width));
      }
      return;
    }
    for (long i = 0; i <= last - first; i++) {
      long row = y0 < y1 ? first + i : last - i;
      long foot = Math.multiplyExact(row - 1, p);
      long from = Math.max(foot, Math.min(foot + p, y0));
      long to = Math.max(foot, Math.min(foot + p, y1));
      rips.add(new Rip(row, place(start, end, from - y0, y1 - y0), place(start, end, to - y0, y1 - y0),
          Length.ofNanometres(from - foot), Length.ofNanometres(to - foot)));
    }
  }

  private static Length place(WallFace.Offset start, WallFace.Offset end, long part, long whole) {
    return start.at().plus(Length.ofNanometres(WallFace.share(end.at().minus(start.at()).toNanometres(), part, whole)));
  }

  private static Step step(String id, Rip rip, Length at, Length width, Length pitch, Length gap) {
    Length distance = width.plus(pitch.multipliedBy(rip.row() - 1)).plus(gap);
    return new Step(id, "How wide is row " + rip.row() + " where its rip " + (id.equals("rip-begins") ? "begins" : "ends")
        + ", at " + at + "?", "w = d - g - (k - 1) * p", List.of(Term.of("d", "distance of the wall there", distance),
            Term.of("g", "gap", gap), Term.of("k", "row", rip.row()), Term.of("p", "laid pitch", pitch)), width,
        Source.DEFINITION);
  }

  /**
   * Returns the rows that are ripped, one for each straight part of the wall that a row meets.
   *
   * @return an unmodifiable list along the wall; empty if the wall lies along a row line, or a trim hides it all; not null
   */
  public List<Rip> rips() {
    return rips;
  }

  /**
   * Returns the width of the last row if the trim hides the taper and its edge is straight.
   *
   * @return the width, a full pitch if nothing at all is ripped; empty if rows are ripped to the wall; not null
   */
  public Optional<Length> straightRow() {
    return Optional.ofNullable(straightRow);
  }
}
