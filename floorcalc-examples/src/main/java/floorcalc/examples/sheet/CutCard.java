package floorcalc.examples.sheet;

import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.plan.Bay;
import floorcalc.plan.Cut;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.Row;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.Comparator;
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
   */
  public static CutCard of(FloorJob job, FloorPlan plan) {
    Map<Integer, Length> lengths = new HashMap<>();
    for (OpenedBoard board : plan.boards()) {
      lengths.put(board.board(), board.length());
    }
    Map<Integer, List<LaidPiece>> byBoard = new HashMap<>();
    forEach(plan, (bay, row, piece) ->
        byBoard.computeIfAbsent(piece.from().board(), none -> new ArrayList<>()).add(piece));
    Map<Integer, List<Cut>> cutSoFar = new HashMap<>();
    List<CutLine> lines = new ArrayList<>();
    BoardGoods goods = job.board();
    Length kerf = job.rules().value(LayingRules.SAW_KERF);
    forEach(plan, (bay, row, piece) -> {
      Cut cut = piece.from();
      List<Cut> before = cutSoFar.computeIfAbsent(cut.board(), none -> new ArrayList<>());
      int place = before.size();
      Length length = lengths.getOrDefault(cut.board(), goods.longest());
      List<Rest> rests = rests(cut, before, length, goods.laidPitch(), kerf);
      List<LaidPiece> ofBoard = byBoard.get(cut.board());
      Optional<String> next =
          place + 1 < ofBoard.size() ? Optional.of(ofBoard.get(place + 1).piece()) : Optional.empty();
      lines.add(new CutLine(bay, row.row(), piece, length, goods.laidPitch(), place == 0, PieceShape.of(bay, piece),
          rests, next));
      before.add(cut);
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
   * What this cut leaves: the free lengths to its left and right over the full width of the board, and the strips beside
   * it, each less the saw kerf.
   */
  private static List<Rest> rests(Cut cut, List<Cut> before, Length length, Length width, Length kerf) {
    Length left = Length.ZERO;
    Length right = length;
    Length near = Length.ZERO;
    Length far = width;
    for (Cut other : before) {
      if (other.alongTo().compareTo(cut.alongFrom()) <= 0) {
        left = left.max(other.alongTo().plus(kerf));
      } else if (other.alongFrom().compareTo(cut.alongTo()) >= 0) {
        right = right.min(other.alongFrom().minus(kerf));
      } else if (other.acrossTo().compareTo(cut.acrossFrom()) <= 0) {
        near = near.max(other.acrossTo().plus(kerf));
      } else {
        far = far.min(other.acrossFrom().minus(kerf));
      }
    }
    List<Rest> rests = new ArrayList<>();
    add(rests, cut.alongFrom().minus(kerf).minus(left), width);
    add(rests, right.minus(kerf).minus(cut.alongTo()), width);
    add(rests, cut.length(), cut.acrossFrom().minus(kerf).minus(near));
    add(rests, cut.length(), far.minus(kerf).minus(cut.acrossTo()));
    rests.sort(Comparator.comparing(Rest::length).thenComparing(Rest::width).reversed());
    return rests;
  }

  private static void add(List<Rest> rests, Length length, Length width) {
    if (length.isPositive() && width.isPositive()) {
      rests.add(new Rest(length, width));
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
