package floorcalc.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Cut;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.PieceKind;
import java.util.List;
import org.junit.jupiter.api.Test;

class RestsTest {
  private static final LaidPiece A = piece("a", "704.63438", "1374.31953", "72.488638", "86");
  private static final LaidPiece B = piece("b", "705.15133", "1374.83648", "0", "49.969838");
  private static final LaidPiece C = piece("c", "0", "699.58176", "68.284688", "86");
  private static final LaidPiece D = piece("d", "0", "700.09871", "0", "49.969838");

  /**
   * Four pieces of a board of 1387 by 86 mm, kerf 5.05262 mm: neither a crosscut nor a rip beside the first of them spares all others, and no section
   * holds two side by side. By hand: ripped at 49.969838 mm, b and d lie in a strip of full length. The other strip, from 49.969838 + 5.05262 =
   * 55.022458 to 86, so 30.977542 wide, is crosscut behind c at 699.58176; 699.58176 + 5.05262 = 704.63438 is where a begins. What is left beyond
   * a: 1387 - 1374.31953 - 5.05262 = 7.62785 long; beside it: 72.488638 - 5.05262 - 55.022458 = 12.41356 wide, as long as a, 669.68515.
   */
  @Test
  void aBoardIsPartedUntilThePieceLiesAlone() {
    Rests rests = new Rests(mm("1387"), mm("86"), mm("5.05262"));
    assertThat(rests.cut(A.from(), List.of(B, C, D))).containsExactly(
        new Rest(mm("1387"), mm("49.969838"), List.of("b", "d")),
        new Rest(mm("699.58176"), mm("30.977542"), List.of("c")),
        new Rest(mm("669.68515"), mm("12.41356"), List.of()),
        new Rest(mm("7.62785"), mm("30.977542"), List.of()));
    assertThat(rests.cut(B.from(), List.of(C, D))).anyMatch(rest -> rest.length().equals(mm("700.09871")));
    assertThat(rests.cut(C.from(), List.of(D))).allMatch(rest -> rest.length().equals(C.from().alongTo()));
    assertThat(rests.cut(D.from(), List.of())).isEmpty();
  }

  private static LaidPiece piece(String name, String from, String to, String low, String high) {
    Ring square = Ring.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(1, 0), Point.ofMillimetres(1, 1));
    return new LaidPiece(name, 1, PieceKind.SINGLE, square, List.of(), new Cut(1, mm(from), mm(to), mm(low), mm(high)));
  }

  private static Length mm(String text) {
    return Length.ofMillimetres(text);
  }
}
