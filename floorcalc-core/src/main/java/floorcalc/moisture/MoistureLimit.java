package floorcalc.moisture;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * The most that a reading of a subfloor may be, with its conditions. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class MoistureLimit implements Serializable {
  private static final long serialVersionUID = 1L;

  private final MoistureMethod method;
  private final Substrate substrate;
  private final Heating heating;
  private final Length depth;
  private final BigDecimal most;
  private final Source source;

  private MoistureLimit(MoistureMethod method, Substrate substrate, Heating heating, Length depth, BigDecimal most,
      Source source) {
    this.method = method;
    this.substrate = substrate;
    this.heating = heating;
    this.depth = depth;
    this.most = most;
    this.source = source;
  }

  /**
   * Returns a limit, such as that of an adhesive's maker.
   *
   * @param method the method that it is for, not null
   * @param substrate the subfloor that it is for; {@link Substrate#NOT_STATED} for any; not null
   * @param heating whether it is for heated floors; {@link Heating#NOT_STATED} for both; not null
   * @param most the highest reading that is allowed, in the unit of the method, not null
   * @param source whose limit it is, not null
   * @return the limit, not null
   * @throws IllegalArgumentException if no such reading is possible with the method
   */
  public static MoistureLimit of(MoistureMethod method, Substrate substrate, Heating heating, BigDecimal most,
      Source source) {
    Objects.requireNonNull(most, "most");
    return new MoistureLimit(method, Objects.requireNonNull(substrate, "substrate"),
        Objects.requireNonNull(heating, "heating"), null, MoistureReading.of(method, most).value(),
        Objects.requireNonNull(source, "source"));
  }

  MoistureLimit at(Length below) {
    return new MoistureLimit(method, substrate, heating, below, most, source);
  }

  /**
   * Returns the method that the limit is for.
   *
   * @return the method, not null
   */
  public MoistureMethod method() {
    return method;
  }

  /**
   * Returns the subfloor that the limit is for.
   *
   * @return the subfloor, {@link Substrate#NOT_STATED} for any; not null
   */
  public Substrate substrate() {
    return substrate;
  }

  /**
   * Returns whether the limit is for heated floors.
   *
   * @return the heating, {@link Heating#NOT_STATED} for both; not null
   */
  public Heating heating() {
    return heating;
  }

  /**
   * Returns the highest reading that is allowed.
   *
   * @return in the unit of the method, itself allowed, not null
   */
  public BigDecimal most() {
    return most;
  }

  /**
   * Returns whose limit it is.
   *
   * @return the source, not null
   */
  public Source source() {
    return source;
  }

  /** Whether the limit may be the one for such a reading; what is not stated does not rule it out. */
  boolean mayApply(MoistureReading reading, Substrate on, Heating heated) {
    return method == reading.method() && substrate.candidates().stream().anyMatch(on.candidates()::contains)
        && heating.candidates().stream().anyMatch(heated.candidates()::contains)
        && (depth == null || reading.depth().isEmpty() || reading.depth().get().equals(depth));
  }

  /** For what it is, in words. */
  String conditions() {
    String text = substrate == Substrate.NOT_STATED ? "any subfloor" : substrate.words();
    text += heating == Heating.NOT_STATED ? "" : ", " + heating.words();
    return depth == null ? text : text + ", at a depth of " + depth;
  }

  /**
   * Returns the limit as one line.
   *
   * @return for example {@code "at most 1.8 CM-% (cement screed, heated)"}, not null
   */
  @Override
  public String toString() {
    return "at most " + method.text(most) + " (" + conditions() + ")";
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    MoistureLimit limit = of(method, substrate, heating, most, source);
    return depth == null ? limit : limit.at(depth);
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof MoistureLimit other && parts().equals(other.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  private List<Object> parts() {
    return Arrays.asList(method, substrate, heating, depth, most, source);
  }
}
