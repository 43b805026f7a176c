package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.MoreTries;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AddLifecycleHook;

/** Near is near as a slow count of joints finds it, whatever part of the runs touches. */
@AddLifecycleHook(MoreTries.class)
class RunTablePropertyTest {
  private static final Length WIDTH = Length.ofMillimetres(185);

  @Property(tries = 1000)
  void nearAsASlowCountFindsIt(@ForAll @IntRange(min = 5, max = 40) int board, @ForAll @IntRange(min = 0, max = 22) int asked,
      @ForAll int seed) {
    int offset = Math.min(asked, board);
    Random random = new Random(seed);
    BoardGoods goods = BoardGoods.of(Length.ofNanometres(board), WIDTH, Length.ofMillimetres(14), 6);
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), WIDTH)
        .with(LayingRules.MINIMUM_END_PIECE, Length.ofNanometres(1), Source.GIVEN)
        .with(LayingRules.MINIMUM_JOINT_OFFSET, Length.ofNanometres(offset), Source.GIVEN);
    Stock stock = new Stock(goods, rules);
    long from = random.nextInt(60) - 30;
    long otherFrom = random.nextInt(60) - 30;
    Run first = Run.of(0, from, from + 1 + random.nextInt(150));
    long otherTo = otherFrom + 1 + random.nextInt(150);
    long low = Math.max(first.from(), otherFrom);
    long high = Math.min(first.to(), otherTo);
    long[] contact = high - low < 4 ? new long[] {low, Math.max(low, high)}
        : random.nextBoolean() ? new long[] {low, high} : new long[] {low, low + (high - low) / 3, high - (high - low) / 3, high};
    Run second = Run.touching(1, otherFrom, otherTo, List.of(0), List.of(contact));
    List<Run> runs = List.of(first, second);
    RunTable table = new RunTable(runs, stock);
    long start = 1 + random.nextInt(board);
    long otherStart = 1 + random.nextInt(board);
    long[] joints = Joints.every(first, start, board);
    long[] others = Joints.every(second, otherStart, board);
    boolean near = false;
    for (long joint : joints) {
      for (long other : others) {
        near |= Math.abs(joint - other) < offset && JointRule.within(joint, contact) && JointRule.within(other, contact);
      }
    }
    String what = "boards " + board + ", offset " + offset + ", runs " + from + " to " + first.to() + " and " + otherFrom + " to "
        + otherTo + ", contact " + Arrays.toString(contact) + ", joints " + Arrays.toString(joints) + " and "
        + Arrays.toString(others);
    assertThat(table.near(1, otherStart, 0, start, offset)).as(what).isEqualTo(near);
    assertThat(table.near(0, start, 0, otherStart, offset)).as(what).isEqualTo(near);
  }
}
