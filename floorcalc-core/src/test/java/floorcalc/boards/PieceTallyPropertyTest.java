package floorcalc.boards;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.MoreTries;
import floorcalc.measure.Length;
import floorcalc.rules.RuleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.junit.jupiter.api.Test;

@AddLifecycleHook(MoreTries.class)
class PieceTallyPropertyTest {
  private static final Length WIDTH = Length.ofMillimetres(185);
  private static final BoardGoods GOODS = BoardGoods.of(Length.ofMillimetres(20), WIDTH, Length.ofMillimetres(14), 6);
  private static final Stock STOCK = new Stock(GOODS, RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), WIDTH));
  private static final long MM = 1_000_000;

  /** The most pairs, found by trying for each end piece every start piece that is left, or none. */
  private static int mostPairs(List<Long> ends, List<Long> starts) {
    if (ends.isEmpty()) {
      return 0;
    }
    List<Long> others = ends.subList(1, ends.size());
    int most = mostPairs(others, starts);
    for (int i = 0; i < starts.size(); i++) {
      if (ends.get(0) + STOCK.kerf + starts.get(i) <= STOCK.longest()) {
        List<Long> left = new ArrayList<>(starts);
        left.remove(i);
        most = Math.max(most, 1 + mostPairs(others, left));
      }
    }
    return most;
  }

  private record Row(long start, long end, long whole) {}

  private static List<Row> rows(int count, Random random) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      rows.add(new Row(random.nextInt(6) == 0 ? 0 : (1 + random.nextInt(18)) * MM,
          random.nextInt(6) == 0 ? 0 : (1 + random.nextInt(18)) * MM, random.nextInt(3)));
    }
    return rows;
  }

  private static int byTryingAll(List<Row> rows) {
    List<Long> ends = rows.stream().map(Row::end).filter(end -> end > 0).toList();
    List<Long> starts = rows.stream().map(Row::start).filter(start -> start > 0).toList();
    return (int) rows.stream().mapToLong(Row::whole).sum() + ends.size() + starts.size() - mostPairs(ends, starts);
  }

  @Property(tries = 300)
  void boardsAreThoseOfTheBestPairing(@ForAll @IntRange(min = 1, max = 6) int count, @ForAll int seed) {
    List<Row> rows = rows(count, new Random(seed));
    PieceTally tally = new PieceTally(STOCK, 2);
    rows.forEach(row -> tally.add(row.start(), row.end(), row.whole()));
    assertThat(tally.boards()).isEqualTo(byTryingAll(rows));

    Row last = rows.get(count - 1);
    tally.remove(last.start(), last.end(), last.whole());
    assertThat(tally.boards()).isEqualTo(byTryingAll(rows.subList(0, count - 1)));
    tally.weigh(tally.boards());
    assertThat(tally.boardsWith(last.start(), last.end(), last.whole())).isEqualTo(byTryingAll(rows));

    tally.settle(count);
    assertThat(tally.boards()).as("settled").isEqualTo(byTryingAll(rows.subList(0, count - 1)));
    tally.settle(0);
    assertThat(tally.boards()).as("nothing carried on").isEqualTo(byTryingAll(rows.subList(0, count - 1)));
  }

  @Test
  void aPieceThatFillsAnOffcutIsLighterThanOneThatNeedsABoard() {
    // Boards of 20 mm, kerf 3 mm: beside an end piece of 9 a start piece of 20 - 3 - 9 = 8 fits, one of 9 does not.
    PieceTally tally = new PieceTally(STOCK, 2);
    tally.add(0, 9 * MM, 0);
    tally.weigh(1);
    assertThat(tally.boardsWith(8 * MM, 0, 0)).isEqualTo(1);
    assertThat(tally.boardsWith(9 * MM, 0, 0)).isEqualTo(2);
    assertThat(tally.uneven(8 * MM, 0, 0)).isLessThan(tally.uneven(9 * MM, 0, 0));
  }
}
