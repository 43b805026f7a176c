package floorcalc.plan;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PlanFiguresTest {
  private static PlanFigures figures(int offset, int inLine, int stairs, int cuts, int leftover) {
    return new PlanFigures(offset < 0 ? Optional.empty() : Optional.of(Length.ofMillimetres(offset)), inLine, stairs, cuts,
        Length.ofMillimetres(leftover));
  }

  @Test
  void patternsCountBeforeOffsetBeforeCutsBeforeLeftover() {
    List<PlanFigures> nicestFirst = List.of(
        figures(-1, 0, 0, 90, 0),
        figures(400, 0, 0, 80, 100),
        figures(300, 0, 0, 70, 500),
        figures(300, 0, 0, 70, 400),
        figures(300, 0, 0, 71, 900),
        figures(500, 0, 1, 10, 900),
        figures(500, 1, 1, 10, 900));
    for (int i = 0; i < nicestFirst.size(); i++) {
      for (int k = 0; k < nicestFirst.size(); k++) {
        assertThat(Integer.signum(nicestFirst.get(i).compareNiceness(nicestFirst.get(k)))).isEqualTo(Integer.compare(i, k));
      }
    }
    assertThat(Stream.of(3, 1, 6, 0).map(nicestFirst::get).sorted(PlanFigures::compareNiceness))
        .containsExactly(nicestFirst.get(0), nicestFirst.get(1), nicestFirst.get(3), nicestFirst.get(6));
  }

  @Test
  void anHAndAStairAreTwoPatterns() {
    assertThat(figures(300, 1, 1, 10, 0).patterns()).isEqualTo(2);
  }
}
