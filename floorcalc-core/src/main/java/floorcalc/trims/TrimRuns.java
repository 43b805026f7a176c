package floorcalc.trims;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.OutlineCheck;
import floorcalc.outline.OutlineFault;
import floorcalc.working.Calculated;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * The runs of skirting or quadrant of one room, wall by wall: the perimeter less the openings.
 * <p>
 * Walls that meet within 5° of straight are one run: there skirting is bent or eased, not mitred (common practice, no source). At a corner
 * of {@code a} degrees on the side of the room a bar {@code t} thick is {@code t * cot(a / 2)} shorter at its face than at the wall;
 * where that is negative, at an outside corner, it is longer. Lengths along walls are those of {@link Outline}, each
 * rounded to the nearest nanometre; so are the differences at corners. Immutable and thread-safe. See {@code docs/skirting.md}.
 *
 * @since 0.1
 */
public final class TrimRuns {
  private final String name;
  private final List<TrimRun> runs;
  private final Length perimeter;
  private final Length openings;
  private final int returns;

  TrimRuns(String name, List<TrimRun> runs, Length perimeter, Length openings, int returns) {
    this.name = name;
    this.runs = List.copyOf(runs);
    this.perimeter = perimeter;
    this.openings = openings;
    this.returns = returns;
  }

  /**
   * Finds the runs of a room.
   *
   * @param name the room's name, not null
   * @param room the walls and voids, not null, sound by {@link OutlineCheck}
   * @param openings what is left out, not null; where two overlap, the stretch counts once
   * @param bars the goods, whose thickness and corners count; not null
   * @return the runs with the steps {@code trim-perimeter}, {@code trim-openings}, {@code trim-net}, {@code trim-at-corners} and
   *     {@code trim-cut}; findings {@code opening-not-at-a-wall}; not null
   * @throws IllegalArgumentException if the outline is not sound
   */
  public static Calculated<TrimRuns> of(String name, Outline room, List<TrimOpening> openings, BarGoods bars) {
    Objects.requireNonNull(room, "room");
    Objects.requireNonNull(openings, "openings");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(bars, "bars");
    List<OutlineFault> faults = OutlineCheck.faultsOf(room);
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException(name + ": the outline is not sound: "
          + faults.stream().map(OutlineFault::message).collect(Collectors.joining(" | ")));
    }
    return new TrimWalk(name, room, List.copyOf(openings), bars).runs();
  }

  /**
   * Returns the room's name.
   *
   * @return the name, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns the runs: along the walls from corner 1, then round each void.
   *
   * @return an unmodifiable list, not null, empty if openings take all walls
   */
  public List<TrimRun> runs() {
    return runs;
  }

  /**
   * Returns the length of the walls that count, those of the voids included where bars run round them.
   *
   * @return the length, not null
   */
  public Length perimeter() {
    return perimeter;
  }

  /**
   * Returns the length of wall that the openings take.
   *
   * @return the length, not null
   */
  public Length openings() {
    return openings;
  }

  /**
   * Returns the net length, at the walls: perimeter less openings, which is the sum of all backs.
   *
   * @return the length, not null
   */
  public Length net() {
    return perimeter.minus(openings);
  }

  /**
   * Returns the short pieces that return to the wall at openings.
   *
   * @return how many, 0 if ends are square
   */
  public int returns() {
    return returns;
  }

  /**
   * Returns how many corners of a kind runs meet in.
   *
   * @param kind the kind of end, not null
   * @return how many; ends at openings are counted singly
   */
  public int corners(TrimEnd.Kind kind) {
    Objects.requireNonNull(kind, "kind");
    long ends = runs.stream().filter(run -> run.end().kind() == kind).count();
    long starts = runs.stream().filter(run -> run.start().kind() == kind).count();
    return (int) (kind == TrimEnd.Kind.OPENING ? starts + ends : Math.max(starts, ends));
  }
}
