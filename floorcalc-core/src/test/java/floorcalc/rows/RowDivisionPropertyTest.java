package floorcalc.rows;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

class RowDivisionPropertyTest {
  private static final long MM = 1_000_000;

  private static Calculated<RowDivision> divide(long width, long pitch, long minimum, RowWay way) {
    return RowDivision.of(nm(width), nm(pitch), nm(minimum), way);
  }

  private static Length nm(long nm) {
    return Length.ofNanometres(nm);
  }

  @Property
  void rowsCloseOnTheWidthToTheNanometre(@ForAll @LongRange(min = 1, max = 200_000 * MM) long width,
      @ForAll @LongRange(min = 20 * MM, max = 400 * MM) long pitch, @ForAll @LongRange(max = 300 * MM) long minimum,
      @ForAll RowWay way) {
    Calculated<RowDivision> calculated = divide(width, pitch, minimum, way);
    RowDivision rows = calculated.value();
    long outer = rows.rows() == 1 ? rows.firstRow().toNanometres()
        : rows.firstRow().plus(rows.lastRow()).toNanometres();
    assertThat(outer + Math.max(0, rows.rows() - 2) * pitch).isEqualTo(width);
    assertThat(rows.firstRow().toNanometres()).isBetween(1L, pitch);
    assertThat(rows.lastRow().toNanometres()).isBetween(1L, pitch);
    assertThat((rows.rows() - 1) * pitch).isLessThan(width);
    assertThat(rows.rows() * pitch).isGreaterThanOrEqualTo(width);
    assertStepsHold(calculated);
  }

  @Property
  void bothOuterRowsReachTheMinimumWhereverTheyCan(@ForAll @LongRange(min = 1, max = 2_000) long width,
      @ForAll @LongRange(min = 1, max = 300) long pitch, @ForAll @LongRange(max = 300) long minimum,
      @ForAll RowWay way) {
    RowDivision rows = divide(width, pitch, minimum, way).value();
    long least = Math.min(minimum, pitch);
    boolean can = width <= pitch ? width >= least : false;
    for (long first = 1; first <= pitch && first < width && !can; first++) {
      long last = Math.floorMod(width - first - 1, pitch) + 1;
      can = first >= least && last >= least;
    }
    long narrower = Math.min(rows.firstRow().toNanometres(), rows.lastRow().toNanometres());
    assertThat(narrower >= least).isEqualTo(can);
  }

  @Property
  void noSplitMakesTheNarrowerOuterRowWider(@ForAll @LongRange(min = 1, max = 2_000) long width,
      @ForAll @LongRange(min = 1, max = 300) long pitch) {
    RowDivision rows = divide(width, pitch, 0, RowWay.WIDEST_STRIP).value();
    long narrower = Math.min(rows.firstRow().toNanometres(), rows.lastRow().toNanometres());
    for (long first = 1; first <= pitch && first < width && width > pitch; first++) {
      assertThat(Math.min(first, Math.floorMod(width - first - 1, pitch) + 1)).isLessThanOrEqualTo(narrower);
    }
  }

  @Property
  void tighterMinimumNeverGivesFewerFindings(@ForAll @LongRange(min = 1, max = 3_000) long width,
      @ForAll @LongRange(min = 1, max = 300) long pitch, @ForAll @LongRange(max = 300) long minimum,
      @ForAll @LongRange(max = 100) long tighter, @ForAll RowWay way) {
    assertThat(divide(width, pitch, minimum + tighter, way).findings())
        .hasSizeGreaterThanOrEqualTo(divide(width, pitch, minimum, way).findings().size());
  }

  @Property
  void startLineOfAPlainBayIsTheDivision(@ForAll @LongRange(min = 1, max = 3_000) long width,
      @ForAll @LongRange(min = 1, max = 300) long pitch, @ForAll @LongRange(max = 300) long minimum,
      @ForAll @LongRange(min = -500, max = 500) long low, @ForAll RowWay way) {
    RowDivision rows = divide(width, pitch, minimum, way).value();
    StartLine line = StartLine.choose(List.of(Stop.floorAbove("start", nm(low)), Stop.floorBelow("end", nm(low + width))),
        nm(low), nm(pitch), nm(minimum), way).value();
    if (rows.rows() == 1) {
      assertThat(line.firstRowWidth()).isEqualTo(nm(pitch));
      assertThat(line.strips().get(1).width()).isEqualTo(rows.lastRow());
    } else {
      assertThat(line.firstRowWidth()).isEqualTo(rows.firstRow());
      assertThat(line.strips().get(1).width()).isEqualTo(rows.lastRow());
    }
  }
}
