package floorcalc.examples.explain;

import floorcalc.boards.BoardGoods;
import floorcalc.materials.PackOrder;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows how many packs to order for a number of boards. */
@Command(name = "packs", mixinStandardHelpOptions = true, description = "Works out packs: boards, spare boards, what is over.")
final class ExplainPacks extends Explaining {
  @Option(names = "--boards", required = true, paramLabel = "N", description = "Boards that the floor takes.")
  private int boards;

  @Option(names = "--per-pack", required = true, paramLabel = "N", description = "Boards in a pack.")
  private int perPack;

  @Option(names = "--spare", paramLabel = "SHARE", defaultValue = "0.02",
      description = "Spare boards as a share of those used; 0.02 if not given.")
  private BigDecimal spare;

  @Option(names = "--length", paramLabel = "LENGTH", defaultValue = "2200", converter = Typed.OfLength.class,
      description = "Length of a board; 2200 mm if not given.")
  private Length length;

  @Option(names = "--width", paramLabel = "LENGTH", defaultValue = "185", converter = Typed.OfLength.class,
      description = "Cover width of a board; 185 mm if not given.")
  private Length width;

  ExplainPacks(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<PackOrder> calculate() {
    BoardGoods goods = BoardGoods.of(length, width, Length.ofMillimetres(14), perPack);
    return PackOrder.of(goods, Map.of(length, boards), spare);
  }
}
