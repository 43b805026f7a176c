package floorcalc.trims;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * How a run of skirting ends.
 *
 * @param kind at what, not null
 * @param cornerDegrees the angle of the two walls on the side of the room, more than 0 and less than 360; 180 where there is no corner
 * @since 0.1
 */
public record TrimEnd(Kind kind, double cornerDegrees) {
  /** A run that ends at an opening. */
  public static final TrimEnd OPENING = new TrimEnd(Kind.OPENING, 180);
  /** A run that goes all round and meets itself. */
  public static final TrimEnd CLOSED = new TrimEnd(Kind.CLOSED, 180);

  /**
   * At what a run ends.
   *
   * @since 0.1
   */
  public enum Kind {
    /** A corner of the room: less than 180° on the side of the room. */
    INSIDE_CORNER("inside corner"),
    /** A corner that juts into the room: more than 180°. */
    OUTSIDE_CORNER("outside corner"),
    /** An opening. */
    OPENING("opening"),
    /** The run meets itself. */
    CLOSED("meets itself");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /**
     * Returns the kind in a few words.
     *
     * @return for example {@code "inside corner"}, not null
     */
    public String words() {
      return words;
    }
  }

  /** Checks that the kind is not null. */
  public TrimEnd {
    Objects.requireNonNull(kind, "kind");
  }

  /** The end at a corner. */
  static TrimEnd atCorner(double degrees) {
    return new TrimEnd(degrees < 180 ? Kind.INSIDE_CORNER : Kind.OUTSIDE_CORNER, degrees);
  }

  /**
   * Returns how far the saw is swung from a square cut to mitre the corner: {@code |90 - a / 2|}.
   *
   * @return degrees to one decimal, half up; 0 at an opening; not null
   */
  public BigDecimal sawDegrees() {
    return new BigDecimal(90 - cornerDegrees / 2).abs().setScale(1, RoundingMode.HALF_UP);
  }
}
