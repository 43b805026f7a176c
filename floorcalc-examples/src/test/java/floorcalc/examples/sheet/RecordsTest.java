package floorcalc.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.BoardGoods;
import floorcalc.examples.Demo;
import floorcalc.examples.HandMade;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.job.Tape;
import floorcalc.measure.Length;
import floorcalc.outline.Wkt;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.rules.RuleValue;
import floorcalc.working.Source;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The checklist and the handover page: what stands already, and what is left blank to be filled in. */
class RecordsTest {
  private static final JobFile JOB = HandMade.job("Hall", "Hall");

  private static Element section(JobFile file, FloorPlan plan, String heading) throws Exception {
    String html = new String(JobSheet.of(file, plan), StandardCharsets.UTF_8);
    Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder()
        .parse(new InputSource(new StringReader(html.substring("<!DOCTYPE html>\n".length()))));
    return all(document.getDocumentElement(), "section").stream()
        .filter(section -> section.getAttribute("aria-labelledby").equals("s-" + heading)).findFirst().orElseThrow();
  }

  private static Element house(String heading) throws Exception {
    return section(Demo.job(Demo.HOUSE), Demo.plan(Demo.HOUSE), heading);
  }

  private static List<Element> all(Element parent, String tag) {
    NodeList nodes = parent.getElementsByTagName(tag);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  private static List<String> texts(Element parent, String tag) {
    return all(parent, tag).stream().map(Element::getTextContent).toList();
  }

  /** The boards of the house are engineered, 185 mm wide: 0.5 % is 0.925 mm, but at most 0.5 mm. */
  @Test
  void theHandoverSaysWhatALaidFloorMayDeviate() throws Exception {
    Element permitted = house("permitted");
    assertThat(texts(permitted, "th")).contains("lipping between boards", "cupping of the boards", "joint between boards");
    assertThat(texts(permitted, "td")).contains("at most 0.2 mm", "at most 1 mm")
        .anySatisfy(limit -> assertThat(limit).contains("0.5 % of the width, at most 0.5 mm"))
        .anySatisfy(source -> assertThat(source).startsWith("NF DTU 51.11 P1-1, AFNOR, 2009, clause 9.1"));
    assertThat(texts(permitted, "td")).filteredOn(String::isEmpty).as("left blank for what is measured").hasSize(5);
  }

  private static Element table(Element section, String caption) {
    return all(section, "table").stream().filter(table -> !texts(table, "caption").isEmpty()
        && texts(table, "caption").get(0).startsWith(caption)).findFirst().orElseThrow();
  }

  @Test
  void theChecklistHasFourPartsWithBlanks() throws Exception {
    Element checklist = house("checklist");
    assertThat(texts(checklist, "h3")).containsExactly("Before a pack is opened", "Before laying", "While laying", "At the end");
    assertThat(all(checklist, "td").stream().filter(cell -> cell.getAttribute("class").equals("blank"))).hasSizeGreaterThan(20);
    assertThat(checklist.getTextContent()).contains("Packs delivered: ______ of " + Demo.plan(Demo.HOUSE).order().packs())
        .contains("the makers' instructions come first");
  }

  @Test
  void readingsOfTheJobStandBesideTheBlanksForTheDay() throws Exception {
    List<String> rows = texts(table(house("checklist"), "Readings"), "tr");
    assertThat(rows).hasSize(3);
    // Of the driest and the dampest season, 45 % and 60 %, nothing can be read on the day.
    assertThat(rows.get(1)).startsWith("Study48 %2.1 CM-%").doesNotContain("60 %").contains("boards 8.13 %");
    assertThat(rows.get(2)).startsWith("Living roomnot measurednot measurednot measured4.3 mm; 2.3 mm");
    assertThat(all(table(house("checklist"), "Readings"), "td")).hasSize(10).allMatch(cell -> cell.getAttribute("class").equals("blank"));
  }

  /** The study has four corners: sqrt(4195^2 + 3620^2) = 5541.02 mm, sqrt(4210^2 + 3605^2) = 5542.57 mm. */
  @Test
  void sizesAreMeasuredAgainWithDiagonalsWhereARoomHasFourCorners() throws Exception {
    List<String> rows = texts(table(house("checklist"), "Sizes"), "tr");
    assertThat(rows.get(1)).isEqualTo("Study4210 × 3620 over all; diagonals 5541 and 5542.6");
    assertThat(rows.get(2)).isEqualTo("Living room6380 × 5460 over all");
  }

  /** Rows of 185 mm: from the far edge of row 1 to that of row 5 are 4 x 185 = 740 mm, of row 19 18 x 185 = 3330 mm. */
  @Test
  void driftIsMeasuredFromTheFarEdgeOfTheFirstRow() throws Exception {
    List<String> rows = texts(table(house("checklist"), "Drift"), "tr");
    assertThat(rows.subList(1, 5)).containsExactly("study-15740", "study-1101665", "study-1152590", "study-1193330");
    assertThat(house("checklist").getTextContent()).contains("10 boards pushed together measure ____________ (planned 1850 mm)");
  }

  @Test
  void controlRowsAreFewAndEndAtTheLastWholeRow() {
    assertThat(ChecklistSection.controlRows(2)).isEmpty();
    assertThat(ChecklistSection.controlRows(3)).containsExactly(2);
    assertThat(ChecklistSection.controlRows(6)).containsExactly(5);
    assertThat(ChecklistSection.controlRows(20)).containsExactly(5, 10, 15, 19);
    for (int rows = 0; rows < 3000; rows++) {
      assertThat(ChecklistSection.controlRows(rows)).hasSizeLessThanOrEqualTo(9).doesNotHaveDuplicates().isSorted();
    }
  }

  @Test
  void theHandoverHasEveryPartOfTheRecord() throws Exception {
    Element handover = section(JOB, HandMade.plan("Hall", "Hall"), "handover");
    assertThat(texts(handover, "h3")).containsExactly("Rules used", "Compromises", "Breaks and profiles", "What the laid floor may deviate", "Boards kept back",
        "Cleaning and care", "Signed off");
    assertThat(texts(handover, "li")).contains("T1, T profile, 826 mm: door D1");
    assertThat(handover.getTextContent()).contains("1 board of the same batch for repairs, and 2 over from the packs.");
    assertThat(texts(table(handover, "Readings"), "tr")).anyMatch(row -> row.startsWith("moisture") && row.endsWith("open"));
  }

  /** Rooms that were read alike stand together; of each it says what it came to. */
  @Test
  void readingsStandLimitByLimitWithWhatEachRoomCameTo() throws Exception {
    List<String> rows = texts(table(house("handover"), "Readings"), "tr");
    assertThat(rows).anyMatch(row -> row.startsWith("relative humidity of the air45 %") && row.contains("Study: 48 %, metLiving room: not measured, open"))
        .anyMatch(row -> row.startsWith("moisture of the subfloor by CM") && row.endsWith("mean 1.85 CM-%, NOT MET"))
        .anyMatch(row -> row.startsWith("relative humidity of the air driest season") && row.endsWith("Study: 45 %, met"));
  }

  @Test
  void everyRuleStandsThereWithItsSource() throws Exception {
    List<String> rows = texts(table(house("handover"), "Rules"), "tr");
    List<RuleValue<?>> rules = Demo.job(Demo.HOUSE).job().rules().all();
    assertThat(rows).hasSize(rules.size() + 1);
    for (int i = 0; i < rules.size(); i++) {
      assertThat(rows.get(i + 1)).startsWith(rules.get(i).key().meaning()).contains(rules.get(i).source().toString());
    }
  }

  /** Common practice keeps 10 mm; the job asks for 12 mm, so the record shows both and a line for who decided it. */
  @Test
  void whatTheJobDecidedItselfStandsBesideWhatItsSetSays() throws Exception {
    BoardGoods goods = BoardGoods.of(Length.ofMillimetres(2200), Length.ofMillimetres(185), Length.ofMillimetres(14), 6);
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), Length.ofMillimetres(185))
        .with(LayingRules.EXPANSION_GAP, Length.ofMillimetres(12), Source.GIVEN)
        .with(LayingRules.SAW_KERF, RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), Length.ofMillimetres(185)).value(LayingRules.SAW_KERF),
            Source.GIVEN);
    FloorJob job = FloorJob.of("Hall", goods).rules(rules).room(Room.of("Hall", Wkt.parse("POLYGON ((0 0, 5020 0, 5020 300, 0 300, 0 0))")))
        .build();
    Element table = table(section(new JobFile(job, Tape.METRIC), HandMade.plan("Hall", "Hall"), "handover"), "Rules");
    assertThat(texts(table, "tr")).anyMatch(row -> row.startsWith("gap at everything fixed") && row.contains("12 mm") && row.endsWith("10 mm"))
        .anyMatch(row -> row.startsWith("width of a saw cut") && row.endsWith("as the set has it"));
    assertThat(all(table, "span").stream().filter(line -> line.getAttribute("class").equals("line"))).as("a line for each decision").hasSize(2);
  }

  @Test
  void compromisesAreCountedAndAccepted() throws Exception {
    Element handover = section(JOB, HandMade.plan("Hall", "Hall"), "handover");
    assertThat(texts(handover, "tr")).contains("shortest start or end piece3001002the run is short");
    assertThat(section(Demo.job(Demo.HOUSE), withoutCompromises(), "handover").getTextContent())
        .contains("None: the plan keeps its rules everywhere.");
  }

  private static FloorPlan withoutCompromises() throws IOException {
    FloorPlan plan = Demo.plan(Demo.HOUSE);
    assertThat(plan.compromises()).isEmpty();
    return plan;
  }

  @Test
  void lengthsOfAJobInInchesAreInInches() throws Exception {
    assertThat(section(Demo.job(Demo.LOFT), Demo.plan(Demo.LOFT), "checklist").getTextContent()).contains("Spacers of 1/2\" (12.7 mm)");
  }

  @Test
  void careNamesNoProduct() throws Exception {
    Element care = all(house("handover"), "section").stream().filter(part -> part.getAttribute("aria-labelledby").equals("s-care")).findFirst().orElseThrow();
    assertThat(texts(care, "p").get(0)).isEqualTo("Common practice, no source; what the maker of the boards says comes first.");
    assertThat(texts(care, "li")).hasSize(8).noneMatch(line -> line.matches(".*[®™].*"));
  }
}
