package floorcalc.examples.explain;

import floorcalc.deviations.OutOfLevelSet;
import floorcalc.drawing.LevelsDrawing;
import floorcalc.examples.job.Tape;
import floorcalc.examples.readings.ReadingFile;
import floorcalc.flatness.ToleranceSet;
import floorcalc.levels.FillerGoods;
import floorcalc.levels.GridFlatness;
import floorcalc.levels.LevelPlane;
import floorcalc.levels.Levels;
import floorcalc.levels.PreparationOptions;
import floorcalc.levels.SubfloorPreparation;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.outline.Outline;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Step;
import java.io.IOException;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows how level and how flat a room is, and what to grind and to fill. */
@Command(name = "levels", mixinStandardHelpOptions = true,
    description = "Levels of a room: how far it is out of level, how flat it is, what to grind and what to fill, how much filler.")
final class ExplainLevels extends Explaining {
  /** Grinding is slower and dustier than filling: our own choice, no source. */
  private static final BigDecimal GROUND_FOR_FILLED = BigDecimal.valueOf(2);

  @Parameters(paramLabel = "FILE", description = "Heights at places of a room as CSV with the header \"x (m),y (m),z (mm)\"; units mm, cm,"
      + " m, in, ft, or tape where each value has its own.")
  private Path file;

  @Option(names = "--set", paramLabel = "NAME", defaultValue = "common practice",
      description = "Tolerance set; \"common practice\" if not given. A wrong name lists the sets.")
  private String set;

  @Option(names = "--grind", paramLabel = "LENGTH", defaultValue = "3", converter = Typed.OfLength.class,
      description = "How deep high spots may be ground, 0 for not at all; 3 mm if not given. The way with the fewest litres is looked"
          + " for, a litre ground counted as two filled.")
  private Length grind;

  @Option(names = "--level", paramLabel = "NAME", description = "By whose limits the room is level enough; by none if not given. A wrong name"
      + " lists the sets.")
  private String level;

  @Option(names = "--datum", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "The height that the floor is to be at, on the datum of the readings, for limits from a level line.")
  private Length datum;

  @ArgGroup(exclusive = false)
  private Filler filler;

  @Option(names = "--drawing", paramLabel = "SVG", description = "Also draw the levels to this file, ending in .svg; a file that is there"
      + " is written over.")
  private Path drawing;

  @Option(names = "--outline", paramLabel = "CORNERS", converter = Typed.OfOutline.class,
      description = "The walls for the drawing, in the coordinates of the readings: corners \"x,y x,y x,y\", or"
          + " well-known text \"POLYGON ((...))\" in millimetres.")
  private Outline outline;

  /** Both or neither. */
  static final class Filler {
    @Option(names = "--filler-density", required = true, paramLabel = "KG",
        description = "Kilograms out of the bag for a litre laid, the same as kg per square metre and millimetre, as the maker prints it.")
    private BigDecimal density;

    @Option(names = "--bag", required = true, paramLabel = "KG", description = "Kilograms in a bag.")
    private BigDecimal bag;
  }

  ExplainLevels(PrintStream out) {
    super(out);
  }

  /** What was found in a room. */
  record Found(Levels levels, LevelPlane plane, ToleranceSet set, Optional<GridFlatness> flatness,
      Optional<SubfloorPreparation> preparation, String why, Tape tape, List<Judgement> level) {}

  @Override
  Calculated<Found> calculate() {
    if (drawing != null && !drawing.toString().endsWith(".svg")) {
      throw new IllegalArgumentException("--drawing " + drawing + ": the name must end in .svg");
    }
    if (drawing == null && outline != null) {
      throw new IllegalArgumentException("--outline is for a drawing; say where it goes with --drawing");
    }
    if (level == null && datum != null) {
      throw new IllegalArgumentException("--datum is for limits of level; name them with --level");
    }
    ToleranceSet tolerances = ToleranceSet.named(set);
    Optional<OutOfLevelSet> levelling = Optional.ofNullable(level).map(OutOfLevelSet::named);
    ReadingFile.Room room = ReadingInput.read(file, ReadingFile::room);
    Levels levels = room.levels();
    PreparationOptions options = options(room.tape());
    Calculated<LevelPlane> plane = levels.plane();
    List<Step> steps = new ArrayList<>(plane.steps());
    Set<Finding> findings = new LinkedHashSet<>(plane.findings());
    List<Judgement> judged = new ArrayList<>();
    if (levelling.isPresent()) {
      Calculated<List<Judgement>> held = datum == null ? levelling.get().judge(levels) : levelling.get().judge(levels, datum);
      steps.addAll(held.steps());
      judged.addAll(held.value());
    }
    Optional<GridFlatness> flatness = Optional.empty();
    Optional<SubfloorPreparation> preparation = Optional.empty();
    String why = "";
    try {
      Calculated<GridFlatness> flat = GridFlatness.of(levels, tolerances);
      steps.addAll(flat.steps());
      findings.addAll(flat.findings());
      flatness = Optional.of(flat.value());
      Calculated<SubfloorPreparation> work = SubfloorPreparation.of(levels, tolerances, options);
      steps.addAll(work.steps());
      findings.addAll(work.findings());
      preparation = Optional.of(work.value());
    } catch (IllegalArgumentException none) {
      why = none.getMessage();
    }
    return Calculated.of(new Found(levels, plane.value(), tolerances, flatness, preparation, why, room.tape(), List.copyOf(judged)), steps,
        List.copyOf(findings));
  }

  private PreparationOptions options(Tape tape) {
    PreparationOptions options = PreparationOptions.grindingUpTo(grind);
    if (grind.isPositive()) {
      options = options.leastWork(GROUND_FOR_FILLED, BigDecimal.ONE);
    }
    if (tape == Tape.FEET_AND_INCHES) {
      options = options.inStepsOf(Length.ofInches(0, 1, 64));
    }
    return filler == null ? options : options.with(FillerGoods.of(filler.density, new Mass(filler.bag)));
  }

  @Override
  void keep(Object value) {
    if (drawing == null) {
      return;
    }
    Found found = (Found) value;
    Path name = file.getFileName();
    LevelsDrawing drawn = LevelsDrawing.of(found.levels()).in(found.tape().measures())
        .titled(name == null ? "" : name.toString().replaceFirst("\\.csv$", ""));
    if (outline != null) {
      drawn = drawn.within(outline);
    }
    if (found.preparation().isPresent()) {
      drawn = drawn.with(found.preparation().get());
    }
    try {
      Files.writeString(drawing, drawn.toSvg(), StandardCharsets.UTF_8);
    } catch (IOException fault) {
      throw new IllegalArgumentException("--drawing " + drawing + ": cannot be written; name a file in a folder that can be written to",
          fault);
    }
  }

  @Override
  String below(Object value) {
    return new LevelsSummary((Found) value).text() + (drawing == null ? "" : "\ndrawing: " + drawing);
  }
}
