package floorcalc.fittings;

import static floorcalc.fittings.PieceNotchesTest.mm;
import static floorcalc.fittings.PieceNotchesTest.ring;
import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class MitredBorderTest {
  private static final BigDecimal FORTY_FIVE = new BigDecimal("45.0000");

  /** A frame inside 4000 x 3000, boards of 120: long point 4000 and 3000, short point 4000 - 240 = 3760 and 3000 - 240 = 2760. */
  @Test
  void aFrameInsideARectangle() {
    Calculated<MitredBorder> border = MitredBorder.inside(ring("0,0 4000,0 4000,3000 0,3000"), mm("120"), 1);
    assertThat(border.value().boards()).extracting(BorderBoard::longPoint)
        .containsExactly(mm("4000"), mm("3000"), mm("4000"), mm("3000"));
    assertThat(border.value().boards()).extracting(BorderBoard::shortPoint)
        .containsExactly(mm("3760"), mm("2760"), mm("3760"), mm("2760"));
    assertThat(border.value().boards()).allSatisfy(board -> {
      assertThat(board.startMitre().stripTrailingZeros()).isEqualByComparingTo(FORTY_FIVE);
      assertThat(board.endMitre()).isEqualByComparingTo(FORTY_FIVE);
      assertThat(board.stock()).isEqualTo(board.longPoint());
    });
    assertThat(border.value().field()).isEqualTo(ring("120,120 3880,120 3880,2880 120,2880"));
    assertThat(border.value().stock()).isEqualTo(mm("14000"));
    assertStepsHold(border);
  }

  /** A triangle of 3, 4 and 5: at the corner of arctan(4 / 3) = 53.13010235 degrees m = 90 - 26.56505118 = 63.43494882, which is rounded once. */
  @Test
  void aMitreIsRoundedOnce() {
    Calculated<MitredBorder> border = MitredBorder.inside(ring("0,0 4000,0 0,3000"), mm("100"), 1);
    assertThat(border.value().boards().get(1).endMitre()).isEqualByComparingTo("63.4349");
    assertThat(border.value().boards().get(2).startMitre()).isEqualByComparingTo("63.4349");
    assertStepsHold(border);
  }

  /** Two rows: the second is 3760 outside and 3520 inside; the field is 4000 - 4 * 120 by 3000 - 4 * 120. */
  @Test
  void rowsOneInsideTheOther() {
    MitredBorder border = MitredBorder.inside(ring("0,0 4000,0 4000,3000 0,3000"), mm("120"), 2).value();
    assertThat(border.boards().get(4)).isEqualTo(new BorderBoard(2, 1, mm("3760"), mm("3520"), mm("3760"),
        new BigDecimal("45.0000"), new BigDecimal("45.0000")));
    assertThat(border.field().extent().width()).isEqualTo(mm("3520"));
    assertThat(border.field().extent().height()).isEqualTo(mm("2520"));
  }

  /** Round a hearth of 1200 x 500 the inner edges are the hearth's, the outer ones 1200 + 2 * 90 and 500 + 2 * 90. */
  @Test
  void roundAHearth() {
    Calculated<MitredBorder> border = MitredBorder.around(ring("0,0 1200,0 1200,500 0,500"), mm("90"), 1);
    assertThat(border.value().boards()).extracting(BorderBoard::shortPoint)
        .containsExactlyInAnyOrder(mm("1200"), mm("500"), mm("1200"), mm("500"));
    assertThat(border.value().boards()).extracting(BorderBoard::longPoint)
        .containsExactlyInAnyOrder(mm("1380"), mm("680"), mm("1380"), mm("680"));
    assertThat(border.value().boards()).extracting(BorderBoard::startMitre).containsOnly(new BigDecimal("-45.0000"));
    assertThat(border.value().field().extent().width()).isEqualTo(mm("1380"));
    assertStepsHold(border);
  }

  /** At a corner of 135 degrees the saw is set to 90 - 67.5 = 22.5, and an edge loses w tan 22.5 = 100 * 0.41421 there. */
  @Test
  void anyCorner() {
    Calculated<MitredBorder> border = MitredBorder.inside(ring("0,0 3000,0 4000,1000 4000,3000 0,3000"), mm("100"), 1);
    BorderBoard first = border.value().boards().get(0);
    assertThat(first.startMitre()).isEqualByComparingTo("45");
    assertThat(first.endMitre()).isEqualByComparingTo("22.5");
    assertThat(first.atField().toMillimetres()).isCloseTo(3000 - 100 - 41.42136, within(0.000005));
    assertStepsHold(border);
  }

  /** At the inner corner of an L both boards grow inwards: 2000 becomes 2000 - 100 + 100, and takes 2100 of a board. */
  @Test
  void aReflexCorner() {
    MitredBorder border = MitredBorder.inside(ring("0,0 4000,0 4000,1500 2000,1500 2000,3000 0,3000"), mm("100"), 1).value();
    BorderBoard back = border.boards().get(2);
    assertThat(back.atLine()).isEqualTo(mm("2000"));
    assertThat(back.atField()).isEqualTo(mm("2000"));
    assertThat(back.stock()).isEqualTo(mm("2100"));
    assertThat(back.endMitre()).isEqualByComparingTo("-45");
  }

  @Test
  void refuses() {
    Ring room = ring("0,0 4000,0 4000,3000 0,3000");
    assertThatThrownBy(() -> MitredBorder.inside(room, Length.ZERO, 1)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the width of a border board must be more than 0 mm, but was 0 mm");
    assertThatThrownBy(() -> MitredBorder.inside(room, mm("100"), 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> MitredBorder.inside(room, mm("100"), 15)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("row 15 of the border has no length left on side 2, which is 3000 mm long; take fewer or narrower rows");
    assertThatThrownBy(() -> MitredBorder.inside(ring("0,0 4000,3000 4000,0 0,3000"), mm("100"), 1))
        .isInstanceOf(IllegalArgumentException.class).hasMessageStartingWith("the line of the border is not sound: ");
    // two arms of 300 mm each side of a slit of 100 mm: a border round it from outside would meet itself in the slit
    assertThatThrownBy(() -> MitredBorder.around(ring("0,0 700,0 700,500 400,500 400,200 300,200 300,500 0,500"), mm("60"), 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** A second way to the field: the expansion gap of the same width, which moves walls by its own code. */
  @Property(tries = 100)
  void theFieldIsWhatAGapOfTheSameWidthLeaves(@ForAll @IntRange(min = 3, max = 9) int corners, @ForAll @IntRange(min = 1, max = 3) int rows,
      @ForAll @IntRange(min = 0, max = 359) int turned) {
    double[] xs = new double[corners];
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < corners; i++) {
      double angle = Math.toRadians(turned + 360.0 * i / corners);
      xs[i] = 3000 + (i % 2) * 400;
      text.append(i == 0 ? "" : " ").append(Math.round(xs[i] * Math.cos(angle))).append(',').append(Math.round(xs[i] * Math.sin(angle)));
    }
    Ring line = ring(text.toString());
    MitredBorder border = MitredBorder.inside(line, mm("90"), rows).value();
    Ring other = ExpansionGap.inset(Outline.of(line), mm("90").multipliedBy(rows)).value().laid().get(0).shell();
    for (int i = 0; i < corners; i++) {
      assertThat((double) border.field().x(i)).isCloseTo(other.x(i), within(2.0));
      assertThat((double) border.field().y(i)).isCloseTo(other.y(i), within(2.0));
      // and the inner edge of the last row is the side of the field
      Length inner = border.boards().get((rows - 1) * corners + i).atField();
      assertThat((double) inner.toNanometres()).isCloseTo(border.field().wallLength(i).toNanometres(), within(5.0));
    }
    List<BorderBoard> boards = border.boards();
    assertThat(boards).hasSize(corners * rows);
  }

  /** A field of 2785 in boards of 185 with borders of at least 150: 13 boards are 2405, 190 remain on each side. */
  @Test
  void anEqualApron() {
    Calculated<Apron> apron = Apron.of(mm("2785"), mm("185"), mm("150"));
    assertThat(apron.value()).isEqualTo(new Apron(13, mm("190"), mm("190"))); // (2785 - 300) / 185 = 13.4
    assertStepsHold(apron);
    // a nanometre that cannot be halved goes to the second side
    assertThat(Apron.of(Length.ofNanometres(11), Length.ofNanometres(4), Length.ofNanometres(3)).value())
        .isEqualTo(new Apron(1, Length.ofNanometres(3), Length.ofNanometres(4)));
    assertThatThrownBy(() -> Apron.of(mm("100"), mm("185"), mm("51"))).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Apron.of(mm("100"), Length.ZERO, mm("5"))).isInstanceOf(IllegalArgumentException.class);
  }
}
