package floorcalc.materials;

import floorcalc.boards.BoardGoods;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The packs as they stand in the room to acclimatise: volume, stacks, floor space, mass. A pack is taken as its boards one on another,
 * as long as the longest, without wrapping, tongues or battens: the maker's figure is a little more.
 *
 * @param packs how many, not negative
 * @param packHeight how high one is, not null
 * @param cubicMetres the volume of all packs, exact; not null
 * @param stacks in how many stacks they stand, not negative
 * @param floorSpace what the stacks take of the floor, nothing between them; not null
 * @param mass the mass of all packs, empty if that of one is not stated; not null
 * @since 0.1
 */
public record PackStack(int packs, Length packHeight, BigDecimal cubicMetres, int stacks, Area floorSpace, Optional<Mass> mass) {
  /** What one person should not lift more than, in the best case: 25 kg, recalled; less for many people and postures. */
  public static final Mass ONE_PERSON = new Mass(BigDecimal.valueOf(25));
  /** Whose figure {@link #ONE_PERSON} is. */
  public static final Source ONE_PERSON_SOURCE = new Source("Manual handling at work: a brief guide", "Health and Safety Executive", 0,
      "guideline weights, lifted close to the body at the height of the knuckles", Standing.FROM_MEMORY);
  /** How high packs are stacked unless stated: 1 m, common practice, no source. */
  public static final Length STACK_HEIGHT = Length.ofMillimetres(1000);

  /** Checks that no part is null. */
  public PackStack {
    Objects.requireNonNull(packHeight, "packHeight");
    Objects.requireNonNull(cubicMetres, "cubicMetres");
    Objects.requireNonNull(floorSpace, "floorSpace");
    Objects.requireNonNull(mass, "mass");
  }

  /**
   * Stacks packs.
   *
   * @param goods the boards as they are sold, not null
   * @param packs how many packs, not negative
   * @param highest how high a stack may be, not null, more than zero; a pack that is higher stands alone
   * @return the stacks with the steps {@code pack-height}, {@code pack-volume}, {@code packs-in-a-stack}, {@code stacks},
   *     {@code floor-space} and {@code mass-of-packs}; findings {@code heavy-pack}; not null
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Calculated<PackStack> of(BoardGoods goods, int packs, Length highest) {
    if (packs < 0) {
      throw new IllegalArgumentException("packs must be 0 or more, but were " + packs);
    }
    if (!highest.isPositive()) {
      throw new IllegalArgumentException("the height of a stack must be more than 0 mm, but was " + highest);
    }
    List<Step> steps = new ArrayList<>();
    int boards = goods.boardsPerPack();
    Length height = goods.thickness().multipliedBy(boards);
    step(steps, "pack-height", "How high is a pack, its boards one on another?", "h = k * T",
        List.of(Term.of("k", "boards in a pack", boards), Term.of("T", "thickness of a board", goods.thickness())), height);
    BigDecimal volume = metres(goods.longest()).multiply(metres(goods.coverWidth())).multiply(metres(height))
        .multiply(BigDecimal.valueOf(packs)).stripTrailingZeros();
    step(steps, "pack-volume", "What volume do the packs have, in cubic metres?", "V = N * l * b * h",
        List.of(Term.of("N", "packs", packs), Term.of("l", "length of the longest board in metres", metres(goods.longest())),
            Term.of("b", "cover width in metres", metres(goods.coverWidth())), Term.of("h", "height of a pack in metres",
                metres(height))), plain(volume));
    long each = Math.max(1, highest.dividedBy(height));
    step(steps, "packs-in-a-stack", "How many packs stand one on another?", "s = max(1, floor(H / h))",
        List.of(new Term("H", "height of a stack", highest, highest.equals(STACK_HEIGHT) ? Source.COMMON_PRACTICE : Source.GIVEN),
            Term.of("h", "height of a pack", height)), each);
    int stacks = (int) ((packs + each - 1) / each);
    step(steps, "stacks", "How many stacks are that?", "m = ceil(N / s)", List.of(Term.of("N", "packs", packs),
        Term.of("s", "packs in a stack", each)), stacks);
    Area space = goods.longest().times(goods.coverWidth()).multipliedBy(stacks);
    step(steps, "floor-space", "How much floor do the stacks take?", "A = m * l * b", List.of(Term.of("m", "stacks", stacks),
        Term.of("l", "length of the longest board", goods.longest()), Term.of("b", "cover width", goods.coverWidth())), space);
    Optional<Mass> mass = goods.packMass().map(one -> new Mass(one.kilograms().multiply(BigDecimal.valueOf(packs))));
    mass.ifPresent(all -> step(steps, "mass-of-packs", "What do the packs weigh?", "M = N * w", List.of(Term.of("N", "packs", packs),
        Term.of("w", "mass of a pack", goods.packMass().orElseThrow())), all));
    return Calculated.of(new PackStack(packs, height, volume, stacks, space, mass), steps, heavy(goods));
  }

  private static List<Finding> heavy(BoardGoods goods) {
    return goods.packMass().filter(mass -> mass.kilograms().compareTo(ONE_PERSON.kilograms()) > 0).map(mass ->
        new Finding("heavy-pack", Severity.WARNING, "", "a pack weighs " + mass + ", more than one person should lift, " + ONE_PERSON
            + " at the best; lift with two or use a trolley", ONE_PERSON_SOURCE)).map(List::of).orElse(List.of());
  }

  private static BigDecimal metres(Length length) {
    return plain(BigDecimal.valueOf(length.toNanometres(), 9).stripTrailingZeros());
  }

  private static BigDecimal plain(BigDecimal number) {
    return number.scale() < 0 ? number.setScale(0) : number;
  }

  private static void step(List<Step> steps, String id, String question, String formula, List<Term> terms, Object result) {
    steps.add(new Step(id, question, formula, terms, result, Source.DEFINITION));
  }
}
