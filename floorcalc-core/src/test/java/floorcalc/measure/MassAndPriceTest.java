package floorcalc.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MassAndPriceTest {

  @Test
  void massIsKeptAsTyped() {
    assertThat(new Mass(new BigDecimal("19.40"))).hasToString("19.40 kg");
    assertThat(new Mass(new BigDecimal("1E+3"))).hasToString("1000 kg");
    assertThat(new Mass(BigDecimal.ZERO)).hasToString("0 kg");
  }

  @Test
  void massRefuses() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Mass(new BigDecimal("-0.1")))
        .withMessage("a mass must not be negative, but was -0.1 kg");
    assertThatNullPointerException().isThrownBy(() -> new Mass(null)).withMessage("kilograms");
  }

  @Test
  void priceIsKeptAsTyped() {
    assertThat(new Price(new BigDecimal("118.40"), "EUR")).hasToString("118.40 EUR");
    assertThat(new Price(BigDecimal.ZERO, "INR")).hasToString("0 INR");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "eur", "EU", "EURO", "€", "E1R", "EUR\n"})
  void priceRefusesOtherCurrencyCodes(String code) {
    assertThatIllegalArgumentException().isThrownBy(() -> new Price(BigDecimal.ONE, code))
        .withMessage("currency must be three capital letters such as EUR, but was '" + code + "'");
  }

  @Test
  void priceRefuses() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Price(new BigDecimal("-1.50"), "EUR"))
        .withMessage("a price must not be negative, but was -1.50");
    assertThatNullPointerException().isThrownBy(() -> new Price(null, "EUR")).withMessage("amount");
    assertThatNullPointerException().isThrownBy(() -> new Price(BigDecimal.ONE, null)).withMessage("currency");
  }
}
