package floorcalc.moisture;

import java.math.BigDecimal;

/**
 * How moisture was measured. Each method measures another thing, and no figure of one can be converted into a figure of
 * another: a reading is only ever held against a limit for its own method.
 *
 * @since 0.1
 */
public enum MoistureMethod {
  /** A crushed sample of the subfloor with calcium carbide in a bottle: water by mass of the sample, in CM-%. */
  CM("CM", "CM-%", "0", "20"),
  /** Probes in holes in the slab, ASTM F2170 or like it: relative humidity of the air in the hole, in %. */
  IN_SLAB_HUMIDITY("in-slab RH", "% RH", "5", "100"),
  /** An insulated hygrometer on the surface: relative humidity of the air under its box, in %. */
  SURFACE_HUMIDITY("surface hygrometer", "% RH", "5", "100"),
  /** Calcium chloride under a dome, ASTM F1869: water given off, in pounds from 1000 square feet in 24 hours. */
  CALCIUM_CHLORIDE("calcium chloride", "lb/(1000 ft2 24 h)", "0", "60"),
  /**
   * A meter read as it stands, in %. On wood, with the meter set to the species, it is the moisture content of the wood;
   * on a slab or screed it is only a figure of the meter's own scale.
   */
  METER("meter", "%", "0", "100");

  private final String words;
  private final String unit;
  private final BigDecimal least;
  private final BigDecimal most;

  MoistureMethod(String words, String unit, String least, String most) {
    this.words = words;
    this.unit = unit;
    this.least = new BigDecimal(least);
    this.most = new BigDecimal(most);
  }

  /**
   * Returns the method in a few words.
   *
   * @return for example {@code "in-slab RH"}, not null
   */
  public String words() {
    return words;
  }

  /**
   * Returns the unit of a reading.
   *
   * @return for example {@code "CM-%"}, not null
   */
  public String unit() {
    return unit;
  }

  /** Whether the method can be used on a subfloor at all. */
  boolean isFor(Substrate substrate) {
    return this == METER || !substrate.isWood();
  }

  /** The smallest reading that is taken; the bounds catch slips of unit and decimal point. */
  BigDecimal least() {
    return least;
  }

  /** The largest reading that is taken. */
  BigDecimal most() {
    return most;
  }

  String text(BigDecimal value) {
    return Decimals.plain(value).toPlainString() + " " + unit;
  }
}
