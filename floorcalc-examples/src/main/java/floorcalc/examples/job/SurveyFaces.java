package floorcalc.examples.job;

import floorcalc.outline.OutlineCheck;
import floorcalc.outline.OutlineFault;
import floorcalc.outline.survey.SurveyedRoom;
import java.util.List;

/** Whether the faces of a surveyed room's walls, with their offsets and arcs, make an outline. */
public final class SurveyFaces {
  private SurveyFaces() {
  }

  /**
   * Returns what is wrong with the faces, in the numbers of the survey's walls.
   *
   * @param room the room, not null
   * @return one sentence each, every one once; empty if they make a sound outline; unmodifiable, not null
   */
  public static List<String> faultsOf(SurveyedRoom room) {
    return OutlineCheck.faultsOf(room.outline().shell(), List.of()).stream().map(fault -> sentence(room, fault)).distinct()
        .toList();
  }

  private static String sentence(SurveyedRoom room, OutlineFault fault) {
    List<Integer> numbers = room.wallNumbers();
    List<String> walls = fault.walls().stream().filter(piece -> piece <= numbers.size())
        .map(piece -> numbers.get(piece - 1)).distinct().sorted().map(String::valueOf).toList();
    return walls.isEmpty() ? fault.message() : (walls.size() == 1 ? "the face of wall " : "the faces of walls ")
        + String.join(" and ", walls) + (walls.size() == 1 ? " meets itself" : " meet") + fault.place().map(place -> " at " + place).orElse("")
        + "; look at lengths, offsets and rises";
  }
}
