package floorcalc.rules;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * A named set of rules as one source states them, whose values may depend on the boards and on the room.
 * <p>
 * Where a set says nothing on a rule, it falls back to {@link #COMMON_PRACTICE}, and the value carries that source.
 * What a source says is never changed: a newer edition gets a name of its own. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class RuleSet {
  /**
   * What many layers do; no published source was found for these figures: gap 10 mm; first and last row at least 70 mm;
   * start and end piece and joint offset at least 500 mm for boards of 15 mm and thicker, 300 mm for thinner; kerf
   * 3 mm; spare boards 2 %; bays up to 12 m along and 8 m across the boards; a break at each doorway and where a recess is deeper
   * than 500 mm or a void wider than 1 m, an expansion gap on either side of its middle.
   * <p>
   * Figures are in use for boards of 15 mm and for boards of 10 mm. A board between the two is treated as the thinner
   * one, down to the last nanometre below 15 mm: a value in between would be nobody's practice.
   */
  public static final RuleSet COMMON_PRACTICE = new RuleSet("common practice",
      "what many layers do, no published source", Depends.ON_BOARDS, job -> { });

  /**
   * NF DTU 51.11 for floating multilayer parquet: gap 0.15 % of the largest length or width to be covered, at least
   * 8 mm; for boards under 20 mm thick, bays up to 8 m across the boards. Where the room is not known, the gap is that
   * of the largest bay the rules allow, 18 mm for 12 m, so that it is never too small.
   */
  public static final RuleSet NF_DTU_51_11 = new RuleSet("NF DTU 51.11",
      "floating multilayer parquet: gap by the size of the room, bay width", Depends.ON_BOARDS_AND_ROOM, Published::dtu);

  /**
   * NWFA guidelines, 2008 revision: joint offset 6 in for strip narrower than 3 in, 8 in for plank from 3 in to 5 in,
   * 10 in for wider plank. For 3 in to 5 in the source gives 8 to 10 in; the least it asks for is taken.
   */
  public static final RuleSet NWFA_GUIDELINES = new RuleSet("NWFA guidelines",
      "strip and plank: joint offset by width", Depends.ON_BOARDS, Published::nwfa);

  /** NWFA magazine, December 2017: joint offset of twice the cover width, preferred for plank. */
  public static final RuleSet NWFA_TWO_WIDTHS = new RuleSet("NWFA two widths",
      "plank: joint offset twice the width, a preference", Depends.ON_BOARDS, Published::twoWidths);

  /** NWFA technical advisor: joint offset of three times the cover width, preferred for wide plank. */
  public static final RuleSet NWFA_THREE_WIDTHS = new RuleSet("NWFA three widths",
      "wide plank: joint offset three times the width, a preference", Depends.ON_BOARDS, Published::threeWidths);

  /** NWFA guidelines, chapter on parquet, as quoted by another: gap 1/2 in round the floor and all that stands in it. */
  public static final RuleSet NWFA_PARQUET = new RuleSet("NWFA guidelines, parquet",
      "parquet: a fixed gap", Depends.ON_BOARDS, Published::nwfaParquet);

  /** Australian practice for strip timber floors, as quoted by another: gap 10 mm, bays up to 6 m across the boards. */
  public static final RuleSet AS_1684 = new RuleSet("AS 1684",
      "strip timber floors: a fixed gap, bay width", Depends.ON_BOARDS, Published::australian);

  private static final List<RuleSet> ALL = List.of(COMMON_PRACTICE, NF_DTU_51_11, NWFA_GUIDELINES, NWFA_TWO_WIDTHS,
      NWFA_THREE_WIDTHS, NWFA_PARQUET, AS_1684);

  private enum Depends { ON_BOARDS, ON_BOARDS_AND_ROOM }

  private final String name;
  private final String about;
  private final Depends depends;
  private final Consumer<Situation> own;

  private RuleSet(String name, String about, Depends depends, Consumer<Situation> own) {
    this.name = name;
    this.about = about;
    this.depends = depends;
    this.own = own;
  }

  /**
   * Returns all sets, common practice first.
   *
   * @return an unmodifiable list, not null
   */
  public static List<RuleSet> all() {
    return ALL;
  }

  /**
   * Returns the set of a name.
   *
   * @param name the name, as {@link #name()} gives it, not null
   * @return the set, not null
   * @throws IllegalArgumentException if there is no such set; the message lists the names
   */
  public static RuleSet named(String name) {
    Objects.requireNonNull(name, "name");
    return ALL.stream().filter(set -> set.name.equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no rule set '" + name + "'; the sets are: "
            + ALL.stream().map(set -> "'" + set.name + "'").collect(Collectors.joining(", "))));
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
   * Returns what the set is for and what it has figures of its own on.
   *
   * @return a few words, not null
   */
  public String about() {
    return about;
  }

  /**
   * Tells whether a rule of the set follows from the size of the room.
   *
   * @return true if {@link #forBoardAndRoom} may give other values than {@link #forBoard}
   */
  public boolean dependsOnRoom() {
    return depends == Depends.ON_BOARDS_AND_ROOM;
  }

  /**
   * Returns the rules for boards of a size in a room of any size. Where a rule follows from the size of the room, that
   * of the largest bay that the rules allow is taken.
   *
   * @param thickness the thickness of the boards, not null, more than zero
   * @param coverWidth the cover width of the boards, not null, more than zero
   * @return the rules, not null
   * @throws IllegalArgumentException if a length is not more than zero
   */
  public LayingRules forBoard(Length thickness, Length coverWidth) {
    Objects.requireNonNull(coverWidth, "coverWidth");
    return resolve(thickness, coverWidth).value();
  }

  /**
   * Returns the rules for boards of a size in a room of a size.
   *
   * @param thickness the thickness of the boards, not null, more than zero
   * @param coverWidth the cover width of the boards, not null, more than zero
   * @param largestDimension the largest length or width to be covered in one bay, not null, more than zero
   * @return the rules, not null
   * @throws IllegalArgumentException if a length is not more than zero
   */
  public LayingRules forBoardAndRoom(Length thickness, Length coverWidth, Length largestDimension) {
    Objects.requireNonNull(coverWidth, "coverWidth");
    return resolve(thickness, coverWidth, largestDimension).value();
  }

  /**
   * Returns the rules for boards of a size with a step for each rule, in the order of {@link LayingRules#keys()}.
   *
   * @param thickness the thickness of the boards, not null, more than zero
   * @param coverWidth the cover width of the boards, not null, more than zero
   * @return the rules as {@link #forBoard} gives them, not null
   * @throws IllegalArgumentException if a length is not more than zero
   */
  public Calculated<LayingRules> resolve(Length thickness, Length coverWidth) {
    Objects.requireNonNull(coverWidth, "coverWidth");
    return resolve(new Situation(thickness, coverWidth, null));
  }

  /**
   * Returns the rules for boards of a size in a room of a size, with a step for each rule, in the order of
   * {@link LayingRules#keys()}.
   *
   * @param thickness the thickness of the boards, not null, more than zero
   * @param coverWidth the cover width of the boards, not null, more than zero
   * @param largestDimension the largest length or width to be covered in one bay, not null, more than zero
   * @return the rules as {@link #forBoardAndRoom} gives them, not null
   * @throws IllegalArgumentException if a length is not more than zero
   */
  public Calculated<LayingRules> resolve(Length thickness, Length coverWidth, Length largestDimension) {
    Objects.requireNonNull(coverWidth, "coverWidth");
    return resolve(new Situation(thickness, coverWidth, Objects.requireNonNull(largestDimension, "largestDimension")));
  }

  private Calculated<LayingRules> resolve(Situation job) {
    Published.commonPractice(job);
    own.accept(job);
    return Calculated.of(job.rules(name), job.steps(), job.findings());
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
