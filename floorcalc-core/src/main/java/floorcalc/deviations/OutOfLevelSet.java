package floorcalc.deviations;

import floorcalc.levels.Levels;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A named set of limits on how far a floor may be out of level, or away from the level line that it is to be at, as one source states them.
 * Sources that disagree are sets of their own and are never averaged. Immutable and thread-safe.
 * <p>
 * A floor can be flat and lean, and level and bumpy. Boards ask for flat; level matters to doors, cabinets and whoever walks there. The levels
 * are judged along the lines of readings across the floor, parallel to x and to y: readings at one y are a line, and readings at one x.
 *
 * @since 0.1
 */
public final class OutOfLevelSet {
  private static final Length SIX_METRES = Length.ofMillimetres(6000);
  private static final String REPORT = "as given in a report of the US Access Board, Dimensional Tolerances in Construction"
      + " and for Surface Accessibility";

  private static final List<OutOfLevelSet> ALL = List.of(british(), nhbc(), labc(), dtu(), snip(), aciSlab(), aciFormed());

  private final String name;
  private final String about;
  private final List<OutOfLevelLimit> limits;

  private OutOfLevelSet(String name, String about, List<OutOfLevelLimit> limits) {
    this.name = Objects.requireNonNull(name, "name");
    this.about = Objects.requireNonNull(about, "about");
    this.limits = List.copyOf(limits);
    if (limits.isEmpty()) {
      throw new IllegalArgumentException("set '" + name + "' must have at least one limit");
    }
  }

  private static OutOfLevelSet british() {
    return new OutOfLevelSet("BS 8204 datum", "screeds and bases of large areas for ordinary purposes; less where doors, walls and special plant"
        + " stand", List.of(OutOfLevelLimit.inAll(LevelMeasure.FROM_DATUM, mm(15),
            new Source("BS 8204", "BSI", 0, "as given in guidance on screeds and departure from datum", Standing.QUOTED))));
  }

  private static OutOfLevelSet nhbc() {
    Source source = new Source("NHBC Standards", "NHBC", 2020, "clause 9.1.5", Standing.READ);
    return new OutOfLevelSet("NHBC 9.1.5", "finished floors of new homes, measured at the furthest points across the full width", List.of(
        OutOfLevelLimit.perMetre(LevelMeasure.ENDS_OF_LINE, mm(3), source).acrossUpTo(SIX_METRES),
        OutOfLevelLimit.inAll(LevelMeasure.ENDS_OF_LINE, mm(20), source).acrossOver(SIX_METRES)));
  }

  private static OutOfLevelSet labc() {
    Source source = new Source("Warranty technical manual", "LABC", 0, "section 1.4, as given by its publisher", Standing.READ);
    return new OutOfLevelSet("LABC 1.4", "floors of new homes", List.of(
        OutOfLevelLimit.perMetre(LevelMeasure.ALONG_LINE, mm(4), source).acrossUpTo(SIX_METRES),
        OutOfLevelLimit.inAll(LevelMeasure.ALONG_LINE, mm(25), source).acrossOver(SIX_METRES)));
  }

  private static OutOfLevelSet dtu() {
    return new OutOfLevelSet("NF DTU 51.1", "finished nailed parquet; the level line where it is laid before the coverings beside it", List.of(
        OutOfLevelLimit.underRule(mm(2000), mm(5), new Source("NF DTU 51.1 P1-1", "AFNOR", 2010, "clause 7.3", Standing.READ)),
        OutOfLevelLimit.inAll(LevelMeasure.FROM_DATUM, mm(2), new Source("NF DTU 51.1 P1-1", "AFNOR", 2010, "clause 7.2", Standing.READ))));
  }

  private static OutOfLevelSet snip() {
    return new OutOfLevelSet("SNiP 3.04.01", "floors, from horizontal; at most 50 mm was seen for polymer coverings", List.of(
        OutOfLevelLimit.perMetre(LevelMeasure.WHOLE_LINE, mm(2), new Source("SNiP 3.04.01-87", "", 1987, "as restated on a page",
            Standing.QUOTED)).andAtMost(mm(50))));
  }

  private static OutOfLevelSet aciSlab() {
    return new OutOfLevelSet("ACI 117 slab on ground", "top of slabs on ground, from the elevation that they are to have", List.of(
        OutOfLevelLimit.inAll(LevelMeasure.FROM_DATUM, Length.ofInches(0, 3, 4), new Source("ACI 117", "ACI", 0, "elevation of slabs on ground, "
            + REPORT, Standing.QUOTED))));
  }

  /** 0.3 % over 10 ft, which is 9.144 mm and which the source rounds to 3/8 in. */
  private static OutOfLevelSet aciFormed() {
    Length tenFeet = Length.ofInches(120, 0, 1);
    return new OutOfLevelSet("ACI 117 formed surfaces", "formed surfaces of concrete that are to be level", List.of(
        OutOfLevelLimit.underRule(tenFeet, Length.ofNanometres(tenFeet.toNanometres() / 1000 * 3), new Source("ACI 117", "ACI", 0,
            "slope of formed surfaces, " + REPORT, Standing.QUOTED))));
  }

  private static Length mm(int millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  /**
   * Returns a set of the caller's own.
   *
   * @param name its name, not null
   * @param about which floors it is for, not null
   * @param limits the limits, not null, at least one
   * @return the set, not null
   * @throws IllegalArgumentException if there is no limit
   */
  public static OutOfLevelSet of(String name, String about, List<OutOfLevelLimit> limits) {
    Objects.requireNonNull(limits, "limits");
    return new OutOfLevelSet(name, about, limits);
  }

  /**
   * Returns all published sets.
   *
   * @return an unmodifiable list, not null
   */
  public static List<OutOfLevelSet> all() {
    return ALL;
  }

  /**
   * Returns the set of a name.
   *
   * @param name the name, as {@link #name()} gives it, not null
   * @return the set, not null
   * @throws IllegalArgumentException if there is no such set; the message lists the names
   */
  public static OutOfLevelSet named(String name) {
    Objects.requireNonNull(name, "name");
    return ALL.stream().filter(set -> set.name.equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no set of limits on level '" + name + "'; the sets are: "
            + ALL.stream().map(set -> "'" + set.name + "'").collect(Collectors.joining(", "))));
  }

  /**
   * Judges the levels of a floor of which nobody says where the level line is: limits from it are not measured.
   *
   * @param levels the readings, not null
   * @return as {@link #judge(Levels, Length)}, not null
   */
  public Calculated<List<Judgement>> judge(Levels levels) {
    return new LevelJudge(this, levels, Optional.empty()).judge();
  }

  /**
   * Judges the levels of a floor, limit by limit. The line, or the place, that breaks its limit most or comes nearest to that decides. Under a rule
   * the height between two readings is on the straight line between them (own rule).
   *
   * @param levels the readings, not null
   * @param datum the height that the floor is to be at, above the same datum as the readings; not null
   * @return a judgement {@code out-of-level} for each limit that is for floors like this, not measured where no line of readings
   *     is long enough; with the steps {@code level-allowed} and {@code out-of-level}; not null
   */
  public Calculated<List<Judgement>> judge(Levels levels, Length datum) {
    Objects.requireNonNull(datum, "datum");
    return new LevelJudge(this, levels, Optional.of(datum)).judge();
  }

  /**
   * Returns the name of the set.
   *
   * @return the name, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns which floors the set is for.
   *
   * @return a few words, not null
   */
  public String about() {
    return about;
  }

  /**
   * Returns the limits in the order of the source.
   *
   * @return an unmodifiable list, not null, at least one
   */
  public List<OutOfLevelLimit> limits() {
    return limits;
  }

  /**
   * Returns the name of the set.
   *
   * @return the name, not null
   */
  @Override
  public String toString() {
    return name;
  }
}
