package floorcalc.rooms;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.OffcutUse;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Point;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.List;

/** Four invented products, of different lengths, widths and thicknesses, each with its gap. */
enum Product {
  WIDE_PLANK(BoardGoods.of(mm(2200), mm(185), mm(14), 6), 8, OffcutUse.IN_LAYING_ORDER),
  SHORT_PLANK(BoardGoods.of(mm(1200), mm(190), mm(10), 8), 12, OffcutUse.CUT_AHEAD),
  LONG_STRIP(BoardGoods.of(mm(1820), mm(148), mm(15), 7), 8, OffcutUse.IN_LAYING_ORDER),
  MIXED_STRIP(BoardGoods.mixed(List.of(new PackContent(mm(1500), 4), new PackContent(mm(900), 6)), mm(90), mm(18)), 12,
      OffcutUse.IN_LAYING_ORDER);

  private final BoardGoods goods;
  private final int gap;
  private final OffcutUse offcuts;

  Product(BoardGoods goods, int gap, OffcutUse offcuts) {
    this.goods = goods;
    this.gap = gap;
    this.offcuts = offcuts;
  }

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  /** The expansion gap in millimetres. */
  int gap() {
    return gap;
  }

  /** The job of laying the product in a room by common practice, but with the product's own gap. */
  FloorJob in(RealRoom room, DirectionChoice direction) {
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(goods.thickness(), goods.coverWidth())
        .with(LayingRules.EXPANSION_GAP, mm(gap), Source.GIVEN);
    return FloorJob.of(room.id(), goods).rules(rules).offcuts(offcuts).direction(direction)
        .room(Room.of(room.id(), room.outline())).build();
  }

  /** Along the longest wall, square to it, and 37.5 degrees from the x axis. */
  static List<DirectionChoice> directions(RealRoom room) {
    int wall = room.outline().shell().longestWall();
    List<Point> corners = room.outline().shell().corners();
    Direction along = Direction.fromPoints(corners.get(wall), corners.get((wall + 1) % corners.size()));
    return List.of(DirectionChoice.LONGEST_WALL, DirectionChoice.of(along.plusQuarterTurns(1)),
        DirectionChoice.of(Direction.fromDegrees(37.5)));
  }
}
