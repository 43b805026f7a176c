package floorcalc.audit;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.boards.OffcutUse;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Jobs with one room of a random shape: what a planner may be given. */
final class RandomJobs {
  private RandomJobs() {
  }

  /** Returns the next job that the planner does not refuse. */
  static FloorJob next(Random random) {
    while (true) {
      FloorJob job = job(random);
      if (FloorPlanner.faultsOf(job).isEmpty()) {
        return job;
      }
    }
  }

  private static FloorJob job(Random random) {
    List<PackContent> pack = new ArrayList<>();
    pack.add(new PackContent(Length.ofMillimetres(800 + random.nextInt(1800)), 1 + random.nextInt(12)));
    if (random.nextInt(4) == 0) {
      pack.add(new PackContent(Length.ofMillimetres(600 + random.nextInt(199)), 1 + random.nextInt(4)));
    }
    BoardGoods goods = BoardGoods.mixed(pack, Length.ofMillimetres(60 + random.nextInt(250)),
        Length.ofMillimetres(10 + random.nextInt(8)));
    long gap = random.nextInt(8) == 0 ? 0 : random.nextBoolean() ? 10_000_000 : (long) (random.nextDouble() * 30e6);
    double degrees = random.nextInt(3) == 0 ? 90 * random.nextInt(4) : random.nextDouble() * 360;
    return FloorJob.of("random", goods)
        .rules(RuleSet.COMMON_PRACTICE.forBoard(goods.thickness(), goods.coverWidth())
            .with(LayingRules.EXPANSION_GAP, Length.ofNanometres(gap), Source.GIVEN))
        .direction(random.nextInt(4) == 0 ? DirectionChoice.LONGEST_WALL
            : DirectionChoice.of(Direction.fromDegrees(degrees)))
        .offcuts(random.nextInt(3) == 0 ? OffcutUse.CUT_AHEAD : OffcutUse.IN_LAYING_ORDER)
        .room(Room.of("Study", outline(random))).build();
  }

  static Outline outline(Random random) {
    return switch (random.nextInt(5)) {
      case 0 -> Outline.of(star(random, 3 + random.nextInt(38), 500 + random.nextInt(4000), 0, 0, 0.3));
      case 1 -> Outline.of(skyline(random, 1 + random.nextInt(8)));
      case 2 -> turned(random, rectangle(300 + random.nextInt(6000), 300 + random.nextInt(6000)));
      case 3 -> turned(random, beads(random, 2 + random.nextInt(4)));
      default -> withColumns(random);
    };
  }

  private static Outline turned(Random random, Ring ring) {
    return Outline.of(Direction.fromDegrees(random.nextInt(3) == 0 ? 0 : random.nextDouble() * 360).toRoom(ring));
  }

  private static Ring rectangle(long width, long height) {
    return HandPlan.ring(0, 0, width, 0, width, height, 0, height);
  }

  /** Corners in all directions around a middle, some near, some far. */
  private static Ring star(Random random, int corners, double size, double x, double y, double least) {
    double[] angles = random.doubles(corners).map(part -> part * 2 * Math.PI).sorted().toArray();
    double[] places = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double reach = size * (least + (1 - least) * random.nextDouble());
      places[2 * i] = x + reach * Math.cos(angles[i]);
      places[2 * i + 1] = y + reach * Math.sin(angles[i]);
    }
    return HandPlan.ring(places);
  }

  /** Recesses and projections along one wall, at right angles. */
  private static Ring skyline(Random random, int parts) {
    List<Double> places = new ArrayList<>(Arrays.asList(0.0, 0.0));
    double x = 0;
    List<Double> top = new ArrayList<>();
    for (int i = 0; i < parts; i++) {
      double y = 200 + random.nextInt(3000);
      double right = x + 100 + random.nextInt(1500);
      Collections.addAll(top, y, x, y, right);
      x = right;
    }
    Collections.addAll(places, x, 0.0);
    Collections.reverse(top);
    places.addAll(top);
    return HandPlan.ring(places.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** Chambers in a line, joined by necks that the gap may or may not close. */
  private static Ring beads(Random random, int chambers) {
    List<Double> low = new ArrayList<>();
    List<Double> high = new ArrayList<>();
    double x = 0;
    for (int i = 0; i < 2 * chambers - 1; i++) {
      boolean neck = i % 2 == 1;
      double height = neck ? 5.5 + random.nextInt(40) : 500 + random.nextInt(2000);
      double width = neck ? 50 + random.nextInt(400) : 300 + random.nextInt(2000);
      Collections.addAll(low, x, -0.4 * height, x + width, -0.4 * height);
      Collections.addAll(high, 0.6 * height, x, 0.6 * height, x + width);
      x += width;
    }
    Collections.reverse(high);
    low.addAll(high);
    return HandPlan.ring(low.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static Outline withColumns(Random random) {
    List<Ring> columns = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      if (random.nextInt(3) == 0) {
        columns.add(star(random, 3 + random.nextInt(5), 60 + random.nextInt(400), 700 + i % 3 * 1200.0,
            700 + i / 3 * 1200.0, 0.2));
      }
    }
    return Outline.of(rectangle(3800, 3800), columns);
  }
}
