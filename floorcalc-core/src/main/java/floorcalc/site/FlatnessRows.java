package floorcalc.site;

import floorcalc.flatness.EdgeMethod;
import floorcalc.flatness.GapReading;
import floorcalc.flatness.SpanCheck;
import floorcalc.flatness.SpanLimit;
import floorcalc.flatness.ToleranceSet;
import floorcalc.measure.Length;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** One line for each span of a set, one for all spans that nothing shows, and one for each kind of reading that shows nothing. */
final class FlatnessRows {
  private static final int NAMED = 6;

  private record Silent(String found, String advice) {}

  private final ToleranceSet set;
  private final Report report;
  private final Map<SpanLimit, List<EdgeFound>> bySpan = new LinkedHashMap<>();
  /** By span, of a set that judges by the distance of the contacts. */
  private final Map<Length, List<EdgeFound>> byDistance = new TreeMap<>(Comparator.reverseOrder());
  private final Map<Silent, TreeSet<String>> silent =
      new TreeMap<>(Comparator.comparing(Silent::found).thenComparing(Silent::advice));
  private final List<EdgeFound> doubted = new ArrayList<>();
  private final Map<String, List<Step>> working = new LinkedHashMap<>();
  private final Set<String> deciding = new LinkedHashSet<>();

  FlatnessRows(ToleranceSet set, Report report) {
    this.set = set;
    this.report = report;
  }

  /** How the gaps of one source were found: kept if one of them decides. */
  void working(String from, List<Step> steps) {
    working.computeIfAbsent(from, none -> new ArrayList<>()).addAll(steps);
  }

  void found(List<EdgeFound> found) {
    for (EdgeFound one : found) {
      if (set.method() == EdgeMethod.CONTACT_DISTANCE) {
        byDistance.computeIfAbsent(one.limit().span(), none -> new ArrayList<>()).add(one);
      } else {
        bySpan.computeIfAbsent(one.limit(), none -> new ArrayList<>()).add(one);
      }
    }
  }

  /** Readings that show nothing under any span. */
  void silent(String from, String found, String advice) {
    silent.computeIfAbsent(new Silent(found, advice), none -> new TreeSet<>()).add(from);
  }

  /** Readings that are doubted: they pass nothing, and hide nothing of what the others show. */
  void doubted(List<EdgeFound> found) {
    doubted.add(found.stream().max(EdgeFound.LESS_FIRST).orElseThrow());
  }

  void write() {
    List<SpanLimit> open = new ArrayList<>();
    if (set.method() == EdgeMethod.CONTACT_DISTANCE) {
      byDistance.values().forEach(this::decided);
      if (byDistance.isEmpty()) {
        open.addAll(set.limits());
      }
    } else {
      for (SpanLimit limit : set.limits()) {
        if (bySpan.containsKey(limit)) {
          decided(bySpan.get(limit));
        } else {
          open.add(limit);
        }
      }
    }
    if (!open.isEmpty()) {
      open(open);
    }
    deciding.forEach(from -> report.steps.addAll(working.getOrDefault(from, List.of())));
    doubted.stream().sorted(EdgeFound.LESS_FIRST).map(FlatnessRows::again).forEach(report.judgements::add);
    silent.forEach((what, from) -> report.open("flatness", "flatness by " + listed(from), "",
        from.size() == 1 ? what.found : "each " + what.found, "none judged", set.limits().get(0).source(), what.advice));
  }

  /** A limit that is broken stays broken until the readings are put right; one that is kept is not known to be. */
  private static Judgement again(EdgeFound doubted) {
    Judgement one = doubted.judgement();
    return new Judgement(one.code(), one.check() + ", by readings that are doubted", one.where(), one.found(), one.limit(),
        one.outcome() == Outcome.NOT_MET ? Outcome.NOT_MET : Outcome.NOT_MEASURED, one.source(),
        "read again before anything is ground, filled or laid: a reading or a unit looks wrong");
  }

  private void decided(List<EdgeFound> found) {
    EdgeFound worst = found.stream().max(EdgeFound.LESS_FIRST).orElseThrow();
    TreeSet<String> all = found.stream().map(EdgeFound::from).collect(Collectors.toCollection(TreeSet::new));
    report.judgements.add(worst.among(all.size() == 1 ? "" : listed(all)));
    deciding.add(worst.from());
  }

  /** All spans that nothing shows, in one line. */
  private void open(List<SpanLimit> limits) {
    SpanCheck first = set.judge(List.<GapReading>of()).value().get(0);
    String spans = limits.stream().map(limit -> limit.span().toString()).distinct().collect(Collectors.joining(", "));
    boolean distance = set.method() == EdgeMethod.CONTACT_DISTANCE;
    report.open("flatness", distance ? "flatness, " + set.name() : "flatness under " + spans + ", " + set.name(), "", "",
        limits.stream().map(SpanLimit::toString).collect(Collectors.joining("; ")), first.source(),
        "lay an edge of " + (distance ? first.span().toString() : spans.replace(", ", " and of ")) + " and read the gaps, or read"
            + " heights along lines or on a grid, no farther apart than half of the shortest edge");
  }

  private static String listed(TreeSet<String> from) {
    if (from.size() > NAMED) {
      return from.size() + " sets of readings";
    }
    List<String> names = List.copyOf(from);
    return names.size() == 1 ? names.get(0)
        : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
  }
}
