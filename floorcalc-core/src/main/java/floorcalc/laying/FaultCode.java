package floorcalc.laying;

/** What keeps a job from being planned, beside an unsound outline, with the name that programs read. The names are stable. */
enum FaultCode {
  BOARDS_TOO_SHORT("boards-too-short"),
  TOO_MANY_PIECES("too-many-pieces"),
  TOO_MANY_PARTS("too-many-parts"),
  GAP_LEAVES_NO_FLOOR("gap-leaves-no-floor"),
  WALL_TOO_THIN("wall-too-thin"),
  OPENING_ASTRAY("opening-astray"),
  BREAK_WITHOUT_GAP("break-without-gap"),
  BREAKS_DO_NOT_PART("breaks-do-not-part"),
  BREAKS_LEAVE_NO_FLOOR("breaks-leave-no-floor");

  private final String text;

  FaultCode(String text) {
    this.text = text;
  }

  String text() {
    return text;
  }
}
