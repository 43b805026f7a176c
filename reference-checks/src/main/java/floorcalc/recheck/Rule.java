package floorcalc.recheck;

/** What a plan must keep: its form, and the seven rules on which a reader of a plan may rely. */
public enum Rule {
  /** The format: fields, names, numbers of rows and runs, and what else is said beside the seven rules. */
  FORMAT(0, "format", "the file has the fields that the format names, and they agree with each other"),
  /** The pieces cover the laid area, which is the room less its gaps. */
  COVER(1, "cover", "the pieces of a bay cover its laid area, the room less its gaps: no hole, no overlap, nothing outside"),
  /** Pieces fit into their boards, a saw kerf apart. */
  CUT(2, "cut", "each piece is as large as its rectangle, and two rectangles of a board lie a saw kerf apart"),
  /** Where boards meet, they meet with the ends and edges that were machined for it. */
  FACTORY_ENDS(3, "factory ends", "an end that meets a board of its row and an edge that meets the next row are factory made"),
  /** A board is opened where it is first cut. */
  LAYING_ORDER(4, "laying order", "a piece comes from a board opened in its own or an earlier row, if the job says so"),
  /** Rows, end pieces and joints keep their minimums, or a compromise says where not. */
  MINIMUMS(5, "minimums", "rows, end pieces and joints keep the minimums, or a compromise names the breach"),
  /** Boards, packs and the bound are counted right. */
  COUNTS(6, "counts", "boards, packs and the bound are counted right"),
  /** The same job gives the same bytes. */
  SAME_BYTES(7, "same bytes", "the same job gives the same plan, byte for byte");

  private final int number;
  private final String word;
  private final String text;

  Rule(int number, String word, String text) {
    this.number = number;
    this.word = word;
    this.text = text;
  }

  /**
   * Returns its number.
   *
   * @return 1 to 7, or 0 for the format
   */
  public int number() {
    return number;
  }

  /**
   * Returns a word or two for it.
   *
   * @return for example {@code "laying order"}, not null
   */
  public String word() {
    return word;
  }

  /**
   * Returns what it asks for.
   *
   * @return a sentence without its full stop, not null
   */
  public String text() {
    return text;
  }
}
