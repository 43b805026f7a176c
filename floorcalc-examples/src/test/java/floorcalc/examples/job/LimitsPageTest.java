package floorcalc.examples.job;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.examples.Docs;
import floorcalc.laying.JobCheck;
import floorcalc.outline.OutlineCheck;
import java.io.IOException;
import java.util.Locale;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The limits that {@code docs/limits.md} prints are those of the code. */
class LimitsPageTest {
  static Object[] rows() {
    return new Object[] {
      row("coordinates of a room", OutlineCheck.FURTHEST.toNanometres() / 1_000_000_000_000L),
      row("corners of a room, voids included", OutlineCheck.MOST_CORNERS),
      row("faults of an outline that are listed", OutlineCheck.MOST_FAULTS),
      row("pieces of a job, by a rough count", JobCheck.MOST_PIECES),
      row("rooms of a job; doors, and pipes, of a room; openings, and given breaks, of a room", JobCheck.MOST_ROOMS, JobCheck.MOST_DOORS_OR_PIPES,
          JobCheck.MOST_OPENINGS_OR_BREAKS),
      row("shortest board", JobCheck.SHORTEST_BOARD.toNanometres() / 1_000_000),
      row("a file", JobLimits.FILE_BYTES, JobLimits.VALUES, JobLimits.DEPTH),
      row("mistakes that are listed", JobLimits.MISTAKES_LISTED),
      row("a title, a name, any other text", JobLimits.TEXT),
      row("rooms in a job", JobLimits.ROOMS),
      row("corners of a ring", JobLimits.CORNERS),
      row("voids, doors, pipes in a room", JobLimits.VOIDS, JobLimits.DOORS, JobLimits.PIPES),
      row("walls, ties, offsets of a survey", JobLimits.WALLS, JobLimits.TIES, JobLimits.OFFSETS),
      row("readings of one kind in a room", JobLimits.READINGS),
      row("boards in a job, by a rough count", JobLimits.BOARDS),
      row("boards of one length in a pack; lengths in a pack", JobLimits.PER_PACK, JobLimits.MIXED_LENGTHS),
      row("decimals of a number", JobLimits.DECIMALS)
    };
  }

  private static Arguments row(String name, long... limits) {
    return Arguments.of(name, limits);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void printsTheLimit(String name, long[] limits) throws IOException {
    String line = Docs.page("limits.md").lines().filter(text -> text.startsWith("| " + name + " |")).findFirst()
        .orElseThrow();
    assertThat(LongStream.of(limits).mapToObj(limit -> String.format(Locale.ROOT, "%,d", limit).replace(',', ' ')))
        .allSatisfy(limit -> assertThat(line).containsPattern("(?<![0-9]|[0-9] )" + limit + "(?! ?[0-9])"));
  }
}
