package floorcalc.recheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Plans spoilt in one place of their text: the second auditor finds each spoil under the rule that it breaks. */
class SpoiltPlansTest {
  private final List<DynamicTest> tests = new ArrayList<>();
  private Rechecked sound = SoundPlans.WITH_COMPROMISES;

  @Test
  void theSoundPlansPass() {
    SoundPlans.WITH_COMPROMISES.assertSound("with compromises");
    SoundPlans.WITH_BREAK.assertSound("with a break");
    SoundPlans.MIXED.assertSound("mixed packs");
    assertThat(SoundPlans.WITH_COMPROMISES.plan().compromises()).as("one compromise is needed to leave out").isNotEmpty();
    assertThat(SoundPlans.WITH_BREAK.plan().breaks()).hasSize(1);
    assertThat(SoundPlans.WITH_BREAK.plan().compromises()).isEmpty();
    assertThat(SoundPlans.WITH_BREAK.report().checked().boardsCutAgain()).isPositive();
  }

  @TestFactory
  Stream<DynamicTest> whatIsLaid() {
    spoil("a piece left out", Rule.COVER, "a hole", files -> {
      for (JsonNode row : files.bay().get("rows")) {
        ArrayNode pieces = (ArrayNode) row.get("pieces");
        for (int i = 0; i < pieces.size(); i++) {
          if (pieces.get(i).get("kind").textValue().equals("full")) {
            pieces.remove(i);
            return;
          }
        }
      }
    });
    spoil("a piece moved by 2 mm", Rule.COVER, "an overlap", files -> TwoFiles.move(files.piece("full").get("outline"), 2));
    spoil("an end piece moved by 1 mm", Rule.COVER, "outside the laid area", files -> TwoFiles.move(files.piece("end").get("outline"), 1));
    spoil("laid moved by 1 mm", Rule.COVER, "a gap of 9 mm to the walls", files -> {
      TwoFiles.move(files.bay().at("/laid/shell"), 1);
      files.bay().at("/laid/holes").forEach(hole -> TwoFiles.move(hole, 1));
    });
    spoil("a column laid over", Rule.COVER, "a laid area where the gap should be", files -> ((ArrayNode) files.bay().at("/laid/holes")).removeAll());
    spoil("an outline that crosses itself", Rule.COVER, "crosses or touches itself", files -> {
      ArrayNode outline = (ArrayNode) files.piece("full").get("outline");
      JsonNode first = outline.get(0);
      outline.set(0, outline.get(1));
      outline.set(1, first);
    });
    spoil("a bay said to be of another room", Rule.FORMAT, "no room of that name", files -> files.bay().put("room", "Attic"));
    sound = SoundPlans.WITH_BREAK;
    spoil("a bay left out", Rule.COVER, "floor that is in no bay", files -> {
      ((ArrayNode) files.plan.get("bays")).remove(1);
    });
    spoil("a room left out", Rule.COVER, "no bay", files -> ((ArrayNode) files.plan.get("bays")).remove(2));
    spoil("the profile of the break left out", Rule.COVER, "2 bays", files -> profiles(files).remove(profileOfBreak(files)));
    spoil("a break moved by 100 mm", Rule.FORMAT, "between two bays", files -> {
      ObjectNode profile = (ObjectNode) profiles(files).get(profileOfBreak(files));
      TwoFiles.add((ArrayNode) profile.get("from"), 1, 100);
      TwoFiles.add((ArrayNode) profile.get("to"), 1, 100);
    });
    spoil("a door's profile elsewhere", Rule.FORMAT, "lies at a door of the job", files -> {
      ObjectNode profile = (ObjectNode) profiles(files).get(1 - profileOfBreak(files));
      TwoFiles.add((ArrayNode) profile.get("from"), 1, 50);
      TwoFiles.add((ArrayNode) profile.get("to"), 1, 50);
    });
    spoil("a profile too long", Rule.FORMAT, "from its one end to its other", files -> TwoFiles.add((ObjectNode) profiles(files).get(0), "length", 1));
    spoil("a bay turned", Rule.FORMAT, "along the longest wall", files -> files.bay().put("directionDegrees", 45));
    return tests.stream();
  }

  private static ArrayNode profiles(TwoFiles files) {
    return (ArrayNode) files.plan.get("profiles");
  }

  private static int profileOfBreak(TwoFiles files) {
    return profiles(files).get(0).get("because").textValue().contains("door") ? 1 : 0;
  }

  @TestFactory
  Stream<DynamicTest> whatIsCut() {
    spoil("a rectangle 1 mm short", Rule.CUT, "its rectangle is", files -> TwoFiles.along(files.piece("start"), 1, 0));
    spoil("a rectangle beyond the board", Rule.CUT, "it must lie in its board", files -> TwoFiles.along(files.piece("end"), -1, -1));
    spoil("two pieces from one place", Rule.CUT, "is an overlap", files -> ofOneBoard(files, (first, second) -> {
      double from = first.at("/from/along/0").doubleValue() - second.at("/from/along/0").doubleValue();
      TwoFiles.along(second, from, from);
    }));
    spoil("two pieces less than a kerf apart", Rule.CUT, "a saw kerf, 3 mm", files -> ofOneBoard(files, (first, second) -> {
      boolean firstIsLow = first.at("/from/along/0").doubleValue() < second.at("/from/along/0").doubleValue();
      ObjectNode low = firstIsLow ? first : second;
      ObjectNode high = firstIsLow ? second : first;
      double gap = high.at("/from/along/0").doubleValue() - low.at("/from/along/1").doubleValue();
      TwoFiles.along(low, gap - 2, gap - 2);
    }));
    spoil("a board that is not listed", Rule.CUT, "board 10000", files -> ((ObjectNode) files.piece("end").get("from")).put("board", 10_000));
    spoil("a sawn end at a joint", Rule.FACTORY_ENDS, "end at high x", files -> TwoFiles.along(files.piece("start"), -5, -5));
    spoil("a sawn end at a joint, low x", Rule.FACTORY_ENDS, "end at low x", files -> TwoFiles.along(files.piece("end"), 5, 5));
    spoil("the first row ripped on its other side", Rule.FACTORY_ENDS, "edge at high y", files -> across(files, 0, true));
    spoil("the last row ripped on its other side", Rule.FACTORY_ENDS, "edge at low y",
        files -> across(files, files.bay().get("rows").size() - 1, false));
    spoil("a board opened later", Rule.LAYING_ORDER, "board 1", files -> ((ObjectNode) files.boards().get(0)).put("openedInRow", "room-1.5"));
    spoil("a board opened in no row", Rule.LAYING_ORDER, "board 2", files -> ((ObjectNode) files.boards().get(1)).put("openedInRow", "hall-1.1"));
    return tests.stream();
  }

  private static void ofOneBoard(TwoFiles files, java.util.function.BiConsumer<ObjectNode, ObjectNode> change) {
    List<ObjectNode> pieces = files.pieces();
    for (int i = 0; i < pieces.size(); i++) {
      for (int j = i + 1; j < pieces.size(); j++) {
        if (pieces.get(i).at("/from/board").equals(pieces.get(j).at("/from/board"))
            && !pieces.get(i).get("kind").equals(pieces.get(j).get("kind"))) {
          change.accept(pieces.get(i), pieces.get(j));
          return;
        }
      }
    }
    throw new IllegalStateException("no two pieces of one board");
  }

  /** Takes the pieces of a row from the other side of their boards. */
  private static void across(TwoFiles files, int row, boolean toLow) {
    BigDecimal board = BigDecimal.valueOf(190);
    for (JsonNode piece : files.row(row).get("pieces")) {
      ArrayNode across = (ArrayNode) piece.at("/from/across");
      BigDecimal by = toLow ? across.get(0).decimalValue().negate() : board.subtract(across.get(1).decimalValue());
      assertThat(by).as("the row is ripped").isNotZero();
      for (int end = 0; end < 2; end++) {
        across.set(end, across.numberNode(across.get(end).decimalValue().add(by)));
      }
    }
  }

  @TestFactory
  Stream<DynamicTest> whatIsSaidOfMinimums() {
    spoil("no compromise", Rule.MINIMUMS, "no compromise that says so", files -> files.compromises().removeAll());
    spoil("a compromise of 1 mm more", Rule.MINIMUMS, "no compromise that says so",
        files -> files.compromises().forEach(one -> TwoFiles.add((ObjectNode) one, "found", 1)));
    spoil("a compromise made up", Rule.MINIMUMS, "the minimum is kept there", files -> files.compromises().addObject()
        .put("rule", "minimumRowWidth").put("where", "room-1 row 4").put("required", 70).put("found", 12).put("because", "of nothing"));
    spoil("a compromise that asks for less", Rule.MINIMUMS, "asks for 500 mm", files -> TwoFiles.add((ObjectNode) files.compromises().get(0),
        "required", -50));
    spoil("a compromise without a reason", Rule.FORMAT, "/because", files -> ((ObjectNode) files.compromises().get(0)).put("because", " "));
    spoil("a start piece called end", Rule.MINIMUMS, "of kind start", files -> files.piece("start").put("kind", "end"));
    spoil("a cover width not shown", Rule.FORMAT, "a coverWidth of 189 mm", files -> files.row(1).put("coverWidth", 189));
    return tests.stream();
  }

  @TestFactory
  Stream<DynamicTest> whatIsCounted() {
    spoil("a board of another length", Rule.COUNTS, "no boards of that length", files -> TwoFiles.add((ObjectNode) files.boards().get(0), "length", 1));
    spoil("a board too many", Rule.COUNTS, "no piece is cut", files -> files.boards().addObject().put("board", files.boards().size())
        .put("length", 1200).put("openedInRow", "room-1.1"));
    spoil("boards numbered wrong", Rule.COUNTS, "numbered from 1", files -> ((ObjectNode) files.boards().get(3)).put("board", 3));
    spoil("boardsUsed", Rule.COUNTS, "/order/boardsUsed", files -> TwoFiles.add(files.order(), "boardsUsed", 1));
    spoil("a bound above the boards", Rule.COUNTS, "this plan does with", files -> files.order().put("boardsAtLeast",
        files.order().get("boardsUsed").intValue() + 1));
    spoil("provenFewest", Rule.COUNTS, "/order/provenFewest", files -> files.order().put("provenFewest",
        !files.order().get("provenFewest").booleanValue()));
    spoil("a spare board more", Rule.COUNTS, "/order/spare", files -> TwoFiles.add(files.order(), "spare", 1));
    spoil("a pack less", Rule.COUNTS, "they do not hold", files -> packs(files, -1, 8));
    spoil("a pack more", Rule.COUNTS, "one pack less", files -> packs(files, 1, 8));
    spoil("boardsInPacks", Rule.COUNTS, "/order/boardsInPacks", files -> TwoFiles.add(files.order(), "boardsInPacks", -1));
    spoil("other packs among the materials", Rule.COUNTS, "of 'boards'", files -> TwoFiles.add(files.at("/materials/0"), "quantity", 1));
    spoil("boards by the metre", Rule.COUNTS, "of 'boards'", files -> files.at("/materials/0").put("unit", "m"));
    spoil("no boards among the materials", Rule.COUNTS, "0 lines on 'boards'", files -> ((ArrayNode) files.plan.get("materials")).remove(0));
    sound = SoundPlans.WITH_BREAK;
    spoil("a bound that the same pieces undercut", Rule.COUNTS, "the same pieces can be cut from", SpoiltPlansTest::waste);
    sound = SoundPlans.MIXED;
    spoil("a pack less of two lengths", Rule.COUNTS, "they do not hold", files -> packs(files, -1, 10));
    return tests.stream();
  }

  private static void packs(TwoFiles files, int more, int perPack) {
    TwoFiles.add(files.order(), "packs", more);
    TwoFiles.add(files.order(), "boardsInPacks", more * perPack);
    TwoFiles.add(files.at("/materials/0"), "quantity", more);
  }

  /** Takes four pieces each from a board of its own, though they fitted into offcuts, and calls the plan proven. */
  private static void waste(TwoFiles files) {
    List<ObjectNode> pieces = files.pieces();
    for (int added = 0; added < 4; added++) {
      ObjectNode second = pieces.stream().filter(piece -> pieces.stream().anyMatch(other -> other != piece
          && other.at("/from/board").equals(piece.at("/from/board")))).findFirst().orElseThrow();
      int number = files.boards().size() + 1;
      int board = second.at("/from/board").intValue();
      ((ObjectNode) second.get("from")).put("board", number);
      files.boards().addObject().put("board", number).put("length", 1200).put("openedInRow", rowOf(second));
      ObjectNode rest = pieces.stream().filter(piece -> piece.at("/from/board").intValue() == board).findFirst().orElseThrow();
      ((ObjectNode) files.boards().get(board - 1)).put("openedInRow", rowOf(rest));
    }
    int used = files.boards().size();
    int spare = (used + 49) / 50;
    int packs = (used + spare + 7) / 8;
    files.order().put("boardsUsed", used).put("boardsAtLeast", used).put("provenFewest", true).put("spare", spare).put("packs", packs)
        .put("boardsInPacks", 8 * packs);
    files.at("/materials/0").put("quantity", packs);
  }

  private static String rowOf(ObjectNode piece) {
    String name = piece.get("piece").textValue();
    return name.substring(0, name.lastIndexOf('.'));
  }

  @TestFactory
  Stream<DynamicTest> whatIsWritten() {
    spoil("a field left out", Rule.FORMAT, "plan /order/packs: found nothing", files -> files.order().remove("packs"));
    spoil("a field too many", Rule.FORMAT, "plan /order/boxes: found an unknown field", files -> files.order().put("boxes", 3));
    spoil("a text for a length", Rule.FORMAT, "plan /boards/0/length", files -> ((ObjectNode) files.boards().get(0)).put("length", "1200 mm"));
    spoil("seven decimals", Rule.FORMAT, "at most 6 decimals", files -> TwoFiles.along(files.piece("start"), 1e-7, 0));
    spoil("beyond ten kilometres", Rule.FORMAT, "within 10 km", files -> TwoFiles.along(files.piece("start"), 0, 2e7));
    spoil("null", Rule.FORMAT, "plan /bays/0/laid", files -> files.bay().putNull("laid"));
    spoil("a ring of two corners", Rule.FORMAT, "2 corners", files -> {
      ArrayNode outline = (ArrayNode) files.piece("full").get("outline");
      while (outline.size() > 2) {
        outline.remove(0);
      }
    });
    spoil("another format", Rule.FORMAT, "must be floorcalc-plan/1", files -> files.plan.put("format", "floorcalc-plan/2"));
    spoil("another title", Rule.FORMAT, "the title of the job", files -> files.plan.put("title", "Some other floor"));
    spoil("one name for two pieces", Rule.FORMAT, "for the second time", files -> files.pieces().get(1).set("piece",
        files.pieces().get(0).get("piece")));
    spoil("a piece named after another row", Rule.FORMAT, "named after its bay and row", files -> files.pieces().get(0).put("piece", "room-1.9.77"));
    spoil("a row's number", Rule.FORMAT, "rows are numbered", files -> files.row(2).put("row", 7));
    spoil("a run's number", Rule.FORMAT, "of one run", files -> files.pieces().get(1).put("run", 2));
    spoil("an unknown kind", Rule.FORMAT, "start, full, end or single", files -> files.piece("start").put("kind", "left"));
    spoil("a measurement missing without a word", Rule.FORMAT, "what is to be measured", files -> {
      for (JsonNode check : files.plan.get("checks")) {
        if (check.get("met").isNull()) {
          ((ObjectNode) check).put("limit", "");
          return;
        }
      }
    });
    spoil("a verdict on nothing", Rule.FORMAT, "what was found", files -> files.at("/checks/0").put("found", ""));
    spoil("met in words", Rule.FORMAT, "true or false", files -> files.at("/checks/0").put("met", "yes"));
    spoil("boards another way", Rule.FORMAT, "the job asks for 0", files -> files.bay().put("directionDegrees", 180));
    return tests.stream();
  }

  private void spoil(String what, Rule rule, String words, Consumer<TwoFiles> change) {
    Rechecked given = Objects.requireNonNull(sound);
    tests.add(dynamicTest(what, () -> {
      TwoFiles files = new TwoFiles(given);
      change.accept(files);
      RecheckReport report = files.report();
      assertThat(report.faults()).anySatisfy(fault -> {
        assertThat(fault.rule()).isEqualTo(rule);
        assertThat(fault.toString()).contains(words);
      });
      assertThat(report.isSound()).isFalse();
    }));
  }
}
