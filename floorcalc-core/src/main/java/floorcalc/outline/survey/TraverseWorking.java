package floorcalc.outline.survey;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Works a traverse out, step by step. */
final class TraverseWorking {
  private static final int MOST = 1000;

  private final List<Course> courses;
  private final ClosingLimit limit;
  private final List<Step> steps = new ArrayList<>();

  TraverseWorking(List<Course> courses, ClosingLimit limit) {
    if (courses.size() < 3 || courses.size() > MOST) {
      throw new IllegalArgumentException("a traverse has from 3 to " + MOST + " courses, but " + courses.size() + " were given");
    }
    this.courses = courses;
    this.limit = limit;
  }

  Calculated<Traverse> calculated() {
    List<Length> latitudes = new ArrayList<>();
    List<Length> departures = new ArrayList<>();
    for (int i = 0; i < courses.size(); i++) {
      latitudes.add(part("latitude-", i, "up", "y = L * t", "t", "cosine", courses.get(i).cosine()));
      departures.add(part("departure-", i, "to the right", "x = L * t", "t", "sine", courses.get(i).sine()));
    }
    Length up = sum("latitude-error", "How far up does the walk end of where it began?", "y", "latitude", latitudes);
    Length right = sum("departure-error", "How far to the right does the walk end of where it began?", "x", "departure", departures);
    Length way = sum("perimeter", "How long is the way?", "L", "course", courses.stream().map(Course::length).toList());
    List<Point> places = places(latitudes, departures, up, right, way);
    Traverse traverse = new Traverse(courses, latitudes, departures, up, right, places);
    steps.add(new Step("closing-error", "How far does the walk end from where it began?",
        "e = sqrt(x * x + y * y), rounded to the nearest nanometre", List.of(Term.of("x", "departure error", right),
        Term.of("y", "latitude error", up)), traverse.closingError(), Source.DEFINITION));
    traverse.ratio().ifPresent(ratio -> steps.add(new Step("closing-ratio", "One part of how many of the way is that?",
        "N = floor(P / e)", List.of(Term.of("P", "way", way), Term.of("e", "closing error", traverse.closingError())), ratio,
        Source.DEFINITION)));
    return Calculated.of(traverse, steps, findings(traverse));
  }

  private Length part(String id, int i, String where, String formula, String symbol, String function, BigDecimal share) {
    Course course = courses.get(i);
    Length part = Sides.length(Sides.decimal(course.length()).multiply(share), RoundingMode.HALF_EVEN);
    steps.add(new Step(id + (i + 1), "How far " + where + " does course " + (i + 1) + " go?",
        formula + ", rounded to the nearest nanometre", List.of(Term.of("L", "length", course.length()),
        Term.of(symbol, function + " of the azimuth " + course.azimuth(), share)), part, Source.DEFINITION));
    return part;
  }

  private Length sum(String id, String question, String symbol, String meaning, List<Length> parts) {
    Length sum = Sides.sum(parts);
    String formula = IntStream.rangeClosed(1, parts.size()).mapToObj(i -> symbol + i).collect(Collectors.joining(" + "));
    List<Term> terms = IntStream.range(0, parts.size())
        .mapToObj(i -> Term.of(symbol + (i + 1), meaning + " " + (i + 1), parts.get(i))).toList();
    steps.add(new Step(id, question, "s = " + formula, terms, sum, Source.DEFINITION));
    return sum;
  }

  /** The compass rule: each place is moved by the share of the closing error that its share of the way has. */
  private List<Point> places(List<Length> latitudes, List<Length> departures, Length up, Length right, Length way) {
    List<Point> places = new ArrayList<>(List.of(Point.of(Length.ZERO, Length.ZERO)));
    Length y = Length.ZERO;
    Length x = Length.ZERO;
    Length walked = Length.ZERO;
    for (int i = 0; i + 1 < courses.size(); i++) {
      y = y.plus(latitudes.get(i));
      x = x.plus(departures.get(i));
      walked = walked.plus(courses.get(i).length());
      places.add(Point.of(place("x", i, x, right, walked, way), place("y", i, y, up, walked, way)));
    }
    return places;
  }

  private Length place(String axis, int i, Length walkedTo, Length error, Length walked, Length way) {
    Length place = Sides.length(Sides.decimal(walkedTo).subtract(Sides.decimal(error).multiply(Sides.decimal(walked))
        .divide(Sides.decimal(way), Sides.DIGITS)), RoundingMode.HALF_EVEN);
    steps.add(new Step("corner-" + (i + 2) + "-" + axis, "Where is corner " + (i + 2) + " along " + axis + " by the compass rule?",
        "c = s - e * W / P, rounded to the nearest nanometre", List.of(
        Term.of("s", "sum of the " + (axis.equals("x") ? "departures" : "latitudes") + " so far", walkedTo),
        Term.of("e", "error along " + axis, error), Term.of("W", "way so far", walked), Term.of("P", "whole way", way)), place,
        Source.DEFINITION));
    return place;
  }

  private List<Finding> findings(Traverse traverse) {
    if (traverse.ratio().isEmpty() || traverse.ratio().getAsLong() >= limit.ratio()) {
      return List.of();
    }
    return List.of(new Finding("closes-badly", Severity.WARNING, "", "the walk ends "
        + Sides.rounded(traverse.closingError().toMillimetres(), 1) + " mm from where it began, 1 in "
        + traverse.ratio().getAsLong() + " of " + Sides.rounded(traverse.perimeter().toMillimetres() / 1000, 3)
        + " m, where 1 in " + limit.ratio() + " is asked for; sharing such an error out hides it: measure again", limit.source()));
  }
}
