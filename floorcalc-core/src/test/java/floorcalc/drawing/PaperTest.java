package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.outline.Outline;
import org.junit.jupiter.api.Test;

class PaperTest {
  private static Paper paper(long width, long height) {
    return Paper.fit(Outline.of(Rooms.ring(0, 0, width, 0, width, height, 0, height))).get(1);
  }

  /** Upright there is room for 150 mm by 160 mm, lying for 216 mm by 103 mm, with much room for notes. */
  @Test
  void takesTheLargestRoundScaleOfBothWays() {
    // Upright 5500 / 150 = 36.7, so 1:40; lying 3900 / 103 = 37.9, so 1:40 as well: upright.
    assertThat(paper(5500, 3900).scale()).isEqualTo(40);
    assertThat(paper(5500, 3900).width()).isEqualTo(184);
    // Upright 7000 / 150 = 46.7, so 1:50; lying 7000 / 216 = 32.4 and 2500 / 103 = 24.3, so 1:40.
    assertThat(paper(7000, 2500).scale()).isEqualTo(40);
    assertThat(paper(7000, 2500).width()).isEqualTo(250);
    assertThat(paper(450, 320).scale()).isEqualTo(10);
    // 150 mm at 1:25 are 3750 mm to the millimetre.
    assertThat(paper(3750, 3750).scale()).isEqualTo(25);
    assertThat(paper(3751, 3751).scale()).isEqualTo(30);
  }

  /** With little room for notes the room may be 178 mm high upright and 118 mm lying. */
  @Test
  void triesWithLittleRoomForNotesFirst() {
    Outline outline = Outline.of(Rooms.ring(0, 0, 5000, 0, 5000, 8800, 0, 8800));
    // Upright 8800 / 178 = 49.4, so 1:50; with more notes 8800 / 160 = 55, so 1:60.
    assertThat(Paper.fit(outline)).extracting(Paper::scale).containsExactly(50L, 60L);
  }

  @Test
  void goesOnBeyondTheLastScaleOfARuler() {
    // Lying 200 000 / 216 = 926.
    assertThat(paper(200_000, 1500).scale()).isEqualTo(1000);
    // Lying 2 000 000 / 216 = 9259.
    assertThat(paper(2_000_000, 1500).scale()).isEqualTo(10_000);
    // Upright 9e9 / 150 = 60 000 000 (lying 9e9 / 103 = 87 378 641).
    assertThat(paper(9_000_000_000L, 9_000_000_000L).scale()).isEqualTo(100_000_000);
  }

  @Test
  void mapsTheRoomOntoTheSheet() {
    Paper paper = paper(3000, 4500);
    // 4500 / 160 = 28.1, so 1:30: 100 mm by 150 mm; 100 mm in the middle of 150 mm after 20 mm begin at 45 mm.
    assertThat(paper.x(0)).isCloseTo(45, within(1e-9));
    assertThat(paper.x(3_000_000_000L)).isCloseTo(145, within(1e-9));
    // y runs down: the top wall is 14 mm and 13 mm below the edge, the bottom wall 150 mm further.
    assertThat(paper.y(4_500_000_000L)).isCloseTo(27, within(1e-9));
    assertThat(paper.y(0)).isCloseTo(177, within(1e-9));
    assertThat(paper.of(Rooms.mm(180))).isCloseTo(6, within(1e-9));
    assertThat(paper.floor(6)).isCloseTo(180, within(1e-9));
  }
}
