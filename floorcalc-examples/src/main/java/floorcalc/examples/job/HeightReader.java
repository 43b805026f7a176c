package floorcalc.examples.job;

import floorcalc.flatness.GapReading;
import floorcalc.flatness.ProfilePoint;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.site.HeightLine;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the height readings of a room's {@code site}: lines, heights all over the room, gaps under a straightedge. */
final class HeightReader {
  private HeightReader() {
  }

  static List<HeightLine> lines(Fields site) {
    List<HeightLine> lines = new ArrayList<>();
    Set<String> names = new HashSet<>();
    long heights = 0;
    for (Value item : items(site, "lines", "lines of readings")) {
      Optional<HeightLine> line = item.object("a line of readings", List.of("name", "spacing", "at", "heights"))
          .flatMap(HeightReader::line);
      if (line.isPresent() && !names.add(line.get().name())) {
        item.mistakes().add(Mistake.Kind.GIVEN_TWICE, item.place().field("name"), "found \"" + line.get().name()
            + "\" a second time; give each line of a room a name of its own");
      }
      heights += line.map(one -> one.readings().size()).orElse(0);
      line.ifPresent(lines::add);
    }
    if (heights > JobLimits.READINGS) {
      site.mistake(Mistake.Kind.TOO_LARGE, "lines", "found " + heights + " heights in all; must be at most " + JobLimits.READINGS + " in a room");
    }
    return lines;
  }

  private static Optional<HeightLine> line(Fields line) {
    long before = line.mistakes().count();
    Optional<String> name = line.requiredText("name");
    List<Length> heights = lengths(line.required("heights", "an array of lengths")
        .map(list -> list.items("lengths", 2, JobLimits.READINGS)).orElse(List.of()), LengthRange.HEIGHT);
    Optional<Length> spacing = line.optionalLength("spacing", LengthRange.SIZE);
    List<Value> at = items(line, "at", "distances");
    List<Length> places = lengths(at, LengthRange.SIZE_OR_ZERO);
    if (line.has("spacing") == line.has("at")) {
      line.mistake("spacing", line.has("at") ? "stands beside at; give one of the two"
          : "missing; give spacing, or at with the distance of each reading");
    } else if (line.has("at") && line.mistakes().count() == before && places.size() != heights.size()) {
      line.mistake("at", "found " + places.size() + " distances; must be as many as heights, " + heights.size());
    }
    if (line.mistakes().count() > before) {
      return Optional.empty();
    }
    if (spacing.isPresent()) {
      return Optional.of(HeightLine.ofEqualSpacing(name.orElseThrow(), spacing.get(), heights));
    }
    List<ProfilePoint> readings = new ArrayList<>();
    for (int i = 0; i < heights.size(); i++) {
      readings.add(new ProfilePoint(places.get(i), heights.get(i)));
    }
    return Optional.of(new HeightLine(name.orElseThrow(), readings));
  }

  static List<SpotLevel> heights(Fields site) {
    List<SpotLevel> spots = new ArrayList<>();
    for (Value point : items(site, "heights", "points [x, y, z]")) {
      List<Value> parts = point.items("lengths: x, y and the height z", 3, 3);
      if (!parts.isEmpty()) {
        Optional<Length> x = parts.get(0).length(LengthRange.ANYWHERE);
        Optional<Length> y = parts.get(1).length(LengthRange.ANYWHERE);
        Optional<Length> z = parts.get(2).length(LengthRange.HEIGHT);
        if (x.isPresent() && y.isPresent() && z.isPresent()) {
          spots.add(SpotLevel.of(x.get(), y.get(), z.get()));
        }
      }
    }
    return spots;
  }

  static List<GapReading> straightedge(Fields site) {
    List<GapReading> gaps = new ArrayList<>();
    for (Value item : items(site, "straightedge", "readings")) {
      item.object("a straightedge reading", List.of("span", "gap", "at")).flatMap(HeightReader::gap).ifPresent(gaps::add);
    }
    return gaps;
  }

  private static Optional<GapReading> gap(Fields reading) {
    Optional<Length> span = reading.requiredLength("span", LengthRange.SIZE);
    Optional<Length> gap = reading.requiredLength("gap", LengthRange.OPENING);
    String at = reading.optional("at").flatMap(RingReader::point).map(Point::toString).orElse("");
    if (span.isEmpty() || gap.isEmpty()) {
      return Optional.empty();
    }
    if (gap.get().multipliedBy(2).compareTo(span.get()) > 0) {
      reading.mistake("gap", "found " + gap.get() + "; must be at most half of the span, "
          + span.get().dividedBy(2, RoundingMode.FLOOR) + "; check the units");
      return Optional.empty();
    }
    return Optional.of(new GapReading(span.get(), gap.get(), at));
  }

  private static List<Length> lengths(List<Value> values, LengthRange range) {
    List<Length> lengths = new ArrayList<>(values.size());
    values.forEach(value -> value.length(range).ifPresent(lengths::add));
    return lengths;
  }

  private static List<Value> items(Fields fields, String name, String what) {
    return fields.optional(name).map(list -> list.items(what, 0, JobLimits.READINGS)).orElse(List.of());
  }
}
