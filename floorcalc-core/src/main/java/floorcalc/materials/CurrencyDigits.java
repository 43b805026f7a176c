package floorcalc.materials;

import java.util.Set;

/** How many decimals an amount of a currency has, by ISO 4217 (from memory): two but for the currencies listed here. */
final class CurrencyDigits {
  private static final Set<String> NONE = Set.of("BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "UYI",
      "VND", "VUV", "XAF", "XOF", "XPF");
  private static final Set<String> THREE = Set.of("BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND");

  private CurrencyDigits() {}

  static int of(String currency) {
    return NONE.contains(currency) ? 0 : THREE.contains(currency) ? 3 : 2;
  }
}
