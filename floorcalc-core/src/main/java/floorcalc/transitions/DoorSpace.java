package floorcalc.transitions;

/**
 * Which space at the leaf of a door a limit is about.
 *
 * @since 0.1
 */
public enum DoorSpace {
  /** From the finished floor to the bottom of the leaf. */
  OVER_FINISHED_FLOOR("space under the leaf, over the finished floor"),
  /** From the bare subfloor to the bottom of the leaf, before a floor is laid. */
  OVER_BARE_SUBFLOOR("space under the leaf, over the bare subfloor"),
  /** Between leaf and head, or leaf and jamb. */
  AT_HEAD_OR_JAMB("gap between leaf and head or jamb");

  private final String words;

  DoorSpace(String words) {
    this.words = words;
  }

  /**
   * Returns the space in words.
   *
   * @return a few words, not null
   */
  public String words() {
    return words;
  }
}
