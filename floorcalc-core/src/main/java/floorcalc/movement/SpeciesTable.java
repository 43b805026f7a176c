package floorcalc.movement;

import floorcalc.moisture.Percent;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A published table of how much woods move. Tables that disagree stand beside each other and are never mixed. Immutable
 * and thread-safe.
 *
 * @since 0.1
 */
public final class SpeciesTable {
  /**
   * Wood Handbook, table 13-5: 128 woods, coefficients for shrinking and swelling between 6 % and 14 % moisture content,
   * based on the width at 10 %.
   */
  public static final SpeciesTable WOOD_HANDBOOK = new SpeciesTable("Wood Handbook", new Source(
      "Wood Handbook, FPL-GTR-282", "USDA Forest Products Laboratory", 2021, "table 13-5", Standing.QUOTED), "6", "14", 0,
      TableOfDimensionalChange.HARDWOODS + TableOfDimensionalChange.SOFTWOODS + TableOfDimensionalChange.IMPORTED);

  /** DIN 68100 (1984) as reprinted by the German timber trade, 30 European and tropical woods. */
  public static final SpeciesTable DIN_68100 = new SpeciesTable("DIN 68100", new Source("DIN 68100", "DIN", 1984,
      "differential shrinkage, as reprinted", Standing.QUOTED), null, null, 2, OtherTablesOfMovement.EUROPEAN);

  /** Trade list A200 (2004 and earlier), 23 flooring woods, tangential alone, in part from the Wood Handbook of 1987. */
  public static final SpeciesTable TRADE_LIST_A200 = new SpeciesTable("trade list A200", new Source(
      "Technical Publication A200", "US wood-flooring trade association", 2004, "page 7, as reprinted", Standing.QUOTED),
      "6", "14", 0, OtherTablesOfMovement.TRADE_LIST);

  private static final List<SpeciesTable> ALL = List.of(WOOD_HANDBOOK, DIN_68100, TRADE_LIST_A200);

  private final String name;
  private final Source source;
  private final Percent driest;
  private final Percent dampest;
  private final List<Species> species = new ArrayList<>();
  private final Named<Species> byName = new Named<>();

  private SpeciesTable(String name, Source source, String driest, String dampest, int places, String rows) {
    this.name = name;
    this.source = source;
    this.driest = driest == null ? null : Percent.of(driest);
    this.dampest = dampest == null ? null : Percent.of(dampest);
    rows.lines().forEach(line -> {
      String[] cells = line.split(";", -1);
      List<String> names = Arrays.asList(cells[0].split("\\|"));
      Species one = new Species(this, names, share(cells[1], places), share(cells[2], places), cells[4]);
      species.add(one);
      byName.put(names, one);
    });
  }

  /** The larger end of a range; nothing for an empty cell. */
  private static BigDecimal share(String cell, int places) {
    return cell.isEmpty() ? null : new BigDecimal(cell.substring(cell.indexOf('-') + 1)).movePointLeft(places);
  }

  /**
   * Returns all tables, in the order in which {@link Species#named} looks.
   *
   * @return an unmodifiable list, not null
   */
  public static List<SpeciesTable> all() {
    return ALL;
  }

  /**
   * Returns the table of a name.
   *
   * @param name the name, as {@link #name()} gives it, not null
   * @return the table, not null
   * @throws IllegalArgumentException if there is no such table; the message lists the names
   */
  public static SpeciesTable named(String name) {
    Objects.requireNonNull(name, "name");
    return ALL.stream().filter(table -> table.name.equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no table of woods '" + name + "'; the tables are: "
            + ALL.stream().map(table -> "'" + table.name + "'").collect(Collectors.joining(", "))));
  }

  /**
   * Returns a wood of this table by any of its names.
   *
   * @param wood the name; the order of words, capitals and punctuation do not matter; not null
   * @return the wood, not null
   * @throws IllegalArgumentException if the table does not have it; the message lists near names
   */
  public Species species(String wood) {
    return find(wood).orElseThrow(() -> unknown(wood, name,
        near(wood).stream().map(other -> "'" + other + "'").toList()));
  }

  static IllegalArgumentException unknown(String wood, String where, List<String> near) {
    return new IllegalArgumentException("there is no wood '" + wood + "' in " + where
        + (near.isEmpty() ? "; SpeciesTable lists them" : "; near it are: " + String.join(", ", near)));
  }

  Optional<Species> find(String wood) {
    return byName.find(Objects.requireNonNull(wood, "wood"));
  }

  List<String> near(String wood) {
    return byName.near(wood);
  }

  /**
   * Returns the woods of the table in its order.
   *
   * @return an unmodifiable list, not null
   */
  public List<Species> species() {
    return List.copyOf(species);
  }

  /**
   * Returns the name of the table.
   *
   * @return the name, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns where the figures come from.
   *
   * @return the source, not null
   */
  public Source source() {
    return source;
  }

  Optional<Percent> driest() {
    return Optional.ofNullable(driest);
  }

  Optional<Percent> dampest() {
    return Optional.ofNullable(dampest);
  }

  /**
   * Returns the name of the table.
   *
   * @return the name, not null
   */
  @Override
  public String toString() {
    return name;
  }
}
