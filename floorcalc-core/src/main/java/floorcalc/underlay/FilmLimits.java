package floorcalc.underlay;

import floorcalc.measure.Length;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How thick a moisture film must be and how much vapour it may let through, by one source. Sources that disagree are separate sets.
 *
 * @param name a stable name, not null
 * @param base what the film lies on, not null
 * @param thinnest the least thickness, empty if the source sets none; not null
 * @param leastPermeance the least permeance in US perm, empty if the source sets none; not null
 * @param mostPermeance the most permeance in US perm, empty if the source sets none; not null
 * @param source whose limits they are, not null
 * @since 0.1
 */
public record FilmLimits(String name, Base base, Optional<Length> thinnest, Optional<BigDecimal> leastPermeance,
    Optional<BigDecimal> mostPermeance, Source source) {
  private static final String NWFA = "National Wood Flooring Association";

  /** A film over concrete: at least 6 mil (0.1524 mm), at most 0.15 perm. */
  public static final FilmLimits NWFA_CONCRETE = new FilmLimits("NWFA over concrete", Base.MINERAL,
      Optional.of(Length.ofMillimetres("0.1524")), Optional.empty(), Optional.of(new BigDecimal("0.15")),
      new Source("NWFA guidelines", NWFA, 2017, "hardwoodfloorsmag.com, 2017-06-01", Standing.READ));

  /** A retarder over a wood subfloor: from 0.7 to 10 perm, so that the subfloor can dry. */
  public static final FilmLimits NWFA_WOOD = new FilmLimits("NWFA over wood", Base.WOOD, Optional.empty(),
      Optional.of(new BigDecimal("0.7")), Optional.of(new BigDecimal("10")),
      new Source("NWFA guidelines", NWFA, 2017, "hardwoodfloorsmag.com, 2017-01-30", Standing.READ));

  /** Polyethylene on a slab: 4 or 6 mil; the lesser figure. */
  public static final FilmLimits NOFMA_SLAB = new FilmLimits("NOFMA on a slab", Base.MINERAL,
      Optional.of(Length.ofMillimetres("0.1016")), Optional.empty(), Optional.empty(),
      new Source("NOFMA", "Wood Flooring Manufacturers Association", 0, "as quoted by fcimag.com", Standing.QUOTED));

  private static final List<FilmLimits> NAMED = List.of(NWFA_CONCRETE, NWFA_WOOD, NOFMA_SLAB);

  /** Checks that no part is null. */
  public FilmLimits {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(base, "base");
    Objects.requireNonNull(thinnest, "thinnest");
    Objects.requireNonNull(leastPermeance, "leastPermeance");
    Objects.requireNonNull(mostPermeance, "mostPermeance");
    Objects.requireNonNull(source, "source");
  }

  /**
   * Returns limits by their name.
   *
   * @param name the name, not null
   * @return the limits, not null
   * @throws IllegalArgumentException if there are none of that name, with the names there are
   */
  public static FilmLimits named(String name) {
    Objects.requireNonNull(name, "name");
    return NAMED.stream().filter(limits -> limits.name.equals(name)).findFirst().orElseThrow(() ->
        new IllegalArgumentException("there are no limits named '" + name + "'; there are "
            + NAMED.stream().map(FilmLimits::name).collect(Collectors.joining(", "))));
  }

  /**
   * Holds a film against the limits.
   *
   * @param film the goods, not null
   * @return a judgement of each limit that is set: {@code film-thickness}, {@code film-permeance}; what the goods do not state is not
   *     measured; not null
   */
  public List<Judgement> judge(RollGoods film) {
    List<Judgement> all = new ArrayList<>();
    thinnest.ifPresent(least -> all.add(new Judgement("film-thickness", "thickness of " + film.name(), "",
        film.thickness().map(Length::toString).orElse(""), "at least " + least, outcome(film.thickness()
            .map(thick -> thick.compareTo(least) >= 0)), source,
        advice(film.thickness().map(thick -> thick.compareTo(least) >= 0), "thickness", "take a thicker film"))));
    if (leastPermeance.isPresent() || mostPermeance.isPresent()) {
      Optional<Boolean> met = film.permeance().map(this::lets);
      String limit = leastPermeance.map(least -> "at least " + least.toPlainString() + " perm").orElse("")
          + (leastPermeance.isPresent() && mostPermeance.isPresent() ? ", " : "")
          + mostPermeance.map(most -> "at most " + most.toPlainString() + " perm").orElse("");
      all.add(new Judgement("film-permeance", "permeance of " + film.name(), "", film.permeance().map(perm ->
          perm.toPlainString() + " perm, " + VapourClass.of(perm).words()).orElse(""), limit, outcome(met), source,
          advice(met, "permeance", base == Base.WOOD ? "take a product that lets the subfloor dry, or none" : "take a tighter film")));
    }
    return List.copyOf(all);
  }

  private boolean lets(BigDecimal permeance) {
    return leastPermeance.map(least -> permeance.compareTo(least) >= 0).orElse(true)
        && mostPermeance.map(most -> permeance.compareTo(most) <= 0).orElse(true);
  }

  private static Outcome outcome(Optional<Boolean> met) {
    return met.map(kept -> kept ? Outcome.MET : Outcome.NOT_MET).orElse(Outcome.NOT_MEASURED);
  }

  private static String advice(Optional<Boolean> met, String what, String mend) {
    return met.map(kept -> kept ? "" : mend).orElse("ask the maker for its " + what);
  }
}
