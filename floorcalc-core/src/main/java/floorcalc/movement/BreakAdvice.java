package floorcalc.movement;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Whether a floor may run on through its openings, and if not, at which of them it needs an expansion break.
 * <p>
 * Laid through without a break, rooms move as one: their movement is that of the whole width across the boards, from the
 * middle of all of it or from where it is held. If the gap of the rules does not take that, or the bay is wider or longer than
 * the rules allow, the fewest openings are named at which breaks help; of several such choices the one after which the gap that any bay needs is
 * least, then the one with the openings named first. Breaks at openings leave a room that is too wide by itself as it is: that is said, with the
 * number of bays that it needs. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class BreakAdvice {
  private final List<BayMovement> asOne;
  private final List<ExpansionBreak> breaks;
  private final List<BayMovement> withBreaks;

  /**
   * A break at an opening.
   *
   * @param opening the opening, not null
   * @param width how wide the break is, in total: what the bays on both sides of it need together, in whole millimetres, and no
   *     less than the gap of the rule; not null
   * @since 0.1
   */
  public record ExpansionBreak(JoinedOpening opening, Length width) {
    /** Checks that no part is null. */
    public ExpansionBreak {
      Objects.requireNonNull(opening, "opening");
      Objects.requireNonNull(width, "width");
    }
  }

  private BreakAdvice(List<BayMovement> asOne, List<ExpansionBreak> breaks, List<BayMovement> withBreaks) {
    this.asOne = List.copyOf(asOne);
    this.breaks = List.copyOf(breaks);
    this.withBreaks = List.copyOf(withBreaks);
  }

  /**
   * Returns advice for a floor each bay of which is free to move from its middle.
   *
   * @param forecast what the boards will do, not null
   * @param floor the rooms and openings, not null
   * @param rules the gap on each side and the longest runs, not null
   * @return the advice with the steps {@code width-across}, {@code swelling}, {@code shrinkage}, {@code farther-edge},
   *     {@code swelling-share}, {@code gap-needed} and {@code gap-advised} of each bay, as one and with breaks, and
   *     {@code break-width} of each break; with the findings {@code break-needed} at each opening that needs a break and
   *     {@code break-within-room} in each room that is too wide or too long by itself; not null
   */
  public static Calculated<BreakAdvice> of(MovementForecast forecast, ContinuousFloor floor, LayingRules rules) {
    return of(forecast, floor, rules, Optional.empty());
  }

  /**
   * Returns advice for a floor that is held at a point, such as by a hearth: the bay with this point moves away from it, every other one
   * from its middle.
   *
   * @param forecast what the boards will do, not null
   * @param floor the rooms and openings, not null
   * @param rules the gap on each side and the longest runs, not null
   * @param held where it is held, in the coordinates of the rooms, not null
   * @return as {@link #of(MovementForecast, ContinuousFloor, LayingRules)}, not null
   * @throws IllegalArgumentException if the point is in no room and no opening
   */
  public static Calculated<BreakAdvice> heldAt(MovementForecast forecast, ContinuousFloor floor, LayingRules rules, Point held) {
    Objects.requireNonNull(held, "held");
    if (floor.bays().stream().noneMatch(bay -> bay.contains(held))) {
      throw new IllegalArgumentException("the point that holds the floor, " + held + ", is in none of its rooms and openings");
    }
    return of(forecast, floor, rules, Optional.of(held));
  }

  private static Calculated<BreakAdvice> of(MovementForecast forecast, ContinuousFloor floor, LayingRules rules,
      Optional<Point> held) {
    List<Calculated<BayMovement>> asOne = movements(forecast, floor.bays(), rules, held);
    List<JoinedOpening> openings = fewest(forecast, floor, rules, held);
    List<Calculated<BayMovement>> parted = openings.isEmpty() ? asOne
        : movements(forecast, floor.bays(names(openings)), rules, held);
    List<Step> steps = new ArrayList<>(forecast.seasons());
    asOne.forEach(bay -> steps.addAll(bay.steps()));
    if (!openings.isEmpty()) {
      parted.forEach(bay -> steps.addAll(bay.steps()));
    }
    List<BayMovement> bays = parted.stream().map(Calculated::value).toList();
    List<ExpansionBreak> breaks = openings.stream()
        .map(opening -> breakAt(opening, bays, rules.get(LayingRules.EXPANSION_GAP), steps)).toList();
    BreakAdvice advice = new BreakAdvice(asOne.stream().map(Calculated::value).toList(), breaks, bays);
    Set<Finding> findings = new LinkedHashSet<>(forecast.findings());
    Stream.concat(asOne.stream(), parted.stream()).forEach(bay -> findings.addAll(bay.findings()));
    findings.addAll(advice.breaksNeeded());
    bays.stream().filter(bay -> !bay.fits()).forEach(bay -> findings.add(withinRoom(forecast, bay, rules)));
    return Calculated.of(advice, steps, List.copyOf(findings));
  }

  private static List<Calculated<BayMovement>> movements(MovementForecast forecast, List<ContinuousBay> bays,
      LayingRules rules, Optional<Point> held) {
    return bays.stream().map(bay -> BayWorking.of(forecast, bay, rules, held)).toList();
  }

  private static List<String> names(List<JoinedOpening> openings) {
    return openings.stream().map(JoinedOpening::name).toList();
  }

  /** The fewest openings after which every bay of several rooms fits. */
  private static List<JoinedOpening> fewest(MovementForecast forecast, ContinuousFloor floor, LayingRules rules,
      Optional<Point> held) {
    int all = floor.openings().size();
    for (int size = 0; size < all; size++) {
      List<JoinedOpening> best = null;
      Length least = null;
      for (int set = (1 << size) - 1; set < 1 << all; set = next(set, all)) {
        int chosen = set;
        List<JoinedOpening> openings = IntStream.range(0, all).filter(k -> (chosen >> k & 1) == 1)
            .mapToObj(floor.openings()::get).toList();
        List<BayMovement> bays = movements(forecast, floor.bays(names(openings)), rules, held).stream()
            .map(Calculated::value).toList();
        if (bays.stream().allMatch(bay -> bay.fits() || bay.bay().rooms().size() == 1)) {
          Length needed = bays.stream().map(BayMovement::needed).reduce(Length.ZERO, Length::max);
          if (best == null || needed.compareTo(least) < 0) {
            best = openings;
            least = needed;
          }
        }
      }
      if (best != null) {
        return best;
      }
    }
    return floor.openings();
  }

  /** The next greater number with as many bits set; beyond all sets if there is none. */
  private static int next(int set, int all) {
    if (set == 0) {
      return 1 << all;
    }
    int lowest = set & -set;
    int carried = set + lowest;
    return carried | ((set ^ carried) >>> 2) / lowest;
  }

  private static ExpansionBreak breakAt(JoinedOpening opening, List<BayMovement> bays, RuleValue<Length> rule, List<Step> steps) {
    Length one = needed(bays, opening.one());
    Length other = needed(bays, opening.other());
    Length width = rule.value().max(BayWorking.whole(one.plus(other)));
    steps.add(new Step("break-width", "How wide is the break at " + opening.name() + ", in total, in whole millimetres if"
        + " movement asks for more than the rule?", "b = max(r, ceil((g1 + g2) / 1mm) * 1mm)",
        List.of(new Term("r", "gap that the rule asks for", rule.value(), rule.source()),
            Term.of("g1", "gap needed on the side of " + opening.one(), one),
            Term.of("g2", "gap needed on the side of " + opening.other(), other)), width, Source.DEFINITION));
    return new ExpansionBreak(opening, width);
  }

  private static Length needed(List<BayMovement> bays, String room) {
    return bays.stream().filter(bay -> bay.bay().rooms().stream().anyMatch(other -> other.name().equals(room))).findFirst()
        .orElseThrow().needed();
  }

  private List<Finding> breaksNeeded() {
    String why = asOne.stream().filter(bay -> !bay.fits() && bay.bay().rooms().size() > 1)
        .map(bay -> bay.bay() + ", swells " + bay.swelling() + " in total and needs " + bay.needed() + " "
            + bay.side())
        .collect(Collectors.joining("; "));
    return breaks.stream().map(at -> new Finding("break-needed", Severity.WARNING, at.opening().name(), "without breaks: "
        + why + "; put a break of " + at.width() + " in total at " + at.opening().name(), Source.DEFINITION)).toList();
  }

  private static Finding withinRoom(MovementForecast forecast, BayMovement bay, LayingRules rules) {
    Length widest = greatest(forecast, Optional.of(forecast.coefficient()), rules, LayingRules.MAXIMUM_RUN_ACROSS);
    Length longest = greatest(forecast, forecast.coefficientAlong(), rules, LayingRules.MAXIMUM_RUN_ALONG);
    long across = -bay.bay().across().negated().dividedBy(widest);
    long along = -bay.bay().along().negated().dividedBy(longest);
    return new Finding("break-within-room", Severity.WARNING, bay.bay().name(), bay.bay() + ", needs " + bay.needed()
        + " " + bay.side() + "; breaks at openings do not help: split it into " + across + " across the boards, each of at most "
        + widest + ", and " + along + " along them, each of at most " + longest + ", all free to move from their middles"
        + (runsKept(bay) ? "; or leave a gap of " + bay.gap() + " on each side" : ""), Source.DEFINITION);
  }

  private static boolean runsKept(BayMovement bay) {
    return bay.judgements().stream().filter(judgement -> judgement.code().endsWith("-within-run")).allMatch(Judgement::isMet);
  }

  /** How far a bay may extend that is free to move from its middle. */
  private static Length greatest(MovementForecast forecast, Optional<Coefficient> coefficient, LayingRules rules,
      RuleKey<Length> run) {
    Length longest = rules.value(run);
    BigDecimal share = coefficient.map(forecast::swellingShare).orElse(BigDecimal.ZERO);
    Length gap = rules.value(LayingRules.EXPANSION_GAP);
    if (share.signum() == 0 || gap.isZero()) {
      return longest;
    }
    BigDecimal nanometres = BigDecimal.valueOf(gap.toNanometres()).multiply(BigDecimal.valueOf(2))
        .divide(share, 0, RoundingMode.FLOOR).min(BigDecimal.valueOf(longest.toNanometres()));
    return Length.ofNanometres(nanometres.longValueExact()).max(Length.ofNanometres(1));
  }

  /**
   * Returns the bays if the floor runs on through all its openings.
   *
   * @return an unmodifiable list, one bay if all rooms are joined; not null
   */
  public List<BayMovement> asOne() {
    return asOne;
  }

  /**
   * Returns where breaks are needed.
   *
   * @return an unmodifiable list in the order of the openings, empty if none is or none would help; not null
   */
  public List<ExpansionBreak> breaks() {
    return breaks;
  }

  /**
   * Returns the bays with these breaks.
   *
   * @return an unmodifiable list, the bays {@link #asOne()} if there are no breaks; not null
   */
  public List<BayMovement> withBreaks() {
    return withBreaks;
  }
}
