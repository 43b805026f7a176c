package floorcalc.trims;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.trims.BarGoods.AtVoids;
import floorcalc.trims.BarGoods.InsideCorners;
import floorcalc.trims.BarGoods.OpenEnds;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Walks along the walls of a room and gathers runs of skirting. Used by one thread. */
final class TrimWalk {
  /** Walls that meet within so many degrees of straight are one run. */
  private static final double STRAIGHT = 5;

  private final String name;
  private final Outline room;
  private final BarGoods bars;
  private final WallGaps gaps;
  private final List<TrimRun> runs = new ArrayList<>();
  private Length perimeter = Length.ZERO;
  private Length taken = Length.ZERO;

  TrimWalk(String name, Outline room, List<TrimOpening> openings, BarGoods bars) {
    this.name = name;
    this.room = room;
    this.bars = bars;
    this.gaps = new WallGaps(room, openings);
  }

  Calculated<TrimRuns> runs() {
    walk(room.shell(), name + ", wall");
    for (int i = 0; i < room.voids().size(); i++) {
      if (bars.voids() == AtVoids.AROUND) {
        walk(room.voids().get(i), name + ", void " + (i + 1) + ", side");
      }
    }
    List<Finding> findings = new ArrayList<>();
    for (TrimOpening opening : gaps.offAllWalls()) {
      findings.add(new Finding("opening-not-at-a-wall", Severity.WARNING, name, "opening '" + opening.name() + "' from "
          + opening.from() + " to " + opening.to() + " lies on no wall to within 1 mm; nothing is taken off for it, check where it is",
          Source.DEFINITION));
    }
    int open = (int) runs.stream().mapToLong(run -> (run.start().kind() == TrimEnd.Kind.OPENING ? 1 : 0)
        + (run.end().kind() == TrimEnd.Kind.OPENING ? 1 : 0)).sum();
    TrimRuns result = new TrimRuns(name, runs, perimeter, taken, bars.openEnds() == OpenEnds.RETURNED ? open : 0);
    return Calculated.of(result, steps(result), findings);
  }

  /** A stretch of one wall, measured from the wall's start. */
  private record Part(int wall, Length from, Length to, boolean startsAtCorner, boolean endsAtCorner) {
    Length length() {
      return to.minus(from);
    }
  }

  private void walk(Ring ring, String what) {
    List<Part> parts = new ArrayList<>();
    for (int wall = 0; wall < ring.size(); wall++) {
      Length length = ring.wallLength(wall);
      perimeter = perimeter.plus(length);
      Length at = Length.ZERO;
      for (WallGaps.Gap gap : gaps.on(ring, wall)) {
        taken = taken.plus(gap.to().minus(gap.from()));
        if (gap.from().compareTo(at) > 0) {
          parts.add(new Part(wall, at, gap.from(), at.isZero(), false));
        }
        at = gap.to();
      }
      if (length.compareTo(at) > 0) {
        parts.add(new Part(wall, at, length, at.isZero(), true));
      }
    }
    gather(ring, parts, what);
  }

  private void gather(Ring ring, List<Part> parts, String what) {
    int first = 0;
    while (first < parts.size() && goesOn(ring, parts, first)) {
      first++;
    }
    if (parts.isEmpty()) {
      return;
    }
    if (first == parts.size()) {
      add(ring, parts, what, TrimEnd.CLOSED, TrimEnd.CLOSED);
      return;
    }
    List<Part> run = new ArrayList<>();
    List<List<Part>> all = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      int at = (first + i) % parts.size();
      if (!goesOn(ring, parts, at) && !run.isEmpty()) {
        all.add(run);
        run = new ArrayList<>();
      }
      run.add(parts.get(at));
    }
    all.add(run);
    all.sort(Comparator.comparingInt((List<Part> one) -> one.get(0).wall).thenComparing(one -> one.get(0).from));
    all.forEach(one -> add(ring, one, what, startOf(ring, parts, one.get(0)), endOf(ring, parts, one.get(one.size() - 1))));
  }

  /** Tells whether a part goes on straight from the one before it. */
  private boolean goesOn(Ring ring, List<Part> parts, int at) {
    Part part = parts.get(at);
    return part.startsAtCorner && meets(ring, parts, part)
        && Math.abs(ring.angleDegrees(part.wall) - 180) <= STRAIGHT;
  }

  /** Tells whether the wall before a part that starts at a corner has bars up to that corner. */
  private static boolean meets(Ring ring, List<Part> parts, Part part) {
    int before = (part.wall + ring.size() - 1) % ring.size();
    return parts.stream().anyMatch(other -> other.wall == before && other.endsAtCorner);
  }

  private TrimEnd startOf(Ring ring, List<Part> parts, Part part) {
    return part.startsAtCorner && meets(ring, parts, part) ? TrimEnd.atCorner(ring.angleDegrees(part.wall)) : TrimEnd.OPENING;
  }

  private TrimEnd endOf(Ring ring, List<Part> parts, Part part) {
    int next = (part.wall + 1) % ring.size();
    boolean met = part.endsAtCorner && parts.stream().anyMatch(other -> other.wall == next && other.startsAtCorner);
    return met ? TrimEnd.atCorner(ring.angleDegrees(next)) : TrimEnd.OPENING;
  }

  private void add(Ring ring, List<Part> parts, String what, TrimEnd start, TrimEnd end) {
    Length back = parts.stream().map(Part::length).reduce(Length.ZERO, Length::plus);
    Length atStart = shorter(start, false);
    Length atEnd = shorter(end, true);
    Length front = back.minus(atStart).minus(atEnd);
    Length cut = back.plus(atStart.negated().max(Length.ZERO)).plus(atEnd.negated().max(Length.ZERO));
    int from = parts.get(0).wall + 1;
    int to = parts.get(parts.size() - 1).wall + 1;
    runs.add(new TrimRun(what + (from == to && parts.size() == 1 ? " " + from : "s " + from + " to " + to), back, front, cut, start,
        end));
  }

  /** How much shorter the face is than the back at an end; negative where it is longer. */
  private Length shorter(TrimEnd end, boolean atEnd) {
    return switch (end.kind()) {
      case OPENING, CLOSED -> Length.ZERO;
      case OUTSIDE_CORNER -> cotangent(end.cornerDegrees() / 2);
      case INSIDE_CORNER -> bars.inside() == InsideCorners.SCRIBED && atEnd ? cotangent(end.cornerDegrees())
          : cotangent(end.cornerDegrees() / 2);
    };
  }

  private Length cotangent(double degrees) {
    double angle = StrictMath.toRadians(degrees);
    return Length.ofNanometres(Math.round(bars.thickness().toNanometres() * StrictMath.cos(angle) / StrictMath.sin(angle)));
  }

  private List<Step> steps(TrimRuns result) {
    List<Step> steps = new ArrayList<>();
    steps.add(Step.sum("trim-perimeter", name + ": how long are the walls" + (room.voids().isEmpty() ? ""
        : bars.voids() == AtVoids.AROUND ? " and the sides of voids" : ", voids left out") + "?", "P", walls(), "walls of "));
    steps.add(step("trim-openings", name + ": how much of that do openings take?", "value as stated", List.of(), taken));
    steps.add(step("trim-net", name + ": how much trim does the room take, at the wall?", "T = P - D",
        List.of(Term.of("P", "perimeter", perimeter), Term.of("D", "openings", taken)), result.net()));
    Length cut = runs.stream().map(TrimRun::cut).reduce(Length.ZERO, Length::plus);
    steps.add(step("trim-at-corners", name + ": how much longer are pieces where the face is longer than the back, "
        + result.corners(TrimEnd.Kind.OUTSIDE_CORNER) + " outside corners?", "value as stated", List.of(), cut.minus(result.net())));
    steps.add(step("trim-cut", name + ": how much do the pieces take of the bars?", "C = T + X",
        List.of(Term.of("T", "net length", result.net()), Term.of("X", "at outside corners", cut.minus(result.net()))), cut));
    return steps;
  }

  private List<Length> walls() {
    List<Ring> rings = new ArrayList<>(List.of(room.shell()));
    if (bars.voids() == AtVoids.AROUND) {
      rings.addAll(room.voids());
    }
    List<Length> walls = new ArrayList<>();
    rings.forEach(ring -> {
      for (int i = 0; i < ring.size(); i++) {
        walls.add(ring.wallLength(i));
      }
    });
    return walls;
  }

  private static Step step(String id, String question, String formula, List<Term> terms, Object result) {
    return new Step(id, question, formula, terms, result, Source.DEFINITION);
  }
}
