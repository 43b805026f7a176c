package floorcalc.examples.job;

import java.util.List;
import java.util.Objects;

/**
 * What a job holds of surveys. Immutable.
 *
 * @param title the title of the job, not null
 * @param rooms the rooms that have a survey, in order, not null
 * @param others the names of the rooms that are given by their corners, not null
 * @param tape in which units the job was measured, not null
 */
public record SurveyFile(String title, List<MeasuredRoom> rooms, List<String> others, Tape tape) {
  /** Checks that no part is null. */
  public SurveyFile {
    Objects.requireNonNull(title, "title");
    rooms = List.copyOf(rooms);
    others = List.copyOf(others);
    Objects.requireNonNull(tape, "tape");
  }
}
