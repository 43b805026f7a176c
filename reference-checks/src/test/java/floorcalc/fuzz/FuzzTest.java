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
