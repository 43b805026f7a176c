package floorcalc.outline.survey;

import floorcalc.outline.network.Adjustment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The shapes that fit a survey: found roughly, each adjusted, those kept that fit about as well as the best. */
final class Shapes {
  /** Shapes nearer to each other than this, in millimetres, are one. */
  private static final double SAME = 0.5;
  /** By how many standard deviations a shape may fit worse than the best and still be possible. */
  private static final double AS_GOOD = 5;
  /** Of how many shapes that are not fixed the one with the most nearly square corners is the sketch. */
  private static final int SKETCHES = 30;
  /** The most shapes that are adjusted. */
  private static final int MOST = 24;
  /** Layouts that are tried without a length. */
  private static final int FEW = 3;

  /** One shape with its adjustment. */
  record Shape(Adjustment adjustment, Layout layout) {}

  private final Survey survey;
  private final SurveyNetwork network;

  private Shapes(Survey survey, SurveyNetwork network) {
    this.survey = survey;
    this.network = network;
  }

  /** The possible shapes, the best fitting first; those that cross themselves only where no other fits; may be empty. */
  static List<Shape> of(Survey survey, SurveyNetwork network) {
    return new Shapes(survey, network).search();
  }

  /** The shapes without one of the lengths, walls first, then ties, of the few that fit best; the network must be without it, too. */
  static List<Shape> without(Survey survey, SurveyNetwork others, int length) {
    List<Layout> few = (survey.corners() == Survey.Corners.RIGHT_ANGLES ? Walk.layoutsWithout(survey, length)
        : Placing.layoutsWithout(survey, length)).stream().filter(Layout::isSimple).limit(FEW).map(Layout::leftHanded).toList();
    return possible(new Shapes(survey, others).adjusted(few));
  }

  private List<Shape> search() {
    if (survey.corners() == Survey.Corners.RIGHT_ANGLES) {
      return possible(adjusted(Walk.layouts(survey)));
    }
    QuickFit quick = new QuickFit(survey);
    List<Layout> fits = new ArrayList<>();
    List<Layout> sketches = new ArrayList<>();
    Layout any = null;
    // A shape that is folded flat somewhere looks loose though its measurements fix others: one that is fixed decides.
    boolean rigid = false;
    for (Layout rough : Placing.layouts(survey)) {
      Layout fit = quick.from(rough.leftHanded()).orElse(null);
      if (fit == null) {
        continue;
      }
      if (isRoom(fit) && isNew(fit, fits)) {
        fits.add(fit);
        if (!rigid && fit.isSimple() && fits(fit)) {
          rigid = !isLoose(fit);
          sketches.add(fit);
        }
        if (!rigid && sketches.size() == SKETCHES) {
          break;
        }
      }
      any = any == null || fit.misfit() < any.misfit() ? fit : any;
    }
    if (!rigid && !sketches.isEmpty()) {
      return adjusted(List.of(sketches.stream().min(Comparator.comparingDouble(Layout::oddness)).orElseThrow()));
    }
    if (fits.isEmpty()) {
      return any != null && isLoose(any) ? List.of(new Shape(network.fixed(any), any)) : List.of();
    }
    List<Layout> sound = fits.stream().filter(Layout::isSimple).toList();
    List<Layout> sorted = (sound.isEmpty() ? fits : sound).stream().sorted(Comparator.comparingDouble(Layout::misfit)).toList();
    double limit = StrictMath.sqrt(sorted.get(0).misfit()) + AS_GOOD + 1;
    return possible(adjusted(sorted.stream().limit(MOST).filter(fit -> StrictMath.sqrt(fit.misfit()) <= limit).toList()));
  }

  /** Whether a shape meets what was measured about as well as errors of the tape allow. */
  private boolean fits(Layout layout) {
    return StrictMath.sqrt(layout.misfit()) <= AS_GOOD + StrictMath.sqrt(network.size());
  }

  /** Whether the corners can move without any measurement noticing. */
  private boolean isLoose(Layout layout) {
    return hasExtent(layout) && network.fixed(layout).looseness() > 0;
  }

  private static boolean isNew(Layout fit, List<Layout> fits) {
    return fits.stream().noneMatch(other -> other.isNear(fit, SAME));
  }

  /** Whether a shape runs the right way round and turns as was said. */
  private boolean isRoom(Layout layout) {
    return layout.area() > 0 && layout.x(1) > 0
        && IntStream.range(0, layout.size()).noneMatch(corner -> layout.turnsOtherwise(corner, survey));
  }

  private List<Shape> adjusted(List<Layout> rough) {
    List<Shape> shapes = new ArrayList<>();
    for (Layout about : rough) {
      if (!hasExtent(about)) {
        continue;
      }
      Adjustment adjusted = network.fixed(about);
      Layout result = SurveyNetwork.layout(adjusted);
      if (adjusted.isAtRest() && isRoom(result) && shapes.stream().noneMatch(shape -> shape.layout().isNear(result, SAME))) {
        shapes.add(new Shape(adjusted, result));
      }
    }
    List<Shape> sound = shapes.stream().filter(shape -> shape.layout().isSimple()).toList();
    return sound.isEmpty() ? shapes : sound;
  }

  /** Whether no two neighbouring corners fall together, so that it can be adjusted. */
  private boolean hasExtent(Layout layout) {
    for (int i = 0; i < layout.size(); i++) {
      if (layout.distance(i, i + 1) == 0) {
        return false;
      }
    }
    return survey.ties().stream().allMatch(tie -> layout.distance(tie.from() - 1, tie.to() - 1) > 0);
  }

  private static List<Shape> possible(List<Shape> shapes) {
    Comparator<Shape> byFit = Comparator.<Shape>comparingInt(shape -> shape.adjustment().looseness())
        .thenComparingDouble(shape -> shape.adjustment().squares());
    List<Shape> sorted = shapes.stream().sorted(byFit).toList();
    if (sorted.isEmpty()) {
      return sorted;
    }
    double limit = StrictMath.sqrt(sorted.get(0).adjustment().squares()) + AS_GOOD;
    int looseness = sorted.get(0).adjustment().looseness();
    return sorted.stream().filter(shape -> StrictMath.sqrt(shape.adjustment().squares()) <= limit
        && shape.adjustment().looseness() == looseness).toList();
  }
}
