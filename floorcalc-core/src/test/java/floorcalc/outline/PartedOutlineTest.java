package floorcalc.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class PartedOutlineTest {
  private static final Outline L = Wkt.parse("POLYGON ((0 0, 4000 0, 4000 2000, 2000 2000, 2000 3000, 0 3000, 0 0))");
  private static final Outline ROUND_A_COLUMN =
      Wkt.parse("POLYGON ((0 0, 6000 0, 6000 5000, 0 5000, 0 0), (2000 2000, 4000 2000, 4000 3000, 2000 3000, 2000 2000))");

  private static Line line(long x, long y, long tox, long toy) {
    return new Line(Point.ofMillimetres(x, y), Point.ofMillimetres(tox, toy));
  }

  private static List<String> parts(Outline whole, Line... lines) {
    return PartedOutline.of(whole, List.of(lines)).stream().map(Wkt::write).toList();
  }

  @Test
  void withoutALineTheOutlineIsItsOwnPart() {
    assertThat(PartedOutline.of(L, List.of())).containsExactly(L);
  }

  @Test
  void anLIsPartedAtItsInnerCorner() {
    assertThat(parts(L, line(2000, 2000, 0, 2000))).containsExactly(
        "POLYGON ((0 0, 4000 0, 4000 2000, 0 2000, 0 0))",
        "POLYGON ((0 2000, 2000 2000, 2000 3000, 0 3000, 0 2000))");
    assertThat(parts(L, line(2000, 0, 2000, 2000))).containsExactly(
        "POLYGON ((0 0, 2000 0, 2000 3000, 0 3000, 0 0))",
        "POLYGON ((2000 0, 4000 0, 4000 2000, 2000 2000, 2000 0))");
  }

  @Test
  void linesThatMeetAndCrossMakeCorners() {
    Outline square = Wkt.parse("POLYGON ((0 0, 4000 0, 4000 4000, 0 4000, 0 0))");
    assertThat(parts(square, line(1000, 0, 1000, 4000), line(1000, 3000, 4000, 3000))).containsExactly(
        "POLYGON ((0 0, 1000 0, 1000 4000, 0 4000, 0 0))", "POLYGON ((1000 0, 4000 0, 4000 3000, 1000 3000, 1000 0))",
        "POLYGON ((1000 3000, 4000 3000, 4000 4000, 1000 4000, 1000 3000))");
    assertThat(parts(square, line(1000, 0, 1000, 4000), line(0, 3000, 4000, 3000))).hasSize(4);
  }

  @Test
  void aColumnIsLeftOutOfThePartsThatItTouchesAndStaysAVoidInTheOthers() {
    assertThat(parts(ROUND_A_COLUMN, line(2000, 0, 2000, 2000), line(2000, 3000, 2000, 5000))).containsExactly(
        "POLYGON ((0 0, 2000 0, 2000 5000, 0 5000, 0 0))",
        "POLYGON ((2000 0, 6000 0, 6000 5000, 2000 5000, 2000 3000, 4000 3000, 4000 2000, 2000 2000, 2000 0))");
    assertThat(parts(ROUND_A_COLUMN, line(1000, 0, 1000, 5000))).containsExactly(
        "POLYGON ((0 0, 1000 0, 1000 5000, 0 5000, 0 0))",
        "POLYGON ((1000 0, 6000 0, 6000 5000, 1000 5000, 1000 0), (2000 2000, 2000 3000, 4000 3000, 4000 2000, 2000 2000))");
  }

  @Test
  void anEndOnASlantedWallIsRoundedToTheNanometre() {
    Outline slanted = Wkt.parse("POLYGON ((0 0, 3000 0, 3000 1000, 0 2000, 0 0))");
    // At x = 1000 the wall is 2000 - 1000/3 = 1666.6666... mm high.
    Line line = new Line(Point.ofMillimetres(1000, 0), Point.ofNanometres(1_000_000_000, 1_666_666_667));
    List<Outline> parts = PartedOutline.of(slanted, List.of(line));
    assertThat(parts).hasSize(2);
    assertThat(parts.get(0).area().plus(parts.get(1).area()).minus(slanted.area()).abs().toSquareMillimetres())
        .isLessThan(0.002);
  }

  @Test
  void linesThatPartNothingAreRefused() {
    assertThatThrownBy(() -> parts(L, line(2000, 2000, 500, 2000))).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("of the lines [(2000 mm, 2000 mm) to (500 mm, 2000 mm)] at least one parts nothing: an end lies on the"
            + " open floor, or on a void that no other line joins to a wall; let both ends lie on a wall, on a void or on another line");
    assertThatThrownBy(() -> parts(L, line(2000, 3000, 4000, 2000))).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the line from (2000 mm, 3000 mm) to (4000 mm, 2000 mm) leaves the floor or runs along a wall near"
            + " (3000 mm, 2500 mm); let it run across the floor, from wall to wall");
    assertThatThrownBy(() -> parts(L, line(0, 0, 2000, 0))).isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("runs along a wall near (1000 mm, 0 mm)");
    assertThatThrownBy(() -> parts(ROUND_A_COLUMN, line(0, 2500, 6000, 2500))).isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("leaves the floor or runs along a wall near (3000 mm, 2500 mm)");
    assertThatThrownBy(() -> line(1, 1, 1, 1)).hasMessage("a line must be longer than 0 mm, but both its ends lie at"
        + " (1 mm, 1 mm); give two ends that differ");
  }
}
