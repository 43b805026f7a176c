package floorcalc.examples.job;

import floorcalc.levels.FillerGoods;
import floorcalc.materials.Consumables;
import floorcalc.materials.FillerStock;
import floorcalc.materials.FloorGoods;
import floorcalc.materials.GlueGoods;
import floorcalc.materials.SealantGoods;
import floorcalc.materials.WedgeGoods;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.measure.UnitPrice;
import floorcalc.underlay.RollGoods;
import floorcalc.underlay.TapeGoods;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads the {@code goods} of a job: what is bought beside the boards. */
final class GoodsReader {
  private static final List<String> FIELDS = List.of("barrier", "underlay", "combined", "tape", "skirting", "quadrant", "profiles",
      "wedges", "glue", "sealant", "filler", "casing", "keepBackPacks", "returnShare", "stackHeight");
  private static final Map<String, TapeGoods.Along> ALONG = new LinkedHashMap<>();
  private static final Map<String, String> PROFILE_NAMES = Map.of("T", "T profile", "reducer", "reducer", "end", "end profile",
      "nosing", "nosing");
  private static final BigDecimal MOST_DENSITY = BigDecimal.valueOf(25);
  private static final BigDecimal MOST_LOSS = new BigDecimal("0.9");
  private static final int MOST_PACKS = 10_000;

  static {
    ALONG.put("seams", TapeGoods.Along.SEAMS);
    ALONG.put("seams-and-walls", TapeGoods.Along.SEAMS_AND_WALLS);
  }

  private GoodsReader() {
  }

  static Optional<FloorGoods> read(Value value) {
    return value.object("what is bought beside the boards", FIELDS).map(GoodsReader::goods);
  }

  private static FloorGoods goods(Fields fields) {
    List<RollGoods> layers = new ArrayList<>();
    fields.optional("barrier").flatMap(roll -> RollReader.read(roll, RollGoods.Layer.BARRIER)).ifPresent(layers::add);
    fields.optional("combined").flatMap(roll -> RollReader.read(roll, RollGoods.Layer.COMBINED)).ifPresent(layers::add);
    fields.optional("underlay").flatMap(roll -> RollReader.read(roll, RollGoods.Layer.UNDERLAY)).ifPresent(layers::add);
    FloorGoods goods = FloorGoods.NONE.withLayers(layers);
    goods = fields.optional("tape").flatMap(GoodsReader::tape).map(goods::withTape).orElse(goods);
    goods = fields.optional("skirting").flatMap(bar -> BarReader.skirting(bar, "skirting")).map(goods::withSkirting).orElse(goods);
    goods = fields.optional("quadrant").flatMap(bar -> BarReader.skirting(bar, "quadrant")).map(goods::withQuadrant).orElse(goods);
    Optional<Fields> profiles = fields.optional("profiles")
        .flatMap(value -> value.object("a bar for each kind of profile", FloorGoods.PROFILE_KINDS));
    if (profiles.isPresent()) {
      for (String kind : FloorGoods.PROFILE_KINDS) {
        FloorGoods before = goods;
        goods = profiles.get().optional(kind).flatMap(bar -> BarReader.profile(bar, PROFILE_NAMES.get(kind))).map(bar -> before.withProfile(kind, bar)).orElse(before);
      }
    }
    goods = fields.optional("wedges").flatMap(GoodsReader::wedges).map(goods::withWedges).orElse(goods);
    goods = fields.optional("glue").flatMap(GoodsReader::glue).map(goods::withGlue).orElse(goods);
    goods = fields.optional("sealant").flatMap(GoodsReader::sealant).map(goods::withSealant).orElse(goods);
    goods = fields.optional("filler").flatMap(GoodsReader::filler).map(goods::withFiller).orElse(goods);
    goods = fields.optionalLength("casing", LengthRange.OPENING).map(goods::withCasing).orElse(goods);
    goods = fields.optionalLength("stackHeight", LengthRange.SIZE).map(goods::withStackHeight).orElse(goods);
    int keepBack = fields.optional("keepBackPacks").flatMap(packs -> packs.wholeNumber(0, MOST_PACKS)).orElse(0);
    BigDecimal share = fields.optional("returnShare").flatMap(part -> part.number(BigDecimal.ZERO, BigDecimal.ONE))
        .orElse(BigDecimal.ZERO);
    return goods.withPacksBeyond(keepBack, share);
  }

  private static Optional<TapeGoods> tape(Value value) {
    return made(value, "a tape", List.of("name", "length", "along", "price"), fields -> {
      String name = fields.optionalText("name").orElse("tape");
      Optional<Length> length = fields.requiredLength("length", LengthRange.SIZE);
      TapeGoods.Along along = fields.optional("along").flatMap(where -> where.choice(ALONG)).orElse(TapeGoods.Along.SEAMS);
      Optional<UnitPrice> price = fields.optional("price").flatMap(PriceReader::priceOfOne);
      return () -> new TapeGoods(name, length.orElseThrow(), along, price);
    });
  }

  private static Optional<WedgeGoods> wedges(Value value) {
    return made(value, "wedges", List.of("name", "perPack", "spacing", "price"), fields -> {
      String name = fields.optionalText("name").orElse("wedges");
      Optional<Integer> perPack = fields.required("perPack", "a whole number from 1 to " + JobLimits.PER_PACK)
          .flatMap(number -> number.wholeNumber(1, JobLimits.PER_PACK));
      Length spacing = fields.optionalLength("spacing", LengthRange.ROLL_WIDTH).orElse(Consumables.WEDGE_SPACING);
      Optional<UnitPrice> price = fields.optional("price").flatMap(PriceReader::priceOfOne);
      return () -> new WedgeGoods(name, perPack.orElseThrow(), spacing, price);
    });
  }

  private static Optional<GlueGoods> glue(Value value) {
    return made(value, "glue", List.of("name", "content", "perPiece", "price"), fields -> {
      String name = fields.optionalText("name").orElse("glue");
      Optional<BigDecimal> content = fields.required("content", "what a bottle holds, such as \"500 ml\"")
          .flatMap(PriceReader::millilitres);
      BigDecimal each = fields.optional("perPiece").flatMap(PriceReader::millilitres).orElse(Consumables.GLUE_PER_PIECE_MILLILITRES);
      Optional<UnitPrice> price = fields.optional("price").flatMap(PriceReader::priceOfOne);
      return () -> new GlueGoods(name, content.orElseThrow(), each, price);
    });
  }

  private static Optional<SealantGoods> sealant(Value value) {
    return made(value, "a sealant", List.of("name", "content", "loss", "width", "depth", "beads", "price"), fields -> {
      String name = fields.optionalText("name").orElse("sealant");
      BigDecimal content = fields.optional("content").flatMap(PriceReader::millilitres).orElse(Consumables.CARTRIDGE_MILLILITRES);
      BigDecimal loss = fields.optional("loss").flatMap(part -> part.number(BigDecimal.ZERO, MOST_LOSS))
          .orElse(Consumables.SEALANT_LOSS);
      Optional<Length> width = fields.requiredLength("width", LengthRange.BEAD);
      Optional<Length> depth = fields.requiredLength("depth", LengthRange.BEAD);
      Length beads = fields.optionalLength("beads", LengthRange.SIZE_OR_ZERO).orElse(Length.ZERO);
      Optional<UnitPrice> price = fields.optional("price").flatMap(PriceReader::priceOfOne);
      return () -> new SealantGoods(name, content, loss, width.orElseThrow(), depth.orElseThrow(), beads, price);
    });
  }

  private static Optional<FillerStock> filler(Value value) {
    return made(value, "a filler", List.of("name", "kilogramsPerLitre", "bag", "price"), fields -> {
      String name = fields.optionalText("name").orElse("filler");
      Optional<BigDecimal> yield = fields.required("kilogramsPerLitre", "a number of more than 0 and at most 25")
          .flatMap(number -> number.number(BigDecimal.ZERO, MOST_DENSITY));
      Optional<Mass> bag = fields.required("bag", "what a bag holds, such as \"20 kg\"").flatMap(PriceReader::mass);
      Optional<UnitPrice> price = fields.optional("price").flatMap(PriceReader::priceOfOne);
      return () -> new FillerStock(name, FillerGoods.of(yield.orElseThrow(), bag.orElseThrow()), price);
    });
  }

  /** Goods whose parts have been read. */
  interface Made<T> {
    T make();
  }

  /** Goods from the fields of an object, unless one of these is a mistake; what does not go together is a mistake of the object. */
  static <T> Optional<T> made(Value value, String what, List<String> known, Function<Fields, Made<T>> parts) {
    long before = value.mistakes().count();
    Optional<Fields> fields = value.object(what, known);
    Optional<Made<T>> made = fields.map(parts);
    if (made.isEmpty() || value.mistakes().count() > before) {
      return Optional.empty();
    }
    try {
      return Optional.of(made.get().make());
    } catch (IllegalArgumentException apart) {
      value.mistakes().add(Mistake.Kind.DOES_NOT_FIT, value.place(), apart.getMessage());
      return Optional.empty();
    }
  }
}
