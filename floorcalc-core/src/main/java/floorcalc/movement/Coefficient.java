package floorcalc.movement;

import floorcalc.moisture.Percent;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How much boards move: the change of width, as a share of the width, for each 1 % of moisture content. 0.00369 means
 * 0.369 % of the width, or 3.69 mm on a metre, for each per cent. Immutable and thread-safe.
 * <p>
 * Wood has one of its {@link Species}. Engineered boards have one of their own: ask their maker, and give it with
 * {@link #ofPercent}. The published ones below are for where nobody knows better.
 *
 * @since 0.1
 */
public final class Coefficient implements Serializable {
  // Above the constants, which are checked against it.
  private static final BigDecimal MOST = new BigDecimal("0.02");

  /** NF DTU 51.2, softwood boards: 0.25 % for each per cent. */
  public static final Coefficient NF_DTU_SOFTWOOD = published("NF DTU softwood", "0.25", dtu("NF DTU 51.2 P1-1", 2020,
      "clause 7.2"));

  /** NF DTU 51.2, hardwood boards: 0.33 % for each per cent. */
  public static final Coefficient NF_DTU_HARDWOOD = published("NF DTU hardwood", "0.33", dtu("NF DTU 51.2 P1-1", 2020,
      "clause 7.2"));

  /** NF DTU 51.1, solid wood: 0.25 % for each per cent. */
  public static final Coefficient NF_DTU_SOLID = published("NF DTU solid", "0.25", dtu("NF DTU 51.1 P1-1", 2010,
      "clause 7.5"));

  /** NF DTU 51.1, multilayer boards: 0.03 % for each per cent. */
  public static final Coefficient NF_DTU_MULTILAYER = published("NF DTU multilayer", "0.03", dtu("NF DTU 51.1 P1-1", 2010,
      "clause 7.5"));

  /** Danish flooring reference, radial: 0.15 % for each per cent. */
  public static final Coefficient DANISH_RADIAL = published("Danish radial", "0.15", danish());

  /** Danish flooring reference, tangential: 0.3 % for each per cent. */
  public static final Coefficient DANISH_TANGENTIAL = published("Danish tangential", "0.3", danish());

  /** Danish flooring reference, mixed grain: 0.22 % for each per cent. */
  public static final Coefficient DANISH_MIXED = published("Danish mixed grain", "0.22", danish());

  /** Balanced plywood, along and across: 0.02 % for each per cent; Wood Handbook, chapter 12, as quoted. */
  public static final Coefficient PLYWOOD = published("plywood", "0.02", new Source("Wood Handbook, FPL-GTR-190",
      "USDA Forest Products Laboratory", 2010, "chapter 12, balanced plywood", Standing.QUOTED));

  private static final List<Coefficient> PUBLISHED = List.of(NF_DTU_SOFTWOOD, NF_DTU_HARDWOOD, NF_DTU_SOLID,
      NF_DTU_MULTILAYER, DANISH_RADIAL, DANISH_TANGENTIAL, DANISH_MIXED, PLYWOOD);
  private static final long serialVersionUID = 1L;

  private final BigDecimal share;
  private final String about;
  private final Source source;
  private final Percent driest;
  private final Percent dampest;

  private Coefficient(BigDecimal share, String about, Source source, Percent driest, Percent dampest) {
    this.share = share;
    this.about = about;
    this.source = source;
    this.driest = driest;
    this.dampest = dampest;
  }

  private static Source dtu(String title, int year, String locator) {
    return new Source(title, "AFNOR", year, locator, Standing.READ);
  }

  private static Source danish() {
    return new Source("Gulvfakta", "", 0, "moisture technical conditions", Standing.QUOTED);
  }

  private static Coefficient published(String about, String percent, Source source) {
    return ofPercent(new BigDecimal(percent), about, source);
  }

  /**
   * Returns a coefficient as the Wood Handbook gives it.
   *
   * @param share the change as a share of the width for each 1 % of moisture content, more than 0, at most 0.02; not null
   * @param about what it is for, not null
   * @param source where it comes from, not null
   * @return the coefficient, not null
   * @throws IllegalArgumentException if the share is out of bounds
   */
  public static Coefficient of(BigDecimal share, String about, Source source) {
    Objects.requireNonNull(share, "share");
    if (share.signum() <= 0 || share.compareTo(MOST) > 0 || share.scale() > 30) {
      throw new IllegalArgumentException("the change of width for 1 % of moisture must be more than 0 and at most 0.02 of"
          + " the width, but was " + share + "; 0.369 % of the width is 0.00369");
    }
    BigDecimal plain = share.stripTrailingZeros();
    return new Coefficient(plain, Objects.requireNonNull(about, "about"), Objects.requireNonNull(source, "source"), null,
        null);
  }

  /**
   * Returns a coefficient in per cent of the width, as European sources and makers give it.
   *
   * @param percent the change in per cent of the width for each 1 % of moisture content, more than 0, at most 2; not null
   * @param about what it is for, not null
   * @param source where it comes from, not null
   * @return the coefficient, not null
   * @throws IllegalArgumentException if the figure is out of bounds
   */
  public static Coefficient ofPercent(BigDecimal percent, String about, Source source) {
    return of(percent.movePointLeft(2), about, source);
  }

  /** A copy that is stated between two moisture contents. */
  Coefficient statedFor(Percent from, Percent to) {
    return new Coefficient(share, about, source, from, to);
  }

  /**
   * Returns the published coefficients that are for no single species.
   *
   * @return an unmodifiable list, not null
   */
  public static List<Coefficient> published() {
    return PUBLISHED;
  }

  /**
   * Returns the published coefficient of a name.
   *
   * @param about the name, as {@link #about()} gives it, not null
   * @return the coefficient, not null
   * @throws IllegalArgumentException if there is none; the message lists the names
   */
  public static Coefficient named(String about) {
    Objects.requireNonNull(about, "about");
    return PUBLISHED.stream().filter(one -> one.about.equals(about)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no published coefficient '" + about + "'; there are: "
            + PUBLISHED.stream().map(one -> "'" + one.about + "'").collect(Collectors.joining(", "))));
  }

  /**
   * Returns the change as a share of the width for each 1 % of moisture content.
   *
   * @return for example 0.00369, not null
   */
  public BigDecimal share() {
    return share;
  }

  /**
   * Returns what the coefficient is for.
   *
   * @return a few words, not null
   */
  public String about() {
    return about;
  }

  /**
   * Returns where it comes from.
   *
   * @return the source, not null
   */
  public Source source() {
    return source;
  }

  /**
   * Returns the lowest moisture content that the source states it for.
   *
   * @return 6 % for the Wood Handbook, empty if the source states no range; not null
   */
  public Optional<Percent> driest() {
    return Optional.ofNullable(driest);
  }

  /**
   * Returns the highest moisture content that the source states it for.
   *
   * @return 14 % for the Wood Handbook, empty if the source states no range; not null
   */
  public Optional<Percent> dampest() {
    return Optional.ofNullable(dampest);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Coefficient other && share.equals(other.share) && about.equals(other.about)
        && source.equals(other.source) && Objects.equals(driest, other.driest) && Objects.equals(dampest, other.dampest);
  }

  @Override
  public int hashCode() {
    return Objects.hash(share, about, source);
  }

  /**
   * Returns the coefficient as one line.
   *
   * @return for example {@code "0.00369 of the width for 1 % (Red oak, commercial, flat-sawn)"}, not null
   */
  @Override
  public String toString() {
    return share.toPlainString() + " of the width for 1 % (" + about + ")";
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    Coefficient coefficient = of(share, about, source);
    return driest == null && dampest == null ? coefficient
        : coefficient.statedFor(Objects.requireNonNull(driest, "driest"), Objects.requireNonNull(dampest, "dampest"));
  }
}
