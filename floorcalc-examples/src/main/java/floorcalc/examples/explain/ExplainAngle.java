package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.rows.ControlLine;
import floorcalc.rows.EndCut;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows the cut at a wall that is not square to the boards, and where things lie in rows at an angle. */
@Command(name = "angle", mixinStandardHelpOptions = true,
    description = "Shows how boards at an angle are cut at a wall, which row a point lies in and where, and the pieces at corners.")
final class ExplainAngle extends Explaining {
  @Option(names = "--line", required = true, paramLabel = "LINE", converter = Typed.OfTwoPoints.class,
      description = "Two points that the boards run along, \"x,y x,y\"; rows count from it, places from the first.")
  private Typed.TwoPoints line;

  @Option(names = "--wall", required = true, paramLabel = "WALL", converter = Typed.OfTwoPoints.class,
      description = "Two points of the wall, \"x,y x,y\".")
  private Typed.TwoPoints wall;

  @Option(names = "--pitch", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Distance from row to row as laid.")
  private Length pitch;

  @Option(names = "--at", paramLabel = "POINT", converter = Typed.OfPoint.class,
      description = "A point whose place in the rows is wanted, such as a pipe, \"x,y\"; may be given again.")
  private List<Point> points = List.of();

  @Option(names = "--outline", paramLabel = "OUTLINE", converter = Typed.OfOutline.class,
      description = "The room, for the pieces at its corners, \"x,y x,y x,y ...\".")
  private Outline room;

  ExplainAngle(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<EndCut> calculate() {
    return EndCut.of(ControlLine.of(line.from(), line.to()), wall.from(), wall.to(), pitch);
  }

  @Override
  String below(Object value) {
    StringBuilder text = new StringBuilder("\nsaw: ").append(((EndCut) value).offSquareDegrees().stripTrailingZeros().toPlainString())
        .append(" degrees from a square cut");
    ControlLine rows = ControlLine.of(line.from(), line.to());
    for (Point point : points) {
      ControlLine.Place place = rows.placeOf(point, pitch);
      text.append('\n').append(point).append(": row ").append(place.row()).append(", ").append(place.fromRowLine())
          .append(" over its row line, ").append(place.along()).append(" along it");
      if (room != null) {
        rows.fromStartOfRow(point, room).ifPresent(start -> text.append(", ").append(start).append(" from the start of its row"));
      }
    }
    for (EndCut.CornerPiece piece : room == null ? List.<EndCut.CornerPiece>of() : EndCut.cornerPieces(rows, room, pitch)) {
      text.append("\ncorner ").append(piece.corner()).append(": a piece ").append(piece.length()).append(" long and ")
          .append(piece.height()).append(" wide comes to a point");
    }
    return text.toString();
  }
}
