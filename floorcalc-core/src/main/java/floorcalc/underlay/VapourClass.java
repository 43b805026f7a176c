package floorcalc.underlay;

import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.math.BigDecimal;

/**
 * How tight a film is against vapour, in the classes of the International Residential Code: the less it lets through, the tighter.
 *
 * @since 0.1
 */
public enum VapourClass {
  /** At most 0.1 US perm. */
  CLASS_I("Class I", "0.1"),
  /** More than 0.1 and at most 1.0 US perm. */
  CLASS_II("Class II", "1.0"),
  /** More than 1.0 and at most 10 US perm. */
  CLASS_III("Class III", "10"),
  /** More than 10 US perm: no vapour retarder. */
  OPEN("no vapour retarder", null);

  /** Whose classes they are. */
  public static final Source SOURCE = new Source("International Residential Code", "International Code Council", 0,
      "classes of vapour retarders, as quoted by hardwoodfloorsmag.com, 2017-01-30", Standing.QUOTED);

  private final String words;
  private final BigDecimal most;

  VapourClass(String words, String most) {
    this.words = words;
    this.most = most == null ? null : new BigDecimal(most);
  }

  /**
   * Returns the class of a permeance.
   *
   * @param permeance in US perm, not null, not negative
   * @return the class, its upper bound included; not null
   * @throws IllegalArgumentException if the permeance is negative
   */
  public static VapourClass of(BigDecimal permeance) {
    if (permeance.signum() < 0) {
      throw new IllegalArgumentException("permeance must be 0 perm or more, but was " + permeance.toPlainString());
    }
    for (VapourClass one : values()) {
      if (one.most == null || permeance.compareTo(one.most) <= 0) {
        return one;
      }
    }
    throw new AssertionError("the last class has no upper bound");
  }

  /**
   * Returns the class in a few words.
   *
   * @return for example {@code "Class II"}, not null
   */
  public String words() {
    return words;
  }
}
