package floorcalc.examples.explain;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.Construction;
import floorcalc.boards.PackContent;
import floorcalc.deviations.Deviation;
import floorcalc.deviations.DeviationReadings;
import floorcalc.deviations.DeviationSet;
import floorcalc.deviations.MeasuredBoards;
import floorcalc.deviations.SizeSet;
import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Step;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Holds boards against the sizes of a standard, and a sample of them against what they may deviate. */
@Command(name = "goods", mixinStandardHelpOptions = true,
    description = "Holds boards as they are sold against the sizes of their standard, and a measured sample of them against what they may deviate.")
final class ExplainGoods extends Explaining {
  @Option(names = "--board", required = true, paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "Nominal length of the boards; of mixed packs several with commas between them.")
  private Typed.Lengths lengths;

  @Option(names = "--width", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class, description = "Nominal cover width.")
  private Length width;

  @Option(names = "--thickness", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class, description = "Nominal thickness.")
  private Length thickness;

  @Option(names = "--solid", description = "Boards of one piece of wood; engineered ones if not given.")
  private boolean solid;

  @Option(names = "--wood", paramLabel = "NAME", description = "The wood; softwoods have a standard of their own.")
  private String wood;

  @Option(names = "--sizes", paramLabel = "NAME", description = "Set of sizes; that of their construction if not given. A wrong name lists the sets.")
  private String sizes;

  @Option(names = "--widths", paramLabel = "LENGTHS", converter = Typed.OfLengths.class, description = "Widths of a sample, with commas.")
  private Typed.Lengths widths;

  @Option(names = "--thicknesses", paramLabel = "LENGTHS", converter = Typed.OfLengths.class, description = "Thicknesses of a sample.")
  private Typed.Lengths thicknesses;

  @Option(names = "--lengths", paramLabel = "LENGTHS", converter = Typed.OfLengths.class, description = "Lengths of a sample.")
  private Typed.Lengths measured;

  @Option(names = "--out-of-square", paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "How far ends are from square to their edge, over the width.")
  private Typed.Lengths outOfSquare;

  @Option(names = "--match", paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "How far tongue and groove are out of their place under the face.")
  private Typed.Lengths match;

  @Option(names = "--play", paramLabel = "LENGTHS", converter = Typed.OfLengths.class, description = "Play between tongue and groove.")
  private Typed.Lengths play;

  @Option(names = "--lipping", paramLabel = "LENGTHS", converter = Typed.OfLengths.class,
      description = "Steps between the faces of boards pushed together.")
  private Typed.Lengths lipping;

  @Option(names = "--moisture", paramLabel = "PERCENT", converter = Typed.OfPercent.class, description = "Moisture content of the wood when measured.")
  private Percent moisture;

  @Option(names = "--set", paramLabel = "NAME", description = "What they may deviate; needed with a sample. A wrong name lists the sets.")
  private String set;

  ExplainGoods(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<List<Judgement>> calculate() {
    BoardGoods goods = BoardGoods.mixed(lengths.list().stream().map(length -> new PackContent(length, 1)).toList(), width, thickness)
        .withConstruction(solid ? Construction.SOLID : Construction.ENGINEERED);
    goods = wood == null ? goods : goods.withSpecies(wood);
    Calculated<List<Judgement>> sold = (sizes == null ? SizeSet.fitting(goods) : SizeSet.named(sizes)).judge(goods);
    DeviationReadings sample = sample(goods);
    if (sample.all().isEmpty() != (set == null)) {
      throw new IllegalArgumentException(set == null ? "say by --set what the boards may deviate: a sample is held against a set"
          : "--set is for a sample: give --widths, --thicknesses, --lengths, --out-of-square, --match, --play or --lipping");
    }
    return set == null ? sold : joined(sold, new MeasuredBoards(sample, DeviationSet.named(set)).judge());
  }

  private DeviationReadings sample(BoardGoods goods) {
    DeviationReadings sample = DeviationReadings.of(goods);
    sample = with(sample, Deviation.WIDTH, widths);
    sample = with(sample, Deviation.THICKNESS, thicknesses);
    sample = with(sample, Deviation.LENGTH, measured);
    sample = with(sample, Deviation.OUT_OF_SQUARE, outOfSquare);
    sample = with(sample, Deviation.MATCH_POSITION, match);
    sample = with(sample, Deviation.TONGUE_FIT, play);
    sample = with(sample, Deviation.LIPPING, lipping);
    return moisture == null ? sample : sample.atMoisture(moisture.number());
  }

  static DeviationReadings with(DeviationReadings readings, Deviation deviation, Typed.Lengths typed) {
    return typed == null ? readings : readings.with(deviation, typed.list());
  }

  private static Calculated<List<Judgement>> joined(Calculated<List<Judgement>> one, Calculated<List<Judgement>> other) {
    List<Judgement> judgements = new ArrayList<>(one.value());
    judgements.addAll(other.value());
    List<Step> steps = new ArrayList<>(one.steps());
    steps.addAll(other.steps());
    List<Finding> findings = new ArrayList<>(one.findings());
    findings.addAll(other.findings());
    return Calculated.of(judgements, steps, findings);
  }

  @Override
  String below(Object value) {
    return JudgementLines.of((List<?>) value);
  }
}
