package floorcalc.recheck;

import floorcalc.recheck.AskedJob.Segment;
import java.math.BigDecimal;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * What a plan says. Lengths are nanometres, coordinates millimetres. Each part that a fault may name knows its place in the file.
 *
 * @param title its title
 * @param bays its bays
 * @param boards its boards
 * @param order its order
 * @param materials its materials
 * @param profiles its profiles
 * @param compromises its compromises
 */
record ToldPlan(Cursor file, String title, List<Bay> bays, List<Board> boards, Order order, List<Material> materials,
    List<Profile> profiles, List<Compromise> compromises) {

  record Bay(Cursor at, String name, String room, BigDecimal degrees, Polygon laid, List<Row> rows) {}

  record Row(Cursor at, int number, long coverWidth, List<Piece> pieces) {}

  record Piece(String name, int run, String kind, Polygon outline, Cut from) {}

  /** A rectangle of a board. */
  record Cut(int board, long alongFrom, long alongTo, long acrossFrom, long acrossTo) {
    long length() {
      return alongTo - alongFrom;
    }

    long width() {
      return acrossTo - acrossFrom;
    }
  }

  record Board(Cursor at, int number, long length, String openedInRow) {}

  record Order(Cursor at, int boardsUsed, int boardsAtLeast, boolean provenFewest, int spare, int packs, int boardsInPacks) {}

  record Material(Cursor at, String item, BigDecimal quantity, String unit) {}

  record Profile(Cursor at, String kind, Segment line, long length, String because) {}

  record Compromise(Cursor at, String rule, String where, long required, long found) {}

  long boardLength(Cut cut) {
    return boards.get(cut.board() - 1).length();
  }
}
