package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.PackContent;
import floorcalc.materials.WasteLedger;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.Cut;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.PlanFigures;
import floorcalc.plan.Row;
import floorcalc.rules.LayingRules;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * Saws every board of a plan once more, piece by piece in laying order: to length across the whole offcut, then to width. Where a
 * later piece would then be cut through, the section in which it lies beside others is sawn off first and ripped above its low
 * strips. Boards = pieces + kerfs + offcuts, in whole square nanometres.
 */
final class SawnBoards {
  private final FloorJob job;
  private final FloorPlan plan;
  private BigInteger boards = BigInteger.ZERO;
  private BigInteger rectangles = BigInteger.ZERO;
  private BigInteger dust = BigInteger.ZERO;
  private BigInteger usable = BigInteger.ZERO;
  private BigInteger tooShort = BigInteger.ZERO;
  private Area pieces = Area.ZERO;
  private BigInteger edges = BigInteger.ZERO;
  private int strokes;
  private long longest;

  /** A part of a board in nanometres: along from a to b, across from c to d. */
  private record Part(long a, long b, long c, long d) {
    boolean holds(Part other) {
      return a <= other.a && other.b <= b && c <= other.c && other.d <= d;
    }

    BigInteger area() {
      return BigInteger.valueOf(b - a).multiply(BigInteger.valueOf(d - c));
    }
  }

  private SawnBoards(FloorJob job, FloorPlan plan) {
    this.job = job;
    this.plan = plan;
  }

  static SawnBoards of(FloorJob job, FloorPlan plan) {
    SawnBoards sawn = new SawnBoards(job, plan);
    List<List<Part>> cuts = new ArrayList<>();
    plan.boards().forEach(board -> cuts.add(new ArrayList<>()));
    for (Bay bay : plan.bays()) {
      for (Row row : bay.rows()) {
        for (LaidPiece piece : row.pieces()) {
          Cut cut = piece.from();
          cuts.get(cut.board() - 1).add(new Part(cut.alongFrom().toNanometres(), cut.alongTo().toNanometres(),
              cut.acrossFrom().toNanometres(), cut.acrossTo().toNanometres()));
          sawn.add(piece);
        }
      }
    }
    for (OpenedBoard board : plan.boards()) {
      sawn.saw(board, cuts.get(board.board() - 1));
    }
    return sawn;
  }

  private void add(LaidPiece piece) {
    pieces = pieces.plus(piece.outline().area());
    edges = edges.add(BigInteger.valueOf(piece.outline().perimeter().toNanometres()));
    for (Ring hole : piece.holes()) {
      pieces = pieces.minus(hole.area());
      edges = edges.add(BigInteger.valueOf(hole.perimeter().toNanometres()));
    }
  }

  private void saw(OpenedBoard board, List<Part> cuts) {
    long kerf = job.rules().value(LayingRules.SAW_KERF).toNanometres();
    Part whole = new Part(0, board.length().toNanometres(), 0, job.board().laidPitch().toNanometres());
    List<Part> left = new ArrayList<>(List.of(whole));
    int before = strokes;
    BigInteger dustOfBoard = inTurn(cuts, left, kerf);
    if (dustOfBoard == null) {
      strokes = before;
      left = new ArrayList<>(List.of(whole));
      dustOfBoard = bySections(board, cuts, left, kerf);
    }
    BigInteger piecesOfBoard = cuts.stream().map(Part::area).reduce(BigInteger.ZERO, BigInteger::add);
    BigInteger offcutsOfBoard = BigInteger.ZERO;
    for (Part offcut : left) {
      offcutsOfBoard = offcutsOfBoard.add(offcut.area());
      boolean servesAgain = Length.ofNanometres(offcut.b - offcut.a)
          .compareTo(job.rules().value(LayingRules.MINIMUM_END_PIECE)) >= 0
          && Length.ofNanometres(offcut.d - offcut.c).compareTo(job.rules().value(LayingRules.MINIMUM_ROW_WIDTH)) >= 0;
      if (servesAgain) {
        usable = usable.add(offcut.area());
      } else {
        tooShort = tooShort.add(offcut.area());
      }
    }
    assertThat(piecesOfBoard.add(dustOfBoard).add(offcutsOfBoard)).as("board " + board.board())
        .isEqualTo(whole.area());
    left.stream().filter(offcut -> offcut.d - offcut.c == whole.d).forEach(offcut -> longest = Math.max(longest, offcut.b - offcut.a));
    boards = boards.add(whole.area());
    rectangles = rectangles.add(piecesOfBoard);
    dust = dust.add(dustOfBoard);
  }

  /** Cuts pieces one after the other; returns the dust, or null if one is not in one part any more. */
  private BigInteger inTurn(List<Part> cuts, List<Part> left, long kerf) {
    BigInteger dust = BigInteger.ZERO;
    for (Part cut : cuts) {
      Part from = left.stream().filter(part -> part.holds(cut)).findFirst().orElse(null);
      if (from == null) {
        return null;
      }
      left.remove(from);
      List<Part> rests = List.of(
          new Part(from.a, cut.a - kerf, from.c, from.d), new Part(cut.b + kerf, from.b, from.c, from.d),
          new Part(cut.a, cut.b, from.c, cut.c - kerf), new Part(cut.a, cut.b, cut.d + kerf, from.d));
      rests.stream().filter(rest -> rest.a < rest.b && rest.c < rest.d).forEach(left::add);
      dust = dust.add(strip(cut.a - from.a, kerf, from.d - from.c))
          .add(strip(from.b - cut.b, kerf, from.d - from.c)).add(strip(cut.c - from.c, kerf, cut.b - cut.a))
          .add(strip(from.d - cut.d, kerf, cut.b - cut.a));
    }
    return dust;
  }

  private BigInteger bySections(OpenedBoard board, List<Part> cuts, List<Part> left, long kerf) {
    BigInteger dust = BigInteger.ZERO;
    List<Part> toCut = new ArrayList<>(cuts);
    while (!toCut.isEmpty()) {
      List<Part> section = new ArrayList<>(List.of(toCut.remove(0)));
      Part box = section.get(0);
      boolean grown = true;
      while (grown) {
        long a = box.a;
        long b = box.b;
        List<Part> beside = toCut.stream().filter(cut -> cut.a < b && cut.b > a).toList();
        grown = !beside.isEmpty();
        section.addAll(beside);
        toCut.removeAll(beside);
        box = new Part(section.stream().mapToLong(Part::a).min().getAsLong(),
            section.stream().mapToLong(Part::b).max().getAsLong(), box.c, box.d);
      }
      section.sort(java.util.Comparator.comparingInt(cuts::indexOf));
      long low = section.size() == 1 ? 0 : section.stream().filter(cut -> cut.c == 0).mapToLong(Part::d).max().getAsLong();
      long a = box.a;
      long b = box.b;
      Part from = left.stream().filter(part -> part.a <= a && b <= part.b).findFirst().orElseThrow();
      left.remove(from);
      List<Part> strips = new ArrayList<>(section.size() == 1 ? List.of(new Part(a, b, from.c, from.d))
          : List.of(new Part(a, b, from.c, low), new Part(a, b, low + kerf, from.d)));
      dust = dust.add(strip(a - from.a, kerf, from.d - from.c)).add(strip(from.b - b, kerf, from.d - from.c))
          .add(section.size() == 1 ? BigInteger.ZERO : strip(from.d - low, kerf, b - a));
      BigInteger dustOfSection = inTurn(section, strips, kerf);
      assertThat(dustOfSection).as("board " + board.board() + " can be sawn into " + cuts).isNotNull();
      dust = dust.add(dustOfSection);
      left.addAll(strips);
      left.addAll(List.of(new Part(from.a, a - kerf, from.c, from.d), new Part(b + kerf, from.b, from.c, from.d)).stream()
          .filter(rest -> rest.a < rest.b).toList());
    }
    return dust;
  }

  /** A kerf, or what there is where less than a kerf is left. */
  private BigInteger strip(long beyond, long kerf, long over) {
    strokes += beyond > 0 ? 1 : 0;
    return BigInteger.valueOf(Math.min(beyond, kerf)).multiply(BigInteger.valueOf(over));
  }

  void assertSameAs(WasteLedger ledger) {
    assertThat(ledger.sawKerf()).isEqualTo(Area.ofSquareNanometres(dust));
    assertThat(ledger.usableOffcuts()).isEqualTo(Area.ofSquareNanometres(usable));
    assertThat(ledger.shortOffcuts()).isEqualTo(Area.ofSquareNanometres(tooShort));
    assertThat(ledger.laid().plus(ledger.trimmedToShape())).isEqualTo(Area.ofSquareNanometres(rectangles));
    assertThat(ledger.bought()).isEqualTo(inPacks());
    assertThat(ledger.spare().plus(ledger.packRounding()))
        .isEqualTo(inPacks().minus(Area.ofSquareNanometres(boards)));
    // Each corner of a turned piece is rounded: a nanometre along each edge, less than one and a half in all.
    Area rounding = plan.bays().stream().allMatch(bay -> bay.direction().isAlongAxis())
        ? Area.ZERO : Area.ofHalfSquareNanometres(edges.multiply(BigInteger.valueOf(3)));
    assertThat(ledger.laid().minus(pieces).abs()).isLessThanOrEqualTo(rounding);
  }

  void assertSameAs(PlanFigures figures) {
    assertThat(figures.cuts()).isEqualTo(strokes);
    assertThat(figures.longestLeftover()).isEqualTo(Length.ofNanometres(longest));
  }

  private Area inPacks() {
    Area pack = Area.ZERO;
    for (PackContent content : job.board().pack()) {
      pack = pack.plus(content.length().times(job.board().laidPitch()).multipliedBy(content.perPack()));
    }
    int used = plan.boards().size();
    int spare = job.rules().value(LayingRules.SPARE_SHARE).multiply(BigDecimal.valueOf(used))
        .setScale(0, java.math.RoundingMode.CEILING).intValueExact();
    assertThat(plan.order().spare()).isEqualTo(spare);
    assertThat(plan.order().boardsInPacks()).isEqualTo(plan.order().packs() * job.board().boardsPerPack())
        .isGreaterThanOrEqualTo(used + spare);
    return pack.multipliedBy(plan.order().packs());
  }
}
