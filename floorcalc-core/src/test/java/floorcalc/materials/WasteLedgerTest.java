package floorcalc.materials;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Area;
import floorcalc.working.Calculated;
import floorcalc.working.Severity;
import java.math.BigDecimal;
import java.math.BigInteger;
import org.junit.jupiter.api.Test;

class WasteLedgerTest {
  /** 60 boards of 2.2 m by 0.185 m are 24.42 m²; the lines are made up to that by hand. */
  private static final WasteLedger CLOSED = ledger("24.42", "22", "0.1", "0.033", "0.5", "0.566", "0.814", "0.407");

  private static Area m2(String decimal) {
    return Area.ofSquareMetres(decimal);
  }

  private static WasteLedger ledger(String bought, String laid, String trimmed, String kerf, String usable, String tooShort,
      String spare, String rounding) {
    return new WasteLedger(m2(bought), m2(laid), m2(trimmed), m2(kerf), m2(usable), m2(tooShort), m2(spare), m2(rounding));
  }

  @Test
  void linesAddUpToWhatWasBought() {
    assertThat(CLOSED.difference()).isEqualTo(Area.ZERO);
    Calculated<WasteLedger> explained = CLOSED.explained();
    assertThat(explained.value()).isSameAs(CLOSED);
    assertThat(explained.findings()).isEmpty();
    assertStepsHold(explained);
  }

  @Test
  void cuttingWasteIsTrimSawdustAndShortOffcuts() {
    // 0.1 + 0.033 + 0.566 = 0.699; of 24.42 that is 2.862 %, of 22 it is 3.177 %
    assertThat(CLOSED.cuttingWaste()).isEqualTo(m2("0.699"));
    assertThat(CLOSED.perCentOfBought(CLOSED.cuttingWaste(), 2)).isEqualTo(new BigDecimal("2.86"));
    assertThat(CLOSED.perCentOfLaid(CLOSED.cuttingWaste(), 2)).isEqualTo(new BigDecimal("3.18"));
    assertThat(CLOSED.explained().explain()).endsWith("""
        cutting-waste-share: What share of the boards bought is that, in %, to one decimal?
          v = 100 * V / B, rounded to one decimal
            V = 0.699 m²  (lost in cutting)
            B = 24.42 m²  (boards bought)
          = 2.9  [definition]""");
  }

  @Test
  void ledgerThatDoesNotCloseIsSerious() {
    WasteLedger open = new WasteLedger(m2("24.42").plus(Area.ofHalfSquareNanometres(BigInteger.ONE)), CLOSED.laid(),
        CLOSED.trimmedToShape(), CLOSED.sawKerf(), CLOSED.usableOffcuts(), CLOSED.shortOffcuts(), CLOSED.spare(),
        CLOSED.packRounding());
    assertThat(open.difference().toHalfSquareNanometres()).isEqualTo(BigInteger.ONE);
    assertThat(open.explained().findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("ledger-open");
      assertThat(finding.severity()).isEqualTo(Severity.SERIOUS);
      assertThat(finding.message()).isEqualTo("of 24.4200000000000000005 m² bought, 0.0000000000000000005 m² is not"
          + " accounted for; the pieces, cuts and offcuts do not belong to these boards");
    });
    assertStepsHold(open.explained());
  }

  @Test
  void nothingBoughtHasNoShare() {
    WasteLedger nothing = ledger("0", "0", "0", "0", "0", "0", "0", "0");
    assertThat(nothing.perCentOfBought(Area.ZERO, 1)).isEqualTo(new BigDecimal("0.0"));
    assertThat(nothing.explained().steps()).hasSize(3);
    assertStepsHold(nothing.explained());
  }

  @Test
  void shareIsRoundedHalfAwayFromZeroForDisplay() {
    WasteLedger half = ledger("8", "7.99", "0", "0.01", "0", "0", "0", "0");
    // 0.01 of 8 is 0.125 %
    assertThat(half.perCentOfBought(half.sawKerf(), 2)).isEqualTo(new BigDecimal("0.13"));
    assertThat(half.perCentOfBought(half.sawKerf(), 3)).isEqualTo(new BigDecimal("0.125"));
    assertThatThrownBy(() -> half.perCentOfBought(half.sawKerf(), -1)).hasMessage("decimals must be 0 to 12, but was -1");
  }

  @Test
  void noLineIsMissing() {
    assertThatThrownBy(() -> new WasteLedger(Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO, Area.ZERO,
        null)).isInstanceOf(NullPointerException.class).hasMessage("packRounding");
  }
}
