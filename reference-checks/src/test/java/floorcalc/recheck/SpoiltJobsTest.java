package floorcalc.recheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Sound plans held against another job than their own: one value, said or left to common practice, is not the one they were made for. */
class SpoiltJobsTest {
  private final List<DynamicTest> tests = new ArrayList<>();

  @TestFactory
  Stream<DynamicTest> anotherJob() {
    spoil("a gap of 9 mm", Rule.COVER, "the gap is 9 mm", files -> files.laying().put("expansionGap", 9));
    spoil("a gap in tape notation", Rule.COVER, "the gap is 9.525 mm", files -> files.laying().put("expansionGap", "3/8\""));
    spoil("a wall 1 mm further out", Rule.COVER, "Room", files -> {
      ArrayNode outline = (ArrayNode) files.job.at("/rooms/0/outline");
      TwoFiles.add((ArrayNode) outline.get(0), 0, -1);
      TwoFiles.add((ArrayNode) outline.get(outline.size() - 1), 0, -1);
    });
    spoil("a void more", Rule.COVER, "where the gap should be", files -> {
      ArrayNode hole = ((ArrayNode) files.job.at("/rooms/0/voids")).addArray();
      for (int[] corner : new int[][] {{500, 500}, {700, 500}, {700, 700}, {500, 700}}) {
        hole.addArray().add(corner[0]).add(corner[1]);
      }
    });
    spoil("a kerf of 300 mm", Rule.CUT, "a saw kerf, 300 mm", files -> files.laying().put("sawKerf", 300));
    spoil("wider boards", Rule.FACTORY_ENDS, "the board ends at 191 mm", files -> files.board().put("coverWidth", 191));
    spoil("longer boards", Rule.COUNTS, "no boards of that length", files -> files.board().put("length", 1300));
    spoil("a longer end piece", Rule.MINIMUMS, "minimumEndPiece asks for 550 mm", files -> files.laying().put("minimumEndPiece", 550));
    spoil("a longer joint offset", Rule.MINIMUMS, "minimumJointOffset asks for 590 mm", files -> files.laying().put("minimumJointOffset", 590));
    spoil("a wider row", Rule.MINIMUMS, "minimumRowWidth asks for 189 mm", files -> files.laying().put("minimumRowWidth", 189));
    spoil("boards of 14.9 mm by common practice", Rule.MINIMUMS, "asks for 300 mm", files -> files.board().put("thickness", 14.9));
    spoil("other packs", Rule.COUNTS, "/order/boardsInPacks", files -> files.board().put("perPack", 7));
    spoil("more spare boards", Rule.COUNTS, "/order/spare", files -> files.laying().put("spareShare", 0.5));
    spoil("a pack kept back", Rule.COUNTS, "'boards, kept back'", files -> files.job.putObject("goods").put("keepBackPacks", 1));
    spoil("another direction", Rule.FORMAT, "the job asks for 90", files -> files.laying().put("direction", 90));
    spoil("a break given", Rule.FORMAT, "the job gives 1", files -> {
      ObjectNode line = ((ArrayNode) files.job.at("/rooms/0/breaks")).addObject();
      line.putArray("from").add(3100).add(0);
      line.putArray("to").add(3100).add(2410);
    });
    spoil("another room", Rule.COVER, "no bay", files -> ((ObjectNode) files.job.at("/rooms/0")).put("name", "Attic"));
    spoil("a misspelt field", Rule.FORMAT, "job /laying/expansiongap: found an unknown field", files -> files.laying().put("expansiongap", 9));
    spoil("a length that is none", Rule.FORMAT, "job /laying/expansionGap", files -> files.laying().put("expansionGap", "12' 13\""));
    spoil("an outline that crosses", Rule.FORMAT, "must not cross", files -> {
      ArrayNode outline = (ArrayNode) files.job.at("/rooms/0/outline");
      outline.add(outline.remove(1));
    });
    spoil("no boards", Rule.FORMAT, "job /board: found nothing", files -> files.job.remove("board"));
    return tests.stream();
  }

  /** A board opened for its later piece: allowed if offcuts may be cut ahead, which is not so where the job says nothing. */
  @Test
  void cutAheadIsNotTheDefault() {
    TwoFiles files = new TwoFiles(SoundPlans.WITH_BREAK);
    ObjectNode last = files.pieces().stream().filter(piece -> files.pieces().stream().anyMatch(other ->
        other.at("/from/board").equals(piece.at("/from/board")) && row(other).compareTo(row(piece)) < 0)).findFirst().orElseThrow();
    ((ObjectNode) files.boards().get(last.at("/from/board").intValue() - 1)).put("openedInRow", row(last));
    assertThat(files.report().faults()).isEmpty();
    files.laying().remove("offcuts");
    assertThat(files.report().faults()).isNotEmpty().allSatisfy(fault -> assertThat(fault.rule()).isEqualTo(Rule.LAYING_ORDER));
  }

  private static String row(ObjectNode piece) {
    String name = piece.get("piece").textValue();
    return name.substring(0, name.lastIndexOf('.'));
  }

  /** Wall 2 of the first room runs from (6000, 0) to (6000, 3000): 1000 mm along it is (6000, 1000). */
  @Test
  void aDoorMayBePlacedAlongItsWall() {
    TwoFiles files = new TwoFiles(SoundPlans.WITH_BREAK);
    ObjectNode door = (ObjectNode) files.job.at("/rooms/0/doors/0");
    ((ObjectNode) files.job.at("/rooms/1")).putArray("doors");
    door.putObject("from").put("wall", 2).put("at", "1 m");
    door.putObject("to").put("wall", 2).put("at", 1826);
    assertThat(files.report().faults()).isEmpty();
    door.putObject("to").put("wall", 2).put("at", 1900);
    assertThat(files.report().faults()).extracting(Fault::place).containsExactly("plan /profiles/1");
    door.putObject("to").put("wall", 7).put("at", 1826);
    assertThat(files.report().faults()).extracting(Fault::toString)
        .containsExactly("format, job /rooms/0/doors/0/to/wall: found wall 7; the room has 6 walls");
  }

  /** The value of common practice is used where the job says nothing: said or unsaid, the report is the same. */
  @Test
  void whatIsLeftOutIsCommonPractice() {
    TwoFiles files = new TwoFiles(SoundPlans.WITH_COMPROMISES);
    assertThat(files.laying().has("expansionGap")).isFalse();
    files.laying().put("expansionGap", 10).put("minimumRowWidth", 70).put("minimumEndPiece", "500 mm").put("minimumJointOffset", "0.5 m")
        .put("sawKerf", 3).put("spareShare", 0.02).put("offcuts", "in-laying-order").put("breakGap", 0);
    assertThat(files.report()).isEqualTo(SoundPlans.WITH_COMPROMISES.report());
    files.laying().put("breakGap", 20);
    assertThat(files.report().isSound()).isTrue();
  }

  private void spoil(String what, Rule rule, String words, Consumer<TwoFiles> change) {
    tests.add(dynamicTest(what, () -> {
      TwoFiles files = new TwoFiles(SoundPlans.WITH_COMPROMISES);
      change.accept(files);
      assertThat(files.report().faults()).anySatisfy(fault -> {
        assertThat(fault.rule()).isEqualTo(rule);
        assertThat(fault.toString()).contains(words);
      });
    }));
  }
}
