package floorcalc.recheck;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.OffcutUse;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.plan.Beyond;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import java.util.List;

/** Invented floors that are planned well, to be spoilt. */
final class SoundPlans {
  /** An L with a column, out of square, with a strip so short that its pieces cannot all be long enough. */
  static final Rechecked WITH_COMPROMISES = Rechecked.ofText(JobText.of(FloorJob.of("Invented floor", boards(15))
      .direction(DirectionChoice.of(Direction.ALONG_X))
      .room(Room.of("Room", Wkt.parse("POLYGON ((0 0, 5210 0, 5205 2400, 3100 2410, 3100 3770, 0 3760, 0 0), "
          + "(1400 1100, 1800 1100, 1800 1500, 1400 1500, 1400 1100))")).withBreaks(List.of())).build()));

  /** An L in two bays with a door, and a second room, laid along its longest wall; offcuts may be cut ahead. */
  static final Rechecked WITH_BREAK = Rechecked.ofText(JobText.of(FloorJob.of("Invented rooms", boards(14)).offcuts(OffcutUse.CUT_AHEAD)
      .room(Room.of("Wide", Wkt.parse("POLYGON ((0 0, 6000 0, 6000 3000, 2500 3000, 2500 7000, 0 7000, 0 0))"))
          .withDoors(List.of(new Door("D1", Point.ofMillimetres(6000, 1000), Point.ofMillimetres(6000, 1826), "Small", Beyond.UNKNOWN))))
      .room(Room.of("Small", Wkt.parse("POLYGON ((6120 0, 9000 0, 9000 3000, 6120 3000, 6120 0))"))
          .withDoors(List.of(new Door("D1", Point.ofMillimetres(6120, 1000), Point.ofMillimetres(6120, 1826), "Wide", Beyond.UNKNOWN))))
      .build()));

  /** A plain room in boards of two lengths. */
  static final Rechecked MIXED = Rechecked.ofText(JobText.of(FloorJob.of("Invented strips", BoardGoods.mixed(List.of(
          new PackContent(mm(1500), 4), new PackContent(mm(900), 6)), mm(90), mm(18)))
      .room(Room.of("Plain", Wkt.parse("POLYGON ((0 0, 4000 0, 4000 3000, 0 3000, 0 0))"))).build()));

  private SoundPlans() {}

  private static BoardGoods boards(long thick) {
    return BoardGoods.of(mm(1200), mm(190), mm(thick), 8);
  }

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }
}
