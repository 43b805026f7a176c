package floorcalc.differential;

import com.esri.core.geometry.Geometry;
import com.esri.core.geometry.GeometryEngine;
import com.esri.core.geometry.Polygon;
import floorcalc.differential.RandomOutlines.Place;
import floorcalc.measure.Length;
import floorcalc.outline.BreakGap;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.Line;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import java.util.List;
import java.util.SplittableRandom;

/** Bays either side of an expansion break: bays and the strip of the break make up the floor, by Esri's boolean operations. */
final class BreakGapDifferential extends Comparison {
  BreakGapDifferential(int cases) {
    super("bays and the gap of a break make up the floor", Library.ESRI_GEOMETRY, cases, BreakGap.class);
  }

  @Override
  public String unit() {
    return "nm wide strip along walls and breaks";
  }

  @Override
  public double tolerance() {
    return 0.71;
  }

  @Override
  public String argument() {
    return "corners of bays, and of the strip before it is taken off, are rounded to whole nanometres along x and y";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    RandomOutlines outlines = new RandomOutlines(225);
    SplittableRandom random = new SplittableRandom(226);
    int bays = 0;
    for (int k = 0; k < upTo; k++) {
      Outline room = outlines.next(Place.NEAR);
      List<Line> breaks = PartedDifferential.chords(room, PartedDifferential.across(room, random));
      ExpansionGap floor = ExpansionGap.inset(room, Length.ofMillimetres(random.nextLong(1, 20))).value();
      long gap = random.nextLong(1, 40_000_000);
      if (breaks.isEmpty() || floor.laid().isEmpty()) {
        continue;
      }
      long asked = answers == Answers.AS_GIVEN ? gap : gap + 100;
      List<Outline> parts = BreakGap.taken(floor, breaks, Length.ofNanometres(asked));
      worst.nextCase();
      bays += parts.size();
      Geometry strips = GeometryEngine.union(breaks.stream().map(line -> strip(line, gap)).toArray(Geometry[]::new), null);
      Geometry expected = GeometryEngine.difference(EsriPlane.union(floor.laid()), strips, null);
      double length = room.perimeter().toNanometres()
          + breaks.stream().mapToDouble(line -> line.length().toNanometres()).sum();
      double apart = parts.isEmpty() ? expected.calculateArea2D()
          : GeometryEngine.symmetricDifference(EsriPlane.union(parts), expected, null).calculateArea2D();
      worst.see(apart / length, () -> "a break of " + gap + " nm at " + breaks + " in " + Wkt.write(room));
    }
    worst.note(bays + " bays");
  }

  private static Polygon strip(Line line, long gap) {
    double dx = line.to().xNanometres() - line.from().xNanometres();
    double dy = line.to().yNanometres() - line.from().yNanometres();
    double x = -dy / StrictMath.hypot(dx, dy) * gap / 2;
    double y = dx / StrictMath.hypot(dx, dy) * gap / 2;
    Polygon strip = new Polygon();
    strip.startPath(line.from().xNanometres() + x, line.from().yNanometres() + y);
    strip.lineTo(line.to().xNanometres() + x, line.to().yNanometres() + y);
    strip.lineTo(line.to().xNanometres() - x, line.to().yNanometres() - y);
    strip.lineTo(line.from().xNanometres() - x, line.from().yNanometres() - y);
    strip.closePathWithLine();
    return strip;
  }
}
