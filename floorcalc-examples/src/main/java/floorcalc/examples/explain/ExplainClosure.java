package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.rows.Closure;
import floorcalc.rows.Closure.Arm;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Shows whether both ways round an obstacle meet in phase. */
@Command(name = "closure", mixinStandardHelpOptions = true,
    description = "Shows whether both arms of a floor round an obstacle arrive in phase and at one angle.")
final class ExplainClosure extends Explaining {
  @Option(names = "--arm", required = true, arity = "1", paramLabel = "ARM", converter = OfArm.class,
      description = "An arm as \"name: start, rows, pitch\", with \", plus or minus of the pitch\" and \", run-off, over\" behind it if"
          + " they were measured; twice.")
  private List<Arm> arms;

  @Option(names = "--joined", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Length of the row that joins both arms.")
  private Length joined;

  @Option(names = "--allowed", required = true, paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "The most that row lines may miss each other by, as the boards' joint takes it.")
  private Length allowed;

  ExplainClosure(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<Closure> calculate() {
    if (arms.size() != 2) {
      throw new IllegalArgumentException("--arm must be given twice, but was given " + arms.size() + " times");
    }
    return Closure.of(arms.get(0), arms.get(1), joined, allowed);
  }

  /** Reads an arm. */
  static final class OfArm implements ITypeConverter<Arm> {
    @Override
    public Arm convert(String text) {
      int colon = text.indexOf(':');
      String[] parts = text.substring(colon + 1).split(",", -1);
      boolean known = parts.length == 3 || parts.length == 4 || parts.length == 6;
      if (colon < 1 || !known || !parts[1].strip().matches("[0-9]{1,9}")) {
        throw new TypeConversionException("found [" + text + "]; write a name, a colon, then start, rows, pitch, such as"
            + " \"left: 0, 13, 185.3\", or with the plus or minus of the pitch, run-off and length behind them");
      }
      try {
        return new Arm(text.substring(0, colon).strip(), Typed.length(parts[0].strip()), Long.parseLong(parts[1].strip()),
            Typed.length(parts[2].strip()), parts.length > 3 ? Typed.length(parts[3].strip()) : Length.ZERO,
            parts.length > 4 ? Typed.length(parts[4].strip()) : Length.ZERO,
            parts.length > 4 ? Typed.length(parts[5].strip()) : Length.ofMillimetres(1000));
      } catch (IllegalArgumentException fault) {
        throw new TypeConversionException(fault.getMessage());
      }
    }
  }
}
