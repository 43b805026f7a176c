package floorcalc.deviations;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.Construction;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A named set of sizes that boards to one standard have. Sources that disagree are sets of their own and are never averaged.
 * Immutable and thread-safe.
 * <p>
 * A board outside the sizes of its standard can be a good board: it is then sold to other papers, and these say what it may deviate and what
 * it is for.
 * <pre>{@code
 * SizeSet.fitting(goods).judge(goods).findings();   // empty, or a note: check the goods' papers
 * }</pre>
 *
 * @since 0.1
 */
public final class SizeSet {
  /** EN 13226, solid parquet elements with groove and tongue, as quoted: at least 14 mm thick and 40 mm wide, more than 250 mm long. */
  public static final SizeSet EN_13226 = new SizeSet("EN 13226", "solid parquet elements with groove and tongue",
      PublishedSizes.solid(), PublishedSizes.usualThicknesses());

  /** EN 13990, solid softwood floor boards, as quoted: usually 18 to 34 mm thick and 70 to 192 mm wide, at least 1.5 m long. */
  public static final SizeSet EN_13990 = new SizeSet("EN 13990", "solid softwood floor boards", PublishedSizes.softwood(), List.of());

  /** EN 13489, multilayer parquet of two layers, as quoted: 9 to 22 mm thick, wear layer at least 2.5 mm. */
  public static final SizeSet EN_13489_TWO_LAYERS = new SizeSet("EN 13489 two layers",
      "multilayer parquet of two layers; also for boards of which nobody says how many they have",
      PublishedSizes.multilayer("two-layer boards", 9), List.of());

  /** EN 13489, multilayer parquet of three layers, as quoted: 10 to 22 mm thick, wear layer at least 2.5 mm. */
  public static final SizeSet EN_13489_THREE_LAYERS = new SizeSet("EN 13489 three layers", "multilayer parquet of three layers",
      PublishedSizes.multilayer("three-layer boards", 10), List.of());

  /** Austrian foreword to EN 13489, as quoted: rectangular boards 100 to 240 mm wide and 1200 to 2400 mm long. */
  public static final SizeSet EN_13489_AUSTRIA = new SizeSet("EN 13489 Austrian foreword", "rectangular multilayer parquet in Austria",
      PublishedSizes.austrian(), List.of());

  private static final String PAPERS = "check the goods' papers for the standard that they are sold to, and what it lets them deviate";
  private static final List<SizeSet> ALL = List.of(EN_13226, EN_13990, EN_13489_TWO_LAYERS, EN_13489_THREE_LAYERS, EN_13489_AUSTRIA);

  private final String name;
  private final String about;
  private final List<SizeLimit> limits;
  private final List<Length> usualThicknesses;

  private SizeSet(String name, String about, List<SizeLimit> limits, List<Length> usualThicknesses) {
    this.name = Objects.requireNonNull(name, "name");
    this.about = Objects.requireNonNull(about, "about");
    this.limits = List.copyOf(limits);
    this.usualThicknesses = List.copyOf(usualThicknesses);
    if (limits.isEmpty()) {
      throw new IllegalArgumentException("set '" + name + "' must have at least one limit");
    }
  }

  /**
   * Returns a set of the caller's own.
   *
   * @param name its name, not null
   * @param about which boards it is for, not null
   * @param limits the limits, not null, at least one
   * @return the set, not null
   * @throws IllegalArgumentException if there is no limit
   */
  public static SizeSet of(String name, String about, List<SizeLimit> limits) {
    Objects.requireNonNull(limits, "limits");
    return new SizeSet(name, about, limits, List.of());
  }

  /**
   * Returns all published sets.
   *
   * @return an unmodifiable list, not null
   */
  public static List<SizeSet> all() {
    return ALL;
  }

  /**
   * Returns the set of a name.
   *
   * @param name the name, as {@link #name()} gives it, not null
   * @return the set, not null
   * @throws IllegalArgumentException if there is no such set; the message lists the names
   */
  public static SizeSet named(String name) {
    Objects.requireNonNull(name, "name");
    return ALL.stream().filter(set -> set.name.equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no set of board sizes '" + name + "'; the sets are: "
            + ALL.stream().map(set -> "'" + set.name + "'").collect(Collectors.joining(", "))));
  }

  /**
   * Returns the set of the European standard for boards of their construction.
   *
   * @param goods the boards as they are sold, not null
   * @return EN 13489 for two layers, the wider range, for engineered boards; EN 13990 for solid boards whose species is called pine, spruce, fir,
   *     larch, cedar, hemlock, redwood or softwood; else EN 13226; not null
   */
  public static SizeSet fitting(BoardGoods goods) {
    if (goods.construction() == Construction.ENGINEERED) {
      return EN_13489_TWO_LAYERS;
    }
    return goods.species().filter(PublishedSizes::isSoftwood).isPresent() ? EN_13990 : EN_13226;
  }

  /**
   * Holds boards as they are sold against the sizes of this set. Of packs of mixed lengths each length is looked at.
   *
   * @param goods the boards, not null
   * @return a judgement {@code board-size} for each size of the set, that of a wear layer not measured; a finding
   *     {@code board-outside-standard}, a note, for each size that is outside; the size that decides as the step
   *     {@code board-length}, {@code board-width} or {@code board-thickness}; not null
   */
  public Calculated<List<Judgement>> judge(BoardGoods goods) {
    List<Judgement> judgements = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    for (SizeLimit limit : limits) {
      List<Length> sizes = sizes(limit.size(), goods);
      if (sizes.isEmpty()) {
        judgements.add(judgement(limit, "", Outcome.NOT_MEASURED, "ask for it, or look for it in the goods' papers"));
        continue;
      }
      List<Length> outside = sizes.stream().filter(size -> !limit.allows(size)).toList();
      Length deciding = outside.isEmpty() ? sizes.get(sizes.size() - 1) : outside.get(0);
      steps.add(new Step("board-" + (limit.size() == BoardSize.WIDTH ? "width" : limit.size().words()), "Which " + limit.size().words()
          + " decides by '" + name + "': " + limit + "?", "value as stated", List.of(), deciding, Source.GIVEN));
      String found = (outside.isEmpty() ? sizes : outside).stream().map(Length::toString).collect(Collectors.joining(", "));
      judgements.add(judgement(limit, found, outside.isEmpty() ? Outcome.MET : Outcome.NOT_MET, outside.isEmpty() ? "" : PAPERS));
      if (!outside.isEmpty()) {
        findings.add(new Finding("board-outside-standard", Severity.NOTE, "board", "boards with a " + limit.size().words() + " of " + found
            + " are outside the " + (limit.force() == SizeLimit.Force.USUAL ? "usual " : "") + "sizes of '" + name + "' (" + limit
            + "): " + PAPERS, limit.source()));
      }
    }
    return Calculated.of(List.copyOf(judgements), steps, findings);
  }

  private Judgement judgement(SizeLimit limit, String found, Outcome outcome, String advice) {
    return new Judgement("board-size", limit.size().words() + " of the boards, " + name, "", found, limit.toString(), outcome,
        limit.source(), advice);
  }

  private static List<Length> sizes(BoardSize size, BoardGoods goods) {
    return switch (size) {
      case LENGTH -> goods.lengths();
      case WIDTH -> List.of(goods.coverWidth());
      case THICKNESS -> List.of(goods.thickness());
      case WEAR_LAYER -> List.of();
    };
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
   * Returns which boards the set is for.
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
  public List<SizeLimit> limits() {
    return limits;
  }

  /**
   * Returns the limit of a size.
   *
   * @param size the size, not null
   * @return the limit, empty if the set is silent; not null
   */
  public Optional<SizeLimit> limit(BoardSize size) {
    Objects.requireNonNull(size, "size");
    return limits.stream().filter(limit -> limit.size() == size).findFirst();
  }

  /**
   * Returns the thicknesses that boards to the standard usually have, where the source lists them.
   *
   * @return an unmodifiable list, perhaps empty, not null
   */
  public List<Length> usualThicknesses() {
    return usualThicknesses;
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
