package floorcalc.examples.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import floorcalc.examples.Docs;
import floorcalc.flatness.ToleranceSet;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The published schema names the bounds that the reader keeps. */
class JobSchemaTest {
  private static JsonNode schema() throws IOException {
    return new ObjectMapper().readTree(Docs.page("job.schema.json"));
  }

  private static JsonNode resolved(JsonNode field) throws IOException {
    return field.has("$ref") ? schema().at(field.get("$ref").asText().substring(1)) : field;
  }

  private static void bounds(JsonNode field, LengthRange range) throws IOException {
    JsonNode number = resolved(field).get("anyOf").get(0);
    if (range.least().toNanometres() == 1) {
      assertThat(number.get("exclusiveMinimum").decimalValue()).isEqualByComparingTo("0");
    } else {
      assertThat(number.get("minimum").decimalValue()).isEqualByComparingTo(millimetres(range.least()));
    }
    assertThat(number.get("maximum").decimalValue()).isEqualByComparingTo(millimetres(range.most()));
  }

  private static BigDecimal millimetres(Length length) {
    return new BigDecimal(length.toMillimetreString());
  }

  @Test
  void boundsOfTheRules() throws IOException {
    JsonNode laying = schema().at("/$defs/laying/properties");
    for (RuleKey<?> key : LayingRules.keys()) {
      JsonNode field = laying.at("/" + key.name().replace(".", "/properties/"));
      assertThat(field.isMissingNode()).as(key.name()).isFalse();
      if (key.equals(LayingRules.SPARE_SHARE)) {
        assertThat(field.get("minimum").decimalValue()).isEqualByComparingTo(LayingRules.SPARE_SHARE.least());
        assertThat(field.get("maximum").decimalValue()).isEqualByComparingTo(LayingRules.SPARE_SHARE.most());
      } else if (key.equals(LayingRules.AT_DOORWAYS)) {
        assertThat(field.get("enum")).map(JsonNode::asText).containsExactly("break", "run-through");
      } else {
        bounds(field, new LengthRange((Length) key.least(), (Length) key.most()));
      }
    }
  }

  @Test
  void boundsOfBoardsAndPlaces() throws IOException {
    JsonNode board = schema().at("/$defs/board/properties");
    bounds(board.get("length"), LengthRange.BOARD_LENGTH);
    bounds(board.get("coverWidth"), LengthRange.COVER_WIDTH);
    bounds(board.get("thickness"), LengthRange.THICKNESS);
    bounds(schema().at("/$defs/coordinate"), LengthRange.ANYWHERE);
    bounds(schema().at("/$defs/pipe/properties/diameter"), LengthRange.THICKNESS);
    bounds(schema().at("/$defs/door/properties/beyond/properties/higherBy"), LengthRange.HEIGHT);
    bounds(schema().at("/$defs/deviation"), LengthRange.DEVIATION);
    bounds(schema().at("/$defs/deviationPerMetre"), LengthRange.DEVIATION_PER_METRE);
    JsonNode turn = schema().at("/$defs/survey/properties/uncertainty/properties/turn");
    assertThat(turn.get("minimum").decimalValue()).isEqualByComparingTo(JobLimits.LEAST_TURN_DEVIATION);
    assertThat(turn.get("maximum").decimalValue()).isEqualByComparingTo(JobLimits.MOST_TURN_DEVIATION);
    assertThat(schema().at("/$defs/perPack/maximum").intValue()).isEqualTo(JobLimits.PER_PACK);
  }

  @Test
  void countsOfThings() throws IOException {
    assertThat(schema().at("/properties/rooms/maxItems").intValue()).isEqualTo(JobLimits.ROOMS);
    assertThat(schema().at("/$defs/ring/maxItems").intValue()).isEqualTo(JobLimits.CORNERS);
    assertThat(schema().at("/$defs/room/properties/voids/maxItems").intValue()).isEqualTo(JobLimits.VOIDS);
    assertThat(schema().at("/$defs/room/properties/doors/maxItems").intValue()).isEqualTo(JobLimits.DOORS);
    assertThat(schema().at("/$defs/room/properties/pipes/maxItems").intValue()).isEqualTo(JobLimits.PIPES);
    JsonNode survey = schema().at("/$defs/survey/properties");
    assertThat(survey.at("/walls/maxItems").intValue()).isEqualTo(JobLimits.WALLS);
    assertThat(survey.at("/arcs/maxItems").intValue()).isEqualTo(JobLimits.WALLS);
    assertThat(survey.at("/ties/maxItems").intValue()).isEqualTo(JobLimits.TIES);
    assertThat(survey.at("/offsets/maxItems").intValue()).isEqualTo(JobLimits.OFFSETS);
    assertThat(schema().at("/$defs/surveyNumber/maximum").intValue()).isEqualTo(JobLimits.WALLS);
    assertThat(schema().at("/$defs/wallNumber/maximum").intValue()).isEqualTo(JobLimits.CORNERS);
    assertThat(schema().at("/$defs/board/properties/mix/maxItems").intValue()).isEqualTo(JobLimits.MIXED_LENGTHS);
    assertThat(schema().at("/$defs/text/maxLength").intValue()).isEqualTo(JobLimits.TEXT);
  }

  @Test
  void namesOfTheToleranceSets() throws IOException {
    List<String> names = new ArrayList<>();
    schema().at("/$defs/site/properties/flatness/enum").forEach(name -> names.add(name.asText()));
    assertThat(names).isEqualTo(ToleranceSet.all().stream().map(ToleranceSet::name).toList());
  }

  /** The pattern for tape notation takes what the library reads and refuses what it refuses. */
  @ParameterizedTest
  @ValueSource(strings = {"3.2 m", "185 mm", "12' 7 5/8\"", "10 in", "0", "5 3/8\"", "7½ in", "-4 mm", ".5 m", "1' 0\"",
      "12′ 7″", "12 ft 7 in", "12ft-7in", "3/4\"", "3 ' 4 ''", "6 FT"})
  void tapeNotation(String text) throws IOException {
    String pattern = schema().at("/$defs/tape/pattern").asText();
    Length.parse(text);
    assertThat(text).matches(pattern);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {"2200", "3,2 m", "12'7", "m", "1 yd", "1.2.3 m", "` `"})
  void noTapeNotation(String text) throws IOException {
    assertThat(text).doesNotMatch(schema().at("/$defs/tape/pattern").asText());
  }
}
