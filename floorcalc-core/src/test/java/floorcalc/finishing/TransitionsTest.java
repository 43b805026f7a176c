package floorcalc.finishing;

import static floorcalc.working.StepChecks.assertHolds;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.bays.ExpansionBreak;
import floorcalc.boards.BoardGoods;
import floorcalc.materials.FloorGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Beyond;
import floorcalc.plan.Check;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Profile;
import floorcalc.plan.Room;
import floorcalc.plan.RoomBreak;
import floorcalc.transitions.Casing;
import floorcalc.transitions.CasingWork;
import floorcalc.transitions.Fall;
import floorcalc.transitions.FireRating;
import floorcalc.underlay.RollGoods;
import floorcalc.working.Finding;
import floorcalc.working.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Study (4 m by 3 m) and hall (1 m by 4 m) with boards of 14 mm; doors in the wall between and elsewhere. */
class TransitionsTest {
  private static final BoardGoods BOARDS = BoardGoods.of(Length.ofMillimetres(2200), Length.ofMillimetres(185),
      Length.ofMillimetres(14), 6);

  private static Outline rectangle(long x, long y, long width, long height) {
    return Outline.of(Ring.of(Point.ofMillimetres(x, y), Point.ofMillimetres(x + width, y),
        Point.ofMillimetres(x + width, y + height), Point.ofMillimetres(x, y + height)));
  }

  private static Room study(Door... doors) {
    return Room.of("Study", rectangle(0, 0, 4000, 3000)).withDoors(List.of(doors));
  }

  private static Room hall(Door... doors) {
    return Room.of("Hall", rectangle(0, -1100, 4000, 1000)).withDoors(List.of(doors));
  }

  private static Door door(String name, long from, long to, long y, String leadsTo, Beyond beyond) {
    return new Door(name, Point.ofMillimetres(from, y), Point.ofMillimetres(to, y), leadsTo, beyond);
  }

  private static Beyond finish(String finish, long higherBy) {
    return new Beyond(finish, Length.ofMillimetres(higherBy));
  }

  private static FloorJob job(Room... rooms) {
    FloorJobBuilder builder = FloorJob.of("Test", BOARDS);
    List.of(rooms).forEach(builder::room);
    return builder.build();
  }

  private static Transitions of(Room... rooms) {
    FloorJob job = job(rooms);
    Transitions found = Transitions.of(job, FloorPlanner.plan(job));
    found.working().forEach(worked -> worked.steps().forEach(step -> assertHolds(step)));
    return found;
  }

  @Test
  void kindsByWhatLiesBeyond() {
    Transitions found = of(study(door("Level", 0, 800, 0, "Store", finish("same floor", 0)),
        door("Lower", 900, 1700, 0, "Den", finish("Same Floor", -6)), door("Tiles", 1800, 2600, 0, "Bath", finish("tile", -4)),
        door("Sill", 2700, 3500, 0, "", finish("fixed edge", 20)), door("Stairs", 0, 900, 3000, "", finish("step", -180)),
        door("Open", 1000, 2000, 3000, "", Beyond.UNKNOWN)));
    assertThat(found.profiles()).extracting(Profile::kind).containsExactly("T", "reducer", "end", "end", "nosing", "T");
    assertThat(found.profiles()).extracting(profile -> profile.length().toMillimetres())
        .containsExactly(800.0, 800.0, 800.0, 800.0, 900.0, 1000.0);
    assertThat(found.profiles()).extracting(Profile::because).containsExactly(
        "Study, door Level to Store: both sides at one height",
        "Study, door Lower to Den: 6 mm lower beyond, falls to the floor beyond",
        "Study, door Tiles to Bath (tile): another finish beyond, 4 mm lower beyond, falls to the floor beyond: the floor ends there"
            + " with its gap",
        "Study, door Sill: fixed edge, 20 mm higher beyond, falls to this floor: the floor ends there with its gap",
        "Study, door Stairs: edge of a step, 180 mm lower beyond, falls to the floor beyond",
        "Study, door Open: both sides at one height");
    assertThat(found.findings()).extracting(Finding::code, Finding::where).containsExactly(
        org.assertj.core.groups.Tuple.tuple("floor-beyond-not-stated", "Study, door Open"));
    assertThat(found.cautions()).anyMatch(caution -> caution.startsWith("People fall where a step changes"));
    assertThat(found.profiles().get(0).from()).isEqualTo(Point.ofMillimetres(0, 0));
    assertThat(found.profiles().get(0).to()).isEqualTo(Point.ofMillimetres(800, 0));
  }

  /** The hall is laid 4 mm higher: seen from the study it falls to the study, seen from the hall it falls away. One profile. */
  @Test
  void aDoorOfTwoRoomsHasOneProfile() {
    Transitions found = of(study(door("D1", 500, 1300, 0, "Hall", finish("same floor", 4))),
        hall(door("H2", 500, 1300, -100, "Study", finish("same floor", -4))));
    assertThat(found.profiles()).hasSize(1);
    assertThat(found.profiles().get(0).kind()).isEqualTo("reducer");
    assertThat(found.profiles().get(0).from()).isEqualTo(Point.ofMillimetres(500, 0));
    assertThat(found.profiles().get(0).because()).isEqualTo("Study, door D1 to Hall: 4 mm higher beyond, falls to this floor; the"
        + " same opening as Hall, door H2, which leads back here");
    assertThat(found.doors()).extracting(DoorEdge::room, DoorEdge::shared, edge -> edge.choice().fall()).containsExactly(
        org.assertj.core.groups.Tuple.tuple("Study", "Hall, door H2", Fall.TO_HERE),
        org.assertj.core.groups.Tuple.tuple("Hall", "Study, door D1", Fall.TO_BEYOND));
    assertThat(found.doors().get(1).profile()).isEmpty();
    assertThat(found.findings()).isEmpty();
  }

  @Test
  void onlyOneSideIsGiven() {
    Transitions found = of(study(door("D1", 500, 1300, 0, "Hall", Beyond.UNKNOWN)), hall());
    assertThat(found.profiles()).extracting(Profile::kind).containsExactly("T");
    assertThat(found.findings()).isEmpty();
    // The height is known from the other side alone: 3.2 mm is more than 1/8 in, so a reducer.
    Transitions other = of(study(door("D1", 500, 1300, 0, "Hall", Beyond.UNKNOWN)),
        hall(door("H1", 500, 1300, -100, "Study", new Beyond("", Length.ofMillimetres("3.2")))));
    assertThat(other.profiles()).extracting(Profile::kind).containsExactly("reducer");
    assertThat(other.doors().get(0).choice().fall()).isEqualTo(Fall.TO_BEYOND);
  }

  /** Two doors between the same rooms: those of one name belong together, whatever their order. */
  @Test
  void twoDoorsBetweenTwoRooms() {
    Transitions found = of(
        study(door("A", 0, 800, 0, "Hall", finish("same floor", 0)), door("B", 2000, 2900, 0, "Hall", finish("same floor", 0))),
        hall(door("B", 2000, 2900, -100, "Study", finish("same floor", 0)), door("A", 0, 800, -100, "Study", finish("same floor", 0))));
    assertThat(found.profiles()).hasSize(2);
    assertThat(found.doors()).extracting(DoorEdge::shared).containsExactly("Hall, door A", "Hall, door B", "Study, door B",
        "Study, door A");
    // Other names and one width: by place. The hall's doors are 100 mm from those of the study.
    Transitions byPlace = of(
        study(door("A", 0, 800, 0, "Hall", finish("same floor", 0)), door("B", 2000, 2800, 0, "Hall", finish("same floor", 0))),
        hall(door("1", 2000, 2800, -100, "Study", finish("same floor", 0)), door("2", 0, 800, -100, "Study", finish("same floor", 0))));
    assertThat(byPlace.doors()).extracting(DoorEdge::shared).startsWith("Hall, door 2", "Hall, door 1");
    // Drawn elsewhere: by width, 800 to 800 and 900 to 900.
    Room far = Room.of("Hall", rectangle(0, -9000, 4000, 1000)).withDoors(List.of(
        door("1", 0, 900, -8000, "Study", finish("same floor", 0)), door("2", 2000, 2800, -8000, "Study", finish("same floor", 0))));
    Transitions byWidth = of(study(door("A", 0, 800, 0, "Hall", finish("same floor", 0)),
        door("B", 2000, 2900, 0, "Hall", finish("same floor", 0))), far);
    assertThat(byWidth.doors()).extracting(DoorEdge::shared).startsWith("Hall, door 2", "Hall, door 1");
  }

  @Test
  void whatTheTwoSidesSayDisagrees() {
    Transitions found = of(study(door("D1", 500, 1300, 0, "Hall", finish("same floor", 4))),
        hall(door("H2", 500, 1300, -100, "Study", finish("same floor", 4))));
    assertThat(found.findings()).extracting(Finding::message).containsExactly("seen from here it is 4 mm higher beyond, seen from"
        + " Hall, door H2 it is 4 mm higher beyond; the first is taken: measure both");
    Transitions wide = of(study(door("D1", 500, 1300, 0, "Hall", finish("same floor", 0))),
        hall(door("D1", 500, 1310, -100, "Study", finish("same floor", 0))));
    assertThat(wide.findings()).extracting(Finding::message).containsExactly("the opening is 800 mm wide here and 810 mm as Hall,"
        + " door D1; the first is taken: measure it where the profile lies");
    Transitions finish = of(study(door("D1", 500, 1300, 0, "Hall", finish("tile", 0))), hall());
    assertThat(finish.findings()).extracting(Finding::code).containsExactly("finish-beyond-doubtful");
    assertThat(finish.profiles()).extracting(Profile::kind).containsExactly("end");
  }

  /** Boards of 14 mm, nothing known of what is below: a hearth 30 mm above the subfloor is 30 - 14 = 16 mm higher. */
  @Test
  void heightAboveTheSubfloor() {
    Transitions found = of(study(door("Hearth", 500, 1300, 0, "", Beyond.aboveSubfloor("fixed edge", Length.ofMillimetres(30)))));
    assertThat(found.doors().get(0).choice().difference().beyondHigherBy()).isEqualTo(Length.ofMillimetres(16));
  }

  /**
   * 14 mm of board and 1 mm of clearance: 15 mm. A leaf at 24 mm leaves 10 mm: 12.7 mm are not kept. At 28 mm it leaves 14 mm, but
   * less if there is an underlay, of which nothing is said: not measured.
   */
  @Test
  void casingAndLeaf() {
    Transitions found = of(study(door("D1", 500, 1300, 0, "Store", finish("same floor", 0)).withLeaf(Length.ofMillimetres(24))));
    DoorEdge edge = found.doors().get(0);
    assertThat(edge.casing().height()).contains(Length.ofMillimetres(15));
    assertThat(edge.leaf().orElseThrow().clearance()).isEqualTo(Length.ofMillimetres(10));
    assertThat(found.checks()).extracting(Check::room, check -> check.judgement().where(), Check::outcome, Check::limit, Check::found)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("Study", "door D1", Outcome.NOT_MET, "at least 12.7 mm", "10 mm"));
    assertThat(of(study(door("D1", 500, 1300, 0, "Store", finish("same floor", 0)).withLeaf(Length.ofMillimetres(28)))).checks())
        .singleElement().satisfies(check -> {
          assertThat(check.outcome()).isEqualTo(Outcome.NOT_MEASURED);
          assertThat(check.advice()).isEqualTo("state how thick it is: underlay; without it 14 mm is left");
        });
    // However wide, a leaf that is high enough is no failed check.
    assertThat(of(study(door("D1", 500, 1300, 0, "Store", finish("same floor", 0)).withLeaf(Length.ofMillimetres(60)))).checks())
        .extracting(Check::outcome).containsOnly(Outcome.NOT_MEASURED);
  }

  /** An underlay of 2 mm below boards of 14 mm: cut at 17 mm; a leaf at 30 mm leaves 14 mm, more than 12.7 mm. */
  @Test
  void theLayersOfTheGoods() {
    RollGoods underlay = RollGoods.underlay("felt", Length.ofMillimetres(1000), Length.ofMillimetres(15_000));
    Room study = study(door("D1", 500, 1300, 0, "Store", finish("same floor", 0)).withLeaf(Length.ofMillimetres(30)));
    FloorJob stated = FloorJob.of("Test", BOARDS).room(study)
        .goods(FloorGoods.NONE.withLayers(List.of(underlay.withThickness(Length.ofMillimetres(2))))).build();
    FloorPlan plan = FloorPlanner.plan(stated);
    Transitions found = Transitions.of(stated, plan);
    assertThat(FloorHeights.of(stated).stack().total()).isEqualTo(Length.ofMillimetres(16));
    assertThat(FloorHeights.of(stated).notStated()).isEmpty();
    assertThat(found.doors().get(0).casing().height()).contains(Length.ofMillimetres(17));
    assertThat(found.checks()).extracting(Check::outcome, Check::found).containsOnly(
        org.assertj.core.groups.Tuple.tuple(Outcome.MET, "14 mm"));
    // The profile is on the order list, too: 0.8 m of it.
    assertThat(plan.materials()).anyMatch(line -> line.item().equals("T profile") && line.net().startsWith("0.8"));

    FloorJob thin = FloorJob.of("Test", BOARDS).room(study).goods(FloorGoods.NONE.withLayers(List.of(underlay))).build();
    assertThat(FloorHeights.of(thin).notStated()).containsExactly("felt");
    FloorJob alike = FloorJob.of("Test", BOARDS).room(study).goods(FloorGoods.NONE.withLayers(List.of(underlay, underlay))).build();
    assertThat(FloorHeights.of(alike).notStated()).containsExactly("layer 1, felt", "layer 2, felt");
    assertThat(Transitions.of(thin, plan).checks()).extracting(Check::outcome).containsOnly(Outcome.NOT_MEASURED);
  }

  @Test
  void fireDoorAndSteelFrame() {
    Door fire = door("D1", 500, 1300, 0, "Stairs", finish("same floor", 0)).withLeaf(Length.ofMillimetres(16))
        .withFire(FireRating.FIRE_DOOR).withCasing(Casing.CUT);
    Door steel = door("D2", 2000, 2800, 0, "Store", finish("same floor", 0)).withCasing(Casing.CANNOT_BE_CUT);
    Transitions found = of(study(fire, steel));
    assertThat(found.doors()).extracting(edge -> edge.casing().treatment())
        .containsExactly(CasingWork.Treatment.ASK_FIRST, CasingWork.Treatment.SEALED_GAP);
    assertThat(found.findings()).extracting(Finding::code).containsExactly("fire-door", "frame-not-cut");
    assertThat(found.cautions()).containsExactly("Study, door D1 is a fire door: leaf, frame and casings stay as they are until"
        + " whoever answers for fire safety has said what may be done.");
    assertThat(found.checks()).extracting(Check::advice).allSatisfy(advice -> assertThat(advice).doesNotContain("come off"));
  }

  /** A break across a room and one that meets it in a corner: two T profiles, mitred at 45 degrees. */
  @Test
  void profilesAtBreaks() {
    FloorJob job = job(study());
    Point corner = Point.ofMillimetres(2000, 1500);
    FloorPlan plan = FloorPlanner.plan(job).withBreaks(List.of(
        new RoomBreak("Study", ExpansionBreak.given(Point.ofMillimetres(2000, 0), corner), Length.ofMillimetres(20)),
        new RoomBreak("Study", ExpansionBreak.given(corner, Point.ofMillimetres(4000, 1500)), Length.ofMillimetres(20))));
    Transitions found = Transitions.of(job, plan);
    assertThat(found.profiles()).extracting(Profile::kind).containsExactly("T", "T");
    assertThat(found.profiles()).extracting(Profile::length)
        .containsExactly(Length.ofMillimetres(1500), Length.ofMillimetres(2000));
    assertThat(found.profiles().get(0).because()).isEqualTo("Study: given in the job; both sides at one height, over a gap of 20"
        + " mm; mitred at (2000 mm, 1500 mm), 45 degrees from a square cut");
    assertThat(found.addedTo(plan).profiles()).isEqualTo(found.profiles());
  }

  /** What a plan carries is what is worked out here. */
  @Test
  void thePlanCarriesThem() {
    FloorJob job = job(study(door("D1", 500, 1300, 0, "", finish("step", -180)).withLeaf(Length.ofMillimetres(24))));
    FloorPlan plan = FloorPlanner.plan(job);
    Transitions found = Transitions.of(job, plan);
    assertThat(plan.profiles()).isEqualTo(found.profiles()).hasSize(1);
    assertThat(plan.checks()).containsAll(found.checks());
    assertThat(plan.findings()).containsAll(found.findings());
    assertThat(plan.cautions()).containsAll(found.cautions());
    assertThat(plan.working()).containsAll(found.working());
    assertThat(found.addedTo(plan).cautions()).isEqualTo(plan.cautions());
  }
}
