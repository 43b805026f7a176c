package floorcalc.levels;

import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The levelling compound or patching filler to be used, as its maker states it. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class FillerGoods implements Serializable {
  private static final long serialVersionUID = 1L;

  private final BigDecimal kilogramsPerLitre;
  private final Mass bag;
  private final Length thinnest;
  private final Length thickest;

  private FillerGoods(BigDecimal kilogramsPerLitre, Mass bag, Length thinnest, Length thickest) {
    this.kilogramsPerLitre = kilogramsPerLitre;
    this.bag = bag;
    this.thinnest = thinnest;
    this.thickest = thickest;
  }

  /**
   * Returns a filler.
   *
   * @param kilogramsPerLitre how many kilograms out of the bag a litre of laid filler takes; the same number as the kilograms per
   *     square metre and millimetre of thickness that makers print; more than 0, at most 25, not null
   * @param bag what a bag holds, more than zero; not null
   * @return the filler, without limits of thickness, not null
   * @throws IllegalArgumentException if a value is out of range
   */
  public static FillerGoods of(BigDecimal kilogramsPerLitre, Mass bag) {
    if (kilogramsPerLitre.signum() <= 0 || kilogramsPerLitre.compareTo(BigDecimal.valueOf(25)) > 0) {
      throw new IllegalArgumentException("kilograms per litre must be more than 0 and at most 25, but was "
          + kilogramsPerLitre.toPlainString());
    }
    if (bag.kilograms().signum() <= 0) {
      throw new IllegalArgumentException("mass of a bag must be more than 0 kg, but was " + bag);
    }
    return new FillerGoods(kilogramsPerLitre, bag, Length.ZERO, null);
  }

  /**
   * Returns the same filler with the maker's limits of thickness.
   *
   * @param least the thinnest layer, not null, not negative
   * @param most the thickest layer, not null, more than the thinnest
   * @return the filler, not null
   * @throws IllegalArgumentException if a value is out of range
   */
  public FillerGoods inLayers(Length least, Length most) {
    Objects.requireNonNull(most, "most");
    if (least.isNegative() || most.compareTo(least) <= 0) {
      throw new IllegalArgumentException("the thinnest layer must not be negative and the thickest more than that, but they were "
          + least + " and " + most);
    }
    return new FillerGoods(kilogramsPerLitre, bag, least, most);
  }

  /**
   * Returns how many kilograms a litre of laid filler takes.
   *
   * @return kilograms per litre, more than 0, not null
   */
  public BigDecimal kilogramsPerLitre() {
    return kilogramsPerLitre;
  }

  /**
   * Returns what a bag holds.
   *
   * @return the mass, not null
   */
  public Mass bag() {
    return bag;
  }

  /**
   * Returns the thinnest layer that the maker allows.
   *
   * @return the thickness, 0 mm if not stated; not null
   */
  public Length thinnest() {
    return thinnest;
  }

  /**
   * Returns the thickest layer that the maker allows in one pour.
   *
   * @return the thickness, empty if not stated; not null
   */
  public Optional<Length> thickest() {
    return Optional.ofNullable(thickest);
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    FillerGoods goods = of(kilogramsPerLitre, bag);
    return thickest == null ? goods : goods.inLayers(thinnest, thickest);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof FillerGoods other && parts().equals(other.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  private List<Object> parts() {
    return Arrays.asList(kilogramsPerLitre, bag, thinnest, thickest);
  }
}
