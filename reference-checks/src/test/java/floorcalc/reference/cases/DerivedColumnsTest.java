package floorcalc.reference.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.reference.data.DataFile;
import floorcalc.reference.data.DataRow;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Columns that were worked out from others of the same file come out as they stand: a slip of the pen in a file is found without the library. */
@Tag("reference")
class DerivedColumnsTest {

  /** RH = A exp(B/T) at 25 °C, and within 0.5 of the printed one but for the two salts that the file names. */
  @Test
  void humiditiesOverSalts() {
    for (DataRow row : DataFile.read("saturated_salts_rh_crc.csv").rows()) {
      double humidity = row.number("A").doubleValue() * StrictMath.exp(row.number("B").doubleValue() / 298.15);
      assertThat(humidity).as(row.place()).isCloseTo(row.number("rh_25C_calc_pct").doubleValue(), within(0.005));
      boolean named = row.text("salt").startsWith("CaCl2") || row.text("salt").startsWith("NH4Cl");
      assertThat(Math.abs(humidity - row.number("rh_25C_printed_pct").doubleValue()) > 0.5).as(row.place()).isEqualTo(named);
    }
  }

  /** (shrinkage to 12 % - shrinkage to 17 %) / 5 is the coefficient within 0.02, but for wenge, tangential: 0.40 for 0.34. */
  @Test
  void europeanCoefficientsFromTwoShrinkages() {
    for (DataRow row : DataFile.read("differential_shrinkage_european.csv").rows()) {
      for (String grain : new String[] {"radial", "tangential"}) {
        if (!row.isEmpty("shrink_fsp_to_12_" + grain + "_pct")) {
          BigDecimal apart = row.number("shrink_fsp_to_12_" + grain + "_pct").subtract(row.number("shrink_fsp_to_17_" + grain + "_pct"))
              .divide(BigDecimal.valueOf(5), 4, RoundingMode.HALF_EVEN).subtract(row.number("q_" + grain + "_pct_per_pct")).abs();
          assertThat(apart.compareTo(new BigDecimal("0.02")) > 0).as(row.place() + " " + grain)
              .isEqualTo(row.text("species_en").equals("wenge") && grain.equals("tangential"));
        }
      }
    }
  }

  /** The trade's 64ths of an inch as decimals, cut or rounded to four places. */
  @Test
  void sixtyFourthsOfAnInch() {
    for (DataRow row : DataFile.read("movement_12in_10_to_5_pct.csv").rows()) {
      assertThat(row.number("change_64ths_in").divide(BigDecimal.valueOf(64))).as(row.place())
          .isCloseTo(row.number("change_in"), within(new BigDecimal("0.00005")));
    }
  }
}
