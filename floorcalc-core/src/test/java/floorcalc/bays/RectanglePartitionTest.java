package floorcalc.bays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.StepChecks;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Working of the fewest rectangles of 18 right-angled rooms, whose numbers the reference suite checks, and bays of least length beside them;
 * sources at the head of {@code reference/rectilinear_partition.csv}.
 */
class RectanglePartitionTest {
  private static final LayingRules NOTHING_LET_PASS = RuleSet.COMMON_PRACTICE.forBoard(Length.parse("14 mm"), Length.parse("185 mm"))
      .with(LayingRules.DEEPEST_RECESS, Length.ZERO, Source.GIVEN).with(LayingRules.WIDEST_VOID, Length.ZERO, Source.GIVEN)
      .with(LayingRules.MAXIMUM_RUN_ALONG, Length.parse("1000 m"), Source.GIVEN)
      .with(LayingRules.MAXIMUM_RUN_ACROSS, Length.parse("1000 m"), Source.GIVEN);

  private record Row(String shape, int rectangles, Outline room) {
  }

  private static List<Row> rows() {
    try (BufferedReader lines = new BufferedReader(new InputStreamReader(
        RectanglePartitionTest.class.getResourceAsStream("/reference/rectilinear_partition.csv"), StandardCharsets.UTF_8))) {
      return lines.lines().filter(line -> line.contains("POLYGON")).map(line -> {
        String[] cells = line.split(",", 8);
        return new Row(cells[0], Integer.parseInt(cells[6]), Wkt.parse(cells[7].replace("\"", ""), Wkt.Unit.METRES));
      }).collect(Collectors.toList());
    } catch (java.io.IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }

  @TestFactory
  List<DynamicTest> stepsOfEachRowAddUp() {
    List<Row> rows = rows();
    assertThat(rows).hasSize(18);
    return rows.stream().map(row -> DynamicTest.dynamicTest(row.shape(), () -> {
      Calculated<RectanglePartition> partition = RectanglePartition.of(row.room());
      assertThat(partition.value().rectangles()).isEqualTo(row.rectangles());
      StepChecks.assertStepsHold(partition);
    })).toList();
  }

  /** Where nothing is let pass every bay is a rectangle, so there are no fewer; least length takes no more in any of these rooms. */
  @TestFactory
  List<DynamicTest> leastLengthHasNoFewerBays() {
    return rows().stream().map(row -> DynamicTest.dynamicTest(row.shape(), () -> {
      for (double degrees : new double[] {0, 90}) {
        BaySplit split = BaySplit.of(row.room(), Direction.fromDegrees(degrees), List.of(), NOTHING_LET_PASS).value();
        assertThat(split.isProvenLeast()).isTrue();
        assertThat(split.parts()).allSatisfy(part -> assertThat(part.size()).isEqualTo(4));
        assertThat(split.parts()).hasSize(row.rectangles());
      }
    })).toList();
  }

  /** A room in which two short cuts cost less than one long chord: three bays of least length, two rectangles at the fewest. */
  @Test
  void fewestBaysAndLeastLengthNeedNotGoTogether() {
    Outline room = Wkt.parse("POLYGON ((0 0, 9000 0, 9000 1000, 8000 1000, 8000 2000, 1000 2000, 1000 1000, 0 1000, 0 0))");
    // One chord of 7000 from (1000, 1000) to (8000, 1000) leaves two rectangles; two cuts of 1000 down leave three.
    assertThat(RectanglePartition.of(room).value().rectangles()).isEqualTo(2);
    BaySplit split = BaySplit.of(room, Direction.ALONG_X, List.of(), NOTHING_LET_PASS).value();
    assertThat(split.length()).isEqualTo(Length.ofMillimetres(2000));
    assertThat(split.parts()).hasSize(3);
  }

  @Test
  void cornersOnStraightWallsAreNotCounted() {
    assertThat(RectanglePartition.of(Wkt.parse("POLYGON ((0 0, 2000 0, 4000 0, 4000 3000, 0 3000, 0 0))")).value().rectangles())
        .isEqualTo(1);
  }

  @Test
  void slantedWallsAreRefused() {
    assertThatThrownBy(() -> RectanglePartition.of(Wkt.parse("POLYGON ((0 0, 4000 0, 4000 3000, 10 3000, 0 0))")))
        .isInstanceOf(IllegalArgumentException.class).hasMessage("wall 4 from (10 mm, 3000 mm) to (0 mm, 0 mm) lies neither along x nor"
            + " along y; rectangles are counted in right-angled rooms alone");
  }
}
