package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * How boards are cut at a wall that is not square to them: the angle that the saw is set to, by how much one edge is longer than the
 * other, and how long the cut is. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class EndCut {
  private static final int DEGREE_DECIMALS = 4;

  private final BigDecimal offSquare;
  private final Length runOff;
  private final Length cut;

  /**
   * The pointed piece of the row that comes to a corner.
   *
   * @param corner the corner of the room, counted from 1
   * @param height from the corner to the row line where the row ends, more than zero, at most the pitch; not null
   * @param length how long the piece is along that row line, as if both walls went on to it; not null
   * @since 0.1
   */
  public record CornerPiece(int corner, Length height, Length length) {
    /** Checks that no part is null. */
    public CornerPiece {
      Objects.requireNonNull(height, "height");
      Objects.requireNonNull(length, "length");
    }
  }

  private EndCut(BigDecimal offSquare, Length runOff, Length cut) {
    this.offSquare = offSquare;
    this.runOff = runOff;
    this.cut = cut;
  }

  /**
   * Returns the cut of boards along a line at a wall.
   *
   * @param rows the line that the boards run along, not null
   * @param from one point of the wall, not null
   * @param to another, not null
   * @param pitch the width that is cut through, not null, more than zero
   * @return the cut with the steps {@code run-off} and {@code cut-length}, not null
   * @throws IllegalArgumentException if the pitch is out of range, both points are the same, or the wall runs along the boards to
   *     within a nanometre
   */
  public static Calculated<EndCut> of(ControlLine rows, Point from, Point to, Length pitch) {
    Objects.requireNonNull(rows, "rows");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(pitch, "pitch");
    Widths.requirePositive(pitch, "width cut through", "give the width of the board");
    if (from.equals(to)) {
      throw new IllegalArgumentException("a wall needs two different points, but both are " + from);
    }
    Length along = rows.along(to).minus(rows.along(from));
    Length across = rows.height(to).minus(rows.height(from));
    if (across.isZero()) {
      throw new IllegalArgumentException("the wall from " + from + " to " + to + " runs along the boards: they are ripped there,"
          + " not cut to length");
    }
    BigDecimal cot = cotangent(along.abs(), across.abs());
    BigDecimal p = BigDecimal.valueOf(pitch.toNanometres());
    Length runOff = ControlLine.nearest(p.multiply(cot));
    BigDecimal cutSquared = p.multiply(p).multiply(BigDecimal.ONE.add(cot.multiply(cot)));
    Length cut = ControlLine.nearest(cutSquared.sqrt(ControlLine.ENOUGH));
    BigDecimal degrees = PlainNumber.of(StrictMath.toDegrees(StrictMath.atan(cot.doubleValue())))
        .setScale(DEGREE_DECIMALS, RoundingMode.HALF_EVEN);
    Term u = Term.of("u", "how far the wall goes along the boards", along.abs());
    Term v = Term.of("v", "how far it goes across them", across.abs());
    Term w = Term.of("w", "width cut through", pitch);
    List<Step> steps = List.of(
        new Step("run-off", "By how much is one edge of the board longer than the other? The saw is set to " + degrees
            + " degrees from a square cut.", "r = w * u / v, rounded to the nearest nanometre", List.of(w, u, v), runOff,
            Source.DEFINITION),
        new Step("cut-length", "How long is the cut?", "c = w * sqrt(1 + u / v * u / v), rounded to the nearest nanometre",
            List.of(w, u, v), cut, Source.DEFINITION));
    return Calculated.of(new EndCut(degrees, runOff, cut), steps);
  }

  private static BigDecimal cotangent(Length along, Length across) {
    return BigDecimal.valueOf(along.toNanometres()).divide(BigDecimal.valueOf(across.toNanometres()), ControlLine.ENOUGH);
  }

  /**
   * Returns the pieces at the corners of a room in which a row comes to a point: those that both walls leave on the same side of
   * the row lines.
   *
   * @param rows the line that the rows are set out from, not null
   * @param room the room, or the floor in it less its gap, not null
   * @param pitch the laid pitch, not null, more than zero
   * @return the pieces, the shortest first; corners with a wall along the boards are left out, as the row is ripped there; not null
   * @throws IllegalArgumentException if the pitch is out of range
   */
  public static List<CornerPiece> cornerPieces(ControlLine rows, Outline room, Length pitch) {
    Widths.requirePositive(pitch, "laid pitch", "give the width that a laid board covers");
    Ring walls = room.shell();
    List<CornerPiece> pieces = new ArrayList<>();
    for (int i = 0; i < walls.size(); i++) {
      Point corner = walls.corners().get(i);
      Point before = walls.corners().get((i + walls.size() - 1) % walls.size());
      Point after = walls.corners().get((i + 1) % walls.size());
      Length toBefore = rows.height(before).minus(rows.height(corner));
      Length toAfter = rows.height(after).minus(rows.height(corner));
      boolean up = toBefore.isPositive() && toAfter.isPositive();
      boolean down = toBefore.isNegative() && toAfter.isNegative();
      if ((up || down) && walls.angleDegrees(i) < 180) {
        Length over = rows.placeOf(corner, pitch).fromRowLine();
        Length height = up || over.isZero() ? pitch.minus(up ? over : Length.ZERO) : over;
        BigDecimal slope = slope(rows, corner, after, toAfter).subtract(slope(rows, corner, before, toBefore)).abs();
        pieces.add(new CornerPiece(i + 1, height,
            ControlLine.nearest(BigDecimal.valueOf(height.toNanometres()).multiply(slope))));
      }
    }
    pieces.sort(Comparator.comparing(CornerPiece::length).thenComparing(CornerPiece::corner));
    return List.copyOf(pieces);
  }

  /** How far a wall goes along the boards for each unit across them. */
  private static BigDecimal slope(ControlLine rows, Point corner, Point end, Length across) {
    return BigDecimal.valueOf(rows.along(end).minus(rows.along(corner)).toNanometres())
        .divide(BigDecimal.valueOf(across.abs().toNanometres()), ControlLine.ENOUGH);
  }

  /**
   * Returns the angle that the saw is set to, from a square cut.
   *
   * @return degrees from 0, a square cut, up to 90, rounded to four decimals; not null
   */
  public BigDecimal offSquareDegrees() {
    return offSquare;
  }

  /**
   * Returns by how much one edge of the board is longer than the other.
   *
   * @return zero for a square cut, rounded to the nearest nanometre; not null
   */
  public Length runOff() {
    return runOff;
  }

  /**
   * Returns how long the cut is.
   *
   * @return at least the width, rounded to the nearest nanometre; not null
   */
  public Length cut() {
    return cut;
  }
}
