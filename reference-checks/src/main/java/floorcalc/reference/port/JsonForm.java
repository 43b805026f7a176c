package floorcalc.reference.port;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Questions and answers as JSON, one line each. */
final class JsonForm {
  private static final ObjectMapper JSON = JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
      .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES).build();

  private JsonForm() {}

  static String line(Question question) {
    ObjectNode node = JSON.createObjectNode().put("calculation", question.calculation());
    ObjectNode inputs = node.putObject("inputs");
    question.inputs().forEach((name, input) -> inputs.set(name, tree(input)));
    return node.toString();
  }

  private static JsonNode tree(Object input) {
    if (input instanceof List<?> parts) {
      ArrayNode array = JSON.createArrayNode();
      parts.forEach(part -> array.add(tree(part)));
      return array;
    }
    return JSON.getNodeFactory().textNode((String) input);
  }

  static String line(Optional<Answer> answer) {
    if (answer.isEmpty()) {
      return JSON.createObjectNode().put("unknown", true).toString();
    }
    ObjectNode node = JSON.createObjectNode();
    ObjectNode figures = node.putObject("figures");
    answer.get().figures().forEach(figures::put);
    return node.toString();
  }

  static String refused(String why) {
    return JSON.createObjectNode().put("refused", why).toString();
  }

  static Question question(String line) {
    JsonNode node = object(line);
    if (!node.path("calculation").isTextual() || !node.path("inputs").isObject()) {
      throw new IllegalArgumentException("a question has a text \"calculation\" and an object \"inputs\", but this is " + line);
    }
    Question question = Question.of(node.get("calculation").textValue());
    for (Map.Entry<String, JsonNode> input : node.get("inputs").properties()) {
      question = with(question, input.getKey(), input.getValue());
    }
    return question;
  }

  private static Question with(Question question, String name, JsonNode input) {
    if (input.isTextual()) {
      return question.with(name, input.textValue());
    }
    if (input.isArray() && !input.isEmpty() && input.get(0).isArray()) {
      List<List<String>> rows = new ArrayList<>();
      input.forEach(row -> rows.add(texts(name, row)));
      return question.withTable(name, rows);
    }
    return question.withList(name, texts(name, input));
  }

  private static List<String> texts(String name, JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(part -> {
      if (!part.isTextual()) {
        throw new IllegalArgumentException("input " + name + " must be a text, a list of texts or a table of texts, but has " + part);
      }
      texts.add(part.textValue());
    });
    if (!list.isArray()) {
      throw new IllegalArgumentException("input " + name + " must be a text, a list of texts or a table of texts, but is " + list);
    }
    return texts;
  }

  /** Reads an answer; a refusal is an answer without figures. */
  static Optional<Answer> answer(String line) {
    JsonNode node = object(line);
    if (node.path("unknown").asBoolean(false)) {
      return Optional.empty();
    }
    if (node.path("refused").isTextual()) {
      return Optional.of(Answer.empty());
    }
    if (!node.path("figures").isObject()) {
      throw new IllegalArgumentException("an answer has \"figures\", \"unknown\" or \"refused\", but this is " + line);
    }
    Answer answer = Answer.empty();
    for (Map.Entry<String, JsonNode> figure : node.get("figures").properties()) {
      // A port may write numbers as JSON numbers.
      answer = answer.with(figure.getKey(), figure.getValue().isNumber() ? figure.getValue().decimalValue().toPlainString()
          : figure.getValue().asText());
    }
    return Optional.of(answer);
  }

  private static JsonNode object(String line) {
    try {
      JsonNode node = JSON.readTree(line);
      if (node == null || !node.isObject()) {
        throw new IllegalArgumentException("a line must be one JSON object, but this is \"" + line + "\"");
      }
      return node;
    } catch (JsonProcessingException broken) {
      throw new IllegalArgumentException("a line must be one JSON object, but this is \"" + line + "\"", broken);
    }
  }
}
