package floorcalc.outline;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class WktPropertyTest {
  @Provide
  Arbitrary<Outline> rooms() {
    return RandomRooms.all();
  }

  @Property(tries = 300)
  void readsBackWhatItWrites(@ForAll("rooms") Outline room) {
    assertThat(Wkt.parse(Wkt.write(room))).isEqualTo(room);
    assertThat(Wkt.parse(Wkt.write(room, Wkt.Unit.METRES), Wkt.Unit.METRES)).isEqualTo(room);
  }

  @Property(tries = 300)
  void writesWhatAnotherReaderReads(@ForAll("rooms") Outline room) throws ParseException {
    double area = new WKTReader().read(Wkt.write(room)).getArea();
    double own = room.area().toSquareMillimetres();
    assertThat(area).isCloseTo(own, org.assertj.core.api.Assertions.within(own * 1e-9));
  }

  @Property(tries = 3000)
  void answersNonsenseWithAPlaceInTheText(
      @ForAll @Chars({'(', ')', ',', ' ', '.', '-', 'e', 'x'}) @CharRange(from = '0', to = '9') @StringLength(max = 30)
      String rest) {
    String text = "POLYGON ((" + rest;
    try {
      Wkt.parse(text);
    } catch (WktException e) {
      assertThat(e.position()).isBetween(0, text.length());
    }
  }
}
