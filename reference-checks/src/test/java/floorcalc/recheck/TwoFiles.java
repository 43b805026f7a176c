package floorcalc.recheck;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** A job and a plan as trees that can be changed. */
final class TwoFiles {
  private static final ObjectMapper EXACT = new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

  final ObjectNode job;
  final ObjectNode plan;

  TwoFiles(Rechecked sound) {
    this.job = tree(sound.jobText());
    this.plan = tree(sound.planText());
  }

  private static ObjectNode tree(String text) {
    try {
      return (ObjectNode) EXACT.readTree(text);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  RecheckReport report() {
    return PlanRecheck.of(JobText.text(job), JobText.text(plan));
  }

  ObjectNode laying() {
    return (ObjectNode) job.get("laying");
  }

  ObjectNode board() {
    return (ObjectNode) job.get("board");
  }

  ObjectNode order() {
    return (ObjectNode) plan.get("order");
  }

  ArrayNode boards() {
    return (ArrayNode) plan.get("boards");
  }

  ArrayNode compromises() {
    return (ArrayNode) plan.get("compromises");
  }

  ObjectNode bay() {
    return (ObjectNode) plan.at("/bays/0");
  }

  ObjectNode at(String pointer) {
    return (ObjectNode) plan.at(pointer);
  }

  ObjectNode row(int index) {
    return (ObjectNode) plan.at("/bays/0/rows/" + index);
  }

  List<ObjectNode> pieces() {
    List<ObjectNode> pieces = new ArrayList<>();
    plan.get("bays").forEach(bay -> bay.get("rows").forEach(row -> row.get("pieces").forEach(piece -> pieces.add((ObjectNode) piece))));
    return pieces;
  }

  /** The second piece of a kind, so that the first row is left as it is. */
  ObjectNode piece(String kind) {
    return pieces().stream().filter(piece -> piece.get("kind").textValue().equals(kind)).skip(1).findFirst().orElseThrow();
  }

  /** Adds to both ends of where a piece lies along its board. */
  static void along(ObjectNode piece, double from, double to) {
    ArrayNode along = (ArrayNode) piece.at("/from/along");
    add(along, 0, from);
    add(along, 1, to);
  }

  static void add(ArrayNode array, int index, double more) {
    array.set(index, array.numberNode(array.get(index).decimalValue().add(BigDecimal.valueOf(more))));
  }

  static void add(ObjectNode object, String field, double more) {
    object.put(field, object.get(field).decimalValue().add(BigDecimal.valueOf(more)));
  }

  /** Moves a ring along x. */
  static void move(JsonNode ring, double x) {
    ring.forEach(corner -> add((ArrayNode) corner, 0, x));
  }
}
