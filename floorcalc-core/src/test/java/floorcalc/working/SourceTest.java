package floorcalc.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class SourceTest {
  @Test
  void text() {
    assertThat(new Source("Laying boards", "Example Institute", 2019, "clause 8.2", Standing.READ))
        .hasToString("Laying boards, Example Institute, 2019, clause 8.2 (read in the source)");
    assertThat(new Source("Laying boards", "", 0, "", Standing.QUOTED)).hasToString("Laying boards (quoted by another)");
    assertThat(new Source("", "Example Institute", 0, "p. 3", Standing.FROM_MEMORY))
        .hasToString("Example Institute, p. 3 (from memory)");
    assertThat(Source.DEFINITION).hasToString("definition");
    assertThat(Source.COMMON_PRACTICE).hasToString("common practice, no source");
    assertThat(Source.GIVEN).hasToString("given in the job");
  }

  @Test
  void refuses() {
    assertThatThrownBy(() -> new Source("", "", -1, "", Standing.READ)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("year must not be negative, but was -1");
    assertThatThrownBy(() -> new Source(null, "", 0, "", Standing.READ)).isInstanceOf(NullPointerException.class)
        .hasMessage("title");
    assertThatThrownBy(() -> new Source("", "", 0, "", null)).isInstanceOf(NullPointerException.class)
        .hasMessage("standing");
  }

  @Test
  void everyStandingHasWordsOfItsOwn() {
    assertThat(Arrays.stream(Standing.values()).map(Standing::words)).doesNotHaveDuplicates().doesNotContain("");
  }
}
