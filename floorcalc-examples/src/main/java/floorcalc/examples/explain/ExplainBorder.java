package floorcalc.examples.explain;

import floorcalc.fittings.BorderBoard;
import floorcalc.fittings.MitredBorder;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows the boards of a mitred border and the field in it. */
@Command(name = "border", mixinStandardHelpOptions = true,
    description = "Shows the boards of a border with mitres along the edge of a floor or round a hearth, and where it ends.")
final class ExplainBorder extends Explaining {
  @Option(names = "--outline", required = true, paramLabel = "OUTLINE", converter = Typed.OfOutline.class,
      description = "The line that the border begins at: the edge of the floor less its gap, or a hearth with its gap, \"x,y x,y x,y ...\".")
  private Outline line;

  @Option(names = "--width", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Width of a border board.")
  private Length width;

  @Option(names = "--rows", paramLabel = "NUMBER", defaultValue = "1", description = "Rows of the border; 1 if not given.")
  private int rows;

  @Option(names = "--around", description = "The border goes round the outline, as round a hearth, not along its inside.")
  private boolean around;

  ExplainBorder(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<MitredBorder> calculate() {
    return around ? MitredBorder.around(line.shell(), width, rows) : MitredBorder.inside(line.shell(), width, rows);
  }

  @Override
  String below(Object value) {
    MitredBorder border = (MitredBorder) value;
    StringBuilder text = new StringBuilder();
    for (BorderBoard board : border.boards()) {
      text.append("\nrow ").append(board.row()).append(", side ").append(board.side()).append(": long point ").append(board.longPoint())
          .append(", short point ").append(board.shortPoint()).append(", saw at ").append(degrees(board.startMitre())).append(" and ")
          .append(degrees(board.endMitre())).append(" degrees, takes ").append(board.stock()).append(" of a board");
    }
    return text.append("\nall boards together: ").append(border.stock()).append("\nborder ends at ").append(border.field()).toString();
  }

  private static String degrees(java.math.BigDecimal mitre) {
    java.math.BigDecimal plain = mitre.stripTrailingZeros();
    return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
  }
}
