package floorcalc.outline;

import static floorcalc.outline.RingTest.ring;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WktTest {
  private static final Outline ROOM = Outline.of(ring(0, 0, 4000, 0, 4000, 3000, 0, 3000),
      List.of(ring(1000, 1000, 1400, 1000, 1400, 1500)));

  @Test
  void write() {
    assertThat(Wkt.write(ROOM)).isEqualTo(
        "POLYGON ((0 0, 4000 0, 4000 3000, 0 3000, 0 0), (1000 1000, 1400 1500, 1400 1000, 1000 1000))");
    assertThat(Wkt.write(ROOM, Wkt.Unit.METRES))
        .isEqualTo("POLYGON ((0 0, 4 0, 4 3, 0 3, 0 0), (1 1, 1.4 1.5, 1.4 1, 1 1))");
    assertThat(Wkt.write(Outline.of(Ring.ofNanometres(new long[] {-1, 10_000_000, 0}, new long[] {0, 0, 100_000_001}))))
        .isEqualTo("POLYGON ((-0.000001 0, 10 0, 0 100.000001, -0.000001 0))");
  }

  @Test
  void parse() {
    assertThat(Wkt.parse(Wkt.write(ROOM))).isEqualTo(ROOM);
    assertThat(Wkt.parse("POLYGON((0 0,4 0,4 3,0 3,0 0),(1 1,1.4 1.5,1.4 1,1 1))", Wkt.Unit.METRES)).isEqualTo(ROOM);
    assertThat(Wkt.parse(" polygon\n( ( 0 0 , 4e3 0, +4000.0 .3E4, 0 3000, -0 0 ) ,"
        + "(1000 1000, 1400 1500, 1400 1000., 1000 1000) ) ")).isEqualTo(ROOM);
    assertThat(Wkt.parse("POLYGON ((0 0, 0.000001 0, 0 1, 0 0))"))
        .isEqualTo(Outline.of(Ring.ofNanometres(new long[] {0, 1, 0}, new long[] {0, 0, 1_000_000})));
  }

  @Test
  void parseRoundsOnlyWhenAsked() {
    String text = "POLYGON ((0 0, 1.0000000005 0, 0 1, 0 0))";
    assertThat(Wkt.parse(text, Wkt.Unit.METRES, RoundingMode.HALF_UP).shell().x(1)).isEqualTo(1_000_000_001);
    assertThat(Wkt.parse(text, Wkt.Unit.METRES, RoundingMode.HALF_EVEN).shell().x(1)).isEqualTo(1_000_000_000);
    assertThatThrownBy(() -> Wkt.parse(text, Wkt.Unit.METRES)).isInstanceOf(WktException.class)
        .hasMessageContaining("1.0000000005 is finer than a nanometre; give at most 9 decimals");
  }

  @Test
  void parseRingsKeepsTheirOrder() {
    assertThat(Wkt.parseRings("POLYGON ((0 0, 0 3, 4 3, 0 0), (1 2, 2 2.5, 1 2.5, 1 2))", Wkt.Unit.MILLIMETRES))
        .containsExactly(ring(0, 0, 0, 3, 4, 3),
            Ring.ofNanometres(new long[] {1_000_000, 2_000_000, 1_000_000}, new long[] {2_000_000, 2_500_000, 2_500_000}));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
      "~~ | 0 | it must start with POLYGON",
      "42 | 0 | it must start with POLYGON",
      "POINT (0 0) | 0 | only POLYGON is read, but it starts with POINT",
      "MULTIPOLYGON (((0 0, 1 0, 1 1, 0 0))) | 0 | a MULTIPOLYGON is more than one room; give each its own POLYGON",
      "POLYGON EMPTY | 8 | the polygon is EMPTY; a room needs at least 3 corners",
      "POLYGON Z ((0 0 0, 1 0 0, 1 1 0, 0 0 0)) | 8 | only x and y are read; leave out Z",
      "POLYGON | 7 | expected a '(' before the rings of the polygon",
      "POLYGON () | 9 | expected a '(' before the points of a ring",
      "POLYGON (()) | 10 | a number is missing, the x of a point",
      "POLYGON ((0)) | 11 | a number is missing, the y of a point",
      "POLYGON ((0 0, 1 0, 1 1, 0 0 | 28 | expected a ')' after the last point",
      "POLYGON ((0 0, 1 0, 1 1, 0 0) | 29 | expected a ',' before another ring or a ')' after the last",
      "POLYGON ((0 0, 1 0, 1 1, 0 0)) x | 31 | nothing may follow the polygon",
      "POLYGON ((0 0, 1 0, 1 1, 0 0)); | 30 | nothing may follow the polygon",
      "POLYGON ((0 0, 1 0, 1 1, 0 1)) | 28 | the last point of a ring must repeat the first",
      "POLYGON ((0 0)) | 13 | the last point of a ring must repeat the first",
      "POLYGON ((0 0, 1 0 9, 1 1, 0 0)) | 19"
          + " | expected a ',' before another point or a ')' after the last; a point is an x and a y",
      "POLYGON ((0 0, 1-2 0, 1 1, 0 0)) | 15 | \"1-2\" is not a number",
      "POLYGON ((0 0, NaN 0, 1 1, 0 0)) | 15 | a number is missing, the x of a point",
      "POLYGON ((0 0, 1,5 0, 1 1, 0 0)) | 16 | a number is missing, the y of a point",
      "POLYGON ((0 0, 1e20 0, 1 1, 0 0)) | 15 | 1e20 is out of range",
      "POLYGON ((0 0, 1e999999999 0, 1 1, 0 0)) | 15 | the number is too long",
      "POLYGON ((0 0, 0.0000001 0, 1 1, 0 0)) | 15 | 0.0000001 is finer than a nanometre; give at most 6 decimals",
      "POLYGON ((0 0, 00000000000000000000000000000000000000001 0, 1 1, 0 0)) | 15 | the number is too long",
  })
  void parseRefuses(String text, int position, String reason) {
    assertThatThrownBy(() -> Wkt.parse(text)).isInstanceOfSatisfying(WktException.class, e -> {
      assertThat(e.position()).isEqualTo(position);
      assertThat(e.reason()).isEqualTo(reason);
      assertThat(e).hasMessageStartingWith("cannot read well-known text at position " + position + " (")
          .hasMessageEndingWith("): " + reason);
    });
  }

  @Test
  void messagesShowThePlace() {
    assertThatThrownBy(() -> Wkt.parse("POLYGON ((0 0, 1000 0, 1000 oops, 0 0))")).hasMessage(
        "cannot read well-known text at position 28 (\"…((0 0, 1000 0, 1000 ►oops, 0 0))\"):"
            + " a number is missing, the y of a point");
    assertThatThrownBy(() -> Wkt.parse("POLYGON ((0 0")).hasMessage(
        "cannot read well-known text at position 13 (its end): the last point of a ring must repeat the first");
  }
}
