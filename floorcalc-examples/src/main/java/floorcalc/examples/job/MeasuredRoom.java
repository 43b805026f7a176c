package floorcalc.examples.job;

import floorcalc.outline.survey.Survey;
import java.util.Objects;

/**
 * A room that was measured. Immutable.
 *
 * @param name its name, not null
 * @param survey what was measured of it, not null
 */
public record MeasuredRoom(String name, Survey survey) {
  /** Checks that no part is null. */
  public MeasuredRoom {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(survey, "survey");
  }
}
