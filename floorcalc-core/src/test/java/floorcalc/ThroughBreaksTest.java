package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.bays.ExpansionBreak;
import floorcalc.bays.ThroughBreaks;
import floorcalc.boards.BoardGoods;
import floorcalc.joints.JointPattern;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.plan.Bay;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Room;
import floorcalc.plan.Row;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A room of 9 m with a break square to the boards in its middle; on its right the floor begins 100 mm higher. */
class ThroughBreaksTest {
  private static final BoardGoods BOARDS =
      BoardGoods.of(Length.parse("1.2 m"), Length.parse("200 mm"), Length.parse("14 mm"), 6);
  private static final Outline ROOM =
      Wkt.parse("POLYGON ((0 0, 4500 0, 4500 100, 9000 100, 9000 3020, 0 3020, 0 0))");

  private static FloorPlan plan(ThroughBreaks through) {
    return FloorPlanner.plan(FloorJob.of("Hall", BOARDS).throughBreaks(through).pattern(JointPattern.ofFraction(1, 3))
        .direction(DirectionChoice.of(Direction.ALONG_X))
        .room(Room.of("Hall", ROOM).withBreaks(List.of(
            ExpansionBreak.given(Point.ofMillimetres(4500, 100), Point.ofMillimetres(4500, 3020))))).build());
  }

  /** Where rows begin across the boards, and where the joints of each lie modulo a board. */
  private static Map<Long, TreeSet<Long>> joints(Bay bay) {
    Map<Long, TreeSet<Long>> joints = new TreeMap<>();
    for (Row row : bay.rows().subList(1, bay.rows().size())) {
      for (LaidPiece piece : row.pieces()) {
        if (piece.kind() == PieceKind.FULL || piece.kind() == PieceKind.END) {
          long x = piece.outline().extent().low().xNanometres();
          joints.computeIfAbsent(piece.outline().extent().low().yNanometres(), y -> new TreeSet<>())
              .add(Math.floorMod(x, Length.ofMillimetres(1200).toNanometres()));
        }
      }
    }
    return joints;
  }

  @Test
  void withOneStartLineRowsAndJointsOfAPatternAreInLine() {
    FloorPlan plan = plan(ThroughBreaks.ONE_START_LINE);
    assertThat(plan.bays()).hasSize(2);
    Map<Long, TreeSet<Long>> left = joints(plan.bays().get(0));
    Map<Long, TreeSet<Long>> right = joints(plan.bays().get(1));
    assertThat(left.keySet()).containsAll(right.keySet());
    right.forEach((y, joints) -> assertThat(left.get(y)).containsAll(joints));
  }

  /** On their own the left bay is 3000 across, fifteen rows from y = 10; the right one 2900, ripped from y = 110. */
  @Test
  void eachBayForItselfBeginsWhereItIsBest() {
    FloorPlan plan = plan(ThroughBreaks.EACH_BAY_ITS_OWN);
    assertThat(joints(plan.bays().get(0)).keySet()).allMatch(y -> Math.floorMod(y, 200_000_000L) == 10_000_000L);
    assertThat(plan.bays().get(0).rows()).hasSize(15);
  }
}
