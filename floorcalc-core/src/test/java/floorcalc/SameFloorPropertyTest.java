package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.RandomJobs.Case;
import floorcalc.bays.BaySplit;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.lifecycle.AddLifecycleHook;

/**
 * A floor is the same floor wherever it lies and however it is listed.
 * <p>
 * Moved by whole nanometres, or listed from another corner, it has the same area to the last half square nanometre and the same
 * boards. So it has when it is turned by right angles or mirrored, if all its walls are square: between slanted walls the
 * corners of the laid area are rounded, and a half is rounded up on both sides of the mirror. Then, and when it is turned by
 * another angle, the areas differ by what rounding can do, and boards may be cut otherwise.
 */
@AddLifecycleHook(MoreTries.class)
class SameFloorPropertyTest {
  /** Square millimetres for each millimetre of wall: a wall's ends are out by a nanometre, a sharp corner by several. */
  private static final double ROUNDING = 1e-5;
  /** Nanometres. */
  private static final long NEAR = 1000;

  @Provide
  Arbitrary<Case> jobs() {
    return RandomJobs.any();
  }

  @Provide
  Arbitrary<Case> alongAxes() {
    return RandomJobs.alongAxes();
  }

  private static Area laid(FloorPlan plan) {
    return plan.bays().stream().map(Bay::laid).map(Outline::area).reduce(Area.ZERO, Area::plus);
  }

  /** Whether the room is split along the shortest lines: where the search was broken off, those of its mirror image may be others. */
  private static boolean isSurelySplit(Case any) {
    return any.job().direction().fixed().stream().allMatch(way ->
        BaySplit.of(any.outline(), way, List.of(), any.job().rules()).value().isProvenLeast());
  }

  private static FloorPlan plan(Case any) {
    return FloorPlanner.plan(any.job());
  }

  @Property(tries = 25)
  void moved(@ForAll("alongAxes") Case any, @ForAll @LongRange(min = -4_000_000_000_000L, max = 4_000_000_000_000L) long dx,
      @ForAll @LongRange(min = -4_000_000_000_000L, max = 4_000_000_000_000L) long dy) {
    FloorPlan plan = plan(any);
    FloorPlan moved = plan(any.with(any.outline().moved(Length.ofNanometres(dx), Length.ofNanometres(dy))));

    assertThat(moved.order()).isEqualTo(plan.order());
    assertThat(moved.ledger()).isEqualTo(plan.ledger());
    assertThat(moved.compromises()).isEqualTo(plan.compromises());
    assertThat(laid(moved)).isEqualTo(laid(plan));
  }

  @Property(tries = 25)
  void listedFromAnotherCorner(@ForAll("alongAxes") Case any, @ForAll @IntRange(max = 39) int corner) {
    FloorPlan plan = plan(any);
    FloorPlan other = plan(any.with(any.outline().startingAt(corner % any.outline().shell().size())));

    assertThat(other.order()).isEqualTo(plan.order());
    assertThat(other.ledger()).isEqualTo(plan.ledger());
    assertThat(other.compromises()).isEqualTo(plan.compromises());
    assertThat(laid(other)).isEqualTo(laid(plan));
  }

  @Property(tries = 25)
  void turnedByQuarters(@ForAll("alongAxes") Case any, @ForAll @IntRange(min = 1, max = 3) int quarters) {
    Direction along = any.job().direction().fixed().orElseThrow();
    Direction turn = Direction.ALONG_X.plusQuarterTurns(quarters);

    FloorPlan plan = plan(any);
    FloorPlan turned = plan(any.with(turn.toRoom(any.outline()))
        .with(DirectionChoice.of(along.plusQuarterTurns(quarters))));

    assertSameArea(any.outline(), laid(turned), laid(plan));
    if (isSquare(any.outline())) {
      assertThat(turned.order()).isEqualTo(plan.order());
      assertThat(turned.ledger()).isEqualTo(plan.ledger());
    }
  }

  /** The mirror image is laid from the other end of each row, so that its boards may be cut otherwise. */
  @Property(tries = 25)
  void mirrored(@ForAll("alongAxes") Case any) {
    Assume.that(isSurelySplit(any) && isSurelySplit(any.with(any.outline().mirrored())));
    FloorPlan plan = plan(any);
    FloorPlan mirrored = plan(any.with(any.outline().mirrored()));

    assertSameArea(any.outline(), laid(mirrored), laid(plan));
    assertThat(mirrored.bays()).hasSameSizeAs(plan.bays());
  }

  private static void assertSameArea(Outline room, Area found, Area expected) {
    if (isSquare(room)) {
      assertThat(found).isEqualTo(expected);
    } else {
      double rounding = room.perimeter().toMillimetres() * ROUNDING;
      assertThat(found.toSquareMillimetres()).isCloseTo(expected.toSquareMillimetres(), within(rounding));
    }
  }

  private static boolean isSquare(Outline room) {
    return isSquare(room.shell()) && room.voids().stream().allMatch(SameFloorPropertyTest::isSquare);
  }

  private static boolean isSquare(Ring ring) {
    boolean square = true;
    for (int i = 0; i < ring.size(); i++) {
      int next = (i + 1) % ring.size();
      square &= ring.x(i) == ring.x(next) || ring.y(i) == ring.y(next);
    }
    return square;
  }

  @Property(tries = 20)
  void turnedByAnyAngle(@ForAll("jobs") Case any, @ForAll @LongRange(min = 1, max = 359_999_999_999L) long angle) {
    Outline room = Direction.fromDegrees(angle / 1e9).toRoom(any.outline());
    Case turned = any.with(room).with(any.job().direction().fixed()
        .map(way -> DirectionChoice.of(Direction.fromDegrees(way.degrees() + angle / 1e9))).orElse(any.job().direction()));
    Assume.that(isSurelySplit(any) && RandomRooms.isSound(room) && isSurelySplit(turned) && FloorPlanner.faultsOf(turned.job()).isEmpty());
    FloorPlan before = plan(any);
    FloorPlan after = plan(turned);
    // Of ways to split that rounding makes equally long, another one may come first.
    Assume.that(sameBreaks(before, after, Direction.fromDegrees(angle / 1e9)));

    assertThat(laid(after).toSquareMillimetres()).isCloseTo(laid(before).toSquareMillimetres(),
        within(any.outline().perimeter().toMillimetres() * ROUNDING));
  }

  /** Whether the breaks of a turned floor, turned back, are those of the floor but for rounding. */
  private static boolean sameBreaks(FloorPlan floor, FloorPlan turned, Direction turn) {
    boolean same = floor.breaks().size() == turned.breaks().size();
    for (int i = 0; same && i < floor.breaks().size(); i++) {
      Ring line = ends(floor, i);
      Ring back = turn.toFrame(ends(turned, i));
      for (int end = 0; end < 2; end++) {
        same &= Math.abs(line.x(end) - back.x(end)) < NEAR && Math.abs(line.y(end) - back.y(end)) < NEAR;
      }
    }
    return same;
  }

  private static Ring ends(FloorPlan floor, int i) {
    return Ring.of(floor.breaks().get(i).line().from(), floor.breaks().get(i).line().to());
  }

  @Property(tries = 20)
  void aWiderGapNeverLaysMore(@ForAll("jobs") Case any, @ForAll @LongRange(min = 1000, max = 30_000_000) long wider) {
    LayingRules rules = any.job().rules();
    long gap = rules.value(LayingRules.EXPANSION_GAP).toNanometres();
    FloorJob job = FloorJob.of(any.job().title(), any.job().board())
        .rules(RandomJobs.with(rules, LayingRules.EXPANSION_GAP, gap + wider)).direction(any.job().direction())
        .room(Room.of("Room", any.outline())).build();
    Assume.that(FloorPlanner.faultsOf(job).isEmpty());

    double narrow = laid(plan(any)).toSquareMillimetres();
    double wide = laid(FloorPlanner.plan(job)).toSquareMillimetres();

    // Without a gap a turned bay may come out a trifle larger than its room.
    double rounding = any.outline().perimeter().toMillimetres() * ROUNDING;
    assertThat(narrow).isLessThanOrEqualTo(any.outline().area().toSquareMillimetres() + rounding);
    assertThat(wide).isLessThanOrEqualTo(narrow);
  }
}
