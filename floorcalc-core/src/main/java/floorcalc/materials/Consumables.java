package floorcalc.materials;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What is used up beside boards: wedges, tape, glue, sealant. Each is one plain sum. Yields are the maker's; a default that is used in
 * their place is common practice, no source, and says so in the working.
 *
 * @since 0.1
 */
public final class Consumables {
  /** How far apart wedges stand along the walls unless stated: 500 mm, common practice, no source. */
  public static final Length WEDGE_SPACING = Length.ofMillimetres(500);
  /** What a cartridge of sealant holds unless stated: 310 ml, common practice, no source. */
  public static final BigDecimal CARTRIDGE_MILLILITRES = BigDecimal.valueOf(310);
  /** What of a cartridge is lost unless stated: a tenth, common practice, no source. */
  public static final BigDecimal SEALANT_LOSS = new BigDecimal("0.1");
  /** Glue for a piece behind a pipe unless stated: 5 ml, common practice, no source. */
  public static final BigDecimal GLUE_PER_PIECE_MILLILITRES = BigDecimal.valueOf(5);

  private Consumables() {}

  /**
   * Counts the wedges or spacers that hold the gap along the walls and voids of a room while it is laid: one at each corner and others
   * between, none farther apart than the spacing.
   *
   * @param room the room's name, not null
   * @param outline the walls and voids, not null
   * @param spacing how far apart they stand at most, not null, more than zero
   * @return {@code w1 + w2 + ...} with {@code w = ceil(L / a)} for each wall; step {@code wedges}; not null
   * @throws IllegalArgumentException if the spacing is not more than zero
   */
  public static Calculated<Long> wedges(String room, Outline outline, Length spacing) {
    Objects.requireNonNull(room, "room");
    if (!spacing.isPositive()) {
      throw new IllegalArgumentException("the spacing of wedges must be more than 0 mm, but was " + spacing);
    }
    List<Ring> rings = new ArrayList<>(List.of(outline.shell()));
    rings.addAll(outline.voids());
    StringBuilder formula = new StringBuilder("N = ");
    List<Term> terms = new ArrayList<>(List.of(new Term("a", "spacing at most", spacing,
        spacing.equals(WEDGE_SPACING) ? Source.COMMON_PRACTICE : Source.GIVEN)));
    long sum = 0;
    for (Ring ring : rings) {
      for (int wall = 0; wall < ring.size(); wall++) {
        Length length = ring.wallLength(wall);
        sum += length.minus(Length.ofNanometres(1)).dividedBy(spacing) + 1;
        String symbol = "L" + terms.size();
        formula.append(terms.size() == 1 ? "" : " + ").append("ceil(").append(symbol).append(" / a)");
        terms.add(Term.of(symbol, "wall or side of a void", length));
      }
    }
    return Calculated.of(sum, List.of(new Step("wedges", room + ": how many wedges hold the gap, one at each corner and more between?",
        terms.size() > 41 ? "value as stated" : formula.toString(), terms.size() > 41 ? List.of() : terms, sum,
        Source.COMMON_PRACTICE)));
  }

  /**
   * Counts whole units that hold a number of things, such as bags of wedges or rolls of tape.
   *
   * @param id the name of the step, in lower case with hyphens; not null
   * @param question what it answers, not null
   * @param wanted how much is wanted, not null, not negative
   * @param each what one unit holds, not null, more than zero
   * @return {@code ceil(W / k)} with one step; not null
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Calculated<Long> whole(String id, String question, Length wanted, Length each) {
    if (!each.isPositive() || wanted.isNegative()) {
      throw new IllegalArgumentException("what is wanted must be 0 or more and what a unit holds more than 0, but they were " + wanted
          + " and " + each);
    }
    long units = wanted.isZero() ? 0 : wanted.minus(Length.ofNanometres(1)).dividedBy(each) + 1;
    return Calculated.of(units, List.of(new Step(id, question, "N = ceil(W / k)",
        List.of(Term.of("W", "wanted", wanted), Term.of("k", "in one", each)), units, Source.DEFINITION)));
  }

  /**
   * Counts whole units that hold a number of things.
   *
   * @param id the name of the step, in lower case with hyphens; not null
   * @param question what it answers, not null
   * @param wanted how many are wanted, not negative
   * @param each how many one unit holds, at least 1
   * @return {@code ceil(W / k)} with one step; not null
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Calculated<Long> whole(String id, String question, long wanted, long each) {
    if (each < 1 || wanted < 0) {
      throw new IllegalArgumentException("what is wanted must be 0 or more and what a unit holds at least 1, but they were " + wanted
          + " and " + each);
    }
    long units = Math.floorDiv(wanted + each - 1, each);
    return Calculated.of(units, List.of(new Step(id, question, "N = ceil(W / k)",
        List.of(Term.of("W", "wanted", wanted), Term.of("k", "in one", each)), units, Source.DEFINITION)));
  }

  /**
   * Counts the cartridges of sealant for a bead.
   *
   * @param length how long the bead is, not null, not negative
   * @param width how wide, not null, more than zero
   * @param depth how deep, not null, more than zero
   * @param cartridgeMillilitres what a cartridge holds, not null, more than zero
   * @param loss what of it is lost, as a share from 0 to less than 1; not null
   * @return the whole cartridges, with the steps {@code bead-volume} and {@code cartridges}; not null
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Calculated<Long> sealant(Length length, Length width, Length depth, BigDecimal cartridgeMillilitres, BigDecimal loss) {
    if (length.isNegative() || !width.isPositive() || !depth.isPositive() || cartridgeMillilitres.signum() <= 0) {
      throw new IllegalArgumentException("a bead must be 0 mm or longer, more than 0 mm wide and deep, and a cartridge hold more than"
          + " 0 ml, but they were " + length + ", " + width + ", " + depth + " and " + cartridgeMillilitres.toPlainString() + " ml");
    }
    if (loss.signum() < 0 || loss.compareTo(BigDecimal.ONE) >= 0) {
      throw new IllegalArgumentException("the loss must be a share from 0 to less than 1, but was " + loss.toPlainString());
    }
    BigDecimal volume = centimetres(length).multiply(centimetres(width)).multiply(centimetres(depth));
    Step bead = new Step("bead-volume", "What volume does the bead have, in millilitres, which are cubic centimetres?", "V = l * b * d",
        List.of(Term.of("l", "length of the bead in cm", centimetres(length)), Term.of("b", "width in cm", centimetres(width)),
            Term.of("d", "depth in cm", centimetres(depth))), volume, Source.DEFINITION);
    BigDecimal usable = cartridgeMillilitres.multiply(BigDecimal.ONE.subtract(loss));
    long cartridges = volume.divide(usable, 0, RoundingMode.CEILING).longValueExact();
    Step number = new Step("cartridges", "How many cartridges are that?", "N = ceil(V / (k * (1 - q)))",
        List.of(Term.of("V", "volume of the bead in ml", volume), new Term("k", "what a cartridge holds in ml", cartridgeMillilitres,
            cartridgeMillilitres.equals(CARTRIDGE_MILLILITRES) ? Source.COMMON_PRACTICE : Source.GIVEN),
            new Term("q", "what is lost of it, a share", loss, loss.equals(SEALANT_LOSS) ? Source.COMMON_PRACTICE : Source.GIVEN)),
        cartridges, Source.DEFINITION);
    return Calculated.of(cartridges, List.of(bead, number));
  }

  private static BigDecimal centimetres(Length length) {
    BigDecimal number = BigDecimal.valueOf(length.toNanometres(), 7).stripTrailingZeros();
    return number.scale() < 0 ? number.setScale(0) : number;
  }
}
