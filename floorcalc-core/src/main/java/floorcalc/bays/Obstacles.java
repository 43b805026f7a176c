package floorcalc.bays;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Measures the inner corners and the voids of an outline, with the working. */
final class Obstacles {
  private static final Comparator<Point> LOWEST =
      Comparator.comparingLong(Point::yNanometres).thenComparingLong(Point::xNanometres);

  private Obstacles() {}

  static List<Obstacle> innerCorners(Outline bay, List<Step> steps) {
    Ring shell = bay.shell();
    Recesses recesses = new RoomShape(bay, Direction.ALONG_X).recesses[0];
    List<Obstacle> found = new ArrayList<>();
    for (int i = 0; i < shell.size(); i++) {
      if (recesses.isInner(i)) {
        Length depth = Length.ofNanometres((long) StrictMath.rint(recesses.depth(i)));
        Point from = shell.corners().get(recesses.before(i));
        Point to = shell.corners().get(recesses.after(i));
        Point at = shell.corners().get(i);
        String where = "corner-" + (i + 1);
        steps.add(new Step("recess-at-" + where, "How deep does inner corner " + (i + 1) + " lie inside the line across its recess?",
            "d = abs((bx - ax) * (cy - ay) - (by - ay) * (cx - ax)) / sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay)),"
                + " rounded to the nearest nanometre",
            List.of(Term.of("ax", "the line across begins", from.x()), Term.of("ay", "the line across begins", from.y()),
                Term.of("bx", "the line across ends", to.x()), Term.of("by", "the line across ends", to.y()),
                Term.of("cx", "the inner corner", at.x()), Term.of("cy", "the inner corner", at.y())),
            depth, Source.DEFINITION));
        steps.add(BayFreedom.closing("c", where, depth));
        found.add(new Obstacle(Obstacle.Kind.INNER_CORNER, at, depth, closing(depth)));
      }
    }
    return found;
  }

  static List<Obstacle> voids(Outline bay, List<Step> steps) {
    RoomShape shape = new RoomShape(bay, Direction.ALONG_X);
    List<Obstacle> found = new ArrayList<>();
    for (int v = 0; v < bay.voids().size(); v++) {
      Length width = Length.ofNanometres((long) StrictMath.rint(shape.recesses[v + 1].leastWidth()));
      Point at = Collections.min(bay.voids().get(v).corners(), LOWEST);
      String where = "void-" + (v + 1);
      steps.add(new Step("width-of-" + where, "How wide is void " + (v + 1) + ", by its least width between two parallels?",
          "value as stated", List.of(), width, Source.DEFINITION));
      steps.add(BayFreedom.closing("c", where, width));
      found.add(new Obstacle(Obstacle.Kind.VOID, at, width, closing(width)));
    }
    return found;
  }

  /** 1.5 mm in a metre. */
  static Length closing(Length reach) {
    return reach.multipliedBy(15).dividedBy(10_000, RoundingMode.HALF_EVEN);
  }

  /** A size for a sentence, to the millimetre. */
  static Length millimetres(Length size) {
    return Length.ofMillimetres(size.dividedBy(1_000_000, RoundingMode.HALF_UP).toNanometres());
  }
}
