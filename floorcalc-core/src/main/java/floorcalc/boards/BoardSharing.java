package floorcalc.boards;

import java.util.ArrayList;
import java.util.List;

/** Works out which pieces share boards so that few are opened: each piece by itself, strips side by side, boards ripped. */
final class BoardSharing {
  private static final int MOST_EMPTIED = 2_000;
  private static final long STEPS = 200_000;

  private BoardSharing() {}

  static SharedBoards fewest(List<PieceWanted> pieces, Stock stock, int least) {
    List<Integer> cut = new ArrayList<>();
    int whole = 0;
    for (int i = 0; i < pieces.size(); i++) {
      PieceWanted piece = pieces.get(i);
      if (piece.span() == stock.longest() && piece.low() == 0 && piece.high() == stock.width) {
        whole++;
      } else {
        cut.add(i);
      }
    }
    StripPairs strips = new StripPairs(pieces, cut, stock);
    List<List<Part>> ways = new ArrayList<>();
    ways.add(strips.alone());
    if (strips.anyFit()) {
      ways.add(strips.sideBySide());
      ways.addAll(strips.ripped());
    }
    SharedBoards best = null;
    long steps = cut.size() > MOST_EMPTIED ? 0 : STEPS / ways.size();
    for (List<Part> way : ways) {
      SharedBoards shared = SharedBoards.of(pieces.size(), way, stock, least - whole, steps);
      best = best == null || shared.boards < best.boards ? shared : best;
    }
    return best;
  }
}
