package floorcalc.transitions;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProfileLineTest {
  private static final Length WIDTH = Length.ofMillimetres(40);

  private static Point at(long x, long y) {
    return Point.ofMillimetres(x, y);
  }

  private static ProfileLine line(Point... corners) {
    Calculated<ProfileLine> line = ProfileLine.of(List.of(corners), WIDTH);
    assertStepsHold(line);
    return line.value();
  }

  /** 3-4-5: 300 to the right, 400 up: 500 mm, square ends. */
  @Test
  void straight() {
    ProfilePiece piece = line(at(100, 100), at(400, 500)).pieces().get(0);
    assertThat(piece.length()).isEqualTo(Length.ofMillimetres(500));
    assertThat(piece.longPoint()).isEqualTo(piece.length()).isEqualTo(piece.shortPoint());
    assertThat(piece.allowance()).isEqualTo(Length.ZERO);
    assertThat(piece.cutAtFrom()).isEqualByComparingTo("0");
  }

  /**
   * Round three sides of a hearth: 500 out, 1200 along, 500 back, two left turns of 90 degrees. tan 45 = 1, so each mitre
   * takes half of 40 mm: 500 + 20, 1200 + 20 + 20, 500 + 20; over their full width 480, 1160, 480.
   */
  @Test
  void roundAHearth() {
    ProfileLine line = line(at(0, 0), at(500, 0), at(500, 1200), at(0, 1200));
    assertThat(line.pieces()).extracting(ProfilePiece::longPoint)
        .containsExactly(Length.ofMillimetres(520), Length.ofMillimetres(1240), Length.ofMillimetres(520));
    assertThat(line.pieces()).extracting(ProfilePiece::shortPoint)
        .containsExactly(Length.ofMillimetres(480), Length.ofMillimetres(1160), Length.ofMillimetres(480));
    assertThat(line.pieces().get(1).cutAtFrom()).isEqualByComparingTo("45");
    assertThat(line.pieces().get(1).cutAtTo()).isEqualByComparingTo("45");
    assertThat(line.pieces().get(2).cutAtTo()).isEqualByComparingTo("0");
    assertThat(line.length()).isEqualTo(Length.ofMillimetres(2200));
  }

  /**
   * A turn to the right of 45 degrees is sawn at 22.5: tan 22.5 = sqrt(2) - 1 = 0.414213562373, times 20 mm = 8.284271 mm.
   * The piece after is 100 times sqrt(2) = 141.421356 mm long, 149.705627 mm with its mitre (141.4213562 + 8.2842712).
   */
  @Test
  void halfARightAngle() {
    ProfileLine line = line(at(0, 0), at(300, 0), at(400, -100));
    assertThat(line.pieces().get(0).cutAtTo()).isEqualByComparingTo("-22.5");
    assertThat(line.pieces().get(0).longPoint()).isEqualTo(Length.ofMillimetres("308.284271"));
    assertThat(line.pieces().get(1).length()).isEqualTo(Length.ofMillimetres("141.421356"));
    assertThat(line.pieces().get(1).longPoint()).isEqualTo(Length.ofMillimetres("149.705627"));
  }

  /** First left, then right: the piece between is a parallelogram, as long from point to point as with two left turns. */
  @Test
  void turnsBothWays() {
    ProfilePiece middle = line(at(0, 0), at(500, 0), at(500, 300), at(900, 300)).pieces().get(1);
    assertThat(middle.cutAtFrom()).isEqualByComparingTo("45");
    assertThat(middle.cutAtTo()).isEqualByComparingTo("-45");
    assertThat(middle.longPoint()).isEqualTo(Length.ofMillimetres(340));
    assertThat(middle.shortPoint()).isEqualTo(Length.ofMillimetres(260));
  }

  /** Points in one line are butted square. */
  @Test
  void straightOn() {
    ProfileLine line = line(at(0, 0), at(500, 0), at(1200, 0));
    assertThat(line.pieces()).extracting(ProfilePiece::cutAtFrom).allSatisfy(cut -> assertThat(cut).isZero());
    assertThat(line.pieces()).extracting(ProfilePiece::longPoint)
        .containsExactly(Length.ofMillimetres(500), Length.ofMillimetres(700));
  }

  /** 30 mm between two right angles, each of which takes 20 mm. */
  @Test
  void tooShortForItsMitres() {
    Calculated<ProfileLine> line = ProfileLine.of(List.of(at(0, 0), at(500, 0), at(500, 30), at(0, 30)), WIDTH);
    assertThat(line.findings()).extracting(Finding::where, Finding::message).containsExactly(org.assertj.core.groups.Tuple.tuple(
        "piece 2", "the piece is 30 mm long, its mitres take 40 mm: the profile is too wide for so short a piece"));
    assertThat(line.value().pieces().get(1).shortPoint()).isEqualTo(Length.ofMillimetres(-10));
  }

  @Test
  void refuses() {
    assertThatThrownBy(() -> ProfileLine.of(List.of(at(0, 0)), WIDTH)).hasMessage(
        "a profile runs along 2 to 200 points, but there are 1");
    assertThatThrownBy(() -> ProfileLine.of(List.of(at(0, 0), at(1, 0), at(1, 0)), WIDTH)).hasMessage(
        "points 2 and 3 of a profile are both (1 mm, 0 mm); leave one out");
    assertThatThrownBy(() -> ProfileLine.of(List.of(at(0, 0), at(500, 0), at(100, 0)), WIDTH)).hasMessage(
        "the profile turns back on itself at (500 mm, 0 mm); give two profiles that are butted there");
    assertThatThrownBy(() -> ProfileLine.of(List.of(at(0, 0), at(500, 0), at(0, 1)), WIDTH)).hasMessageContaining("turns back");
    assertThatThrownBy(() -> ProfileLine.of(List.of(at(0, 0), at(500, 0)), Length.ZERO)).hasMessage(
        "the width of a profile must be more than 0 mm, but was 0 mm");
  }
}
