package floorcalc.outline;

import static floorcalc.outline.Containment.INSIDE;
import static floorcalc.outline.Containment.ON_EDGE;
import static floorcalc.outline.Containment.OUTSIDE;
import static floorcalc.outline.RingTest.ring;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class OutlineTest {
  private static final Ring SHELL = ring(0, 0, 4000, 0, 4000, 3000, 0, 3000);
  private static final Ring COLUMN = ring(1000, 1000, 1000, 1500, 1400, 1500, 1400, 1000); // clockwise
  private static final Outline ROOM = Outline.of(SHELL, List.of(COLUMN));

  @Test
  void ofTurnsRingsRound() {
    assertThat(Outline.of(SHELL.reversed(), List.of(COLUMN.reversed()))).isEqualTo(ROOM).hasSameHashCodeAs(ROOM);
    assertThat(ROOM.shell()).isEqualTo(SHELL);
    assertThat(ROOM.voids()).containsExactly(COLUMN);
    assertThat(Outline.of(SHELL)).isNotEqualTo(ROOM).isEqualTo(Outline.of(SHELL, List.of()));
  }

  @Test
  void figures() {
    assertThat(ROOM.area()).isEqualTo(Area.ofSquareMetres("11.8")); // 4 × 3 − 0.4 × 0.5
    assertThat(ROOM.perimeter()).isEqualTo(Length.ofMillimetres(15_800)); // 14 000 + 1 800
    assertThat(ROOM.size()).isEqualTo(8);
    assertThat(ROOM.extent()).isEqualTo(SHELL.extent());
  }

  @Test
  void locate() {
    assertThat(ROOM.locate(Point.ofMillimetres(500, 500))).isEqualTo(INSIDE);
    assertThat(ROOM.locate(Point.ofMillimetres(1200, 1200))).isEqualTo(OUTSIDE);
    assertThat(ROOM.locate(Point.ofMillimetres(1000, 1200))).isEqualTo(ON_EDGE);
    assertThat(ROOM.locate(Point.ofMillimetres(0, 1200))).isEqualTo(ON_EDGE);
    assertThat(ROOM.locate(Point.ofMillimetres(-1, 1200))).isEqualTo(OUTSIDE);
  }

  @Test
  void movedMirroredStartingAt() {
    assertThat(ROOM.moved(Length.ofMillimetres(10), Length.ofMillimetres(-20)).shell())
        .isEqualTo(ring(10, -20, 4010, -20, 4010, 2980, 10, 2980));
    assertThat(ROOM.mirrored().shell()).isEqualTo(ring(0, 0, 0, 3000, -4000, 3000, -4000, 0));
    assertThat(ROOM.mirrored().voids())
        .containsExactly(ring(-1000, 1000, -1400, 1000, -1400, 1500, -1000, 1500));
    assertThat(ROOM.startingAt(1).shell()).isEqualTo(ring(4000, 0, 4000, 3000, 0, 3000, 0, 0));
    assertThat(ROOM.startingAt(1).voids()).isEqualTo(ROOM.voids());
  }

  @Test
  void text() {
    assertThat(Outline.of(ring(0, 0, 4, 0, 4, 3))).hasToString("(0 mm, 0 mm), (4 mm, 0 mm), (4 mm, 3 mm)");
    assertThat(ROOM.toString()).contains(" less [(1000 mm, 1000 mm), ");
  }
}
