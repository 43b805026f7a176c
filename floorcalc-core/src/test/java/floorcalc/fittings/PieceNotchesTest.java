package floorcalc.fittings;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.fittings.Notch.Kind;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PieceNotchesTest {
  static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  /** Corners as "x,y x,y" in millimetres. */
  static Ring ring(String text) {
    List<Point> corners = new ArrayList<>();
    for (String pair : text.split(" ")) {
      String[] xy = pair.split(",");
      corners.add(Point.of(mm(xy[0]), mm(xy[1])));
    }
    return Ring.of(corners);
  }

  static Calculated<PieceNotches> notches(String text) {
    return PieceNotches.of(BoardPiece.of("a-1.2.3", ring(text)));
  }

  private static List<String> words(Calculated<PieceNotches> shape) {
    return shape.value().notches().stream().map(notch -> notch.inWords(Length::toMillimetreString)).toList();
  }

  @Test
  void aRectangleHasNone() {
    Calculated<PieceNotches> shape = notches("100,40 1300,40 1300,225 100,225");
    assertThat(shape.value().notches()).isEmpty();
    assertThat(shape.value().length()).isEqualTo(mm("1200"));
    assertThat(shape.value().width()).isEqualTo(mm("185"));
    assertStepsHold(shape);
  }

  /** A column of 180 mm notches the far edge by 45 mm, 210 mm from the start end; the piece lies anywhere in its bay. */
  @Test
  void aNotchInAnEdge() {
    Calculated<PieceNotches> shape = notches("100,40 1300,40 1300,225 490,225 490,180 310,180 310,225 100,225");
    Notch notch = shape.value().notches().get(0);
    assertThat(notch.kind()).isEqualTo(Kind.EDGE_NOTCH);
    assertThat(notch.open()).containsExactly(BoardSide.FAR_EDGE);
    // 310 - 100 = 210 along; 490 - 310 = 180 long; 180 - 40 = 140 across, 225 - 180 = 45 deep
    assertThat(List.of(notch.fromStartEnd(), notch.along(), notch.fromStartEdge(), notch.across()))
        .containsExactly(mm("210"), mm("180"), mm("140"), mm("45"));
    // 1200 * 185 - 180 * 45 = 222000 - 8100 = 213900 mm2
    assertThat(notch.area()).isEqualTo(mm("180").times(mm("45")));
    assertThat(shape.value().area()).isEqualTo(mm("1000").times(mm("213.9")));
    assertThat(words(shape)).containsExactly("notch in the far edge, 210 to 390 from the start end, 45 deep");
    assertThat(notch.sawn()).hasSize(3).allMatch(SawLine::isSquare);
    assertStepsHold(shape);
  }

  @Test
  void aNotchInAnEndAndACornerOut() {
    Calculated<PieceNotches> shape = notches("0,0 900,0 900,60 840,60 840,140 900,140 900,185 120,185 120,150 0,150");
    assertThat(words(shape)).containsExactly("notch in the far end, 60 to 140 from the start edge, 60 deep",
        "corner out at start end and far edge, 120 along, 35 across");
    assertThat(shape.value().notches()).extracting(Notch::kind).containsExactly(Kind.END_NOTCH, Kind.CORNER);
  }

  @Test
  void aSlantATaperAndABevelledCorner() {
    // atan(185 / 185) = 45 degrees
    assertThat(words(notches("0,0 1000,0 815,185 0,185"))).containsExactly(
        "far end sawn at a slant, 45.0 degrees to the edge; saw through (1000, 0) (815, 185)");
    // atan(20 / 1000) = 1.1458 degrees
    assertThat(words(notches("0,0 1000,0 1000,120 0,100"))).containsExactly(
        "tapered at the far edge, 1.1 degrees to the edge; saw through (1000, 120) (0, 100)");
    // atan(30 / 40) = 36.87 degrees
    assertThat(words(notches("0,30 40,0 1000,0 1000,185 0,185"))).containsExactly(
        "corner out at start end and start edge, 40 along, 30 across; saw through (0, 30) (40, 0), slants at 36.9 degrees to the edge");
  }

  @Test
  void anEndOrAnEdgeSawnToShape() {
    assertThat(words(notches("0,0 624,0 592,80 634,185 0,185"))).containsExactly("far end sawn to shape over the whole width, 42 at the"
        + " most; saw through (624, 0) (592, 80) (634, 185), slants at 68.2 degrees to the edge"); // atan(80 / 32) and atan(105 / 42)
    assertThat(words(notches("0,0 1000,0 1000,100 600,100 600,120 0,120"))).containsExactly(
        "corner out at far end and far edge, 400 along, 20 across");
    assertThat(words(notches("0,20 600,20 600,0 1000,0 1000,100 700,100 0,150"))).containsExactly(
        "far edge sawn to shape over the whole length, 50 at the most; saw through (1000, 100) (700, 100) (0, 150), slants at 4.1 degrees to"
            + " the edge", "corner out at start end and start edge, 600 along, 20 across"); // atan(50 / 700) = 4.09
  }

  /** At a corner of the room the slant and the taper meet in one cut from edge to edge, which turns outwards: nothing reaches round it. */
  @Test
  void aCornerOfTheRoomIsNoNotch() {
    Notch corner = notches("0,0 1000,0 990,120 0,130").value().notches().get(0);
    assertThat(corner.kind()).isEqualTo(Kind.END_AND_EDGE);
    // atan(120 / 10) = 85.24 and atan(10 / 990) = 0.58 degrees
    assertThat(corner.inWords(Length::toMillimetreString)).isEqualTo("far end and far edge sawn to shape; saw through (1000, 0) (990, 120)"
        + " (0, 130), slants at 85.2 and 0.6 degrees to the edge");
    assertThat(corner.turnsInwards()).isFalse();
    assertThat(notches("0,0 1000,0 1000,185 650,185 620,150 380,150 350,185 0,185").value().notches().get(0).turnsInwards()).isTrue();
  }

  @Test
  void anArcIsSawnAlongItsChords() {
    String arc = "0,0 1000,0 1000,185 650,185 620,150 580,120 540,110 460,110 420,120 380,150 350,185 0,185";
    Notch notch = notches(arc).value().notches().get(0);
    assertThat(notch.isCurve()).isTrue();
    assertThat(notch.inWords(Length::toMillimetreString)).isEqualTo("notch in the far edge, 350 to 650 from the start end, 75 deep; saw the"
        + " curve through (650, 185) (620, 150) (580, 120) (540, 110) (460, 110) (420, 120) (380, 150) (350, 185)");
    // a 3-4-5 chord: 30 along and 40 across would be 50; here 40 along and 30 across
    assertThat(notch.sawn().get(1).length()).isEqualTo(mm("50"));
    assertThat(notch.sawn().get(1).degreesToEdge()).isEqualByComparingTo("36.9");
  }

  @Test
  void aHole() {
    Calculated<PieceNotches> shape = PieceNotches.of(new BoardPiece("a-1.2.3", ring("0,0 1000,0 1000,185 0,185"),
        List.of(ring("300,60 300,120 420,120 420,60"))));
    assertThat(words(shape)).containsExactly("cut-out, 300 to 420 from the start end, 60 to 120 from the start edge");
    assertThat(shape.value().notches().get(0).open()).isEqualTo(Set.of());
    assertThat(shape.value().area()).isEqualTo(mm("1000").times(mm("185")).minus(mm("120").times(mm("60"))));
    assertThat(Rebuilt.difference(shape.value())).isZero();
  }

  @Test
  void cornersAMicrometreOffASideAreOnIt() {
    Calculated<PieceNotches> shape = notches("0.0005,0 1000,0.0009 1000,185 0,184.9991");
    assertThat(shape.value().notches()).isEmpty();
  }

  @Test
  void refusesWhatIsNoPiece() {
    assertThatThrownBy(() -> BoardPiece.of("a", ring("0,0 10,0"))).isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("a: a piece needs an outline of at least three corners");
    assertThatThrownBy(() -> BoardPiece.of("a", ring("0,0 10,0 20,0"))).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SawLine(Point.ofMillimetres(1, 2), Point.ofMillimetres(1, 2)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void nothingIsTakenOffAnythingByNoNotch() {
    assertThat(notches("0,0 1000,0 1000,185 0,185").value().area()).isEqualTo(mm("1000").times(mm("185")));
    assertThat(Area.ZERO).isEqualTo(notches("0,0 1000,0 1000,185 0,185").value().notches().stream().map(Notch::area)
        .reduce(Area.ZERO, Area::plus));
  }
}
