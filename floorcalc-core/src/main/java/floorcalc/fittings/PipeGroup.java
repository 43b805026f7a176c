package floorcalc.fittings;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Pipes so near to each other that one slot takes all of them. */
final class PipeGroup {
  final List<PipeAt> pipes;
  final List<Step> steps;
  final Point from;
  final Point to;
  final Length width;

  private PipeGroup(List<PipeAt> pipes, List<Step> steps, PipeAllowance allowance) {
    this.pipes = pipes;
    this.steps = steps;
    Point first = pipes.get(0).at();
    Point second = first;
    for (PipeAt a : pipes) {
      for (PipeAt b : pipes) {
        if (apart(a.at(), b.at()) > apart(first, second)) {
          first = a.at();
          second = b.at();
        }
      }
    }
    from = first.compareTo(second) <= 0 ? first : second;
    to = first.compareTo(second) <= 0 ? second : first;
    Length most = Length.ZERO;
    for (PipeAt pipe : pipes) {
      most = most.max(allowance.hole(pipe.diameter()).value().plus(fromLine(pipe.at()).multipliedBy(2)));
    }
    width = most;
  }

  /** Puts pipes together whose holes leave less wood between them than asked for, in the order given. */
  static List<PipeGroup> of(List<PipeAt> pipes, PipeAllowance allowance, CutOutLimits limits) {
    List<List<PipeAt>> groups = new ArrayList<>();
    List<List<Step>> steps = new ArrayList<>();
    for (PipeAt pipe : pipes) {
      List<PipeAt> group = new ArrayList<>();
      List<Step> working = new ArrayList<>(allowance.hole(pipe.diameter()).steps());
      for (int i = groups.size() - 1; i >= 0; i--) {
        List<Step> near = new ArrayList<>();
        for (PipeAt other : groups.get(i)) {
          Step wood = wood(other, pipe, allowance, limits);
          if (((Length) wood.result()).compareTo(limits.leastWood()) < 0) {
            near.add(wood);
          }
        }
        if (!near.isEmpty()) {
          group.addAll(0, groups.remove(i));
          working.addAll(0, steps.remove(i));
          working.addAll(near);
        }
      }
      group.add(pipe);
      groups.add(group);
      steps.add(working);
    }
    List<PipeGroup> all = new ArrayList<>();
    for (int i = 0; i < groups.size(); i++) {
      all.add(new PipeGroup(groups.get(i), steps.get(i), allowance));
    }
    return all;
  }

  private static Step wood(PipeAt a, PipeAt b, PipeAllowance allowance, CutOutLimits limits) {
    Length apart = nearest(apart(a.at(), b.at()));
    Length first = allowance.hole(a.diameter()).value();
    Length second = allowance.hole(b.diameter()).value();
    Length wood = apart.multipliedBy(2).minus(first).minus(second).dividedBy(2, RoundingMode.FLOOR);
    return new Step("wood-between", "How much wood is left between the holes of " + a.name() + " and " + b.name() + "? At least "
        + limits.leastWood() + " is asked for (" + limits.leastWoodSource() + "), with less they are one slot.",
        "w = a - (D1 + D2) / 2, rounded down to a whole nanometre",
        List.of(Term.of("a", "from middle to middle", apart), Term.of("D1", "diameter of the one hole", first),
            Term.of("D2", "diameter of the other", second)), wood, Source.DEFINITION);
  }

  private static double apart(Point a, Point b) {
    return StrictMath.hypot((double) a.xNanometres() - b.xNanometres(), (double) a.yNanometres() - b.yNanometres());
  }

  private static Length nearest(double nanometres) {
    return Length.ofNanometres((long) StrictMath.rint(nanometres));
  }

  /** How far a point lies from the line between the two ends. */
  private Length fromLine(Point p) {
    double dx = to.xNanometres() - from.xNanometres();
    double dy = to.yNanometres() - from.yNanometres();
    double length = StrictMath.hypot(dx, dy);
    double cross = dx * (p.yNanometres() - from.yNanometres()) - dy * (p.xNanometres() - from.xNanometres());
    return length == 0 ? Length.ZERO : nearest(Math.abs(cross) / length);
  }

  /** The middle between both ends. */
  Point middle() {
    return Point.ofNanometres(from.xNanometres() + (to.xNanometres() - from.xNanometres()) / 2,
        from.yNanometres() + (to.yNanometres() - from.yNanometres()) / 2);
  }
}
