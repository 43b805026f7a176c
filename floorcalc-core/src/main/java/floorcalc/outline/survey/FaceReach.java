package floorcalc.outline.survey;

import java.util.ArrayList;
import java.util.List;

/** By how much the area changes with each offset and each rise: millimetres of wall face that it moves. */
final class FaceReach {
  private FaceReach() {}

  static List<Double> of(Survey survey) {
    List<Double> reaches = new ArrayList<>();
    for (int wall = 1; wall <= survey.size(); wall++) {
      double length = survey.walls().get(wall - 1).length().toMillimetres();
      if (!survey.walls().get(wall - 1).rise().isZero()) {
        reaches.add(length * 2 / 3);
      }
      int number = wall;
      double[] at = survey.offsets().stream().filter(offset -> offset.wall() == number)
          .mapToDouble(offset -> offset.at().toMillimetres()).toArray();
      for (int k = 0; k < at.length; k++) {
        double before = k == 0 ? 0 : at[k - 1];
        double after = k == at.length - 1 ? length : at[k + 1];
        reaches.add((after - before) / 2);
      }
    }
    return reaches;
  }
}
