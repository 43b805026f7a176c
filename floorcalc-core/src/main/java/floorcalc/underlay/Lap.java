package floorcalc.underlay;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * How the strips of a roll meet: with an overlap, or edge to edge. Sources that disagree are separate named ones.
 *
 * @param name a stable name, not null
 * @param overlap how far one strip lies over the next, not null, 0 mm if they butt
 * @param source whose figure it is, not null
 * @since 0.1
 */
public record Lap(String name, Length overlap, Source source) implements Serializable {
  /** Edge to edge, as soft underlays are laid; common practice, no source. */
  public static final Lap BUTT = new Lap("butt joints", Length.ZERO, Source.COMMON_PRACTICE);

  /** Seams of a vapour retarder over a wood subfloor: at least 4 in. */
  public static final Lap NWFA_MAGAZINE = new Lap("NWFA magazine", Length.ofInches(4, 0, 1),
      new Source("Hardwood Floors, February/March 2017", "National Wood Flooring Association", 2017, "p. 52", Standing.READ));

  /** Joints of a vapour control layer, taped: at least 150 mm. */
  public static final Lap NBS_K21 = new Lap("NBS K21", Length.ofMillimetres(150),
      new Source("NBS K21", "NBS", 0, "as in a published project specification, page 324", Standing.QUOTED));

  /** A moisture film in Chinese practice: 100 mm. */
  public static final Lap CHINESE_PRACTICE = new Lap("Chinese practice", Length.ofMillimetres(100),
      new Source("Chinese laying practice", "", 0, "an undated page of questions and answers", Standing.QUOTED));

  /** A film of polyethylene, 0.2 mm, in German and European practice: 200 mm; recalled, never tested against. */
  public static final Lap GERMAN_PRACTICE = new Lap("German practice", Length.ofMillimetres(200),
      new Source("German and European laying guidance", "", 0, "not seen in a text of an association", Standing.FROM_MEMORY));

  private static final List<Lap> NAMED = List.of(BUTT, NWFA_MAGAZINE, NBS_K21, CHINESE_PRACTICE, GERMAN_PRACTICE);

  /** Checks that no part is null and that the overlap is from 0 mm to 1 m. */
  public Lap {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(source, "source");
    if (overlap.isNegative() || overlap.compareTo(Length.ofMillimetres(1000)) > 0) {
      throw new IllegalArgumentException("an overlap must be from 0 mm to 1000 mm, but was " + overlap);
    }
  }

  /**
   * Returns an overlap as it was given.
   *
   * @param overlap how far one strip lies over the next, not null, from 0 mm to 1 m
   * @return the lap, not null
   * @throws IllegalArgumentException if the overlap is out of range
   */
  public static Lap of(Length overlap) {
    return new Lap("given", overlap, Source.GIVEN);
  }

  /**
   * Returns a lap by its name.
   *
   * @param name the name, not null
   * @return the lap, not null
   * @throws IllegalArgumentException if there is none of that name, with the names there are
   */
  public static Lap named(String name) {
    Objects.requireNonNull(name, "name");
    return NAMED.stream().filter(lap -> lap.name.equals(name)).findFirst().orElseThrow(() -> new IllegalArgumentException(
        "there is no lap named '" + name + "'; there are " + NAMED.stream().map(Lap::name).collect(Collectors.joining(", "))));
  }

  /**
   * Returns the laps that have a name.
   *
   * @return an unmodifiable list, not null
   */
  public static List<Lap> named() {
    return NAMED;
  }
}
