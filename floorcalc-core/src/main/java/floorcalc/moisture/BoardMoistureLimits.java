package floorcalc.moisture;

import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A named range for the moisture content of boards as delivered or at laying. Both ends are allowed. Immutable and
 * thread-safe.
 * <p>
 * A range says whether the boards are as they should be when they come; whether they suit this room is another question:
 * see {@link Acclimatisation} and {@link MoistureDifference}.
 *
 * @since 0.1
 */
public final class BoardMoistureLimits implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final String about;
  private final Percent low;
  private final Percent high;
  private final Source source;

  private BoardMoistureLimits(String name, String about, Percent low, Percent high, Source source) {
    this.name = name;
    this.about = about;
    this.low = low;
    this.high = high;
    this.source = source;
  }

  static BoardMoistureLimits of(String name, String about, String low, String high, Source source) {
    return new BoardMoistureLimits(name, about, Percent.of(low), Percent.of(high), source);
  }

  /**
   * Returns a range of the caller's own, such as that on the pack.
   *
   * @param name a name for it, not null
   * @param low the lowest moisture content, itself allowed, not null
   * @param high the highest, itself allowed, not less than the lowest, not null
   * @param source whose range it is, not null
   * @return the range, not null
   * @throws IllegalArgumentException if the ends are the wrong way round or beyond 0 % to 30 %
   */
  public static BoardMoistureLimits of(String name, Percent low, Percent high, Source source) {
    Objects.requireNonNull(high, "high");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(source, "source");
    if (low.compareTo(high) > 0) {
      throw new IllegalArgumentException("the lowest moisture content, " + low + ", is above the highest, " + high
          + "; give the lower one first");
    }
    return new BoardMoistureLimits(name, "", boardReading(low), boardReading(high), source);
  }

  /** A moisture content that boards for a floor may be measured with. */
  static Percent boardReading(Percent reading) {
    Objects.requireNonNull(reading, "reading");
    if (reading.compareTo(Percent.ZERO) < 0 || reading.compareTo(Percent.of("30")) > 0) {
      throw new IllegalArgumentException("the moisture content of boards must be from 0 % to 30 %, but was " + reading
          + "; check the meter's setting");
    }
    return reading;
  }

  /**
   * Returns all published ranges.
   *
   * @return an unmodifiable list, not null
   */
  public static List<BoardMoistureLimits> all() {
    return PublishedRanges.ALL;
  }

  /**
   * Returns the range of a name.
   *
   * @param name the name, as {@link #name()} gives it, not null
   * @return the range, not null
   * @throws IllegalArgumentException if there is no such range; the message lists the names
   */
  public static BoardMoistureLimits named(String name) {
    Objects.requireNonNull(name, "name");
    return PublishedRanges.ALL.stream().filter(range -> range.name.equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no range of board moisture '" + name
            + "'; the ranges are: " + PublishedRanges.ALL.stream().map(range -> "'" + range.name + "'")
                .collect(Collectors.joining(", "))));
  }

  /**
   * Judges readings of boards: each of them has to be in the range.
   *
   * @param readings moisture contents by a meter set to the species, each from 0 % to 30 %, perhaps none, not null
   * @return the judgement {@code board-moisture}, with the step {@code mean-of-boards} if there are readings; not null
   * @throws IllegalArgumentException if a reading is out of bounds
   */
  public Calculated<Judgement> judge(List<Percent> readings) {
    List<Step> steps = new ArrayList<>();
    if (readings.isEmpty()) {
      return Calculated.of(judgement("", Outcome.NOT_MEASURED, "measure boards of several packs with a meter set to the"
          + " species"), steps);
    }
    Spread spread = Spread.ofBoards(readings);
    steps.add(spread.step());
    boolean damp = spread.highest().compareTo(high) > 0;
    boolean dry = spread.lowest().compareTo(low) < 0;
    return Calculated.of(judgement(spread.toString(), damp || dry ? Outcome.NOT_MET : Outcome.MET,
        damp ? "do not lay; let the boards dry in the room, or ask their maker"
            : dry ? "do not lay; let the boards take up moisture in the room, or ask their maker" : ""), steps);
  }

  private Judgement judgement(String found, Outcome outcome, String advice) {
    return new Judgement("board-moisture", "moisture content of the boards", "", found, low + " to " + high, outcome,
        source, advice);
  }

  /**
   * Returns the name of the range.
   *
   * @return the name, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns what boards the range is for.
   *
   * @return a few words, perhaps empty, not null
   */
  public String about() {
    return about;
  }

  /**
   * Returns the lowest moisture content in the range.
   *
   * @return the lower end, not null
   */
  public Percent low() {
    return low;
  }

  /**
   * Returns the highest moisture content in the range.
   *
   * @return the upper end, not null
   */
  public Percent high() {
    return high;
  }

  /**
   * Returns whose range it is.
   *
   * @return the source, not null
   */
  public Source source() {
    return source;
  }

  /**
   * Returns the range as one line.
   *
   * @return name and both ends, not null
   */
  @Override
  public String toString() {
    return name + ": " + low + " to " + high;
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    BoardMoistureLimits read = of(name, low, high, source);
    return new BoardMoistureLimits(name, Objects.requireNonNull(about, "about"), read.low, read.high, source);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof BoardMoistureLimits other && parts().equals(other.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  private List<Object> parts() {
    return Arrays.asList(name, about, low, high, source);
  }
}
