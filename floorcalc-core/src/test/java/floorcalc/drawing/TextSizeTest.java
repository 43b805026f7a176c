package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TextSizeTest {
  /** Source: drawing/advance_widths.csv, the advance widths of two widely installed faces. */
  @Test
  void noCharacterIsWiderThanReckoned() {
    assertThat(Widths.FACES).hasSizeGreaterThan(300);
    Widths.FACES.forEach((c, faces) -> {
      String text = Character.toString(c);
      assertThat(TextSize.width(text)).as("width of '%s' (%x)", text, c).isGreaterThanOrEqualTo(faces[0])
          .isGreaterThanOrEqualTo(faces[1]);
    });
  }

  @Test
  void addsUpWidths() {
    assertThat(TextSize.width("120")).isCloseTo(3 * 0.64, within(1e-12));
    assertThat(TextSize.width("")).isZero();
  }

  @Test
  void cutsWhatIsTooWide() {
    assertThat(TextSize.cut("Hall", 2, 100)).isEqualTo("Hall");
    // An ellipsis takes 1.02 em and a digit 0.64 em: three digits fit into 3 em.
    assertThat(TextSize.cut("123456789", 1, 3)).isEqualTo("123\u2026");
    assertThat(TextSize.cut("12 456789", 1, 2.8)).isEqualTo("12\u2026");
    assertThat(TextSize.cut("\uD83D\uDE00\uD83D\uDE00\uD83D\uDE00", 1, 3)).isEqualTo("\uD83D\uDE00\u2026");
  }
}
