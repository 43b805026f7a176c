package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;

/**
 * How the strips at all stops change while the start line goes through one board, and where the worst of them is widest.
 * <p>
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class StripTable {
  private static final int MOST_ENTRIES = 2_000;

  private final StartLine best;
  private final Length plusMinus;
  private final List<Entry> entries;

  /**
   * The strips at one start line.
   *
   * @param firstRow the height of the first row line over the lowest level, more than zero, at most the pitch; not null
   * @param strips the strip at each stop as measured, in the order of the stops; zero if it comes to nothing; not null
   * @param narrowest the narrowest of them, those of stops that run off by a pitch or more left out; not null
   * @param within the narrowest if each stop lies anywhere within the error, the starting wall not moved; not null
   * @since 0.1
   */
  public record Entry(Length firstRow, List<Length> strips, Length narrowest, Length within) {
    /** Checks that no part is null and copies the list. */
    public Entry {
      Objects.requireNonNull(strips, "strips");
      Objects.requireNonNull(firstRow, "firstRow");
      strips = List.copyOf(strips);
      Objects.requireNonNull(narrowest, "narrowest");
      Objects.requireNonNull(within, "within");
    }
  }

  private StripTable(StartLine best, Length plusMinus, List<Entry> entries) {
    this.best = best;
    this.plusMinus = plusMinus;
    this.entries = List.copyOf(entries);
  }

  /**
   * Returns the table of a floor.
   *
   * @param stops every place where the floor ends across the rows, not null
   * @param bayLow the lowest level, from which the first row is measured, not null
   * @param pitch the laid pitch, not null, more than zero
   * @param minimum the rule on the narrowest strip, not null
   * @param step from entry to entry, not null, more than zero, at least a 2000th of the pitch
   * @param plusMinus the measuring error that the strips are to be judged with, such as 3 mm or 1/8 in, not null, not negative; a
   *     stop with a larger error of its own keeps that
   * @return the table, with steps and findings of the best line as {@link StartLine#choose(List, Length, Length, RuleValue, RowWay)}
   *     with {@link RowWay#WIDEST_STRIP}, and of its {@link StartLine#withError(Length)}; not null
   * @throws IllegalArgumentException if a length is out of range
   */
  public static Calculated<StripTable> of(List<Stop> stops, Length bayLow, Length pitch, RuleValue<Length> minimum, Length step,
      Length plusMinus) {
    Widths.requirePositive(pitch, "laid pitch", "give the width that a laid board covers");
    Widths.requirePositive(step, "step", "give for example 5 mm");
    if (pitch.dividedBy(step) > MOST_ENTRIES) {
      throw new IllegalArgumentException("a step of " + step + " makes more than " + MOST_ENTRIES + " start lines of a pitch of "
          + pitch + "; take a longer one");
    }
    Calculated<StartLine> best = StartLine.choose(stops, bayLow, pitch, minimum, RowWay.WIDEST_STRIP);
    Calculated<MeasuringError> error = best.value().withError(plusMinus);
    TreeSet<Length> lines = new TreeSet<>(List.of(pitch, best.value().firstRowWidth()));
    for (Length line = step; line.compareTo(pitch) < 0; line = line.plus(step)) {
      lines.add(line);
    }
    List<Entry> entries = new ArrayList<>();
    for (Length line : lines) {
      StartLine start = new StartLine(stops, bayLow, pitch, best.value().minimum(), Source.GIVEN, line);
      entries.add(new Entry(line, start.strips().stream().map(Strip::width).toList(), narrowest(start),
          start.withError(plusMinus).value().worst()));
    }
    List<Step> steps = new ArrayList<>(best.steps());
    steps.addAll(error.steps());
    List<Finding> findings = new ArrayList<>(best.findings());
    error.findings().stream().filter(finding -> !findings.contains(finding)).forEach(findings::add);
    return Calculated.of(new StripTable(best.value(), plusMinus, entries), steps, findings);
  }

  private static Length narrowest(StartLine line) {
    return line.strips().stream().filter(strip -> strip.stop().taper().compareTo(line.pitch()) < 0).map(Strip::width)
        .reduce(line.pitch(), Length::min);
  }

  /**
   * Returns the start line at which the worst strip is widest.
   *
   * @return the line with its strips, not null
   */
  public StartLine best() {
    return best;
  }

  /**
   * Returns the measuring error that the strips are judged with.
   *
   * @return the error, not negative, not null
   */
  public Length plusMinus() {
    return plusMinus;
  }

  /**
   * Returns the strips at each start line.
   *
   * @return an unmodifiable list, first rows growing: whole steps, the best line and a full board; not null
   */
  public List<Entry> entries() {
    return entries;
  }
}
