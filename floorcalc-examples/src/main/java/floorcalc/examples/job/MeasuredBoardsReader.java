package floorcalc.examples.job;

import floorcalc.boards.BoardGoods;
import floorcalc.deviations.Deviation;
import floorcalc.deviations.DeviationLimit;
import floorcalc.deviations.DeviationReadings;
import floorcalc.deviations.DeviationSet;
import floorcalc.deviations.MeasuredBoards;
import floorcalc.deviations.Stage;
import floorcalc.measure.Length;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what was {@code measured} of a sample of the boards. */
final class MeasuredBoardsReader {
  private static final Map<String, Deviation> LISTS = new LinkedHashMap<>();
  private static final Map<String, Deviation> OWN = new LinkedHashMap<>();
  private static final BigDecimal DAMPEST = BigDecimal.valueOf(30);
  private static final String LIMITS = "the name of a set of deviations of goods, or an object with what the goods' papers permit";

  static {
    LISTS.put("widths", Deviation.WIDTH);
    LISTS.put("thicknesses", Deviation.THICKNESS);
    LISTS.put("lengths", Deviation.LENGTH);
    LISTS.put("outOfSquare", Deviation.OUT_OF_SQUARE);
    LISTS.put("matchPosition", Deviation.MATCH_POSITION);
    LISTS.put("tongueFit", Deviation.TONGUE_FIT);
    LISTS.put("lipping", Deviation.LIPPING);
    OWN.put("width", Deviation.WIDTH);
    OWN.put("thickness", Deviation.THICKNESS);
    OWN.put("length", Deviation.LENGTH);
    OWN.put("outOfSquare", Deviation.OUT_OF_SQUARE);
    OWN.put("matchPosition", Deviation.MATCH_POSITION);
    OWN.put("tongueFit", Deviation.TONGUE_FIT);
    OWN.put("lipping", Deviation.LIPPING);
  }

  private MeasuredBoardsReader() {
  }

  /** What was measured; without the goods' own sizes only its form is checked. */
  static Optional<MeasuredBoards> read(Value value, Optional<BoardGoods> goods) {
    List<String> fields = new ArrayList<>(LISTS.keySet());
    fields.addAll(List.of("moisture", "limits"));
    return value.object("what was measured of a sample of the boards", fields).flatMap(measured -> measured(measured, goods));
  }

  private static Optional<MeasuredBoards> measured(Fields measured, Optional<BoardGoods> goods) {
    long before = measured.mistakes().count();
    DeviationReadings readings = goods.map(DeviationReadings::of).orElse(null);
    for (Map.Entry<String, Deviation> list : LISTS.entrySet()) {
      List<Length> values = lengths(measured.optional(list.getKey()), list.getValue(), readings);
      if (readings != null && measured.mistakes().count() == before) {
        readings = readings.with(list.getValue(), values);
      }
    }
    Optional<BigDecimal> moisture = measured.optional("moisture")
        .flatMap(typed -> typed.number(BigDecimal.ZERO, DAMPEST, ", in % by a meter set to the wood"));
    Optional<DeviationSet> limits = measured.required("limits", LIMITS).flatMap(MeasuredBoardsReader::limits);
    if (readings == null || limits.isEmpty() || measured.mistakes().count() > before) {
      return Optional.empty();
    }
    return Optional.of(new MeasuredBoards(moisture.map(readings::atMoisture).orElse(readings), limits.get()));
  }

  private static List<Length> lengths(Optional<Value> list, Deviation deviation, DeviationReadings sizes) {
    List<Length> lengths = new ArrayList<>();
    list.ifPresent(array -> {
      for (Value item : array.items("lengths", 0, JobLimits.READINGS)) {
        item.length(range(deviation)).filter(length -> fits(item, deviation, length, sizes)).ifPresent(lengths::add);
      }
    });
    return lengths;
  }

  private static boolean fits(Value item, Deviation deviation, Length length, DeviationReadings sizes) {
    if (sizes == null) {
      return true;
    }
    try {
      sizes.with(deviation, List.of(length));
      return true;
    } catch (IllegalArgumentException other) {
      item.refuse("from half to one and a half times the nominal " + deviation.code() + " of the boards; is the unit right?");
      return false;
    }
  }

  private static LengthRange range(Deviation deviation) {
    return switch (deviation) {
      case WIDTH -> LengthRange.COVER_WIDTH;
      case THICKNESS -> LengthRange.THICKNESS;
      case LENGTH -> LengthRange.BOARD_LENGTH;
      default -> LengthRange.OFF;
    };
  }

  private static Optional<DeviationSet> limits(Value typed) {
    if (typed.isObject()) {
      return typed.object("what the goods' papers permit", List.copyOf(OWN.keySet())).flatMap(own -> papers(typed, own));
    }
    Map<String, DeviationSet> sets = new LinkedHashMap<>();
    DeviationSet.all(Stage.GOODS).forEach(set -> sets.put(set.name(), set));
    return typed.choice(sets, "or an object with what the goods' papers permit, such as {\"width\": 0.2}");
  }

  private static Optional<DeviationSet> papers(Value typed, Fields own) {
    List<DeviationLimit> limits = new ArrayList<>();
    long before = own.mistakes().count();
    OWN.forEach((field, deviation) -> own.optionalLength(field, LengthRange.OFF)
        .ifPresent(most -> limits.add(DeviationLimit.atMost(deviation, most, Source.GIVEN))));
    if (own.mistakes().count() > before) {
      return Optional.empty();
    }
    if (limits.isEmpty()) {
      return typed.refuse("an object with at least one of " + String.join(", ", OWN.keySet()));
    }
    return Optional.of(DeviationSet.of("goods' papers", "as the job says", Stage.GOODS, limits));
  }
}
