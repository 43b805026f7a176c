package floorcalc.outline.survey;

import floorcalc.outline.network.AdjustedObservation;
import floorcalc.outline.network.Adjustment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Finds measurements that do not fit: the one with the greatest normalised residual first, then, without it, the next.
 * <p>
 * Leaving a measurement out lessens the sum of squares by the square of its normalised residual. All that lessen it nearly
 * as much as the first are under the same suspicion.
 */
final class Misfits {
  /** What makes no difference between two sums of squares: the 99 % point of chi-square with one degree, from memory. */
  static final double NO_DIFFERENCE = 6.63;

  private final Survey survey;
  private final Layout about;
  private final Slips slips;

  private Misfits(Survey survey, Layout about) {
    this.survey = survey;
    this.about = about;
    this.slips = new Slips(survey);
  }

  static List<Misfit> of(Survey survey, Shapes.Shape shape) {
    return new Misfits(survey, shape.layout()).search(shape.adjustment());
  }

  private List<Misfit> search(Adjustment all) {
    List<Misfit> misfits = new ArrayList<>();
    SurveyNetwork network = new SurveyNetwork(survey);
    Adjustment adjustment = all;
    int most = all.redundancy();
    while (misfits.size() < most) {
      List<Suspect> oneOf = suspects(network, adjustment);
      if (oneOf.isEmpty()) {
        break;
      }
      misfits.add(new Misfit(oneOf));
      network = network.without(oneOf.get(0).measured());
      adjustment = network.fixed(about);
      if (adjustment.looseness() > 0 || !adjustment.isAtRest()) {
        break;
      }
    }
    return misfits;
  }

  private List<Suspect> suspects(SurveyNetwork network, Adjustment adjustment) {
    List<Measured> measured = network.measured(adjustment);
    double greatest = measured.stream().mapToDouble(Misfits::square).max().orElse(0);
    if (greatest <= Misfit.LIMIT * Misfit.LIMIT) {
      return List.of();
    }
    Stream<Measured> alike = measured.stream()
        .filter(one -> square(one) > Misfit.LIMIT * Misfit.LIMIT && square(one) > greatest - NO_DIFFERENCE);
    return alike.map(one -> suspect(one, network))
        .sorted(Comparator.<Suspect>comparingInt(one -> one.slip().isEmpty() ? 1 : 0)
            .thenComparingLong(one -> -StrictMath.round(square(one.measured()) * 1000)))
        .toList();
  }

  private static double square(Measured measured) {
    double residual = measured.result().normalisedResidual().orElse(0);
    return residual * residual;
  }

  /** What the others say of a measurement, worked out again without it. */
  private Suspect suspect(Measured measured, SurveyNetwork network) {
    AdjustedObservation result = measured.result();
    Adjustment others = network.without(measured).fixed(about);
    Layout layout = SurveyNetwork.layout(others);
    double expected;
    double deviation;
    if (measured.kind() == Measured.Kind.TURN) {
      expected = layout.turn(measured.from() - 1);
      deviation = result.expectedDeviation().orElseThrow();
    } else {
      expected = layout.distance(measured.from() - 1, measured.to() - 1);
      deviation = others.deviation(Slopes.ofDistance(layout, measured.from() - 1, measured.to() - 1));
    }
    return new Suspect(measured, expected, deviation, slips.of(measured, expected, deviation, layout));
  }
}
