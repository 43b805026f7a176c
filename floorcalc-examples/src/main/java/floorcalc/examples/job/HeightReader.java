package floorcalc.examples.job;

import java.util.List;

/** Reads the height readings of a room's {@code site}: checks their shape and counts them. */
final class HeightReader {
  private HeightReader() {
  }

  static long lines(Fields site) {
    long count = 0;
    for (Value item : items(site, "lines", "lines of readings")) {
      count += item.object("a line of readings", List.of("name", "spacing", "at", "heights"))
          .map(HeightReader::line).orElse(0L);
    }
    return count;
  }

  private static long line(Fields line) {
    line.requiredText("name");
    List<Value> heights = line.required("heights", "an array of lengths")
        .map(list -> list.items("lengths", 2, JobLimits.READINGS)).orElse(List.of());
    heights.forEach(height -> height.length(LengthRange.HEIGHT));
    line.optionalLength("spacing", LengthRange.SIZE);
    List<Value> at = items(line, "at", "distances");
    at.forEach(distance -> distance.length(LengthRange.SIZE_OR_ZERO));
    if (line.has("spacing") == line.has("at")) {
      line.mistake("spacing", line.has("at") ? "stands beside at; give one of the two"
          : "missing; give spacing, or at with the distance of each reading");
    } else if (line.has("at") && !at.isEmpty() && !heights.isEmpty() && at.size() != heights.size()) {
      line.mistake("at", "found " + at.size() + " distances; must be as many as heights, " + heights.size());
    }
    return heights.size();
  }

  static long heights(Fields site) {
    List<Value> points = items(site, "heights", "points [x, y, z]");
    for (Value point : points) {
      List<Value> parts = point.items("lengths: x, y and the height z", 3, 3);
      for (int i = 0; i < parts.size(); i++) {
        parts.get(i).length(i < 2 ? LengthRange.ANYWHERE : LengthRange.HEIGHT);
      }
    }
    return points.size();
  }

  static long straightedge(Fields site) {
    List<Value> readings = items(site, "straightedge", "readings");
    for (Value item : readings) {
      item.object("a straightedge reading", List.of("span", "gap", "at")).ifPresent(reading -> {
        reading.requiredLength("span", LengthRange.SIZE);
        reading.requiredLength("gap", LengthRange.OPENING);
        reading.optional("at").flatMap(RingReader::point);
      });
    }
    return readings.size();
  }

  private static List<Value> items(Fields fields, String name, String what) {
    return fields.optional(name).map(list -> list.items(what, 0, JobLimits.READINGS)).orElse(List.of());
  }
}
