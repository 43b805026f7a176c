package floorcalc.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Units of length and area against the published exact factors. The sources stand at the head of
 * {@code reference/unit_conversions.csv}. All values are exact, so there is no tolerance.
 */
@Tag("reference")
class UnitConversionReferenceTest {

  /** How each unit of length of the table is written here; a yard is three feet by definition. */
  private static final Map<String, Length> LENGTHS = lengths();
  /** Each unit of area as a product of two lengths; an acre is a chain by a furlong, 66 ft by 660 ft. */
  private static final Map<String, Area> AREAS = areas();
  /** Not whole nanometres: no unit of a tape, and off use since 2022. */
  private static final String REFUSED = "US survey foot";

  record Row(String unit, String siUnit, String factor, String fraction) { }

  @ParameterizedTest
  @MethodSource("lengthRows")
  void length(Row row) {
    Length length = LENGTHS.get(row.unit());
    BigInteger perUnit = BigInteger.valueOf(row.siUnit().equals("mm") ? 1_000_000 : 1_000_000_000);
    assertThat(BigInteger.valueOf(length.toNanometres())).isEqualTo(fraction(row, perUnit));
    String millimetres = new BigDecimal(row.factor()).movePointRight(row.siUnit().equals("mm") ? 0 : 3).toPlainString();
    assertThat(Length.ofMillimetres(millimetres)).isEqualTo(length);
    assertThat(Length.parse(row.factor() + " " + row.siUnit())).isEqualTo(length);
  }

  @ParameterizedTest
  @MethodSource("areaRows")
  void area(Row row) {
    Area area = AREAS.get(row.unit());
    assertThat(area.toHalfSquareNanometres()).isEqualTo(fraction(row, BigInteger.TEN.pow(18).shiftLeft(1)));
    assertThat(Area.ofSquareMetres(row.factor())).isEqualTo(area);
  }

  @Test
  void everyRowOfLengthOrAreaIsChecked() {
    List<String> metres = rows().filter(r -> List.of("m", "mm").contains(r.siUnit())).map(Row::unit)
        .filter(unit -> !unit.equals(REFUSED)).collect(Collectors.toList());
    List<String> squareMetres = rows().filter(r -> r.siUnit().equals("m2")).map(Row::unit)
        .collect(Collectors.toList());
    assertThat(metres).hasSize(8).containsExactlyInAnyOrderElementsOf(LENGTHS.keySet());
    assertThat(squareMetres).hasSize(4).containsExactlyInAnyOrderElementsOf(AREAS.keySet());
  }

  static Stream<Row> lengthRows() {
    return rows().filter(row -> LENGTHS.containsKey(row.unit()));
  }

  static Stream<Row> areaRows() {
    return rows().filter(row -> AREAS.containsKey(row.unit()));
  }

  private static Map<String, Length> lengths() {
    Map<String, Length> units = new LinkedHashMap<>();
    units.put("inch", Length.parse("1 in"));
    units.put("foot (international)", Length.parse("1 ft"));
    units.put("yard", Length.parse("3 ft"));
    units.put("mil (0.001 in)", Length.parse("0.001 in"));
    units.put("1/16 inch", Length.ofInches(0, 1, 16));
    units.put("1/8 inch", Length.parse("1/8 in"));
    units.put("3/16 inch", Length.ofInches(0, 3, 16));
    units.put("1/4 inch", Length.parse("¼\""));
    return units;
  }

  private static Map<String, Area> areas() {
    Map<String, Area> units = new LinkedHashMap<>();
    units.put("square inch", Length.parse("1\"").times(Length.parse("1\"")));
    units.put("square foot", Length.parse("1'").times(Length.parse("1'")));
    units.put("square yard", Length.parse("3'").times(Length.parse("3'")));
    units.put("acre (international)", Length.parse("66 ft").times(Length.parse("660 ft")));
    return units;
  }

  /** Returns the row's fraction times a scale, which must come out whole. */
  private static BigInteger fraction(Row row, BigInteger scale) {
    String[] parts = row.fraction().split("/");
    BigInteger[] value = new BigInteger(parts[0]).multiply(scale).divideAndRemainder(new BigInteger(parts[1]));
    assertThat(value[1]).isZero();
    return value[0];
  }

  private static Stream<Row> rows() {
    try (BufferedReader in = new BufferedReader(new InputStreamReader(
        UnitConversionReferenceTest.class.getResourceAsStream("/reference/unit_conversions.csv"),
        StandardCharsets.UTF_8))) {
      // the one row with commas inside quotes is neither a length nor an area
      return in.lines().filter(line -> !line.startsWith("#") && !line.startsWith("\"")).skip(1)
          .map(line -> line.split(",", -1)).peek(cells -> assertThat(cells).as(Arrays.toString(cells)).hasSize(5))
          .map(cells -> new Row(cells[0], cells[1], cells[2], cells[4]))
          .collect(Collectors.toList()).stream();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
