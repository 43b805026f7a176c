package floorcalc.plan;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;

/**
 * A transition profile.
 *
 * @param kind {@code "T"}, {@code "reducer"}, {@code "end"} or {@code "nosing"}; not null
 * @param from its one end in room coordinates, not null
 * @param to its other end in room coordinates, not null
 * @param length its length, not null
 * @param because why it is there, not null
 * @since 0.1
 */
public record Profile(String kind, Point from, Point to, Length length, String because) implements Serializable {
  /** Checks that no part is null. */
  public Profile {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(because, "because");
  }

  /**
   * Returns the letter that stands for its kind on drawings and lists, before its number in the plan's list.
   *
   * @return {@code "T"}, {@code "R"} for a reducer, {@code "E"} for an end profile, {@code "N"} for a nosing, or the first
   *     letter of another kind as a capital; {@code "?"} if it names none; not null
   */
  public String letter() {
    return kind.isBlank() ? "?" : kind.strip().substring(0, kind.strip().offsetByCodePoints(0, 1)).toUpperCase(Locale.ROOT);
  }
}
