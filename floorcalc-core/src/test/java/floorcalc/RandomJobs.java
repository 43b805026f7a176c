package floorcalc;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.OffcutUse;
import floorcalc.boards.PackContent;
import floorcalc.joints.JointPattern;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.rows.RowWay;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleKey;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/** Invented jobs: random rooms, boards, rules and choices. */
final class RandomJobs {
  private static final long MM = RandomRooms.MM;

  private RandomJobs() {}

  /** A job that prints itself so that it can be made again. */
  record Case(FloorJob job) {
    Case with(Outline room) {
      return new Case(job.withRooms(List.of(Room.of("Room", room))));
    }

    Case with(DirectionChoice choice) {
      return new Case(job.withDirection(choice));
    }

    Outline outline() {
      return job.rooms().get(0).outline();
    }

    @Override
    public String toString() {
      BoardGoods goods = job.board();
      return job.rooms().stream().map(room -> Wkt.write(room.outline())).collect(Collectors.joining(" and "))
          + "\n  boards " + goods.pack() + " by " + goods.coverWidth() + " (pitch " + goods.laidPitch() + ") by "
          + goods.thickness() + "\n  " + job.rules().all().stream().map(rule -> rule.key().name() + " " + rule.value())
          .collect(Collectors.joining(", ")) + "\n  direction " + job.direction() + ", " + job.offcuts() + ", "
          + job.rowWay() + ", " + job.pattern();
    }
  }

  /** Any job of one room, turned or not, that can be planned. */
  static Arbitrary<Case> any() {
    return jobs(RandomRooms.any().map(room -> (goods, rules) -> room), goods(), rules(), directions());
  }

  /** Jobs whose rooms are as many boards long and wide as fit exactly. */
  static Arbitrary<Case> dividing() {
    Arbitrary<BiFunction<BoardGoods, LayingRules, Outline>> rooms = Combinators.combine(
        Arbitraries.integers().between(1, 3), Arbitraries.integers().between(1, 24)).as((boards, rows) ->
            (goods, rules) -> {
              long gaps = 2 * rules.value(LayingRules.EXPANSION_GAP).toNanometres();
              return RandomRooms.rectangle(boards * goods.longest().toNanometres() + gaps,
                  rows * goods.laidPitch().toNanometres() + gaps);
            });
    return jobs(rooms, goods(), rules(), Arbitraries.of(0, 180).map(RandomJobs::along));
  }

  /** Jobs laid along or square to the axes, in which nothing is rounded by turning. */
  static Arbitrary<Case> alongAxes() {
    return jobs(RandomRooms.straight().map(room -> (goods, rules) -> room), goods(), rules(),
        Arbitraries.of(0, 90, 180, 270).map(RandomJobs::along));
  }

  /** Corridors about 200 m long, laid along. */
  static Arbitrary<Case> corridors() {
    Arbitrary<BoardGoods> long_ = Combinators.combine(RandomRooms.sizes(1200, 2400), RandomRooms.sizes(120, 260))
        .as((length, width) -> BoardGoods.of(Length.ofNanometres(length), Length.ofNanometres(width),
            Length.ofMillimetres(14), 6));
    return jobs(RandomRooms.corridors().map(room -> (goods, rules) -> room), long_, rules(),
        Arbitraries.of(DirectionChoice.LONGEST_WALL, along(0), along(90), along(180)));
  }

  /** Rectangles laid along their first wall with boards of one length, free of patterns. */
  static Arbitrary<Case> rectangles() {
    return jobs(RandomRooms.rectangles().map(room -> (goods, rules) -> room), oneLength(), rules(),
        Arbitraries.just(along(0))).map(made -> new Case(FloorJob.of("Invented floor", made.job().board())
            .rules(made.job().rules()).direction(made.job().direction()).room(made.job().rooms().get(0)).build()));
  }

  static DirectionChoice along(double degrees) {
    return DirectionChoice.of(Direction.fromDegrees(degrees));
  }

  private static Arbitrary<Case> jobs(Arbitrary<BiFunction<BoardGoods, LayingRules, Outline>> rooms,
      Arbitrary<BoardGoods> goods, Arbitrary<LayingRules> rules, Arbitrary<DirectionChoice> directions) {
    Arbitrary<OffcutUse> offcuts = Arbitraries.of(OffcutUse.values());
    Arbitrary<RowWay> ways = Arbitraries.of(RowWay.values());
    return Combinators.combine(rooms, goods, rules, directions, offcuts, ways, patterns())
        .as((room, boards, given, direction, use, way, pattern) -> new Case(FloorJob.of("Invented floor", boards)
            .rules(given).direction(direction).offcuts(use).rowWay(way).pattern(pattern)
            .room(Room.of("Room", room.apply(boards, given))).build()))
        .filter(made -> FloorPlanner.faultsOf(made.job()).isEmpty());
  }

  static Arbitrary<DirectionChoice> directions() {
    return Arbitraries.frequencyOf(
        Tuple.of(4, Arbitraries.just(DirectionChoice.LONGEST_WALL)),
        Tuple.of(3, Arbitraries.of(0, 90, 180, 270).map(RandomJobs::along)),
        Tuple.of(2, Arbitraries.integers().between(0, 719).map(half -> along(half / 2.0))),
        Tuple.of(1, Arbitraries.longs().between(0, 359_999_999_999L).map(nano -> along(nano / 1e9))),
        Tuple.of(1, Arbitraries.just(DirectionChoice.FEWEST_BOARDS)));
  }

  static Arbitrary<JointPattern> patterns() {
    return Arbitraries.frequencyOf(Tuple.of(8, Arbitraries.just(JointPattern.FREE)),
        Tuple.of(1, Arbitraries.of(JointPattern.ofFraction(1, 2), JointPattern.ofFraction(1, 3),
            JointPattern.ofFraction(2, 5))),
        Tuple.of(1, Arbitraries.integers().between(100, 900).map(mm ->
            JointPattern.ofStep(Length.ofMillimetres(mm)))));
  }

  static Arbitrary<BoardGoods> goods() {
    return Arbitraries.frequencyOf(Tuple.of(3, oneLength()), Tuple.of(2, mixedLengths()), Tuple.of(1, narrow()),
        Tuple.of(1, Combinators.combine(oneLength(), Arbitraries.integers().between(-400, 400)).as((goods, off) ->
            goods.withMeasuredStack(10, goods.coverWidth().multipliedBy(10).plus(Length.ofNanometres(off * 10_000L))))));
  }

  static Arbitrary<BoardGoods> oneLength() {
    return Combinators.combine(RandomRooms.sizes(600, 2400), RandomRooms.sizes(90, 300),
        Arbitraries.integers().between(8, 22), Arbitraries.integers().between(1, 10)).as((length, width, thick, perPack) ->
            BoardGoods.of(Length.ofNanometres(length), Length.ofNanometres(width), Length.ofMillimetres(thick), perPack));
  }

  static Arbitrary<BoardGoods> mixedLengths() {
    Arbitrary<Integer> part = Arbitraries.integers().between(1, 18);
    return Combinators.combine(part.set().ofMinSize(2).ofMaxSize(4), RandomRooms.sizes(90, 260),
        Arbitraries.integers().between(8, 22), Arbitraries.integers().between(1, 4)).as((parts, width, thick, perPack) -> {
          List<PackContent> pack = new ArrayList<>();
          int n = perPack;
          for (int p : parts) {
            pack.add(new PackContent(Length.ofMillimetres(600 + 100L * p), n));
            n = n % 4 + 1;
          }
          return BoardGoods.mixed(pack, Length.ofNanometres(width), Length.ofMillimetres(thick));
        });
  }

  /** Boards narrower than the least row, or hardly wider. */
  static Arbitrary<BoardGoods> narrow() {
    return Combinators.combine(RandomRooms.sizes(600, 1500), RandomRooms.sizes(45, 80)).as((length, width) ->
        BoardGoods.of(Length.ofNanometres(length), Length.ofNanometres(width), Length.ofMillimetres(14), 12));
  }

  /** Common practice, or numbers of any kind: without a kerf, without a gap, minimums that no floor can keep. */
  static Arbitrary<LayingRules> rules() {
    Arbitrary<Long> gap = RandomRooms.sizes(0, 20);
    Arbitrary<Long> kerf = RandomRooms.sizes(0, 5);
    Arbitrary<Long> row = Arbitraries.frequencyOf(Tuple.of(2, Arbitraries.just(70 * MM)),
        Tuple.of(1, RandomRooms.sizes(0, 140)));
    Arbitrary<Long> end = Arbitraries.frequencyOf(Tuple.of(2, Arbitraries.just(300 * MM)),
        Tuple.of(2, RandomRooms.sizes(0, 600)), Tuple.of(1, RandomRooms.sizes(500, 2600)));
    Arbitrary<Integer> spare = Arbitraries.of(0, 2, 5, 100);
    return Combinators.combine(gap, kerf, row, end, end, spare).as((g, k, r, e, o, s) -> {
      LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), Length.ofMillimetres(185))
          .with(LayingRules.SPARE_SHARE, BigDecimal.valueOf(s, 2), Source.GIVEN);
      rules = with(rules, LayingRules.EXPANSION_GAP, g);
      rules = with(rules, LayingRules.SAW_KERF, k);
      rules = with(rules, LayingRules.MINIMUM_ROW_WIDTH, r);
      rules = with(rules, LayingRules.MINIMUM_END_PIECE, e);
      return with(rules, LayingRules.MINIMUM_JOINT_OFFSET, o);
    });
  }

  static LayingRules with(LayingRules rules, RuleKey<Length> key, long nanometres) {
    return rules.with(key, Length.ofNanometres(nanometres), Source.GIVEN);
  }
}
