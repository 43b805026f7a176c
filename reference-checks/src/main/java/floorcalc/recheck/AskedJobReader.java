package floorcalc.recheck;

import floorcalc.recheck.AskedJob.Way;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Reads a job in the format {@code floorcalc-job/1}. The values of common practice that stand for what is left out are written down
 * here a second time, from {@code docs/rules.md}.
 */
final class AskedJobReader {
  private static final Set<String> JOB = Set.of("format", "title", "board", "laying", "goods", "rooms");
  private static final Set<String> BOARD = Set.of("length", "perPack", "mix", "coverWidth", "thickness", "construction", "species", "measured",
      "packMass", "packPrice");
  private static final Set<String> LAYING = Set.of("expansionGap", "minimumRowWidth", "minimumEndPiece", "minimumJointOffset",
      "sawKerf", "spareShare", "direction", "offcuts", "maximumRun", "breakGap", "deepestRecess", "widestVoid", "atDoorways",
      "throughBreaks");
  private static final long MM = 1_000_000;
  private static final long GAP = 10 * MM;
  private static final long ROW = 70 * MM;
  private static final long KERF = 3 * MM;
  private static final BigDecimal SHARE = new BigDecimal("0.02");
  /** From this thickness on, pieces and offsets are the longer ones. */
  private static final long THICK = 15 * MM;
  private static final long PIECE_OF_THICK = 500 * MM;
  private static final long PIECE_OF_THIN = 300 * MM;

  private AskedJobReader() {}

  static AskedJob read(Cursor job) {
    job.only(JOB);
    String format = job.get("format").text();
    if (!format.isEmpty() && !format.equals("floorcalc-job/1")) {
      job.get("format").fault(Rule.FORMAT, format, "must be floorcalc-job/1");
    }
    Cursor board = job.get("board").only(BOARD);
    long pitch = positive(board.get("coverWidth"));
    long thickness = positive(board.get("thickness"));
    long piece = thickness >= THICK ? PIECE_OF_THICK : PIECE_OF_THIN;
    Optional<Cursor> laying = job.find("laying").map(given -> given.only(LAYING));
    long gap = length(laying, "expansionGap", GAP);
    long breakGap = length(laying, "breakGap", 0);
    BigDecimal share = laying.flatMap(given -> given.find("spareShare")).map(Cursor::number).orElse(SHARE);
    String offcuts = laying.flatMap(given -> given.find("offcuts")).map(Cursor::text).orElse("in-laying-order");
    if (!Set.of("in-laying-order", "cut-ahead", "").contains(offcuts)) {
      laying.orElseThrow().get("offcuts").fault(Rule.FORMAT, offcuts, "must be in-laying-order or cut-ahead");
    }
    int keptBack = job.find("goods").flatMap(goods -> goods.find("keepBackPacks")).map(packs -> packs.whole(0)).orElse(0);
    return new AskedJob(job.get("title").text(), pitch, pack(board), gap, breakGap == 0 ? 2 * gap : breakGap,
        length(laying, "minimumRowWidth", ROW), length(laying, "minimumEndPiece", piece),
        length(laying, "minimumJointOffset", piece), length(laying, "sawKerf", KERF), share, way(laying),
        !offcuts.equals("cut-ahead"), keptBack, job.get("rooms").items().stream().map(AskedRoomReader::read).toList());
  }

  private static Way way(Optional<Cursor> laying) {
    Optional<Cursor> given = laying.flatMap(all -> all.find("direction"));
    if (given.isEmpty()) {
      return new Way(OptionalDouble.empty(), "longest-wall");
    }
    if (given.get().isNumber()) {
      return new Way(OptionalDouble.of(given.get().number().doubleValue()), "");
    }
    String word = given.get().text();
    if (!Set.of("longest-wall", "fewest-boards", "").contains(word)) {
      given.get().fault(Rule.FORMAT, word, "must be degrees, longest-wall or fewest-boards");
    }
    return new Way(OptionalDouble.empty(), word);
  }

  private static long positive(Cursor length) {
    long found = length.length();
    if (length.isThere() && found <= 0) {
      length.fault(Rule.FORMAT, Faults.mm(found), "must be more than 0 mm");
    }
    return found;
  }

  private static long length(Optional<Cursor> laying, String name, long otherwise) {
    Optional<Cursor> given = laying.flatMap(all -> all.find(name));
    long length = given.map(Cursor::length).orElse(otherwise);
    if (length < 0) {
      given.orElseThrow().fault(Rule.FORMAT, Faults.mm(length), "must be 0 mm or more");
    }
    return length;
  }

  /** Boards of each length in a pack. */
  private static Map<Long, Integer> pack(Cursor board) {
    Map<Long, Integer> pack = new LinkedHashMap<>();
    List<Cursor> kinds = board.find("mix").map(Cursor::items).orElse(List.of(board));
    for (Cursor kind : kinds) {
      Cursor length = kind.get("length");
      if (pack.put(positive(length), kind.get("perPack").whole(1)) != null) {
        length.fault(Rule.FORMAT, "a length for the second time", "each length stands once in a mix");
      }
    }
    if (kinds.isEmpty()) {
      board.get("mix").fault(Rule.FORMAT, "no boards", "a mix must have a length at least");
    }
    return pack;
  }
}
