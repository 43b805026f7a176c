package floorcalc.examples.explain;

import floorcalc.movement.Coefficient;
import floorcalc.movement.Grain;
import floorcalc.movement.Species;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.Locale;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** How much the boards move: a wood and its grain, or a figure. */
final class Wood {
  @ArgGroup(multiplicity = "1")
  private Which which;

  @Option(names = "--grain", paramLabel = "GRAIN", defaultValue = "flat-sawn", converter = OfGrain.class,
      description = "With --wood: flat-sawn (if not given), quarter-sawn or mixed.")
  private Grain grain;

  /** One of the two. */
  static final class Which {
    @Option(names = "--wood", paramLabel = "NAME", description = "A wood of the tables, such as \"white oak\".")
    private String name;

    @Option(names = "--percent", paramLabel = "NUMBER",
        description = "How many per cent the width changes for each 1 %% of moisture, as the boards' maker says, such as 0.03.")
    private BigDecimal percent;
  }

  Coefficient coefficient() {
    return which.name != null ? Species.named(which.name).coefficient(grain)
        : Coefficient.ofPercent(which.percent, "as given", Source.GIVEN);
  }

  /** Reads a grain. */
  static final class OfGrain implements picocli.CommandLine.ITypeConverter<Grain> {
    @Override
    public Grain convert(String text) {
      for (Grain grain : Grain.values()) {
        if (grain.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(text)) {
          return grain;
        }
      }
      throw new picocli.CommandLine.TypeConversionException(
          "found [" + text + "]; must be one of flat-sawn, quarter-sawn, mixed");
    }
  }
}
