package floorcalc.bays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** What holds for any right-angled room of up to nine squares of a stretched grid. */
class BaySplitPropertyTest {
  private static final LayingRules RULES = RuleSet.COMMON_PRACTICE.forBoard(Length.parse("14 mm"), Length.parse("185 mm"))
      .with(LayingRules.MAXIMUM_RUN_ALONG, Length.parse("100 m"), Source.GIVEN)
      .with(LayingRules.MAXIMUM_RUN_ACROSS, Length.parse("100 m"), Source.GIVEN);

  /** The squares of a 3 by 3 grid that a mask names, as one room; none if they are no simple room. */
  private static Outline room(int mask, List<Integer> sizes) {
    int[] at = new int[8];
    for (int k = 0; k < 3; k++) {
      at[k + 1] = at[k] + sizes.get(k);
      at[k + 5] = at[k + 4] + sizes.get(k + 3);
    }
    Map<Integer, Integer> next = new TreeMap<>(); // nodes of a 4 by 4 grid
    for (int c = 0; c < 9; c++) {
      int x = c % 3;
      int y = c / 3;
      int node = 4 * y + x;
      int[][] sides = {{node, node + 1, y > 0 ? c - 3 : -1}, {node + 1, node + 5, x < 2 ? c + 1 : -1},
          {node + 5, node + 4, y < 2 ? c + 3 : -1}, {node + 4, node, x > 0 ? c - 1 : -1}};
      for (int[] side : sides) {
        boolean wall = (mask >> c & 1) == 1 && (side[2] < 0 || (mask >> side[2] & 1) == 0);
        Assume.that(!wall || next.put(side[0], side[1]) == null);
      }
    }
    Assume.that(!next.isEmpty());
    int start = next.keySet().iterator().next();
    List<Integer> nodes = new ArrayList<>();
    for (int node = start; nodes.isEmpty() || node != start; node = next.get(node)) {
      nodes.add(node);
    }
    Assume.that(nodes.size() == next.size());
    List<Point> corners = new ArrayList<>();
    int n = nodes.size();
    for (int i = 0; i < n; i++) {
      int in = nodes.get(i) - nodes.get((i + n - 1) % n);
      int out = nodes.get((i + 1) % n) - nodes.get(i);
      if (in != out) {
        corners.add(Point.ofMillimetres(at[nodes.get(i) % 4], at[4 + nodes.get(i) / 4]));
      }
    }
    return Outline.of(Ring.of(corners));
  }

  private static BaySplit split(Outline room, Direction boards) {
    BaySplit split = BaySplit.of(room, boards, List.of(), RULES).value();
    assertThat(split.isProvenLeast()).isTrue();
    return split;
  }

  @Property(tries = 300)
  void noOtherBreaksAreShorter(@ForAll @IntRange(min = 1, max = 511) int mask,
      @ForAll @Size(6) List<@IntRange(min = 200, max = 2500) Integer> sizes) {
    Outline room = room(mask, sizes);
    BruteForce all = new BruteForce(room, 500);
    Assume.that(all.pieces() <= 14);
    assertThat(split(room, Direction.ALONG_X).length().toMillimetres()).isCloseTo(all.least(), within(1e-6));
  }

  @Property(tries = 300)
  void everyBayIsFreeAndTogetherTheyCoverTheRoom(@ForAll @IntRange(min = 1, max = 511) int mask,
      @ForAll @Size(6) List<@IntRange(min = 200, max = 4000) Integer> sizes, @ForAll @IntRange(min = 0, max = 11) int twelfths) {
    Outline room = room(mask, sizes);
    BaySplit split = split(room, Direction.fromDegrees(30 * twelfths));
    assertThat(split.parts()).allSatisfy(part -> {
      assertThat(BruteForce.deepestRecess(BruteForce.polygon(part))).isLessThanOrEqualTo(500.002);
      assertThat(BayFreedom.of("bay", part, RULES).value().isFree()).isTrue();
    });
    Area sum = split.parts().stream().map(Outline::area).reduce(Area.ZERO, Area::plus);
    if (twelfths % 3 == 0) {
      assertThat(sum).isEqualTo(room.area());
    } else { // ends of slanted breaks are rounded to nanometres
      assertThat(sum.minus(room.area()).abs().toSquareMetres()).isLessThan(1e-6);
    }
    assertThat(split.parts().size()).isGreaterThanOrEqualTo(split.breaks().isEmpty() ? 1 : 2);
  }

  @Property(tries = 150)
  void aRoomMirroredTurnedMovedOrListedFromAnotherCornerIsSplitByTheSameLength(
      @ForAll @IntRange(min = 1, max = 511) int mask, @ForAll @Size(6) List<@IntRange(min = 200, max = 4000) Integer> sizes,
      @ForAll @IntRange(min = 0, max = 3) int quarters, @ForAll @IntRange(min = -100_000, max = 100_000) int off) {
    Outline room = room(mask, sizes);
    BaySplit split = split(room, Direction.ALONG_X);
    Direction turned = Direction.ALONG_X.plusQuarterTurns(quarters);
    assertThat(split(turned.toRoom(room), turned).length()).isEqualTo(split.length());
    assertThat(split(room.mirrored(), Direction.ALONG_X).length()).isEqualTo(split.length());
    assertThat(split(room.startingAt(room.shell().size() / 2), Direction.ALONG_X).length()).isEqualTo(split.length());
    Length by = Length.ofNanometres(off * 1001L);
    assertThat(split(room.moved(by, by.negated()), Direction.ALONG_X).breaks()).map(ExpansionBreak::from).isEqualTo(split.breaks()
        .stream().map(line -> Point.of(line.from().x().plus(by), line.from().y().minus(by))).toList());
  }
}
