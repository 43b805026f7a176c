package floorcalc.drawing;

import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyedRoom;
import floorcalc.plan.Room;
import floorcalc.working.Calculated;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The numbers of the walls of a room. Those of a surveyed room are the survey's: an arc is one wall, and so are the faces of a
 * niche.
 */
final class WallNumbers {
  private final List<Integer> numbers;
  private final Optional<Survey> survey;

  private WallNumbers(List<Integer> numbers, Optional<Survey> survey) {
    this.numbers = numbers;
    this.survey = survey;
  }

  static WallNumbers of(Room room) {
    int size = room.outline().shell().size();
    Optional<SurveyedRoom> surveyed = room.survey().map(Calculated::value).flatMap(SurveyReport::room)
        .filter(one -> one.outline().shell().equals(room.outline().shell()));
    return new WallNumbers(surveyed.map(SurveyedRoom::wallNumbers)
        .orElseGet(() -> IntStream.rangeClosed(1, size).boxed().toList()), surveyed.map(SurveyedRoom::survey));
  }

  /** How many walls have a number of their own. */
  int count() {
    return numbers.get(numbers.size() - 1);
  }

  /** The number of a side of the outline. */
  int of(int side) {
    return numbers.get(side);
  }

  boolean isArc(int side) {
    return survey.isPresent() && !survey.get().walls().get(of(side) - 1).rise().isZero();
  }

  /** Whether a side goes without a number: of an arc all but the middle one. */
  boolean isSilent(int side) {
    return isArc(side) && side != (numbers.indexOf(of(side)) + numbers.lastIndexOf(of(side))) / 2;
  }

  /** What the numbers do not say. */
  List<String> notes() {
    if (survey.isEmpty()) {
      return List.of();
    }
    List<Integer> arcs = IntStream.rangeClosed(1, survey.get().size())
        .filter(wall -> !survey.get().walls().get(wall - 1).rise().isZero()).boxed().toList();
    String several = arcs.size() == 1 ? "Wall " + arcs.get(0) + " is an arc, drawn as a chain"
        : "Walls " + Words.list(arcs.stream().map(String::valueOf).toList(), 24) + " are arcs, drawn as chains";
    return arcs.isEmpty() ? List.of()
        : List.of(several + " of straight pieces within " + SurveyedRoom.ARC_WITHIN + ".");
  }
}
