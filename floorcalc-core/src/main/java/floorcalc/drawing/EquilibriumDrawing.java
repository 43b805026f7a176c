package floorcalc.drawing;

import floorcalc.measure.PlainNumber;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.ClimateLimits;
import floorcalc.moisture.EquilibriumMoisture;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The moisture content at which wood settles, over the relative humidity of the air from 5 % to 95 %, one line for each temperature; a climate
 * that was measured, and the climate that is asked for, may be marked. Immutable and thread-safe.
 * <p>
 * The sheet is black and grey on white and keeps to A4 and US Letter; every length of the SVG is a millimetre on paper. Texts never overlap. The
 * same temperatures give the same bytes everywhere. Formula and source are those of {@link EquilibriumMoisture}.
 * <pre>{@code
 * String svg = EquilibriumDrawing.at(List.of(Temperature.celsius("20"))).toSvg();
 * }</pre>
 *
 * @since 0.1
 */
public final class EquilibriumDrawing {
  private static final int MOST_LINES = 4;
  private static final int DRIEST = 5;
  private static final int DAMPEST = 95;
  private static final double LEFT = 26;
  private static final double RIGHT = 162;
  private static final double TOP = 20;
  private static final double BOTTOM = 100;
  private static final String[] DASHES = {"", " stroke-dasharray=\"3 1.2\"", " stroke-dasharray=\"0.6 0.8\"", " stroke-dasharray=\"4 1 0.8 1\""};

  private final List<Temperature> temperatures;
  private final AirClimate measured;
  private final ClimateLimits asked;
  private final String title;

  private EquilibriumDrawing(List<Temperature> temperatures, AirClimate measured, ClimateLimits asked, String title) {
    this.temperatures = temperatures;
    this.measured = measured;
    this.asked = asked;
    this.title = title;
  }

  /**
   * Returns a drawing with a line for each temperature.
   *
   * @param temperatures one to four temperatures, each from -20 to 100 degrees Celsius; not null
   * @return the drawing, not null
   * @throws IllegalArgumentException if there are none or more than four, or one is out of range
   */
  public static EquilibriumDrawing at(List<Temperature> temperatures) {
    if (Objects.requireNonNull(temperatures, "temperatures").isEmpty() || temperatures.size() > MOST_LINES) {
      throw new IllegalArgumentException("give one to " + MOST_LINES + " temperatures; there were " + temperatures.size());
    }
    temperatures.forEach(temperature -> moisture(temperature, DRIEST));
    return new EquilibriumDrawing(List.copyOf(temperatures), null, null, "");
  }

  /**
   * Returns the same drawing with a climate marked.
   *
   * @param climate the climate, not null, its humidity from 5 % to 95 %
   * @return the drawing, not null
   * @throws IllegalArgumentException if the humidity is out of range
   */
  public EquilibriumDrawing marking(AirClimate climate) {
    BigDecimal humidity = Objects.requireNonNull(climate, "climate").relativeHumidity().number();
    if (humidity.compareTo(BigDecimal.valueOf(DRIEST)) < 0 || humidity.compareTo(BigDecimal.valueOf(DAMPEST)) > 0) {
      throw new IllegalArgumentException("the humidity to mark must be from " + DRIEST + " % to " + DAMPEST + " %, but was "
          + climate.relativeHumidity());
    }
    return new EquilibriumDrawing(temperatures, climate, asked, title);
  }

  /**
   * Returns the same drawing with a band where the humidity keeps to limits.
   *
   * @param limits the limits, not null
   * @return the drawing, not null
   */
  public EquilibriumDrawing within(ClimateLimits limits) {
    return new EquilibriumDrawing(temperatures, measured, Objects.requireNonNull(limits, "limits"), title);
  }

  /**
   * Returns the same drawing with a title.
   *
   * @param words the title, not null
   * @return the drawing, not null
   */
  public EquilibriumDrawing titled(String words) {
    return new EquilibriumDrawing(temperatures, measured, asked, Objects.requireNonNull(words, "words"));
  }

  private static double moisture(Temperature temperature, int humidity) {
    return EquilibriumMoisture.of(AirClimate.of(temperature, Percent.of(BigDecimal.valueOf(humidity)))).value().number().doubleValue();
  }

  /**
   * Draws.
   *
   * @return an SVG element that needs nothing from outside, to be kept as a file or put into a page; its identifiers begin with
   *     {@code equilibrium}; it ends in a line feed; not null
   */
  public String toSvg() {
    return new Chart().draw();
  }

  /** The lines over their axes. */
  private final class Chart {
    private final Figure figure = new Figure("equilibrium", title, Measures.MILLIMETRES, 1, BOTTOM + 14);
    private final Sheet sheet = figure.sheet;
    private final double highest = 5 * Math.ceil(temperatures.stream().mapToDouble(one -> moisture(one, DAMPEST)).max().orElse(25) / 5);

    private double x(double humidity) {
      return LEFT + humidity / 100 * (RIGHT - LEFT);
    }

    private double y(double moisture) {
      return BOTTOM - moisture / highest * (BOTTOM - TOP);
    }

    String draw() {
      figure.caption(title.isBlank() ? "Wood in balance with air" : title,
          "Moisture content of wood, in % of its dry mass, over the relative humidity of the air");
      if (asked != null) {
        figure.rectangle(x(asked.driest().number().doubleValue()), TOP, x(asked.dampest().number().doubleValue()), BOTTOM, "#ededed", 0);
      }
      axes();
      for (int i = 0; i < temperatures.size(); i++) {
        line(temperatures.get(i), DASHES[i]);
      }
      if (measured != null) {
        mark();
      }
      key();
      sheet.note("For wood in general: species, finish and history make more of a difference than the decimals.");
      return figure.svg(title.isBlank() ? "Moisture content of wood over humidity" : "Moisture content of wood over humidity: " + title,
          description());
    }

    private void axes() {
      for (int moisture = 0; moisture <= highest; moisture += 5) {
        sheet.floor.line("<path stroke=\"#a8a8a8\" stroke-width=\"0.13\" d=\"" + Sheet.segment(LEFT, y(moisture), RIGHT, y(moisture)) + "\"/>");
        figure.writeUpTo(LEFT - 1.5, y(moisture), Integer.toString(moisture) + " %");
      }
      for (int humidity = 0; humidity <= 100; humidity += 10) {
        sheet.floor.line("<path stroke=\"#a8a8a8\" stroke-width=\"0.13\" d=\"" + Sheet.segment(x(humidity), TOP, x(humidity), BOTTOM) + "\"/>");
        figure.write(humidity + " %", x(humidity), BOTTOM + 3);
      }
      figure.write("relative humidity of the air", (LEFT + RIGHT) / 2, BOTTOM + 8);
      figure.line(LEFT, BOTTOM, RIGHT, BOTTOM, Figure.FIRM);
      figure.line(LEFT, TOP, LEFT, BOTTOM, Figure.FIRM);
    }

    private void line(Temperature temperature, String dashes) {
      StringBuilder data = new StringBuilder();
      for (int humidity = DRIEST; humidity <= DAMPEST; humidity++) {
        double y = y(moisture(temperature, humidity));
        data.append(humidity == DRIEST ? 'M' : 'L').append(Svg.number(x(humidity))).append(' ').append(Svg.number(y));
        sheet.take(new Box(x(humidity), y, 0.9, 0.4, 1, 0));
      }
      sheet.floor.line("<path stroke-width=\"0.45\"" + dashes + " d=\"" + data + "\"/>");
    }

    private void mark() {
      Percent content = EquilibriumMoisture.of(measured).value();
      double x = x(measured.relativeHumidity().number().doubleValue());
      double y = y(content.number().doubleValue());
      figure.dashed(x, y, x, BOTTOM);
      figure.dashed(LEFT, y, x, y);
      figure.dot(x, y, 0.9, "#000");
      String text = measured.temperature() + ", " + measured.relativeHumidity() + ": " + content.number().setScale(1, RoundingMode.HALF_UP)
          .toPlainString() + " %";
      boolean written = false;
      for (double up = 3; up < 24 && !written; up += 1.5) {
        written = figure.writeUpTo(x - 1, y - up, text) || figure.writeFrom(x + 2, y + up, text);
      }
      if (!written) {
        sheet.note("Marked: " + text + ".");
      }
    }

    private void key() {
      for (int i = 0; i < temperatures.size(); i++) {
        double x = figure.foot.next("at " + temperatures.get(i));
        double y = figure.foot.middle();
        sheet.lines.line("<path stroke-width=\"0.45\"" + DASHES[i] + " d=\"" + Sheet.segment(x, y, x + 7, y) + "\"/>");
      }
      if (asked != null) {
        double x = figure.foot.next("asked for: " + asked.driest() + " to " + asked.dampest() + " (" + asked.name() + ")");
        sheet.floor.line("<rect " + figure.foot.rectangle(x) + " fill=\"#ededed\" stroke=\"none\"/>");
      }
    }

    private String description() {
      List<String> lines = new ArrayList<>();
      for (Temperature one : temperatures) {
        lines.add("at " + one + " from " + rounded(moisture(one, 30)) + " % in air of 30 % to " + rounded(moisture(one, 60)) + " % in air of 60 %");
      }
      return "A line chart. The moisture content of wood rises with the humidity of the air: " + Words.list(lines, MOST_LINES) + "."
          + (measured == null ? "" : " Marked: " + measured.temperature() + " and " + measured.relativeHumidity() + ", where wood settles at "
              + rounded(EquilibriumMoisture.of(measured).value().number().doubleValue()) + " %.");
    }

    private String rounded(double value) {
      return PlainNumber.text(value, 1);
    }
  }
}
