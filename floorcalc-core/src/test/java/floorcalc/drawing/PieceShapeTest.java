package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.plan.Cut;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Row;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PieceShapeTest {
  private static final Length BOARD = Rooms.mm(2200);
  private static final Length WIDTH = Rooms.mm(185);

  /** Returns which sides are sawn, of a piece whose ring begins at its lower left corner and runs counter-clockwise. */
  private static List<Boolean> sawn(Ring inFrame, PieceKind kind, Cut cut, double degrees) {
    Direction direction = Direction.fromDegrees(degrees);
    Outline room = Outline.of(direction.toRoom(Rooms.ring(-10, -10, 4000, -10, 4000, 3000, -10, 3000)));
    LaidPiece piece = new LaidPiece("a-1.1.1", 1, kind, direction.toRoom(inFrame), List.of(), cut);
    Row row = new Row(1, WIDTH, List.of(piece));
    Sheet sheet = new Sheet(Paper.fit(room).get(0), Frame.of(direction),
        Measures.MILLIMETRES, "a-1");
    PieceShape shape = PieceShape.of(sheet, row).get(0);
    List<Boolean> sides = new ArrayList<>();
    for (int i = 0; i < inFrame.size(); i++) {
      sides.add(shape.sawn(sheet.frame, 0, i, BOARD, WIDTH));
    }
    return sides;
  }

  private static Cut cut(long alongFrom, long alongTo, long acrossFrom, long acrossTo) {
    return new Cut(1, Rooms.mm(alongFrom), Rooms.mm(alongTo), Rooms.mm(acrossFrom), Rooms.mm(acrossTo));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 90, 180, 270, 37.5})
  void endsOfABoardAreSawnWhereTheCutSays(double degrees) {
    Ring ring = Rooms.ring(0, 0, 1450, 0, 1450, 185, 0, 185);
    // Sides: low edge, right end, high edge, left end.
    assertThat(sawn(ring, PieceKind.START, cut(750, 2200, 0, 185), degrees)).containsExactly(false, false, false, true);
    assertThat(sawn(ring, PieceKind.END, cut(0, 1450, 0, 185), degrees)).containsExactly(false, true, false, false);
    assertThat(sawn(ring, PieceKind.SINGLE, cut(300, 1750, 0, 185), degrees)).containsExactly(false, true, false, true);
  }

  @Test
  void edgesOfARipAreSawnWhereTheCutSays() {
    Ring ring = Rooms.ring(0, 0, 2200, 0, 2200, 100, 0, 100);
    assertThat(sawn(ring, PieceKind.FULL, cut(0, 2200, 85, 185), 0)).containsExactly(true, false, false, false);
    assertThat(sawn(ring, PieceKind.FULL, cut(0, 2200, 0, 100), 0)).containsExactly(false, false, true, false);
  }

  @Test
  void slantedSidesAndNotchesAreSawn() {
    Ring slanted = Rooms.ring(0, 0, 1450, 0, 1400, 185, 0, 185);
    assertThat(sawn(slanted, PieceKind.END, cut(0, 1450, 0, 185), 0)).containsExactly(false, true, false, false);
    Ring notched = Rooms.ring(0, 0, 2200, 0, 2200, 185, 1200, 185, 1200, 100, 1000, 100, 1000, 185, 0, 185);
    assertThat(sawn(notched, PieceKind.FULL, cut(0, 2200, 0, 185), 0))
        .containsExactly(false, false, false, true, true, true, false, false);
  }
}
