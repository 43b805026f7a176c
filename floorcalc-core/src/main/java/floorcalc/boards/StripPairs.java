package floorcalc.boards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Ways to take low strips and high strips from the same lengths of board. A low strip keeps its board's low edge, a high strip
 * the high edge; two that fit beside a saw kerf may lie side by side.
 */
final class StripPairs {
  private static final int LOOKED_AT = 64;
  private static final int RIPS = 4;

  private final List<PieceWanted> pieces;
  private final Stock stock;
  /** Pieces of which no strip is made up, the low strips and the high strips. */
  private final List<Integer> others = new ArrayList<>();
  private final List<Integer> low = new ArrayList<>();
  private final List<Integer> high = new ArrayList<>();

  /**
   * @param cut the places of the pieces that are to be cut
   */
  StripPairs(List<PieceWanted> pieces, List<Integer> cut, Stock stock) {
    this.pieces = pieces;
    this.stock = stock;
    for (int i : cut) {
      PieceWanted piece = pieces.get(i);
      boolean lowEdge = piece.low() == 0;
      boolean highEdge = piece.high() == stock.width;
      (lowEdge == highEdge ? others : lowEdge ? low : high).add(i);
    }
  }

  boolean anyFit() {
    long narrowestLow = low.stream().mapToLong(i -> pieces.get(i).high()).min().orElse(stock.width);
    long narrowestHigh = high.stream().mapToLong(i -> pieces.get(i).low()).max().orElse(0);
    return narrowestLow + stock.kerf <= narrowestHigh;
  }

  /** Each piece by itself. */
  List<Part> alone() {
    List<Part> parts = new ArrayList<>();
    add(others, parts);
    add(low, parts);
    add(high, parts);
    return parts;
  }

  private void add(List<Integer> places, List<Part> parts) {
    places.forEach(i -> parts.add(Part.of(i, pieces.get(i))));
  }

  /** Strips that need the same ends side by side, the longest with the longest. */
  List<Part> sideBySide() {
    List<Part> parts = new ArrayList<>();
    add(others, parts);
    for (Ends ends : Ends.values()) {
      List<Integer> lows = longestFirst(low, ends);
      List<Integer> highs = longestFirst(high, ends);
      for (int i : lows) {
        int partner = -1;
        for (int k = 0; k < Math.min(LOOKED_AT, highs.size()) && partner < 0; k++) {
          partner = pieces.get(i).high() + stock.kerf <= pieces.get(highs.get(k)).low() ? k : -1;
        }
        if (partner < 0) {
          parts.add(Part.of(i, pieces.get(i)));
        } else {
          int other = highs.remove(partner);
          parts.add(Part.sideBySide(i, pieces.get(i), other, pieces.get(other)));
        }
      }
      add(highs, parts);
    }
    return parts;
  }

  private List<Integer> longestFirst(List<Integer> strips, Ends ends) {
    return strips.stream().filter(i -> pieces.get(i).ends() == ends)
        .sorted(Comparator.<Integer>comparingLong(i -> -pieces.get(i).span()).thenComparingInt(i -> i))
        .collect(Collectors.toCollection(ArrayList::new));
  }

  /** Whole boards ripped from end to end, more and more of them: each time where the most length is saved. */
  List<List<Part>> ripped() {
    List<List<Part>> ways = new ArrayList<>();
    List<Part> boards = new ArrayList<>();
    List<Integer> lows = new ArrayList<>(low);
    List<Integer> highs = new ArrayList<>(high);
    for (int round = 0; round < RIPS; round++) {
      long rip = bestRip(lows, highs);
      if (rip < 0) {
        break;
      }
      List<Part> lowStrips = strips(lows.stream().filter(i -> pieces.get(i).high() <= rip).toList());
      List<Part> highStrips = strips(highs.stream().filter(i -> pieces.get(i).low() >= rip + stock.kerf).toList());
      for (int b = 0; b < Math.min(lowStrips.size(), highStrips.size()); b++) {
        boards.add(Part.ripped(stock.longest(), lowStrips.get(b), highStrips.get(b)));
        remove(lows, lowStrips.get(b));
        remove(highs, highStrips.get(b));
      }
      List<Part> parts = new ArrayList<>(boards);
      add(others, parts);
      add(lows, parts);
      add(highs, parts);
      ways.add(parts);
    }
    return ways;
  }

  /** Strips of a board's length filled with pieces, the fullest first. */
  private List<Part> strips(List<Integer> places) {
    List<Part> parts = new ArrayList<>();
    add(places, parts);
    return SharedBoards.of(pieces.size(), parts, stock, 0, 0).strips(stock.longest()).stream()
        .sorted(Comparator.comparingLong(strip -> -filled(strip))).toList();
  }

  private long filled(Part strip) {
    long sum = 0;
    for (int piece : strip.pieces()) {
      sum += pieces.get(piece).span();
    }
    return sum;
  }

  private static void remove(List<Integer> places, Part strip) {
    for (int piece : strip.pieces()) {
      places.remove((Integer) piece);
    }
  }

  private long bestRip(List<Integer> lows, List<Integer> highs) {
    long best = -1;
    long most = 0;
    for (long rip : lows.stream().map(i -> pieces.get(i).high()).distinct().sorted().limit(LOOKED_AT).toList()) {
      long lowLength = 0;
      for (int i : lows) {
        lowLength += pieces.get(i).high() <= rip ? pieces.get(i).span() : 0;
      }
      long highLength = 0;
      for (int i : highs) {
        highLength += pieces.get(i).low() >= rip + stock.kerf ? pieces.get(i).span() : 0;
      }
      long saved = Math.min(lowLength, highLength);
      if (saved > most) {
        most = saved;
        best = rip;
      }
    }
    return best;
  }
}
