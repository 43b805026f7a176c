package floorcalc.underlay;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.underlay.Shadow.Stretch;
import java.util.ArrayList;
import java.util.List;

/** The ways to lay strips on a floor: in each direction allowed, from either side. */
final class StripWays {
  private static final int MOST_STRIPS = 20_000;

  private final CoveredRoom room;
  private final RollGoods roll;
  private final Direction direction;
  private final Shadow shadow;

  private StripWays(CoveredRoom room, RollGoods roll, Direction direction) {
    this.room = room;
    this.roll = roll;
    this.direction = direction;
    this.shadow = new Shadow(direction.toFrame(room.outline()));
  }

  /** All ways, in the order of the directions, from the low side first. */
  static List<StripLayout> of(CoveredRoom room, RollGoods roll) {
    List<StripLayout> ways = new ArrayList<>();
    for (Direction direction : room.ways()) {
      StripWays way = new StripWays(room, roll, direction);
      ways.add(way.fromBelow());
      ways.add(way.fromAbove());
    }
    return ways;
  }

  /** The breadth that strips cover, upturns included. */
  static Length breadth(StripLayout layout) {
    return new StripWays(layout.room(), layout.roll(), layout.direction()).breadth();
  }

  private Length breadth() {
    return Length.ofNanometres(shadow.highest() - shadow.lowest()).plus(roll.upturn().multipliedBy(2));
  }

  private long across() {
    Length over = roll.lap().overlap();
    Length rest = breadth().minus(over);
    long strips = rest.isPositive() ? rest.minus(Length.ofNanometres(1)).dividedBy(roll.width().minus(over)) + 1 : 1;
    if (strips > MOST_STRIPS) {
      throw new IllegalArgumentException(room.name() + " would take " + strips + " strips of " + roll.width() + ", at most "
          + MOST_STRIPS + " are laid; check the outline, the roll and their units");
    }
    return strips;
  }

  private StripLayout fromBelow() {
    return laid(shadow.lowest() - roll.upturn().toNanometres(), pitch());
  }

  private StripLayout fromAbove() {
    return laid(shadow.highest() + roll.upturn().toNanometres() - roll.width().toNanometres(), -pitch());
  }

  private long pitch() {
    return roll.width().minus(roll.lap().overlap()).toNanometres();
  }

  private StripLayout laid(long first, long step) {
    List<RollStrip> strips = new ArrayList<>();
    Length seam = Length.ZERO;
    List<Stretch> before = List.of();
    long across = across();
    for (int number = 1; number <= across; number++) {
      long low = first + step * (number - 1);
      List<Stretch> here = stretches(low);
      for (Stretch stretch : here) {
        strips.add(new RollStrip(number, Length.ofNanometres(stretch.from()), Length.ofNanometres(stretch.to()),
            Length.ofNanometres(low), Length.ofNanometres(low).plus(roll.width())));
      }
      seam = seam.plus(common(before, here));
      before = here;
    }
    StripLayout open = new StripLayout(room, roll, direction, strips, seam);
    long endLaps = strips.stream().mapToLong(strip -> open.parts(strip) - 1).sum();
    return new StripLayout(room, roll, direction, strips, seam.plus(roll.width().multipliedBy(endLaps)));
  }

  /** What a strip has to cover: the floor within it and within an upturn of it, longer by an upturn at both ends. */
  private List<Stretch> stretches(long low) {
    long up = roll.upturn().toNanometres();
    List<Stretch> grown = new ArrayList<>();
    for (Stretch stretch : shadow.between(low - up, low + roll.width().toNanometres() + up)) {
      grown.add(new Stretch(stretch.from() - up, stretch.to() + up));
    }
    return grown;
  }

  private static Length common(List<Stretch> some, List<Stretch> others) {
    long sum = 0;
    int i = 0;
    int j = 0;
    while (i < some.size() && j < others.size()) {
      long from = Math.max(some.get(i).from(), others.get(j).from());
      long to = Math.min(some.get(i).to(), others.get(j).to());
      sum += Math.max(0, to - from);
      if (some.get(i).to() < others.get(j).to()) {
        i++;
      } else {
        j++;
      }
    }
    return Length.ofNanometres(sum);
  }
}
