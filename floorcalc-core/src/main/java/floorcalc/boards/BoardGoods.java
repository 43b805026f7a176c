package floorcalc.boards;

import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.measure.Price;
import java.io.Serializable;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The boards as they are sold: lengths, cover width, laid pitch, thickness, and what a pack holds, weighs and costs.
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class BoardGoods implements Serializable {
  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial")
  private final List<PackContent> pack;
  private final Length coverWidth;
  private final Length laidPitch;
  private final Length thickness;
  private final Construction construction;
  private final String species;
  private final Mass packMass;
  private final Price packPrice;

  private BoardGoods(List<PackContent> pack, Length coverWidth, Length laidPitch, Length thickness,
      Construction construction, String species, Mass packMass, Price packPrice) {
    this.pack = pack;
    this.coverWidth = positive(coverWidth, "cover width");
    this.laidPitch = positive(laidPitch, "laid pitch");
    this.thickness = positive(thickness, "thickness");
    this.construction = Objects.requireNonNull(construction, "construction");
    this.species = species;
    this.packMass = packMass;
    this.packPrice = packPrice;
  }

  /**
   * Returns engineered boards of one length; the laid pitch is the cover width.
   *
   * @param length the length of a board, not null, more than zero
   * @param coverWidth the width that a laid board shows, not null, more than zero
   * @param thickness the thickness, not null, more than zero
   * @param perPack the boards in a pack, at least 1
   * @return the goods, not null
   * @throws IllegalArgumentException if a value is out of range
   */
  public static BoardGoods of(Length length, Length coverWidth, Length thickness, int perPack) {
    Objects.requireNonNull(coverWidth, "coverWidth");
    return mixed(List.of(new PackContent(length, perPack)), coverWidth, thickness);
  }

  /**
   * Returns engineered boards sold in packs of mixed lengths; the laid pitch is the cover width.
   *
   * @param pack what a pack holds, not null, not empty, each length once
   * @param coverWidth the width that a laid board shows, not null, more than zero
   * @param thickness the thickness, not null, more than zero
   * @return the goods, not null
   * @throws IllegalArgumentException if a value is out of range or a length stands twice
   */
  public static BoardGoods mixed(List<PackContent> pack, Length coverWidth, Length thickness) {
    Objects.requireNonNull(coverWidth, "coverWidth");
    List<PackContent> sorted = pack.stream()
        .sorted(Comparator.comparing(PackContent::length).reversed()).toList();
    if (sorted.isEmpty()) {
      throw new IllegalArgumentException("a pack must hold at least one board");
    }
    for (int i = 1; i < sorted.size(); i++) {
      if (sorted.get(i).length().equals(sorted.get(i - 1).length())) {
        throw new IllegalArgumentException("a pack lists boards of " + sorted.get(i).length() + " twice; add them up");
      }
    }
    return new BoardGoods(sorted, coverWidth, coverWidth, thickness, Construction.ENGINEERED, null, null, null);
  }

  /**
   * Returns the same goods with a laid pitch measured over a stack of boards pushed together.
   *
   * @param boards the number of boards measured side by side, at least 1
   * @param width the width over all of them, not null, more than zero
   * @return the goods, not null; the pitch is rounded down to a whole nanometre
   */
  public BoardGoods withMeasuredStack(int boards, Length width) {
    if (boards < 1) {
      throw new IllegalArgumentException("a stack must hold at least 1 board, but was " + boards);
    }
    Length pitch = width.dividedBy(boards, java.math.RoundingMode.FLOOR);
    return new BoardGoods(pack, coverWidth, pitch, thickness, construction, species, packMass, packPrice);
  }

  /**
   * Returns the same goods of another construction.
   *
   * @param made how the boards are made, not null
   * @return the goods, not null
   */
  public BoardGoods withConstruction(Construction made) {
    Objects.requireNonNull(made, "made");
    return new BoardGoods(pack, coverWidth, laidPitch, thickness, made, species, packMass, packPrice);
  }

  /**
   * Returns the same goods of a species, for movement across the grain.
   *
   * @param wood the name of the wood, not null
   * @return the goods, not null
   */
  public BoardGoods withSpecies(String wood) {
    return new BoardGoods(pack, coverWidth, laidPitch, thickness, construction, Objects.requireNonNull(wood, "wood"),
        packMass, packPrice);
  }

  /**
   * Returns the same goods with the mass of a pack.
   *
   * @param mass the mass of a full pack, not null
   * @return the goods, not null
   */
  public BoardGoods withPackMass(Mass mass) {
    return new BoardGoods(pack, coverWidth, laidPitch, thickness, construction, species,
        Objects.requireNonNull(mass, "mass"), packPrice);
  }

  /**
   * Returns the same goods with the price of a pack.
   *
   * @param price the price of a full pack, not null
   * @return the goods, not null
   */
  public BoardGoods withPackPrice(Price price) {
    return new BoardGoods(pack, coverWidth, laidPitch, thickness, construction, species, packMass,
        Objects.requireNonNull(price, "price"));
  }

  private static Length positive(Length value, String name) {
    if (!Objects.requireNonNull(value, name).isPositive()) {
      throw new IllegalArgumentException(name + " must be more than 0 mm, but was " + value);
    }
    return value;
  }

  /**
   * Returns what a pack holds, longest boards first.
   *
   * @return an unmodifiable list, not null, not empty
   */
  public List<PackContent> pack() {
    return pack;
  }

  /**
   * Returns the lengths sold, longest first.
   *
   * @return an unmodifiable list, not null, not empty
   */
  public List<Length> lengths() {
    return pack.stream().map(PackContent::length).toList();
  }

  /**
   * Returns the longest board.
   *
   * @return its length, not null
   */
  public Length longest() {
    return pack.get(0).length();
  }

  /**
   * Returns the number of boards in a pack, all lengths together.
   *
   * @return at least 1
   */
  public int boardsPerPack() {
    return pack.stream().mapToInt(PackContent::perPack).sum();
  }

  /**
   * Returns the nominal width that a laid board shows.
   *
   * @return the cover width, not null
   */
  public Length coverWidth() {
    return coverWidth;
  }

  /**
   * Returns the distance from row to row as laid: the cover width unless a stack was measured.
   *
   * @return the laid pitch, not null
   */
  public Length laidPitch() {
    return laidPitch;
  }

  /**
   * Returns the thickness.
   *
   * @return the thickness, not null
   */
  public Length thickness() {
    return thickness;
  }

  /**
   * Returns how the boards are made.
   *
   * @return the construction, not null
   */
  public Construction construction() {
    return construction;
  }

  /**
   * Returns the species, if it is known.
   *
   * @return the name of the wood, not null, may be empty
   */
  public Optional<String> species() {
    return Optional.ofNullable(species);
  }

  /**
   * Returns the mass of a full pack, if it is known.
   *
   * @return the mass, not null, may be empty
   */
  public Optional<Mass> packMass() {
    return Optional.ofNullable(packMass);
  }

  /**
   * Returns the price of a full pack, if it is known.
   *
   * @return the price, not null, may be empty
   */
  public Optional<Price> packPrice() {
    return Optional.ofNullable(packPrice);
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return new BoardGoods(mixed(pack, coverWidth, thickness).pack, coverWidth, laidPitch, thickness, construction, species, packMass,
        packPrice);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof BoardGoods other && parts().equals(other.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  private List<Object> parts() {
    return Arrays.asList(pack, coverWidth, laidPitch, thickness, construction, species,
        packMass, packPrice);
  }
}
