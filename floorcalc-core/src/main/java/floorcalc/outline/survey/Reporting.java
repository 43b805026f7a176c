package floorcalc.outline.survey;

import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Puts the report on a survey together. */
final class Reporting {
  /** Degrees that a corner which looks square may be off. */
  private static final double NEARLY_SQUARE = 2;
  /** By how many standard deviations a walk may fail to close. */
  private static final double BEYOND = 3;
  /** Millimetres: a tape read by a whole mark too much or too little. */
  private static final double USUAL_SLIP = 100;
  /** Of many measurements that no room has, those furthest off are named. */
  private static final int MOST_NAMED = 12;

  private final Survey survey;
  private final SurveyNetwork network;
  private final List<Step> steps = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<ToMeasure> toMeasure = new ArrayList<>();
  private AreaRange areas;
  private Traverse walk;

  Reporting(Survey survey) {
    this.survey = survey;
    this.network = new SurveyNetwork(survey);
  }

  Calculated<SurveyReport> report() {
    List<Shapes.Shape> shapes = Shapes.of(survey, network);
    if (shapes.isEmpty()) {
      return impossible(GrossSlips.of(survey));
    }
    Shapes.Shape best = shapes.get(0);
    List<Measured> stretched = stretched(best);
    if (!stretched.isEmpty() && isOdd(best)) {
      List<Misfit> gross = GrossSlips.of(survey);
      return gross.isEmpty() ? outOfReach(stretched, List.of()) : impossible(gross);
    }
    if (best.adjustment().looseness() > 0) {
      Optional<Measured> longest = asLongAsAllOthers(best);
      return longest.isPresent() ? straight(longest.get()) : loose(best);
    }
    List<Misfit> misfits = Misfits.of(survey, best);
    misfits.forEach(this::misfit);
    if (shapes.size() > 1) {
      ToMeasure tie = Proposals.toTellApart(shapes);
      toMeasure.add(tie);
      note("survey-several-shapes", Severity.WARNING, shapes.size() + " shapes fit the measurements equally well, of "
          + shapes.stream().map(shape -> squareMetres(shape.layout().area())).collect(Collectors.joining(" and ")) + "; "
          + tie.text());
      return report(shapes, null, misfits);
    }
    if (!best.layout().isSimple()) {
      note("survey-no-shape", Severity.WARNING, "the walls cross each other wherever they are put; look at the lengths and"
          + " at which way each corner turns");
      return report(List.of(), null, misfits);
    }
    if (!stretched.isEmpty()) {
      return outOfReach(stretched, misfits);
    }
    SurveyedRoom room = room(best);
    if (Closing.canBeWalked(survey)) {
      walk(best.layout());
    }
    working(room);
    checked(room, best);
    return report(shapes, room, misfits);
  }

  /** No room has these measurements: perhaps all but one fit. */
  private Calculated<SurveyReport> impossible(List<Misfit> gross) {
    note("survey-no-shape", Severity.WARNING, gross.isEmpty()
        ? "no room has these walls and turns: going round once they must turn by 360° to the left in all, and no wall can be"
            + " longer than all others together; look at the lengths and at which way each corner turns"
            + (survey.corners() == Survey.Corners.RIGHT_ANGLES
                ? ", or measure a diagonal: corners whose turn was not measured are taken as exact right angles" : "")
        : "no room has all of these measurements; without one of them the others fit");
    gross.forEach(this::misfit);
    return report(List.of(), null, gross);
  }

  /** A wall as long as all others together, to within what can be measured. */
  private Optional<Measured> asLongAsAllOthers(Shapes.Shape shape) {
    List<Measured> walls = network.measured(shape.adjustment()).stream().filter(one -> one.kind() == Measured.Kind.WALL).toList();
    double all = walls.stream().mapToDouble(Measured::read).sum();
    double deviation = StrictMath.sqrt(walls.stream().mapToDouble(one -> one.result().observation().deviation())
        .map(each -> each * each).sum());
    return walls.stream().filter(one -> all - 2 * one.read() <= Misfit.LIMIT * deviation).findFirst();
  }

  private Calculated<SurveyReport> straight(Measured longest) {
    note("survey-no-shape", Severity.WARNING, longest.name(), "it is as long as the other walls together, as near as can be measured: all lie on"
        + " one line and no floor is between them; measure them again");
    return report(List.of(), null, List.of());
  }

  private Calculated<SurveyReport> loose(Shapes.Shape shape) {
    toMeasure.addAll(Proposals.toFix(survey, network, shape));
    List<Length> walls = survey.walls().stream().map(SurveyWall::length).toList();
    Calculated<AreaRange> range = survey.size() == 4 && survey.walls().stream().noneMatch(Reporting::turnsRight)
        ? AreaRange.withoutReflexCorner(walls) : AreaRange.ofSides(walls);
    areas = range.value();
    steps.addAll(range.steps());
    String square = "";
    if (survey.size() == 4 && survey.ties().isEmpty() && AreaRange.leastDegreesFromSquare(walls) <= NEARLY_SQUARE) {
      AreaRange near = AreaRange.nearSquare(walls, NEARLY_SQUARE).value();
      square = ", if no corner is more than 2° off square " + words(near);
    }
    note("survey-shape-not-fixed", Severity.WARNING, "the measurements do not fix the shape of the room, its area may be "
        + words(areas) + square + ": " + (toMeasure.size() == 1 ? "one more is needed" : toMeasure.size() + " more are needed") + "; "
        + toMeasure.stream().map(ToMeasure::text).collect(Collectors.joining("; ")));
    return report(shape.layout().isSimple() && shape.layout().area() > 0 ? List.of(shape) : List.of(), null, List.of());
  }

  private static boolean turnsRight(SurveyWall wall) {
    return wall.turn().side() == Turn.Side.RIGHT;
  }

  private static String words(AreaRange areas) {
    return areas.least().isZero() ? "at most " + squareMetres(areas.greatest().toSquareMillimetres())
        : "anywhere from " + squareMetres(areas.least().toSquareMillimetres()) + " to "
            + squareMetres(areas.greatest().toSquareMillimetres());
  }

  private void walk(Layout layout) {
    Calculated<Traverse> walked = Closing.walk(survey, layout);
    walk = walked.value();
    walked.steps().stream().filter(step -> !step.id().startsWith("corner-")).forEach(steps::add);
    double usual = Closing.deviation(survey, layout);
    if (walk.closingError().toMillimetres() > BEYOND * usual) {
      note("survey-closes-badly", Severity.WARNING, "walked from corner 1 the walls end "
          + Proposals.length(walk.closingError().toMillimetres()) + " away from it, 1 in " + walk.ratio().orElseThrow()
          + " of the way; " + Proposals.length(usual) + " would be usual: measure again");
    }
  }

  private SurveyedRoom room(Shapes.Shape shape) {
    List<Point> corners = SquareCorners.of(survey, shape.layout());
    return new SurveyedRoom(survey, corners, SurveyedRoom.shaped(survey, corners), network.measured(shape.adjustment()),
        shape.adjustment(), network.free(shape.layout()));
  }

  private void misfit(Misfit misfit) {
    List<ToMeasure> again = Proposals.again(misfit);
    int likely = (int) Math.max(1, misfit.oneOf().stream().filter(one -> !one.slip().isEmpty()).count());
    toMeasure.addAll(again.subList(0, likely));
    String where = names(misfit.oneOf(), " or ");
    String others = names(misfit.oneOf().subList(likely, again.size()), ", ");
    String square = survey.corners() == Survey.Corners.RIGHT_ANGLES ? "; or a corner is not square: measure a diagonal" : "";
    note("survey-misfit", Severity.WARNING, where, (again.size() == 1 ? "it does not fit the others; "
        : "one of these does not fit, the others do not tell which; ")
        + again.subList(0, likely).stream().map(ToMeasure::text).collect(Collectors.joining("; or "))
        + (others.isEmpty() ? "" : "; then, if that was right, " + others) + square);
  }

  private static String names(List<Suspect> suspects, String between) {
    return suspects.stream().map(one -> one.measured().name()).collect(Collectors.joining(between));
  }

  private void checked(SurveyedRoom room, Shapes.Shape shape) {
    List<String> alone = room.measurements().stream().filter(one -> !one.result().isControlled()).map(Measured::name).toList();
    if (!alone.isEmpty()) {
      ToMeasure tie = Proposals.toCheck(shape.adjustment(), shape.layout());
      toMeasure.add(tie);
      note("survey-not-checked", Severity.NOTE, String.join(", ", alone), "nothing else says whether "
          + (alone.size() == 1 ? "this is" : "these are") + " right; " + tie.text());
    }
    List<Measured> weak = room.measurements().stream().filter(Reporting::isWeak).toList();
    if (!weak.isEmpty()) {
      ToMeasure tie = Proposals.toCheck(shape.adjustment(), shape.layout());
      if (alone.isEmpty()) {
        toMeasure.add(tie);
      }
      double least = weak.stream().mapToDouble(one -> one.result().leastSlipSeen().orElseThrow()).max().orElseThrow();
      note("survey-weakly-checked", Severity.NOTE, weak.stream().map(Measured::name).collect(Collectors.joining(", ")),
          "a slip of less than " + Proposals.length(StrictMath.ceil(least)) + " would not be seen; " + tie.text());
    }
    if (survey.corners() == Survey.Corners.RIGHT_ANGLES) {
      note("survey-right-angles", Severity.NOTE, "corners whose turn was not measured are taken as exact right angles; a"
          + " corner half a degree off moves the far end of a 4 m wall by 35 mm: measure diagonals to be sure");
    }
  }

  /** Whether a shape is not fixed or crosses itself. */
  private static boolean isOdd(Shapes.Shape shape) {
    return shape.adjustment().looseness() > 0 || !shape.layout().isSimple();
  }

  /**
   * The measurements that are not met though nothing else says what they should be: the others cannot reach that far. In a shape
   * that is not fixed or crosses itself all that are not met: pulled straight it has no room for them.
   */
  private List<Measured> stretched(Shapes.Shape shape) {
    return network.measured(shape.adjustment()).stream().filter(one -> (isOdd(shape) || !one.result().isControlled())
        && StrictMath.abs(one.residual()) > Misfit.LIMIT * one.result().observation().deviation()).toList();
  }

  private Calculated<SurveyReport> outOfReach(List<Measured> stretched, List<Misfit> misfits) {
    List<Measured> worst = stretched.stream().sorted(Comparator.comparingDouble(Reporting::offBy).reversed()).limit(MOST_NAMED).toList();
    List<Measured> named = stretched.stream().filter(worst::contains).toList();
    String more = stretched.size() > named.size() ? ", and so with " + (stretched.size() - named.size()) + " more that are less far off" : "";
    note("survey-no-shape", Severity.WARNING, named.stream().map(Measured::name).collect(Collectors.joining(", ")),
        "no room has these lengths: as near as they come " + named.stream().map(one -> one.name() + " is "
            + words(one, one.adjusted()) + " and not " + words(one, one.read())).collect(Collectors.joining(", "))
            + more + "; measure them again");
    return report(List.of(), null, misfits);
  }

  private static double offBy(Measured measured) {
    return StrictMath.abs(measured.residual()) / measured.result().observation().deviation();
  }

  private static String words(Measured measured, double value) {
    return measured.kind() == Measured.Kind.TURN ? Proposals.degrees(value) : Proposals.length(value);
  }

  /** Whether a usual slip in a length would not be seen. */
  private static boolean isWeak(Measured measured) {
    return measured.kind() != Measured.Kind.TURN && measured.result().leastSlipSeen().orElse(0) > USUAL_SLIP;
  }

  private void working(SurveyedRoom room) {
    int measured = room.measurements().size();
    int needed = measured - room.redundancy();
    steps.add(new Step("redundancy", "How many measurements are there beyond those that the shape needs?", "r = m - u",
        List.of(Term.of("m", "measurements", measured), Term.of("u", "needed to fix the shape", needed)),
        room.redundancy(), Source.DEFINITION));
    if (room.redundancy() > 0) {
      steps.add(new Step("factor", "By what would the standard deviations have to be multiplied to fit what the measurements"
          + " are off?", "s0 = sqrt(sum / r)", List.of(
              Term.of("sum", "sum of the squares of the residuals, each divided by its standard deviation",
                  PlainNumber.of(room.fixed().squares())),
              Term.of("r", "redundancy", room.redundancy())), PlainNumber.of(room.factor()), Source.DEFINITION));
    }
  }

  private void note(String code, Severity severity, String message) {
    note(code, severity, "", message);
  }

  private void note(String code, Severity severity, String where, String message) {
    findings.add(new Finding(code, severity, where, message, source(code)));
  }

  /** Whose bound it is that a finding goes by. */
  private static Source source(String code) {
    return switch (code) {
      case "survey-misfit" -> Misfit.SOURCE;
      case "survey-closes-badly", "survey-weakly-checked" -> Source.COMMON_PRACTICE;
      default -> Source.DEFINITION;
    };
  }

  private static String squareMetres(double squareMillimetres) {
    return PlainNumber.text(squareMillimetres / 1e6, 2) + " m²";
  }

  private Calculated<SurveyReport> report(List<Shapes.Shape> shapes, SurveyedRoom room, List<Misfit> misfits) {
    List<Outline> outlines =
        shapes.stream().map(shape -> SurveyedRoom.straight(SquareCorners.of(survey, shape.layout()))).toList();
    return Calculated.of(new SurveyReport(survey, outlines, room, misfits, toMeasure, areas, walk), steps, findings);
  }
}
