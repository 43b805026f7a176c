package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class RunLayoutPropertyTest {
  private static final Length WIDTH = Length.ofMillimetres(185);

  /** A room of rows that may taper, boards of one length or two, and rules. */
  record Floor(List<Run> runs, BoardGoods goods, LayingRules rules) {}

  @Provide
  Arbitrary<Floor> floors() {
    Arbitrary<BoardGoods> goods = Combinators.combine(Arbitraries.integers().between(600, 2400),
        Arbitraries.integers().between(0, 3)).as((length, mix) -> mix > 0
            ? BoardGoods.of(Length.ofMillimetres(length), WIDTH, Length.ofMillimetres(14), 6)
            : BoardGoods.mixed(List.of(new PackContent(Length.ofMillimetres(length), 3),
                new PackContent(Length.ofMillimetres(length / 2), 2)), WIDTH, Length.ofMillimetres(14)));
    return Combinators.combine(Arbitraries.integers().between(1, 14), Arbitraries.integers().between(300, 9000),
        Arbitraries.integers().between(-40, 40), goods, Arbitraries.integers().between(0, 500),
        Arbitraries.integers().between(0, 5)).as((rows, length, taper, boards, minimum, kerf) -> {
          LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(boards.thickness(), boards.coverWidth())
              .with(LayingRules.MINIMUM_END_PIECE, Length.ofMillimetres(minimum), Source.GIVEN)
              .with(LayingRules.MINIMUM_JOINT_OFFSET, Length.ofMillimetres(minimum), Source.GIVEN)
              .with(LayingRules.SAW_KERF, Length.ofMillimetres(kerf), Source.GIVEN);
          return new Floor(taperingRows(rows, length, taper), boards, rules);
        });
  }

  private static List<Run> taperingRows(int rows, long length, long taper) {
    List<Run> runs = new ArrayList<>();
    long before = 0;
    for (int k = 0; k < rows; k++) {
      long end = Math.max(200, length + taper * k) * 1_000_000;
      runs.add(k == 0 ? Run.of(0, 0, end)
          : Run.touching(k, 0, end, List.of(k - 1), List.of(new long[] {0, Math.min(before, end)})));
      before = end;
    }
    return runs;
  }

  @Property(tries = 150)
  void piecesFillEveryRunAndComeFromTheLengthsSold(@ForAll("floors") Floor floor) {
    RunLayout layout = RunLayout.search(floor.runs(), floor.goods(), floor.rules());
    for (int i = 0; i < floor.runs().size(); i++) {
      Run run = floor.runs().get(i);
      long[] joints = layout.jointsOf(i);
      long place = run.from();
      for (int k = 0; k < joints.length; k++) {
        Length piece = Length.ofNanometres(joints[k] - place);
        assertThat(piece.isPositive()).isTrue();
        if (k > 0) {
          assertThat(floor.goods().lengths()).contains(piece);
        }
        place = joints[k];
      }
      assertThat(run.to() - place).isBetween(1L, floor.goods().longest().toNanometres());
    }
  }

  @Property(tries = 150)
  void breachesAreCountedAsASlowCountFindsThem(@ForAll("floors") Floor floor) {
    RunLayout layout = RunLayout.search(floor.runs(), floor.goods(), floor.rules());
    long minimum = floor.rules().value(LayingRules.MINIMUM_END_PIECE).toNanometres();
    int count = 0;
    for (int i = 0; i < floor.runs().size(); i++) {
      Run run = floor.runs().get(i);
      long[] joints = layout.jointsOf(i);
      if (joints.length > 0) {
        count += isShort(floor, joints[0] - run.from(), minimum) ? 1 : 0;
        count += isShort(floor, run.to() - joints[joints.length - 1], minimum) ? 1 : 0;
      }
      if (i > 0) {
        long touch = Math.min(run.to(), floor.runs().get(i - 1).to());
        for (long joint : joints) {
          for (long other : layout.jointsOf(i - 1)) {
            count += joint <= touch && other <= touch && Math.abs(joint - other) < minimum ? 1 : 0;
          }
        }
      }
    }
    assertThat(layout.breaches()).isEqualTo(count);
  }

  /** A whole board is never too short. */
  private static boolean isShort(Floor floor, long piece, long minimum) {
    return piece < minimum && !floor.goods().lengths().contains(Length.ofNanometres(piece));
  }

  @Property(tries = 60)
  void theSameFloorGivesTheSameJoints(@ForAll("floors") Floor floor) {
    RunLayout first = RunLayout.search(floor.runs(), floor.goods(), floor.rules());
    RunLayout second = RunLayout.search(floor.runs(), floor.goods(), floor.rules());
    for (int i = 0; i < floor.runs().size(); i++) {
      assertThat(second.jointsOf(i)).containsExactly(first.jointsOf(i));
    }
  }
}
