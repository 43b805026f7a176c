package floorcalc.examples.job;

import com.fasterxml.jackson.databind.JsonNode;
import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/** The fields of an object, of which only known ones are allowed. */
final class Fields {
  private final JsonNode object;
  private final Value self;

  private Fields(JsonNode object, Value self) {
    this.object = object;
    this.self = self;
  }

  /** Notes each field that is not known; one that is probably a known field mistyped is named as such. */
  static Fields of(JsonNode object, Value self, List<String> known) {
    List<String> free = new ArrayList<>(known);
    object.fieldNames().forEachRemaining(free::remove);
    for (Iterator<String> names = object.fieldNames(); names.hasNext();) {
      String name = names.next();
      if (!known.contains(name)) {
        String hint = self.mistakes().areListed() ? Words.hint(name, free) : "";
        self.mistakes().add(Mistake.Kind.UNKNOWN_FIELD, self.place().field(name),
            "unknown field" + (hint.isEmpty() ? "; known here: " + String.join(", ", known) : hint));
      }
    }
    return new Fields(object, self);
  }

  Place place() {
    return self.place();
  }

  Mistakes mistakes() {
    return self.mistakes();
  }

  boolean has(String name) {
    return object.has(name);
  }

  Optional<Value> optional(String name) {
    return has(name)
        ? Optional.of(new Value(object.get(name), place().field(name), mistakes())) : Optional.empty();
  }

  /** The field, or a note that it is missing and what it should hold. */
  Optional<Value> required(String name, String what) {
    if (!has(name)) {
      mistakes().add(Mistake.Kind.MISSING_FIELD, place().field(name), "missing; must be " + what);
    }
    return optional(name);
  }

  Optional<Length> requiredLength(String name, LengthRange range) {
    return required(name, range.words()).flatMap(value -> value.length(range));
  }

  Optional<Length> optionalLength(String name, LengthRange range) {
    return optional(name).flatMap(value -> value.length(range));
  }

  Optional<String> requiredText(String name) {
    return required(name, "a text that is not blank").flatMap(Value::text);
  }

  Optional<String> optionalText(String name) {
    return optional(name).flatMap(Value::text);
  }

  /** Notes that a field does not fit what else is known. */
  void mistake(String name, String message) {
    mistake(Mistake.Kind.DOES_NOT_FIT, name, message);
  }

  /** Notes a mistake of another kind at a field. */
  void mistake(Mistake.Kind kind, String name, String message) {
    mistakes().add(kind, place().field(name), message);
  }
}
