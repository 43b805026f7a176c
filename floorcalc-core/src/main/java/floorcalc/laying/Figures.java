package floorcalc.laying;

import floorcalc.joints.JointLayout;
import floorcalc.joints.JointPair;
import floorcalc.measure.Length;
import floorcalc.plan.PlanFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The figures that tell floors apart which take as many boards. */
final class Figures {
  private Figures() {}

  static PlanFigures of(JobLaying laying) {
    List<JointLayout> joints = new ArrayList<>();
    List<BayPlan> bays = laying.bays();
    for (int i = 0; i < bays.size(); i++) {
      joints.add(Breaches.jointsOf(bays.get(i).bay(), laying.pieces().get(i)));
    }
    return of(laying, joints);
  }

  /**
   * The figures of a floor of which the joints are known.
   *
   * @param joints the joints of each bay
   */
  static PlanFigures of(JobLaying laying, List<JointLayout> joints) {
    Optional<Length> offset = joints.stream().flatMap(layout -> layout.smallestOffset().stream()).map(JointPair::offset)
        .reduce(Length::min);
    return new PlanFigures(offset, joints.stream().mapToInt(layout -> layout.inLine().size()).sum(),
        joints.stream().mapToInt(layout -> layout.stairs().size()).sum(), laying.cutting().cuts(),
        laying.cutting().longestLeftover());
  }
}
