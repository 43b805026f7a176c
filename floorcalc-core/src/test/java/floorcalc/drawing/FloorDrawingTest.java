package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.Beyond;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import floorcalc.plan.Row;
import floorcalc.rules.LayingRules;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.w3c.dom.Element;

class FloorDrawingTest {
  private static final FloorJob STUDY = Rooms.job(Rooms.outOfSquare());
  private static final FloorPlan STUDY_PLAN = NaiveFloor.plan(STUDY, Direction.ALONG_X);

  private static FloorDrawing draw(FloorJob job, double degrees) {
    FloorPlan plan = NaiveFloor.plan(job, Direction.fromDegrees(degrees));
    return FloorDrawing.of(job, plan, plan.bays().get(0));
  }

  private static SvgPage page(FloorJob job, double degrees) {
    return SvgPage.parse(draw(job, degrees).toSvg());
  }

  private static String notes(SvgPage page) {
    return String.join(" ", page.words());
  }

  private static SvgPage study() {
    return page(STUDY, 0);
  }

  private static Envelope walls(SvgPage page) {
    return SvgPage.area(page.byId("-walls")).getEnvelopeInternal();
  }

  @Test
  void isAnImageWithATitleAndADescription() {
    SvgPage page = study();
    assertThat(page.root().getTagName()).isEqualTo("svg");
    assertThat(page.root().getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
    assertThat(page.root().getAttribute("role")).isEqualTo("img");
    assertThat(page.root().getAttribute("aria-labelledby")).isEqualTo("bay-Study-1-title bay-Study-1-desc");
    assertThat(page.byId("Study-1-title").getTextContent()).isEqualTo("Laid floor of Study, bay Study-1");
    assertThat(page.byId("Study-1-desc").getTextContent())
        .contains("1 to 30", "4 walls", "at 0\u00b0", "20 rows", "58 pieces", "Row 1 at the starting wall shows 185 mm",
            "expansion gap is 10 mm", "Door D1 leads to Hall", "2 pipes come up");
  }

  @Test
  void needsNothingFromOutside() {
    String svg = draw(STUDY, 0).toSvg();
    assertThat(svg).startsWith("<svg ").endsWith("</svg>\n")
        .doesNotContain("\r", "href", "url(", "<!", "<?", "@import");
    Set<String> names = new HashSet<>();
    SvgPage.parse(svg).all("*").forEach(e -> names.add(e.getTagName()));
    assertThat(names).isSubsetOf("title", "desc", "rect", "g", "path", "circle", "text");
  }

  @Test
  void isTheSameInEveryLocale() {
    String usual = draw(STUDY, 37.5).toSvg();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(draw(STUDY, 37.5).toSvg()).isEqualTo(usual);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void identifiersBeginWithTheBaysNameAndStandOnce() {
    FloorJob job = Rooms.job(Rooms.hourglass());
    FloorPlan plan = NaiveFloor.plan(job, Direction.ALONG_X);
    assertThat(plan.bays()).hasSize(2);
    List<String> ids = new ArrayList<>();
    for (Bay bay : plan.bays()) {
      for (Element element : SvgPage.parse(FloorDrawing.of(job, plan, bay).toSvg()).all("*")) {
        if (element.hasAttribute("id")) {
          assertThat(element.getAttribute("id")).startsWith("bay-" + bay.bay() + "-");
          ids.add(element.getAttribute("id"));
        }
      }
    }
    assertThat(ids).doesNotHaveDuplicates().hasSizeGreaterThan(40);
  }

  @Test
  void showsTheOtherBaysOfTheRoom() {
    FloorJob job = Rooms.job(Rooms.hourglass());
    FloorPlan plan = NaiveFloor.plan(job, Direction.ALONG_X);
    SvgPage page = SvgPage.parse(FloorDrawing.of(job, plan, plan.bays().get(1)).toSvg());
    assertThat(page.words()).contains("Bays drawn as broken lines are on sheets of their own.",
        "Only what borders on this bay is drawn; the whole room is on the sheet of its bays.").doesNotContain("bay Hourglass-2");
    // The room of 6200 mm would be shown at 1:30, the bay of 3000 mm and what borders on it at 1:20.
    assertThat(page.words()).anyMatch(w -> w.startsWith("Scale 1:20 "));
    SvgPage whole = SvgPage.parse(FloorDrawing.ofRoom(job, plan, "Hourglass", Measures.MILLIMETRES).toSvg());
    assertThat(whole.words()).contains("Hourglass-1", "Hourglass-2").anyMatch(w -> w.startsWith("Scale 1:30 "));
  }

  @Test
  void drawsWallsAndPiecesToScale() {
    SvgPage page = study();
    // At 1:30 the room of 4210 mm by 3620 mm is 140.333 mm by 120.667 mm; corners are rounded to 0.01 mm.
    assertThat(page.words()).anyMatch(w -> w.startsWith("Scale 1:30 "));
    assertThat(walls(page).getWidth()).isCloseTo(140.333, within(0.011));
    assertThat(walls(page).getHeight()).isCloseTo(120.667, within(0.011));
    List<LaidPiece> pieces = STUDY_PLAN.bays().get(0).rows().stream().map(Row::pieces).flatMap(List::stream).toList();
    List<Element> drawn = page.pieces();
    assertThat(drawn).hasSameSizeAs(pieces);
    for (int i = 0; i < pieces.size(); i++) {
      double mm2 = pieces.get(i).outline().area().toSquareMetres() * 1e6 / 900;
      double rounding = 0.01 * SvgPage.area(drawn.get(i)).getLength();
      assertThat(SvgPage.area(drawn.get(i)).getArea()).isCloseTo(mm2, within(rounding));
    }
  }

  @Test
  void drawsANarrowGapWiderAndSaysSo() {
    // 10 mm are 0.333 mm at 1:30; the walls are moved out by 0.117 mm: the band ends 1.117 mm outside the outline.
    SvgPage narrow = study();
    assertThat(notes(narrow)).contains("Expansion gap 10 mm", "0.33 mm wide at this scale, drawn 0.45 mm wide");
    assertThat(narrow.byId("-walls").getAttribute("stroke-width")).isEqualTo("2.23");
    // 10 mm are 0.667 mm at 1:15: wide enough.
    SvgPage wide = page(Rooms.job(Rooms.bathroom()), 0);
    assertThat(notes(wide)).contains("Expansion gap 10 mm, the white line inside the walls: to scale.");
    assertThat(wide.byId("-walls").getAttribute("stroke-width")).isEqualTo("2");
  }

  @Test
  void saysWhenThereIsNoGap() {
    FloorJob job = withGap(Length.ZERO);
    assertThat(notes(page(job, 0))).contains("No expansion gap: the boards touch the walls.");
  }

  private static FloorJob withGap(Length gap) {
    return FloorJob.of("", BoardGoods.of(Rooms.mm(2200), Rooms.mm(185), Rooms.mm(14), 6)).room(Rooms.bathroom())
        .rules(STUDY.rules().with(LayingRules.EXPANSION_GAP, gap, Source.GIVEN)).build();
  }

  @Test
  void writesWidthsOfFirstAndLastRowAndOfTheRoom() {
    SvgPage page = study();
    Length last = STUDY_PLAN.bays().get(0).rows().get(19).coverWidth();
    assertThat(page.words()).contains("row 1: 185", "row 20: " + Words.tenths(last), "4210", "3620", "4195", "3605");
  }

  @Test
  void measuresATaperedRowAtBothEnds() {
    // The far wall falls by 15 mm over its length, and so does the last row, less what the gap's mitres take.
    List<String> rows = study().words().stream().filter(w -> w.startsWith("row 20: ")).toList();
    assertThat(rows).hasSize(2);
    double first = Double.parseDouble(rows.get(0).substring(8));
    double second = Double.parseDouble(rows.get(1).substring(8));
    assertThat(Math.abs(first - second)).isCloseTo(15, within(0.1));
  }

  @Test
  void drawsDoorsWithWhatLiesBeyond() {
    SvgPage page = study();
    assertThat(page.words()).contains("D1", "to Hall", "Beyond door D1: Hall, same floor, 4 mm lower.");
    SvgPage.Text name = page.texts().stream().filter(t -> t.text().equals("D1")).findFirst().orElseThrow();
    assertThat(name.box().getEnvelopeInternal().getMinY()).as("below the lower wall")
        .isGreaterThan(walls(page).getMaxY());
    // The opening of 826 mm is 27.533 mm wide at 1:30, from 1200 mm (40 mm) on.
    double left = walls(page).getMinX() + 40;
    assertThat(page.all("path")).anySatisfy(e -> {
      assertThat(e.getAttribute("stroke-dasharray")).isEqualTo("0.8 0.6");
      String[] numbers = e.getAttribute("d").replaceAll("[ML]", " ").trim().split(" ");
      assertThat(Double.parseDouble(numbers[0])).isCloseTo(left, within(0.02));
      assertThat(Double.parseDouble(numbers[2])).isCloseTo(left + 27.533, within(0.02));
    });
  }

  @Test
  void drawsPipesWhereTheyAre() {
    SvgPage page = study();
    // At 1:30, (310 mm, 140 mm) from the lower left corner is (10.333 mm, 4.667 mm).
    assertThat(page.all("circle")).anySatisfy(e -> {
      assertThat(Double.parseDouble(e.getAttribute("cx"))).isCloseTo(walls(page).getMinX() + 10.333, within(0.02));
      assertThat(Double.parseDouble(e.getAttribute("cy"))).isCloseTo(walls(page).getMaxY() - 4.667, within(0.02));
      assertThat(e.getAttribute("fill")).isEqualTo("#fff");
    });
    assertThat(page.words()).contains("Pipes: 22 mm at (310, 140), 22 mm at (410, 140).");
  }

  @Test
  void numbersRowsFromTheStartingWall() {
    SvgPage up = study();
    assertThat(y(up, "starting wall")).isGreaterThan(walls(up).getMaxY());
    SvgPage down = page(Rooms.job(Rooms.outOfSquare()), 180);
    assertThat(y(down, "starting wall")).isLessThan(walls(down).getMinY());
    assertThat(page(Rooms.job(Rooms.outOfSquare()), 37.5).words()).containsAnyOf("starting corner", "start");
  }

  private static double y(SvgPage page, String words) {
    return page.texts().stream().filter(t -> t.text().equals(words)).findFirst().orElseThrow().box().getCentroid()
        .getY();
  }

  @Test
  void escapesWhatPeopleWrite() {
    String nasty = "<script>\"&' \u0001\u202e]]>";
    Room room = Room.of("R" + nasty, Rooms.bathroom().outline()).withDoors(List.of(
        new Door("D" + nasty, Point.ofMillimetres(300, 0), Point.ofMillimetres(1200, 0), nasty,
            new Beyond(nasty, Length.ZERO))));
    FloorJob job = FloorJob.of("T" + nasty, STUDY.board()).room(room).build();
    SvgPage page = page(job, 0);
    String read = "<script>\"&' \ufffd\ufffd]]>";
    assertThat(page.all("script")).isEmpty();
    assertThat(page.words()).anyMatch(w -> w.contains("R" + read)).contains("D" + read, "to " + read, "T" + read);
    assertThat(page.byId("-title").getTextContent()).contains("R" + read);
  }

  @Test
  void refusesABayOfAnotherPlan() {
    FloorJob bath = Rooms.job(Rooms.bathroom());
    Bay other = NaiveFloor.plan(bath, Direction.ALONG_X).bays().get(0);
    assertThatIllegalArgumentException().isThrownBy(() -> FloorDrawing.of(STUDY, STUDY_PLAN, other))
        .withMessage("the plan has no bay 'Bathroom-1'; draw one of its own bays");
    assertThatIllegalArgumentException().isThrownBy(() -> FloorDrawing.of(bath, STUDY_PLAN, STUDY_PLAN.bays().get(0)))
        .withMessage("the job has no room 'Study', which bay 'Study-1' lies in; draw a plan with the job that it was"
            + " made for");
  }

  @Test
  void tellsItsPaper() {
    FloorDrawing upright = draw(STUDY, 0);
    assertThat(upright.paperWidth()).isEqualTo(Rooms.mm(184));
    assertThat(upright.paperHeight()).isLessThanOrEqualTo(Rooms.mm(250));
    FloorDrawing lying = draw(Rooms.job(Rooms.corridor()), 0);
    assertThat(lying.paperWidth()).isEqualTo(Rooms.mm(250));
    assertThat(lying.paperHeight()).isLessThanOrEqualTo(Rooms.mm(184));
    assertThat(lying.toSvg()).contains("width=\"250mm\" height=\"" + lying.paperHeight().toMillimetreString() + "mm\"");
  }

  @Test
  void drawsManyPiecesWithoutNumbers() {
    FloorJob job = FloorJob.of("", BoardGoods.of(Rooms.mm(1200), Rooms.mm(200), Rooms.mm(14), 6))
        .room(Rooms.floor(36_000, 12_000)).build();
    FloorPlan plan = Rooms.wholeBoards(job, 60, 30);
    SvgPage page = SvgPage.parse(FloorDrawing.of(job, plan, plan.bays().get(0)).toSvg());
    assertThat(page.pieces()).isEmpty();
    assertThat(page.boardNumbers()).isEmpty();
    assertThat(notes(page)).contains("1800 pieces at this scale: drawn without board numbers. The cut card");
    // 59 lines between 60 rows; 29 joints in each row.
    assertThat(lines(page, "0.1")).isEqualTo(59);
    assertThat(lines(page, "0.18")).isEqualTo(60 * 29);
  }

  private static long lines(SvgPage page, String width) {
    return page.all("path").stream().filter(e -> e.getAttribute("stroke-width").equals(width))
        .mapToLong(e -> e.getAttribute("d").chars().filter(c -> c == 'M').count()).sum();
  }

  @Test
  void staysSmallHoweverLargeTheFloorIs() {
    FloorJob job = FloorJob.of("", BoardGoods.of(Rooms.mm(600), Rooms.mm(100), Rooms.mm(14), 6))
        .room(Rooms.floor(240_000, 30_000)).build();
    FloorPlan plan = Rooms.wholeBoards(job, 300, 400);
    String svg = FloorDrawing.of(job, plan, plan.bays().get(0)).toSvg();
    assertThat(svg.length()).isLessThan(1_000_000);
    assertThat(notes(SvgPage.parse(svg))).contains("120\u00a0000 pieces", "end joints are left out");
  }

  @Test
  void thinsOutAnOutlineOfVeryManyCorners() {
    int corners = 30_000;
    long[] xs = new long[corners];
    long[] ys = new long[corners];
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i / corners;
      double radius = 4e9 * (1 + 0.2 * (i % 2));
      xs[i] = (long) (radius * Math.cos(angle));
      ys[i] = (long) (radius * Math.sin(angle));
    }
    Room room = Room.of("Star", Outline.of(Ring.ofNanometres(xs, ys)));
    FloorJob job = Rooms.job(room);
    Bay bay = new Bay("star-1", "Star", Direction.ALONG_X, room.outline(), List.of());
    FloorPlan plan = Rooms.plan(job, List.of(bay), List.of());
    String svg = FloorDrawing.of(job, plan, bay).toSvg();
    assertThat(svg.length()).isLessThan(1_000_000);
    assertThat(notes(SvgPage.parse(svg))).contains("with every few of them only", "The walls are not numbered");
  }

  @Test
  void saysWhichDoorsAndPipesItLeavesOut() {
    List<Door> doors = new ArrayList<>();
    List<Pipe> pipes = new ArrayList<>();
    for (int i = 0; i < 70; i++) {
      doors.add(new Door("D" + i, Point.ofMillimetres(i * 100, 0), Point.ofMillimetres(i * 100 + 50, 0), "",
          Beyond.UNKNOWN));
    }
    for (int i = 0; i < 250; i++) {
      pipes.add(new Pipe(Point.ofMillimetres(20 * i, 700), Rooms.mm(15)));
    }
    doors.set(1, new Door("None", Point.ofMillimetres(5, 0), Point.ofMillimetres(5, 0), "", Beyond.UNKNOWN));
    SvgPage page = page(Rooms.job(Rooms.floor(8000, 1500).withDoors(doors).withPipes(pipes)), 0);
    assertThat(notes(page)).contains("Only the first 60 of 70 doors are drawn.", "Door None is too narrow to show.",
        "Only the first 200 of 250 pipes are drawn.", "and 244 more.");
    DrawingChecks.textsNeverCollide(page);
  }

  @Test
  void endsItsNotesWhereTheSheetEnds() {
    List<Door> doors = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      doors.add(new Door("Door number " + i, Point.ofMillimetres(0, 100 * i), Point.ofMillimetres(0, 100 * i + 80),
          "the room beyond", new Beyond("stone", Rooms.mm(3))));
    }
    FloorDrawing drawing = draw(Rooms.job(Rooms.floor(7500, 9200).withDoors(doors)), 0);
    assertThat(drawing.paperHeight()).isLessThanOrEqualTo(Rooms.mm(250));
    SvgPage page = SvgPage.parse(drawing.toSvg());
    assertThat(page.words()).contains("More notes than the sheet has room for; the plan itself has every figure.");
    DrawingChecks.textsLieOnTheSheet(page);
    DrawingChecks.textsNeverCollide(page);
  }
}
