package floorcalc.examples.explain;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.examples.Ran;
import java.util.Arrays;
import java.util.stream.Stream;

/** What {@code explain} says to the words behind it. */
final class Explained {
  private Explained() {}

  private static Ran ran(String... words) {
    return Ran.with(Stream.concat(Stream.of("explain"), Arrays.stream(words)).toArray(String[]::new));
  }

  /** The working, where nothing is complained of. */
  static String explained(String... words) {
    Ran ran = ran(words);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.exit()).isZero();
    return ran.out();
  }

  /** The complaint, where nothing is worked out. */
  static String refused(String... words) {
    Ran ran = ran(words);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).doesNotContain("\tat ").doesNotContain("Exception");
    return ran.err();
  }
}
