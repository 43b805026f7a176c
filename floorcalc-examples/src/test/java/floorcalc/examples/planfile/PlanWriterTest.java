package floorcalc.examples.planfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import floorcalc.examples.Demo;
import floorcalc.examples.Docs;
import floorcalc.examples.HandMade;
import floorcalc.measure.Length;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.Row;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanWriterTest {
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);
  private static final Pattern NUMBER = Pattern.compile("[:\\[,] ?(-?[0-9][0-9.eE+-]*)");

  /** The file was read and judged by hand, then pinned: a regression value. */
  @Test
  void handMadePlanIsWrittenAsPinned() throws IOException {
    String written = new String(PlanWriter.write(HandMade.plan("Hall", "Hall")), StandardCharsets.UTF_8);
    assertThat(written).isEqualTo(
        Files.readString(Path.of("src", "test", "resources", "plans", "hand-made.json"), StandardCharsets.UTF_8));
  }

  @Test
  void handMadePlanKeepsToTheSchema() {
    assertThat(Docs.faultsOfPlan(PlanWriter.write(HandMade.plan("Hall \" \\ \u2028 é", "Hall")))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.HOUSE, Demo.LOFT, Demo.PARLOUR})
  void demoPlansKeepToTheSchema(String demo) throws IOException {
    assertThat(Docs.faultsOfPlan(PlanWriter.write(Demo.plan(demo)))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.HOUSE, Demo.LOFT, Demo.PARLOUR})
  void eachLengthReadsBackToTheNanometre(String demo) throws IOException {
    FloorPlan plan = Demo.plan(demo);
    JsonNode json = MAPPER.readTree(PlanWriter.write(plan));
    List<Length> written = new ArrayList<>();
    List<Length> held = new ArrayList<>();
    for (int b = 0; b < plan.bays().size(); b++) {
      Bay bay = plan.bays().get(b);
      JsonNode bayJson = json.get("bays").get(b);
      ring(bay.laid().shell(), bayJson.get("laid").get("shell"), held, written);
      for (int r = 0; r < bay.rows().size(); r++) {
        Row row = bay.rows().get(r);
        for (int p = 0; p < row.pieces().size(); p++) {
          LaidPiece piece = row.pieces().get(p);
          JsonNode pieceJson = bayJson.get("rows").get(r).get("pieces").get(p);
          assertThat(pieceJson.get("piece").asText()).isEqualTo(piece.piece());
          ring(piece.outline(), pieceJson.get("outline"), held, written);
          held.add(piece.from().alongFrom());
          held.add(piece.from().alongTo());
          pieceJson.get("from").get("along").forEach(end -> written.add(length(end)));
        }
      }
    }
    assertThat(written).isEqualTo(held);
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.HOUSE, Demo.LOFT, Demo.PARLOUR})
  void numbersHaveSixDecimalsAtMostAndNoExponent(String demo) throws IOException {
    Matcher numbers = NUMBER.matcher(new String(PlanWriter.write(Demo.plan(demo)), StandardCharsets.UTF_8)
        .replaceAll("\"([^\"\\\\]|\\\\.)*\"", "\"\""));
    int count = 0;
    while (numbers.find()) {
      assertThat(numbers.group(1)).matches("-?(0|[1-9][0-9]*)(\\.[0-9]{0,5}[1-9])?");
      count++;
    }
    assertThat(count).isGreaterThan(400);
  }

  /** Numbers are compared digit by digit: 1.5 is not 1.50. */
  @ParameterizedTest
  @ValueSource(strings = {Demo.FLAT, Demo.HOUSE, Demo.LOFT, Demo.PARLOUR})
  void onOneLineItIsTheSameTreeInAsciiAlone(String demo) throws IOException {
    String line = new String(PlanWriter.writeOnOneLine(Demo.plan(demo)), StandardCharsets.UTF_8);
    assertThat(line.matches("[ -~]+\n")).isTrue();
    assertThat(MAPPER.readTree(line)).isEqualTo(MAPPER.readTree(PlanWriter.write(Demo.plan(demo))));
  }

  @Test
  void linesEndWithALineFeedAlone() throws IOException {
    String json = new String(PlanWriter.write(Demo.plan(Demo.LOFT)), StandardCharsets.UTF_8);
    assertThat(json).doesNotContain("\r").doesNotContain("\t").endsWith("}\n");
    assertThat(json.lines().noneMatch(line -> line.endsWith(" "))).isTrue();
  }

  @Test
  void sitesAreAmongTheChecks() throws IOException {
    List<String> site = new ArrayList<>();
    MAPPER.readTree(PlanWriter.write(Demo.plan(Demo.HOUSE))).get("checks").forEach(check -> site.add(check.get("met") + " "
        + check.get("check").asText() + ", " + check.get("found").asText() + ", " + check.get("limit").asText()));
    assertThat(site).contains("true Study: relative humidity of the air, 48 %, 45 % to 60 %")
        .contains("null Living room: moisture of the subfloor, , at most 4 % (concrete or screed); to do: measure the subfloor;"
            + " how long ago it was laid is no reading")
        .anyMatch(line -> line.startsWith("false Study: moisture of the subfloor by CM, screed, binder not stated, heated (3300 mm,"
            + " 2900 mm), 2.1 CM-%"));
  }

  private static void ring(Ring ring, JsonNode json, List<Length> held, List<Length> written) {
    ring.corners().forEach(corner -> {
      held.add(corner.x());
      held.add(corner.y());
    });
    json.forEach(corner -> corner.forEach(value -> written.add(length(value))));
  }

  private static Length length(JsonNode number) {
    return Length.ofNanometres(number.decimalValue().movePointRight(6).longValueExact());
  }
}
