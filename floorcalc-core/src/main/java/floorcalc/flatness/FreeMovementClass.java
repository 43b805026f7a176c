package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A class of industrial slabs that trucks run on freely, after Concrete Society TR34, 4th edition, Table 3.1: limits of two properties. Property
 * F is flatness over readings 300 mm apart, the size of {@code h(i) - 2 h(i-1) + h(i-2)}; property E is levelness, the size of the difference in height
 * between neighbouring points 3 m apart. The limits are quoted by another. That 95 % of the values have to keep them, and the formula of property F, are
 * from memory. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class FreeMovementClass {
  private static final Source SOURCE = new Source("TR34, 4th edition", "Concrete Society", 0, "Table 3.1, as given by a survey"
      + " firm; its share of 95 % from memory", Standing.QUOTED);
  private static final Length SPACING = Length.ofMillimetres(300);
  private static final int PERCENT = 95;
  private static final List<FreeMovementClass> ALL = List.of(new FreeMovementClass("FM1", "4.5", "1.8"),
      new FreeMovementClass("FM2", "6.5", "2.0"), new FreeMovementClass("FM3", "8.0", "2.2"),
      new FreeMovementClass("FM4", "10.0", "2.4"));

  private final String name;
  private final Length levelness;
  private final Length flatness;

  private FreeMovementClass(String name, String levelness, String flatness) {
    this.name = name;
    this.levelness = Length.ofMillimetres(levelness);
    this.flatness = Length.ofMillimetres(flatness);
  }

  /**
   * Returns all classes, the flattest first.
   *
   * @return an unmodifiable list, not null
   */
  public static List<FreeMovementClass> all() {
    return ALL;
  }

  /**
   * Returns the class of a name.
   *
   * @param name the name, such as {@code "FM2"}, not null
   * @return the class, not null
   * @throws IllegalArgumentException if there is no such class; the message lists the names
   */
  public static FreeMovementClass named(String name) {
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
   * Returns the limit of property E.
   *
   * @return the greatest difference in height over 3 m, not null
   */
  public Length levelness() {
    return levelness;
  }

  /**
   * Returns the limit of property F.
   *
   * @return the greatest bend over two spacings of 300 mm, not null
   */
  public Length flatness() {
    return flatness;
  }

  /**
   * Judges the flatness of all lines together.
   *
   * @param lines heights 300 mm apart, three or more on each line; not empty, not null
   * @return the judgement {@code free-movement-flatness}, which is met if 95 % of the values keep the limit; not null
   * @throws IllegalArgumentException if there is no line, or one is shorter or has another spacing
   */
  public Judgement judgeFlatness(List<HeightProfile> lines) {
    List<Length> bends = new ArrayList<>();
    for (HeightProfile line : lines) {
      for (int i = 1; i < line.size(); i++) {
        Length spacing = line.reading(i).place().minus(line.reading(i - 1).place());
        if (!spacing.equals(SPACING)) {
          throw new IllegalArgumentException("readings for TR34 must be " + SPACING + " apart, but readings " + i + " and "
              + (i + 1) + " are " + spacing + " apart; read again at that spacing");
        }
      }
      if (line.size() < 3) {
        throw new IllegalArgumentException("a line for TR34 needs at least 3 readings, but has " + line.size());
      }
      for (int i = 2; i < line.size(); i++) {
        bends.add(Length.ofNanometres(line.height(i) - 2 * line.height(i - 1) + line.height(i - 2)));
      }
    }
    return judge("free-movement-flatness", "property F, bend over 300 mm", bends, flatness);
  }

  /**
   * Judges the levelness.
   *
   * @param differences differences in height between neighbouring points 3 m apart, either way; not empty, not null
   * @return the judgement {@code free-movement-levelness}, which is met if 95 % of the values keep the limit; not null
   * @throws IllegalArgumentException if there is none
   */
  public Judgement judgeLevelness(List<Length> differences) {
    Objects.requireNonNull(differences, "differences");
    return judge("free-movement-levelness", "property E, difference in height over 3 m", differences, levelness);
  }

  private Judgement judge(String code, String check, List<Length> values, Length limit) {
    if (values.isEmpty()) {
      throw new IllegalArgumentException("there is nothing to judge; give at least one value");
    }
    List<Length> sorted = values.stream().map(Length::abs).sorted().toList();
    Length found = sorted.get((sorted.size() * PERCENT + 99) / 100 - 1);
    boolean met = found.compareTo(limit) <= 0;
    return new Judgement(code, check + ", TR34 " + name, "all of " + sorted.size() + " values", PERCENT + " % keep within "
        + found, PERCENT + " % within " + limit, met ? Outcome.MET : Outcome.NOT_MET, SOURCE, met ? "" : Advice.mendByHand());
  }

  @Override
  public String toString() {
    return name;
  }
}
