package floorcalc.audit;

/** What the audit can find, with the name that programs read. The names are stable; docs/audit.md explains each. */
enum Code {
  // The documents themselves.
  OUT_OF_RANGE("out-of-range"),
  ROOM_UNKNOWN("room-unknown"),
  ROOM_WITHOUT_BAY("room-without-bay"),
  DIRECTION("direction"),
  BAY_NAME("bay-name"),
  ROW_NUMBER("row-number"),
  PIECE_NAME("piece-name"),
  PIECE_ORDER("piece-order"),
  RUN_NUMBER("run-number"),
  // 1: the laid area is the room less the gap, and the pieces cover it.
  LAID_OUTLINE("laid-outline"),
  LAID_TOO_NEAR("laid-too-near"),
  LAID_ASTRAY("laid-astray"),
  LAID_MISSING("laid-missing"),
  BAYS_OVERLAP("bays-overlap"),
  BREAK_GAP("break-gap"),
  BREAKS_GIVEN("breaks-given"),
  HOLE("hole"),
  OVERLAP("overlap"),
  OUTSIDE("outside-laid"),
  PIECE_OUTLINE("piece-outline"),
  OUTSIDE_ROW("outside-row"),
  AREA("area-differs"),
  CRUMBS("tip-left-out"),
  SPUR("spur"),
  // 2: each piece is cut from its board.
  BOARD_UNKNOWN("board-unknown"),
  BOARD_LENGTH("board-length"),
  OUTSIDE_BOARD("outside-board"),
  RECTANGLE("rectangle"),
  PIECE_KIND("piece-kind"),
  KERF("kerf"),
  NOT_CUTTABLE("not-cuttable"),
  // 3: only factory ends and edges meet.
  SAWN_END("sawn-end-meets-board"),
  SAWN_EDGE("sawn-edge-meets-row"),
  // 4: the order of laying.
  OPENED_LATE("opened-too-late"),
  OPENED_ELSEWHERE("opened-elsewhere"),
  // 5: the three minimums.
  ROW_WIDTH("row-width"),
  ROW_TOO_NARROW("row-too-narrow"),
  END_PIECE_TOO_SHORT("end-piece-too-short"),
  JOINTS_TOO_CLOSE("joints-too-close"),
  COMPROMISE("compromise-misstated"),
  COMPROMISE_NOT_NEEDED("compromise-not-needed"),
  // 6: the order.
  BOARD_NUMBER("board-number"),
  BOARD_UNUSED("board-unused"),
  BOARDS_USED("boards-used"),
  BOUND_TOO_HIGH("bound-too-high"),
  BOUND_WEAK("bound-weak"),
  SPARE("spare"),
  BOARDS_IN_PACKS("boards-in-packs"),
  PACKS_TOO_FEW("packs-too-few"),
  PACKS_TOO_MANY("packs-too-many"),
  // 7: the ledger.
  LEDGER_OPEN("ledger-open"),
  LEDGER_NEGATIVE("ledger-negative"),
  LEDGER_BOUGHT("ledger-bought"),
  LEDGER_LAID("ledger-laid"),
  LEDGER_TRIMMED("ledger-trimmed"),
  LEDGER_CUT("ledger-cut"),
  LEDGER_SPARE("ledger-spare");

  private final String text;

  Code(String text) {
    this.text = text;
  }

  String text() {
    return text;
  }
}
