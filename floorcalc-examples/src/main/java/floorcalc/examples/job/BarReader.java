package floorcalc.examples.job;

import floorcalc.measure.Length;
import floorcalc.measure.UnitPrice;
import floorcalc.trims.BarGoods;
import floorcalc.trims.BarGoods.AtVoids;
import floorcalc.trims.BarGoods.InsideCorners;
import floorcalc.trims.BarGoods.LongRuns;
import floorcalc.trims.BarGoods.OpenEnds;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/** Reads a skirting, a quadrant or a profile of the {@code goods}. */
final class BarReader {
  private static final List<String> PROFILE = List.of("name", "lengths", "longRuns", "leastPiece", "allowance", "price");
  private static final List<String> SKIRTING = List.of("name", "lengths", "thickness", "insideCorners", "openEnds", "longRuns",
      "leastPiece", "allowance", "atVoids", "price");
  private static final Map<String, InsideCorners> CORNERS = new LinkedHashMap<>();
  private static final Map<String, OpenEnds> ENDS = new LinkedHashMap<>();
  private static final Map<String, LongRuns> RUNS = new LinkedHashMap<>();
  private static final Map<String, AtVoids> VOIDS = new LinkedHashMap<>();

  static {
    CORNERS.put("mitred", InsideCorners.MITRED);
    CORNERS.put("scribed", InsideCorners.SCRIBED);
    ENDS.put("square", OpenEnds.SQUARE);
    ENDS.put("returned", OpenEnds.RETURNED);
    RUNS.put("scarfed", LongRuns.SCARFED);
    RUNS.put("in-one-piece", LongRuns.IN_ONE_PIECE);
    VOIDS.put("around", AtVoids.AROUND);
    VOIDS.put("left-out", AtVoids.LEFT_OUT);
  }

  private BarReader() {
  }

  static Optional<BarGoods> skirting(Value value, String name) {
    return read(value, name, "a skirting or a quadrant", SKIRTING);
  }

  static Optional<BarGoods> profile(Value value, String name) {
    return read(value, name, "a profile", PROFILE);
  }

  private static Optional<BarGoods> read(Value value, String called, String what, List<String> known) {
    return GoodsReader.made(value, what, known, fields -> {
      String name = fields.optionalText("name").orElse(called);
      List<Length> lengths = new ArrayList<>();
      fields.required("lengths", "an array of the lengths that are sold").ifPresent(list -> list.items("lengths", 1, 20)
          .forEach(item -> item.length(LengthRange.ROLL_LENGTH).ifPresent(lengths::add)));
      Length thickness = known.contains("thickness")
          ? fields.requiredLength("thickness", LengthRange.BAR_THICKNESS).orElse(Length.ZERO) : Length.ZERO;
      Optional<InsideCorners> corners = choice(fields, "insideCorners", CORNERS);
      Optional<OpenEnds> ends = choice(fields, "openEnds", ENDS);
      Optional<LongRuns> runs = choice(fields, "longRuns", RUNS);
      Optional<AtVoids> voids = choice(fields, "atVoids", VOIDS);
      Optional<Length> least = fields.optionalLength("leastPiece", LengthRange.SIZE_OR_ZERO);
      Optional<Length> allowance = fields.optionalLength("allowance", LengthRange.OPENING);
      Optional<UnitPrice> price = fields.optional("price").flatMap(PriceReader::unitPrice);
      return () -> {
        BarGoods bars = BarGoods.of(name, lengths, thickness);
        bars = with(bars, corners, BarGoods::withInsideCorners);
        bars = with(bars, ends, BarGoods::withOpenEnds);
        bars = with(bars, runs, BarGoods::withLongRuns);
        bars = with(bars, voids, BarGoods::atVoids);
        bars = with(bars, least, BarGoods::withLeastPiece);
        bars = with(bars, allowance, BarGoods::withAllowance);
        return with(bars, price, BarGoods::withPrice);
      };
    });
  }

  private static <T> Optional<T> choice(Fields fields, String name, Map<String, T> choices) {
    return fields.optional(name).flatMap(value -> value.choice(choices));
  }

  private static <T> BarGoods with(BarGoods bars, Optional<T> part, BiFunction<BarGoods, T, BarGoods> change) {
    return part.map(given -> change.apply(bars, given)).orElse(bars);
  }
}
