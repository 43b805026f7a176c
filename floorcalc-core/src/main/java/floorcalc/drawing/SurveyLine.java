package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.outline.survey.Measured;
import floorcalc.outline.survey.Misfit;
import floorcalc.outline.survey.Suspect;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyedRoom;
import floorcalc.outline.survey.Tie;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A length of a survey as it is drawn.
 *
 * @param kind a wall or a tie
 * @param from the corner at one end, from 1
 * @param to the corner at the other end, from 1
 * @param read what was read
 * @param residual what the adjustment adds to it, in millimetres; 0 if there is no adjustment
 * @param normalised the residual divided by its standard deviation, 0 if nothing controls it
 * @param suspect what the others say, if it may be a reading that does not fit
 */
record SurveyLine(Measured.Kind kind, int from, int to, Length read, double residual, double normalised,
    Optional<Suspect> suspect) {

  /** Returns the lengths of a report, walls first. */
  static List<SurveyLine> of(SurveyReport report) {
    List<SurveyLine> lines = new ArrayList<>();
    Optional<SurveyedRoom> room = report.room();
    if (room.isPresent()) {
      for (Measured one : room.get().measurements()) {
        if (one.kind() != Measured.Kind.TURN) {
          lines.add(new SurveyLine(one.kind(), one.from(), one.to(), Words.fromMillimetres(one.read()), one.residual(),
              one.result().normalisedResidual().orElse(0), suspect(report, one.kind(), one.from(), one.to(), one.read())));
        }
      }
      return lines;
    }
    Survey survey = report.survey();
    for (int i = 0; i < survey.size(); i++) {
      Length read = survey.walls().get(i).length();
      lines.add(plain(report, Measured.Kind.WALL, i + 1, (i + 1) % survey.size() + 1, read));
    }
    for (Tie tie : survey.ties()) {
      lines.add(plain(report, Measured.Kind.TIE, tie.from(), tie.to(), tie.length()));
    }
    return lines;
  }

  private static SurveyLine plain(SurveyReport report, Measured.Kind kind, int from, int to, Length read) {
    return new SurveyLine(kind, from, to, read, 0, 0, suspect(report, kind, from, to, read.toMillimetres()));
  }

  /** Returns what is said against a measurement, if anything is. */
  static Optional<Suspect> suspect(SurveyReport report, Measured.Kind kind, int from, int to, double read) {
    for (Misfit misfit : report.misfits()) {
      for (Suspect suspect : misfit.oneOf()) {
        Measured one = suspect.measured();
        if (one.kind() == kind && one.from() == from && one.to() == to && Math.abs(one.read() - read) < 1e-6) {
          return Optional.of(suspect);
        }
      }
    }
    return Optional.empty();
  }

  boolean isWall() {
    return kind == Measured.Kind.WALL;
  }

  /** What people call it. */
  String name() {
    return isWall() ? "wall " + from : "tie " + from + "-" + to;
  }
}
