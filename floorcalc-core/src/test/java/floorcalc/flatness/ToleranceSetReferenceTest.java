package floorcalc.flatness;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.working.Standing;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each figure of a named set against the tables of published figures; their sources stand at the head of the files and in each row. The figures are
 * exact. Rows recalled from memory are not tested against.
 */
@Tag("reference")
class ToleranceSetReferenceTest {
  private static final Set<String> ODD_CELLS = Set.of("2 at 3.5 m", "7 at 0.6 m");
  private static final List<String> DISTANCES = List.of("100", "1000", "4000", "10000", "15000");

  private static List<String> sets(String line) {
    return line.equals("2") ? List.of("DIN 18202 line 2a", "DIN 18202 line 2b") : List.of("DIN 18202 line " + line);
  }

  @ParameterizedTest(name = "line {0}")
  @CsvFileSource(resources = "/reference/din18202_flatness.csv", useHeadersInDisplayName = true)
  void dinAsTabulated(String line, String appliesTo, String at01, String at1, String at4, String at10, String at15,
      String status) {
    List<String> printed = List.of(at01, at1, at4, at10, at15);
    for (String name : sets(line)) {
      ToleranceSet set = ToleranceSet.named(name);
      assertThat(set.method()).isEqualTo(EdgeMethod.CONTACT_DISTANCE);
      assertThat(set.limits()).hasSameSizeAs(printed);
      for (int i = 0; i < printed.size(); i++) {
        Length distance = Length.ofMillimetres(DISTANCES.get(i));
        assertThat(set.limits().get(i).span()).isEqualTo(distance);
        assertThat(set.gapAllowed(distance)).contains(Length.ofMillimetres(printed.get(i)));
        assertThat(set.limits().get(i).source().standing()).isEqualTo(Standing.QUOTED);
      }
    }
  }

  /**
   * Printed to the whole millimetre. Two of the 91 printed cells do not follow the printed rule: line 2 at 3.5 m is 11.33 and
   * printed as 12, line 7 at 0.6 m is 2.56 and printed as 2. The rule is kept there: 11 and 3.
   */
  @ParameterizedTest(name = "line {0} at {1} m")
  @CsvFileSource(resources = "/reference/din18202_flatness_interpolated.csv", useHeadersInDisplayName = true)
  void dinInterpolated(String line, String metres, String printed, String linear, String rounded, String agrees) {
    Length distance = Length.parse(metres + " m");
    for (String name : sets(line)) {
      Length allowed = ToleranceSet.named(name).gapAllowed(distance).orElseThrow();
      boolean isOdd = ODD_CELLS.contains(line + " at " + metres + " m");
      assertThat(isOdd).isEqualTo(agrees.equals("NO"));
      assertThat(allowed).isEqualTo(Length.ofMillimetres(isOdd ? rounded : printed));
    }
  }

  /** The limit at 15 m also holds beyond; below the first distance the table is silent. */
  @Test
  void dinBeyondItsTable() {
    ToleranceSet line3 = ToleranceSet.named("DIN 18202 line 3");
    assertThat(line3.gapAllowed(Length.parse("40 m"))).contains(Length.ofMillimetres(15));
    assertThat(line3.gapAllowed(Length.parse("99 mm"))).isEmpty();
  }

  /** Which set a row of published limits stands behind, by its source and, where one source has several, its floor. */
  private static final Map<String, String> SETS = Map.ofEntries(
      Map.entry("BS 8204 class SR1", "BS 8204 SR1"), Map.entry("BS 8204 class SR2", "BS 8204 SR2"),
      Map.entry("BS 8204 class SR3", "BS 8204 SR3"), Map.entry("NHBC Standards 2020 cl. 9.1.5", "NHBC 9.1.5"),
      Map.entry("NF DTU 51.11 P1-1 (Dec 2009) cl. 9.1", "NF DTU 51.11 finished"),
      Map.entry("NF DTU 51.11 (2009) substrate", "NF DTU 51.11 subfloor"),
      Map.entry("NF DTU 51.1 P1-1 (Dec 2010) cl. 7.1", "NF DTU 51.1"),
      Map.entry("AS 1884:2021 cl. 3.1.4(a)", "AS 1884"), Map.entry("AS 1884:2021 cl. 3.1.4(b)", "AS 1884"),
      Map.entry("NFCA best practice (Jan 2023)", "NFCA"), Map.entry("MFMA position statement (rev 02/05)", "MFMA"),
      Map.entry("ANSI A108.02 as quoted by TCNA 2009", "ANSI A108.02"),
      Map.entry("ACI 117 (exterior ramps, sidewalks)", "ACI 117 outdoors"),
      Map.entry("NATSPEC concrete finishes class A", "NATSPEC class A"),
      Map.entry("NATSPEC concrete finishes class B", "NATSPEC class B"),
      Map.entry("NATSPEC concrete finishes class C", "NATSPEC class C"), Map.entry("NZS 3114", "NZS 3114"),
      Map.entry("SNiP 3.04.01-87 Table 25", "SNiP 3.04.01"));

  private static String setOf(String source, String appliesTo) {
    if (source.startsWith("NWFA")) {
      return appliesTo.startsWith("glue-down") ? "NWFA glued" : "NWFA long fasteners";
    }
    return SETS.get(source);
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvFileSource(resources = "/reference/straightedge_limits.csv", useHeadersInDisplayName = true)
  void publishedLimits(String source, String appliesTo, String gaps, String span, String note, String status, String seen) {
    if (status.startsWith("memory")) {
      // Recalled, not seen: some are sets, marked so, and none of the doubtful ones is; nothing is tested against them.
      assertThat(ToleranceSet.all()).noneMatch(set -> set.name().startsWith("BS 8201"));
      return;
    }
    List<String> names = source.equals("BS 8204:1987 SR1/SR2/SR3")
        ? List.of("BS 8204:1987 SR1", "BS 8204:1987 SR2", "BS 8204:1987 SR3") : List.of(setOf(source, appliesTo));
    String[] each = gaps.split("/");
    assertThat(each).hasSameSizeAs(names);
    for (int i = 0; i < each.length; i++) {
      SpanLimit limit = ToleranceSet.named(names.get(i)).limits().stream()
          .filter(one -> one.span().equals(Length.ofMillimetres(span))).findFirst().orElseThrow();
      assertThat(limit.gap()).isEqualTo(Length.ofMillimetres(each[i]));
      assertThat(limit.percent()).isEqualTo(100);
      assertThat(limit.source().standing())
          .isEqualTo(status.equals("verified") ? Standing.READ : Standing.QUOTED);
    }
  }

  /** Every limit that is not common practice, DIN or from memory has a row. */
  @Test
  void noLimitWithoutARow() {
    Set<String> tested = new TreeSet<>(SETS.values());
    tested.addAll(Arrays.asList("NWFA glued", "NWFA long fasteners", "BS 8204:1987 SR1", "BS 8204:1987 SR2",
        "BS 8204:1987 SR3"));
    assertThat(ToleranceSet.all()).filteredOn(set -> set.limits().stream().anyMatch(limit ->
        limit.source().standing() == Standing.READ || limit.source().standing() == Standing.QUOTED)
        && !set.name().startsWith("DIN")).extracting(ToleranceSet::name).containsExactlyInAnyOrderElementsOf(tested);
  }

  /** 10 ft, 8 ft, 4 ft and 10 in by hand: 1 ft = 304.8 mm. */
  @ParameterizedTest
  @CsvSource({"2438.4, 3", "1219.2, 2", "254, 1"})
  void commonPractice(String span, String gap) {
    assertThat(ToleranceSet.COMMON_PRACTICE.gapAllowed(Length.ofMillimetres(span))).contains(Length.ofMillimetres(gap));
    assertThat(ToleranceSet.COMMON_PRACTICE.limits()).allSatisfy(limit ->
        assertThat(limit.source().standing()).isEqualTo(Standing.COMMON_PRACTICE)).hasSize(3);
  }
}
