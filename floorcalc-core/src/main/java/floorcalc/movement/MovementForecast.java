package floorcalc.movement;

import floorcalc.measure.Length;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.EquilibriumMoisture;
import floorcalc.moisture.Percent;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a floor will do between now and its dampest and its driest season: how much it swells and shrinks, measured
 * <b>across the boards</b> and in total, from the one edge to the other. Immutable and thread-safe.
 * <p>
 * Width is counted across the boards and summed through openings: three rooms laid through without a break are one width.
 * Along the boards solid wood hardly moves and nothing is counted, unless {@link #along} gives a coefficient for it.
 * <pre>{@code
 * MovementForecast forecast = MovementForecast.of(Percent.of("8"), Percent.of("6.5"), Percent.of("11"),
 *     Species.named("white oak").coefficient(Grain.FLAT_SAWN));
 * forecast.swelling(Length.parse("4.2 m")).value();     // 45.99 mm in total
 * }</pre>
 * It is the movement of the boards if nothing holds them. Nails, glue and the subfloor hold some of it back; how much is
 * disputed, and tests with strip floors found no practical restraint of shrinkage. So nothing is taken off here.
 *
 * @since 0.1
 */
public final class MovementForecast {
  private final Percent now;
  private final Percent driest;
  private final Percent dampest;
  private final Coefficient across;
  private final Coefficient along;
  private final List<Step> seasons;
  private final List<Finding> findings;

  private MovementForecast(Percent now, Percent driest, Percent dampest, Coefficient across, Coefficient along,
      List<Step> seasons, List<Finding> findings) {
    this.now = now;
    this.driest = driest;
    this.dampest = dampest;
    this.across = across;
    this.along = along;
    this.seasons = List.copyOf(seasons);
    this.findings = List.copyOf(findings);
  }

  /**
   * Returns a forecast from moisture contents.
   *
   * @param now the mean moisture content of the boards when they are laid, from 0 % to 30 %, not null
   * @param driest their moisture content in the driest season, from 0 % to 30 %, not null
   * @param dampest their moisture content in the dampest season, not below that in the driest, up to 30 %, not null
   * @param across how much the boards move across, not null
   * @return the forecast, not null
   * @throws IllegalArgumentException if a value is out of bounds
   */
  public static MovementForecast of(Percent now, Percent driest, Percent dampest, Coefficient across) {
    Objects.requireNonNull(now, "now");
    Objects.requireNonNull(driest, "driest");
    Objects.requireNonNull(dampest, "dampest");
    return of(now, driest, dampest, across, List.of(), List.of());
  }

  private static MovementForecast of(Percent now, Percent driest, Percent dampest, Coefficient across, List<Step> seasons,
      List<Finding> findings) {
    WidthChange.requireMoisture(now);
    WidthChange.requireMoisture(driest);
    WidthChange.requireMoisture(dampest);
    if (driest.compareTo(dampest) > 0) {
      throw new IllegalArgumentException("the moisture content of the driest season, " + driest
          + ", is above that of the dampest, " + dampest + "; give the driest first");
    }
    return new MovementForecast(now, driest, dampest, Objects.requireNonNull(across, "across"), null, seasons, findings);
  }

  /**
   * Returns a forecast from the air of the two seasons: boards settle at the equilibrium moisture content of each. Which
   * of the two is the damper is worked out; they may be given in either order.
   *
   * @param now the mean moisture content of the boards when they are laid, from 0 % to 30 %, not null
   * @param driest the air in the driest season, not null
   * @param dampest the air in the dampest season, not null
   * @param across how much the boards move across, not null
   * @return the forecast, with the steps of the two moisture contents; not null
   * @throws IllegalArgumentException if a value is out of bounds
   */
  public static Calculated<MovementForecast> inSeasons(Percent now, AirClimate driest, AirClimate dampest,
      Coefficient across) {
    Objects.requireNonNull(now, "now");
    Objects.requireNonNull(driest, "driest");
    Objects.requireNonNull(dampest, "dampest");
    Calculated<Percent> one = EquilibriumMoisture.of(driest);
    Calculated<Percent> other = EquilibriumMoisture.of(dampest);
    boolean inOrder = one.value().compareTo(other.value()) <= 0;
    List<Step> steps = new ArrayList<>((inOrder ? one : other).steps());
    steps.addAll((inOrder ? other : one).steps());
    List<Finding> findings = new ArrayList<>(one.findings());
    findings.addAll(other.findings());
    MovementForecast forecast = of(now, (inOrder ? one : other).value(), (inOrder ? other : one).value(), across, steps,
        findings);
    return Calculated.of(forecast, steps, findings);
  }

  /**
   * Returns a copy whose boards move along their length too, such as boards with a plywood core.
   *
   * @param coefficient how much they move along, not null
   * @return the copy, not null
   */
  public MovementForecast along(Coefficient coefficient) {
    return new MovementForecast(now, driest, dampest, across, Objects.requireNonNull(coefficient, "coefficient"), seasons,
        findings);
  }

  /**
   * Returns the width across the boards of parts that are laid through without a break.
   *
   * @param parts the width of each room and opening in a line across the boards, none negative, not empty, not null
   * @return their sum with the step {@code width-across}, not null
   * @throws IllegalArgumentException if there are no parts or one is negative
   */
  public static Calculated<Length> through(List<Length> parts) {
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("give at least one width");
    }
    parts.forEach(WidthChange::requireWidth);
    Length sum = parts.stream().reduce(Length.ZERO, Length::plus);
    String formula = IntStream.rangeClosed(1, parts.size()).mapToObj(i -> "w" + i).collect(Collectors.joining(" + "));
    List<Term> terms = IntStream.range(0, parts.size())
        .mapToObj(i -> Term.of("w" + (i + 1), "part " + (i + 1), parts.get(i))).toList();
    return Calculated.of(sum, List.of(new Step("width-across",
        "How wide is the floor across the boards, through all openings without a break?", "W = " + formula, terms, sum,
        Source.DEFINITION)));
  }

  /**
   * Returns how much a width swells from now to the dampest season.
   *
   * @param width a board, some boards, or a floor, across the boards; not negative, not null
   * @return zero if the boards are damper now; in total, with the step {@code swelling}; not null
   * @throws IllegalArgumentException if the width is negative
   */
  public Calculated<Length> swelling(Length width) {
    return WidthChange.change("swelling", "By how much does the width swell in all from now to the dampest season?", width,
        across, now, dampest.compareTo(now) > 0 ? dampest : now);
  }

  /**
   * Returns how much a width shrinks from now to the driest season.
   *
   * @param width a board, some boards, or a floor, across the boards; not negative, not null
   * @return not negative, zero if the boards are drier now; in total, with the step {@code shrinkage}; not null
   * @throws IllegalArgumentException if the width is negative
   */
  public Calculated<Length> shrinkage(Length width) {
    Calculated<Length> change = WidthChange.change("shrinkage-change",
        "By how much does the width change in all from now to the driest season?", width, across, now,
        driest.compareTo(now) < 0 ? driest : now);
    Length shrunk = change.value().negated();
    List<Step> steps = new ArrayList<>(change.steps());
    steps.add(new Step("shrinkage", "By how much does it shrink?", "s = 0 - dD",
        List.of(Term.of("dD", "change of the width", change.value())), shrunk, Source.DEFINITION));
    return Calculated.of(shrunk, steps, change.findings());
  }

  /**
   * Returns how far each joint opens in the driest season if all of them open alike, as joints of boards that are fixed
   * one by one do. Boards that are glued or clicked together stay shut, and the gap at the walls opens instead.
   *
   * @param width the floor across the boards, not negative, not null
   * @param joints the number of joints, more than zero, not null
   * @return rounded up to a whole nanometre, with the step {@code joint-opening}; not null
   * @throws IllegalArgumentException if a value is out of bounds
   */
  public Calculated<Length> jointOpening(Length width, long joints) {
    if (joints < 1) {
      throw new IllegalArgumentException("the number of joints must be at least 1, but was " + joints);
    }
    Calculated<Length> shrinkage = shrinkage(width);
    Length each = shrinkage.value().dividedBy(joints, RoundingMode.CEILING);
    List<Step> steps = new ArrayList<>(shrinkage.steps());
    steps.add(new Step("joint-opening", "How far does each joint open if all open alike?",
        "o = s / n, rounded up to a whole nanometre", List.of(Term.of("s", "shrinkage of the floor", shrinkage.value()),
            Term.of("n", "joints between boards", joints)), each, Source.DEFINITION));
    return Calculated.of(each, steps, shrinkage.findings());
  }

  /** Per cent of width for the change from now to the dampest season, as a share: C (M - M0), not negative. */
  BigDecimal swellingShare(Coefficient coefficient) {
    return coefficient.share().multiply(dampest.minus(now).number().max(BigDecimal.ZERO));
  }

  /**
   * Returns the moisture content of the boards when they are laid.
   *
   * @return the moisture content now, not null
   */
  public Percent now() {
    return now;
  }

  /**
   * Returns the moisture content of the boards in the driest season.
   *
   * @return the moisture content, not null
   */
  public Percent driest() {
    return driest;
  }

  /**
   * Returns the moisture content of the boards in the dampest season.
   *
   * @return the moisture content, not null
   */
  public Percent dampest() {
    return dampest;
  }

  /**
   * Returns how much the boards move across.
   *
   * @return the coefficient, not null
   */
  public Coefficient coefficient() {
    return across;
  }

  /**
   * Returns how much the boards move along, if that is counted.
   *
   * @return the coefficient, may be empty, not null
   */
  public Optional<Coefficient> coefficientAlong() {
    return Optional.ofNullable(along);
  }

  /** How the moisture contents of the seasons came about. */
  List<Step> seasons() {
    return seasons;
  }

  List<Finding> findings() {
    return findings;
  }
}
