package floorcalc.moisture;

import java.util.List;

/**
 * What the floor is laid on, as far as moisture goes.
 *
 * @since 0.1
 */
public enum Substrate {
  /** A concrete slab. */
  CONCRETE("concrete"),
  /** A screed bound with cement. */
  CEMENT_SCREED("cement screed"),
  /** A screed bound with calcium sulfate (anhydrite). */
  CALCIUM_SULFATE_SCREED("calcium sulfate screed"),
  /** A screed whose binder is not stated: what may be either. */
  SCREED("screed, binder not stated"),
  /** Concrete or a screed of any kind. */
  MINERAL("concrete or screed"),
  /** Timber boards or joists. */
  TIMBER("timber"),
  /** Wood-based sheets. */
  SHEET("wood-based sheets"),
  /** Not stated, or an old floor that stays: may be any. */
  NOT_STATED("subfloor not stated");

  private final String words;

  Substrate(String words) {
    this.words = words;
  }

  /**
   * Returns the subfloor in a few words.
   *
   * @return for example {@code "cement screed"}, not null
   */
  public String words() {
    return words;
  }

  /**
   * Tells whether the subfloor is wood, so that a meter reads its moisture content.
   *
   * @return true for timber and sheets
   */
  public boolean isWood() {
    return this == TIMBER || this == SHEET;
  }

  /** What it may be. */
  List<Substrate> candidates() {
    return switch (this) {
      case SCREED -> List.of(CEMENT_SCREED, CALCIUM_SULFATE_SCREED);
      case MINERAL -> List.of(CONCRETE, CEMENT_SCREED, CALCIUM_SULFATE_SCREED);
      case NOT_STATED -> List.of(CONCRETE, CEMENT_SCREED, CALCIUM_SULFATE_SCREED, TIMBER, SHEET);
      default -> List.of(this);
    };
  }
}
