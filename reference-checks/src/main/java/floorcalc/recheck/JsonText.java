package floorcalc.recheck;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

/** Reads strict JSON into a tree with exact numbers. */
final class JsonText {
  private static final ObjectMapper STRICT = new ObjectMapper(
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build())
      .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private static final String STRICT_JSON = "the file must be strict JSON, each name once in its object";

  private JsonText() {}

  /** The root of a file; a node that is missing, and a fault, where the text is no JSON. */
  static Cursor root(String file, String text, Faults faults) {
    JsonNode tree = STRICT.missingNode();
    try {
      tree = STRICT.readTree(text);
      if (tree.isMissingNode()) {
        faults.add(Rule.FORMAT, file, "an empty text", "a JSON object must stand there");
      }
    } catch (JsonProcessingException bad) {
      JsonLocation at = bad.getLocation();
      String where = at == null ? "" : " at line " + at.getLineNr() + ", column " + at.getColumnNr();
      faults.add(Rule.FORMAT, file, "no JSON" + where + ": " + bad.getOriginalMessage().lines().findFirst().orElse(""),
          STRICT_JSON);
    } catch (NumberFormatException bad) {
      // Numbers with a huge exponent are refused so.
      faults.add(Rule.FORMAT, file, "a number beyond all bounds", STRICT_JSON);
    }
    return Cursor.root(file, tree, faults);
  }
}
