package floorcalc.moisture;

import java.util.List;

/**
 * Whether the floor is heated from below.
 *
 * @since 0.1
 */
public enum Heating {
  /** Heated. */
  HEATED("heated"),
  /** Not heated. */
  UNHEATED("not heated"),
  /** Not stated: may be either. */
  NOT_STATED("heating not stated");

  private final String words;

  Heating(String words) {
    this.words = words;
  }

  /**
   * Returns the heating in a few words.
   *
   * @return for example {@code "not heated"}, not null
   */
  public String words() {
    return words;
  }

  List<Heating> candidates() {
    return this == NOT_STATED ? List.of(HEATED, UNHEATED) : List.of(this);
  }
}
