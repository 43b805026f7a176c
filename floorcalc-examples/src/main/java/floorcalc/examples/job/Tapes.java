package floorcalc.examples.job;

import com.fasterxml.jackson.databind.JsonNode;
import floorcalc.measure.Length;
import floorcalc.measure.TapeNotationException;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * In which units a job was measured. A room with a survey has a tape of its own: one room in inches among rooms in
 * millimetres does not turn the whole job into inches.
 *
 * @param ofJob of the boards, the rules and the rooms given by outlines; of the surveyed rooms if there are no others
 * @param ofSurveys of everything together
 * @param inFeet the names of the surveyed rooms that were measured in feet or inches
 */
record Tapes(Tape ofJob, Tape ofSurveys, Set<String> inFeet) {
  private static final Pattern INCH_OR_FOOT = Pattern.compile("[\"″”'′’]|[0-9 ](in|inch|inches|ft|foot|feet)\\b");

  /** Reads the tapes of a job that has no mistakes. */
  static Tapes of(JsonNode root) {
    Set<String> inFeet = new TreeSet<>();
    boolean elsewhere = false;
    boolean onlySurveys = true;
    for (Map.Entry<String, JsonNode> field : root.properties()) {
      elsewhere |= !field.getKey().equals("rooms") && inches(field.getValue());
    }
    for (JsonNode room : root.path("rooms")) {
      boolean inches = inches(room);
      if (!room.has("survey")) {
        onlySurveys = false;
        elsewhere |= inches;
      } else if (inches) {
        inFeet.add(room.path("name").asText());
      }
    }
    boolean anywhere = elsewhere || !inFeet.isEmpty();
    return new Tapes(tape(elsewhere || onlySurveys && anywhere), tape(anywhere), inFeet);
  }

  private static Tape tape(boolean inches) {
    return inches ? Tape.FEET_AND_INCHES : Tape.METRIC;
  }

  /** Whether sizes are in inches; the length of an edge among the site readings says nothing about the tape of the job. */
  private static boolean inches(JsonNode node) {
    if (node.isTextual() && INCH_OR_FOOT.matcher(node.textValue()).find()) {
      try {
        return !Length.parse(node.textValue()).isZero();
      } catch (TapeNotationException notALength) {
        return false;
      }
    }
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      if (!field.getKey().equals("site") && inches(field.getValue())) {
        return true;
      }
    }
    if (node.isArray()) {
      for (JsonNode item : node) {
        if (inches(item)) {
          return true;
        }
      }
    }
    return false;
  }
}
