package floorcalc.outline;

import static floorcalc.outline.RingTest.ring;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NecksTest {
  private static final Length GAP = Length.ofMillimetres(10);

  private static Calculated<ExpansionGap> inset(String room) {
    return ExpansionGap.inset(Wkt.parse("POLYGON ((" + room + ", 0 0))"), GAP);
  }

  private static List<String> codes(Calculated<ExpansionGap> gap) {
    return gap.findings().stream().map(Finding::code).toList();
  }

  /** Two rooms of 2 m by 2 m, joined by a neck 1 m long and as wide as two gaps and some nanometres. */
  private static String dumbbell(long overNanometres) {
    String high = Length.ofMillimetres(1020).plus(Length.ofNanometres(overNanometres)).toMillimetreString();
    return "0 0, 2000 0, 2000 1000, 3000 1000, 3000 0, 5000 0, 5000 2000, 3000 2000, 3000 " + high + ", 2000 " + high
        + ", 2000 2000, 0 2000";
  }

  @ParameterizedTest
  @ValueSource(longs = {-2, -1, 0, 1, 2, 3, 10, 999, 1000})
  void aNeckAsWideAsTwoGapsIsClosed(long over) {
    Calculated<ExpansionGap> gap = inset(dumbbell(over));

    assertThat(gap.value().laid()).hasSize(2).allSatisfy(piece -> assertThat(OutlineCheck.faultsOf(piece)).isEmpty());
    assertThat(gap.value().laid()).extracting(piece -> piece.extent().width())
        .as("2000 less two gaps").containsExactly(Length.ofMillimetres(1980), Length.ofMillimetres(1980));
    assertThat(codes(gap)).contains("gap-splits-floor");
  }

  @ParameterizedTest
  @ValueSource(longs = {1001, 2000, 1_000_000})
  void aWiderNeckIsLaid(long over) {
    Calculated<ExpansionGap> gap = inset(dumbbell(over));

    assertThat(gap.value().laid()).hasSize(1);
    assertThat(gap.value().laid().get(0).shell().size()).isEqualTo(12);
    assertThat(codes(gap)).isEmpty();
  }

  @Test
  void aStripBesideTheFloorIsCutOff() {
    // The arm is 20.0005 mm high, so that 0.5 µm of it are left to lay; of the room 980 mm by 480 mm.
    List<Outline> laid = inset("0 0, 3000 0, 3000 20.0005, 1000 20.0005, 1000 500, 0 500").value().laid();

    assertThat(laid).hasSize(1);
    assertThat(laid.get(0).extent().width()).isEqualTo(Length.ofMillimetres(980));
    assertThat(laid.get(0).extent().height()).isEqualTo(Length.ofMillimetres(480));
  }

  @Test
  void aNeedleBesideTheFloorIsCutOff() {
    // The upper side of the arm falls from 20.0004 mm to 20 mm: less the gaps a needle 0.4 µm thick and 2 m long.
    List<Outline> laid = inset("0 0, 3000 0, 3000 20, 1000 20.0004, 1000 500, 0 500").value().laid();

    assertThat(laid).hasSize(1);
    assertThat(laid.get(0).extent().width()).isEqualTo(Length.ofMillimetres(980));
  }

  @Test
  void aRoomThatIsANeckIsSwallowed() {
    assertThat(inset("0 0, 3000 0, 3000 20.001, 0 20.001").value().laid()).isEmpty();
    assertThat(codes(inset("0 0, 3000 0, 3000 20.001, 0 20.001"))).contains("gap-swallows-floor");
    assertThat(inset("0 0, 20.1 0, 20.1 20.1, 0 20.1").value().laid()).as("0.1 mm by 0.1 mm").isEmpty();
    assertThat(inset("0 0, 20.2 0, 20.2 20.1, 0 20.1").value().laid()).as("0.2 mm by 0.1 mm").hasSize(1);
  }

  @Test
  void withoutAGapToo() {
    // A spike 1 nm wide and 910 mm long on top of a room.
    Outline room = Outline.of(Ring.of(List.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(2000, 0),
        Point.ofMillimetres(2000, 1910), Point.ofNanometres(1_999_999_999L, 1_910_000_000L),
        Point.ofNanometres(1_999_999_999L, 1_000_000_000L), Point.ofMillimetres(0, 1000))));

    List<Outline> laid = ExpansionGap.inset(room, Length.ZERO).value().laid();

    assertThat(laid).hasSize(1);
    assertThat(laid.get(0).extent().height()).isEqualTo(Length.ofMillimetres(1000));
  }

  @Test
  void voidsNearEachOtherAreLeftAsTheyAre() {
    // Their corners are 20.0005 mm apart: the floor between is 0.5 µm wide at one place only and hinders nobody.
    Outline room = Outline.of(ring(0, 0, 2000, 0, 2000, 1000, 0, 1000), List.of(
        Wkt.parse("POLYGON ((500 500, 600 400, 700 500, 600 600, 500 500))").shell().reversed(),
        Wkt.parse("POLYGON ((728.2847 500, 828 400, 928 500, 828 600, 728.2847 500))").shell().reversed()));

    List<Outline> laid = ExpansionGap.inset(room, GAP).value().laid();

    assertThat(laid).hasSize(1);
    assertThat(OutlineCheck.faultsOf(laid.get(0))).isEmpty();
  }
}
