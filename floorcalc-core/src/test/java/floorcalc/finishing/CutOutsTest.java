package floorcalc.finishing;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.boards.SearchEffort;
import floorcalc.fittings.BoardSide;
import floorcalc.fittings.HoleCut;
import floorcalc.fittings.HoleCut.Way;
import floorcalc.fittings.ThinPart;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import floorcalc.rows.RowWay;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Outcome;
import floorcalc.working.StepChecks;
import java.util.List;
import org.junit.jupiter.api.Test;

class CutOutsTest {
  private static final BoardGoods GOODS = BoardGoods.of(mm("2200"), mm("185"), mm("14"), 6);

  private static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  private static Ring box(long x0, long y0, long x1, long y1) {
    return Ring.of(Point.ofMillimetres(x0, y0), Point.ofMillimetres(x1, y0), Point.ofMillimetres(x1, y1), Point.ofMillimetres(x0, y1));
  }

  private static Pipe pipe(long x, long y, long diameter) {
    return new Pipe(Point.ofMillimetres(x, y), Length.ofMillimetres(diameter));
  }

  private static FloorJob job(Room room, double degrees) {
    return FloorJob.of("Pipes (invented)", GOODS).direction(DirectionChoice.of(Direction.fromDegrees(degrees)))
        .effort(SearchEffort.QUICK).room(room).build();
  }

  /** A room of 4000 x 3145: 3125 laid. 16 rows and 165 mm: the first row is whole. */
  private static Room room(Pipe... pipes) {
    return Room.of("Study", Outline.of(box(0, 0, 4000, 3145))).withPipes(List.of(pipes));
  }

  @Test
  void eachPipeIsFoundInItsBoard() {
    FloorJob job = job(room(pipe(60, 100, 22), pipe(2000, 5, 15), pipe(1700, -30, 15)), 0);
    FloorPlan plan = FloorPlanner.plan(job);
    Calculated<CutOuts> cuts = CutOuts.of(job, plan);
    PipeCut first = cuts.value().pipes().get(0);
    // the laid floor begins at (10, 10): 60 - 10 = 50 and 100 - 10 = 90; the hole is 22 + 2 * 10
    assertThat(first.bay()).isEqualTo("study-1");
    assertThat(first.cut().parts().get(0).piece()).isEqualTo("study-1.1.1");
    assertThat(first.cut().parts().get(0).fromStartEnd()).isEqualTo(mm("50"));
    assertThat(first.cut().parts().get(0).fromStartEdge()).isEqualTo(mm("90"));
    assertThat(first.cut().width()).isEqualTo(mm("42"));
    assertThat(first.cut().glued().orElseThrow().side()).isEqualTo(BoardSide.START_END);
    // its middle 5 mm off the floor, the hole of 35 reaches in by 12.5: an open notch
    assertThat(cuts.value().pipes().get(1).cut().way()).isEqualTo(Way.OPEN_NOTCH);
    // outside of the room altogether
    assertThat(cuts.value().pipes().get(2).cut().way()).isEqualTo(Way.IN_THE_GAP);
    assertThat(cuts.value().pipes().get(2).bay()).isEmpty();
    assertThat(plan.findings()).filteredOn(finding -> finding.code().equals("pipe-hole")).extracting(Finding::where)
        .containsExactly("Study, pipe 1", "Study, pipe 2", "Study, pipe 3");
    assertThat(plan.checks()).filteredOn(check -> check.judgement().code().equals("holes-for-pipes")).singleElement()
        .satisfies(check -> assertThat(check.found()).isEqualTo("2 holes, 0 slots, 1 in the gap"));
    assertThat(plan.working()).anyMatch(worked -> worked.about().equals("Study: pipes"));
    StepChecks.assertStepsHold(cuts);
  }

  /** With the boards up the room, start end and start edge are those of the turned bay. */
  @Test
  void inATurnedBayPlacesAreThoseOfTheBoard() {
    FloorJob job = job(room(pipe(3900, 60, 22)), 90);
    CutOuts cuts = CutOuts.of(job, FloorPlanner.plan(job)).value();
    HoleCut cut = cuts.pipes().get(0).cut();
    // boards run up: the start end is at y = 10, the starting wall on the right at x = 3990
    assertThat(cut.parts().get(0).fromStartEnd()).isEqualTo(mm("50"));
    assertThat(cut.parts().get(0).fromStartEdge()).isEqualTo(mm("90"));
    assertThat(cuts.of("study-1.1.1").orElseThrow().holes()).hasSize(1);
  }

  @Test
  void aColumnNotchesTheRowsBesideIt() {
    // a column of 400 x 200 whose gap reaches from 340 to 560 across: 330 to 550 from the edge of the floor
    Room room = Room.of("Hall", Outline.of(box(0, 0, 4000, 3145), List.of(box(1500, 350, 1900, 550))));
    FloorJob job = job(room, 0);
    FloorPlan plan = FloorPlanner.plan(job);
    CutOuts cuts = CutOuts.of(job, plan).value();
    // a first row of 165 mm: row 2 ends at 350, 350 - 330 = 20 mm are notched; row 4 begins at 535, 550 - 535 = 15 mm
    assertThat(plan.bays().get(0).rows().get(0).coverWidth()).isEqualTo(mm("165"));
    assertThat(cuts.pieces().stream().filter(piece -> piece.row() == 2).flatMap(piece -> piece.shape().notches().stream())
        .map(notch -> notch.across())).isNotEmpty().containsOnly(mm("20"));
    assertThat(cuts.pieces().stream().filter(piece -> piece.row() == 4).flatMap(piece -> piece.shape().notches().stream())
        .map(notch -> notch.across())).isNotEmpty().containsOnly(mm("15"));
    assertThat(plan.checks()).filteredOn(check -> check.judgement().code().equals("thin-parts")).singleElement()
        .satisfies(check -> assertThat(check.outcome()).isEqualTo(Outcome.MET));
  }

  /** The start line keeps the strips beside a column wide, so that no tongue along the boards is left where that can be. */
  @Test
  void theStartLineKeepsStripsBesideAColumnWide() {
    for (long low = 350; low < 720; low += 23) {
      Room room = Room.of("Hall", Outline.of(box(0, 0, 4000, 3145), List.of(box(1500, low, 1900, low + 205))));
      FloorJob job = job(room, 0);
      FloorPlan plan = FloorPlanner.plan(job);
      boolean narrow = plan.compromises().stream().anyMatch(compromise -> compromise.rule().equals("minimumRowWidth"));
      List<ThinPart> thin = CutOuts.of(job, plan).value().pieces().stream().flatMap(piece -> piece.thin().stream())
          .filter(part -> part.run() == ThinPart.Run.ALONG).toList();
      assertThat(narrow || thin.isEmpty()).as("column at %d: %s", low, thin).isTrue();
    }
  }

  /** A hearth 40 mm from the wall: less both gaps, 20 mm of floor are left between them, over 380 + 2 * 10 mm, wherever the rows begin. */
  @Test
  void whatIsThinBesideAVoidIsAFindingAndAFailedCheck() {
    BoardGoods wide = BoardGoods.of(mm("2200"), mm("400"), mm("14"), 3);
    Room room = Room.of("Hall", Outline.of(box(0, 0, 2220, 820), List.of(box(1010, 40, 1390, 380))));
    FloorJob job = FloorJob.of("Thin (invented)", wide).direction(DirectionChoice.of(Direction.ALONG_X)).rowWay(RowWay.LEAST_CUT)
        .room(room).build();
    FloorPlan plan = FloorPlanner.plan(job);
    List<ThinPart> thin = CutOuts.of(job, plan).value().pieces().stream().flatMap(piece -> piece.thin().stream()).toList();
    assertThat(thin).anySatisfy(part -> {
      assertThat(part.run()).isEqualTo(ThinPart.Run.ALONG);
      assertThat(part.width()).isEqualTo(mm("20"));
      assertThat(part.length()).isEqualTo(mm("400"));
      assertThat(part.beyond()).isEqualTo(ThinPart.Beyond.GAP);
    });
    assertThat(plan.findings()).filteredOn(finding -> finding.code().startsWith("thin-")).hasSameSizeAs(thin);
    assertThat(plan.checks()).filteredOn(check -> check.judgement().code().equals("thin-parts")).singleElement()
        .satisfies(check -> assertThat(check.outcome()).isEqualTo(Outcome.NOT_MET));
  }

  /** A joint that would help is told only where it keeps the rules: 300 mm from the run's ends and from the joints of row 2. */
  @Test
  void aJointAtThePipeIsToldWhereItKeepsTheRules() {
    for (long x : new long[] {200, 1000, 1500, 2000, 2500, 3000, 3800}) {
      FloorJob job = job(room(pipe(x, 100, 22)), 0);
      FloorPlan plan = FloorPlanner.plan(job);
      boolean told = plan.findings().stream().anyMatch(finding -> finding.code().equals("pipe-joint-helps"));
      List<Long> joints = plan.bays().get(0).rows().get(1).pieces().stream().skip(1)
          .map(piece -> piece.outline().extent().low().xNanometres()).toList();
      boolean glued = CutOuts.of(job, plan).value().pipes().get(0).cut().glued().isPresent();
      boolean keeps = x >= 310 && x <= 3690 && joints.stream().allMatch(joint -> Math.abs(joint - x * 1_000_000) >= 300_000_000);
      assertThat(told).as("pipe at %d, joints at %s", x, joints).isEqualTo(glued && keeps);
    }
  }
}
