package floorcalc.movement;

import floorcalc.moisture.Percent;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * How much a wood shrinks from green to oven-dry, in per cent of its green size, as tables 4-3 and 4-4 of the Wood Handbook
 * have it, and what follows from that. Immutable and thread-safe.
 * <p>
 * With S the shrinkage and F the moisture content that it starts at, 30 % if not known for the wood:
 * <pre>{@code
 * down to x %:    Sx = S (1 - x / F)                  equation 4-9
 * for each 1 %:   C = S / (100 F - S (F - 10))        the coefficients of table 13-5
 * }</pre>
 * Table 13-5 rests on group values for commercial oak and on older values for imported woods, so a coefficient worked out
 * for a single species from these tables may differ from it: northern red oak gives 0.00304, the group 0.00369.
 *
 * @since 0.1
 */
public final class Shrinkage {
  /** Where shrinkage starts if it is not known for a wood: 30 %. */
  public static final Percent FIBRE_SATURATION = Percent.of("30");

  private static final Source PARTIAL = handbook("equation 4-9");
  private static final Named<Shrinkage> BY_NAME = new Named<>();
  private static final List<Shrinkage> ALL = new ArrayList<>();

  static {
    read(TablesOfShrinkage.DOMESTIC, "table 4-3");
    read(TablesOfShrinkage.IMPORTED, "table 4-4");
  }

  private final String name;
  private final Percent radial;
  private final Percent tangential;
  private final Percent byVolume;
  private final Percent start;
  private final Source source;

  private Shrinkage(String[] cells, Source source) {
    this.name = cells[0].split("\\|")[0];
    this.radial = Percent.of(cells[1]);
    this.tangential = cells[2].isEmpty() ? null : Percent.of(cells[2]);
    this.byVolume = Percent.of(cells[3]);
    this.start = Percent.of(cells[4]);
    this.source = source;
  }

  private static void read(String rows, String locator) {
    rows.lines().forEach(line -> {
      String[] cells = line.split(";", -1);
      Source source = cells[5].isEmpty() ? handbook(locator) : new Source("Wood Handbook, FPL-GTR-282",
          "USDA Forest Products Laboratory", 2021, locator, Standing.FROM_MEMORY);
      Shrinkage one = new Shrinkage(cells, source);
      ALL.add(one);
      BY_NAME.put(Arrays.asList(cells[0].split("\\|")), one);
    });
  }

  private static Source handbook(String locator) {
    return new Source("Wood Handbook, FPL-GTR-282", "USDA Forest Products Laboratory", 2021, locator, Standing.QUOTED);
  }

  /**
   * Returns the shrinkage of a wood by any of its names.
   *
   * @param name such as {@code "northern red oak"}; the order of words, capitals and punctuation do not matter; not null
   * @return the shrinkage, not null
   * @throws IllegalArgumentException if the tables do not have it; the message lists near names
   */
  public static Shrinkage named(String name) {
    Objects.requireNonNull(name, "name");
    return BY_NAME.find(name).orElseThrow(() -> SpeciesTable.unknown(name, "the tables of shrinkage",
        BY_NAME.near(name).stream().map(other -> "'" + other + "'").toList()));
  }

  /**
   * Returns all woods of the two tables in their order.
   *
   * @return an unmodifiable list, not null
   */
  public static List<Shrinkage> all() {
    return List.copyOf(ALL);
  }

  /**
   * Returns the coefficient that follows from a shrinkage.
   *
   * @param shrinkage green to oven-dry, more than 0 %, at most 25 %, not null
   * @param start the moisture content that it starts at, from 15 % to 40 %, not null
   * @return the share of the width for each 1 % between 6 % and 14 %, rounded half up to five decimals as table 13-5 is,
   *     with the step {@code coefficient-from-shrinkage}; not null
   * @throws IllegalArgumentException if a value is out of bounds
   */
  public static Calculated<BigDecimal> coefficient(Percent shrinkage, Percent start) {
    Objects.requireNonNull(start, "start");
    require(shrinkage, Percent.ZERO, Percent.of("25"), "shrinkage from green to oven-dry");
    require(start, Percent.of("15"), Percent.of("40"), "the moisture content that shrinkage starts at");
    if (shrinkage.equals(Percent.ZERO)) {
      throw new IllegalArgumentException("shrinkage from green to oven-dry must be more than 0 %, but was 0 %");
    }
    BigDecimal s = shrinkage.number();
    BigDecimal f = start.number();
    BigDecimal c = s.divide(f.multiply(BigDecimal.valueOf(100)).subtract(s.multiply(f.subtract(BigDecimal.TEN))), 5,
        RoundingMode.HALF_UP);
    return Calculated.of(c, List.of(new Step("coefficient-from-shrinkage",
        "By which share does the width change for each 1 % of moisture?",
        "C = S / (100 * F - S * (F - 10)), rounded to five decimals",
        List.of(Term.of("S", "shrinkage from green to oven-dry", shrinkage),
            Term.of("F", "moisture content that it starts at", start)), c, Source.DEFINITION)));
  }

  /**
   * Returns the shrinkage from green down to a moisture content.
   *
   * @param shrinkage green to oven-dry, from 0 % to 25 %, not null
   * @param start the moisture content that it starts at, from 15 % to 40 %, not null
   * @param moisture the moisture content, not negative; nothing shrinks above the start; not null
   * @return per cent of the green size, rounded half up to four decimals, with the step {@code partial-shrinkage}; not null
   * @throws IllegalArgumentException if a value is out of bounds
   */
  public static Calculated<Percent> downTo(Percent shrinkage, Percent start, Percent moisture) {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(moisture, "moisture");
    require(shrinkage, Percent.ZERO, Percent.of("25"), "shrinkage from green to oven-dry");
    require(start, Percent.of("15"), Percent.of("40"), "the moisture content that shrinkage starts at");
    require(moisture, Percent.ZERO, Percent.of("1000"), "moisture content");
    BigDecimal share = BigDecimal.ZERO.max(start.number().subtract(moisture.number()));
    Percent result = Percent.of(shrinkage.number().multiply(share).divide(start.number(), 4, RoundingMode.HALF_UP));
    return Calculated.of(result, List.of(new Step("partial-shrinkage", "How much has the wood shrunk at " + moisture + "?",
        "Sx = S * max(0, F - x) / F, rounded to four decimals",
        List.of(Term.of("S", "shrinkage from green to oven-dry", shrinkage),
            Term.of("F", "moisture content that it starts at", start), Term.of("x", "moisture content", moisture)),
        result, PARTIAL)));
  }

  static void require(Percent value, Percent least, Percent most, String what) {
    Objects.requireNonNull(value, what);
    if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
      throw new IllegalArgumentException(what + " must be from " + least + " to " + most + ", but was " + value);
    }
  }

  /**
   * Returns the name as the table has it.
   *
   * @return for example {@code "Oak, red, northern red"}, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns the shrinkage across the growth rings.
   *
   * @return per cent of the green size, not null
   */
  public Percent radial() {
    return radial;
  }

  /**
   * Returns the shrinkage along the growth rings.
   *
   * @return per cent of the green size, empty for the one wood whose figure is not printed; not null
   */
  public Optional<Percent> tangential() {
    return Optional.ofNullable(tangential);
  }

  /**
   * Returns the shrinkage by volume.
   *
   * @return per cent of the green volume, not null
   */
  public Percent byVolume() {
    return byVolume;
  }

  /**
   * Returns the moisture content that shrinkage starts at.
   *
   * @return 22 % for a few cedars and redwood, else 30 %; not null
   */
  public Percent start() {
    return start;
  }

  /**
   * Returns where the figures come from.
   *
   * @return the source; some rows are from memory, and say so; not null
   */
  public Source source() {
    return source;
  }

  /**
   * Returns the name.
   *
   * @return as {@link #name()}, not null
   */
  @Override
  public String toString() {
    return name;
  }
}
