package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Limits by the distance between two contacts, with straight lines in between, to the nearest millimetre. */
final class DistanceTable {
  private static final long MILLIMETRE = 1_000_000;

  private final List<SpanLimit> limits;

  /** Distances rise. */
  DistanceTable(List<SpanLimit> limits) {
    this.limits = List.copyOf(limits);
  }

  List<SpanLimit> limits() {
    return limits;
  }

  Optional<SpanLimit> limitAt(Length distance) {
    SpanLimit below = null;
    for (SpanLimit next : limits) {
      int order = distance.compareTo(next.span());
      if (order <= 0) {
        if (below == null && order < 0) {
          return Optional.empty();
        }
        return Optional.of(SpanLimit.of(distance, order == 0 ? next.gap() : between(below, next, distance), next.source()));
      }
      below = next;
    }
    return Optional.of(SpanLimit.of(distance, below.gap(), below.source()));
  }

  /** Distances and limits are whole tenths of a metre and whole millimetres, so that the products keep within a long. */
  private static Length between(SpanLimit below, SpanLimit above, Length distance) {
    long width = above.span().toNanometres() - below.span().toNanometres();
    long rise = (above.gap().toNanometres() - below.gap().toNanometres()) / MILLIMETRE;
    long along = distance.toNanometres() - below.span().toNanometres();
    long twiceOver = 2 * rise * along + width;
    return Length.ofMillimetres(below.gap().toNanometres() / MILLIMETRE + Math.floorDiv(twiceOver, 2 * width));
  }

  /** Shows how the limit at a distance comes about. */
  Step step(Length distance) {
    SpanLimit limit = limitAt(distance).orElseThrow();
    List<Term> terms = new ArrayList<>();
    String question = "Which gap is allowed where the contacts are " + distance + " apart?";
    for (int i = 1; i < limits.size(); i++) {
      SpanLimit below = limits.get(i - 1);
      SpanLimit above = limits.get(i);
      if (distance.compareTo(below.span()) > 0 && distance.compareTo(above.span()) < 0) {
        Source source = limit.source();
        terms.add(new Term("t1", "limit at the distance below", below.gap(), source));
        terms.add(new Term("t2", "limit at the distance above", above.gap(), source));
        terms.add(Term.of("d", "distance of the contacts", distance));
        terms.add(new Term("d1", "tabulated distance below", below.span(), source));
        terms.add(new Term("d2", "tabulated distance above", above.span(), source));
        return new Step("limit-at-distance", question,
            "t = floor((t1 + (t2 - t1) * (d - d1) / (d2 - d1)) / 1mm + 0.5) * 1mm", terms, limit.gap(), source);
      }
    }
    return new Step("limit-at-distance", question, "value as stated", terms, limit.gap(), limit.source());
  }
}
