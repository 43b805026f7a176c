package floorcalc.outline.survey;

import floorcalc.outline.network.AdjustedObservation;
import floorcalc.outline.network.Adjustment;
import floorcalc.outline.network.Observation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds a length that is so far off that no room has all of them: each is left out in turn, and the shapes are looked for anew.
 * Those without which all others fit are under suspicion.
 */
final class GrossSlips {
  /** Of surveys with more lengths it would take long. */
  private static final int MOST_LENGTHS = 40;

  private final Survey survey;
  private final SurveyNetwork network;

  private GrossSlips(Survey survey) {
    this.survey = survey;
    this.network = new SurveyNetwork(survey);
  }

  /** Returns the one misfit that explains that there is no shape; empty if leaving out one length does not help. */
  static List<Misfit> of(Survey survey) {
    return new GrossSlips(survey).search();
  }

  /** What is left without a length. */
  private record Without(int length, Shapes.Shape shape) {}

  private List<Misfit> search() {
    int lengths = survey.size() + survey.ties().size();
    if (lengths > MOST_LENGTHS) {
      return List.of();
    }
    List<Without> fitting = new ArrayList<>();
    for (int i = 0; i < lengths; i++) {
      SurveyNetwork others = network.without(i);
      List<Shapes.Shape> shapes = Shapes.without(survey, others, i);
      if (!shapes.isEmpty() && fits(shapes.get(0))) {
        fitting.add(new Without(i, shapes.get(0)));
      }
    }
    if (fitting.isEmpty()) {
      return List.of();
    }
    double least = fitting.stream().mapToDouble(one -> one.shape.adjustment().squares()).min().orElseThrow();
    List<Suspect> suspects = fitting.stream().filter(one -> one.shape.adjustment().squares() < least + Misfits.NO_DIFFERENCE)
        .map(this::suspect)
        .sorted(Comparator.<Suspect>comparingInt(one -> one.slip().isEmpty() ? 1 : 0)
            .thenComparingLong(one -> -StrictMath.round(StrictMath.abs(one.normalisedResidual()) * 1000)))
        .toList();
    return List.of(new Misfit(suspects));
  }

  /** Whether a shape is fixed and checked by what is left, and nothing of it is off by more than usual. */
  private static boolean fits(Shapes.Shape shape) {
    Adjustment adjustment = shape.adjustment();
    return adjustment.looseness() == 0 && adjustment.redundancy() > 0 && shape.layout().isSimple()
        && adjustment.observations().stream()
            .allMatch(one -> StrictMath.abs(one.normalisedResidual().orElse(0)) <= Misfit.LIMIT);
  }

  private Suspect suspect(Without without) {
    Observation observation = network.observation(without.length);
    int from = Integer.parseInt(observation.from());
    int to = Integer.parseInt(observation.to());
    Layout layout = without.shape.layout();
    double expected = layout.distance(from - 1, to - 1);
    double deviation = without.shape.adjustment().deviation(Slopes.ofDistance(layout, from - 1, to - 1));
    double own = observation.deviation() * observation.deviation();
    double share = own / (own + deviation * deviation);
    double residual = share * (expected - observation.value());
    Measured measured = new Measured(without.length < survey.size() ? Measured.Kind.WALL : Measured.Kind.TIE, from, to,
        new AdjustedObservation(observation, observation.value() + residual, residual,
            observation.deviation() * StrictMath.sqrt(1 - share), share));
    return new Suspect(measured, expected, deviation, new Slips(survey).of(measured, expected, deviation, layout));
  }
}
