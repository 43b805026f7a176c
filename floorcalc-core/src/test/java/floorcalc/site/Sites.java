package floorcalc.site;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.Construction;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.Heating;
import floorcalc.moisture.MoistureMethod;
import floorcalc.moisture.MoistureReading;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Substrate;
import floorcalc.moisture.Temperature;
import floorcalc.movement.GapPoint;
import floorcalc.movement.Pinning;
import floorcalc.working.Judgement;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** An invented room to be judged, and readings with which it is ready. */
final class Sites {
  static final BoardGoods BOARDS = BoardGoods.of(mm("2200"), mm("185"), mm("14"), 6).withSpecies("white oak");
  /** 3.6 m across the boards with 10 mm on each side. */
  static final SiteFloor FLOOR = SiteFloor.of("Study", Area.ofSquareMetres("15.2"), BOARDS)
      .withSubfloor(Substrate.CEMENT_SCREED).withGaps(GapPoint.bothSides(mm("3600"), mm("10")));
  static final SiteFloor SOLID = SiteFloor.of("Study", Area.ofSquareMetres("15.2"),
      BOARDS.withConstruction(Construction.SOLID)).withGaps(GapPoint.bothSides(mm("3600"), mm("10")));

  /** Every limit kept: 1.6 CM-% of 1.8, boards 8.2 % in air that asks for 8.9 %, a level line of 3 m. */
  static final SiteReadings READY = SiteReadings.NONE.withAir(air("21 °C", "48"))
      .withSeasons(air("21 °C", "45"), air("23 °C", "60")).withHeating(Heating.HEATED)
      .withSubfloorMoisture(List.of(cm("1.6"), cm("1.4"))).withBoardMoisture(percents("8.1", "8.4", "8.1"))
      .withDaysInRoom(new BigDecimal("3")).withPacksClosed()
      .withLines(List.of(line("A", "100", level(31)))).withTrimCover(mm("20")).withPinning(Pinning.found(List.of()));

  private Sites() {}

  static Length mm(String millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  static AirClimate air(String temperature, String humidity) {
    return AirClimate.of(Temperature.parse(temperature), Percent.of(humidity));
  }

  static MoistureReading cm(String value) {
    return MoistureReading.of(MoistureMethod.CM, value);
  }

  static List<Percent> percents(String... numbers) {
    return Arrays.stream(numbers).map(Percent::of).toList();
  }

  /** A line of heights in millimetres, such as {@code "0 1 0.5"}. */
  static HeightLine line(String name, String spacing, String heights) {
    return HeightLine.ofEqualSpacing(name, mm(spacing), Arrays.stream(heights.split(" ")).map(Sites::mm).toList());
  }

  static String level(int readings) {
    return "0 ".repeat(readings).strip();
  }

  /** A level grid of so many columns and rows with a spacing, one height in the middle of each cell of a text of rows. */
  static List<SpotLevel> grid(String spacing, String... rows) {
    List<SpotLevel> spots = new ArrayList<>();
    for (int row = 0; row < rows.length; row++) {
      String[] heights = rows[row].split(" ");
      for (int column = 0; column < heights.length; column++) {
        spots.add(SpotLevel.of(mm(spacing).multipliedBy(column), mm(spacing).multipliedBy(row), mm(heights[column])));
      }
    }
    return spots;
  }

  static Readiness judge(SiteReadings readings) {
    return Readiness.of(FLOOR, readings).value();
  }

  static Judgement only(Readiness readiness, String code) {
    List<Judgement> found = readiness.judgements().stream().filter(one -> one.code().equals(code)).toList();
    if (found.size() != 1) {
      throw new AssertionError("one judgement " + code + " was expected, but there are " + found);
    }
    return found.get(0);
  }

  static List<Judgement> flatness(Readiness readiness) {
    return readiness.judgements().stream().filter(one -> one.code().equals("flatness")).toList();
  }
}
