package floorcalc.examples.job;

import floorcalc.measure.Length;
import floorcalc.measure.UnitPrice;
import floorcalc.underlay.Lap;
import floorcalc.underlay.RollGoods;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads an underlay or a barrier of the {@code goods}. */
final class RollReader {
  private static final List<String> FIELDS = List.of("name", "width", "length", "overlap", "upturn", "thickness", "permeance", "price");
  private static final Map<String, Lap> LAPS = new LinkedHashMap<>();
  private static final BigDecimal MOST_PERMEANCE = BigDecimal.valueOf(10_000);

  static {
    Lap.named().forEach(lap -> LAPS.put(lap.name(), lap));
  }

  private RollReader() {
  }

  static Optional<RollGoods> read(Value value, RollGoods.Layer layer) {
    return GoodsReader.made(value, "what is sold by the roll", FIELDS, fields -> {
      String name = fields.optionalText("name").orElse(layer.words());
      Optional<Length> width = fields.requiredLength("width", LengthRange.ROLL_WIDTH);
      Optional<Length> length = fields.requiredLength("length", LengthRange.ROLL_LENGTH);
      Lap lap = fields.optional("overlap").flatMap(RollReader::lap).orElse(Lap.BUTT);
      Length upturn = fields.optionalLength("upturn", LengthRange.OPENING).orElse(Length.ZERO);
      Optional<Length> thickness = fields.optionalLength("thickness", LengthRange.SHEET_THICKNESS);
      Optional<BigDecimal> permeance = fields.optional("permeance")
          .flatMap(perm -> perm.number(BigDecimal.ZERO, MOST_PERMEANCE, " US perm"));
      Optional<UnitPrice> price = fields.optional("price").flatMap(PriceReader::unitPrice);
      return () -> new RollGoods(name, layer, width.orElseThrow(), length.orElseThrow(), lap, upturn, thickness, permeance, price);
    });
  }

  private static Optional<Lap> lap(Value value) {
    boolean named = value.asText().filter(LAPS::containsKey).isPresent();
    return named ? value.choice(LAPS) : value.length(LengthRange.OPENING).map(Lap::of);
  }
}
