package floorcalc.flatness;

import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A class of slabs by F-numbers after ACI 117-10, Table 4.8.5.1, for random traffic: the least FF and FL of the whole floor;
 * three fifths of them for each part of it (clause 4.8.5.3). Quoted by another. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class FNumberClass {
  private static final Source SOURCE = new Source("ACI 117-10", "ACI", 2010, "Table 4.8.5.1 and clause 4.8.5.3, as given in"
      + " a copy of its page", Standing.QUOTED);
  private static final List<FNumberClass> ALL = List.of(new FNumberClass("conventional", 20, 15),
      new FNumberClass("moderately flat", 25, 20), new FNumberClass("flat", 35, 25), new FNumberClass("very flat", 45, 35),
      new FNumberClass("superflat", 60, 40));
  private static final int LOCAL_FIFTHS = 3;
  private static final int FIFTHS = 5;

  private final String name;
  private final int flatness;
  private final int levelness;

  private FNumberClass(String name, int flatness, int levelness) {
    this.name = name;
    this.flatness = flatness;
    this.levelness = levelness;
  }

  /**
   * Returns all classes, the least flat first.
   *
   * @return an unmodifiable list, not null
   */
  public static List<FNumberClass> all() {
    return ALL;
  }

  /**
   * Returns the class of a name.
   *
   * @param name the name, as {@link #name()} gives it, not null
   * @return the class, not null
   * @throws IllegalArgumentException if there is no such class; the message lists the names
   */
  public static FNumberClass named(String name) {
    Objects.requireNonNull(name, "name");
    return ALL.stream().filter(one -> one.name.equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no class '" + name + "'; the classes are: "
            + ALL.stream().map(one -> "'" + one.name + "'").collect(Collectors.joining(", "))));
  }

  /**
   * Returns the name of the class.
   *
   * @return the name, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns the least FF of the whole floor.
   *
   * @return the number
   */
  public double leastFlatness() {
    return flatness;
  }

  /**
   * Returns the least FL of the whole floor.
   *
   * @return the number
   */
  public double leastLevelness() {
    return levelness;
  }

  /**
   * Returns the least FF of each part of the floor, three fifths of that of the whole.
   *
   * @return the number
   */
  public double leastLocalFlatness() {
    return (double) flatness * LOCAL_FIFTHS / FIFTHS;
  }

  /**
   * Returns the least FL of each part of the floor, three fifths of that of the whole.
   *
   * @return the number
   */
  public double leastLocalLevelness() {
    return (double) levelness * LOCAL_FIFTHS / FIFTHS;
  }

  /**
   * Judges a whole floor.
   *
   * @param ff its FF, not null
   * @param fl its FL, not null
   * @return a judgement for each number, codes {@code flatness-number} and {@code levelness-number}; not null
   */
  public List<Judgement> judge(FNumber ff, FNumber fl) {
    Objects.requireNonNull(ff, "ff");
    Objects.requireNonNull(fl, "fl");
    return judge(ff, leastFlatness(), fl, leastLevelness(), "whole floor");
  }

  /**
   * Judges a part of a floor.
   *
   * @param ff its FF, not null
   * @param fl its FL, not null
   * @param where which part, not null
   * @return a judgement for each number, codes {@code flatness-number} and {@code levelness-number}; not null
   */
  public List<Judgement> judgePart(FNumber ff, FNumber fl, String where) {
    Objects.requireNonNull(ff, "ff");
    Objects.requireNonNull(fl, "fl");
    return judge(ff, leastLocalFlatness(), fl, leastLocalLevelness(), where);
  }

  private List<Judgement> judge(FNumber ff, double leastFf, FNumber fl, double leastFl, String where) {
    List<Judgement> judgements = new ArrayList<>();
    judgements.add(judgement("flatness-number", "FF", ff, leastFf, where));
    judgements.add(judgement("levelness-number", "FL", fl, leastFl, where));
    return List.copyOf(judgements);
  }

  private Judgement judgement(String code, String symbol, FNumber found, double least, String where) {
    boolean isMet = found.value() >= least;
    return new Judgement(code, symbol + ", ACI 117-10 " + name, where, symbol + " " + found, "at least " + symbol + " "
        + new FNumber(least, 1), isMet ? Outcome.MET : Outcome.NOT_MET, SOURCE, isMet ? "" : Advice.mendByHand());
  }

  @Override
  public String toString() {
    return name;
  }
}
