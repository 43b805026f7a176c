package floorcalc.examples.explain;

import floorcalc.moisture.AirClimate;
import floorcalc.moisture.EquilibriumMoisture;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows the moisture content at which wood is in balance with air, or the other way round. */
@Command(name = "moisture-content", mixinStandardHelpOptions = true,
    description = "Shows at which moisture content wood settles in air, or in which air it settles at a moisture content.")
final class ExplainMoistureContent extends Explaining {
  @Option(names = "--temperature", required = true, paramLabel = "TEMPERATURE", converter = Typed.OfTemperature.class,
      description = "Temperature of the air, such as \"21 °C\" or \"70 °F\"; 21 C does too.")
  private Temperature temperature;

  @ArgGroup(multiplicity = "1")
  private Known known;

  /** One of the two. */
  static final class Known {
    @Option(names = "--humidity", paramLabel = "PERCENT", converter = Typed.OfPercent.class,
        description = "Relative humidity of the air in per cent, such as 48.")
    private Percent humidity;

    @Option(names = "--moisture", paramLabel = "PERCENT", converter = Typed.OfPercent.class,
        description = "Moisture content of the wood in per cent, such as 9.")
    private Percent moisture;
  }

  ExplainMoistureContent(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<Percent> calculate() {
    return known.humidity != null ? EquilibriumMoisture.of(AirClimate.of(temperature, known.humidity))
        : EquilibriumMoisture.humidityFor(temperature, known.moisture);
  }
}
