package floorcalc.examples.job;

import floorcalc.boards.BoardGoods;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import java.math.BigInteger;
import java.util.List;

/** Refuses rooms without a floor to lay, and jobs that need more boards than can be planned in one go. */
final class RoomSizes {
  private RoomSizes() {
  }

  static void checkGap(List<RoomReader.Read> rooms, Length gap) {
    for (RoomReader.Read read : rooms) {
      if (ExpansionGap.inset(read.room().orElseThrow().outline(), gap).value().laid().isEmpty()) {
        read.fields().mistake(Mistake.Kind.GAP_LEAVES_NO_FLOOR, read.survey().isPresent() ? "survey" : "outline",
            "found room \"" + Shown.plain(read.name(), 60)
            + "\", of which an expansion gap of " + gap + " on each side leaves nothing to lay; check the corners and"
            + " their units, or give a smaller expansionGap");
      }
    }
  }

  static void checkBoards(Fields job, List<RoomReader.Read> rooms, BoardGoods goods) {
    Length shortest = goods.lengths().get(goods.lengths().size() - 1);
    Area board = shortest.times(goods.laidPitch());
    BigInteger boards = BigInteger.ZERO;
    for (RoomReader.Read room : rooms) {
      Outline outline = room.room().orElseThrow().outline();
      Area area = outline.area();
      boards = boards.add(area.toHalfSquareNanometres().divide(board.toHalfSquareNanometres()))
          .add(rows(outline.shell(), goods.laidPitch()));
    }
    if (boards.compareTo(BigInteger.valueOf(JobLimits.BOARDS)) > 0) {
      job.mistake(Mistake.Kind.TOO_LARGE, "rooms", "found rooms for about " + boards + " boards; must be at most " + JobLimits.BOARDS
          + " boards in one job, so check the sizes or split the job");
    }
  }

  /** The most rows that a room can have in any direction: its width and depth over the laid pitch. */
  private static BigInteger rows(Ring shell, Length pitch) {
    long minX = Long.MAX_VALUE;
    long minY = Long.MAX_VALUE;
    long maxX = Long.MIN_VALUE;
    long maxY = Long.MIN_VALUE;
    for (int i = 0; i < shell.size(); i++) {
      minX = Math.min(minX, shell.x(i));
      minY = Math.min(minY, shell.y(i));
      maxX = Math.max(maxX, shell.x(i));
      maxY = Math.max(maxY, shell.y(i));
    }
    return BigInteger.valueOf((maxX - minX + maxY - minY) / pitch.toNanometres());
  }
}
