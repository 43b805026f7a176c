package floorcalc.movement;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The expansion gap judged three ways, each by itself:
 * <ol>
 * <li>{@code gap-wide-enough}: at every place, room for the swelling from now to the dampest season, or, on the far side
 * of a column, for the shrinkage to the driest, which draws the floor against it;
 * <li>{@code gap-covered}: at every place, still under the trim in the driest season, when the floor has drawn back, or on
 * that far side in the dampest;
 * <li>{@code floor-not-pinned}: nothing holds the floor.
 * </ol>
 * The place with the least margin decides. All widths are square to the wall and on that side alone, not in total. Immutable and
 * thread-safe.
 *
 * @since 0.1
 */
public final class GapChecks {
  private final List<Place> places;
  private final List<Judgement> judgements;

  /**
   * What becomes of the gap at one place.
   *
   * @param point the place, not null
   * @param closes the most that the gap closes in either season, square to the wall, rounded up to a whole nanometre; not
   *     null
   * @param opens the most that it opens in either season, square to the wall, rounded up; not null
   * @since 0.1
   */
  public record Place(GapPoint point, Length closes, Length opens) {
    /** Checks that no part is null. */
    public Place {
      Objects.requireNonNull(point, "point");
      Objects.requireNonNull(closes, "closes");
      Objects.requireNonNull(opens, "opens");
    }

    /**
     * Returns what is left of the gap when it is narrowest: in the dampest season, or in the driest where a floor that
     * shrinks comes nearer.
     *
     * @return negative if the floor presses against the wall, not null
     */
    public Length narrowest() {
      return point.gap().minus(closes);
    }

    /**
     * Returns how wide the gap gets.
     *
     * @return the gap, not null
     */
    public Length widest() {
      return point.gap().plus(opens);
    }

    /**
     * Returns by how much the trim still overlaps the floor when the gap is widest.
     *
     * @return negative if the gap shows, empty if the cover was not given; not null
     */
    public Optional<Length> overlap() {
      return point.cover().map(cover -> cover.minus(widest()));
    }
  }

  private GapChecks(List<Place> places, List<Judgement> judgements) {
    this.places = List.copyOf(places);
    this.judgements = List.copyOf(judgements);
  }

  /**
   * Judges the gap of a floor.
   *
   * @param forecast what the boards will do, not null
   * @param points the places to look at, perhaps none, not null
   * @param pinning what holds the floor, not null
   * @return the three judgements in the order above, with the steps of the seasons if the forecast is from the air, of
   *     {@code swelling-share} or {@code shrinkage-share}, and of {@code gap-closes} and {@code gap-opens} at the places
   *     that decide; not null
   */
  public static Calculated<GapChecks> judge(MovementForecast forecast, List<GapPoint> points, Pinning pinning) {
    Movements damp = Movements.swelling(forecast);
    Movements dry = Movements.shrinkage(forecast);
    List<Place> places = points.stream().map(point -> new Place(point,
        damp.closes(point).max(dry.closes(point)), damp.opens(point).max(dry.opens(point)))).toList();
    List<Step> steps = new ArrayList<>(forecast.seasons());
    List<Judgement> judgements = new ArrayList<>();
    judgements.add(wideEnough(forecast, places, damp, dry, steps));
    judgements.add(covered(places, damp, dry, steps));
    judgements.add(pinning.judge());
    return Calculated.of(new GapChecks(places, judgements), steps, findings(forecast));
  }

  /** A coefficient that is stretched beyond its range, said once. */
  private static List<Finding> findings(MovementForecast forecast) {
    LinkedHashSet<Finding> findings = new LinkedHashSet<>(forecast.findings());
    Length any = Length.ofMillimetres(1);
    findings.addAll(forecast.swelling(any).findings());
    findings.addAll(forecast.shrinkage(any).findings());
    return List.copyOf(findings);
  }

  private static Judgement wideEnough(MovementForecast forecast, List<Place> places, Movements damp, Movements dry,
      List<Step> steps) {
    Source source = forecast.coefficient().source();
    String check = "gap wide enough for the movement, on each side, square to the wall";
    if (places.isEmpty()) {
      return new Judgement("gap-wide-enough", check, "", "", "at least what the movement closes", Outcome.NOT_MEASURED, source,
          "measure the gap at the walls and at everything fixed");
    }
    Place worst = places.get(0);
    for (Place place : places) {
      worst = place.narrowest().compareTo(worst.narrowest()) < 0 ? place : worst;
    }
    Movements season = damp.closes(worst.point()).compareTo(dry.closes(worst.point())) >= 0 ? damp : dry;
    steps.addAll(season.closing(worst.point()));
    boolean met = !worst.narrowest().isNegative();
    return new Judgement("gap-wide-enough", check, worst.point().name(), worst.point().gap().toString(),
        "at least " + worst.closes(), met ? Outcome.MET : Outcome.NOT_MET, source, met ? ""
            : worst.narrowest().negated() + " more are needed there: widen the gap, or put in an expansion break");
  }

  private static Judgement covered(List<Place> places, Movements damp, Movements dry, List<Step> steps) {
    String check = "gap covered by the trim when it is widest, square to the wall";
    List<Place> known = places.stream().filter(place -> place.point().cover().isPresent()).toList();
    if (known.isEmpty()) {
      return new Judgement("gap-covered", check, "", "", "at least the gap and what it opens", Outcome.NOT_MEASURED,
          Source.DEFINITION, "say how far from the wall the trim reaches");
    }
    Place worst = known.get(0);
    for (Place place : known) {
      worst = overlap(place).compareTo(overlap(worst)) < 0 ? place : worst;
    }
    Movements season = dry.opens(worst.point()).compareTo(damp.opens(worst.point())) >= 0 ? dry : damp;
    steps.addAll(season.opening(worst.point()));
    String found = "a trim of " + worst.point().cover().orElseThrow();
    String limit = "at least " + worst.widest() + " (gap " + worst.point().gap() + ", which opens "
        + worst.opens() + " more)";
    if (overlap(worst).isNegative()) {
      return new Judgement("gap-covered", check, worst.point().name(), found, limit, Outcome.NOT_MET, Source.DEFINITION,
          "the gap shows by " + overlap(worst).negated() + ": take a wider trim, or lay the boards drier");
    }
    Optional<Place> bare = places.stream().filter(place -> place.point().cover().isEmpty()).findFirst();
    return bare.isPresent()
        ? new Judgement("gap-covered", check, bare.get().point().name(), "", "at least " + bare.get().widest(),
            Outcome.NOT_MEASURED, Source.DEFINITION, "say how far from the wall the trim reaches there")
        : new Judgement("gap-covered", check, worst.point().name(), found, limit, Outcome.MET, Source.DEFINITION, "");
  }

  private static Length overlap(Place place) {
    return place.overlap().orElseThrow();
  }

  /**
   * Returns what becomes of the gap at each place.
   *
   * @return an unmodifiable list in the order of the points given, not null
   */
  public List<Place> places() {
    return places;
  }

  /**
   * Returns the three judgements.
   *
   * @return {@code gap-wide-enough}, {@code gap-covered} and {@code floor-not-pinned}, unmodifiable, not null
   */
  public List<Judgement> judgements() {
    return judgements;
  }
}
