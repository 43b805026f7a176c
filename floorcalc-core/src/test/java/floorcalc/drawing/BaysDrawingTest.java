package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import floorcalc.bays.ExpansionBreak;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import floorcalc.plan.RoomBreak;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;

/** Breaks and profiles on a bay's drawing, and the overviews of a room and of all rooms. */
class BaysDrawingTest {
  private static final FloorJob L = Rooms.job(SplitRooms.lShaped());
  private static final FloorPlan L_PLAN = SplitRooms.lSplit(L);
  private static final FloorJob FLAT = SplitRooms.flat();
  private static final FloorPlan FLAT_PLAN = SplitRooms.flatPlan(FLAT);

  private static SvgPage bay(FloorJob job, FloorPlan plan, int bay) {
    return SvgPage.parse(FloorDrawing.of(job, plan, plan.bays().get(bay)).toSvg());
  }

  private static SvgPage room(Measures measures) {
    return SvgPage.parse(FloorDrawing.ofRoom(L, L_PLAN, "Living & dining", measures).toSvg());
  }

  private static SvgPage flat() {
    return SvgPage.parse(FloorDrawing.ofAllRooms(FLAT, FLAT_PLAN, Measures.MILLIMETRES).orElseThrow().toSvg());
  }

  private static String words(SvgPage page) {
    return String.join(" | ", page.words());
  }

  @Test
  void aBayShowsItsBreaksAndProfilesWithLetterNumberAndLength() {
    SvgPage page = bay(L, L_PLAN, 0);
    assertThat(page.words()).contains("T1", "R2", "Breaks and profiles: T1 3900 mm, R2 1500 mm.",
        "expansion break or edge under a profile", "T profile, with its number in the list", "reducer; the triangle points down the fall");
    assertThat(page.words()).doesNotContain("end profile", "nosing at a step edge");
    assertThat(page.byId("-desc").getTextContent()).contains("T profile T1 is 3900 mm long.",
        "Reducer R2 in door D2 is 1500 mm long, falling out of the room.", "T profile T3 in door D1 is 900 mm long.");
  }

  /** At 1:40 the break of 3900 mm is 97.5 mm long; its lozenges stand 3.2 mm apart: 97.5 / 3.2 = 30.5, so 30 of them. */
  @Test
  void theChainRunsBetweenTheExactEndsOfTheProfile() {
    List<Element> parts = bay(L, L_PLAN, 0).byId("-profile-T1").getElementsByTagName("path").getLength() == 3
        ? elements(bay(L, L_PLAN, 0).byId("-profile-T1")) : List.of();
    double[] line = numbers(parts.get(0).getAttribute("d"));
    assertThat(line[2] - line[0]).isEqualTo(97.5, within(0.011));
    assertThat(line[3]).isEqualTo(line[1]);
    double[] bars = numbers(parts.get(1).getAttribute("d"));
    assertThat(bars).containsExactly(line[0], line[1] - 1.1, line[0], line[1] + 1.1, line[2], line[1] - 1.1, line[2], line[1] + 1.1);
    assertThat(parts.get(2).getAttribute("d").chars().filter(c -> c == 'Z').count()).isEqualTo(30);
  }

  private static List<Element> elements(Element group) {
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < group.getElementsByTagName("path").getLength(); i++) {
      elements.add((Element) group.getElementsByTagName("path").item(i));
    }
    return elements;
  }

  private static double[] numbers(String d) {
    return java.util.Arrays.stream(d.replaceAll("[MLZ]", " ").trim().split("\\s+")).mapToDouble(Double::parseDouble).toArray();
  }

  /** The hall's door D2 leads up to a floor 6 mm higher, the room beyond looks down on it: one way on both sheets. */
  @Test
  void aReducerFallsTheSameWaySeenFromBothRooms() {
    double[] fromRoom = triangle(bay(FLAT, FLAT_PLAN, 1));
    double[] fromHall = triangle(bay(FLAT, FLAT_PLAN, 2));
    double[] fromAll = triangle(flat());
    // The hall lies above on paper: the tip, the last of three corners, has the smaller y.
    assertThat(fromRoom[5]).isLessThan(fromRoom[1]);
    assertThat(fromHall[5]).isLessThan(fromHall[1]);
    assertThat(fromAll[5]).isLessThan(fromAll[1]);
  }

  private static double[] triangle(SvgPage page) {
    return page.all("path").stream().filter(path -> path.getAttribute("fill").equals("#000")
        && path.getAttribute("stroke").equals("#fff") && path.getAttribute("d").matches("M[^ML]*L[^L]*L[^L]*Z"))
        .map(path -> numbers(path.getAttribute("d"))).findFirst().orElseThrow();
  }

  @Test
  void theOverviewNamesTheBaysAndTheirRuns() {
    SvgPage page = room(Measures.MILLIMETRES);
    // 6400 - 2 x 10 along, 3100 - 2 x 10 across; 3900 - 2 x 10 along, 2500 - 2 x 10 across.
    assertThat(page.words()).contains("Bays of Living & dining", "living-1", "along 6380", "across 3080", "living-2", "along 3880",
        "across 2480", "T1 3900", "R2 1500", "T3 900", "the way the boards run");
    assertThat(page.byId("-desc").getTextContent()).contains("1 room with 2 bays",
        "Bay living-1: 6380 mm along the boards, 3080 mm across them.", "T profile T1 is 3900 mm long.");
  }

  @Test
  void runsFollowTheBoardsNotTheDrawing() {
    FloorPlan turned = NaiveFloor.plan(FLAT, Direction.fromDegrees(90));
    SvgPage page = SvgPage.parse(FloorDrawing.ofRoom(FLAT, turned, "Hall", Measures.MILLIMETRES).toSvg());
    // The hall is 8000 mm by 1200 mm, the boards run up the short side.
    assertThat(words(page)).contains("along 1180", "across 7980");
  }

  @ParameterizedTest
  @EnumSource(Measures.class)
  void textsOfOverviewsKeepApart(Measures measures) {
    SvgPage one = room(measures);
    DrawingChecks.textsNeverCollide(one);
    DrawingChecks.textsLieOnTheSheet(one);
    SvgPage all = SvgPage.parse(FloorDrawing.ofAllRooms(FLAT, FLAT_PLAN, measures).orElseThrow().toSvg());
    DrawingChecks.textsKeepApart(all);
    DrawingChecks.textsLieOnTheSheet(all);
  }

  @Test
  void allRoomsStandInOneFrameAndDoorsAreNamedOnce() {
    SvgPage page = flat();
    assertThat(page.words()).contains("All rooms", "Left-1", "Right-1", "Hall-1", "T1 900", "R2 900", "E3 900", "Entrance");
    assertThat(page.words().stream().filter(text -> text.equals("D1"))).hasSize(1);
    assertThat(page.byId("-desc").getTextContent()).contains("3 rooms with 3 bays", "Door D2 leads to Hall.");
    List<String> ids = page.all("*").stream().map(element -> element.getAttribute("id")).filter(id -> !id.isEmpty()).toList();
    assertThat(ids).doesNotHaveDuplicates().allMatch(id -> id.startsWith("all-rooms-"));
  }

  @Test
  void roomsInFramesOfTheirOwnHaveNoCommonDrawing() {
    Room left = FLAT.rooms().get(0);
    Room same = Room.of("Other", Outline.of(Rooms.ring(0, 0, 4000, 0, 4000, 3000, 0, 3000)));
    Room across = Room.of("Other", Outline.of(Rooms.ring(1000, -500, 2000, -500, 2000, 3500, 1000, 3500)));
    Room within = Room.of("Other", Outline.of(Rooms.ring(1000, 500, 2000, 500, 2000, 900, 1000, 900)));
    Room far = Room.of("Other", Outline.of(Rooms.ring(90_000, 0, 94_000, 0, 94_000, 3000, 90_000, 3000)));
    for (Room other : List.of(same, across, within, far)) {
      FloorJob job = FloorJob.of("Invented", FLAT.board()).room(left).room(other).build();
      assertThat(FloorDrawing.ofAllRooms(job, NaiveFloor.plan(job, Direction.ALONG_X), Measures.MILLIMETRES)).isEmpty();
    }
    FloorJob alone = FloorJob.of("Invented", FLAT.board()).room(left).build();
    assertThat(FloorDrawing.ofAllRooms(alone, NaiveFloor.plan(alone, Direction.ALONG_X), Measures.MILLIMETRES)).isEmpty();
  }

  /** Both rooms begin at (0, 0): a break of one lies where the other has boards. */
  @Test
  void aProfileIsDrawnInItsOwnRoomOnly() {
    Room other = Room.of("Other", Outline.of(Rooms.ring(0, 0, 9000, 0, 9000, 9000, 0, 9000)));
    FloorJob job = FloorJob.of("Invented", L.board()).room(L.rooms().get(0)).room(other).build();
    List<Bay> bays = new ArrayList<>(L_PLAN.bays());
    bays.addAll(NaiveFloor.plan(FloorJob.of("Invented", L.board()).room(other).build(), Direction.ALONG_X).bays());
    FloorPlan plan = SplitRooms.with(Rooms.plan(job, bays, L_PLAN.boards()), L_PLAN.profiles());
    assertThat(words(SvgPage.parse(FloorDrawing.ofRoom(job, plan, "Other", Measures.MILLIMETRES).toSvg()))).doesNotContain("T1");
    assertThat(words(SvgPage.parse(FloorDrawing.ofRoom(job, plan, "Living & dining", Measures.MILLIMETRES).toSvg()))).contains("T1 3900");
  }

  /**
   * The upper bay of the L, 3900 mm by 2500 mm, is shown at 1:25 with what borders on it; the room at 1:50. Of the break of 3900 mm, 156 mm on
   * paper, all is shown; of the other bay its edge. The terrace door and the pipes lie in the other bay.
   */
  @Test
  void aBayMuchSmallerThanItsRoomIsDrawnLargerWithWhatBordersOnIt() {
    SvgPage page = bay(L, L_PLAN, 1);
    assertThat(page.words()).anyMatch(text -> text.startsWith("Scale 1:25 ")).contains("T1", "T3", "D1",
        "Breaks and profiles: T1 3900 mm, T3 900 mm.", "Only what borders on this bay is drawn; the whole room is on the sheet of its bays.")
        .doesNotContain("R2", "D2").noneMatch(text -> text.startsWith("Pipes:"));
    double[] line = numbers(elements(page.byId("-profile-T1")).get(0).getAttribute("d"));
    assertThat(line[2] - line[0]).isEqualTo(156, within(0.011));
    DrawingChecks.textsNeverCollide(page);
    DrawingChecks.textsLieOnTheSheet(page);
    DrawingChecks.numbersLieInTheirPieces(page);
    // The lower bay is as wide as the room, but lower: lying it is shown at 1:40.
    assertThat(words(bay(L, L_PLAN, 0))).contains("Scale 1:40", "Only what borders");
  }

  @Test
  void whatLiesOutsideTheWindowIsCutOff() {
    Window window = new Window(0, 0, 100, 50);
    // From (-50, 25) to (150, 25) a line is inside from 50 / 200 to 150 / 200 of its length.
    assertThat(window.share(-50, 25, 150, 25)).containsExactly(0.25, 0.75);
    assertThat(window.share(10, 10, 90, 40)).containsExactly(0, 1);
    assertThat(window.share(10, 60, 90, 60)).containsExactly(0, 0);
    assertThat(window.share(-20, 10, -10, 40)).containsExactly(0, 0);
    assertThat(window.meets(150, 100, 50, 25)).isTrue();
    assertThat(window.holds(Box.upright(10, 10, 101, 20))).isFalse();
    assertThat(Window.ALL.share(-1e9, 0, 1e9, 0)).containsExactly(0, 1);
  }

  /** A hole is 2 x 10 mm wider than its pipe: 35 mm across, at 1:40 0.44 mm in radius, hidden by the sign; at 1:10 1.75 mm. */
  @Test
  void aPipeHasItsHoleWhereItCanBeSeen() {
    assertThat(words(bay(L, L_PLAN, 0))).contains("pipe").doesNotContain("pipe and its hole");
    Room small = Room.of("Small", Outline.of(Rooms.ring(0, 0, 900, 0, 900, 700, 0, 700)))
        .withPipes(List.of(new Pipe(Point.ofMillimetres(300, 200), Rooms.mm(15))));
    FloorJob job = Rooms.job(small);
    SvgPage page = bay(job, NaiveFloor.plan(job, Direction.ALONG_X), 0);
    assertThat(words(page)).contains("Scale 1:10", "pipe and its hole");
    assertThat(page.all("circle").stream().map(circle -> circle.getAttribute("r"))).contains("1.75", "0.75");
  }

  /** A break says which room it is in, whatever lies at the same place of another room. */
  @Test
  void aBreakOfAPlanIsDrawnInTheRoomThatItNames() {
    Room other = Room.of("Other", Outline.of(Rooms.ring(0, 0, 9000, 0, 9000, 9000, 0, 9000)));
    FloorJob job = FloorJob.of("Invented", L.board()).room(L.rooms().get(0)).room(other).build();
    ExpansionBreak line = new ExpansionBreak(Point.ofMillimetres(0, 3100), Point.ofMillimetres(3900, 3100),
        ExpansionBreak.Reason.INNER_CORNER, "inner corner 4");
    for (String name : List.of("Other", "Living & dining")) {
      FloorPlan plan = SplitRooms.with(Rooms.plan(job, L_PLAN.bays(), L_PLAN.boards()), L_PLAN.profiles().subList(0, 1))
          .withBreaks(List.of(new RoomBreak(name, line, Rooms.mm(20))));
      String there = words(SvgPage.parse(FloorDrawing.ofRoom(job, plan, name, Measures.MILLIMETRES).toSvg()));
      String elsewhere = words(SvgPage.parse(FloorDrawing.ofRoom(job, plan, name.equals("Other") ? "Living & dining" : "Other",
          Measures.MILLIMETRES).toSvg()));
      assertThat(there).contains("T1 3900");
      assertThat(elsewhere).doesNotContain("T1");
    }
  }

  @Test
  void aRoomThatTheJobHasNotIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> FloorDrawing.ofRoom(L, L_PLAN, "Attic", Measures.MILLIMETRES))
        .withMessage("the job has no room 'Attic'; draw one of its own rooms");
  }

  @Test
  void isTheSameInEveryLocale() {
    String usual = FloorDrawing.ofRoom(L, L_PLAN, "Living & dining", Measures.FEET_AND_INCHES).toSvg();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(FloorDrawing.ofRoom(L, L_PLAN, "Living & dining", Measures.FEET_AND_INCHES).toSvg()).isEqualTo(usual);
    } finally {
      Locale.setDefault(before);
    }
  }
}
