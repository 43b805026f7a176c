package floorcalc.rows;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class MeasuringErrorTest {
  private static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  private static StartLine line(String top) {
    return StartLine.choose(List.of(Stop.floorAbove("wall 1", Length.ZERO), Stop.floorBelow("wall 3", mm(top))),
        Length.ZERO, mm("185"), mm("70"), RowWay.LEAST_CUT).value();
  }

  @Test
  void stripGrowsAndShrinksWithTheError() {
    // 3480 = 18 * 185 + 150
    Calculated<MeasuringError> error = line("3480").withError(mm("3"));
    assertThat(error.value().strips()).element(1).isEqualTo(
        new StripRange(Stop.floorBelow("wall 3", mm("3480")), mm("147"), mm("150"), mm("153"), mm("147")));
    assertThat(error.value().worst()).isEqualTo(mm("147"));
    assertThat(error.findings()).isEmpty();
    assertStepsHold(error);
  }

  @Test
  void startingWallIsWhereRowsAreSetOutFrom() {
    StripRange start = line("3480").withError(mm("3")).value().strips().get(0);
    assertThat(List.of(start.sooner(), start.measured(), start.later(), start.worst())).containsOnly(mm("185"));
  }

  @Test
  void exactFitIsFragile() {
    // 3700 = 20 * 185: 3 mm more needs a row of 3 mm, 3 mm less leaves 182
    Calculated<MeasuringError> error = line("3700").withError(mm("3"));
    assertThat(error.value().strips()).element(1).isEqualTo(
        new StripRange(Stop.floorBelow("wall 3", mm("3700")), mm("182"), mm("185"), mm("3"), mm("0")));
    assertThat(error.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("fragile-fit");
      assertThat(finding.where()).isEqualTo("wall 3");
      assertThat(finding.message()).isEqualTo("as measured the strip is 185 mm; if the floor ends 3 mm sooner it is"
          + " 182 mm, if 3 mm later 3 mm; in between it passes through nothing: measure again and keep the line clear"
          + " of this stop");
    });
    assertStepsHold(error);
  }

  @Test
  void sliverMayBecomeAFullBoardLessSomething() {
    // one line for two stops; the second is 2 mm over a row line: 3 mm sooner it is 185 - 1
    StartLine line = new StartLine(List.of(Stop.floorBelow("hearth", mm("187"))), Length.ZERO, mm("185"), Length.ZERO,
        floorcalc.working.Source.GIVEN, mm("185"));
    StripRange hearth = line.withError(mm("3")).value().strips().get(0);
    assertThat(hearth.measured()).isEqualTo(mm("2"));
    assertThat(hearth.sooner()).isEqualTo(mm("184"));
    assertThat(hearth.later()).isEqualTo(mm("5"));
    assertThat(hearth.worst()).isEqualTo(Length.ZERO);
  }

  @Test
  void stripThatMayFallBelowTheMinimumIsNoted() {
    // 3735: the last row is just 70
    Calculated<MeasuringError> error = line("3735").withError(mm("3"));
    assertThat(error.value().worst()).isEqualTo(mm("67"));
    assertThat(error.findings()).extracting(Finding::code).containsExactly("narrow-within-error");
    assertStepsHold(error);
  }

  @Test
  void divisionTellsTheSame() {
    RowDivision rows = RowDivision.of(mm("3700"), mm("185"), mm("70"), RowWay.AS_NEEDED).value();
    StripRange end = rows.withError(mm("3")).value().strips().get(1);
    assertThat(List.of(end.sooner(), end.measured(), end.later(), end.worst()))
        .containsExactly(mm("182"), mm("185"), mm("3"), mm("0"));
    assertThat(rows.withError(mm("3")).findings()).extracting(Finding::where).containsExactly("finishing wall");
  }

  @Test
  void singleRowMayNeedASecond() {
    // 184 mm in boards of 185: 3 mm more make a second row of 2 mm
    RowDivision row = RowDivision.of(mm("184"), mm("185"), mm("70"), RowWay.AS_NEEDED).value();
    assertThat(row.withError(mm("3")).value().strips().get(1).later()).isEqualTo(mm("2"));
    assertThat(row.withError(mm("3")).findings()).extracting(Finding::code).containsExactly("fragile-fit");
  }

  @Test
  void noErrorChangesNothing() {
    Calculated<MeasuringError> error = line("3700").withError(Length.ZERO);
    assertThat(error.value().worst()).isEqualTo(mm("185"));
    assertThat(error.findings()).isEmpty();
    assertThat(error.value().plusMinus()).isEqualTo(Length.ZERO);
  }

  @Test
  void errorIsASizeNotADirection() {
    assertThatThrownBy(() -> line("3700").withError(mm("-3")))
        .hasMessage("measuring error must not be negative, but was -3 mm; give its size, it counts both ways");
  }

  @Property(tries = 2000)
  void noErrorWithinTheBoundsIsWorseThanTheWorst(@ForAll @IntRange(min = 1, max = 37) int pitch,
      @ForAll @IntRange(min = 1, max = 300) int level, @ForAll @IntRange(max = 30) int taper,
      @ForAll @IntRange(max = 15) int error, @ForAll Stop.Side side, @ForAll @IntRange(min = 1, max = 37) int first) {
    Stop stop = new Stop("s", side, nm(level), nm(level + taper));
    StartLine line = new StartLine(List.of(stop), Length.ZERO, nm(pitch), Length.ZERO, floorcalc.working.Source.GIVEN,
        nm(first));
    StripRange range = line.withError(nm(error)).value().strips().get(0);
    long worst = Long.MAX_VALUE;
    for (int shift = -error; shift <= error; shift++) {
      Stop truth = new Stop("s", side, nm(level + shift), nm(level + taper + shift));
      worst = Math.min(worst, truth.strip(first, pitch));
    }
    // A strip that passes through nothing leaves at least one nanometre at whole nanometres.
    assertThat(worst - range.worst().toNanometres()).isBetween(0L, range.worst().isZero() ? 1L : 0L);
  }

  private static Length nm(long nm) {
    return Length.ofNanometres(nm);
  }
}
