package floorcalc.differential;

import floorcalc.differential.RandomOutlines.Place;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import java.math.BigDecimal;

/** Area, or perimeter, of outlines with voids: whole numbers in the core, floating point in the library. */
final class OutlineSizeDifferential extends Comparison {
  private final Plane plane;
  private final Size size;
  private final Place place;
  private final double tolerance;
  private final String argument;

  /** What is compared. */
  enum Size { AREA, PERIMETER }

  private OutlineSizeDifferential(Plane plane, Size size, Place place, int cases, double tolerance, String argument) {
    super((size == Size.AREA ? "area" : "perimeter") + " of outlines with voids"
        + (place == Place.FAR ? ", up to 9 km from the origin" : ""), plane.library(), cases, Outline.class, Ring.class,
        size == Size.AREA ? Area.class : Length.class);
    this.plane = plane;
    this.size = size;
    this.place = place;
    this.tolerance = tolerance;
    this.argument = argument;
  }

  static OutlineSizeDifferential of(Plane plane, Size size, Place place, int cases, double tolerance, String argument) {
    return new OutlineSizeDifferential(plane, size, place, cases, tolerance, argument);
  }

  @Override
  public String unit() {
    return size == Size.AREA ? "nm wide strip along all walls" : "nm for each wall";
  }

  @Override
  public double tolerance() {
    return tolerance;
  }

  @Override
  public String argument() {
    return argument;
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    RandomOutlines outlines = new RandomOutlines(101 + place.ordinal());
    for (int k = 0; k < upTo; k++) {
      Outline outline = outlines.next(place);
      Outline said = answers == Answers.AS_GIVEN ? outline : withFault(outline);
      worst.nextCase();
      if (size == Size.AREA) {
        double strip = difference(plane.area(outline), said.area()) / outline.perimeter().toNanometres();
        worst.see(strip, outline::toString);
      } else {
        int walls = outline.shell().size() + outline.voids().stream().mapToInt(Ring::size).sum();
        worst.see((plane.perimeter(outline) - said.perimeter().toNanometres()) / walls, outline::toString);
      }
    }
  }

  /** A double holds 53 bits, an area has 70 to 80: the difference is taken before it is rounded. */
  static double difference(double squareNanometres, Area area) {
    return Double.isFinite(squareNanometres) ? new BigDecimal(squareNanometres)
        .subtract(new BigDecimal(area.toHalfSquareNanometres()).divide(BigDecimal.valueOf(2))).doubleValue() : Double.NaN;
  }

  /** The last corner of the walls is left out. */
  private static Outline withFault(Outline outline) {
    Ring shell = outline.shell();
    return shell.size() < 4 ? outline
        : Outline.of(Ring.of(shell.corners().subList(0, shell.size() - 1)), outline.voids());
  }
}
