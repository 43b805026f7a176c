package floorcalc.movement;

import floorcalc.moisture.Percent;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A wood and how much it moves, as one table has it. Immutable and thread-safe.
 * <p>
 * Where a table gives a range, the larger end is used, so that no movement is understated.
 *
 * @since 0.1
 */
public final class Species {
  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  private final String name;
  private final List<String> names;
  private final SpeciesTable table;
  private final BigDecimal radial;
  private final BigDecimal tangential;
  private final String note;

  Species(SpeciesTable table, List<String> names, BigDecimal radial, BigDecimal tangential, String note) {
    this.name = names.get(0);
    this.names = List.copyOf(names);
    this.table = table;
    this.radial = radial;
    this.tangential = tangential;
    this.note = note;
  }

  /**
   * Returns a wood by any of its names, from the first table that has it: Wood Handbook, DIN 68100, trade list A200.
   *
   * @param name such as {@code "white oak"}, {@code "Alder, red"} or {@code "Eiche"}; the order of words, capitals and
   *     punctuation do not matter; not null
   * @return the wood, not null
   * @throws IllegalArgumentException if no table has it; the message lists near names
   */
  public static Species named(String name) {
    Objects.requireNonNull(name, "name");
    List<String> near = new ArrayList<>();
    for (SpeciesTable table : SpeciesTable.all()) {
      Optional<Species> found = table.find(name);
      if (found.isPresent()) {
        return found.get();
      }
      table.near(name).stream().map(other -> "'" + other + "' (" + table.name() + ")").forEach(near::add);
    }
    throw SpeciesTable.unknown(name, "any table", near);
  }

  /**
   * Returns the name as the table has it.
   *
   * @return for example {@code "Red oak, commercial"}, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns all names that the wood is found by.
   *
   * @return an unmodifiable list, its own name first, not null
   */
  public List<String> names() {
    return names;
  }

  /**
   * Returns the table that the figures are from.
   *
   * @return the table, not null
   */
  public SpeciesTable table() {
    return table;
  }

  /**
   * Tells whether the table has a figure for a grain.
   *
   * @param grain the grain, not null
   * @return false for quarter-sawn and mixed grain where only the tangential figure is given
   */
  public boolean has(Grain grain) {
    Objects.requireNonNull(grain, "grain");
    return grain == Grain.FLAT_SAWN || radial != null;
  }

  /**
   * Returns the coefficient for boards of a grain. Where the grain is not known, take flat-sawn, which moves most.
   *
   * @param grain the grain, not null
   * @return the coefficient, not null
   * @throws IllegalArgumentException if the table has none for it, see {@link #has}
   */
  public Coefficient coefficient(Grain grain) {
    if (!has(grain)) {
      throw new IllegalArgumentException(table.name() + " has no figure for " + name + ", " + grain.words()
          + "; take the flat-sawn one, which is larger, or another table");
    }
    BigDecimal share = switch (grain) {
      case FLAT_SAWN -> tangential;
      case QUARTER_SAWN -> radial;
      case MIXED -> radial.add(tangential).divide(TWO);
    };
    Coefficient coefficient = Coefficient.of(share, name + ", " + grain.words(), table.source());
    return table.driest().isEmpty() ? coefficient
        : coefficient.statedFor(table.driest().get(), table.dampest().orElse(Percent.of("14")));
  }

  /**
   * Returns what is to be said about the figures.
   *
   * @return a few words, empty if nothing is; not null
   */
  public String note() {
    return note;
  }

  /**
   * Returns where the figures come from.
   *
   * @return the source of the table, not null
   */
  public Source source() {
    return table.source();
  }

  /**
   * Returns the wood and its table.
   *
   * @return for example {@code "Red oak, commercial (Wood Handbook)"}, not null
   */
  @Override
  public String toString() {
    return name + " (" + table.name() + ")";
  }
}
