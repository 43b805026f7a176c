package floorcalc.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The search against the habit, on a share of the small cases; {@link BoardComparison} takes them all. */
class HabitComparisonTest {
  private static final int SHARE = 500;

  /** It breaks fewer rules, or as many with no more boards. */
  @Test
  void searchNeverWorseThanHabit() {
    List<BoardCase> worse = BoardCases.small(SHARE).parallel()
        .filter(given -> !LaidCase.bySearch(given).isNoWorseThan(LaidCase.byHabit(given))).toList();

    assertThat(worse).isEmpty();
  }
}
