package floorcalc.fittings;

import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.outline.Outline;
import floorcalc.outline.OutlineCheck;
import floorcalc.outline.OutlineFault;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A border of straight boards with mitres: along the edge of a floor on its inside, or round a hearth on its outside.
 * <p>
 * Each side is moved by a width of the border; neighbours meet on the line that halves the corner. A side that is {@code L} long where
 * the border begins is {@code L − d (t1 + t2)} long at the depth {@code d}, with {@code t = tan(f/2)} at each of its corners, {@code f} the
 * angle by which the line turns towards the border there; {@code t} is 1 at a right-angled corner of a room, −1 at one of a hearth.
 * Boards longer than those that are sold are pieced, which is not done here. Immutable.
 *
 * @since 0.1
 */
public final class MitredBorder {
  private static final int DEGREE_DECIMALS = 4;
  /** Of an angle that a mitre is worked out from: rounded to four itself, it would round half of it twice. */
  private static final int ANGLE_DECIMALS = 8;
  private static final int MOST_ROWS = 1000;

  private final Ring line;
  private final Length width;
  private final int rows;
  private final List<BorderBoard> boards;
  private final Ring field;

  private MitredBorder(Ring line, Length width, int rows, List<BorderBoard> boards, Ring field) {
    this.line = line;
    this.width = width;
    this.rows = rows;
    this.boards = List.copyOf(boards);
    this.field = field;
  }

  /**
   * Returns a border along the inside of a line.
   *
   * @param edge the edge of the floor, less its gap; not null, a sound outline
   * @param width the width of a border board, not null, more than zero
   * @param rows how many rows of it, 1 to 1000
   * @return the border with the steps {@code mitre} for each corner, {@code edge-at-field} for each board; not null
   * @throws IllegalArgumentException if a number is out of range, the edge is not sound, or the border leaves no field
   */
  public static Calculated<MitredBorder> inside(Ring edge, Length width, int rows) {
    return of(edge.signedArea().isNegative() ? edge.reversed() : edge, width, rows);
  }

  /**
   * Returns a border round a hearth, a column or an island.
   *
   * @param hearth the line that the border begins at, with the gap already added; not null, a sound outline
   * @param width the width of a border board, not null, more than zero
   * @param rows how many rows of it, 1 to 1000
   * @return the border as {@link #inside} gives it, its {@link #field} the line round it; not null
   * @throws IllegalArgumentException if a number is out of range, the line is not sound, or its own parts get into the border's way
   */
  public static Calculated<MitredBorder> around(Ring hearth, Length width, int rows) {
    return of(hearth.signedArea().isNegative() ? hearth : hearth.reversed(), width, rows);
  }

  private static Calculated<MitredBorder> of(Ring line, Length width, int rows) {
    if (!Objects.requireNonNull(width, "width").isPositive()) {
      throw new IllegalArgumentException("the width of a border board must be more than 0 mm, but was " + width);
    }
    if (rows < 1 || rows > MOST_ROWS) {
      throw new IllegalArgumentException("a border has 1 to " + MOST_ROWS + " rows, but " + rows + " were asked for");
    }
    requireSound(line, "the line of the border is not sound: ");
    List<Step> steps = new ArrayList<>();
    int n = line.size();
    List<BigDecimal> tangents = new ArrayList<>();
    List<BigDecimal> mitres = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      BigDecimal angle = PlainNumber.of(line.angleDegrees(i)).setScale(ANGLE_DECIMALS, RoundingMode.HALF_UP);
      BigDecimal mitre = BigDecimal.valueOf(90).subtract(angle.divide(BigDecimal.valueOf(2))).setScale(DEGREE_DECIMALS, RoundingMode.HALF_UP);
      mitres.add(mitre);
      tangents.add(tangent(line, i));
      steps.add(new Step("mitre", "What is the saw set to, from a square cut, at corner " + (i + 1) + "?",
          "m = 90 - a / 2, rounded to four decimals", List.of(Term.of("a", "angle of the floor there, in degrees", plain(angle))),
          plain(mitre), Source.DEFINITION));
    }
    List<BorderBoard> boards = new ArrayList<>();
    for (int row = 1; row <= rows; row++) {
      for (int i = 0; i < n; i++) {
        boards.add(board(line, i, row, width, tangents, mitres, steps));
      }
    }
    Ring field = moved(line, width.multipliedBy(rows), tangents);
    requireSound(field, "a border of " + rows + " x " + width + " gets in its own way; make it narrower: ");
    if (field.signedArea().isNegative() != line.signedArea().isNegative()) {
      throw new IllegalArgumentException("a border of " + rows + " x " + width + " leaves no field; make it narrower");
    }
    return Calculated.of(new MitredBorder(line, width, rows, boards, field), steps);
  }

  private static void requireSound(Ring ring, String what) {
    List<OutlineFault> faults = OutlineCheck.faultsOf(Outline.of(ring));
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException(what + faults.stream().map(OutlineFault::message).collect(Collectors.joining("; ")));
    }
  }

  private static BorderBoard board(Ring line, int side, int row, Length width, List<BigDecimal> tangents, List<BigDecimal> mitres,
      List<Step> steps) {
    int next = (side + 1) % line.size();
    BigDecimal first = tangents.get(side);
    BigDecimal second = tangents.get(next);
    Length depth = width.multipliedBy(row - 1L);
    Length atLine = at(line.wallLength(side), depth, first, second);
    Length atField = at(line.wallLength(side), depth.plus(width), first, second);
    if (!atField.isPositive() || !atLine.isPositive()) {
      throw new IllegalArgumentException("row " + row + " of the border has no length left on side " + (side + 1) + ", which is "
          + line.wallLength(side) + " long; take fewer or narrower rows");
    }
    steps.add(new Step("edge-at-field", "How long is the inner edge of row " + row + " on side " + (side + 1) + "?",
        "s = L - d * (t1 + t2), rounded to the nearest nanometre", List.of(Term.of("L", "length of the side", line.wallLength(side)),
            Term.of("d", "depth of the rows up to there", depth.plus(width)),
            Term.of("t1", "tangent of half the turn at its first corner", plain(first)),
            Term.of("t2", "the same at its second corner", plain(second))), atField, Source.DEFINITION));
    BigDecimal w = BigDecimal.valueOf(width.toNanometres());
    Length over = nearest(w.multiply(first.negate().max(BigDecimal.ZERO))).plus(nearest(w.multiply(second.negate().max(BigDecimal.ZERO))));
    return new BorderBoard(row, side + 1, atLine, atField, atLine.plus(over).max(atField), mitres.get(side), mitres.get(next));
  }

  private static Length at(Length side, Length depth, BigDecimal first, BigDecimal second) {
    return nearest(BigDecimal.valueOf(side.toNanometres())
        .subtract(BigDecimal.valueOf(depth.toNanometres()).multiply(first.add(second))));
  }

  private static Length nearest(BigDecimal nanometres) {
    return Length.ofNanometres(nanometres.setScale(0, RoundingMode.HALF_EVEN).longValueExact());
  }

  private static BigDecimal plain(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }

  private static double[] along(Ring line, int side) {
    int next = (side + 1) % line.size();
    return new double[] {line.x(next) - line.x(side), line.y(next) - line.y(side)};
  }

  /** The tangent of half the turn to the left at a corner. */
  private static BigDecimal tangent(Ring line, int corner) {
    double[] a = along(line, (corner + line.size() - 1) % line.size());
    double[] b = along(line, corner);
    double cross = a[0] * b[1] - a[1] * b[0];
    double dot = a[0] * b[0] + a[1] * b[1];
    double lengths = Math.sqrt(a[0] * a[0] + a[1] * a[1]) * Math.sqrt(b[0] * b[0] + b[1] * b[1]);
    return PlainNumber.of(dot >= 0 ? cross / (lengths + dot) : (lengths - dot) / cross);
  }

  private static Ring moved(Ring line, Length depth, List<BigDecimal> tangents) {
    double d = depth.toNanometres();
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      double[] b = along(line, i);
      double length = Math.sqrt(b[0] * b[0] + b[1] * b[1]);
      double t = tangents.get(i).doubleValue();
      corners.add(Point.ofNanometres(line.x(i) + (long) StrictMath.rint(d * (t * b[0] - b[1]) / length),
          line.y(i) + (long) StrictMath.rint(d * (t * b[1] + b[0]) / length)));
    }
    return Ring.of(corners);
  }

  /**
   * Returns the line that the border follows: counter-clockwise for a border inside, clockwise for one around.
   *
   * @return the ring, not null
   */
  public Ring line() {
    return line;
  }

  /**
   * Returns the width of a border board.
   *
   * @return more than zero
   */
  public Length width() {
    return width;
  }

  /**
   * Returns how many rows the border has.
   *
   * @return at least 1
   */
  public int rows() {
    return rows;
  }

  /**
   * Returns the boards, row by row from the line, in each along the sides of the line.
   *
   * @return an unmodifiable list, not null
   */
  public List<BorderBoard> boards() {
    return boards;
  }

  /**
   * Returns where the border ends: the outline of the inner field, or the line round a border that goes round a hearth.
   *
   * @return the ring, its corners in the order of the line's and each within a nanometre or two of its place; not null
   */
  public Ring field() {
    return field;
  }

  /**
   * Returns the length of all border boards together, each as it takes of a board.
   *
   * @return the sum, not null
   */
  public Length stock() {
    return boards.stream().map(BorderBoard::stock).reduce(Length.ZERO, Length::plus);
  }
}
