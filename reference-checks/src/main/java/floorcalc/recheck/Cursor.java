package floorcalc.recheck;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;

/**
 * A place in a JSON tree that knows where it is. What is missing or of the wrong kind becomes one fault, and stands for zero, an
 * empty text or an empty list from there on, so that all such faults of a file are found in one go.
 */
final class Cursor {
  private final Cursor parent;
  private final String step;
  private final JsonNode node;
  private final Faults faults;

  private Cursor(Cursor parent, String step, JsonNode node, Faults faults) {
    this.parent = parent;
    this.step = step;
    this.node = node;
    this.faults = faults;
  }

  static Cursor root(String file, JsonNode node, Faults faults) {
    return new Cursor(null, file, node, faults);
  }

  /** The file and the JSON Pointer. */
  String place() {
    if (parent == null) {
      return step + " ";
    }
    return parent.place() + "/" + step.replace("~", "~0").replace("/", "~1");
  }

  void fault(Rule rule, String found, String allowed) {
    faults.add(rule, place().strip(), found, allowed);
  }

  private void wrong(String allowed) {
    if (!node.isMissingNode()) {
      String text = node.isContainerNode() ? node.isArray() ? "an array" : "an object" : node.toString();
      fault(Rule.FORMAT, text.length() > 60 ? text.substring(0, 60) + "…" : text, "must be " + allowed);
    }
  }

  /** Finds fields that are not among those named. */
  Cursor only(Set<String> names) {
    if (!node.isObject()) {
      wrong("an object");
    }
    node.fieldNames().forEachRemaining(name -> {
      if (!names.contains(name)) {
        new Cursor(this, name, node.get(name), faults).fault(Rule.FORMAT, "an unknown field", "the format does not have it");
      }
    });
    return this;
  }

  boolean isThere() {
    return !node.isMissingNode();
  }

  boolean isObject() {
    return node.isObject();
  }

  boolean isNull() {
    return node.isNull();
  }

  /** A field that must be there. */
  Cursor get(String name) {
    Cursor field = field(name);
    if (!field.isThere() && node.isObject()) {
      field.fault(Rule.FORMAT, "nothing", "the field must be there");
    }
    return field;
  }

  /** A field that may be left out. */
  Optional<Cursor> find(String name) {
    Cursor field = field(name);
    return field.isThere() ? Optional.of(field) : Optional.empty();
  }

  private Cursor field(String name) {
    JsonNode found = node.get(name);
    return new Cursor(this, name, found == null ? MissingNode.getInstance() : found, faults);
  }

  List<Cursor> items() {
    List<Cursor> items = new ArrayList<>();
    if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        items.add(new Cursor(this, String.valueOf(i), node.get(i), faults));
      }
    } else {
      wrong("an array");
    }
    return items;
  }

  /** The items of an array that must have so many. */
  List<Cursor> items(int size) {
    List<Cursor> items = items();
    if (node.isArray() && items.size() != size) {
      fault(Rule.FORMAT, "an array of " + items.size(), "must be an array of " + size);
    }
    return items.size() == size ? items : List.of();
  }

  String text() {
    if (!node.isTextual() || node.textValue().isBlank()) {
      wrong("a text that is not blank");
    }
    return node.isTextual() ? node.textValue() : "";
  }

  String textOrEmpty() {
    if (!node.isTextual()) {
      wrong("a text");
    }
    return node.isTextual() ? node.textValue() : "";
  }

  boolean yes() {
    if (!node.isBoolean()) {
      wrong("true or false");
    }
    return node.isBoolean() && node.booleanValue();
  }

  /** A whole number from a least one up to two thousand million. */
  int whole(int least) {
    boolean fits = node.isNumber() && node.canConvertToInt() && node.canConvertToExactIntegral() && node.intValue() >= least;
    if (!fits) {
      wrong("a whole number of " + least + " or more");
    }
    return fits ? node.intValue() : least;
  }

  /** A number that is no length. */
  BigDecimal number() {
    if (!node.isNumber() || Math.abs((long) node.decimalValue().scale()) > 400) {
      wrong("a number");
      return BigDecimal.ZERO;
    }
    return node.decimalValue();
  }

  boolean isNumber() {
    return node.isNumber();
  }

  /** A length in nanometres: a number of millimetres. */
  long millimetres() {
    OptionalLong length = node.isNumber() ? Lengths.of(node.decimalValue()) : OptionalLong.empty();
    if (length.isEmpty()) {
      wrong("a number of millimetres with at most 6 decimals, within 10 km");
    }
    return length.orElse(0);
  }

  /** A length in nanometres: a number of millimetres or tape notation. */
  long length() {
    OptionalLong length = node.isNumber() ? Lengths.of(node.decimalValue())
        : node.isTextual() ? Lengths.of(node.textValue()) : OptionalLong.empty();
    if (length.isEmpty()) {
      wrong("millimetres with at most 6 decimals, or a length in tape notation, within 10 km");
    }
    return length.orElse(0);
  }

  /** A point of a plan, in millimetres. */
  Coordinate point() {
    List<Cursor> pair = items(2);
    return pair.isEmpty() ? new Coordinate() : new Coordinate(pair.get(0).millimetres() / Lengths.PER_MILLIMETRE,
        pair.get(1).millimetres() / Lengths.PER_MILLIMETRE);
  }

  /** A point of a job, in millimetres. */
  Coordinate pointOnTape() {
    List<Cursor> pair = items(2);
    return pair.isEmpty() ? new Coordinate() : new Coordinate(pair.get(0).length() / Lengths.PER_MILLIMETRE,
        pair.get(1).length() / Lengths.PER_MILLIMETRE);
  }
}
