package floorcalc.rows;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.rows.ControlLine.Chord;
import floorcalc.rows.ControlLine.Place;
import floorcalc.rows.EndCut.CornerPiece;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ControlLineTest {
  private static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  private static Length in(long whole, int numerator, int denominator) {
    return Length.ofInches(whole, numerator, denominator);
  }

  private static Point at(long x, long y) {
    return Point.ofMillimetres(x, y);
  }

  /** 3 along and 4 across of a line through a corner, as in a 3-4-5 triangle. */
  private static final ControlLine SLANTED = ControlLine.of(at(1000, 500), at(5000, 3500));

  @Test
  void whichRowIsAnObstacleInAndWhereAlongIt() {
    // the unit along is (0.8, 0.6): (2000, 2000) is (1000, 1500) on: 800 + 900 along, 1200 - 600 = 600 over the line
    assertThat(SLANTED.placeOf(at(2000, 2000), mm("185"))).isEqualTo(new Place(4, mm("45"), mm("1700")));
    // (2000, 500): 800 along, 600 to the right: 4 rows of 185 down, 140 over their line: rows 0, -1, -2, -3
    assertThat(SLANTED.placeOf(at(2000, 500), mm("185"))).isEqualTo(new Place(-3, mm("140"), mm("800")));
    assertThat(SLANTED.placeOf(at(1000, 500), mm("185"))).isEqualTo(new Place(1, Length.ZERO, Length.ZERO));
    assertThat(SLANTED.pointAt(mm("1700"), mm("600"))).isEqualTo(at(2000, 2000));
  }

  @Test
  void positionsAreRoundedAndNeverIncrements() {
    // 12 boards with a face of 4 in along a wall at 45 degrees: 12 * 4 * sqrt(2) = 67.8823 in. One board's share rounded to 1/8 in
    // is 5 5/8 in, and 12 of them are 67 1/2 in: 0.38 in short
    Calculated<EndCut> one = EndCut.of(ControlLine.through(at(0, 0), Direction.fromDegrees(45)), at(0, 0), at(1000, 0), in(4, 0, 1));
    Calculated<EndCut> twelve =
        EndCut.of(ControlLine.through(at(0, 0), Direction.fromDegrees(45)), at(0, 0), at(1000, 0), in(48, 0, 1));
    assertThat(twelve.value().cut().toMillimetres() / 25.4).isCloseTo(67.8823, within(0.00005));
    Length rounded = in(5, 5, 8);
    assertThat(one.value().cut().minus(rounded).abs()).isLessThan(in(0, 1, 16));
    assertThat(twelve.value().cut().minus(rounded.multipliedBy(12)).toMillimetres() / 25.4).isCloseTo(0.38, within(0.005));
    // the twelfth row line of a floor at 45 degrees meets the wall there, to the nanometre
    ControlLine rows = ControlLine.through(at(0, 0), Direction.fromDegrees(135));
    Point meets = Point.of(twelve.value().cut().negated(), Length.ZERO);
    assertThat(rows.height(meets).minus(in(48, 0, 1)).abs().toNanometres()).isLessThanOrEqualTo(1);
    assertStepsHold(one);
  }

  @Test
  void howIsABoardCutAtAWallThatIsNotSquare() {
    // the wall goes 3 along while it goes 4 across: 185 * 3 / 4 = 138.75 longer on one edge, the cut is 185 * 5 / 4 = 231.25
    Calculated<EndCut> cut = EndCut.of(ControlLine.through(at(0, 0), Direction.ALONG_X), at(0, 0), at(300, 400), mm("185"));
    assertThat(cut.value().runOff()).isEqualTo(mm("138.75"));
    assertThat(cut.value().cut()).isEqualTo(mm("231.25"));
    // atan(3 / 4) = 36.8699 degrees
    assertThat(cut.value().offSquareDegrees()).isEqualTo(new BigDecimal("36.8699"));
    assertStepsHold(cut);
    Calculated<EndCut> square = EndCut.of(ControlLine.through(at(0, 0), Direction.ALONG_X), at(0, 0), at(0, -400), mm("185"));
    assertThat(square.value().offSquareDegrees()).isEqualByComparingTo("0");
    assertThat(square.value().cut()).isEqualTo(mm("185"));
    assertThat(square.value().runOff()).isEqualTo(Length.ZERO);
  }

  @Test
  void whichIsTheSmallestPieceAtACorner() {
    // a room of 4 by 3 m, boards at 45 degrees from the corner 0,0. Corner 2 lies 4000 / sqrt 2 = 2828.427 below the line: 15 * 185 =
    // 2775 are full, 53.427 are left; both walls leave it at 45 degrees, so the piece is twice as long. Corner 4 lies 2121.320 above:
    // 11 * 185 = 2035, 86.320 left. Corners 1 and 3 are passed by, their rows go on beside them.
    Outline room = Outline.of(Ring.of(at(0, 0), at(4000, 0), at(4000, 3000), at(0, 3000)));
    List<CornerPiece> pieces = EndCut.cornerPieces(ControlLine.through(at(0, 0), Direction.fromDegrees(45)), room, mm("185"));
    assertThat(pieces).extracting(CornerPiece::corner).containsExactly(2, 4);
    assertThat(pieces.get(0).height().toMillimetres()).isCloseTo(53.427, within(0.0005));
    assertThat(pieces.get(0).length().toMillimetres()).isCloseTo(106.854, within(0.0005));
    assertThat(pieces.get(1).height().toMillimetres()).isCloseTo(86.320, within(0.0005));
    assertThat(pieces.get(1).length().toMillimetres()).isCloseTo(172.641, within(0.0005));
    // along a wall there are no pointed pieces
    assertThat(EndCut.cornerPieces(ControlLine.through(at(0, 0), Direction.ALONG_X), room, mm("185"))).isEmpty();
  }

  @Test
  void cornerOnARowLineTakesAFullRow() {
    // a right angle that stands on its point at 0,-1000, boards along x, 100 to the row: full height, 200 long
    Outline room = Outline.of(Ring.of(at(0, -1000), at(1000, 0), at(0, 1000), at(-1000, 0)));
    List<CornerPiece> pieces = EndCut.cornerPieces(ControlLine.through(at(0, 0), Direction.ALONG_X), room, mm("100"));
    assertThat(pieces).containsExactly(new CornerPiece(1, mm("100"), mm("200")), new CornerPiece(3, mm("100"), mm("200")));
  }

  @Test
  void lineThroughAnInnerCornerAndHowLongItIs() {
    // an L of 5 by 4 m, its inner corner, number 4, at 3000,1500
    Outline room = Outline.of(Ring.of(at(0, 0), at(5000, 0), at(5000, 1500), at(3000, 1500), at(3000, 4000), at(0, 4000)));
    assertThat(ControlLine.throughCorner(room, 4, Direction.ALONG_X).chords(room))
        .containsExactly(new Chord(mm("-3000"), Length.ZERO));
    List<Chord> chords = ControlLine.throughCorner(room, 4, Direction.fromDegrees(135)).chords(room);
    assertThat(chords).singleElement().satisfies(chord -> {
      // up to 500,4000: 2500 * sqrt 2 = 3535.534; down to 4500,0: 1500 * sqrt 2 = 2121.320
      assertThat(chord.to().toMillimetres()).isCloseTo(3535.534, within(0.0005));
      assertThat(chord.from().toMillimetres()).isCloseTo(-2121.320, within(0.0005));
      assertThat(chord.length()).isEqualTo(chord.to().minus(chord.from()));
    });
    assertThatThrownBy(() -> ControlLine.throughCorner(room, 7, Direction.ALONG_X))
        .hasMessage("the room has corners 1 to 6, but corner 7 was asked for");
  }

  @Test
  void columnPartsALine() {
    Outline room = Outline.of(Ring.of(at(0, 0), at(5000, 0), at(5000, 3000), at(0, 3000)),
        List.of(Ring.of(at(2000, 1000), at(2400, 1000), at(2400, 1400), at(2000, 1400))));
    assertThat(ControlLine.of(at(-100, 1200), at(0, 1200)).chords(room))
        .containsExactly(new Chord(mm("100"), mm("2100")), new Chord(mm("2500"), mm("5100")));
    assertThat(ControlLine.of(at(0, 3500), at(1, 3500)).chords(room)).isEmpty();
  }

  @Test
  void howFarAnObstacleIsFromTheStartOfItsRow() {
    Outline room = Outline.of(Ring.of(at(0, 0), at(5000, 0), at(5000, 3000), at(0, 3000)),
        List.of(Ring.of(at(2000, 1000), at(2400, 1000), at(2400, 1400), at(2000, 1400))));
    ControlLine along = ControlLine.of(at(-100, 0), at(0, 0));
    assertThat(along.fromStartOfRow(at(1500, 1200), room)).contains(mm("1500"));
    assertThat(along.fromStartOfRow(at(3000, 1200), room)).contains(mm("600"));
    assertThat(along.fromStartOfRow(at(2100, 1200), room)).isEmpty();
    // at 3 : 4 the row through (2000, 600) begins where it leaves wall 1: 600 / 0.6 = 1000 back
    assertThat(SLANTED.fromStartOfRow(at(2000, 600), room)).contains(mm("1000"));
  }

  @Test
  void squareLineAndLineBeside() {
    ControlLine square = SLANTED.squareThrough(at(1000, 500));
    assertThat(square.pointAt(mm("1000"), Length.ZERO)).isEqualTo(at(400, 1300));
    ControlLine beside = SLANTED.beside(mm("1000"));
    assertThat(beside.origin()).isEqualTo(at(400, 1300));
    assertThat(beside.height(at(400, 1300))).isEqualTo(Length.ZERO);
    assertThat(SLANTED.height(at(400, 1300))).isEqualTo(mm("1000"));
    assertThat(SLANTED.origin()).isEqualTo(at(1000, 500));
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> ControlLine.of(at(1, 1), at(1, 1))).hasMessageContaining("two different points");
    assertThatThrownBy(() -> EndCut.of(SLANTED, at(1, 1), at(1, 1), mm("185"))).hasMessageContaining("two different points");
    assertThatThrownBy(() -> EndCut.of(SLANTED, at(0, 0), at(4000, 3000), mm("185"))).hasMessageContaining("runs along the boards");
    assertThatThrownBy(() -> SLANTED.placeOf(at(0, 0), Length.ZERO)).hasMessageContaining("laid pitch must be more than 0 mm");
  }

  /** There and back again: within a nanometre of rounding each way. */
  @Property
  void aPlaceLeadsBackToItsPoint(@ForAll @IntRange(min = -100_000, max = 100_000) int x,
      @ForAll @IntRange(min = -100_000, max = 100_000) int y, @ForAll @IntRange(max = 359) int degrees) {
    ControlLine line = ControlLine.through(at(12, 34), Direction.fromDegrees(degrees + 0.25));
    Point point = Point.ofNanometres(x * 1_234_567L, y * 7_654_321L);
    Place place = line.placeOf(point, mm("185"));
    Point back = line.pointAt(place.along(), mm("185").multipliedBy(place.row() - 1).plus(place.fromRowLine()));
    assertThat(StrictMath.hypot(back.xNanometres() - point.xNanometres(), back.yNanometres() - point.yNanometres()))
        .isLessThanOrEqualTo(2.0);
    assertThat(place.fromRowLine()).isBetween(Length.ZERO, mm("184.999999"));
  }

  /** Beside the frame of the boards, which turns whole rooms: places agree to the rounding of both. */
  @Property
  void placesAreThoseOfTheBoardsFrame(@ForAll @IntRange(min = -10_000, max = 10_000) int x,
      @ForAll @IntRange(min = -10_000, max = 10_000) int y, @ForAll @IntRange(max = 719) int halfDegrees) {
    Direction boards = Direction.fromDegrees(halfDegrees / 2.0);
    ControlLine line = ControlLine.through(at(0, 0), boards);
    Ring there = boards.toFrame(Ring.of(at(x, y), at(x, y), at(x, y)));
    assertThat(line.along(at(x, y)).toNanometres()).isCloseTo(there.x(0), within(1L));
    assertThat(line.height(at(x, y)).toNanometres()).isCloseTo(there.y(0), within(1L));
  }

  /** The row line at the foot of a corner piece is as long in the room as the piece, where both walls go on to it. */
  @Property
  void cornerPieceIsAsLongAsItsRowLineInTheRoom(@ForAll @IntRange(min = 500, max = 3000) int a,
      @ForAll @IntRange(min = 500, max = 3000) int b, @ForAll @IntRange(min = 500, max = 3000) int c,
      @ForAll @IntRange(min = 500, max = 3000) int d, @ForAll @IntRange(max = 179) int degrees) {
    Outline room = Outline.of(Ring.of(at(0, -a), at(b, 0), at(0, c), at(-d, 0)));
    ControlLine line = ControlLine.through(at(0, 0), Direction.fromDegrees(degrees + 0.5));
    Length pitch = mm("50");
    for (CornerPiece piece : EndCut.cornerPieces(line, room, pitch)) {
      Point corner = room.shell().corners().get(piece.corner() - 1);
      Point before = room.shell().corners().get((piece.corner() + 2) % 4);
      Point after = room.shell().corners().get(piece.corner() % 4);
      Length up = line.height(before).minus(line.height(corner));
      Length toAfter = line.height(after).minus(line.height(corner));
      if (up.abs().min(toAfter.abs()).compareTo(piece.height()) > 0) {
        Length foot = line.height(corner).plus(up.isPositive() ? piece.height() : piece.height().negated());
        assertThat(foot.remainder(pitch)).isEqualTo(Length.ZERO);
        List<Chord> chords = line.beside(foot).chords(room);
        assertThat(chords).hasSize(1);
        // the row line beside is set out from a rounded point: at a flat wall a nanometre off the line is more along it
        assertThat(chords.get(0).length().minus(piece.length()).abs()).isLessThan(Length.ofNanometres(5000));
      }
    }
  }
}
