package floorcalc.outline.survey;

import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.outline.network.Adjustment;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;

/** What to measure more: the ties that tell most, of those with nothing in between if there are any. */
final class Proposals {
  /** A tie that changes by less than this part of what the best one changes tells too little to be preferred for being free. */
  private static final double WORTH = 0.2;

  private Proposals() {}

  /** The fewest ties that fix the shape: one for each way in which it can still move. */
  static List<ToMeasure> toFix(Survey survey, SurveyNetwork network, Shapes.Shape shape) {
    List<ToMeasure> proposals = new ArrayList<>();
    SurveyNetwork more = network;
    Adjustment adjustment = shape.adjustment();
    Layout layout = shape.layout();
    while (adjustment.looseness() > 0 && proposals.size() < survey.size()) {
      Adjustment now = adjustment;
      int[] pair = best(layout, (a, b) -> change(now, layout, a, b));
      proposals.add(tie(ToMeasure.Why.FIX_SHAPE, pair, layout, ""));
      more = more.with(pair[0] + 1, pair[1] + 1, layout.distance(pair[0], pair[1]), 1);
      adjustment = more.fixed(layout);
    }
    return proposals;
  }

  private static double change(Adjustment adjustment, Layout layout, int a, int b) {
    double[] slopes = Slopes.ofDistance(layout, a, b);
    double sum = 0;
    for (int way = 0; way < adjustment.looseness(); way++) {
      double[] move = adjustment.looseWay(way);
      double change = 0;
      for (int i = 0; i < slopes.length; i++) {
        change += slopes[i] * move[i];
      }
      sum += change * change;
    }
    return StrictMath.sqrt(sum);
  }

  /** The tie whose lengths in the possible shapes are farthest apart. */
  static ToMeasure toTellApart(List<Shapes.Shape> shapes) {
    Layout first = shapes.get(0).layout();
    int[] pair = best(first, (a, b) -> {
      double[] lengths = shapes.stream().mapToDouble(shape -> shape.layout().distance(a, b)).sorted().toArray();
      double least = Double.MAX_VALUE;
      for (int i = 1; i < lengths.length; i++) {
        least = Math.min(least, lengths[i] - lengths[i - 1]);
      }
      return least;
    });
    StringBuilder lengths = new StringBuilder();
    for (int i = 0; i < shapes.size(); i++) {
      lengths.append(i == 0 ? "" : i == shapes.size() - 1 ? " or " : ", ")
          .append(metres(shapes.get(i).layout().distance(pair[0], pair[1])));
    }
    return new ToMeasure(ToMeasure.Why.TELL_APART, pair[0] + 1, pair[1] + 1, length(first, pair),
        words(pair) + ": it is " + lengths + " long and tells which shape the room has"
            + turns(shapes.get(0).layout(), shapes.get(1).layout()));
  }

  private static String turns(Layout one, Layout other) {
    List<String> corners = new ArrayList<>();
    for (int i = 0; i < one.size(); i++) {
      if (one.turn(i) > 0 != other.turn(i) > 0) {
        corners.add(Integer.toString(i + 1));
      }
    }
    return corners.isEmpty() ? "" : "; or say whether the wall turns left or right at corner " + String.join(", ", corners);
  }

  /** The tie that the survey knows least of. */
  static ToMeasure toCheck(Adjustment adjustment, Layout layout) {
    int[] pair = best(layout, (a, b) -> adjustment.deviation(Slopes.ofDistance(layout, a, b)));
    return tie(ToMeasure.Why.CHECK, pair, layout, "it would show a slip that nothing shows now");
  }

  static List<ToMeasure> again(Misfit misfit) {
    return misfit.oneOf().stream().map(suspect -> {
      Measured measured = suspect.measured();
      boolean turn = measured.kind() == Measured.Kind.TURN;
      String text = "measure " + measured.name() + " again: read "
          + (turn ? degrees(measured.read()) : length(measured.read())) + ", the others say "
          + (turn ? degrees(suspect.expected()) : length(suspect.expected()))
          + (suspect.slip().isEmpty() ? "" : "; " + suspect.slip());
      return new ToMeasure(ToMeasure.Why.MEASURE_AGAIN, measured.from(), measured.to(),
          turn ? Length.ZERO : Length.fromMillimetres(suspect.expected(), RoundingMode.HALF_EVEN), text);
    }).toList();
  }

  private static ToMeasure tie(ToMeasure.Why why, int[] pair, Layout layout, String reason) {
    return new ToMeasure(why, pair[0] + 1, pair[1] + 1, length(layout, pair),
        words(pair) + ", about " + metres(layout.distance(pair[0], pair[1])) + (reason.isEmpty() ? "" : ": " + reason));
  }

  private static String words(int[] pair) {
    return "measure corner " + (pair[0] + 1) + " to corner " + (pair[1] + 1);
  }

  private static Length length(Layout layout, int[] pair) {
    return Length.fromMillimetres(layout.distance(pair[0], pair[1]), RoundingMode.HALF_EVEN);
  }

  /** The pair of corners with the greatest worth; one with nothing in between if it is not worth much less. */
  private static int[] best(Layout layout, ToDoubleBiFunction<Integer, Integer> worth) {
    int[] best = null;
    int[] clear = null;
    double most = -1;
    double mostClear = -1;
    for (int a = 0; a < layout.size(); a++) {
      for (int b = a + 1; b < layout.size(); b++) {
        double value = layout.distance(a, b) == 0 ? 0 : worth.applyAsDouble(a, b);
        if (best == null || value > most * (1 + 1e-9)) {
          best = new int[] {a, b};
          most = value;
        }
        if ((clear == null || value > mostClear * (1 + 1e-9)) && layout.sees(a, b)) {
          clear = new int[] {a, b};
          mostClear = value;
        }
      }
    }
    return clear != null && mostClear >= WORTH * most ? clear : best;
  }

  static String metres(double millimetres) {
    return PlainNumber.text(millimetres / 1000, 3) + " m";
  }

  static String length(double millimetres) {
    return new BigDecimal(millimetres).setScale(1, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString() + " mm";
  }

  static String degrees(double degrees) {
    return new BigDecimal(degrees).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString() + "°";
  }
}
