package floorcalc.underlay;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.working.Calculated;
import floorcalc.working.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How strips off a roll lie on one floor: strip beside strip, each as long as the floor is within it.
 * <p>
 * The floor, grown by the upturn {@code u} on all sides as if the walls were laid flat, is {@code B} wide across the strips; strips
 * of width {@code w} that overlap by {@code o} are {@code n = ceil((B - o) / (w - o))}. A strip is as long as what it has to cover; where a
 * void or a recess interrupts the floor over the whole width of a strip, it is several. A strip that is longer than a roll is made up
 * of parts with an end lap.
 * <p>
 * Lengths are exact in rooms along the axes; elsewhere, and where a wall crosses a strip at a slant, each end is rounded outwards to a
 * whole nanometre. Immutable and thread-safe. See {@code docs/underlay.md}.
 *
 * @since 0.1
 */
public final class StripLayout {
  private final CoveredRoom room;
  private final RollGoods roll;
  private final Direction direction;
  private final List<RollStrip> strips;
  private final Length seam;

  StripLayout(CoveredRoom room, RollGoods roll, Direction direction, List<RollStrip> strips, Length seam) {
    this.room = room;
    this.roll = roll;
    this.direction = direction;
    this.strips = List.copyOf(strips);
    this.seam = seam;
  }

  /**
   * Lays strips in one direction, from the side that takes less length.
   *
   * @param name the name of the floor, not null
   * @param outline the walls and voids, not null, sound
   * @param along the direction in which strips run, not null
   * @param roll the goods, not null
   * @return the strips with the steps {@code breadth-to-cover}, {@code strips-across}, {@code strip-length} and
   *     {@code seam-length}; not null
   * @throws IllegalArgumentException if the outline is not sound or more than 20 000 strips would be needed
   */
  public static Calculated<StripLayout> of(String name, Outline outline, Direction along, RollGoods roll) {
    Objects.requireNonNull(along, "along");
    Objects.requireNonNull(roll, "roll");
    StripLayout layout = StripWays.of(CoveredRoom.oneWay(name, outline, along), roll).stream()
        .reduce((best, other) -> other.length().compareTo(best.length()) < 0 ? other : best).orElseThrow();
    return Calculated.of(layout, layout.steps());
  }

  List<Step> steps() {
    return StripWorking.of(this);
  }

  /**
   * Returns the floor that is covered.
   *
   * @return the floor, not null
   */
  public CoveredRoom room() {
    return room;
  }

  /**
   * Returns the goods.
   *
   * @return the goods, not null
   */
  public RollGoods roll() {
    return roll;
  }

  /**
   * Returns the direction in which strips run.
   *
   * @return the direction, not null
   */
  public Direction direction() {
    return direction;
  }

  /**
   * Returns the strips, from the side laid first, in the frame in which they run along x.
   *
   * @return an unmodifiable list, not null, not empty
   */
  public List<RollStrip> strips() {
    return strips;
  }

  /**
   * Returns the length of all strips as they lie, end laps not counted.
   *
   * @return the length, not null
   */
  public Length length() {
    return strips.stream().map(RollStrip::length).reduce(Length.ZERO, Length::plus);
  }

  /**
   * Returns the length of the seams between strips side by side, and across strips that are made up of parts.
   *
   * @return the length, not null
   */
  public Length seamLength() {
    return seam;
  }

  /**
   * Returns what is cut from rolls: each strip in one piece, or in as few parts as a roll gives, each with an end lap over the next.
   *
   * @return the lengths in the order of the strips, none longer than a roll; not null, not empty
   */
  public List<Length> cutLengths() {
    List<Length> lengths = new ArrayList<>();
    for (RollStrip strip : strips) {
      long parts = parts(strip);
      Length all = strip.length().plus(roll.lap().overlap().multipliedBy(parts - 1));
      for (int part = 1; part < parts; part++) {
        lengths.add(roll.length());
      }
      lengths.add(all.minus(roll.length().multipliedBy(parts - 1)));
    }
    return List.copyOf(lengths);
  }

  /** As few parts as cover a strip, each after the first losing a lap. */
  long parts(RollStrip strip) {
    Length lap = roll.lap().overlap();
    if (strip.length().compareTo(roll.length()) <= 0) {
      return 1;
    }
    return strip.length().minus(lap).minus(Length.ofNanometres(1)).dividedBy(roll.length().minus(lap)) + 1;
  }

  /**
   * Returns the area of the floor, which is what glue has to cover: without laps and upturns.
   *
   * @return the area, not null
   */
  public Area netArea() {
    return room.outline().area();
  }

  /**
   * Returns the area of all strips as they are cut, before they are trimmed along the walls.
   *
   * @return the area, not null
   */
  public Area cutArea() {
    return cutLengths().stream().reduce(Length.ZERO, Length::plus).times(roll.width());
  }
}
