package floorcalc.outline.survey;

import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.working.Calculated;
import java.util.ArrayList;
import java.util.List;

/** The walls of a survey as they are walked, each after the other, where it is known how every one turns. */
final class Closing {
  private Closing() {}

  /** Whether each turn was measured or is a right angle. */
  static boolean canBeWalked(Survey survey) {
    return survey.corners() == Survey.Corners.RIGHT_ANGLES
        || survey.walls().stream().limit(survey.size() - 1).allMatch(wall -> wall.turn().isMeasured());
  }

  /** Walks from corner 1 on; right angles turn as they do in the layout. */
  static Calculated<Traverse> walk(Survey survey, Layout layout) {
    List<Length> lengths = survey.walls().stream().map(SurveyWall::length).toList();
    List<Angle> turns = new ArrayList<>();
    for (int i = 0; i + 1 < survey.size(); i++) {
      turns.add(Angle.fromDegrees(PlainNumber.of(degrees(survey, layout, i))));
    }
    return Traverse.ofTurns(lengths, turns, ClosingLimit.FLOOR);
  }

  private static double degrees(Survey survey, Layout layout, int wall) {
    return survey.walls().get(wall).turn().degrees().orElseGet(() -> layout.turn(wall + 1) > 0 ? 90 : -90);
  }

  /**
   * The standard deviation of where the walk ends, in millimetres, both ways together: that of each length, and of each measured
   * turn as far as it swings all that is walked after it.
   */
  static double deviation(Survey survey, Layout layout) {
    double squares = 0;
    for (int i = 0; i < survey.size(); i++) {
      double length = survey.uncertainty().ofLength(survey.walls().get(i).length());
      squares += length * length;
      if (i > 0 && survey.walls().get(i - 1).turn().isMeasured()) {
        double swing = layout.distance(0, i) * StrictMath.toRadians(survey.uncertainty().turnDegrees());
        squares += swing * swing;
      }
    }
    return StrictMath.sqrt(squares);
  }
}
