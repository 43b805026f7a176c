package floorcalc.levels;

import floorcalc.flatness.SpanLimit;
import floorcalc.flatness.ToleranceSet;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongBinaryOperator;

/** Grids of levels for tests. */
final class Grids {
  private Grids() {}

  static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  /** Heights in millimetres, first row first. */
  static Levels of(long along, long between, String... rows) {
    List<List<Length>> heights = new ArrayList<>();
    for (String row : rows) {
      heights.add(List.of(row.split(" ")).stream().map(Length::ofMillimetres).toList());
    }
    return Levels.ofGrid(Point.ofMillimetres(0, 0), Length.ofMillimetres(along), Length.ofMillimetres(between), heights);
  }

  /** The same places with a height in nanometres added that depends on column and row. */
  static Levels plus(Levels levels, LongBinaryOperator added) {
    LevelGrid grid = levels.grid();
    List<SpotLevel> spots = new ArrayList<>(levels.spots());
    for (int c = 0; c < grid.xs.length; c++) {
      for (int r = 0; r < grid.ys.length; r++) {
        int node = grid.node(c, r);
        if (node >= 0) {
          SpotLevel spot = spots.get(node);
          spots.set(node, new SpotLevel(spot.place(),
              spot.height().plus(Length.ofNanometres(added.applyAsLong(c, r)))));
        }
      }
    }
    return Levels.of(spots);
  }

  static ToleranceSet set(String gap, String span, String... more) {
    List<SpanLimit> limits = new ArrayList<>(List.of(SpanLimit.of(mm(span), mm(gap), Source.GIVEN)));
    for (int i = 0; i < more.length; i += 2) {
      limits.add(SpanLimit.of(mm(more[i + 1]), mm(more[i]), Source.GIVEN));
    }
    return ToleranceSet.of("of a test", "any floor", limits);
  }
}
