package floorcalc.underlay;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.UnitPrice;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * An underlay or a moisture barrier as it is sold, by the roll. Immutable and thread-safe.
 *
 * @param name what the order list calls it, not null, not blank
 * @param layer what it is for, not null
 * @param width the width of the roll, not null, from 50 mm to 20 m
 * @param length what is on a roll, not null, from 0.1 m to 100 m
 * @param lap how its strips meet, not null, less than the width and the length
 * @param upturn how far it is turned up the walls, not null, from 0 mm to 1 m
 * @param thickness how thick it is, empty if not stated; not null
 * @param permeance how much vapour it lets through, in US perm, empty if not stated; not null
 * @param price what it costs, empty if not stated; not null
 * @since 0.1
 */
public record RollGoods(String name, Layer layer, Length width, Length length, Lap lap, Length upturn,
    Optional<Length> thickness, Optional<BigDecimal> permeance, Optional<UnitPrice> price) implements Serializable {
  private static final Length NARROWEST = Length.ofMillimetres(50);
  private static final Length WIDEST = Length.ofMillimetres(20_000);
  private static final Length SHORTEST = Length.ofMillimetres(100);
  private static final Length LONGEST = Length.ofMillimetres(100_000);
  private static final Length HIGHEST = Length.ofMillimetres(1000);

  /**
   * What a layer under the boards is for.
   *
   * @since 0.1
   */
  public enum Layer {
    /** Evens out and dampens sound. */
    UNDERLAY("underlay"),
    /** Keeps moisture of the subfloor out. */
    BARRIER("moisture barrier"),
    /** One product that does both. */
    COMBINED("underlay with moisture barrier");

    private final String words;

    Layer(String words) {
      this.words = words;
    }

    /**
     * Returns the layer in a few words.
     *
     * @return for example {@code "moisture barrier"}, not null
     */
    public String words() {
      return words;
    }

    /**
     * Tells whether it keeps moisture out.
     *
     * @return true of a barrier and of a product that does both
     */
    public boolean isBarrier() {
      return this != UNDERLAY;
    }
  }

  /** Checks that no part is null or out of range. */
  public RollGoods {
    Objects.requireNonNull(width, "width");
    Objects.requireNonNull(upturn, "upturn");
    Objects.requireNonNull(thickness, "thickness");
    Objects.requireNonNull(permeance, "permeance");
    Objects.requireNonNull(price, "price");
    if (Objects.requireNonNull(name, "name").isBlank()) {
      throw new IllegalArgumentException("a roll needs a name that is not blank");
    }
    Objects.requireNonNull(layer, "layer");
    inRange("width of a roll", width, NARROWEST, WIDEST);
    inRange("length of a roll", length, SHORTEST, LONGEST);
    inRange("upturn at walls", upturn, Length.ZERO, HIGHEST);
    Length most = width.min(length);
    if (Objects.requireNonNull(lap, "lap").overlap().compareTo(most) >= 0) {
      throw new IllegalArgumentException("the overlap must be less than width and length of the roll, " + most + ", but was "
          + lap.overlap());
    }
    Objects.requireNonNull(price, "price");
    thickness.ifPresent(thick -> inRange("thickness of a roll", thick, Length.ofNanometres(1000), Length.ofMillimetres(100)));
    permeance.ifPresent(perm -> {
      if (perm.signum() < 0) {
        throw new IllegalArgumentException("permeance must be 0 perm or more, but was " + perm.toPlainString());
      }
    });
  }

  private static void inRange(String what, Length length, Length least, Length most) {
    if (length.compareTo(least) < 0 || length.compareTo(most) > 0) {
      throw new IllegalArgumentException(what + " must be from " + least + " to " + most + ", but was " + length);
    }
  }

  /**
   * Returns an underlay whose strips butt, without upturn.
   *
   * @param name what the order list calls it, not null, not blank
   * @param width the width of the roll, not null, from 50 mm to 20 m
   * @param length what is on a roll, not null, from 0.1 m to 100 m
   * @return the goods, not null
   * @throws IllegalArgumentException if a value is out of range
   */
  public static RollGoods underlay(String name, Length width, Length length) {
    Objects.requireNonNull(width, "width");
    return new RollGoods(name, Layer.UNDERLAY, width, length, Lap.BUTT, Length.ZERO, Optional.empty(), Optional.empty(),
        Optional.empty());
  }

  /**
   * Returns a moisture barrier.
   *
   * @param name what the order list calls it, not null, not blank
   * @param width the width of the roll, not null, from 50 mm to 20 m
   * @param length what is on a roll, not null, from 0.1 m to 100 m
   * @param lap how its strips meet, not null
   * @return the goods, without upturn, not null
   * @throws IllegalArgumentException if a value is out of range
   */
  public static RollGoods barrier(String name, Length width, Length length, Lap lap) {
    Objects.requireNonNull(width, "width");
    return new RollGoods(name, Layer.BARRIER, width, length, lap, Length.ZERO, Optional.empty(), Optional.empty(),
        Optional.empty());
  }

  /**
   * Returns the same goods, as another layer.
   *
   * @param other what it is for, not null
   * @return the goods, not null
   */
  public RollGoods as(Layer other) {
    Objects.requireNonNull(other, "other");
    return new RollGoods(name, other, width, length, lap, upturn, thickness, permeance, price);
  }

  /**
   * Returns the same goods, its strips meeting in another way.
   *
   * @param other how strips meet, not null
   * @return the goods, not null
   */
  public RollGoods withLap(Lap other) {
    Objects.requireNonNull(other, "other");
    return new RollGoods(name, layer, width, length, other, upturn, thickness, permeance, price);
  }

  /**
   * Returns the same goods, turned up the walls.
   *
   * @param height how far, not null, from 0 mm to 1 m
   * @return the goods, not null
   */
  public RollGoods withUpturn(Length height) {
    Objects.requireNonNull(height, "height");
    return new RollGoods(name, layer, width, length, lap, height, thickness, permeance, price);
  }

  /**
   * Returns the same goods with their thickness.
   *
   * @param thick how thick they are, not null, more than 0 mm, at most 100 mm
   * @return the goods, not null
   */
  public RollGoods withThickness(Length thick) {
    Objects.requireNonNull(thick, "thick");
    return new RollGoods(name, layer, width, length, lap, upturn, Optional.of(thick), permeance, price);
  }

  /**
   * Returns the same goods with their permeance.
   *
   * @param perm how much vapour they let through, in US perm; not null, not negative
   * @return the goods, not null
   */
  public RollGoods withPermeance(BigDecimal perm) {
    Objects.requireNonNull(perm, "perm");
    return new RollGoods(name, layer, width, length, lap, upturn, thickness, Optional.of(perm), price);
  }

  /**
   * Returns the same goods with their price.
   *
   * @param cost a price of a roll, a square metre or a metre; not null
   * @return the goods, not null
   */
  public RollGoods withPrice(UnitPrice cost) {
    Objects.requireNonNull(cost, "cost");
    return new RollGoods(name, layer, width, length, lap, upturn, thickness, permeance, Optional.of(cost));
  }

  /**
   * Returns the area of a roll.
   *
   * @return width times length, not null
   */
  public Area area() {
    return width.times(length);
  }

  private Object writeReplace() {
    return new Form(name, layer, width, length, lap, upturn, thickness.orElse(null), permeance.orElse(null),
        price.orElse(null));
  }

  /** What is written: an optional part by itself, or null. Reading goes through the constructor and its checks. */
  private record Form(String name, Layer layer, Length width, Length length, Lap lap, Length upturn, Length thickness,
      BigDecimal permeance, UnitPrice price) implements Serializable {

    private Object readResolve() {
      return new RollGoods(name, layer, width, length, lap, upturn, Optional.ofNullable(thickness),
          Optional.ofNullable(permeance), Optional.ofNullable(price));
    }
  }
}
