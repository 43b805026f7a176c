package floorcalc.boards;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Which piece is cut from which board. Immutable and thread-safe.
 * <p>
 * Pieces are cut in laying order, so a piece always comes from a board opened in its own or an earlier row. A board gives
 * at most one left-hand part (an end piece) and one right-hand part (a start piece), and pieces that need no factory end
 * from its middle. Several ways are tried: each piece takes the shortest offcut on hand that holds it; end pieces and start pieces
 * are paired beforehand, the longest end piece with the longest start piece that fits beside it and a saw kerf, which gives
 * the most pairs there can be; or all pieces are shared out beforehand, strips of ripped rows side by side where they fit. The
 * one that opens the fewest boards is kept, the first where they are equal; boards of several lengths are cut the first way.
 * Last, boards of one length from which end and start pieces of full width alone are cut are paired anew, for fewer cuts and
 * then for a longer leftover, with no more boards.
 *
 * @since 0.1
 */
public final class CuttingPlan {
  private final List<PieceWanted> pieces;
  private final long[] places;
  private final int[] boardOf;
  private final Bench bench;
  private final List<Offcut> left;

  CuttingPlan(List<PieceWanted> pieces, long[] places, int[] boardOf, Bench bench) {
    this.pieces = pieces;
    this.places = places;
    this.boardOf = boardOf;
    this.bench = bench;
    this.left = Collections.unmodifiableList(bench.left());
  }

  /**
   * Cuts pieces from boards.
   *
   * @param pieces the pieces in laying order, not null
   * @param goods the boards, not null
   * @param rules the rules, of which the saw kerf counts here; not null
   * @return the plan, not null
   * @throws IllegalArgumentException if a piece is longer than the longest board or does not fit into its width
   */
  public static CuttingPlan of(List<PieceWanted> pieces, BoardGoods goods, LayingRules rules) {
    return fewestBoards(pieces, goods, rules).pairedAnew(goods, rules);
  }

  /**
   * Cuts pieces from few boards, whatever the cuts and the leftovers.
   *
   * @param pieces the pieces in laying order, not null
   * @param goods the boards, not null
   * @param rules the rules, of which the saw kerf counts here; not null
   * @return the plan, not null
   * @throws IllegalArgumentException if a piece is longer than the longest board or does not fit into its width
   */
  public static CuttingPlan fewestBoards(List<PieceWanted> pieces, BoardGoods goods, LayingRules rules) {
    Stock stock = new Stock(goods, rules);
    for (PieceWanted piece : pieces) {
      if (piece.span() > stock.longest() || piece.high() > stock.width) {
        throw new IllegalArgumentException("a piece " + piece.length() + " long that ends "
            + Length.ofNanometres(piece.high()) + " across does not fit into the longest board, "
            + goods.longest() + " by " + goods.laidPitch());
      }
    }
    List<PieceWanted> wanted = List.copyOf(pieces);
    CuttingPlan asLaid = shortestOffcutFirst(wanted, stock);
    if (!stock.isUniform()) {
      return asLaid;
    }
    int least = PiecesBound.of(wanted, stock);
    CuttingPlan best = asLaid;
    if (best.boardCount() > least) {
      CuttingPlan paired = cut(wanted, stock, Pairs.of(wanted, stock));
      best = paired.boardCount() < best.boardCount() ? paired : best;
    }
    if (best.boardCount() > least) {
      CuttingPlan ahead = cutAhead(wanted, stock, BoardSharing.fewest(wanted, stock, least));
      best = ahead.boardCount() < best.boardCount() ? ahead : best;
    }
    return best;
  }

  /**
   * Pairs end and start pieces of full width anew, for fewer cuts and then for a longer leftover, with no more boards.
   *
   * @param goods the boards that this plan was made for, not null
   * @param rules the rules that this plan was made for, not null
   * @return the plan, or this one where nothing is gained, or for boards of several lengths; not null
   */
  public CuttingPlan pairedAnew(BoardGoods goods, LayingRules rules) {
    Stock stock = new Stock(goods, rules);
    return stock.isUniform() ? PairsAnew.of(this, stock) : this;
  }

  /** Cuts each piece from the board that it is to share. */
  private static CuttingPlan cutAhead(List<PieceWanted> pieces, Stock stock, SharedBoards shared) {
    SharedBench bench = new SharedBench(pieces, stock, shared);
    long[] places = new long[4 * pieces.size()];
    int[] boardOf = new int[pieces.size()];
    long[] place = new long[4];
    for (int i = 0; i < boardOf.length; i++) {
      boardOf[i] = bench.cut(i, place);
      System.arraycopy(place, 0, places, 4 * i, 4);
    }
    return new CuttingPlan(pieces, places, boardOf, bench.bench());
  }

  /** Each piece takes the shortest offcut on hand that holds it. */
  static CuttingPlan shortestOffcutFirst(List<PieceWanted> pieces, Stock stock) {
    int[] partners = new int[pieces.size()];
    Arrays.fill(partners, -1);
    return cut(pieces, stock, partners);
  }

  private static CuttingPlan cut(List<PieceWanted> pieces, Stock stock, int[] partners) {
    Bench bench = new Bench(stock);
    int count = pieces.size();
    long[] places = new long[4 * count];
    int[] boardOf = new int[count];
    Offcut[] kept = new Offcut[count];
    long[] place = new long[4];
    for (int i = 0; i < count; i++) {
      PieceWanted piece = pieces.get(i);
      int partner = partners[i];
      Offcut from = kept[i];
      if (from == null && partner < 0) {
        from = bench.find(piece);
      }
      boolean fresh = from == null;
      if (fresh) {
        int whole = stock.kindOf(piece.span());
        from = bench.open(whole >= 0 ? whole : stock.kindFor(piece.span(), bench.opened()), i);
      }
      kept[i] = null;
      for (Offcut rest : bench.cut(piece, from, place)) {
        boolean forPartner = fresh && partner > i && rest.holds(pieces.get(partner), bench.boardLength(from.board()));
        if (forPartner) {
          kept[partner] = rest;
        } else {
          bench.put(rest);
        }
      }
      System.arraycopy(place, 0, places, 4 * i, 4);
      boardOf[i] = from.board();
    }
    return new CuttingPlan(pieces, places, boardOf, bench);
  }

  int boardOf(int piece) {
    return boardOf[piece];
  }

  void copyPlace(int piece, long[] place) {
    System.arraycopy(places, 4 * piece, place, 0, 4);
  }

  Bench bench() {
    return bench;
  }

  /**
   * Returns the number of boards opened.
   *
   * @return the number of boards
   */
  public int boardCount() {
    return bench.boards();
  }

  /**
   * Returns the boards opened of each length sold, longest first.
   *
   * @return the counts, a copy
   */
  public int[] boardsPerLength() {
    return bench.opened().clone();
  }

  /**
   * Returns where a piece is cut.
   *
   * @param piece the place of the piece in the list of pieces
   * @return where it is cut, not null
   */
  public Placement placement(int piece) {
    int at = 4 * piece;
    return new Placement(boardOf[piece], Length.ofNanometres(places[at]), Length.ofNanometres(places[at + 1]),
        Length.ofNanometres(places[at + 2]), Length.ofNanometres(places[at + 3]));
  }

  /**
   * Returns the pieces in laying order.
   *
   * @return an unmodifiable list, not null
   */
  public List<PieceWanted> pieces() {
    return pieces;
  }

  /**
   * Returns the length of a board.
   *
   * @param board the board, from 0 in the order of opening
   * @return its length, not null
   */
  public Length boardLength(int board) {
    return Length.ofNanometres(bench.boardLength(board));
  }

  /**
   * Returns the piece for which a board is opened.
   *
   * @param board the board, from 0 in the order of opening
   * @return the place of that piece in the list of pieces
   */
  public int openedFor(int board) {
    return bench.openedFor(board);
  }

  /**
   * Returns how often a saw goes through a board or an offcut: a stroke for each end and each edge at which something is sawn
   * off. A pair that fills its board but for one kerf takes one stroke.
   *
   * @return the number of cuts, along and across together
   */
  public int cuts() {
    return bench.strokes();
  }

  /**
   * Returns the longest offcut of full width that is left over.
   *
   * @return its length, zero if there is none; not null
   */
  public Length longestLeftover() {
    return left.stream().filter(offcut -> offcut.acrossTo - offcut.acrossFrom == bench.width()).map(Offcut::length)
        .reduce(Length.ZERO, Length::max);
  }

  /**
   * Returns what the saw turns to dust over all cuts.
   *
   * @return the exact area, not null
   */
  public Area sawKerf() {
    return Area.ofSquareNanometres(bench.kerf());
  }

  /**
   * Returns what is left of the opened boards.
   *
   * @return the offcuts in the order of their boards, unmodifiable, not null
   */
  public List<Offcut> offcuts() {
    return left;
  }
}
