package floorcalc.fuzz;

import java.util.ArrayList;
import java.util.List;

/** Writes the survey of a room by chance: walls and diagonals of a ring, a little wrong, some of them left out. */
final class SurveyGrammar {
  private final JobGrammar job;
  private final Chance chance;

  SurveyGrammar(JobGrammar job) {
    this.job = job;
    this.chance = job.chance();
  }

  String text() {
    long[] ring = job.rings().sound();
    int walls = ring.length / 2;
    List<String> written = new ArrayList<>();
    for (int i = 0; i < walls; i++) {
      StringBuilder wall = new StringBuilder("{\"length\": ").append(job.length(distance(ring, i, (i + 1) % walls)));
      job.optional(wall, 3, "turn", turn(ring, i));
      written.add(wall.append("}").toString());
    }
    StringBuilder text = new StringBuilder("{\"walls\": [").append(String.join(", ", written)).append("]");
    if (!chance.oneIn(4)) {
      text.append(", \"ties\": ").append(ties(ring));
    }
    job.optional(text, 5, "rightAngles", job.choice("true", "false"));
    job.optional(text, 5, "offsets", "[{\"wall\": " + job.whole(1, walls) + ", \"at\": " + job.millimetres(1, 900) + ", \"distance\": "
        + job.millimetres(-30, 30) + "}]");
    job.optional(text, 6, "arcs", "[{\"wall\": " + job.whole(1, walls) + ", \"rise\": " + job.millimetres(5, 400) + "}]");
    job.optional(text, 6, "uncertainty", "{\"length\": " + job.decimal(0.5, 5) + ", \"turn\": " + job.decimal(0.1, 3) + "}");
    return text.append("}").toString();
  }

  private String turn(long[] ring, int wall) {
    int walls = ring.length / 2;
    int a = 2 * wall;
    int b = 2 * ((wall + 1) % walls);
    int c = 2 * ((wall + 2) % walls);
    double before = StrictMath.atan2(ring[b + 1] - ring[a + 1], ring[b] - ring[a]);
    double after = StrictMath.atan2(ring[c + 1] - ring[b + 1], ring[c] - ring[b]);
    double degrees = StrictMath.toDegrees(after - before);
    degrees = degrees > 180 ? degrees - 360 : degrees <= -180 ? degrees + 360 : degrees;
    return job.value(chance.oneIn(4) ? degrees > 0 ? "\"left\"" : "\"right\"" : java.math.BigDecimal.valueOf(Math.round(degrees * 10), 1).toPlainString());
  }

  private String ties(long[] ring) {
    int corners = ring.length / 2;
    List<String> ties = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      for (int j = i + 2; j < corners; j++) {
        if (ties.size() < 40 && !chance.oneIn(6)) {
          ties.add("{\"from\": " + job.value(Integer.toString(i + 1)) + ", \"to\": " + job.value(Integer.toString(j + 1)) + ", \"length\": "
              + job.length(distance(ring, i, j)) + "}");
        }
      }
    }
    return "[" + String.join(", ", ties) + "]";
  }

  /** A distance as it is read: to the millimetre, some millimetres off, now and then a slip. */
  private long distance(long[] ring, int one, int other) {
    double apart = StrictMath.hypot((double) ring[2 * one] - ring[2 * other], (double) ring[2 * one + 1] - ring[2 * other + 1]);
    long read = StrictMath.round(apart / Rings.MM) + chance.between(-2, 2);
    return (chance.oneIn(60) ? read + chance.any(-100L, 100L, 1000L, -10L) : read) * Rings.MM;
  }
}
