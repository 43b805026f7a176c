package floorcalc.examples.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.bays.ExpansionBreak;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.job.JobReader;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.RoomBreak;
import java.util.List;
import org.junit.jupiter.api.Test;

class TransitionsSectionTest {
  private static final String HEAD = """
      {"format": "floorcalc-job/1", "title": "Doors (invented)",
       "board": {"length": 2200, "coverWidth": 185, "thickness": 14, "perPack": 6, "construction": "engineered"},
       "rooms": [{"name": "Study", "outline": [[0, 0], [4000, 0], [4000, 3000], [0, 3000]], "doors": [""";

  private static JobFile job(String doors) {
    return JobReader.read((HEAD + doors + "]}]}").getBytes(UTF_8));
  }

  private static String section(JobFile job, FloorPlan plan) {
    Html html = new Html();
    new TransitionsSection(html, new Figures(job.tape()), job.job(), plan).write();
    return html.toString();
  }

  private static String section(String doors) {
    JobFile job = job(doors);
    return section(job, FloorPlanner.plan(job.job()));
  }

  /** 14 mm of board and 1 mm: cut at 15 mm. A leaf at 24 mm leaves 10 mm, 12.7 mm are asked for: 2.7 mm lacking. */
  @Test
  void aDoor() {
    String section = section("{\"name\": \"D1\", \"from\": [500, 0], \"to\": [1300, 0], \"leadsTo\": \"Bath\", \"casing\": \"cut\","
        + " \"leaf\": {\"aboveSubfloor\": 24}, \"beyond\": {\"finish\": \"tile\", \"higherBy\": -4}}");
    assertThat(section).contains("The floor stands 14 mm above the bare subfloor: board (14 mm)").contains("Not stated: underlay")
        .contains("<bdi>Study</bdi>, <bdi>D1</bdi> <small>to <bdi>Bath</bdi></small></th><td>E1 end</td><td>800</td>"
            + "<td>tile, 4 mm lower: falls away</td><td>cut 15 mm above the subfloor</td>"
            + "<td class=\"no\">10 mm left under it, 2.7 mm lacking</td><td>another finish beyond, 4 mm lower beyond,");
  }

  @Test
  void fireDoorAndNothingKnown() {
    String section = section("{\"name\": \"F\", \"from\": [500, 0], \"to\": [1300, 0], \"fire\": true, \"leaf\": {\"aboveSubfloor\": 12}},"
        + "{\"name\": \"D\", \"from\": [2000, 0], \"to\": [2800, 0]},"
        + "{\"name\": \"S\", \"from\": [500, 3000], \"to\": [1300, 3000], \"casing\": \"cannot be cut\"}");
    assertThat(section).contains("<td>FIRE DOOR: leave alone, ask</td><td class=\"no\">floor 2 mm too high, 14.7 mm lacking</td>")
        .contains("<td>T2</td><td>800</td><td>level</td><td>cut 15 mm above the subfloor, if they can be</td><td>not measured</td>")
        .contains("<td>not cut: keep the gap, seal it</td>");
  }

  @Test
  void breaks() {
    JobFile job = job("");
    FloorPlan plan = FloorPlanner.plan(job.job());
    assertThat(section(job, plan.withBreaks(List.of()))).isEmpty();
    String section = section(job, plan.withBreaks(List.of(new RoomBreak("Study",
        ExpansionBreak.given(Point.ofMillimetres(2000, 0), Point.ofMillimetres(2000, 3000)), Length.ofMillimetres(20)))));
    assertThat(section).contains("<bdi>Study</bdi></th><td>T1</td><td>3000</td><td>20</td><td>(2000 mm, 0 mm)</td><td>(2000 mm, 3000 mm)</td>"
        + "<td>given in the job</td>");
  }
}
