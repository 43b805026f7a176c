package floorcalc.examples;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.examples.planfile.PlanWriter;
import floorcalc.measure.Length;
import floorcalc.outline.Wkt;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The step that the page on the working shows in JSON is one of the plan that the page makes. */
class WorkingPageTest {
  @Test
  void theStepInJsonIsOneOfThePlan() throws IOException {
    String page = Files.readString(Path.of("../docs/working.md"), UTF_8);
    int from = page.indexOf("```json") + 8;
    ObjectMapper json = new ObjectMapper();
    JsonNode shown = json.readTree(page.substring(from, page.indexOf("```", from)));
    BoardGoods goods = BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);
    Room study = Room.of("Study", Wkt.parse("POLYGON ((0 0, 4210 0, 4195 3620, 0 3605, 0 0))"));
    JsonNode plan = json.readTree(PlanWriter.write(FloorPlanner.plan(FloorJob.of("Study floor", goods).room(study).build())));
    assertThat(plan.path("materials").path(0).path("working")).contains(shown);
  }
}
