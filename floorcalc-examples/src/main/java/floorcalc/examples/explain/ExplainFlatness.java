package floorcalc.examples.explain;

import floorcalc.examples.job.Tape;
import floorcalc.examples.readings.ReadingFile;
import floorcalc.flatness.EdgeMethod;
import floorcalc.flatness.FNumbers;
import floorcalc.flatness.GreatestGap;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.MidChord;
import floorcalc.flatness.RestRule;
import floorcalc.flatness.SpanCheck;
import floorcalc.flatness.SpanLimit;
import floorcalc.flatness.Straightedge;
import floorcalc.flatness.ToleranceSet;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Step;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows how flat a floor is along a line. */
@Command(name = "flatness", mixinStandardHelpOptions = true,
    description = "Lays straightedges along a line of heights: the greatest gap under each, where, and whether a tolerance set allows it.")
final class ExplainFlatness extends Explaining {
  @Parameters(paramLabel = "FILE", description = "Heights along a line as CSV with the header \"distance (m),height (mm)\"; units mm,"
      + " cm, m, in, ft, or tape where each value has its own.")
  private Path file;

  @Option(names = "--set", paramLabel = "NAME", defaultValue = "common practice",
      description = "Tolerance set; \"common practice\" if not given. A wrong name lists the sets.")
  private String set;

  @Option(names = "--span", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Length of an edge, in place of those of the set; may be given several times.")
  private List<Length> spans = List.of();

  ExplainFlatness(PrintStream out) {
    super(out);
  }

  /** What was found along a line. */
  private record Found(List<SpanCheck> checks, List<Length> unjudged, HeightProfile profile, Tape tape, List<MidChord> chords,
      Optional<FNumbers> numbers, String whyNoNumbers) {}

  @Override
  Calculated<Found> calculate() {
    ToleranceSet tolerances = ToleranceSet.named(set);
    ReadingFile.Line line = ReadingInput.read(file, ReadingFile::line);
    HeightProfile profile = line.profile();
    List<Step> steps = new ArrayList<>();
    Set<Finding> findings = new LinkedHashSet<>(profile.doubts());
    List<SpanCheck> checks = new ArrayList<>();
    List<Length> unjudged = new ArrayList<>();
    chosen(tolerances, unjudged).ifPresent(limits -> {
      Calculated<List<SpanCheck>> judged = limits.judge(profile, RestRule.WORST);
      checks.addAll(judged.value());
      steps.addAll(judged.steps());
      findings.addAll(judged.findings());
    });
    for (Length span : unjudged) {
      Calculated<GreatestGap> gap = Straightedge.of(span).calculate(profile, RestRule.WORST);
      steps.addAll(gap.steps());
    }
    Calculated<List<MidChord>> chords = chords(profile, checks, unjudged);
    steps.addAll(chords.steps());
    Optional<FNumbers> numbers = Optional.empty();
    String why = "";
    try {
      Calculated<FNumbers> found = FNumbers.of(profile);
      steps.addAll(found.steps());
      numbers = Optional.of(found.value());
    } catch (IllegalArgumentException none) {
      why = none.getMessage();
    }
    return Calculated.of(new Found(checks, unjudged, profile, line.tape(), chords.value(), numbers, why), steps, List.copyOf(findings));
  }

  /** The set, or those limits of it that the spans asked for have; the other spans are gathered. */
  private Optional<ToleranceSet> chosen(ToleranceSet tolerances, List<Length> unjudged) {
    if (spans.isEmpty()) {
      return Optional.of(tolerances);
    }
    List<SpanLimit> limits = new ArrayList<>();
    for (Length span : new LinkedHashSet<>(spans)) {
      List<SpanLimit> own = tolerances.method() == EdgeMethod.SPAN
          ? tolerances.limits().stream().filter(limit -> limit.span().equals(span)).toList() : List.of();
      limits.addAll(own);
      if (own.isEmpty()) {
        unjudged.add(span);
      }
    }
    return limits.isEmpty() ? Optional.empty() : Optional.of(ToleranceSet.of(tolerances.name(), tolerances.floor(), limits));
  }

  private static Calculated<List<MidChord>> chords(HeightProfile profile, List<SpanCheck> checks, List<Length> unjudged) {
    Set<Length> lengths = new LinkedHashSet<>();
    checks.forEach(check -> lengths.add(check.span()));
    lengths.addAll(unjudged);
    List<MidChord> chords = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    for (Length length : lengths) {
      try {
        Calculated<MidChord> chord = MidChord.of(profile, length);
        chords.add(chord.value());
        steps.addAll(chord.steps());
      } catch (IllegalArgumentException none) {
        // No reading has a chord of this length on the line: nothing to show.
        continue;
      }
    }
    return Calculated.of(List.copyOf(chords), steps);
  }

  @Override
  String below(Object value) {
    Found found = (Found) value;
    ToleranceSet tolerances = ToleranceSet.named(set);
    boolean blocks = tolerances.method() == EdgeMethod.EQUAL_OFFSETS;
    Lines lines = new Lines(found.tape());
    lines.doubts(found.profile().doubts().size());
    lines.add("line: " + found.profile() + ", at most " + lines.place(found.profile().widestSpacing()) + " apart");
    lines.add("flatness by tolerance set '" + tolerances + "' (" + tolerances.floor() + "), "
        + (blocks ? "an edge on two equal blocks:" : "rocked onto the two points that show most:"));
    for (SpanCheck check : found.checks()) {
      lines.add("  under " + lines.place(check.span()) + ": " + check.found().map(gap -> "gap " + lines.depth(gap)).orElse("no gap to judge") + ", allowed "
          + check.limit() + ", " + Lines.words(check.outcome()) + "  [" + check.source() + "]");
      lines.addIfAny("    ", check.where());
      if (!blocks) {
        alone(found.profile(), check.span()).ifPresent(text -> lines.add("    " + text));
      }
      lines.addIfAny("    ", check.advice());
    }
    for (Length span : found.unjudged()) {
      GreatestGap gap = Straightedge.of(span).greatest(found.profile(), RestRule.WORST);
      lines.add("  under " + lines.place(span) + ": gap " + lines.depth(gap.gap()) + ", not judged, as the set has no limit for an edge of this length");
      lines.add("    edge from " + gap.start() + ", resting at " + gap.rest().left().place() + " and " + gap.rest().right().place()
          + ", lowest at " + gap.rest().lowSpot().place());
      alone(found.profile(), span).ifPresent(text -> lines.add("    " + text));
    }
    lines.add("middle of a chord, another measure, which no limit above is for (up is a hump, down a dip):");
    for (MidChord chord : found.chords()) {
      lines.add("  " + lines.place(chord.chord()) + ": " + lines.depth(chord.lowest().deviation()) + " at "
          + lines.place(chord.lowest().reading().place()) + " to " + lines.depth(chord.highest().deviation()) + " at "
          + lines.place(chord.highest().reading().place()) + ", root mean square " + lines.depth(chord.rootMeanSquare()));
    }
    if (found.chords().isEmpty()) {
      lines.add("  none of these lengths has its middle at a reading and both ends on the line");
    }
    lines.add(found.numbers().map(numbers -> "F-numbers: " + numbers).orElse("no F-numbers: " + found.whyNoNumbers()));
    return lines.toString();
  }

  /** What the edge shows when nobody rocks it. */
  private static Optional<String> alone(HeightProfile profile, Length span) {
    Straightedge edge = Straightedge.of(span);
    return edge.fits(profile) ? Optional.of("left to itself: " + edge.greatest(profile, RestRule.GRAVITY).rest()) : Optional.empty();
  }
}
