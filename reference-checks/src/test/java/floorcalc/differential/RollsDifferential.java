package floorcalc.differential;

import floorcalc.differential.BarsProgram.Bar;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.underlay.CoveredRoom;
import floorcalc.underlay.RollGoods;
import floorcalc.underlay.RollOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/** Strips of underlay cut from rolls: the fewest rolls for the strips that the core lays, and that the bound is not above it. */
final class RollsDifferential extends Comparison {
  private static final double LARGEST_ROOM = 4e9;
  private static final int MOST_STRIPS = 8;

  RollsDifferential(int cases) {
    super("fewest rolls for strips, and the bound on them", Library.OJALGO, cases, RollOrder.class);
  }

  @Override
  public String unit() {
    return "rolls";
  }

  @Override
  public double tolerance() {
    return 0;
  }

  @Override
  public String argument() {
    return "both sides find the least number and prove it";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    RandomOutlines outlines = new RandomOutlines(321, LARGEST_ROOM);
    SplittableRandom random = new SplittableRandom(322);
    int proven = 0;
    int compared = 0;
    for (int k = 0; k < upTo; k++) {
      List<CoveredRoom> rooms = new ArrayList<>();
      for (int i = 0; i < 2; i++) {
        Outline room = outlines.next(RandomOutlines.Place.NEAR);
        rooms.add(CoveredRoom.oneWay("room " + i, room, Direction.fromDegrees(random.nextInt(180))));
      }
      RollGoods goods = RollGoods.underlay("underlay", Length.ofMillimetres(random.nextLong(900, 1200)),
          Length.ofMillimetres(random.nextLong(6000, 12_000)));
      RollOrder order = RollOrder.of(goods, rooms).value();
      Map<Long, Integer> strips = new TreeMap<>();
      order.layouts().stream().flatMap(layout -> layout.cutLengths().stream())
          .forEach(length -> strips.merge(length.toNanometres(), 1, Integer::sum));
      if (strips.size() > MOST_STRIPS) {
        continue;
      }
      long[] lengths = strips.keySet().stream().mapToLong(Long::longValue).toArray();
      int[] counts = strips.values().stream().mapToInt(Integer::intValue).toArray();
      double fewest = Math.rint(new BarsProgram(lengths, counts, 0, List.of(new Bar(goods.length().toNanometres(), 1, 0))).least());
      worst.nextCase();
      compared++;
      double mine = answers == Answers.AS_GIVEN ? order.rolls()
          : Math.ceil(order.netArea().toSquareMetres() / goods.area().toSquareMetres());
      worst.see(mine - fewest, () -> goods + " " + strips + " of " + Wkt.write(rooms.get(0).outline()));
      worst.see(Math.max(0, order.rollsAtLeast() - fewest), () -> "bound " + goods + " " + strips);
      proven += order.isProvenFewest() ? 1 : 0;
    }
    worst.note(proven + " of " + compared + " proven by the core");
  }
}
