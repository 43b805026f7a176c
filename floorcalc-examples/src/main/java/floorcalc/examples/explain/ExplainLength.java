package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.measure.TapeNotation;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.io.PrintStream;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows one length in every notation. */
@Command(name = "length", mixinStandardHelpOptions = true, description = "Shows a length in millimetres, metres, feet and inches.")
final class ExplainLength extends Explaining {
  private static final Source INCH = new Source("85 FR 62698 and Handbook 44, Appendix C", "NIST", 2020,
      "1 in = 25.4 mm, as cited by the GNU Units definitions 3.15", Standing.QUOTED);

  @Parameters(paramLabel = "LENGTH", converter = Typed.OfLength.class, description = "The length, such as \"12' 7 5/8\\\"\".")
  private Length length;

  ExplainLength(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<Length> calculate() {
    Term millimetres = Term.of("L", "the length, exact", TapeNotation.millimetres().format(length));
    Term inch = new Term("inch", "one inch, exact", Length.ofInches(1, 0, 1), INCH);
    return Calculated.of(length, List.of(
        new Step("metres", "How many metres are that?", "L / 1000", List.of(millimetres),
            TapeNotation.metres().format(length), Source.DEFINITION),
        new Step("inches", "How many inches are that, to the nearest 1/64?", "L / inch", List.of(millimetres, inch),
            TapeNotation.inches(64).format(length), Source.DEFINITION),
        new Step("feet-and-inches", "How many feet and inches are that, to the nearest 1/16?", "L / (12 · inch)",
            List.of(millimetres, inch), TapeNotation.feetAndInches(16).format(length), Source.DEFINITION)));
  }
}
