package floorcalc.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A sample of the cases that {@link Fuzz} tries for longer. */
class FuzzTest {
  private static final long SEED = 20_261_129;

  /** Each case ends in a result or in a refusal that says what is wrong and where, and both happen: else nothing behind the door is tried. */
  @ParameterizedTest
  @EnumSource(Target.class)
  void nothingElseThanAResultOrARefusal(Target target) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    Fuzz fuzz = Fuzz.tried(target, SEED, target.sample(), new PrintStream(said, true, StandardCharsets.UTF_8));
    assertThat(fuzz.faults()).as(said.toString(StandardCharsets.UTF_8)).isZero();
    assertThat(fuzz.ended(Ending.DONE)).isPositive();
    assertThat(fuzz.ended(Ending.REFUSED)).isPositive();
  }

  /** Found by such cases, with what was wrong: each of them ended in an exception that says nothing to who wrote the file. */
  @Test
  void foundBefore() {
    // An exponent of eleven digits in a number.
    assertThat(Target.JOB_BYTES.tried("[1e10000000000]".getBytes(StandardCharsets.UTF_8), 1, 1)).isEqualTo(Ending.REFUSED);
    // A slot whose walls are a nanometre apart: a cut ran along it, off the floor on one side.
    planned("POLYGON ((7.561752 -23.566405, -1673.337045 214.645241, -1830.515841 -1251.207543, -895.477044 76.613026,"
        + " -1830.51584 -1251.207543, 7.561752 -23.566405))", 20);
    // A wall that folds back by 30 nm: the search refused the breaks that it had found.
    planned("POLYGON ((0 0, 51480 -0.00003, 51479.99997 96359.99997, 51480 96359.99997, -0.00003 96360.00003, 0 0))", 3);
    // A needle of floor as thin as a nanometre and higher than the rest of its part: a place was looked for in it, and the part taken for a void.
    planned("POLYGON ((-0.000001 2841.900001, 0 -0.000001, 900.142935 0, 900.142934 1724.899999, 1444.142933 1724.900001,"
        + " 1444.142933 -0.000001, 3512.142933 -0.000001, 3512.142933 2841.900001, 1444.142934 2841.9, 1444.142934 2147.899999,"
        + " 1002.142933 2786.899999, 1444.142933 2147.899999, 900.142933 2147.900001, 900.142933 2841.899999, -0.000001 2841.900001))", 20);
    // A gap of a nanometre beside corners that are as near to each other: rounded, the floor crossed a wall.
    planned("POLYGON ((2745 0, 2745 0.000001, 2189.355018 1837.086988, 313.608609 1778.562802, -1059.5 1835.107831, -1490.352497 542.443947,"
        + " -757.392252 -275.668236, -757.392251 -275.668236, -1151 -1993.59048, 479.616267 -2720.039014, 1443.993775 -1211.654644, 2745 0))", 20);
    // A void of no area turned round each time it was read.
    assertThat(Target.WKT.tried("POLYGON ((0 0, 4 0, 4 3, 0 0), (0 0, 1822 267, 911 133.5, 0 0))".getBytes(StandardCharsets.UTF_8), 1, 1))
        .isEqualTo(Ending.DONE);
  }

  /** Plans a room by chance in several ways: each ends well or in a refusal, or throws what is a fault; and at least one is laid. */
  private static void planned(String wkt, int ways) {
    int laid = 0;
    for (int way = 0; way < ways; way++) {
      laid += Target.OUTLINES.tried(wkt.getBytes(StandardCharsets.UTF_8), 1, way) == Ending.DONE ? 1 : 0;
    }
    assertThat(laid).isPositive();
  }
}
