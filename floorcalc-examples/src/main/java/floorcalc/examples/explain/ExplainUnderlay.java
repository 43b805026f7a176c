package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.rows.FloorPart;
import floorcalc.underlay.CoveredRoom;
import floorcalc.underlay.Lap;
import floorcalc.underlay.RollGoods;
import floorcalc.underlay.RollOrder;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows how an underlay or a moisture barrier is laid in strips and how many rolls it takes. */
@Command(name = "underlay", mixinStandardHelpOptions = true,
    description = "Lays strips off rolls on floors of any shape: strips, laps, seams, rolls, and the bound on them.")
final class ExplainUnderlay extends Explaining {
  @Option(names = "--room", required = true, paramLabel = "NAME:OUTLINE", converter = Typed.OfPart.class,
      description = "A floor: name, colon, corners as x,y x,y x,y or well-known text. Give --room once for each; rests of rolls serve"
          + " the next.")
  private List<FloorPart> rooms;

  @Option(names = "--roll-width", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Width of a roll.")
  private Length width;

  @Option(names = "--roll-length", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Length on a roll.")
  private Length length;

  @Option(names = "--overlap", paramLabel = "LENGTH or NAME", defaultValue = "butt joints",
      description = "How far strips overlap, or whose figure: NWFA magazine, NBS K21, Chinese practice, German practice; butt joints if"
          + " not given.")
  private String overlap;

  @Option(names = "--upturn", paramLabel = "LENGTH", defaultValue = "0", converter = Typed.OfLength.class,
      description = "How far it is turned up the walls; 0 mm if not given.")
  private Length upturn;

  @Option(names = "--direction", paramLabel = "DEGREES",
      description = "The way strips run, anticlockwise from +x; the better of 0 and 90 if not given.")
  private Double degrees;

  ExplainUnderlay(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<RollOrder> calculate() {
    Lap lap = Lap.named().stream().filter(named -> named.name().equals(overlap)).findFirst()
        .orElseGet(() -> Lap.of(Typed.length(overlap)));
    RollGoods roll = RollGoods.barrier("roll", width, length, lap).withUpturn(upturn);
    Optional<Direction> only = Optional.ofNullable(degrees).map(Direction::fromDegrees);
    return RollOrder.of(roll, rooms.stream().map(room -> only
        .map(direction -> CoveredRoom.oneWay(room.name(), room.outline(), direction))
        .orElseGet(() -> CoveredRoom.bothWays(room.name(), room.outline(), Direction.ALONG_X))).toList());
  }

  @Override
  String below(Object value) {
    RollOrder order = (RollOrder) value;
    StringBuilder text = new StringBuilder("\nrolls:");
    for (int i = 0; i < order.cutting().bars().size(); i++) {
      text.append("\n  ").append(i + 1).append(": ");
      var roll = order.cutting().bars().get(i);
      roll.pieces().forEach(piece -> text.append(piece.name()).append(' ').append(piece.length()).append(" + "));
      text.setLength(text.length() - 3);
      text.append(", left ").append(roll.leftover());
    }
    return text.append("\nseams: ").append(order.seamLength()).append(", edges: ").append(order.edgeLength()).toString();
  }
}
