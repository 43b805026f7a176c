package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Point;
import floorcalc.rows.ControlLine;
import floorcalc.rows.FloorPart;
import floorcalc.rows.FloorStops;
import floorcalc.rows.StartLine;
import floorcalc.rows.Stop;
import floorcalc.rows.StripTable;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import java.io.PrintStream;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows where one start line serves all stops of a floor best. */
@Command(name = "start-line", mixinStandardHelpOptions = true,
    description = "Shows where one start line leaves the widest strips at all stops of one room or several, and how the strips change"
        + " while it goes through one board.")
final class ExplainStartLine extends Explaining {
  @Option(names = "--room", required = true, paramLabel = "NAME: OUTLINE", converter = Typed.OfPart.class,
      description = "A room or the floor of an opening, less its gap, as \"name: x,y x,y x,y ...\"; once for each, all in the same"
          + " coordinates.")
  private List<FloorPart> rooms;

  @Option(names = "--line", paramLabel = "LINE", converter = Typed.OfTwoPoints.class,
      description = "Two points that the boards run along, \"x,y x,y\"; along x if not given.")
  private Typed.TwoPoints line;

  @Option(names = "--pitch", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Distance from row to row as laid.")
  private Length pitch;

  @Option(names = "--minimum", paramLabel = "LENGTH", defaultValue = "70", converter = Typed.OfLength.class,
      description = "Narrowest strip; 70 mm if not given.")
  private Length minimum;

  @Option(names = "--step", paramLabel = "LENGTH", defaultValue = "20", converter = Typed.OfLength.class,
      description = "From line to line of the table; 20 mm if not given.")
  private Length step;

  @Option(names = "--plus-minus", paramLabel = "LENGTH", defaultValue = "3", converter = Typed.OfLength.class,
      description = "Measuring error that the strips are judged with; 3 mm if not given.")
  private Length plusMinus;

  private List<Stop> stops;
  private StartLine onLine;

  ExplainStartLine(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<StripTable> calculate() {
    FloorStops floor = FloorStops.of(rooms, line == null ? ControlLine.through(Point.of(Length.ZERO, Length.ZERO), Direction.ALONG_X)
        : ControlLine.of(line.from(), line.to()));
    stops = floor.stops();
    RuleValue<Length> rule = new RuleValue<>(LayingRules.MINIMUM_ROW_WIDTH, minimum, Source.GIVEN);
    onLine = floor.startAtLine(pitch, rule).value();
    return StripTable.of(stops, floor.low(), pitch, rule, step, plusMinus);
  }

  @Override
  String below(Object value) {
    StripTable table = (StripTable) value;
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < stops.size(); i++) {
      Stop stop = stops.get(i);
      text.append('\n').append((char) ('a' + i % 26)).append(i < 26 ? "" : Integer.toString(i / 26)).append(": ").append(stop.name())
          .append(stop.side() == Stop.Side.FLOOR_ABOVE ? ", floor begins at " : ", floor ends at ").append(stop.low())
          .append(stop.taper().isZero() ? "" : " to " + stop.high());
    }
    if (line != null) {
      text.append("\nrow line on the line given, first row ").append(onLine.firstRowWidth().toMillimetreString()).append(':');
      onLine.strips().forEach(strip -> text.append(' ').append(strip.width().toMillimetreString()));
    }
    text.append("\nfirst row, strips in mm as measured, narrowest, narrowest within plus or minus ").append(table.plusMinus());
    for (StripTable.Entry entry : table.entries()) {
      text.append('\n').append(entry.firstRow().toMillimetreString()).append(':');
      entry.strips().forEach(strip -> text.append(' ').append(strip.toMillimetreString()));
      text.append(" | ").append(entry.narrowest().toMillimetreString()).append(" | ").append(entry.within().toMillimetreString())
          .append(entry.firstRow().equals(table.best().firstRowWidth()) ? "  widest" : "");
    }
    return text.toString();
  }
}
