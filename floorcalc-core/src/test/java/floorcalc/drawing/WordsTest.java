package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class WordsTest {
  @Test
  void roundsForTheEyeAlone() {
    assertThat(Words.tenths(Length.ofMillimetres("141.45"))).isEqualTo("141.5");
    assertThat(Words.tenths(Length.ofMillimetres("141.449999"))).isEqualTo("141.4");
    assertThat(Words.tenths(Length.ofMillimetres("185"))).isEqualTo("185");
    assertThat(Words.tenths(Length.ofMillimetres("0.04"))).isEqualTo("0");
    assertThat(Words.whole(Length.ofMillimetres("4195.026"))).isEqualTo("4195");
    assertThat(Words.whole(Length.ofMillimetres(200_000))).isEqualTo("200\u00a0000");
    assertThat(Words.degrees(new BigDecimal("37.5"))).isEqualTo("37.5\u00b0");
    assertThat(Words.degrees(new BigDecimal("0.001"))).isEqualTo("0\u00b0");
  }

  @Test
  void groupsThousandsFromFiveDigitsOn() {
    assertThat(Words.grouped(9999)).isEqualTo("9999");
    assertThat(Words.grouped(10_000)).isEqualTo("10\u00a0000");
    assertThat(Words.grouped(1_234_567)).isEqualTo("1\u00a0234\u00a0567");
    assertThat(Words.count(1, "row", "rows")).isEqualTo("1 row");
    assertThat(Words.count(2, "row", "rows")).isEqualTo("2 rows");
  }

  @Test
  void shortensLists() {
    assertThat(Words.list(List.of("1", "2"), 2)).isEqualTo("1, 2");
    assertThat(Words.list(List.of("1", "2", "3"), 2)).isEqualTo("1, 2 and 1 more");
  }

  @Test
  void breaksLinesAtSpaces() {
    // A digit takes 0.64 em, a space 0.34 em: "11 22" takes 2.9 em.
    assertThat(Words.wrap("11 22 33", 1, 2.9)).containsExactly("11 22", "33");
    assertThat(Words.wrap("11 22 33", 1, 2.8)).containsExactly("11", "22", "33");
    assertThat(Words.wrap("11111 2", 1, 2.9)).containsExactly("11\u2026", "2");
    assertThat(Words.wrap("", 1, 9)).isEmpty();
  }
}
