package floorcalc.outline.survey;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is known of an area when only the lengths of the walls are: a range, not a number.
 * <p>
 * Four walls without a diagonal can be pushed out of shape. Of all shapes the one whose corners lie on a circle is the
 * largest; the least is one of those that can be pushed no further. Areas are exact and then rounded outward to whole
 * square millimetres, so every shape that has these walls lies within, the ends included.
 * <pre>{@code
 * List<Length> walls = List.of(Length.parse("5 m"), Length.parse("4 m"), Length.parse("5 m"), Length.parse("4 m"));
 * AreaRange.nearSquare(walls, 2).value();   // 19.987816 m² to 20 m²
 * }</pre>
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class AreaRange {
  private static final String LARGEST = "How large can the room be at most?";
  private static final String SMALLEST = "How small can the room be?";

  private final Area least;
  private final Area greatest;
  private final List<DiagonalRange> diagonals;

  private AreaRange(Area least, Area greatest, List<DiagonalRange> diagonals) {
    this.least = least;
    this.greatest = greatest;
    this.diagonals = List.copyOf(diagonals);
  }

  /**
   * Returns the range over all shapes that have these walls in this order, those with a reflex corner included.
   * <p>
   * Three walls fix their triangle. Of four walls both ends are the true limits; the least is reached only by a room that
   * is folded flat somewhere. Of more than four, the greatest is the true limit and the least is given as zero, which
   * says nothing.
   *
   * @param walls the lengths of the walls in order, not null, 3 to 10 000, each more than zero
   * @return the range with its working, and the finding {@code shape-not-fixed} for four walls and more; not null
   * @throws IllegalArgumentException if a wall is as long as all others together or longer
   */
  public static Calculated<AreaRange> ofSides(List<Length> walls) {
    Objects.requireNonNull(walls, "walls");
    Sides sides = Sides.of(walls);
    if (sides.size() > 4) {
      WallsOnCircle circle = new WallsOnCircle(sides);
      return with(new AreaRange(Area.ZERO, circle.area(), List.of()), circle.steps(LARGEST), "of these " + sides.size()
          + " walls only the greatest area is known, " + shown(circle.area(), RoundingMode.CEILING) + "; measure at least " + (sides.size() - 3) + " ties");
    }
    List<Step> steps = new ArrayList<>(List.of(onCircle(sides)));
    if (sides.size() == 3) {
      Area least = Sides.area(Sides.triangle(walls.get(0), walls.get(1), walls.get(2)), RoundingMode.FLOOR);
      return Calculated.of(new AreaRange(least, (Area) steps.get(0).result(), List.of()), steps);
    }
    EndShape smallest = smallest(Stream.of(EndShape.straight(sides, 0), EndShape.straight(sides, 1),
        EndShape.folded(sides, 0), EndShape.folded(sides, 1)));
    return range(sides, steps, smallest, List.of(DiagonalRange.of(walls, 1, 3), DiagonalRange.of(walls, 2, 4)));
  }

  /**
   * Returns the range over all shapes of four walls in which no corner juts into the room.
   *
   * @param walls the lengths of the four walls in order, not null, each more than zero
   * @return the range with its working and the finding {@code shape-not-fixed}, not null
   * @throws IllegalArgumentException if there are not four, or one is as long as all others together or longer
   */
  public static Calculated<AreaRange> withoutReflexCorner(List<Length> walls) {
    Objects.requireNonNull(walls, "walls");
    Sides sides = Sides.ofFour(walls);
    EndShape longest13 = EndShape.straight(sides, 0);
    EndShape longest24 = EndShape.straight(sides, 1);
    DiagonalRange first = new DiagonalRange(1, 3, longest24.otherDiagonal(), DiagonalRange.of(walls, 1, 3).longest());
    DiagonalRange second = new DiagonalRange(2, 4, longest13.otherDiagonal(), DiagonalRange.of(walls, 2, 4).longest());
    List<Step> steps = new ArrayList<>(List.of(onCircle(sides), longest24.otherDiagonal("p", first.shortest()),
        longest13.otherDiagonal("q", second.shortest())));
    return range(sides, steps, smallest(Stream.of(longest13, longest24)), List.of(first, second));
  }

  private static EndShape smallest(Stream<EndShape> shapes) {
    return shapes.min(Comparator.comparing(EndShape::area)).orElseThrow();
  }

  private static Calculated<AreaRange> range(Sides sides, List<Step> steps, EndShape smallest, List<DiagonalRange> diagonals) {
    Area greatest = (Area) steps.get(0).result();
    steps.addAll(smallest.steps(SMALLEST));
    Area least = (Area) steps.get(steps.size() - 1).result();
    return with(new AreaRange(least, greatest, diagonals), steps, "");
  }

  /**
   * Returns the range over all shapes of four walls in which every corner is within some degrees of square.
   *
   * @param walls the lengths of the four walls in order, not null, each more than zero
   * @param degrees how far from 90 degrees a corner may be, from 0 to 45
   * @return the range with its working, and the finding {@code shape-not-fixed} unless the ends are the same; not null
   * @throws IllegalArgumentException if there are not four walls, they do not close, or no shape has its corners so near
   *     to square; the message says how near they can be
   */
  public static Calculated<AreaRange> nearSquare(List<Length> walls, double degrees) {
    Objects.requireNonNull(walls, "walls");
    if (!(degrees >= 0 && degrees <= 45)) {
      throw new IllegalArgumentException("how far a corner may be from square must be from 0 to 45 degrees, but was " + PlainNumber.text(degrees));
    }
    Sides sides = Sides.ofFour(walls);
    List<NearSquare.Limit> limits = new NearSquare(sides).limits(degrees);
    Comparator<NearSquare.Limit> byArea = Comparator.comparing(limit -> limit.area);
    NearSquare.Limit smallest = limits.stream().min(byArea).orElseThrow();
    NearSquare.Limit largest = limits.stream().max(byArea).orElseThrow();
    List<DiagonalRange> diagonals = List.of(between(limits, 1), between(limits, 2));
    List<Step> steps = new ArrayList<>(smallest.steps("least-area", SMALLEST, RoundingMode.FLOOR));
    Length square = diagonalOnCircle(sides);
    boolean circle = square.compareTo(diagonals.get(0).shortest()) >= 0 && square.compareTo(diagonals.get(0).longest()) <= 0;
    Area least = (Area) steps.get(steps.size() - 1).result();
    steps.addAll(circle ? List.of(onCircle(sides)) : largest.steps("greatest-area", LARGEST, RoundingMode.CEILING));
    Area greatest = (Area) steps.get(steps.size() - 1).result();
    return with(new AreaRange(least, greatest, diagonals), steps, "");
  }

  /**
   * Returns the least number of degrees within which every corner of a room with these four walls can be square.
   *
   * @param walls the lengths of the four walls in order, not null, each more than zero
   * @return degrees, not negative; next to zero if opposite walls are equal
   * @throws IllegalArgumentException if there are not four walls or they do not close
   */
  public static double leastDegreesFromSquare(List<Length> walls) {
    Objects.requireNonNull(walls, "walls");
    return new NearSquare(Sides.ofFour(walls)).leastDegrees();
  }

  /**
   * Returns the area of a room of four walls with one of its diagonals, which lies in the room.
   *
   * @param walls the lengths of the four walls in order, not null, each more than zero
   * @param diagonal from corner 1 to 3, or from 2 to 4; not null
   * @return the area to the nearest square millimetre with its working, not null
   * @throws IllegalArgumentException if the walls do not close, or the diagonal cannot be so long or so short
   */
  public static Calculated<Area> withDiagonal(List<Length> walls, Tie diagonal) {
    Objects.requireNonNull(walls, "walls");
    Objects.requireNonNull(diagonal, "diagonal");
    Sides sides = Sides.ofFour(walls);
    if (Math.max(diagonal.from(), diagonal.to()) > 4 || Math.abs(diagonal.from() - diagonal.to()) != 2) {
      throw new IllegalArgumentException("a diagonal of 4 walls runs from corner 1 to 3 or from 2 to 4, but was from "
          + diagonal.from() + " to " + diagonal.to());
    }
    DiagonalRange.of(walls, diagonal.from(), diagonal.to()).require(diagonal.length());
    int wall = Math.min(diagonal.from(), diagonal.to()) - 1;
    BigDecimal sum = Sides.triangle(sides.get(wall), sides.get(wall + 1), diagonal.length())
        .add(Sides.triangle(sides.get(wall + 2), sides.get(wall + 3), diagonal.length()));
    List<Term> terms = sides.terms();
    terms.add(Term.of("e", "diagonal from corner " + diagonal.from() + " to corner " + diagonal.to(), diagonal.length()));
    Area area = Sides.area(sum, RoundingMode.HALF_EVEN);
    return Calculated.of(area, List.of(new Step("area", "How large are the two triangles that the diagonal makes?",
        "K = (" + Sides.triangleFormula(sides.symbol(wall), sides.symbol(wall + 1)) + " + "
            + Sides.triangleFormula(sides.symbol(wall + 2), sides.symbol(wall + 3)) + ") / 4, rounded to a whole square millimetre",
        terms, area, Source.DEFINITION)));
  }

  private static DiagonalRange between(List<NearSquare.Limit> limits, int from) {
    List<Length> found = limits.stream().map(limit -> limit.diagonal(from)).sorted().toList();
    return new DiagonalRange(from, from + 2, found.get(0), found.get(found.size() - 1));
  }

  private static Step onCircle(Sides sides) {
    boolean four = sides.size() == 4;
    Area area = Sides.area(Sides.root(Sides.sixteenSquares(sides.lengths)).divide(BigDecimal.valueOf(4), Sides.DIGITS),
        RoundingMode.CEILING);
    return new Step("greatest-area", four ? LARGEST : "How large is the room?", four
        ? "K = sqrt((b + c + d - a) * (a + c + d - b) * (a + b + d - c) * (a + b + c - d)) / 4,"
            + " rounded up to a whole square millimetre"
        : "K = sqrt((a + b + c) * (b + c - a) * (a + c - b) * (a + b - c)) / 4, rounded up to a whole square millimetre",
        sides.terms(), area, Source.DEFINITION);
  }

  /** Returns the diagonal from corner 1 to corner 3 of the shape whose corners lie on a circle, by Ptolemy's theorem. */
  private static Length diagonalOnCircle(Sides sides) {
    BigInteger a = Sides.whole(sides.get(0));
    BigInteger b = Sides.whole(sides.get(1));
    BigInteger c = Sides.whole(sides.get(2));
    BigInteger d = Sides.whole(sides.get(3));
    BigInteger above = a.multiply(c).add(b.multiply(d)).multiply(a.multiply(d).add(b.multiply(c)));
    BigDecimal square = new BigDecimal(above).divide(new BigDecimal(a.multiply(b).add(c.multiply(d))), Sides.DIGITS);
    return Sides.length(square.sqrt(Sides.DIGITS), RoundingMode.HALF_EVEN);
  }

  /** Returns an area for a sentence: to three decimals of a square metre, rounded outward. */
  private static String shown(Area area, RoundingMode mode) {
    return new BigDecimal(area.toSquareMetreString(6)).setScale(3, mode).toPlainString() + " m²";
  }

  private static Calculated<AreaRange> with(AreaRange range, List<Step> steps, String given) {
    if (range.diagonals.stream().allMatch(diagonal -> diagonal.spread().isZero()) && !range.diagonals.isEmpty()) {
      return Calculated.of(range, steps);
    }
    String message = range.diagonalToMeasure().map(diagonal -> "the walls alone leave the area open between "
        + shown(range.least, RoundingMode.FLOOR) + " and " + shown(range.greatest, RoundingMode.CEILING) + "; measure the diagonal from corner " + diagonal.from() + " to corner " + diagonal.to()
        + ", which can be " + Sides.millimetres(diagonal.shortest(), RoundingMode.FLOOR) + " to "
        + Sides.millimetres(diagonal.longest(), RoundingMode.CEILING) + " long, and the other one as a check")
        .orElse(given);
    return Calculated.of(range, steps,
        List.of(new Finding("shape-not-fixed", Severity.WARNING, "", message, Source.DEFINITION)));
  }

  /**
   * Returns the least area.
   *
   * @return the area, rounded down to a whole square millimetre; not null
   */
  public Area least() {
    return least;
  }

  /**
   * Returns the greatest area.
   *
   * @return the area, rounded up to a whole square millimetre; not null
   */
  public Area greatest() {
    return greatest;
  }

  /**
   * Returns how long the diagonals can be over these shapes.
   *
   * @return from corner 1 to 3 and from 2 to 4 for four walls, else none; not null
   */
  public List<DiagonalRange> diagonals() {
    return diagonals;
  }

  /**
   * Returns the diagonal that says most: the one whose length differs more over these shapes.
   *
   * @return the diagonal, the first of two that differ alike; empty unless there are four walls
   */
  public Optional<DiagonalRange> diagonalToMeasure() {
    return diagonals.stream().min(Comparator.comparing(DiagonalRange::spread).reversed());
  }

  @Override
  public String toString() {
    return least + " to " + greatest;
  }
}
