package floorcalc.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.examples.Demo;
import floorcalc.examples.HandMade;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.job.Tape;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.plan.Bay;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The sheet is written so that an XML parser reads it as well, which tells that every element is closed. */
class JobSheetTest {
  private static String sheet(String demo) throws IOException {
    return new String(JobSheet.of(Demo.job(demo), Demo.plan(demo)), StandardCharsets.UTF_8);
  }

  private static Document parse(String html) throws Exception {
    assertThat(html).startsWith("<!DOCTYPE html>\n");
    return DocumentBuilderFactory.newInstance().newDocumentBuilder()
        .parse(new InputSource(new StringReader(html.substring("<!DOCTYPE html>\n".length()))));
  }

  private static List<Element> all(Document document, String tag) {
    NodeList nodes = document.getElementsByTagName(tag);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  private static List<String> texts(Document document, String tag) {
    return all(document, tag).stream().map(Element::getTextContent).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.FLAT, Demo.HOUSE, Demo.LOFT, Demo.PARLOUR})
  void sheetIsWellFormedAndEachIdStandsOnce(String demo) throws Exception {
    Document document = parse(sheet(demo));
    Set<String> ids = new HashSet<>();
    for (Element element : all(document, "*")) {
      if (element.hasAttribute("id")) {
        assertThat(ids.add(element.getAttribute("id"))).as(element.getAttribute("id")).isTrue();
      }
    }
    for (Element element : all(document, "*")) {
      for (String id : element.getAttribute("aria-labelledby").split(" ")) {
        assertThat(id.isEmpty() || ids.contains(id)).as(id).isTrue();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.FLAT, Demo.HOUSE, Demo.LOFT, Demo.PARLOUR})
  void sheetCanBeReadAloud(String demo) throws Exception {
    Document document = parse(sheet(demo));
    assertThat(document.getDocumentElement().getAttribute("lang")).isEqualTo("en");
    assertThat(texts(document, "title").get(0)).startsWith("Job sheet: Gullhaven");
    assertThat(texts(document, "h1")).hasSize(1);
    assertThat(all(document, "th")).isNotEmpty()
        .allMatch(th -> th.getAttribute("scope").matches("col|row|rowgroup"));
    assertThat(all(document, "table").stream().filter(table -> table.getElementsByTagName("thead").getLength() == 1))
        .hasSameSizeAs(all(document, "table"));
    for (Element svg : all(document, "svg")) {
      assertThat(svg.getAttribute("aria-hidden").equals("true") || svg.getElementsByTagName("title").getLength() > 0
          && svg.getElementsByTagName("desc").getLength() > 0).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {Demo.FLAT, Demo.HOUSE, Demo.LOFT, Demo.PARLOUR})
  void nothingIsLoadedFromElsewhere(String demo) throws Exception {
    Document document = parse(sheet(demo));
    for (Element element : all(document, "*")) {
      assertThat(element.getTagName()).isNotIn("script", "link", "img", "iframe", "object", "embed", "base", "form");
      assertThat(element.hasAttribute("src")).isFalse();
      assertThat(element.getAttribute("href")).matches("(#.*)?");
    }
    assertThat(sheet(demo)).doesNotContain("url(http").doesNotContain("@import");
  }

  @Test
  void firstComesWhatToBringAndThePartsFollowInOrder() throws Exception {
    FloorPlan plan = Demo.plan(Demo.HOUSE);
    Document document = parse(sheet(Demo.HOUSE));
    assertThat(texts(document, "h2")).containsExactly("Bring and begin", "Cautions", "Order", "Where the boards go",
        "Before a board is opened", "Checks and compromises", "Doors and transitions", "Study bay study-1", "Living room its bays",
        "Living room bay living-room-1", "Living room bay living-room-2", "Checklist", "Handover", "Working");
    assertThat(texts(document, "strong")).startsWith(Integer.toString(plan.order().packs()),
        Integer.toString(plan.order().boardsUsed()), "10 mm", Integer.toString(plan.compromises().size()));
  }

  @Test
  void eachPieceThatIsSawnHasALineAndWholeBoardsAreCounted() throws Exception {
    FloorPlan plan = Demo.plan(Demo.HOUSE);
    Document document = parse(sheet(Demo.HOUSE));
    CutCard card = CutCard.of(Demo.job(Demo.HOUSE).job(), plan);
    List<Element> cuts = all(document, "table").stream().filter(table -> table.getAttribute("class").matches("cut( apart)?")).toList();
    int sawn = 0;
    int whole = 0;
    int rows = 0;
    for (Element table : cuts) {
      rows += table.getElementsByTagName("tbody").getLength();
      NodeList cells = table.getElementsByTagName("td");
      for (int i = 0; i < cells.getLength(); i++) {
        String text = cells.item(i).getTextContent();
        if (text.matches("(run [0-9]+: )?[0-9]+ whole boards?")) {
          whole += Integer.parseInt(text.replaceAll("run [0-9]+: ", "").replaceAll(" whole boards?", ""));
        } else if (text.matches("(run [0-9]+: )?[0-9]+ whole lengths .*")) {
          sawn += Integer.parseInt(text.replaceAll("run [0-9]+: ", "").replaceAll(" whole lengths .*", "")) - 1;
        } else if (text.startsWith("new ") || text.startsWith("rest of ")) {
          sawn++;
        }
      }
    }
    assertThat(whole).isEqualTo((int) card.lines().stream().filter(CutLine::isWholeBoard).count());
    assertThat(sawn + whole).isEqualTo(card.lines().size());
    assertThat(rows).isEqualTo(plan.bays().stream().mapToInt(bay -> bay.rows().size()).sum());
  }

  @Test
  void roomThatMustBeSplitIsCalledOutFirst() throws Exception {
    FloorJob whole = Demo.job(Demo.HOUSE).job();
    FloorJob job = whole.withRooms(whole.rooms().stream().map(room -> room.withBreaks(List.of())).toList());
    String sheet = new String(JobSheet.of(new JobFile(job, Tape.METRIC), FloorPlanner.plan(job)), StandardCharsets.UTF_8);
    assertThat(sheet).contains("<p class=\"stop\"><b>Do not lay it like this.</b> living-room-1 bends round");
  }

  @Test
  void whatIsNotKeptAndWhatIsOpenStandFirstRoomByRoom() throws Exception {
    String sheet = sheet(Demo.HOUSE);
    Document document = parse(sheet);
    List<Element> sites = all(document, "table").stream().filter(table -> table.getAttribute("class").equals("site")).toList();
    assertThat(sites).hasSize(2);
    assertThat(rows(sites.get(0)).get(0)).startsWith("NOT MET").contains("moisture of the subfloor by CM")
        .contains("2.1 CM-%").contains("do not lay");
    // Of the living room only heights were read: two spans are judged, the third lies between the readings.
    assertThat(rows(sites.get(1)).subList(0, 2)).allMatch(row -> row.startsWith("NOT MET") && row.contains("flatness under"));
    assertThat(rows(sites.get(1)).subList(2, rows(sites.get(1)).size())).hasSize(5).allMatch(row -> row.startsWith("open"));
    assertThat(sheet).contains("<bdi>Living room</bdi>: not ready; 2 not met, 5 open, 0 met").contains("<bdi>Study</bdi>: not ready; ");
    assertThat(sheet.indexOf("Before a board is opened")).isLessThan(sheet.indexOf("Checks and compromises"));
  }

  /** 8.1333 % and 8.9278 % are more than a meter shows; an edge of 2438.4 mm is sold as one of 8 ft. */
  @Test
  void readingsStandAsTheyAreReadOnSite() throws Exception {
    assertThat(sheet(Demo.HOUSE)).contains("boards 8.13 %, room 8.93 %: 0.79 percentage points apart")
        .contains("flatness under 8 ft (2438.4 mm), common practice: 2.3 mm (3 mm under 8 ft (2438.4 mm))");
  }

  /** Where filling would do, the drawing of the heights says how much. */
  @Test
  void heightsAreDrawnWithWhatIsToBeFilled() throws Exception {
    Document document = parse(sheet(Demo.HOUSE));
    List<Element> drawn = all(document, "svg").stream().filter(svg -> svg.getAttribute("aria-labelledby").startsWith("levels-")).toList();
    assertThat(drawn).hasSize(1);
    assertThat(drawn.get(0).getTextContent()).contains("Heights read in Living room", "to fill, how thick at the reading");
  }

  /** Rooms of which nothing is known share one table. */
  @Test
  void roomsAlikeShareATable() throws Exception {
    Document document = parse(sheet(Demo.LOFT));
    assertThat(all(document, "table").stream().filter(table -> table.getAttribute("class").equals("site"))).hasSize(1);
  }

  private static List<String> rows(Element table) {
    NodeList lines = ((Element) table.getElementsByTagName("tbody").item(0)).getElementsByTagName("tr");
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < lines.getLength(); i++) {
      rows.add(lines.item(i).getTextContent());
    }
    return rows;
  }

  @Test
  void jobInInchesShowsInchesFirst() throws Exception {
    // 7 1/2 in = 190.5 mm; 1/2 in = 12.7 mm
    assertThat(sheet(Demo.LOFT)).contains("7 1/2&quot; (190.5 mm) cover width").contains("1/2&quot; (12.7 mm)</strong>");
  }

  @Test
  void limitsOfASiteAreInTheUnitsOfTheJob() throws Exception {
    // 8 ft = 2438.4 mm, 3 mm = 0.118 in, 2/16 of an inch
    assertThat(sheet(Demo.LOFT)).contains("1/8&quot; (3 mm) under 8&#39; 0&quot; (2438.4 mm)");
    assertThat(sheet(Demo.HOUSE)).contains("3 mm under 8 ft (2438.4 mm)");
  }

  @Test
  void aReadingThatLooksWrongIsCalledOutWithItsPlace() {
    FloorPlan plan = HandMade.plan("Hall", "Hall").with(List.of(), List.of(new Finding("reading-slip", Severity.WARNING,
        "Hall, line A, reading 4", "the height is 100 mm too high: read it again", Source.COMMON_PRACTICE)), List.of());
    assertThat(new String(JobSheet.of(HandMade.job("Hall", "Hall"), plan), StandardCharsets.UTF_8))
        .contains("<b>Look here.</b> Hall, line A, reading 4: the height is 100 mm too high: read it again");
  }

  @Test
  void equalCompromisesStandTogether() throws Exception {
    Document document = parse(new String(
        JobSheet.of(HandMade.job("Hall", "Hall"), HandMade.plan("Hall", "Hall")), StandardCharsets.UTF_8));
    Element table = all(document, "table").stream()
        .filter(element -> element.getTextContent().contains("Compromises:")).findFirst().orElseThrow();
    NodeList lines = ((Element) table.getElementsByTagName("tbody").item(0)).getElementsByTagName("tr");
    assertThat(lines.getLength()).isEqualTo(2);
    assertThat(lines.item(0).getTextContent()).contains("hall-1 row 2 run 2, hall-1 row 4 run 2");
  }

  @Test
  void aRoomOfSeveralBaysIsDrawnAsAWholeBeforeThem() throws Exception {
    FloorPlan one = HandMade.plan("Hall", "Hall");
    Bay second = new Bay("hall-2", "Hall", Direction.ALONG_X, Outline.of(HandMade.ring(10, 300, 5010, 300, 5010, 310, 10, 310)), List.of());
    FloorPlan plan = new FloorPlan(one.title(), List.of(one.bays().get(0), second), one.boards(), one.order(), one.ledger(), one.materials(),
        one.profiles(), one.checks(), one.compromises(), one.findings(), one.cautions(), one.working());
    Document document = parse(new String(JobSheet.of(HandMade.job("Hall", "Hall"), plan), StandardCharsets.UTF_8));
    List<String> headings = texts(document, "h2");
    assertThat(headings).containsSubsequence("Hall its bays", "Hall bay hall-1", "Hall bay hall-2", "Working");
    assertThat(all(document, "svg").stream().filter(svg -> svg.getAttribute("aria-labelledby").startsWith("room-Hall-"))).hasSize(1);
  }

  @Test
  void roomsOfOneFrameAreDrawnTogetherAtTheFront() throws Exception {
    FloorJob job = FloorJob.of("Two rooms (invented)", BoardGoods.of(Length.ofMillimetres(2200), Length.ofMillimetres(185), Length.ofMillimetres(14), 6))
        .room(Room.of("Left", Wkt.parse("POLYGON ((0 0, 3000 0, 3000 2400, 0 2400, 0 0))")))
        .room(Room.of("Right", Wkt.parse("POLYGON ((3100 0, 6000 0, 6000 2400, 3100 2400, 3100 0))"))).build();
    Document document = parse(new String(JobSheet.of(new JobFile(job, Tape.METRIC), FloorPlanner.plan(job)), StandardCharsets.UTF_8));
    assertThat(texts(document, "h2").subList(0, 3)).containsExactly("Bring and begin", "Cautions", "Where the rooms and bays lie");
  }

  @Test
  void workingThatStandsTwiceIsPrintedOnce() throws Exception {
    String html = new String(JobSheet.of(HandMade.job("Hall", "Hall"), HandMade.plan("Hall", "Hall")), StandardCharsets.UTF_8);
    assertThat(html.split("How many packs\\?", -1)).hasSize(2);
    assertThat(html).contains("= 1</b>").contains("quoted by another");
  }

  @Test
  void textOfTheJobStaysText() throws Exception {
    String nasty = "<script>alert(1)</script> & \"x\" 'y' ]]> <!--";
    JobFile file = HandMade.job(nasty, nasty);
    String html = new String(JobSheet.of(file, HandMade.plan(nasty, nasty)), StandardCharsets.UTF_8);
    Document document = parse(html);
    assertThat(all(document, "script")).isEmpty();
    assertThat(texts(document, "title").get(0)).isEqualTo("Job sheet: " + nasty);
    assertThat(texts(document, "h1").get(0)).contains(nasty);
  }

  @Test
  void aRestThatFitsIsNotSawnAgainAndRestsAreMarked() throws Exception {
    Document document = parse(sheet(Demo.HOUSE));
    List<String> cells = texts(document, "td");
    Map<String, String> kept = new HashMap<>();
    int asKept = 0;
    for (CutLine line : CutCard.of(Demo.job(Demo.HOUSE).job(), Demo.plan(Demo.HOUSE)).lines()) {
      String size = line.length() + " by " + line.width();
      asKept += line.shape().isEmpty() && size.equals(kept.get(line.piece().piece())) ? 1 : 0;
      line.rests().forEach(rest -> rest.keptFor().forEach(piece -> kept.put(piece, rest.length() + " by " + rest.width())));
    }
    assertThat(kept).isNotEmpty();
    assertThat(cells.stream().filter(text -> text.equals("nothing, it is as kept"))).hasSize(asKept);
    assertThat(cells).anyMatch(text -> text.matches(".*: keep, mark [0-9.]+.*")).contains("left end, saw on right");
  }

  @Test
  void aLongCorridorIsDrawnInPartsOnPagesThatLie() throws Exception {
    BoardGoods goods = BoardGoods.of(Length.ofMillimetres(2200), Length.ofMillimetres(185), Length.ofMillimetres(14), 6);
    FloorJob job = FloorJob.of("Corridor (invented)", goods)
        .room(Room.of("Corridor", Wkt.parse("POLYGON ((0 0, 60000 0, 60000 1900, 0 1900, 0 0))")))
        .rules(RuleSet.COMMON_PRACTICE.forBoard(goods.thickness(), goods.coverWidth())
            .with(LayingRules.MAXIMUM_RUN_ALONG, Length.ofMillimetres(60_000), Source.GIVEN))
        .direction(DirectionChoice.of(Direction.ALONG_X)).build();
    String sheet = new String(JobSheet.of(new JobFile(job, Tape.METRIC), FloorPlanner.plan(job)), StandardCharsets.UTF_8);
    Document document = parse(sheet);

    long parts = all(document, "svg").stream().filter(svg -> svg.getAttribute("aria-labelledby").contains("-parts-")).count();
    assertThat(parts).isGreaterThan(1);
    assertThat(all(document, "defs")).as("what all parts show stands there once").hasSize(1);
    String whole = all(document, "defs").get(0).getElementsByTagName("g").item(0).getAttributes().getNamedItem("id").getNodeValue();
    assertThat(all(document, "use")).isNotEmpty().allMatch(use -> use.getAttribute("href").equals("#" + whole));
    assertThat(all(document, "div").stream().filter(div -> div.getAttribute("class").equals("lying"))).hasSize((int) parts + 1);
  }
}
