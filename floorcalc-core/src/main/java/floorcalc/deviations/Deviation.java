package floorcalc.deviations;

/**
 * What may deviate: of boards as delivered, or of a laid floor.
 *
 * @since 0.1
 */
public enum Deviation {
  /** Cover widths as measured; the deviation is the difference from the nominal width. */
  WIDTH("width", "width of the boards"),
  /** Thicknesses as measured; the deviation is the difference from the nominal thickness. */
  THICKNESS("thickness", "thickness of the boards"),
  /** Lengths as measured; the deviation is the difference from the nearest nominal length. */
  LENGTH("length", "length of the boards"),
  /** How far an end is from square to its edge, over the width of the board. */
  OUT_OF_SQUARE("out-of-square", "ends out of square"),
  /** How far tongue and groove are out of their place under the face. */
  MATCH_POSITION("match-position", "position of tongue and groove under the face"),
  /** Groove less tongue: the play between them. */
  TONGUE_FIT("tongue-fit", "play between tongue and groove"),
  /** The step between the faces of two boards side by side. */
  LIPPING("lipping", "lipping between boards"),
  /** The width of the open joint between two boards. */
  JOINT("joint", "joint between boards"),
  /** How hollow or crowned a board is across its width. */
  CUPPING("cupping", "cupping of the boards"),
  /** How far an end-to-end line of joints strays from straight over 2 m. */
  JOINT_ALIGNMENT("joint-alignment", "line of the joints over 2 m"),
  /** How far the corners of neighbouring panels miss each other. */
  CORNER_OFFSET("corner-offset", "corners of neighbouring panels"),
  /** The joint round a panel. */
  PANEL_JOINT("panel-joint", "joint round panels"),
  /** In half bond, how far the end joints of every second row are out of one line. */
  END_JOINT_LINE("end-joint-line", "end joints of every second row in one line"),
  /** In half bond, how far an end joint is from half the length of the board beside it. */
  HALF_OFFSET("half-offset", "end joints at half the length");

  private final String code;
  private final String words;

  Deviation(String code, String words) {
    this.code = code;
    this.words = words;
  }

  /**
   * Returns a stable name for programs.
   *
   * @return lower case with hyphens, for example {@code "out-of-square"}; not null
   */
  public String code() {
    return code;
  }

  /**
   * Returns what deviates in plain words.
   *
   * @return for example {@code "ends out of square"}, not null
   */
  public String words() {
    return words;
  }

  /** Whether readings are sizes of boards, to be held against a nominal size; the others are deviations themselves. */
  boolean isSize() {
    return this == WIDTH || this == THICKNESS || this == LENGTH;
  }
}
