package floorcalc.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;

/** Sums in 128 bits against whole numbers of any size. */
class WideSumPropertyTest {

  @Property
  void sumsOfProducts(@ForAll @Size(max = 12) List<Long> factors, @ForAll boolean less) {
    WideSum sum = new WideSum();
    BigInteger expected = BigInteger.ZERO;
    for (int i = 0; i + 1 < factors.size(); i += 2) {
      long a = factors.get(i) >> 3;
      long b = factors.get(i + 1);
      BigInteger product = BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
      if (less && i % 4 == 0) {
        sum.subtractProduct(a, b);
        expected = expected.subtract(product);
      } else {
        sum.addProduct(a, b);
        expected = expected.add(product);
      }
    }
    assertThat(sum.value()).isEqualTo(expected);
    assertThat(sum.signum()).isEqualTo(expected.signum());
    WideSum twice = new WideSum();
    twice.add(sum);
    twice.add(sum);
    assertThat(twice.value()).isEqualTo(expected.shiftLeft(1));
    sum.negate();
    assertThat(sum.value()).isEqualTo(expected.negate());
    sum.clear();
    assertThat(sum.value()).isEqualTo(BigInteger.ZERO);
  }
}
