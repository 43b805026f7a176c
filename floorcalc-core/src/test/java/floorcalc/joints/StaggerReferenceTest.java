package floorcalc.joints;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Joints that go round a board length, against two tables of the three-gap theorem; what each was made from stands at
 * the head of its file under {@code reference/}.
 */
@Tag("reference")
class StaggerReferenceTest {
  private static final int ROWS = 12;

  /** Whole offcuts carried on: row k starts with a piece of (-k W) mod L, which is a fixed step of L - W mod L. */
  @ParameterizedTest(name = "boards of {0} in rows of {1}")
  @CsvFileSource(resources = "/reference/stagger_offcut_carry.csv", useHeadersInDisplayName = true)
  void carriedOffcut(long board, long run, long rest, long offset, long period, String firstPieces, String gaps) {
    JointPattern pattern = JointPattern.ofStep(Length.ofMillimetres(board - rest));
    Length length = Length.ofMillimetres(board);
    assertThat(pattern.neighbourOffset(length)).contains(Length.ofMillimetres(offset));
    assertThat(pattern.repeatsAfter(length)).hasValue(period);

    List<Long> first = Arrays.stream(firstPieces.split(" ")).map(Long::valueOf).toList();
    assertThat(first).hasSize(ROWS);
    TreeSet<Long> places = new TreeSet<>();
    List<List<Length>> rows = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      long shift = pattern.shift(row, length).toNanometres() / 1_000_000;
      assertThat(shift == 0 ? board : shift).isEqualTo(first.get(row));
      places.add(shift);
      rows.add(LongStream.iterate(first.get(row), at -> at < run, at -> at + board).mapToObj(Length::ofMillimetres)
          .toList());
    }
    assertThat(JointLayout.of(rows).smallestOffset().orElseThrow().offset()).isEqualTo(Length.ofMillimetres(offset));

    TreeSet<Long> distinct = new TreeSet<>();
    long before = places.last() - board;
    for (long place : places) {
      distinct.add(place - before);
      before = place;
    }
    assertThat(distinct).map(String::valueOf).containsExactly(gaps.split(" "));
  }

  /**
   * A step of alpha boards, alpha to the printed 12 decimals, in a board of 1000 m so that the step is whole
   * nanometres. Gaps are printed to 9 decimals and N times them to 6: tolerance half of the last digit, and what the cut-off
   * decimals of alpha add up to over 100 rows.
   */
  @ParameterizedTest(name = "{0}, {2} rows")
  @CsvFileSource(resources = "/reference/stagger_three_gap.csv", useHeadersInDisplayName = true)
  void stepsDivideABoardIntoAtMostThreeLengths(String sequence, String alpha, int rows, int distinct, String gaps,
      double least, double most, double discrepancy) {
    Length board = Length.ofMillimetres(1_000_000);
    JointPattern pattern = JointPattern.ofStep(Length.ofNanometres(new BigDecimal(alpha).movePointRight(12).longValueExact()));
    long[] places = new long[rows];
    for (int row = 0; row < rows; row++) {
      places[row] = pattern.shift(row, board).toNanometres();
    }
    Arrays.sort(places);
    TreeMap<Long, Integer> counts = new TreeMap<>();
    for (int i = 0; i < rows; i++) {
      long next = i + 1 < rows ? places[i + 1] : places[0] + board.toNanometres();
      counts.merge(next - places[i], 1, Integer::sum);
    }
    assertThat(counts).hasSize(distinct);
    String[] printed = gaps.split(" ");
    assertThat(printed).hasSize(distinct);
    int i = 0;
    for (var gap : counts.entrySet()) {
      String[] lengthAndCount = printed[i++].replace(")", "").split("\\(x");
      assertThat(gap.getKey() / 1e12).isCloseTo(Double.parseDouble(lengthAndCount[0]), within(0.5e-9 + 1e-10));
      assertThat(gap.getValue()).isEqualTo(Integer.valueOf(lengthAndCount[1]));
    }
    assertThat(counts.firstKey() * (double) rows / 1e12).isCloseTo(least, within(0.5e-6 + 1e-8));
    assertThat(counts.lastKey() * (double) rows / 1e12).isCloseTo(most, within(0.5e-6 + 1e-8));
  }
}
