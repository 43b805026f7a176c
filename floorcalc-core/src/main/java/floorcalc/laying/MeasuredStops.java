package floorcalc.laying;

import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.outline.Direction;
import floorcalc.outline.Ring;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyedRoom;
import floorcalc.plan.Room;
import floorcalc.rows.StartLine;
import floorcalc.rows.Stop;
import floorcalc.rows.StripRisk;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The stops of a bay with what its survey says of their places: how far each may be off against the wall from which the
 * rows are set out.
 * <p>
 * A stop is as sure as the less sure of the two surveyed corners nearest to its ends. One that is far from any corner, as a
 * column or a face off the straight line is, was placed by one more measurement.
 */
final class MeasuredStops {
  /** A stop is taken to lie within twice its standard deviation: about 95 of 100 do. */
  private static final int TWICE = 2;
  /** Nearer to a corner than this, in nanometres, a stop is that of its wall. */
  private static final double AT_CORNER = 60_000_000;

  private final SurveyedRoom survey;
  private final Ring corners;
  private final Direction boards;

  private MeasuredStops(SurveyedRoom survey, Direction boards) {
    this.survey = survey;
    this.boards = boards;
    this.corners = boards.toFrame(Ring.of(survey.corners()));
  }

  /** The stops of a bay; those of a room that was not surveyed are exact. */
  static List<Stop> of(Room room, Frame frame) {
    Optional<SurveyedRoom> survey = room.survey().map(Calculated::value).flatMap(SurveyReport::room);
    if (survey.isEmpty()) {
      return Stops.of(frame.floor);
    }
    List<Stops.Side> sides = Stops.sides(frame.floor);
    return new MeasuredStops(survey.get(), frame.direction).within(sides, Length.ofNanometres(frame.low()));
  }

  private List<Stop> within(List<Stops.Side> sides, Length low) {
    Stops.Side start = sides.stream().filter(side -> startsAt(side, low)).findFirst().orElse(null);
    List<Stop> stops = new ArrayList<>();
    for (Stops.Side side : sides) {
      stops.add(startsAt(side, low) ? side.stop() : side.stop().within(error(side, start)));
    }
    return stops;
  }

  private static boolean startsAt(Stops.Side side, Length low) {
    return side.stop().side() == Stop.Side.FLOOR_ABOVE && side.stop().low().equals(low);
  }

  private Length error(Stops.Side side, Stops.Side start) {
    double deviation = StrictMath.max(deviation(side.fromX(), side.fromY(), start), deviation(side.toX(), side.toY(), start));
    return Length.fromMillimetres(TWICE * deviation, RoundingMode.CEILING);
  }

  private double deviation(long x, long y, Stops.Side start) {
    int corner = nearest(x, y);
    double own = distance(corner, x, y) <= AT_CORNER ? 0 : survey.survey().uncertainty().length().toMillimetres();
    return StrictMath.hypot(own, fromStart(corner, start));
  }

  /** How unsure a corner's place is across the boards, against the wall that the rows start from. */
  private double fromStart(int corner, Stops.Side start) {
    if (start == null) {
      return survey.deviationAcross(boards.degrees(), nearestToLow() + 1, corner + 1);
    }
    int one = nearest(start.fromX(), start.fromY());
    int other = nearest(start.toX(), start.toY());
    if ((one + 1) % corners.size() == other) {
      return survey.deviationFromWall(one + 1, corner + 1);
    }
    return survey.deviationAcross(boards.degrees(), one + 1, corner + 1);
  }

  private int nearestToLow() {
    int lowest = 0;
    for (int i = 1; i < corners.size(); i++) {
      lowest = corners.y(i) < corners.y(lowest) ? i : lowest;
    }
    return lowest;
  }

  private int nearest(long x, long y) {
    int nearest = 0;
    for (int i = 1; i < corners.size(); i++) {
      nearest = distance(i, x, y) < distance(nearest, x, y) ? i : nearest;
    }
    return nearest;
  }

  private double distance(int corner, long x, long y) {
    return StrictMath.hypot((double) corners.x(corner) - x, (double) corners.y(corner) - y);
  }

  /** The line with how likely its narrowest strips come out too narrow, if its stops are not exact. */
  static Calculated<StartLine> withRisk(Calculated<StartLine> line) {
    Calculated<StripRisk> worst = null;
    Stop at = null;
    for (Stop stop : line.value().strips().stream().map(strip -> strip.stop()).toList()) {
      if (stop.plusMinus().isPositive() && stop.taper().compareTo(line.value().pitch()) < 0) {
        Length deviation = stop.plusMinus().dividedBy(TWICE, RoundingMode.CEILING);
        Calculated<StripRisk> risk = StripRisk.at(line.value(), stop, deviation);
        if (worst == null || risk.value().probability() > worst.value().probability()) {
          worst = risk;
          at = stop;
        }
      }
    }
    if (worst == null) {
      return line;
    }
    List<Step> steps = new ArrayList<>(line.steps());
    steps.addAll(worst.steps());
    List<Finding> findings = new ArrayList<>(line.findings());
    findings.add(finding(worst.value(), at, line.value()));
    return Calculated.of(line.value(), steps, findings);
  }

  private static Finding finding(StripRisk risk, Stop stop, StartLine line) {
    double percent = risk.probability() * 100;
    String chance = percent < 0.1 ? "less than 0.1 %" : PlainNumber.text(percent, 1) + " %";
    return new Finding("strip-within-survey", percent < 5 ? Severity.NOTE : Severity.WARNING, stop.name(),
        "the strip there is " + tenths(risk.strip()) + " with a standard deviation of " + tenths(risk.standardDeviation())
            + " by the survey; the chance that it comes out under " + line.minimum() + " is " + chance
            + ", the greatest of all stops" + (percent < 5 ? "" : "; measure again before the first row is ripped"),
        Source.DEFINITION);
  }

  private static String tenths(Length length) {
    return PlainNumber.text(length.toMillimetres(), 1) + " mm";
  }
}
