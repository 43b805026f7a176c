package floorcalc.examples.job;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads points and rings of corners. */
final class RingReader {
  private RingReader() {
  }

  static Optional<Ring> ring(Value value) {
    long before = value.mistakes().count();
    List<Point> corners = new ArrayList<>();
    for (Value corner : value.items("corners [x, y]", 3, JobLimits.CORNERS)) {
      point(corner).ifPresent(corners::add);
    }
    if (value.mistakes().count() > before) {
      return Optional.empty();
    }
    int last = corners.size() - 1;
    if (corners.get(0).equals(corners.get(last))) {
      value.mistakes().add(Mistake.Kind.GIVEN_TWICE, value.place().item(last), "found the first corner " + corners.get(last)
          + " again; a ring is listed once, its last corner is joined to the first");
      return Optional.empty();
    }
    return Optional.of(Ring.of(corners));
  }

  static Optional<Point> point(Value value) {
    List<Value> parts = value.items("lengths: x to the right, y up", 2, 2);
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    Optional<Length> x = parts.get(0).length(LengthRange.ANYWHERE);
    Optional<Length> y = parts.get(1).length(LengthRange.ANYWHERE);
    return x.isPresent() && y.isPresent() ? Optional.of(Point.of(x.get(), y.get())) : Optional.empty();
  }
}
