package floorcalc.examples.job;

import com.fasterxml.jackson.databind.JsonNode;
import floorcalc.measure.Length;
import floorcalc.measure.TapeNotationException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A value at a place of a job. Each question either has an answer or notes one mistake. */
final class Value {
  private static final String LENGTH_FORMS =
      "a number of millimetres or a text with its unit such as \"3.2 m\" or \"12' 7 5/8\\\"\"";
  private static final int LENGTH_DECIMALS = 6;

  private final JsonNode node;
  private final Place place;
  private final Mistakes mistakes;

  Value(JsonNode node, Place place, Mistakes mistakes) {
    this.node = node;
    this.place = place;
    this.mistakes = mistakes;
  }

  Place place() {
    return place;
  }

  Mistakes mistakes() {
    return mistakes;
  }

  boolean isNumber() {
    return node.isNumber();
  }

  boolean isArray() {
    return node.isArray();
  }

  boolean isObject() {
    return node.isObject();
  }

  /** Notes that what was found is not what is allowed. */
  <T> Optional<T> refuse(String allowed) {
    return refuse(Shown.of(node), allowed);
  }

  private <T> Optional<T> refuse(String found, String allowed) {
    mistakes.add(Mistake.Kind.NOT_ALLOWED, place, "found " + found + "; must be " + allowed);
    return Optional.empty();
  }

  Optional<Length> length(LengthRange range) {
    Optional<Length> read = node.isNumber() ? fromNumber(range) : node.isTextual() ? fromText() : refuse(LENGTH_FORMS);
    if (read.isPresent() && !range.contains(read.get())) {
      String typed = node.isTextual() ? Shown.of(node) : read.get().toString();
      return refuse(typed, range.words());
    }
    return read;
  }

  private Optional<Length> fromNumber(LengthRange range) {
    BigDecimal millimetres = node.decimalValue();
    if (millimetres.signum() == 0) {
      return Optional.of(Length.ZERO);
    }
    String found = Shown.number(millimetres) + " mm";
    if (millimetres.abs().compareTo(BigDecimal.valueOf(Long.MAX_VALUE, LENGTH_DECIMALS)) > 0) {
      return refuse(found, range.words());
    }
    if (decimals(millimetres) > LENGTH_DECIMALS) {
      return refuse(found, "a whole number of nanometres: at most 6 decimals of a millimetre");
    }
    return Optional.of(Length.ofNanometres(millimetres.movePointRight(LENGTH_DECIMALS).longValueExact()));
  }

  private Optional<Length> fromText() {
    try {
      return Optional.of(Length.parse(node.textValue()));
    } catch (TapeNotationException fault) {
      mistakes.add(Mistake.Kind.NOT_ALLOWED, place, fault.getMessage());
      return Optional.empty();
    }
  }

  /** A number with at most 9 decimals, both ends allowed. */
  Optional<BigDecimal> number(BigDecimal least, BigDecimal most) {
    return number(least, most, "");
  }

  /** Likewise, with the unit behind the bounds. */
  Optional<BigDecimal> number(BigDecimal least, BigDecimal most, String unit) {
    String allowed = "a number from " + least.toPlainString() + " to " + most.toPlainString() + unit;
    if (!node.isNumber()) {
      return refuse(allowed);
    }
    BigDecimal number = node.decimalValue();
    if (number.compareTo(least) < 0 || number.compareTo(most) > 0) {
      return refuse(allowed);
    }
    if (number.signum() != 0 && decimals(number) > JobLimits.DECIMALS) {
      return refuse(allowed + " with at most " + JobLimits.DECIMALS + " decimals");
    }
    return Optional.of(number.signum() == 0 ? BigDecimal.ZERO : number.setScale(Math.max(0, decimals(number))));
  }

  private static int decimals(BigDecimal number) {
    return number.stripTrailingZeros().scale();
  }

  Optional<Integer> wholeNumber(int least, int most) {
    String allowed = "a whole number from " + least + " to " + most;
    if (!node.isNumber()) {
      return refuse(allowed);
    }
    BigDecimal number = node.decimalValue();
    boolean inRange = number.compareTo(BigDecimal.valueOf(least)) >= 0 && number.compareTo(BigDecimal.valueOf(most)) <= 0;
    return inRange && (number.signum() == 0 || decimals(number) <= 0) ? Optional.of(number.intValue()) : refuse(allowed);
  }

  Optional<Boolean> trueOrFalse() {
    return node.isBoolean() ? Optional.of(node.booleanValue()) : refuse("true or false");
  }

  /** A text of one line that is not blank. */
  Optional<String> text() {
    String allowed = "a text of 1 to " + JobLimits.TEXT + " characters that is not blank";
    if (!node.isTextual()) {
      return refuse(allowed);
    }
    String text = node.textValue();
    if (text.isBlank()) {
      return refuse(allowed);
    }
    if (text.codePointCount(0, text.length()) > JobLimits.TEXT) {
      return refuse("a text of " + text.codePointCount(0, text.length()) + " characters", allowed);
    }
    return text.codePoints().anyMatch(Shown::hidden)
        ? refuse(allowed + ", without line breaks, control characters and marks that turn the writing round")
        : Optional.of(text);
  }

  /** One of a few words, each with its meaning. */
  <T> Optional<T> choice(Map<String, T> choices) {
    return choice(choices, "");
  }

  /** One of a few words, with what else is allowed beside them. */
  <T> Optional<T> choice(Map<String, T> choices, String orElse) {
    if (node.isTextual() && choices.containsKey(node.textValue())) {
      return Optional.of(choices.get(node.textValue()));
    }
    String allowed = Words.oneOf(choices.keySet()) + (orElse.isEmpty() ? "" : " " + orElse);
    return refuse(node.isTextual() ? allowed + Words.hint(node.textValue(), choices.keySet()) : allowed);
  }

  /** The text that stands here, whatever it is, without noting anything. */
  Optional<String> asText() {
    return node.isTextual() ? Optional.of(node.textValue()) : Optional.empty();
  }

  /** A text in a field of this object, without noting anything if there is none. */
  Optional<String> peek(String field) {
    JsonNode found = node.path(field);
    return found.isTextual() ? Optional.of(found.textValue()) : Optional.empty();
  }

  /** An object with the given fields and no others. */
  Optional<Fields> object(String what, List<String> known) {
    if (!node.isObject()) {
      return refuse("an object: " + what);
    }
    return Optional.of(Fields.of(node, this, known));
  }

  /** The items of an array. */
  List<Value> items(String what, int least, int most) {
    if (!node.isArray()) {
      refuse("an array of " + what);
      return List.of();
    }
    if (node.size() < least || node.size() > most) {
      refuse("an array of " + (least == most ? "exactly " + least : "at least " + least + " and at most " + most)
          + " " + what);
      return List.of();
    }
    List<Value> items = new ArrayList<>(node.size());
    for (JsonNode item : node) {
      items.add(new Value(item, place.item(items.size()), mistakes));
    }
    return items;
  }
}
