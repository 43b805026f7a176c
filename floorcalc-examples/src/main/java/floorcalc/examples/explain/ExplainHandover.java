package floorcalc.examples.explain;

import floorcalc.deviations.Deviation;
import floorcalc.deviations.DeviationReadings;
import floorcalc.deviations.DeviationSet;
import floorcalc.deviations.Stage;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import java.io.PrintStream;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Holds what was measured of a laid floor against what is permitted. */
@Command(name = "handover", mixinStandardHelpOptions = true,
    description = "Holds what was measured of a laid floor, joints, lipping, cupping, lines, against what is permitted.")
final class ExplainHandover extends Explaining {
  @Option(names = "--width", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class, description = "Cover width of the boards.")
  private Length width;

  @Option(names = "--set", required = true, paramLabel = "NAME", description = "By whose limits. A wrong name lists the sets.")
  private String set;

  @Option(names = "--joints", paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "Widths of open joints, in the order in which they lie beside each other, with commas.")
  private Typed.Lengths joints;

  @Option(names = "--lipping", paramLabel = "LENGTHS", converter = Typed.OfLengths.class, description = "Steps from board to board.")
  private Typed.Lengths lipping;

  @Option(names = "--cupping", paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "How hollow or crowned boards are across their width.")
  private Typed.Lengths cupping;

  @Option(names = "--alignment", paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "How far a line of joints strays from straight over 2 m.")
  private Typed.Lengths alignment;

  @Option(names = "--corners", paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "How far corners of neighbouring panels miss each other.")
  private Typed.Lengths corners;

  @Option(names = "--every-second", paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "In half bond, how far end joints of every second row are out of line.")
  private Typed.Lengths everySecond;

  @Option(names = "--half", paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "In half bond, how far end joints are from half the length of the board beside.")
  private Typed.Lengths half;

  @Option(names = "--panel-joints", paramLabel = "LENGTHS", converter = Typed.OfLengths.class, description = "Joints round panels.")
  private Typed.Lengths panelJoints;

  @Option(names = "--panel", paramLabel = "LENGTH", converter = Typed.OfLength.class, description = "The side of a panel.")
  private Length panel;

  @Option(names = "--area", paramLabel = "M2", description = "Area of the floor in square metres, where a set asks for so many readings.")
  private String area;

  ExplainHandover(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<List<Judgement>> calculate() {
    DeviationSet limits = DeviationSet.named(set);
    if (limits.stage() != Stage.LAID) {
      throw new IllegalArgumentException("'" + set + "' is for boards before laying (explain goods); the sets for laid floors are "
          + DeviationSet.all(Stage.LAID).stream().map(one -> "'" + one + "'").collect(Collectors.joining(", ")));
    }
    DeviationReadings read = DeviationReadings.ofWidth(width);
    read = ExplainGoods.with(read, Deviation.JOINT, joints);
    read = ExplainGoods.with(read, Deviation.LIPPING, lipping);
    read = ExplainGoods.with(read, Deviation.CUPPING, cupping);
    read = ExplainGoods.with(read, Deviation.JOINT_ALIGNMENT, alignment);
    read = ExplainGoods.with(read, Deviation.CORNER_OFFSET, corners);
    read = ExplainGoods.with(read, Deviation.END_JOINT_LINE, everySecond);
    read = ExplainGoods.with(read, Deviation.HALF_OFFSET, half);
    read = ExplainGoods.with(read, Deviation.PANEL_JOINT, panelJoints);
    read = panel == null ? read : read.withPanel(panel);
    read = area == null ? read : read.over(Area.ofSquareMetres(area));
    return limits.judge(read);
  }

  @Override
  String below(Object value) {
    return JudgementLines.of((List<?>) value);
  }
}
