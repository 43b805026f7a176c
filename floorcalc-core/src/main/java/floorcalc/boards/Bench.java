package floorcalc.boards;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The sawing bench: cuts pieces from offcuts where they fit, else opens boards, and keeps account of every cut.
 * A piece is first cut to length across the whole offcut, then ripped to width.
 */
final class Bench {
  private final Stock stock;
  private final Rack starts = new Rack();
  private final Rack ends = new Rack();
  private final Rack middles = new Rack();
  private final Rack strips = new Rack();
  private final int[] opened;
  private long[] boardLengths = new long[64];
  private int[] openedFor = new int[64];
  private int boards;
  private BigInteger kerf = BigInteger.ZERO;
  private int strokes;

  Bench(Stock stock) {
    this.stock = stock;
    this.opened = new int[stock.lengths.length];
  }

  long width() {
    return stock.width;
  }

  int boards() {
    return boards;
  }

  int[] opened() {
    return opened;
  }

  BigInteger kerf() {
    return kerf;
  }

  /** How often the saw went through. */
  int strokes() {
    return strokes;
  }

  /** Takes over what was sawn elsewhere. */
  void addSawn(BigInteger dust, int cuts) {
    kerf = kerf.add(dust);
    strokes += cuts;
  }

  long boardLength(int board) {
    return boardLengths[board];
  }

  int openedFor(int board) {
    return openedFor[board];
  }

  /** An offcut that holds a piece, taken from its rack; null if there is none. */
  Offcut find(PieceWanted piece) {
    if (piece.high() - piece.low() < stock.width) {
      Offcut strip = strips.take(piece, boardLengths);
      if (strip != null) {
        return strip;
      }
    }
    return switch (piece.ends()) {
      case BOTH -> null;
      case LOW -> ends.take(piece, boardLengths);
      case HIGH -> starts.take(piece, boardLengths);
      case NONE -> {
        Offcut middle = middles.take(piece, boardLengths);
        if (middle != null) {
          yield middle;
        }
        Long start = starts.shortestFor(piece.span());
        Long end = ends.shortestFor(piece.span());
        boolean fromStarts = start != null && (end == null || start <= end);
        yield (fromStarts ? starts : ends).take(piece, boardLengths);
      }
    };
  }

  /** Opens a board of one of the lengths sold. */
  Offcut open(int kind, int piece) {
    if (boards == boardLengths.length) {
      boardLengths = Arrays.copyOf(boardLengths, 2 * boards);
      openedFor = Arrays.copyOf(openedFor, 2 * boards);
    }
    opened[kind]++;
    boardLengths[boards] = stock.lengths[kind];
    openedFor[boards] = piece;
    return new Offcut(boards++, 0, stock.lengths[kind], 0, stock.width);
  }

  /** Cuts a piece from an offcut, writes down where, and returns what is left of the offcut. */
  List<Offcut> cut(PieceWanted piece, Offcut from, long[] place) {
    return cutAt(piece, alongFrom(piece, from), from, place);
  }

  /** Cuts a piece that begins at a place along the board. */
  List<Offcut> cutAt(PieceWanted piece, long low, Offcut from, long[] place) {
    long high = low + piece.span();
    place[0] = low;
    place[1] = high;
    place[2] = piece.low();
    place[3] = piece.high();
    long across = from.acrossTo - from.acrossFrom;
    saw(low - from.alongFrom, across);
    saw(from.alongTo - high, across);
    saw(piece.low() - from.acrossFrom, piece.span());
    saw(from.acrossTo - piece.high(), piece.span());
    return rests(piece, low, from);
  }

  /** What cutting a piece leaves of an offcut: below and above it, then toward the low end and the high end. */
  List<Offcut> rests(PieceWanted piece, long low, Offcut from) {
    long high = low + piece.span();
    List<Offcut> rests = new ArrayList<>(2);
    add(rests, from.board(), low, high, from.acrossFrom, piece.low() - stock.kerf);
    add(rests, from.board(), low, high, piece.high() + stock.kerf, from.acrossTo);
    add(rests, from.board(), from.alongFrom, low - stock.kerf, from.acrossFrom, from.acrossTo);
    add(rests, from.board(), high + stock.kerf, from.alongTo, from.acrossFrom, from.acrossTo);
    return rests;
  }

  /** Saws a section off an offcut across its whole width; returns what is left to either side. */
  List<Offcut> cross(long low, long high, Offcut from) {
    long across = from.acrossTo - from.acrossFrom;
    saw(low - from.alongFrom, across);
    saw(from.alongTo - high, across);
    List<Offcut> rests = new ArrayList<>(2);
    add(rests, from.board(), from.alongFrom, low - stock.kerf, from.acrossFrom, from.acrossTo);
    add(rests, from.board(), high + stock.kerf, from.alongTo, from.acrossFrom, from.acrossTo);
    return rests;
  }

  /** Rips a section of a board into a low and a high strip. */
  List<Offcut> rip(int board, long low, long high, long ripAt) {
    saw(stock.width - ripAt, high - low);
    List<Offcut> strips = new ArrayList<>(2);
    add(strips, board, low, high, 0, ripAt);
    add(strips, board, low, high, ripAt + stock.kerf, stock.width);
    return strips;
  }

  private long alongFrom(PieceWanted piece, Offcut from) {
    boolean factoryLow = from.alongFrom == 0;
    boolean factoryHigh = from.alongTo == boardLengths[from.board()];
    return switch (piece.ends()) {
      case BOTH, LOW -> from.alongFrom;
      case HIGH -> from.alongTo - piece.span();
      case NONE -> factoryLow && !factoryHigh ? from.alongTo - piece.span() : from.alongFrom;
    };
  }

  /** Adds the dust of one cut: where less than a kerf is left beyond it, all of that turns to dust. */
  private void saw(long beyond, long over) {
    if (beyond > 0) {
      strokes++;
      kerf = kerf.add(BigInteger.valueOf(Math.min(beyond, stock.kerf)).multiply(BigInteger.valueOf(over)));
    }
  }

  private static void add(List<Offcut> rests, int board, long alongFrom, long alongTo, long acrossFrom, long acrossTo) {
    if (alongTo > alongFrom && acrossTo > acrossFrom) {
      rests.add(new Offcut(board, alongFrom, alongTo, acrossFrom, acrossTo));
    }
  }

  /** Puts an offcut where it will be found again. */
  void put(Offcut offcut) {
    if (offcut.acrossTo - offcut.acrossFrom < stock.width) {
      strips.put(offcut);
    } else if (offcut.alongFrom == 0) {
      ends.put(offcut);
    } else if (offcut.alongTo == boardLengths[offcut.board()]) {
      starts.put(offcut);
    } else {
      middles.put(offcut);
    }
  }

  /** All offcuts left, in the order of their boards and places. */
  List<Offcut> left() {
    List<Offcut> left = new ArrayList<>();
    starts.addAllTo(left);
    ends.addAllTo(left);
    middles.addAllTo(left);
    strips.addAllTo(left);
    left.sort(Comparator.comparingInt(Offcut::board).thenComparingLong(o -> o.alongFrom)
        .thenComparingLong(o -> o.acrossFrom));
    return left;
  }
}
