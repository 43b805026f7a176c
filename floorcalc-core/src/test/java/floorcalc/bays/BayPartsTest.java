package floorcalc.bays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import java.util.List;
import org.junit.jupiter.api.Test;

class BayPartsTest {
  private static final Outline L = Wkt.parse("POLYGON ((0 0, 4000 0, 4000 2000, 2000 2000, 2000 3000, 0 3000, 0 0))");

  @Test
  void aRoomWithoutABreakIsOnePart() {
    assertThat(BayParts.of(L, List.of()).parts()).containsExactly(L);
  }

  @Test
  void aBreakPartsARoom() {
    ExpansionBreak line = ExpansionBreak.given(Point.ofMillimetres(0, 2000), Point.ofMillimetres(2000, 2000));
    BayParts parts = BayParts.of(L, List.of(line));
    assertThat(parts.parts()).map(Wkt::write).containsExactly("POLYGON ((0 0, 4000 0, 4000 2000, 0 2000, 0 0))",
        "POLYGON ((0 2000, 2000 2000, 2000 3000, 0 3000, 0 2000))");
    assertThat(parts.breaks()).containsExactly(line);
    assertThat(parts.room()).isEqualTo(L);
    assertThat(line.length()).isEqualTo(Length.ofMillimetres(2000));
  }

  @Test
  void whatIsNoLineIsRefused() {
    Point here = Point.ofMillimetres(1, 2);
    assertThatThrownBy(() -> ExpansionBreak.given(here, here)).hasMessage("an expansion break must be longer than 0 mm, but"
        + " both its ends lie at (1 mm, 2 mm); give two ends that differ");
    assertThatThrownBy(() -> new Opening("D1", here, here)).hasMessage("opening 'D1' must be wider than 0 mm, but both its"
        + " sides lie at (1 mm, 2 mm); give its two sides");
  }
}
