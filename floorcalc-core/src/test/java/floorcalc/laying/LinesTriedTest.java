package floorcalc.laying;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** Bounds of the library's own; each figure by hand. */
class LinesTriedTest {
  /** 3000 rows / 30 = 100 lines, more than 24; 300 000 pieces / 150 = 2000 layings in 2 bays. */
  @Test
  void aRoomTriesAsManyAsAreTriedAtMost() {
    assertThat(LinesTried.of(30, 2, 150)).isEqualTo(new LinesTried(2, 24));
  }

  /** 3000 / 250 = 12. */
  @Test
  void rowsBoundTheLines() {
    assertThat(LinesTried.of(250, 1, 5_000)).isEqualTo(new LinesTried(1, 12));
  }

  /** 3000 / 2000 = 1, but 3 at least; 300 000 / 60 000 = 5 layings. */
  @Test
  void threeAreTriedInAHallOfManyRows() {
    assertThat(LinesTried.of(2_000, 1, 60_000)).isEqualTo(new LinesTried(1, 3));
  }

  /** 300 000 / 1500 = 200 layings, 200 / 40 bays = 5 each. */
  @Test
  void manyBaysShareTheLayings() {
    assertThat(LinesTried.of(100, 40, 1_500)).isEqualTo(new LinesTried(40, 5));
  }

  /** 53 059 pieces at 2 places of a pattern: 300 000 / 106 118 = 2 layings, one each in two of 67 bays. */
  @Test
  void whereTheLayingsAreFewerThanTheBaysOnlyTheFirstAreMoved() {
    assertThat(LinesTried.of(7_597, 67, 106_118)).isEqualTo(new LinesTried(2, 1));
  }

  @Test
  void onAFloorOfMorePiecesNoneIsTried() {
    assertThat(LinesTried.of(10_000, 3, 300_001).bays()).isZero();
  }

  @Property
  void neverAreMorePiecesLaid(@ForAll @IntRange(max = 100_000) int rows, @ForAll @IntRange(max = 500) int bays,
      @ForAll @LongRange(min = 1, max = 10_000_000) long pieces) {
    LinesTried limit = LinesTried.of(rows, bays, pieces);
    assertThat(limit.bays() * limit.lines() * pieces).isBetween(0L, 300_000L);
  }
}
