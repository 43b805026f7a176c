package floorcalc.trims;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Standing;
import java.util.List;
import org.junit.jupiter.api.Test;

class TrimPiecingTest {
  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static List<TrimPiece> parts(TrimPiece piece, long least) {
    Calculated<List<TrimPiece>> calculated = TrimPiecing.of(List.of(piece), mm(2400), mm(least));
    if (!calculated.steps().isEmpty()) {
      assertStepsHold(calculated);
    }
    return calculated.value();
  }

  /** 5600 = 2400 + 2400 + 800. */
  @Test
  void wholeBarsAndTheRest() {
    List<TrimPiece> parts = parts(TrimPiece.of("hall, east wall", mm(5600)).times(2), 600);
    assertThat(parts).extracting(TrimPiece::length).containsExactly(mm(2400), mm(2400), mm(800));
    assertThat(parts).extracting(TrimPiece::name).containsExactly("hall, east wall, part 1 of 3", "hall, east wall, part 2 of 3",
        "hall, east wall, part 3 of 3");
    assertThat(parts).extracting(TrimPiece::count).containsOnly(2);
  }

  /** 5000 = 2400 + 2400 + 200; 200 mm is less than 600 mm, so the last is 600 mm and the one before it 2000 mm. */
  @Test
  void noPartShorterThanTheLeast() {
    assertThat(parts(TrimPiece.of("wall", mm(5000)), 600)).extracting(TrimPiece::length)
        .containsExactly(mm(2400), mm(2000), mm(600));
  }

  /** With 30 mm for joints and corners a bar gives 2370 mm: 4740 is two of them, one nanometre more is three. */
  @Test
  void theAllowanceIsOnEachPart() {
    List<TrimPiece> two = parts(TrimPiece.of("wall", mm(4740)).withAllowance(mm(30)), 0);
    assertThat(two).extracting(TrimPiece::cutLength).containsExactly(mm(2400), mm(2400));

    List<TrimPiece> three = parts(new TrimPiece("wall", mm(4740).plus(Length.ofNanometres(1)), mm(30), 1), 0);
    assertThat(three).extracting(TrimPiece::length).containsExactly(mm(2370), mm(2370), Length.ofNanometres(1));
  }

  @Test
  void shortPiecesStayAsTheyAre() {
    TrimPiece piece = TrimPiece.of("wall", mm(2370)).withAllowance(mm(30));
    assertThat(parts(piece, 600)).containsExactly(piece);
  }

  @Test
  void theCustomIsMarkedAsSuch() {
    Calculated<List<TrimPiece>> calculated = TrimPiecing.of(List.of(TrimPiece.of("wall", mm(5000))), mm(2400), mm(600));
    assertThat(calculated.steps().get(1).source().standing()).isEqualTo(Standing.COMMON_PRACTICE);
    assertThat(calculated.steps().get(0).result()).isEqualTo(3L);
  }

  @Test
  void badInputIsRefused() {
    assertThatThrownBy(() -> parts(TrimPiece.of("wall", mm(5000)), 1201)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("least piece must be at most half of what a bar of 2400 mm gives with the allowance of piece 'wall',"
            + " 0 mm, but was 1201 mm");
    assertThatThrownBy(() -> parts(TrimPiece.of("wall", mm(5000)).withAllowance(mm(2400)), 0))
        .hasMessageContaining("least piece must be at most half");
    assertThatThrownBy(() -> parts(TrimPiece.of("wall", mm(5000)), -1))
        .hasMessage("least piece must be 0 mm or more, but was -1 mm");
    assertThatThrownBy(() -> TrimPiecing.of(List.of(), mm(0), mm(0)))
        .hasMessage("longest bar must be more than 0 mm, but was 0 mm");
    assertThatThrownBy(() -> parts(TrimPiece.of("wall", mm(2_400_001)), 0))
        .hasMessageContaining("would be made up of 1001 parts, at most 1000 are");
  }
}
