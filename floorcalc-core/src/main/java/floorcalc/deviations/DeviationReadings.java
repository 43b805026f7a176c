package floorcalc.deviations;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.Construction;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What was measured of boards or of a laid floor, beside the sizes that they should have. Immutable and thread-safe.
 * <pre>{@code
 * DeviationReadings.of(goods).with(Deviation.WIDTH, List.of(Length.parse("184.9 mm"), Length.parse("185.1 mm")));
 * }</pre>
 * Of width, thickness and length the readings are sizes; of everything else they are the deviation itself, without a sign. Joints are
 * given in the order in which they lie beside each other.
 *
 * @since 0.1
 */
public final class DeviationReadings implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The most readings of one kind. */
  public static final int MOST = 10_000;
  /** The greatest deviation that is taken for one. */
  public static final Length GREATEST = Length.ofMillimetres(50);

  private final transient Length width;
  private final transient Optional<Construction> construction;
  private final transient Optional<Length> thickness;
  private final transient List<Length> lengths;
  private final transient Optional<Length> panel;
  private final transient Optional<Area> area;
  private final transient Optional<BigDecimal> moisture;
  private final transient EnumMap<Deviation, List<Length>> read;

  private DeviationReadings(Length width, Optional<Construction> construction, Optional<Length> thickness, List<Length> lengths,
      Optional<Length> panel, Optional<Area> area, Optional<BigDecimal> moisture, EnumMap<Deviation, List<Length>> read) {
    this.width = width;
    this.construction = construction;
    this.thickness = thickness;
    this.lengths = List.copyOf(lengths);
    this.panel = panel;
    this.area = area;
    this.moisture = moisture;
    this.read = read;
  }

  /**
   * Returns no readings yet, of boards as they are sold.
   *
   * @param goods the boards with their nominal sizes, not null
   * @return the readings, not null
   */
  public static DeviationReadings of(BoardGoods goods) {
    return new DeviationReadings(goods.coverWidth(), Optional.of(goods.construction()), Optional.of(goods.thickness()), goods.lengths(),
        Optional.empty(), Optional.empty(), Optional.empty(), new EnumMap<>(Deviation.class));
  }

  /**
   * Returns no readings yet, of boards of which only the width is known, as at handover.
   *
   * @param width the nominal cover width, more than zero, not null
   * @return the readings, not null
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public static DeviationReadings ofWidth(Length width) {
    return new DeviationReadings(positive(width, "width of the boards"), Optional.empty(), Optional.empty(), List.of(), Optional.empty(),
        Optional.empty(), Optional.empty(), new EnumMap<>(Deviation.class));
  }

  private static Length positive(Length length, String name) {
    if (!Objects.requireNonNull(length, name).isPositive()) {
      throw new IllegalArgumentException(name + " must be more than 0 mm, but was " + length);
    }
    return length;
  }

  /**
   * Returns a copy with readings of one kind in place of those it has.
   *
   * @param deviation what was read, not null
   * @param values sizes, or deviations without a sign; in order; at most {@value #MOST}; not null
   * @return the copy, not null
   * @throws IllegalArgumentException if a size is less than half or more than one and a half times of what it should be, a deviation is negative
   *     or more than {@link #GREATEST}, or there is no nominal size to hold a size against
   */
  public DeviationReadings with(Deviation deviation, List<Length> values) {
    Objects.requireNonNull(deviation, "deviation");
    if (values.size() > MOST) {
      throw new IllegalArgumentException("at most " + MOST + " readings of the " + deviation.words() + " are taken, but there are "
          + values.size());
    }
    if (deviation.isSize() && nominals(deviation).isEmpty()) {
      throw new IllegalArgumentException("the nominal " + deviation.code() + " of the boards is not known; give the readings with the boards"
          + " as they are sold");
    }
    for (int i = 0; i < values.size(); i++) {
      check(deviation, values.get(i), i + 1);
    }
    EnumMap<Deviation, List<Length>> copy = new EnumMap<>(read);
    copy.remove(deviation);
    if (!values.isEmpty()) {
      copy.put(deviation, List.copyOf(values));
    }
    return new DeviationReadings(width, construction, thickness, lengths, panel, area, moisture, copy);
  }

  private void check(Deviation deviation, Length value, int number) {
    if (deviation.isSize()) {
      Length nominal = nominal(deviation, value);
      Length twice = value.multipliedBy(2);
      if (twice.compareTo(nominal) < 0 || twice.compareTo(nominal.multipliedBy(3)) > 0) {
        throw new IllegalArgumentException("reading " + number + " of the " + deviation.words() + " is " + value + ", but they should have "
            + nominal + "; is the unit right?");
      }
    } else if (value.isNegative() || value.compareTo(GREATEST) > 0) {
      throw new IllegalArgumentException("reading " + number + " of " + deviation.words() + " must be from 0 mm to " + GREATEST + ", but was "
          + value + "; give it without a sign, and is the unit right?");
    }
  }

  /**
   * Returns a copy that knows the size of the panels.
   *
   * @param size the side of a panel, more than zero, not null
   * @return the copy, not null
   * @throws IllegalArgumentException if it is not more than zero
   */
  public DeviationReadings withPanel(Length size) {
    return new DeviationReadings(width, construction, thickness, lengths, Optional.of(positive(size, "size of the panels")), area, moisture, read);
  }

  /**
   * Returns a copy that knows over how much floor the readings were taken.
   *
   * @param floor the area, more than zero, not null
   * @return the copy, not null
   * @throws IllegalArgumentException if it is not more than zero
   */
  public DeviationReadings over(Area floor) {
    if (!floor.isPositive()) {
      throw new IllegalArgumentException("the area of the floor must be more than 0 m², but was " + floor);
    }
    return new DeviationReadings(width, construction, thickness, lengths, panel, Optional.of(floor), moisture, read);
  }

  /**
   * Returns a copy that knows the moisture content of the wood when it was measured.
   *
   * @param percent from 0 to 30, not null
   * @return the copy, not null
   * @throws IllegalArgumentException if it is out of range
   */
  public DeviationReadings atMoisture(BigDecimal percent) {
    if (percent.signum() < 0 || percent.compareTo(BigDecimal.valueOf(30)) > 0) {
      throw new IllegalArgumentException("the moisture content of boards must be from 0 % to 30 %, but was " + percent.toPlainString()
          + " %; check the meter's setting");
    }
    return new DeviationReadings(width, construction, thickness, lengths, panel, area, Optional.of(percent), read);
  }

  /**
   * Returns the width that the boards should have.
   *
   * @return the nominal width, not null
   */
  public Length width() {
    return width;
  }

  /**
   * Returns the readings by kind, in the order of {@link Deviation}.
   *
   * @return an unmodifiable map without empty lists, not null
   */
  public Map<Deviation, List<Length>> all() {
    return Collections.unmodifiableMap(new EnumMap<>(read));
  }

  /**
   * Returns the readings of one kind.
   *
   * @param deviation what was read, not null
   * @return an unmodifiable list in the order given, perhaps empty, not null
   */
  public List<Length> of(Deviation deviation) {
    return read.getOrDefault(Objects.requireNonNull(deviation, "deviation"), List.of());
  }

  /**
   * Returns the size of the panels.
   *
   * @return the side, empty if it is not known; not null
   */
  public Optional<Length> panel() {
    return panel;
  }

  /**
   * Returns over how much floor the readings were taken.
   *
   * @return the area, empty if it is not known; not null
   */
  public Optional<Area> area() {
    return area;
  }

  /**
   * Returns the moisture content of the wood when it was measured.
   *
   * @return in per cent, empty if it is not known; not null
   */
  public Optional<BigDecimal> moisture() {
    return moisture;
  }

  /** How the boards are made, if they are known as goods. */
  Optional<Construction> construction() {
    return construction;
  }

  /** The size that a reading should have: of several lengths the nearest, the longer of two as near. */
  Length nominal(Deviation deviation, Length value) {
    return nominals(deviation).stream().reduce((one, other) ->
        value.minus(other).abs().compareTo(value.minus(one).abs()) < 0 ? other : one).orElseThrow();
  }

  private List<Length> nominals(Deviation deviation) {
    return switch (deviation) {
      case WIDTH -> List.of(width);
      case THICKNESS -> thickness.map(List::of).orElse(List.of());
      default -> lengths;
    };
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof DeviationReadings other && parts().equals(other.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  private List<Object> parts() {
    return List.of(width, construction, thickness, lengths, panel, area, moisture, read);
  }

  /**
   * Returns one line.
   *
   * @return for example {@code "12 readings of 2 kinds, boards 185 mm wide"}, not null
   */
  @Override
  public String toString() {
    int count = read.values().stream().mapToInt(List::size).sum();
    return count + (count == 1 ? " reading" : " readings") + " of " + read.size() + (read.size() == 1 ? " kind" : " kinds") + ", boards "
        + width + " wide";
  }

  private Object writeReplace() {
    return new Form(width, construction.orElse(null), thickness.orElse(null), lengths, panel.orElse(null), area.orElse(null),
        moisture.orElse(null), new LinkedHashMap<>(read));
  }

  /** Readings are written in their form alone. */
  private Object readResolve() {
    throw new IllegalStateException("readings are read in the form in which they were written");
  }

  /** What is written: an optional part by itself, or null. Reading goes through every check. */
  private record Form(Length width, Construction construction, Length thickness, List<Length> lengths, Length panel, Area area,
      BigDecimal moisture, Map<Deviation, List<Length>> read) implements Serializable {

    private Object readResolve() {
      lengths.forEach(length -> positive(length, "length of the boards"));
      Optional<Length> thick = Optional.ofNullable(thickness).map(length -> positive(length, "thickness of the boards"));
      DeviationReadings made = new DeviationReadings(positive(width, "width of the boards"), Optional.ofNullable(construction), thick,
          lengths, Optional.empty(), Optional.empty(), Optional.empty(), new EnumMap<>(Deviation.class));
      made = panel == null ? made : made.withPanel(panel);
      made = area == null ? made : made.over(area);
      made = moisture == null ? made : made.atMoisture(moisture);
      for (Map.Entry<Deviation, List<Length>> entry : read.entrySet()) {
        made = made.with(entry.getKey(), entry.getValue());
      }
      return made;
    }
  }
}
