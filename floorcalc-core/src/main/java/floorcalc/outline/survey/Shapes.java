package floorcalc.outline.survey;

import floorcalc.outline.network.Adjustment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The shapes that fit a survey: found roughly, each adjusted, those kept that fit about as well as the best. */
final class Shapes {
  /** Shapes nearer to each other than this, in millimetres, are one. */
  private static final double SAME = 0.5;
  /** By how many standard deviations a shape may fit worse than the best and still be possible. */
  private static final double AS_GOOD = 5;
  /** A turn smaller than this, in degrees, does not contradict what was said of its side. */
  private static final double STRAIGHT = 10;

  /** One shape with its adjustment. */
  record Shape(Layout about, Adjustment adjustment, Layout layout) {}

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

  private List<Shape> search() {
    List<Layout> rough = survey.corners() == Survey.Corners.RIGHT_ANGLES ? Walk.layouts(survey) : Placing.layouts(survey);
    List<Shape> sound = adjusted(rough.stream().filter(Layout::isSimple).toList());
    if (sound.isEmpty()) {
      sound = adjusted(rough);
    }
    return possible(sound);
  }

  private List<Shape> adjusted(List<Layout> rough) {
    List<Shape> shapes = new ArrayList<>();
    for (Layout layout : rough) {
      Layout about = layout.area() < 0 ? layout.mirrored() : layout;
      if (shapes.stream().noneMatch(shape -> shape.about().isNear(about, SAME)) && hasExtent(about)) {
        Adjustment adjusted = network.fixed(about);
        Layout result = SurveyNetwork.layout(adjusted);
        if (adjusted.isAtRest() && result.area() > 0 && result.x(1) > 0 && turnsAsSaid(result)
            && shapes.stream().noneMatch(shape -> shape.layout().isNear(result, SAME))) {
          shapes.add(new Shape(about, adjusted, result));
        }
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

  private boolean turnsAsSaid(Layout layout) {
    for (int i = 0; i < layout.size(); i++) {
      Turn turn = survey.walls().get(Math.floorMod(i - 1, layout.size())).turn();
      double degrees = layout.turn(i);
      if (turn.side() == Turn.Side.LEFT && degrees < -STRAIGHT || turn.side() == Turn.Side.RIGHT && degrees > STRAIGHT) {
        return false;
      }
    }
    return true;
  }

  private static List<Shape> possible(List<Shape> shapes) {
    Comparator<Shape> byFit = Comparator.<Shape>comparingInt(shape -> shape.adjustment().looseness())
        .thenComparingDouble(shape -> shape.adjustment().squares());
    List<Shape> sorted = shapes.stream().sorted(byFit).toList();
    if (sorted.isEmpty()) {
      return sorted;
    }
    double limit = StrictMath.sqrt(sorted.get(0).adjustment().squares()) + AS_GOOD;
    return sorted.stream().filter(shape -> StrictMath.sqrt(shape.adjustment().squares()) <= limit).toList();
  }
}
