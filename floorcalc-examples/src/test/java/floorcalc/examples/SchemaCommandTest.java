package floorcalc.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SchemaCommandTest {
  @ParameterizedTest
  @ValueSource(strings = {"job", "plan", "refusal"})
  void printsWhatTheDocumentationPublishes(String format) throws IOException {
    assertThat(Ran.with("schema", format)).isEqualTo(new Ran(0, Docs.page(format + ".schema.json"), ""));
  }

  @Test
  void thereAreNoOthers() {
    assertThat(SchemaCommand.FORMATS).containsExactly("job", "plan", "refusal");
    assertThat(Ran.with("schema", "../job")).isEqualTo(new Ran(2, "", "[../job]: must be job, plan or refusal\n"));
    assertThat(Ran.with("schema").exit()).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"job", "plan", "refusal"})
  void eachSchemaSaysWhichVersionItIsAndWhatEachFieldHolds(String format) throws IOException {
    JsonNode schema = new ObjectMapper().readTree(Docs.page(format + ".schema.json"));
    assertThat(schema.get("$schema").textValue()).isEqualTo("https://json-schema.org/draft/2020-12/schema");
    assertThat(schema.get("$id").textValue()).isEqualTo("https://floorcalc.example/schema/" + format + "/1");
    assertThat(schema.get("$comment").textValue()).startsWith("Version 1 of the format. ");
    assertThat(schema.get("title")).isEqualTo(schema.at("/properties/format/const"));
    List<String> bare = new ArrayList<>();
    withoutDescription(schema, "", bare);
    assertThat(bare).isEmpty();
  }

  private static void withoutDescription(JsonNode node, String place, List<String> bare) {
    // What narrows a field under a condition describes none.
    if (place.endsWith("/if") || place.endsWith("/then") || place.endsWith("/dependentSchemas")) {
      return;
    }
    if (place.endsWith("/properties")) {
      for (Map.Entry<String, JsonNode> field : node.properties()) {
        if (!field.getValue().path("description").asText().endsWith(".")) {
          bare.add(place + "/" + field.getKey());
        }
      }
    }
    for (Map.Entry<String, JsonNode> part : node.properties()) {
      withoutDescription(part.getValue(), place + "/" + part.getKey(), bare);
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      withoutDescription(node.get(i), place + "/" + i, bare);
    }
  }
}
