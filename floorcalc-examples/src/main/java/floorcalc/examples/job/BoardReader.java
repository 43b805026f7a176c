package floorcalc.examples.job;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.Construction;
import floorcalc.boards.PackContent;
import floorcalc.deviations.MeasuredBoards;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.measure.Price;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the {@code board} of a job: the boards as they are sold. */
final class BoardReader {
  private static final List<String> FIELDS = List.of("length", "coverWidth", "thickness", "perPack", "mix",
      "construction", "species", "packMass", "packPrice", "measured");
  private static final Map<String, Construction> CONSTRUCTIONS = new LinkedHashMap<>();

  static {
    CONSTRUCTIONS.put("engineered", Construction.ENGINEERED);
    CONSTRUCTIONS.put("solid", Construction.SOLID);
  }

  private BoardReader() {
  }

  /** The boards and, if any were measured, a sample of them. */
  record Boards(BoardGoods goods, Optional<MeasuredBoards> measured) {
  }

  static Optional<Boards> read(Value value) {
    return value.object("the boards as they are sold", FIELDS).flatMap(board -> {
      Optional<BoardGoods> goods = goods(board);
      Optional<MeasuredBoards> measured = board.optional("measured").flatMap(sample -> MeasuredBoardsReader.read(sample, goods));
      return goods.map(sold -> new Boards(sold, measured));
    });
  }

  private static Optional<BoardGoods> goods(Fields board) {
    long before = board.mistakes().count();
    List<PackContent> pack = pack(board);
    Optional<Length> width = board.requiredLength("coverWidth", LengthRange.COVER_WIDTH);
    Optional<Length> thickness = board.requiredLength("thickness", LengthRange.THICKNESS);
    Optional<Construction> construction = board.required("construction", Words.oneOf(CONSTRUCTIONS.keySet()))
        .flatMap(made -> made.choice(CONSTRUCTIONS));
    Optional<String> species = board.optionalText("species");
    Optional<Mass> mass = board.optional("packMass").flatMap(PriceReader::mass);
    Optional<Price> price = board.optional("packPrice").flatMap(PriceReader::price);
    if (board.mistakes().count() > before) {
      return Optional.empty();
    }
    BoardGoods goods = BoardGoods.mixed(pack, width.orElseThrow(), thickness.orElseThrow())
        .withConstruction(construction.orElseThrow());
    goods = species.map(goods::withSpecies).orElse(goods);
    goods = mass.map(goods::withPackMass).orElse(goods);
    return Optional.of(price.map(goods::withPackPrice).orElse(goods));
  }

  private static List<PackContent> pack(Fields board) {
    Optional<Value> mix = board.optional("mix");
    if (mix.isPresent() && (board.has("length") || board.has("perPack"))) {
      board.mistake("mix", "stands beside " + (board.has("length") ? "length" : "perPack")
          + "; give either length and perPack, or mix for packs of mixed lengths");
    } else if (mix.isPresent()) {
      return mixed(mix.get());
    }
    if (mix.isEmpty() && !board.has("length") && !board.has("perPack")) {
      board.mistake(Mistake.Kind.MISSING_FIELD, "length", "missing; give length and perPack, or mix for packs of mixed lengths");
      return List.of();
    }
    if (mix.isPresent()) {
      return List.of();
    }
    return content(board).map(List::of).orElse(List.of());
  }

  private static List<PackContent> mixed(Value mix) {
    List<PackContent> pack = new ArrayList<>();
    for (Value item : mix.items("lengths in a pack", 1, JobLimits.MIXED_LENGTHS)) {
      Optional<PackContent> content =
          item.object("a length and how many a pack holds", List.of("length", "perPack")).flatMap(BoardReader::content);
      for (PackContent earlier : pack) {
        if (content.isPresent() && content.get().length().equals(earlier.length())) {
          item.mistakes().add(Mistake.Kind.GIVEN_TWICE, item.place(), "found boards of " + earlier.length()
              + " a second time; list each length once and add up its boards");
        }
      }
      content.ifPresent(pack::add);
    }
    return pack;
  }

  private static Optional<PackContent> content(Fields fields) {
    Optional<Length> length = fields.requiredLength("length", LengthRange.BOARD_LENGTH);
    Optional<Integer> perPack = fields.required("perPack", "a whole number from 1 to " + JobLimits.PER_PACK)
        .flatMap(value -> value.wholeNumber(1, JobLimits.PER_PACK));
    return length.isPresent() && perPack.isPresent()
        ? Optional.of(new PackContent(length.get(), perPack.get())) : Optional.empty();
  }
}
