package floorcalc.site;

import floorcalc.flatness.GapReading;
import floorcalc.flatness.ToleranceSet;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import floorcalc.moisture.Acclimatisation;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.BoardMoistureLimits;
import floorcalc.moisture.ClimateLimits;
import floorcalc.moisture.EquilibriumMoisture;
import floorcalc.moisture.Heating;
import floorcalc.moisture.MoistureLimits;
import floorcalc.moisture.MoistureReading;
import floorcalc.moisture.Percent;
import floorcalc.movement.Pinning;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What was read in one room before its floor is laid, and by whose limits it is to be judged. Nothing has to be given: what is
 * left out comes out as not measured. Immutable and thread-safe.
 * <p>
 * Start from {@link #NONE}; each {@code with…} returns a copy and replaces what was given before. Places are in the coordinates of
 * the room. Where no limits are chosen, common practice judges the air and the flatness, and readings of the subfloor are held against
 * the first set that has a limit for their method, see {@link floorcalc.moisture.SubfloorMoisture}.
 *
 * @since 0.1
 */
public final class SiteReadings implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Nothing was read. */
  public static final SiteReadings NONE = new SiteReadings(new SiteParts());

  private final SiteParts parts;

  private SiteReadings(SiteParts parts) {
    this.parts = parts;
  }

  private SiteReadings with(Consumer<SiteParts> change) {
    SiteParts copy = new SiteParts(parts);
    change.accept(copy);
    return new SiteReadings(copy);
  }

  /**
   * Returns a copy with the air of the room.
   *
   * @param measured the air as measured, from -20 °C to 100 °C, not null
   * @return the copy, not null
   * @throws IllegalArgumentException if the temperature is out of bounds
   */
  public SiteReadings withAir(AirClimate measured) {
    Objects.requireNonNull(measured, "measured");
    EquilibriumMoisture.of(measured);
    return with(copy -> copy.air = measured);
  }

  /**
   * Returns a copy with the air that is expected in use.
   *
   * @param driest the air in the driest season, from -20 °C to 100 °C, not null
   * @param dampest the air in the dampest season, likewise, not null
   * @return the copy, not null
   * @throws IllegalArgumentException if a temperature is out of bounds
   */
  public SiteReadings withSeasons(AirClimate driest, AirClimate dampest) {
    Objects.requireNonNull(driest, "driest");
    Objects.requireNonNull(dampest, "dampest");
    EquilibriumMoisture.of(driest);
    EquilibriumMoisture.of(dampest);
    return with(copy -> {
      copy.driest = driest;
      copy.dampest = dampest;
    });
  }

  /**
   * Returns a copy with moisture readings of the subfloor.
   *
   * @param readings the readings by any methods, not null
   * @return the copy, not null
   */
  public SiteReadings withSubfloorMoisture(List<MoistureReading> readings) {
    Objects.requireNonNull(readings, "readings");
    return with(copy -> copy.subfloorMoisture = List.copyOf(readings));
  }

  /**
   * Returns a copy with moisture readings of the boards.
   *
   * @param readings moisture contents by a meter set to the species, each from 0 % to 30 %, not null
   * @return the copy, not null
   * @throws IllegalArgumentException if a reading is out of bounds
   */
  public SiteReadings withBoardMoisture(List<Percent> readings) {
    Acclimatisation.notStated().boards(readings);
    return with(copy -> copy.boardMoisture = List.copyOf(readings));
  }

  /**
   * Returns a copy with the days that the packs have been in the room. They pass only together with readings that agree.
   *
   * @param days from 0 to 3650, not null
   * @return the copy, not null
   * @throws IllegalArgumentException if the days are out of bounds
   */
  public SiteReadings withDaysInRoom(BigDecimal days) {
    Objects.requireNonNull(days, "days");
    Acclimatisation.notStated().days(days);
    return with(copy -> copy.days = days);
  }

  /** {@return a copy whose packs were kept closed, not null} */
  public SiteReadings withPacksClosed() {
    return with(copy -> copy.packs = SiteParts.Packs.CLOSED);
  }

  /** {@return a copy whose packs were opened, not null} */
  public SiteReadings withPacksOpened() {
    return with(copy -> copy.packs = SiteParts.Packs.OPENED);
  }

  /**
   * Returns a copy that says whether the floor is heated from below.
   *
   * @param stated heated, not heated or not stated; not null
   * @return the copy, not null
   */
  public SiteReadings withHeating(Heating stated) {
    Objects.requireNonNull(stated, "stated");
    return with(copy -> copy.heating = stated);
  }

  /**
   * Returns a copy with lines of heights.
   *
   * @param read the lines, not null
   * @return the copy, not null
   */
  public SiteReadings withLines(List<HeightLine> read) {
    Objects.requireNonNull(read, "read");
    return with(copy -> copy.lines = List.copyOf(read));
  }

  /**
   * Returns a copy with heights read all over the room, on a grid or scattered, over one datum.
   *
   * @param read the heights, not null
   * @return the copy, not null
   */
  public SiteReadings withHeights(List<SpotLevel> read) {
    Objects.requireNonNull(read, "read");
    return with(copy -> copy.heights = List.copyOf(read));
  }

  /**
   * Returns a copy with gaps read by hand under a straightedge.
   *
   * @param read the gaps, not null
   * @return the copy, not null
   */
  public SiteReadings withStraightedge(List<GapReading> read) {
    Objects.requireNonNull(read, "read");
    return with(copy -> copy.gaps = List.copyOf(read));
  }

  /**
   * Returns a copy with the trim that is to cover the gap.
   *
   * @param fromWall how far from the wall it reaches, square to it, not negative, not null
   * @return the copy, not null
   * @throws IllegalArgumentException if the length is negative
   */
  public SiteReadings withTrimCover(Length fromWall) {
    if (Objects.requireNonNull(fromWall, "fromWall").isNegative()) {
      throw new IllegalArgumentException("cover of the trim must not be negative, but was " + fromWall);
    }
    return with(copy -> copy.trimCover = fromWall);
  }

  /**
   * Returns a copy with what holds the floor.
   *
   * @param found what was found by somebody who looked, not null
   * @return the copy, not null
   */
  public SiteReadings withPinning(Pinning found) {
    Objects.requireNonNull(found, "found");
    return with(copy -> copy.pinning = found);
  }

  /**
   * Returns a copy whose flatness is judged by another set than common practice.
   *
   * @param set the set of limits, not null
   * @return the copy, not null
   */
  public SiteReadings withFlatness(ToleranceSet set) {
    Objects.requireNonNull(set, "set");
    return with(copy -> copy.flatness = set);
  }

  /**
   * Returns a copy whose air is judged by another range than common practice.
   *
   * @param limits the range, not null
   * @return the copy, not null
   */
  public SiteReadings withAirLimits(ClimateLimits limits) {
    Objects.requireNonNull(limits, "limits");
    return with(copy -> copy.airLimits = limits);
  }

  /**
   * Returns a copy whose subfloor is judged by one set, whatever the method.
   *
   * @param limits the set of limits, not null
   * @return the copy, not null
   */
  public SiteReadings withSubfloorLimits(MoistureLimits limits) {
    Objects.requireNonNull(limits, "limits");
    return with(copy -> copy.subfloorLimits = limits);
  }

  /**
   * Returns a copy whose boards are judged by a range too, such as that on the pack.
   *
   * @param limits the range, not null
   * @return the copy, not null
   */
  public SiteReadings withBoardLimits(BoardMoistureLimits limits) {
    Objects.requireNonNull(limits, "limits");
    return with(copy -> copy.boardLimits = limits);
  }

  /** {@return the air of the room, empty if it was not measured; not null} */
  public Optional<AirClimate> air() {
    return Optional.ofNullable(parts.air);
  }

  /** {@return the moisture readings of the subfloor, empty if there are none; not null} */
  public List<MoistureReading> subfloorMoisture() {
    return parts.subfloorMoisture;
  }

  /** {@return the moisture readings of the boards, empty if there are none; not null} */
  public List<Percent> boardMoisture() {
    return parts.boardMoisture;
  }

  /** {@return whether the floor is heated from below, not heated or not stated; not null} */
  public Heating heating() {
    return parts.heating;
  }

  /** {@return the lines of heights, empty if there are none; not null} */
  public List<HeightLine> lines() {
    return parts.lines;
  }

  /** {@return the heights read all over the room, empty if there are none; not null} */
  public List<SpotLevel> heights() {
    return parts.heights;
  }

  /** {@return the gaps read by hand, empty if there are none; not null} */
  public List<GapReading> straightedge() {
    return parts.gaps;
  }

  /** {@return the set that the flatness is judged by, common practice if none was chosen; not null} */
  public ToleranceSet flatness() {
    return parts.flatness;
  }

  /** All of it, for the checks. */
  SiteParts parts() {
    return parts;
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof SiteReadings other && parts.all().equals(other.parts.all());
  }

  @Override
  public int hashCode() {
    return parts.all().hashCode();
  }

  /**
   * Returns one line.
   *
   * @return how many readings there are, for example {@code "5 readings of moisture, 42 of heights and gaps"}, not null
   */
  @Override
  public String toString() {
    int heights = parts.lines.stream().mapToInt(line -> line.readings().size()).sum() + parts.heights.size()
        + parts.gaps.size();
    return parts.subfloorMoisture.size() + parts.boardMoisture.size() + " readings of moisture, " + heights
        + " of heights and gaps";
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    SiteReadings read = NONE.withSubfloorMoisture(parts.subfloorMoisture).withBoardMoisture(parts.boardMoisture).withHeating(parts.heating)
        .withLines(parts.lines).withHeights(parts.heights).withStraightedge(parts.gaps).withFlatness(parts.flatness)
        .withAirLimits(parts.airLimits);
    read = parts.air == null ? read : read.withAir(parts.air);
    read = parts.driest == null && parts.dampest == null ? read : read.withSeasons(parts.driest, parts.dampest);
    read = parts.days == null ? read : read.withDaysInRoom(parts.days);
    read = switch (parts.packs) {
      case CLOSED -> read.withPacksClosed();
      case OPENED -> read.withPacksOpened();
      case NOT_STATED -> read;
    };
    read = parts.trimCover == null ? read : read.withTrimCover(parts.trimCover);
    read = parts.pinning == null ? read : read.withPinning(parts.pinning);
    read = parts.subfloorLimits == null ? read : read.withSubfloorLimits(parts.subfloorLimits);
    return parts.boardLimits == null ? read : read.withBoardLimits(parts.boardLimits);
  }
}
