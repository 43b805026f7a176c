package floorcalc.recheck;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import floorcalc.bays.ExpansionBreak;
import floorcalc.bays.Opening;
import floorcalc.boards.OffcutUse;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.rules.AtDoorways;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import floorcalc.rules.RuleSet;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;

/**
 * Writes a job as text in the format {@code floorcalc-job/1}. Rules that have the value of common practice are left out, so that who reads
 * the text must know it.
 */
public final class JobText {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Function<Length, Object> lengths;

  private JobText(Function<Length, Object> lengths) {
    this.lengths = lengths;
  }

  /** The job with its lengths as numbers of millimetres. */
  public static String of(FloorJob job) {
    return new JobText(length -> new BigDecimal(length.toMillimetreString())).job(job);
  }

  /** The job with each length as a text in a notation. */
  public static String of(FloorJob job, Function<Length, String> notation) {
    return new JobText(notation::apply).job(job);
  }

  private String job(FloorJob job) {
    ObjectNode root = JSON.createObjectNode();
    root.put("format", "floorcalc-job/1").put("title", job.title());
    ObjectNode board = root.putObject("board");
    List<PackContent> pack = job.board().pack();
    if (pack.size() == 1) {
      put(board, "length", pack.get(0).length());
      board.put("perPack", pack.get(0).perPack());
    } else {
      ArrayNode mix = board.putArray("mix");
      for (PackContent kind : pack) {
        put(mix.addObject().put("perPack", kind.perPack()), "length", kind.length());
      }
    }
    put(board, "coverWidth", job.board().laidPitch());
    put(board, "thickness", job.board().thickness());
    board.put("construction", "engineered");
    laying(job, root.putObject("laying"));
    ArrayNode rooms = root.putArray("rooms");
    job.rooms().forEach(room -> room(room, rooms.addObject()));
    return text(root);
  }

  private void laying(FloorJob job, ObjectNode laying) {
    LayingRules common = RuleSet.COMMON_PRACTICE.forBoard(job.board().thickness(), job.board().coverWidth());
    for (RuleKey<Length> key : List.of(LayingRules.EXPANSION_GAP, LayingRules.MINIMUM_ROW_WIDTH, LayingRules.MINIMUM_END_PIECE,
        LayingRules.MINIMUM_JOINT_OFFSET, LayingRules.SAW_KERF, LayingRules.BREAK_GAP, LayingRules.DEEPEST_RECESS,
        LayingRules.WIDEST_VOID)) {
      rule(job, common, key, key.name(), laying);
    }
    BigDecimal share = job.rules().value(LayingRules.SPARE_SHARE);
    if (share.compareTo(common.value(LayingRules.SPARE_SHARE)) != 0) {
      laying.put("spareShare", share);
    }
    if (job.rules().value(LayingRules.AT_DOORWAYS) == AtDoorways.RUN_THROUGH) {
      laying.put("atDoorways", "run-through");
    }
    ObjectNode runs = JSON.createObjectNode();
    rule(job, common, LayingRules.MAXIMUM_RUN_ALONG, "alongBoards", runs);
    rule(job, common, LayingRules.MAXIMUM_RUN_ACROSS, "acrossBoards", runs);
    if (!runs.isEmpty()) {
      laying.set("maximumRun", runs);
    }
    job.direction().fixed().ifPresent(direction -> laying.put("direction", direction.toDecimal()));
    if (job.direction().equals(DirectionChoice.FEWEST_BOARDS)) {
      laying.put("direction", "fewest-boards");
    }
    if (job.offcuts() == OffcutUse.CUT_AHEAD) {
      laying.put("offcuts", "cut-ahead");
    }
  }

  private void rule(FloorJob job, LayingRules common, RuleKey<Length> key, String name, ObjectNode node) {
    if (!job.rules().value(key).equals(common.value(key))) {
      put(node, name, job.rules().value(key));
    }
  }

  private void room(Room room, ObjectNode node) {
    node.put("name", room.name());
    ring(room.outline().shell(), node.putArray("outline"));
    ArrayNode voids = node.putArray("voids");
    room.outline().voids().forEach(ring -> ring(ring, voids.addArray()));
    ArrayNode doors = node.putArray("doors");
    for (Door door : room.doors()) {
      ObjectNode one = doors.addObject().put("name", door.name());
      ends(one, door.from(), door.to());
      if (!door.leadsTo().isEmpty()) {
        one.put("leadsTo", door.leadsTo());
      }
    }
    ArrayNode openings = node.putArray("openings");
    for (Opening opening : room.openings()) {
      ends(openings.addObject().put("name", opening.name()), opening.from(), opening.to());
    }
    room.breaks().ifPresent(given -> {
      ArrayNode breaks = node.putArray("breaks");
      for (ExpansionBreak line : given) {
        ends(breaks.addObject(), line.from(), line.to());
      }
    });
  }

  private void ends(ObjectNode node, Point from, Point to) {
    point(from, node.putArray("from"));
    point(to, node.putArray("to"));
  }

  private void ring(Ring ring, ArrayNode corners) {
    ring.corners().forEach(corner -> point(corner, corners.addArray()));
  }

  private void point(Point point, ArrayNode pair) {
    pair.addPOJO(lengths.apply(point.x())).addPOJO(lengths.apply(point.y()));
  }

  private void put(ObjectNode node, String name, Length length) {
    node.putPOJO(name, lengths.apply(length));
  }

  /** A tree as text. */
  static String text(ObjectNode root) {
    try {
      return JSON.writerWithDefaultPrettyPrinter()
          .with(com.fasterxml.jackson.core.JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN).writeValueAsString(root);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
