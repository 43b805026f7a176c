package floorcalc.examples.sheet;

import floorcalc.boards.BoardGoods;
import floorcalc.finishing.CutOuts;
import floorcalc.finishing.PieceCut;
import floorcalc.measure.Length;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.Row;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The cut card of a plan: each piece in laying order, what to cut it from and what to keep. Immutable. */
public final class CutCard {
  private final List<CutLine> lines;

  private CutCard(List<CutLine> lines) {
    this.lines = lines;
  }

  /**
   * Works out the cut card of a plan.
   *
   * @param job the job that was planned, not null
   * @param plan the plan, not null
   * @return the card, not null
   * @throws IllegalArgumentException if the pieces of a board cannot be sawn apart in laying order
   */
  public static CutCard of(FloorJob job, FloorPlan plan) {
    Map<Integer, Length> lengths = new HashMap<>();
    for (OpenedBoard board : plan.boards()) {
      lengths.put(board.board(), board.length());
    }
    Map<Integer, List<LaidPiece>> byBoard = new HashMap<>();
    forEach(plan, (bay, row, piece) ->
        byBoard.computeIfAbsent(piece.from().board(), none -> new ArrayList<>()).add(piece));
    Map<Integer, Rests> inHand = new HashMap<>();
    Map<Integer, Integer> cutSoFar = new HashMap<>();
    List<CutLine> lines = new ArrayList<>();
    Map<String, PieceCut> cuts = new HashMap<>();
    CutOuts.of(job, plan).value().pieces().forEach(cut -> cuts.put(cut.piece(), cut));
    BoardGoods goods = job.board();
    Length kerf = job.rules().value(LayingRules.SAW_KERF);
    forEach(plan, (bay, row, piece) -> {
      int board = piece.from().board();
      int place = cutSoFar.merge(board, 1, Integer::sum);
      Length length = lengths.getOrDefault(board, goods.longest());
      List<LaidPiece> ofBoard = byBoard.get(board);
      List<Rest> rests = inHand.computeIfAbsent(board, none -> new Rests(length, goods.laidPitch(), kerf))
          .cut(piece.from(), ofBoard.subList(place, ofBoard.size()));
      lines.add(new CutLine(bay, row.row(), piece, length, goods.laidPitch(), place == 1, PieceShape.of(bay, piece),
          rests, Optional.ofNullable(cuts.get(piece.piece()))));
    });
    return new CutCard(List.copyOf(lines));
  }

  /** Takes a piece of a plan. */
  private interface Visitor {
    void visit(Bay bay, Row row, LaidPiece piece);
  }

  private static void forEach(FloorPlan plan, Visitor visitor) {
    for (Bay bay : plan.bays()) {
      for (Row row : bay.rows()) {
        for (LaidPiece piece : row.pieces()) {
          visitor.visit(bay, row, piece);
        }
      }
    }
  }

  /**
   * Returns the pieces in laying order.
   *
   * @return an unmodifiable list, not null
   */
  public List<CutLine> lines() {
    return lines;
  }

  /**
   * Returns the pieces of a bay in laying order.
   *
   * @param bay a bay of the plan, not null
   * @return the pieces, not null
   */
  public List<CutLine> linesOf(Bay bay) {
    return lines.stream().filter(line -> line.bay().bay().equals(bay.bay())).toList();
  }
}
