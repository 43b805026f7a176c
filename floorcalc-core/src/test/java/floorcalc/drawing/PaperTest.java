package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.outline.Outline;
import org.junit.jupiter.api.Test;

class PaperTest {
  private static Paper paper(long width, long height) {
    return Paper.fit(Outline.of(Rooms.ring(0, 0, width, 0, width, height, 0, height)));
  }

  /** Upright there is room for 156 mm by 187 mm, lying for 243 mm by 109 mm. */
  @Test
  void takesTheLargestRoundScaleOfBothWays() {
    // Upright 4210 / 156 = 27.0, so 1:40; lying 3620 / 109 = 33.2, so 1:40 as well: upright.
    assertThat(paper(4210, 3620).scale()).isEqualTo(40);
    assertThat(paper(4210, 3620).width()).isEqualTo(190);
    // Upright 7000 / 156 = 44.9, so 1:50; lying 7000 / 243 = 28.8 and 2500 / 109 = 22.9, so 1:40.
    assertThat(paper(7000, 2500).scale()).isEqualTo(40);
    assertThat(paper(7000, 2500).width()).isEqualTo(277);
    assertThat(paper(450, 320).scale()).isEqualTo(10);
    // 156 mm at 1:25 are 3900 mm to the millimetre.
    assertThat(paper(3900, 3900).scale()).isEqualTo(25);
    assertThat(paper(3901, 3901).scale()).isEqualTo(40);
  }

  @Test
  void goesOnBeyondTheLastScaleOfARuler() {
    // Lying 200 000 / 243 = 823.
    assertThat(paper(200_000, 1500).scale()).isEqualTo(1000);
    // Lying 2 000 000 / 243 = 8230.
    assertThat(paper(2_000_000, 1500).scale()).isEqualTo(10_000);
    // Upright 9e9 / 156 = 57 692 308 (lying 9e9 / 109 = 82 568 807).
    assertThat(paper(9_000_000_000L, 9_000_000_000L).scale()).isEqualTo(100_000_000);
  }

  @Test
  void mapsTheRoomOntoTheSheet() {
    Paper paper = paper(4000, 3000);
    // 4000 / 156 = 25.6 and 3000 / 109 = 27.5, so 1:40: 100 mm wide, in the middle of 156 mm after 20 mm: 48 mm.
    assertThat(paper.x(0)).isCloseTo(48, within(1e-9));
    assertThat(paper.x(4_000_000_000L)).isCloseTo(148, within(1e-9));
    // y runs down: the top wall is 14 mm and 13 mm below the edge, the bottom wall 75 mm further.
    assertThat(paper.y(3_000_000_000L)).isCloseTo(27, within(1e-9));
    assertThat(paper.y(0)).isCloseTo(102, within(1e-9));
    assertThat(paper.of(Rooms.mm(185))).isCloseTo(4.625, within(1e-9));
    assertThat(paper.floor(4.625)).isCloseTo(185, within(1e-9));
  }
}
