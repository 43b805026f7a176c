package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.plan.Cut;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Row;
import floorcalc.rules.LayingRules;
import floorcalc.trims.TrimBar;
import floorcalc.trims.TrimCutting;
import floorcalc.trims.TrimPiece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Boards or bars that are cut alike.
 *
 * @param numbers their numbers, from 1
 * @param length how long one is
 * @param width how wide one is, 1 mm for a bar
 * @param kerf how wide a saw cut is
 * @param parts what is cut from one
 */
record CutStock(List<Integer> numbers, Length length, Length width, Length kerf, List<Part> parts) {
  private static final Length BAR = Length.ofMillimetres(1);

  /**
   * A piece.
   *
   * @param name what it is, for example "row 3"
   * @param tone the fill
   * @param cut the place it takes
   */
  record Part(String name, String tone, Cut cut) {
  }

  /** Tells whether it stays in one piece. */
  boolean isWhole() {
    return parts.size() == 1 && parts.get(0).cut().length().compareTo(length) >= 0 && parts.get(0).cut().width().compareTo(width) >= 0;
  }

  /** Tells boards from bars, whose pieces are all of one kind. */
  boolean isBoard() {
    return width.compareTo(BAR) != 0;
  }

  static List<CutStock> ofBoards(FloorJob job, FloorPlan plan) {
    Map<Integer, List<Part>> parts = new LinkedHashMap<>();
    plan.boards().forEach(board -> parts.put(board.board(), new ArrayList<>()));
    plan.bays().forEach(bay -> {
      for (Row row : bay.rows()) {
        for (LaidPiece piece : row.pieces()) {
          String name = (plan.bays().size() > 1 ? bay.bay() + " row " : "row ") + row.row();
          parts.computeIfAbsent(piece.from().board(), board -> new ArrayList<>())
              .add(new Part(name, Boards.tone(piece.kind()), piece.from()));
        }
      }
    });
    List<CutStock> stocks = new ArrayList<>();
    for (OpenedBoard board : plan.boards()) {
      stocks.add(new CutStock(List.of(board.board()), board.length(), job.board().coverWidth(),
          job.rules().value(LayingRules.SAW_KERF), List.copyOf(parts.get(board.board()))));
    }
    return List.copyOf(stocks);
  }

  static List<CutStock> ofBars(TrimCutting cutting) {
    Length kerf = kerf(cutting);
    Map<List<Object>, CutStock> alike = new LinkedHashMap<>();
    int number = 0;
    for (TrimBar bar : cutting.bars()) {
      number++;
      List<Part> parts = new ArrayList<>();
      Length from = Length.ZERO;
      for (TrimPiece piece : bar.pieces()) {
        Length to = from.plus(piece.cutLength());
        parts.add(new Part(piece.name(), Boards.tone(PieceKind.START), new Cut(number, from, to, Length.ZERO, BAR)));
        from = to.plus(kerf);
      }
      List<Object> key = List.of(bar.stock().length(), parts.stream().map(Part::name).toList(),
          parts.stream().map(part -> part.cut().length()).toList());
      CutStock before = alike.get(key);
      List<Integer> numbers = new ArrayList<>(before == null ? List.of() : before.numbers());
      numbers.add(number);
      alike.put(key, new CutStock(Collections.unmodifiableList(numbers), bar.stock().length(), BAR, kerf, List.copyOf(parts)));
    }
    return List.copyOf(alike.values());
  }

  /** What one cut takes: a bar with something left beyond its last cut tells; so does one with several cuts. */
  private static Length kerf(TrimCutting cutting) {
    Length kerf = Length.ZERO;
    for (TrimBar bar : cutting.bars()) {
      if (bar.cuts() > 0 && !bar.leftover().isZero()) {
        return bar.dust().dividedBy(bar.cuts(), java.math.RoundingMode.DOWN);
      }
      if (bar.cuts() > 0) {
        kerf = kerf.max(bar.dust().dividedBy(bar.cuts(), java.math.RoundingMode.DOWN));
      }
    }
    return kerf;
  }
}
