package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;

/**
 * One start line for every stop of a bay of any shape, chosen exactly.
 * <p>
 * Row lines lie at {@code bayLow + firstRowWidth + k * pitch} for every whole {@code k}. The strip at a stop with the
 * floor above it reaches from the stop up to the next row line, the strip at a stop with the floor below it from the
 * last row line up to the stop; a strip that just fits is a full board, not nothing. Where a stop runs at a slant its
 * strip is taken where it is narrowest, and if a row line meets it on its way, a row comes to nothing there: the strip
 * is zero.
 * <p>
 * A stop measured to within an error is judged by the strip that it keeps wherever it lies, as if it were a slant over the
 * whole of its band. Where the band is as wide as a board no line keeps a strip for certain: the stop is then judged as
 * measured, and a finding says so.
 * <p>
 * A bay that is no wider than a board is one row: its line is a full board above the lowest level, whatever the way.
 * <p>
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class StartLine {
  private final Length bayLow;
  private final Length pitch;
  private final Length minimum;
  private final Source minimumSource;
  private final Length firstRowWidth;
  private final List<Strip> strips;
  private final Length narrowestStrip;

  StartLine(List<Stop> stops, Length bayLow, Length pitch, Length minimum, Source minimumSource,
      Length firstRowWidth) {
    this.bayLow = bayLow;
    this.pitch = pitch;
    this.minimum = minimum;
    this.minimumSource = minimumSource;
    this.firstRowWidth = firstRowWidth;
    long line = bayLow.plus(firstRowWidth).toNanometres();
    List<Strip> found = new ArrayList<>(stops.size());
    Length narrowest = pitch;
    for (Stop stop : stops) {
      Length width = Length.ofNanometres(stop.asMeasured().strip(line, pitch.toNanometres()));
      Length certain = Length.ofNanometres(stop.strip(line, pitch.toNanometres()));
      found.add(new Strip(stop, width, certain));
      if (hasStrip(stop, pitch)) {
        narrowest = narrowest.min(isTold(stop, pitch) ? certain : width);
      }
    }
    this.strips = List.copyOf(found);
    this.narrowestStrip = narrowest;
  }

  /**
   * Chooses the start line, with a minimum of the caller's own.
   *
   * @param stops every place where the floor ends across the rows, not null
   * @param bayLow the lowest level of the bay, from which the first row is measured, not null
   * @param pitch the laid pitch, not null, more than zero
   * @param minimum the narrowest strip wanted, not null, not negative
   * @param way how the line is chosen, not null
   * @return the start line with its steps, and findings {@code boards-narrower-than-minimum},
   *     {@code strip-comes-to-nothing}, {@code strip-narrower-than-minimum}, and for stops with an error
   *     {@code fragile-fit}, {@code narrow-within-error} and {@code error-too-large}; not null
   * @throws IllegalArgumentException if a length is out of range
   */
  public static Calculated<StartLine> choose(List<Stop> stops, Length bayLow, Length pitch, Length minimum,
      RowWay way) {
    return choose(stops, bayLow, pitch, minimum, Source.GIVEN, way);
  }

  /**
   * Chooses the start line, with the minimum of a rule.
   *
   * @param stops every place where the floor ends across the rows, not null
   * @param bayLow the lowest level of the bay, from which the first row is measured, not null
   * @param pitch the laid pitch, not null, more than zero
   * @param minimum the rule on the narrowest strip, see {@link LayingRules#MINIMUM_ROW_WIDTH}; not null
   * @param way how the line is chosen, not null
   * @return the start line, as {@link #choose(List, Length, Length, Length, RowWay)}; not null
   * @throws IllegalArgumentException if a length is out of range
   */
  public static Calculated<StartLine> choose(List<Stop> stops, Length bayLow, Length pitch, RuleValue<Length> minimum,
      RowWay way) {
    return choose(stops, bayLow, pitch, minimum.value(), minimum.source(), way);
  }

  /**
   * Returns the start line at a first row of a given width: what its strips are.
   *
   * @param stops every place where the floor ends across the rows, not null
   * @param bayLow the lowest level of the bay, from which the first row is measured, not null
   * @param pitch the laid pitch, not null, more than zero
   * @param minimum the rule on the narrowest strip, see {@link LayingRules#MINIMUM_ROW_WIDTH}; not null
   * @param firstRowWidth the height of the first row line over the lowest level, more than zero and at most the pitch;
   *     not null
   * @return the start line, with steps and findings as {@link #choose(List, Length, Length, Length, RowWay)}; not null
   * @throws IllegalArgumentException if a length is out of range
   */
  public static Calculated<StartLine> at(List<Stop> stops, Length bayLow, Length pitch, RuleValue<Length> minimum,
      Length firstRowWidth) {
    Objects.requireNonNull(firstRowWidth, "firstRowWidth");
    Widths.requirePositive(pitch, "laid pitch", "give the width that a laid board covers");
    Widths.requirePositive(firstRowWidth, "width of the first row", "give the height of the first row line");
    if (firstRowWidth.compareTo(pitch) > 0) {
      throw new IllegalArgumentException("the first row must not be wider than the laid pitch, " + pitch + ", but was "
          + firstRowWidth);
    }
    List<Step> steps = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    Length least = Widths.inForce(minimum.value(), pitch, minimum.source(), steps, findings);
    StartLine line = new StartLine(stops, bayLow, pitch, least, minimum.source(), firstRowWidth);
    steps.addAll(StartLineWorking.steps(line, "Where it is asked for."));
    line.addFindings(findings);
    return Calculated.of(line, steps, findings);
  }

  /**
   * Returns first rows that differ in what they ask of the boards, for a choice by another measure than the strips.
   * <p>
   * The rows change only where a strip at some stop just fits: up to there all strips grow or shrink one for one, and no
   * two of them come to fit beside each other in a board. So each stretch between two such places in which every strip is
   * at least the minimum is named by three lines: where its narrowest strip is widest, and its two ends, where a strip is a
   * full board or just the minimum.
   *
   * @param stops every place where the floor ends across the rows, not null
   * @param bayLow the lowest level of the bay, from which the first row is measured, not null
   * @param pitch the laid pitch, not null, more than zero
   * @param minimum the narrowest strip wanted, not null, not negative
   * @return first rows, each once: those with the widest narrowest strip of their stretch first, the widest of them at the
   *     front, then the ends of stretches; where no line gives every strip the minimum, those that leave the fewest
   *     stops without any strip; not empty
   * @throws IllegalArgumentException if a length is out of range
   */
  public static List<Length> worthTrying(List<Stop> stops, Length bayLow, Length pitch, Length minimum) {
    Widths.requirePositive(pitch, "laid pitch", "give the width that a laid board covers");
    Widths.requireNotNegative(minimum, "minimum row width", "give 0 mm for no minimum");
    if (isOneRow(stops, bayLow, pitch)) {
      return List.of(pitch);
    }
    List<Stop> inChoice = inChoice(stops, pitch);
    long least = Math.max(1, minimum.min(pitch).toNanometres());
    List<Long> wideEnough = new StartLineSearch(inChoice, bayLow.toNanometres(), pitch.toNanometres(), least)
        .worthTrying(inChoice.size());
    List<Long> lines = wideEnough.isEmpty()
        ? new StartLineSearch(inChoice, bayLow.toNanometres(), pitch.toNanometres(), 1).worthTrying(0) : wideEnough;
    return lines.stream().map(Length::ofNanometres).toList();
  }

  private static Calculated<StartLine> choose(List<Stop> stops, Length bayLow, Length pitch, Length minimum,
      Source source, RowWay way) {
    Objects.requireNonNull(bayLow, "bayLow");
    Widths.requirePositive(pitch, "laid pitch", "give the width that a laid board covers");
    Widths.requireNotNegative(minimum, "minimum row width", "give 0 mm for no minimum");
    Objects.requireNonNull(way, "way");
    List<Step> steps = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    Length least = Widths.inForce(minimum, pitch, source, steps, findings);
    List<Stop> inChoice = inChoice(stops, pitch);
    long first = isOneRow(stops, bayLow, pitch) ? pitch.toNanometres()
        : search(inChoice, bayLow.toNanometres(), pitch.toNanometres(), least.toNanometres(), way);
    StartLine line = new StartLine(stops, bayLow, pitch, least, source, Length.ofNanometres(first));
    steps.addAll(StartLineWorking.steps(line, StartLineWorking.reason(line, way)));
    line.addFindings(findings);
    return Calculated.of(line, steps, findings);
  }

  private static long search(List<Stop> stops, long bayLow, long pitch, long minimum, RowWay way) {
    boolean asNeeded = way == RowWay.AS_NEEDED || way == RowWay.FEWEST_BOARDS;
    if (asNeeded && stops.stream()
        .allMatch(stop -> stop.strip(Math.addExact(bayLow, pitch), pitch) >= minimum)) {
      return pitch;
    }
    if (way == RowWay.LEAST_CUT) {
      OptionalLong wideEnough = minimum == 0 ? OptionalLong.of(pitch)
          : new StartLineSearch(stops, bayLow, pitch, minimum).highestForAll();
      if (wideEnough.isPresent()) {
        return wideEnough.getAsLong();
      }
    }
    return new StartLineSearch(stops, bayLow, pitch, 1).widest();
  }

  /** Tells whether the stop has a strip for some start line. */
  private static boolean hasStrip(Stop stop, Length pitch) {
    return stop.taper().compareTo(pitch) < 0;
  }

  /** Tells whether the stop has a strip for some start line wherever within its error it lies. */
  private static boolean isTold(Stop stop, Length pitch) {
    return stop.reach().compareTo(pitch) < 0;
  }

  private static List<Stop> inChoice(List<Stop> stops, Length pitch) {
    return stops.stream().filter(stop -> hasStrip(stop, pitch))
        .map(stop -> isTold(stop, pitch) ? stop : stop.asMeasured()).toList();
  }

  private static boolean isOneRow(List<Stop> stops, Length bayLow, Length pitch) {
    return stops.stream().anyMatch(stop -> stop.side() == Stop.Side.FLOOR_BELOW)
        && stops.stream().allMatch(stop -> stop.high().minus(bayLow).compareTo(pitch) <= 0);
  }

  private void addFindings(List<Finding> findings) {
    for (Strip strip : strips) {
      Stop stop = strip.stop();
      if (!hasStrip(stop, pitch)) {
        findings.add(new Finding("strip-comes-to-nothing", Severity.NOTE, stop.name(), "the stop runs off by "
            + stop.taper() + " across the rows, a laid pitch of " + pitch + " or more: rows come to a point along it"
            + " wherever the start line is; fix these pieces well or turn the boards", Source.DEFINITION));
      } else if (strip.width().isZero() && minimum.isPositive()) {
        findings.add(new Finding("strip-comes-to-nothing", Severity.WARNING, stop.name(), "the stop runs off by "
            + stop.taper() + " across the rows and a row line meets it: a row comes to a point there, at least "
            + minimum + " is asked for; " + advice(), minimumSource));
      } else if (strip.width().compareTo(minimum) < 0) {
        findings.add(new Finding("strip-narrower-than-minimum", Severity.WARNING, stop.name(),
            "the narrowest strip there is " + strip.width() + ", at least " + minimum + " is asked for; " + advice(),
            minimumSource));
      } else if (!isTold(stop, pitch) && minimum.isPositive()) {
        findings.add(new Finding("error-too-large", Severity.NOTE, stop.name(), "the stop is measured to plus or minus "
            + stop.plusMinus() + ": with a laid pitch of " + pitch + " no start line keeps a strip there for certain, it is"
            + " taken as measured; measure it again", minimumSource));
      } else if (strip.certain().compareTo(minimum) < 0) {
        MeasuringError.addFinding(MeasuringError.range(strip, this, stop.plusMinus()), this, stop.plusMinus(), findings);
      }
    }
  }

  private String advice() {
    return "try another start line or another board width, or turn the boards";
  }

  /**
   * Says what one measuring error does to the strips, that of a stop with a larger error of its own if it has one: each stop may in truth lie up to so much further or nearer than it
   * was measured from the starting wall. The starting wall itself, a stop at {@code bayLow} with the floor above it,
   * is where the rows are set out from, so its strip stays.
   *
   * @param plusMinus the most that a measurement is off, not null, not negative
   * @return the strips with the error, and findings {@code fragile-fit} and {@code narrow-within-error}; not null
   * @throws IllegalArgumentException if the error is negative
   */
  public Calculated<MeasuringError> withError(Length plusMinus) {
    Objects.requireNonNull(plusMinus, "plusMinus");
    return MeasuringError.of(this, plusMinus);
  }

  /**
   * Returns the lowest level of the bay.
   *
   * @return the level from which the first row is measured, not null
   */
  public Length bayLow() {
    return bayLow;
  }

  /**
   * Returns the distance from row line to row line.
   *
   * @return the laid pitch, not null
   */
  public Length pitch() {
    return pitch;
  }

  /**
   * Returns the narrowest strip asked for, as it could be in force: never more than a full board.
   *
   * @return the minimum in force, not null
   */
  public Length minimum() {
    return minimum;
  }

  /** Returns where the minimum comes from. */
  Source minimumSource() {
    return minimumSource;
  }

  /**
   * Returns the height of the first row line over the lowest level of the bay.
   *
   * @return more than zero and at most the pitch, not null
   */
  public Length firstRowWidth() {
    return firstRowWidth;
  }

  /**
   * Returns the narrowest strip at the stops that were in the choice, wherever within its error each of them lies.
   *
   * @return from zero to the pitch; the pitch if no stop was in the choice; not null
   */
  public Length narrowestStrip() {
    return narrowestStrip;
  }

  /**
   * Returns the strip at every stop, in the order the stops were given; zero at a stop that runs off by a pitch or more.
   *
   * @return an unmodifiable list, not null
   */
  public List<Strip> strips() {
    return strips;
  }
}
