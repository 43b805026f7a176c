package floorcalc.examples.job;

import floorcalc.outline.Outline;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.working.Calculated;
import java.util.Optional;

/**
 * A room as it stands.
 *
 * @param outline its outline
 * @param walls where points lie by its walls
 * @param numbered its walls as they are numbered in the job
 * @param survey the measurements that the outline follows from, if it does
 */
record Shape(Outline outline, Walls walls, NumberedWalls numbered, Optional<Calculated<SurveyReport>> survey) {
  static Shape of(Outline outline, NumberedWalls numbered) {
    return new Shape(outline, new Walls(outline), numbered, Optional.empty());
  }

  Shape measured(Calculated<SurveyReport> report) {
    return new Shape(outline, walls, numbered, Optional.of(report));
  }
}
