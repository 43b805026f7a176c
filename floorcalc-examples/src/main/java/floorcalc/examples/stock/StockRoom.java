package floorcalc.examples.stock;

import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.plan.Beyond;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.Room;
import floorcalc.plan.Subfloor;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A room of the invented housing stock. It follows from its number alone: districts, goods, shapes and sizes are made up.
 * Immutable.
 *
 * @param number its number, from 0
 * @param district the district its house is in, not null
 * @param kind what it is used as, not null
 * @param job the job of laying it, not null; one in some two hundred cannot be planned
 */
public record StockRoom(int number, String district, String kind, FloorJob job) {
  private static final List<String> DISTRICTS = List.of("Ashmere", "Cold Quay", "Dunhollow", "Fennick", "Gullhaven", "Harrowside",
      "Lintel Hill", "Marram", "Oldcastle Row", "Reedwater", "Saltfold", "Thornbeck");
  private static final List<RoomKind> KINDS = List.of(RoomKind.values());
  private static final List<BoardGoods> GOODS = List.of(goods(2200, 185, 14, 6), goods(1200, 190, 10, 8), goods(1820, 145, 13, 8),
      goods(2400, 220, 15, 5));

  /** Checks that no part is null. */
  public StockRoom {
    Objects.requireNonNull(district, "district");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(job, "job");
  }

  /**
   * Makes a room from its number.
   *
   * @param number the number, 0 or more
   * @return the room, the same for the same number on every machine; not null
   * @throws IllegalArgumentException if the number is negative
   */
  public static StockRoom of(int number) {
    if (number < 0) {
      throw new IllegalArgumentException("the number of a room must be 0 or more, but was " + number);
    }
    Chance chance = Chance.of(number);
    String district = chance.of(DISTRICTS);
    RoomKind kind = chance.of(KINDS);
    BoardGoods goods = chance.of(GOODS);
    int width = kind.width(chance);
    int depth = kind.depth(chance);
    StockShapes shapes = new StockShapes(chance, width, depth);
    Outline outline = chance.oneIn(200) ? shapes.unsound() : shapes.next();
    Room room = Room.of(kind.words() + " " + number, outline).withDoors(doors(chance, width)).withSubfloor(
        chance.of(List.of(Subfloor.SCREED, Subfloor.TIMBER, Subfloor.SHEET, Subfloor.NOT_STATED)));
    FloorJobBuilder job = FloorJob.of("Room " + number, goods).room(room);
    if (chance.oneIn(50)) {
      job.direction(DirectionChoice.FEWEST_BOARDS);
    }
    return new StockRoom(number, district, kind.words(), job.build());
  }

  /** One door, or in one room of four two if the wall is long enough. */
  private static List<Door> doors(Chance chance, int wall) {
    List<Door> doors = new ArrayList<>();
    int wide = chance.between(700, 826);
    int from = chance.between(60, wall - wide - 60);
    doors.add(door("D1", from, from + wide, chance));
    if (chance.oneIn(4) && from > wide + 200) {
      doors.add(door("D2", 80, 80 + wide, chance));
    }
    return doors;
  }

  private static Door door(String name, int from, int to, Chance chance) {
    Beyond beyond = chance.of(List.of(new Beyond(Beyond.SAME_FLOOR, Length.ZERO), new Beyond("tile", Length.ofMillimetres(-4)),
        new Beyond("carpet", Length.ofMillimetres(-6)), Beyond.UNKNOWN));
    return new Door(name, Point.ofMillimetres(from, 0), Point.ofMillimetres(to, 0), "", beyond);
  }

  private static BoardGoods goods(long length, long width, long thickness, int perPack) {
    return BoardGoods.of(Length.ofMillimetres(length), Length.ofMillimetres(width), Length.ofMillimetres(thickness), perPack);
  }
}
