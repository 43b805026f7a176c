package floorcalc.outline.survey;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.outline.survey.Slip.Marks;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class RunningDimensionsTest {
  private static RunningDimensions of(Marks marks, String... readings) {
    Calculated<RunningDimensions> calculated = RunningDimensions.of(Arrays.stream(readings).map(Length::parse).toList(), marks);
    assertStepsHold(calculated);
    return calculated.value();
  }

  /** 55 5/8 in, 92 1/4 in, 151 5/8 in: parts 55 5/8, 36 5/8, 59 3/8 in. */
  @Test
  void lengthsBetweenMarks() {
    RunningDimensions tape = of(Marks.FEET_AND_INCHES, "4' 7 5/8\"", "7' 8 1/4\"", "12' 7 5/8\"");
    assertThat(tape.lengths()).containsExactly(Length.parse("55 5/8\""), Length.parse("36 5/8\""), Length.parse("59 3/8\""));
    assertThat(tape.echo()).isEqualTo("""
        1: 1412.875 mm = 4' 7 5/8", part 1412.875 mm = 4' 7 5/8"
        2: 2343.15 mm = 7' 8 1/4", part 930.275 mm = 3' 0 5/8"
        3: 3851.275 mm = 12' 7 5/8", part 1508.125 mm = 4' 11 3/8\"""");
    assertThat(of(Marks.METRIC, "1 m").echo()).isEqualTo("1: 1000 mm ~ 3' 3 3/8\", part 1000 mm ~ 3' 3 3/8\"");
  }

  /** Marks at 10.4, 20.8 and 31.2 mm are 10, 21 and 31: the parts 10, 11, 10 make 31; each rounded alone would make 30. */
  @Test
  void positionsAreRoundedNotParts() {
    RunningDimensions rounded = of(Marks.METRIC, "10.4 mm", "20.8 mm", "31.2 mm").roundedTo(Length.ofMillimetres(1));
    assertThat(rounded.readings()).extracting(Length::toMillimetreString).containsExactly("10", "21", "31");
    assertThat(rounded.lengths()).extracting(Length::toMillimetreString).containsExactly("10", "11", "10");
    assertThatThrownBy(() -> of(Marks.METRIC, "10.4 mm", "10.8 mm", "11 mm").roundedTo(Length.ofMillimetres(1)))
        .hasMessage("readings 2 and 3 are one when rounded to 1 mm; round to a smaller step");
    assertThatThrownBy(() -> of(Marks.METRIC, "1 m").roundedTo(Length.parse("3 m")))
        .hasMessage("reading 1 is nothing when rounded to 3000 mm; round to a smaller step");
    assertThatThrownBy(() -> of(Marks.METRIC, "1 m").roundedTo(Length.ZERO))
        .hasMessage("the step to round to must be more than 0 mm, but was 0 mm");
  }

  @Test
  void readingThatGoesBack() {
    assertThatThrownBy(() -> of(Marks.METRIC, "1210 mm", "3210 mm", "3120 mm", "4000 mm"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("reading 3, 3120 mm, is not more than reading 2, 3210 mm; readings off one tape only grow; it may be"
            + " reading 3: read 100 mm too short, meant 3220 mm; or reading 2: read 100 mm too long, meant 3110 mm; or reading 2:"
            + " read 1000 mm too long, meant 2210 mm; or reading 2: digits 3 and 2 exchanged, meant 2310 mm; read both again");
    assertThatThrownBy(() -> of(Marks.METRIC, "5 m", "5 m", "5001 mm"))
        .hasMessageStartingWith("reading 2, 5000 mm, is not more than reading 1, 5000 mm;");
    assertThatThrownBy(() -> of(Marks.METRIC, "0 mm"))
        .hasMessage("reading 1, 0 mm, is not more than the zero of the tape; readings off one tape only grow; read it again");
    assertThatThrownBy(() -> of(Marks.METRIC)).hasMessage("a wall has from 1 to 1000 readings, but 0 were given");
  }

  /** sqrt(2 x (2² + (0.2 x 4)²)) = 3.05 mm for walls of 4 m: three times that is 9.1 mm. */
  @Test
  void overallAndTwice() {
    RunningDimensions tape = of(Marks.METRIC, "1210 mm", "3900 mm");
    assertThat(tape.against(Length.parse("3908 mm"), Marks.METRIC, SurveyUncertainty.TAPE)).isEmpty();
    assertThat(tape.against(Length.parse("4001 mm"), Marks.METRIC, SurveyUncertainty.TAPE)).map(Finding::message)
        .contains("the last reading, 3900 mm, and the whole wall measured at once, 4001 mm, differ by 101 mm, more than the 9.1 mm"
            + " that measuring so can explain; it may be the last reading: read 100 mm too short, meant 4000 mm; or the whole wall"
            + " measured at once: read 100 mm too long, meant 3901 mm; measure again");
    assertThat(RunningDimensions.twice(Length.parse("4000 mm"), Length.parse("4033 mm"), Marks.METRIC, SurveyUncertainty.TAPE))
        .get().satisfies(finding -> {
          assertThat(finding.code()).isEqualTo("measurements-differ");
          assertThat(finding.message()).isEqualTo("the first measurement, 4000 mm, and the second, 4033 mm, differ by 33 mm,"
              + " more than the 9.1 mm that measuring so can explain; measure again");
        });
  }

  /** The parts make the last reading, and readings made of any parts give them back. */
  @Property(tries = 300)
  void partsMakeTheWhole(@ForAll @Size(min = 1, max = 30) List<@LongRange(min = 1, max = 5_000_000_000L) Long> parts) {
    Length at = Length.ZERO;
    List<Length> readings = new java.util.ArrayList<>();
    for (long part : parts) {
      at = at.plus(Length.ofNanometres(part));
      readings.add(at);
    }
    RunningDimensions tape = RunningDimensions.of(readings, Marks.METRIC).value();
    assertThat(tape.lengths()).extracting(Length::toNanometres).isEqualTo(parts);
    assertThat(Sides.sum(tape.lengths())).isEqualTo(at);
  }
}
