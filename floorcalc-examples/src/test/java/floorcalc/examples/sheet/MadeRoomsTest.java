package floorcalc.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.audit.PlanAudit;
import floorcalc.boards.BoardGoods;
import floorcalc.drawing.FloorDrawing;
import floorcalc.drawing.Measures;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.job.Tape;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * Rooms made to be split, from plan to paper. How many bays a right-angled room needs at least, where every inner corner is cut, is
 * n / 2 + h - g - 1 for n corners, h voids and g independent straight lines that join two inner corners (Ferrari, Sankar and Sklansky,
 * 1984, CVGIP 28:367-382; the formula and the citation from memory, found again by an exact cover of each shape): an L 6 / 2 - 1 = 2, a T 8 / 2 - 1 - 1 = 2, a U 8 / 2 - 1 = 3, an H 12 / 2 - 2 - 1 = 3, a plus 12 / 2 - 2 - 1 = 3, a
 * comb with three teeth 12 / 2 - 1 - 1 = 4, a stair of three steps 8 / 2 - 1 = 3.
 */
class MadeRoomsTest {
  private static final BoardGoods BOARDS =
      BoardGoods.of(Length.ofMillimetres(2200), Length.ofMillimetres(185), Length.ofMillimetres(14), 6);

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '|', value = {
      "L|2|0 0, 6400 0, 6400 3100, 3900 3100, 3900 5600, 0 5600",
      "T|2|0 0, 6600 0, 6600 2400, 4400 2400, 4400 5200, 2200 5200, 2200 2400, 0 2400",
      "U|3|0 0, 7200 0, 7200 5000, 5000 5000, 5000 2200, 2300 2200, 2300 4600, 0 4600",
      "H|3|0 0, 2400 0, 2400 2000, 4800 2000, 4800 0, 7200 0, 7200 6000, 4800 6000, 4800 4000, 2400 4000, 2400 6000, 0 6000",
      "plus|3|2000 0, 4200 0, 4200 1900, 6200 1900, 6200 4100, 4200 4100, 4200 6000, 2000 6000, 2000 4100, 0 4100, 0 1900, 2000 1900",
      "comb|4|0 0, 8000 0, 8000 4800, 6400 4800, 6400 2000, 4800 2000, 4800 4800, 3200 4800, 3200 2000, 1600 2000, 1600 4800, 0 4800",
      "stair|3|0 0, 6000 0, 6000 1800, 4000 1800, 4000 3600, 2000 3600, 2000 5400, 0 5400"})
  void aRoomIsSplitPlannedAuditedAndPutOnPaper(String shape, int least, String corners) throws Exception {
    Outline outline = Wkt.parse("POLYGON ((" + corners + ", " + corners.split(",")[0] + "))");
    FloorJob job = FloorJob.of("Room like an " + shape + " (invented)", BOARDS).room(Room.of("Room", outline)).build();
    FloorPlan plan = FloorPlanner.plan(job);

    assertThat(PlanAudit.of(job, plan).breaches()).isEmpty();
    assertThat(plan.findings()).noneMatch(finding -> finding.code().equals("bay-must-be-split"));
    assertThat(plan.bays()).hasSizeGreaterThanOrEqualTo(least);
    double laid = plan.bays().stream().mapToDouble(bay -> bay.laid().area().toSquareMetres()).sum();
    assertThat(laid).isLessThan(outline.area().toSquareMetres()).isGreaterThan(0.97 * outline.area().toSquareMetres());

    Document sheet = parse(new String(JobSheet.of(new JobFile(job, Tape.METRIC), plan), StandardCharsets.UTF_8));
    List<String> headings = texts(sheet, "h2");
    assertThat(headings).contains("Room its bays");
    for (Bay bay : plan.bays()) {
      assertThat(headings).contains("Room bay " + bay.bay());
    }
    String overview = FloorDrawing.ofRoom(job, plan, "Room", Measures.MILLIMETRES).toSvg();
    for (int i = 0; i < plan.profiles().size(); i++) {
      assertThat(overview).contains("id=\"room-Room-profile-" + plan.profiles().get(i).letter() + (i + 1) + "\"");
    }
    assertThat(plan.breaks()).hasSizeGreaterThanOrEqualTo(least - 1);
    assertThat(plan.profiles()).as("a profile over each break").hasSameSizeAs(plan.breaks()).allMatch(profile -> profile.kind().equals("T"));
    assertThat(texts(sheet, "li").stream().filter(line -> line.matches("[TREN][0-9]+, .*"))).hasSize(plan.profiles().size());
  }

  private static Document parse(String html) throws Exception {
    return DocumentBuilderFactory.newInstance().newDocumentBuilder()
        .parse(new InputSource(new StringReader(html.substring("<!DOCTYPE html>\n".length()))));
  }

  private static List<String> texts(Document document, String tag) {
    NodeList nodes = document.getElementsByTagName(tag);
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      texts.add(nodes.item(i).getTextContent());
    }
    return texts;
  }
}
