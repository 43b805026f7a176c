package floorcalc.rooms;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.audit.PlanAudit;
import floorcalc.boards.BoardGoods;
import floorcalc.boards.OffcutUse;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.outline.Wkt;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.recheck.JobText;
import floorcalc.recheck.Rechecked;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterContainer;

/** Real rooms stretched, turned and given a column, with boards of any size: the audit and the second check agree. */
class AlteredRoomsPropertyTest {
  private static final int TRIES = 60;
  private static final AtomicInteger CHECKED = new AtomicInteger();

  @Provide
  Arbitrary<FloorJob> jobs() {
    Arbitrary<Outline> rooms = Combinators.combine(Arbitraries.of(RealRooms.withTheProject()), percent(), percent(),
        Arbitraries.integers().between(0, 719), Arbitraries.integers().between(0, 9), percent(), percent())
        .as((room, wide, deep, halfDegrees, column, x, y) -> Direction.fromDegrees(halfDegrees / 2.0)
            .toRoom(withColumn(stretched(room.outline(), wide, deep), column, x, y)));
    Arbitrary<BoardGoods> goods = Combinators.combine(Arbitraries.integers().between(600, 2400),
        Arbitraries.integers().between(700, 2600), Arbitraries.integers().between(0, 3)).as((length, width, mix) ->
            BoardGoods.mixed(mix > 0 ? List.of(new PackContent(mm(length), 5))
                : List.of(new PackContent(mm(length), 3), new PackContent(mm(length * 2L / 3), 2)),
                Length.ofNanometres(width * 100_000L), mm(14)));
    Arbitrary<LayingRules> rules = Combinators.combine(Arbitraries.integers().between(0, 20),
        Arbitraries.integers().between(0, 5), Arbitraries.integers().between(0, 500)).as((gap, kerf, least) ->
            RuleSet.COMMON_PRACTICE.forBoard(mm(14), mm(185)).with(LayingRules.EXPANSION_GAP, mm(gap), Source.GIVEN)
                .with(LayingRules.SAW_KERF, mm(kerf), Source.GIVEN)
                .with(LayingRules.MINIMUM_END_PIECE, mm(least), Source.GIVEN)
                .with(LayingRules.MINIMUM_JOINT_OFFSET, mm(least), Source.GIVEN));
    Arbitrary<DirectionChoice> directions = Arbitraries.integers().between(-3, 719).map(half -> half < 0
        ? DirectionChoice.LONGEST_WALL : DirectionChoice.of(Direction.fromDegrees(half / 2.0)));
    return Combinators.combine(rooms, goods, rules, directions, Arbitraries.of(OffcutUse.values()))
        .as((room, boards, given, direction, use) -> FloorJob.of("Altered room", boards).rules(given)
            .direction(direction).offcuts(use).room(Room.of("Room", room)).build())
        .filter(job -> FloorPlanner.faultsOf(job).isEmpty());
  }

  private static Arbitrary<Integer> percent() {
    return Arbitraries.integers().between(50, 180);
  }

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static Outline stretched(Outline room, long wide, long deep) {
    Ring shell = room.shell();
    long[] xs = new long[shell.size()];
    long[] ys = new long[shell.size()];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = shell.x(i) / 100 * wide;
      ys[i] = shell.y(i) / 100 * deep;
    }
    return Outline.of(Ring.ofNanometres(xs, ys));
  }

  /** Puts a column of 60 to 540 mm near the middle of the room, where it may reach into a wall: such jobs are left out. */
  private static Outline withColumn(Outline room, int size, int xPercent, int yPercent) {
    if (size == 0) {
      return room;
    }
    long x = room.extent().width().toNanometres() / 230 * xPercent;
    long y = room.extent().height().toNanometres() / 230 * yPercent;
    long side = 60_000_000L * size;
    return Outline.of(room.shell(), List.of(Ring.ofNanometres(
        new long[] {x, x + side, x + side, x}, new long[] {y, y, y + side / 2, y + side / 2})));
  }

  /** Says enough of a job to make it again. */
  private static String words(FloorJob job) {
    return Wkt.write(job.rooms().get(0).outline()) + ", boards " + job.board().pack() + " by "
        + job.board().coverWidth() + ", direction " + job.direction() + ", " + job.offcuts() + ", " + job.rules();
  }

  /** The rooms were planned and checked, not left out by the filter. */
  @AfterContainer
  static void everyTryWasChecked() {
    assertThat(CHECKED.get()).isGreaterThanOrEqualTo(TRIES);
  }

  @Property(tries = TRIES, seed = "20", edgeCases = EdgeCasesMode.NONE)
  void auditAndSecondCheckFindNothing(@ForAll("jobs") FloorJob job) {
    Rechecked checked = Rechecked.ofText(JobText.of(job)).assertSound(words(job));
    assertThat(PlanAudit.of(job, checked.plan()).breaches()).as(words(job)).isEmpty();
    assertThat(checked.report().checked().pieces()).as(words(job)).isPositive();
    CHECKED.incrementAndGet();
  }
}
