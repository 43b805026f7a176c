package floorcalc.laying;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.bays.ExpansionBreak;
import floorcalc.measure.Length;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A square room of 2 m with a column of 200 mm in its middle; gaps of 12 mm, breaks of 24 mm. */
class RoomBreaksTest {
  private static final Calculated<ExpansionGap> FLOOR = ExpansionGap.inset(Wkt.parse("POLYGON ((0 0, 2000 0, 2000 2000, 0 2000, 0 0),"
      + " (900 900, 900 1100, 1100 1100, 1100 900, 900 900))"), Length.ofMillimetres(12));
  private static final ExpansionBreak LEFT_OF_COLUMN = line(0, 1000, 900, 1000, ExpansionBreak.Reason.RUN_ACROSS);
  private static final ExpansionBreak RIGHT_OF_COLUMN = line(1100, 1000, 2000, 1000, ExpansionBreak.Reason.RUN_ACROSS);

  private static ExpansionBreak line(long ax, long ay, long bx, long by, ExpansionBreak.Reason reason) {
    return new ExpansionBreak(Point.ofMillimetres(ax, ay), Point.ofMillimetres(bx, by), reason, "for the test");
  }

  private static RoomBreaks onFloor(ExpansionBreak... lines) {
    return new RoomBreaks(List.of(lines), List.of(), Length.ofMillimetres(24), List.of(), List.of()).onFloor(FLOOR, "Room");
  }

  /** Neither parts the floor alone, both together do. */
  @Test
  void twoLinesThatPartTheFloorTogetherStay() {
    RoomBreaks breaks = onFloor(LEFT_OF_COLUMN, RIGHT_OF_COLUMN);
    assertThat(breaks.lines()).containsExactly(LEFT_OF_COLUMN, RIGHT_OF_COLUMN);
    assertThat(breaks.bays(FLOOR)).hasSize(2);
    assertThat(breaks.findings()).isEmpty();
  }

  /**
   * A line over a square corner at 45 degrees, with legs of 40 mm: 28.28 mm from the corner. The floor begins 12 √2 = 16.97 mm from the corner, 11.31 mm
   * before the line, and half the gap of the break takes 12: no floor is left there. The line lies on floor, so the floor stays as it is without it.
   */
  @Test
  void aLineWithFloorOnOneSideOnlyIsLeftOut() {
    ExpansionBreak corner = line(40, 0, 0, 40, ExpansionBreak.Reason.RUN_ACROSS);
    RoomBreaks breaks = onFloor(corner, LEFT_OF_COLUMN, RIGHT_OF_COLUMN);
    assertThat(breaks.lines()).containsExactly(LEFT_OF_COLUMN, RIGHT_OF_COLUMN);
    assertThat(breaks.overNoFloor()).isEmpty();
    assertThat(breaks.bays(FLOOR)).hasSize(2);
    assertThat(breaks.findings()).extracting(Finding::code).containsExactly("break-parts-no-floor");
    assertThat(breaks.findings().get(0).message()).endsWith("no floor lies on one side of it");
    assertThat(breaks.parts(FLOOR.value().room())).hasSize(2);
  }

  /** The same over the very corner, where no floor lies at all: with legs of 20 mm it is 10 mm from both walls in its middle. */
  @Test
  void aLineOverNoFloorPartsTheRoomWithoutABreak() {
    ExpansionBreak corner = line(20, 0, 0, 20, ExpansionBreak.Reason.RUN_ACROSS);
    RoomBreaks breaks = onFloor(corner);
    assertThat(breaks.lines()).isEmpty();
    assertThat(breaks.overNoFloor()).containsExactly(corner);
    assertThat(breaks.findings().get(0).message()).endsWith("no floor lies between");
  }

  /** What the job gives stays, whatever it parts. */
  @Test
  void aGivenLineStays() {
    ExpansionBreak corner = line(40, 0, 0, 40, ExpansionBreak.Reason.GIVEN);
    assertThat(onFloor(corner).lines()).containsExactly(corner);
  }
}
