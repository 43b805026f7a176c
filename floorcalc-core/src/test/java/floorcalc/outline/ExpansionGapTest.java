package floorcalc.outline;

import static floorcalc.outline.RingTest.ring;
import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExpansionGapTest {
  private static final Length TEN = Length.ofMillimetres(10);
  private static final Outline L = Outline.of(ring(0, 0, 4000, 0, 4000, 2000, 2000, 2000, 2000, 3000, 0, 3000));
  /** Two rooms of 2 m by 2 m, joined by a neck 5 mm wide and 15 mm long. */
  private static final Outline DUMBBELL = Outline.of(ring(0, 0, 2000, 0, 2000, 1000, 2015, 1000, 2015, 0, 4015, 0,
      4015, 2000, 2015, 2000, 2015, 1005, 2000, 1005, 2000, 2000, 0, 2000));

  private static ExpansionGap inset(Outline room, Length gap) {
    return ExpansionGap.inset(room, gap).value();
  }

  private static List<String> codes(Outline room, Length gap) {
    return ExpansionGap.inset(room, gap).findings().stream().map(Finding::code).toList();
  }

  @Test
  void rectangle() {
    // 5 m by 4 m less 10 mm on each side: 4.98 × 3.98 = 19.8204
    ExpansionGap gap = inset(Outline.of(ring(0, 0, 5000, 0, 5000, 4000, 0, 4000)), TEN);
    assertThat(gap.laid()).containsExactly(Outline.of(ring(10, 10, 4990, 10, 4990, 3990, 10, 3990)));
    assertThat(gap.perimeter()).isEqualTo(Length.ofMillimetres(18_000));
    assertThat(gap.laidArea()).isEqualTo(Area.ofSquareMetres("19.8204"));
    assertThat(gap.areaTaken()).isEqualTo(Area.ofSquareMetres("0.1796"));
    assertThat(gap.gap()).isEqualTo(TEN);
    assertThat(gap).hasToString("a gap of 10 mm leaves 1 piece of 19.8204 m²");
  }

  @Test
  void cornersKeepTheOrderOfTheRoom() {
    assertThat(inset(L.startingAt(3), TEN).laid())
        .containsExactly(Outline.of(ring(1990, 1990, 1990, 2990, 10, 2990, 10, 10, 3990, 10, 3990, 1990)));
    assertThat(codes(L, TEN)).isEmpty();
  }

  @Test
  void slantedWalls() {
    // A 3-4-5 triangle of 3 m by 4 m has an inscribed circle of 1 m, so a gap of 100 mm leaves it 9/10 as large:
    // right angle at (100, 100), sides 2.7 m and 3.6 m.
    assertThat(inset(Outline.of(ring(0, 0, 3000, 0, 0, 4000)), Length.ofMillimetres(100)).laid())
        .containsExactly(Outline.of(ring(100, 100, 2800, 100, 100, 3700)));
  }

  @Test
  void aVoidKeepsItsGap() {
    Outline room = Outline.of(ring(0, 0, 4000, 0, 4000, 3000, 0, 3000),
        List.of(ring(1000, 1000, 1400, 1000, 1400, 1500, 1000, 1500)));
    assertThat(inset(room, TEN).laid()).containsExactly(Outline.of(ring(10, 10, 3990, 10, 3990, 2990, 10, 2990),
        List.of(ring(990, 990, 990, 1510, 1410, 1510, 1410, 990))));
  }

  @Test
  void aGapOfNothingLeavesTheRoom() {
    ExpansionGap gap = inset(L, Length.ZERO);
    assertThat(gap.laid()).containsExactly(L);
    assertThat(gap.areaTaken()).isEqualTo(Area.ZERO);
    assertThat(codes(L, Length.ZERO)).isEmpty();
  }

  @Test
  void cornersOnAStraightWallStay() {
    Outline room = Outline.of(ring(0, 0, 1000, 0, 3000, 0, 3000, 2000, 0, 2000));
    assertThat(inset(room, TEN).laid())
        .containsExactly(Outline.of(ring(10, 10, 1000, 10, 2990, 10, 2990, 1990, 10, 1990)));
  }

  @Test
  void aBowOfAHundredthOfAMillimetre() {
    // The wall from (0, 0) to (4 m, 0) bows by 0.01 mm at its middle: each half climbs by 0.000 005. The moved corner
    // lies 10 mm / cos(0.000 005 rad) above it, which is 10 mm to the nanometre.
    Outline in = Outline.of(Ring.ofNanometres(
        new long[] {0, 2_000_000_000L, 4_000_000_000L, 4_000_000_000L, 0}, new long[] {0, 10_000, 0, 3_000_000_000L, 3_000_000_000L}));
    Ring laid = inset(in, TEN).laid().get(0).shell();
    assertThat(laid.corners().get(1)).isEqualTo(Point.ofNanometres(2_000_000_000L, 10_010_000));
    // At x = 10 mm the wall has climbed by 10 mm × 0.000 005 = 50 nm.
    assertThat(laid.corners().get(0)).isEqualTo(Point.ofNanometres(10_000_000, 10_000_050));
    Outline out = Outline.of(Ring.ofNanometres(
        new long[] {0, 2_000_000_000L, 4_000_000_000L, 4_000_000_000L, 0}, new long[] {0, -10_000, 0, 3_000_000_000L, 3_000_000_000L}));
    assertThat(inset(out, TEN).laid().get(0).shell().corners().get(1)).isEqualTo(Point.ofNanometres(2_000_000_000L, 9_990_000));
  }

  @Test
  void aNarrowNeckSplitsTheFloor() {
    ExpansionGap gap = inset(DUMBBELL, TEN);
    assertThat(gap.laid()).containsExactly(Outline.of(ring(10, 10, 1990, 10, 1990, 1990, 10, 1990)),
        Outline.of(ring(2025, 10, 4005, 10, 4005, 1990, 2025, 1990)));
    assertThat(gap.laidArea()).isEqualTo(Area.ofSquareMetres("7.8408")); // 2 × 1.98 × 1.98
    Finding split = ExpansionGap.inset(DUMBBELL, TEN).findings().get(0);
    assertThat(split.code()).isEqualTo("gap-splits-floor");
    assertThat(split.severity()).isEqualTo(Severity.WARNING);
    assertThat(split.message()).isEqualTo("a gap of 10 mm at every wall leaves 2 pieces of floor: between them the room is"
        + " nowhere wider than twice the gap; lay each as a floor of its own");
    assertThat(codes(DUMBBELL, Length.ofMillimetres(2))).isEmpty();
    assertThat(inset(DUMBBELL, Length.ofMillimetres(2)).laid()).hasSize(1);
  }

  @Test
  void aNeckOfExactlyTwoGapsSplitsTheFloor() {
    assertThat(inset(DUMBBELL, Length.ofMillimetres("2.5")).laid()).hasSize(2);
    assertThat(inset(DUMBBELL, Length.ofMillimetres("2.499")).laid()).hasSize(1);
    Outline turned = Direction.fromDegrees(33.3).toRoom(DUMBBELL);
    assertThat(inset(turned, Length.ofMillimetres("2.501")).laid()).hasSize(2);
    assertThat(inset(turned, Length.ofMillimetres("2.499")).laid()).hasSize(1);
  }

  @Test
  void aNarrowRoomIsSwallowed() {
    Outline room = Outline.of(ring(0, 0, 5000, 0, 5000, 20, 0, 20));
    ExpansionGap gap = inset(room, TEN);
    assertThat(gap.laid()).isEmpty();
    assertThat(gap.laidArea()).isEqualTo(Area.ZERO);
    assertThat(gap.areaTaken()).isEqualTo(room.area());
    assertThat(gap).hasToString("a gap of 10 mm leaves 0 pieces of 0 m²");
    assertThat(inset(Direction.fromDegrees(45).toRoom(room), TEN).laid()).isEmpty();
    Finding swallowed = ExpansionGap.inset(room, TEN).findings().get(0);
    assertThat(swallowed.code()).isEqualTo("gap-swallows-floor");
    assertThat(swallowed.severity()).isEqualTo(Severity.SERIOUS);
    assertThat(swallowed.message()).isEqualTo("a gap of 10 mm at every wall leaves no floor: the room is nowhere wider"
        + " than twice the gap; check the measurements");
    assertThat(inset(Outline.of(ring(0, 0, 5000, 0, 5000, 21, 0, 21)), TEN).laid())
        .containsExactly(Outline.of(ring(10, 10, 4990, 10, 4990, 11, 10, 11)));
  }

  @Test
  void aRoomTurnedOverByAGreatGapIsSwallowed() {
    // Moved by more than half its size each way, a square comes out as a square again, inside out both ways.
    assertThat(inset(Outline.of(ring(0, 0, 100, 0, 100, 100, 0, 100)), Length.ofMillimetres(60)).laid()).isEmpty();
    assertThat(inset(Outline.of(ring(0, 0, 100, 0, 100, 100, 0, 100)), Length.ofNanometres(Long.MAX_VALUE)).laid()).isEmpty();
    Outline ell = Outline.of(ring(0, 0, 500, 0, 500, 100, 100, 100, 100, 500, 0, 500));
    assertThat(inset(ell, Length.ofMillimetres(60)).laid()).isEmpty();
    assertThat(inset(ell, Length.ofMillimetres(50)).laid()).isEmpty();
    assertThat(inset(ell, Length.ofMillimetres(49)).laid()).hasSize(1);
  }

  @Test
  void aShortWallMayVanish() {
    // The chamfer of 5 mm by 5 mm is nearer to the corner than the moved walls are: a plain rectangle is left.
    Outline room = Outline.of(ring(0, 0, 5000, 0, 5000, 3995, 4995, 4000, 0, 4000));
    Calculated<ExpansionGap> gap = ExpansionGap.inset(room, TEN);
    assertThat(gap.value().laid()).containsExactly(Outline.of(ring(10, 10, 4990, 10, 4990, 3990, 10, 3990)));
    assertThat(gap.findings()).extracting(Finding::code, Finding::severity, Finding::message).containsExactly(
        tuple("gap-hides-wall", Severity.NOTE, "no floor lies along the wall from"
            + " (5000 mm, 3995 mm) to (4995 mm, 4000 mm): there the gap of 10 mm runs into the gap of another wall"));
  }

  @Test
  void aNicheNarrowerThanTwoGapsIsFilled() {
    Outline room = Outline.of(ring(0, 0, 5000, 0, 5000, 4000, 3000, 4000, 3000, 4200, 2985, 4200, 2985, 4000, 0, 4000));
    assertThat(inset(room, TEN).laidArea()).isEqualTo(Area.ofSquareMetres("19.8204"));
    assertThat(codes(room, TEN)).containsExactly("gap-hides-wall");
  }

  @Test
  void aColumnNearAWallJoinsItsGapToTheWalls() {
    Outline room = Outline.of(ring(0, 0, 5000, 0, 5000, 4000, 0, 4000), List.of(ring(5, 1000, 200, 1000, 200, 1200, 5, 1200)));
    assertThat(inset(room, TEN).laid()).containsExactly(Outline.of(
        ring(10, 10, 4990, 10, 4990, 3990, 10, 3990, 10, 1210, 210, 1210, 210, 990, 10, 990)));
    // two columns 15 mm apart
    Outline two = Outline.of(ring(0, 0, 5000, 0, 5000, 4000, 0, 4000),
        List.of(ring(1000, 1000, 1200, 1000, 1200, 1200, 1000, 1200), ring(1215, 1000, 1400, 1000, 1400, 1200, 1215, 1200)));
    assertThat(inset(two, TEN).laid()).containsExactly(Outline.of(ring(10, 10, 4990, 10, 4990, 3990, 10, 3990),
        List.of(ring(990, 990, 990, 1210, 1410, 1210, 1410, 990))));
  }

  @Test
  void aFloorRoundAColumnMayBeCutThroughOnBothSides() {
    // a corridor 100 mm wide with a column of 70 mm in its middle: 15 mm on either side
    Outline room = Outline.of(ring(0, 0, 3000, 0, 3000, 100, 0, 100), List.of(ring(1000, 15, 1500, 15, 1500, 85, 1000, 85)));
    assertThat(inset(room, TEN).laid()).containsExactly(
        Outline.of(ring(10, 10, 990, 10, 990, 90, 10, 90)), Outline.of(ring(1510, 10, 2990, 10, 2990, 90, 1510, 90)));
  }

  @Test
  void aNeedleHasItsMitreCutOff() {
    // A void like a needle, 1 m long and 20 mm wide at its foot: the half angle a at its tip has tan a = 10/1000. The
    // mitre would reach 10 mm / sin a = 1000.05 mm beyond the tip; it is cut off at 10 × 10 mm.
    Outline room = Outline.of(ring(0, 0, 4000, 0, 4000, 3000, 0, 3000), List.of(ring(1000, 1000, 1000, 1020, 2000, 1010)));
    ExpansionGap gap = inset(room, TEN);
    assertThat(gap.laid()).hasSize(1);
    Extent column = gap.laid().get(0).voids().get(0).extent();
    assertThat(column.high().x()).isEqualTo(Length.ofMillimetres(2100));
    assertThat(gap.laid().get(0).voids().get(0).size()).isEqualTo(4);
    Step check = ExpansionGap.inset(room, TEN).steps().get(6);
    assertThat(((Area) check.result()).abs()).isLessThan(Area.ofSquareMetres("0.000000001")); // 1e-9: rounding of corners
    assertThat(ExpansionGap.inset(room, TEN).explain())
        .contains("Σ cot(θ/2) over reflex corners, 1 mitres cut off square ten gaps from the corner");
  }

  @Test
  void aNeedleThatPointsAtAWall() {
    // The same needle with its tip 80 mm from the wall at x = 2080: the mitre, 100 mm long and some 20 mm wide, runs into
    // that wall's gap and takes a notch out of the floor, from x = 2070 back to the needle.
    Outline room = Outline.of(ring(0, 0, 2080, 0, 2080, 3000, 0, 3000), List.of(ring(1000, 1000, 1000, 1020, 2000, 1010)));
    Ring laid = inset(room, TEN).laid().get(0).shell();
    assertThat(inset(room, TEN).laid()).hasSize(1);
    assertThat(inset(room, TEN).laid().get(0).voids()).isEmpty();
    assertThat(laid.size()).isEqualTo(8); // four of the room, two where the notch begins, two at the needle's foot
    // The sides slope by 0.01; moved by 10 mm they are 10 · √1.0001 = 10.0005 mm off along y. At x = 2070 mm the lower one
    // has y = 1000 + 0.01 · 1070 − 10.0005 = 1000.6995 mm and the upper one y = 1020 − 10.7 + 10.0005 = 1019.3005 mm.
    assertThat(laid.corners()).contains(Point.ofNanometres(2_070_000_000L, 1_000_699_500L),
        Point.ofNanometres(2_070_000_000L, 1_019_300_500L));
  }

  @Test
  void refusesWhatIsNoRoomOrNoGap() {
    assertThatThrownBy(() -> ExpansionGap.inset(L, Length.ofMillimetres(-1))).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the expansion gap must be 0 mm or more, but was -1 mm");
    assertThatThrownBy(() -> ExpansionGap.inset(Outline.of(ring(0, 0, 4, 4, 4, 0, 0, 4)), TEN))
        .isInstanceOf(IllegalArgumentException.class).hasMessage("the outline is not sound: walls 1 and 3 cross at"
            + " (2 mm, 2 mm); an outline must not cross itself");
    assertThatThrownBy(() -> ExpansionGap.inset(null, TEN)).isInstanceOf(NullPointerException.class);
    assertThatThrownBy(() -> ExpansionGap.inset(L, null)).isInstanceOf(NullPointerException.class);
  }

  @Test
  void equality() {
    assertThat(inset(L, TEN)).isEqualTo(inset(L, TEN)).hasSameHashCodeAs(inset(L, TEN))
        .isNotEqualTo(inset(L, Length.ofMillimetres(9))).isNotEqualTo(inset(DUMBBELL, TEN));
    assertThat(inset(L, TEN).room()).isEqualTo(L);
  }

  /** The L of 4 m by 3 m, worked by hand: A = 10, P = 14, five corners of 90° and one of 270°, so S = 5 − 1 = 4. */
  @Test
  void explain() {
    assertThat(ExpansionGap.inset(L, TEN).explain()).isEqualTo("""
        gap-perimeter: How long are the walls that the gap runs along?
          P = shell + voids
            shell = 14000 mm  (6 walls of the room)
            voids = 0 mm  (0 walls of voids)
          = 14000 mm  [definition]
        room-area: What is the area of the room?
          A = shell - voids
            shell = 10 m²  (area within the walls, by the shoelace formula)
            voids = 0 m²  (area of 0 voids, by the shoelace formula)
          = 10 m²  [definition]
        gap-corners: What do the corners add?
          S = out + reflex
            out = 5  (Σ cot(θ/2) over corners whose angle θ is at most 180°)
            reflex = -1  (Σ cot(θ/2) over reflex corners)
          = 4  [definition]
        laid-area-by-formula: What area is left to lay, if the gap swallows no wall?
          F = A - P * d + d * d * S, rounded to a whole square micrometre
            A = 10 m²  (area of the room)
            P = 14000 mm  (length of all walls)
            d = 10 mm  (expansion gap)
            S = 4  (sum over the corners)
          = 9.8604 m²  [definition]
        laid-area: What area is left to lay, by the corners of what is laid?
          L = L1
            L1 = 9.8604 m²  (piece 1, by the shoelace formula)
          = 9.8604 m²  [definition]
        gap-area: What area does the gap take?
          T = A - L
            A = 10 m²  (area of the room)
            L = 9.8604 m²  (area left to lay)
          = 0.1396 m²  [definition]
        gap-check: How far is the formula from the corners? By rounding alone, while no wall is swallowed.
          e = F - L
            F = 9.8604 m²  (area left by the formula)
            L = 9.8604 m²  (area left to lay)
          = 0 m²  [definition]""");
  }

  /** Works each step again from the terms that it shows. */
  @Test
  void stepsCanBeWorkedAgain() {
    Outline skew = Outline.of(ring(0, 0, 5030, 40, 4970, 3960, 2000, 3500, -50, 4020),
        List.of(ring(1000, 1000, 1000, 1300, 1250, 1100)));
    for (Outline room : List.of(L, skew, DUMBBELL, Outline.of(ring(0, 0, 5000, 0, 5000, 20, 0, 20)))) {
      Calculated<ExpansionGap> gap = ExpansionGap.inset(room, TEN);
      assertStepsHold(gap);
      assertThat(gap.steps().get(0).result()).isEqualTo(gap.value().perimeter());
      assertThat(gap.steps().get(1).result()).isEqualTo(room.area());
      assertThat(gap.steps().get(4).result()).isEqualTo(gap.value().laidArea());
      assertThat(gap.steps().get(5).result()).isEqualTo(gap.value().areaTaken());
      assertThat(gap.steps()).extracting(Step::id).doesNotHaveDuplicates();
    }
  }

  @Test
  void manyPiecesAreAddedUpInTheWorking() {
    // a corridor 100 mm wide with 12 columns across it: 13 pieces
    List<Ring> columns = new ArrayList<>();
    for (int i = 1; i <= 12; i++) {
      columns.add(ring(i * 500, 5, i * 500 + 100, 5, i * 500 + 100, 95, i * 500, 95));
    }
    Calculated<ExpansionGap> gap = ExpansionGap.inset(Outline.of(ring(0, 0, 6500, 0, 6500, 100, 0, 100), columns), TEN);
    assertThat(gap.value().laid()).hasSize(13);
    assertStepsHold(gap);
    assertThat(gap.steps().get(4).terms()).hasSize(11).last().isEqualTo(
        Term.of("others", "3 more pieces", Area.ofSquareMetres("0.0912"))); // 3 × 0.38 × 0.08
  }
}
