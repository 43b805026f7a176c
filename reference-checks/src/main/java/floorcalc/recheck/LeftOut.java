package floorcalc.recheck;

import java.util.Objects;

/**
 * Something that was not checked.
 *
 * @param what what was not checked, and where; not null
 * @param because why not; not null
 */
public record LeftOut(String what, String because) {
  /** Checks that no part is null. */
  public LeftOut {
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(because, "because");
  }

  /**
   * Returns what was left out, in one line.
   *
   * @return what and why, not null
   */
  @Override
  public String toString() {
    return what + ": " + because;
  }
}
