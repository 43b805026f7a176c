package floorcalc.audit;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.audit.Draft.PieceDraft;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Ring;
import floorcalc.plan.FloorJob;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.PieceKind;
import java.math.BigInteger;
import java.util.List;
import java.util.Random;
import java.util.function.LongSupplier;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever is spoilt at random in a clean plan is found, and nothing at all makes the audit throw. */
class SpoiltPlanPropertyTest {

  /** More than any rounding explains, in nanometres. */
  private static final long TOO_MUCH = 30;

  @Provide
  Arbitrary<String> handMade() {
    return Arbitraries.of(HandPlan.names().toList());
  }

  @Property(tries = 400)
  void aSpoiltHandMadePlanIsFound(@ForAll("handMade") String name, @ForAll Random random) {
    spoilAndFind(HandPlan.named(name), random);
  }

  @Property(tries = 40)
  void aSpoiltPlanOfARandomRoomIsFound(@ForAll Random random) {
    FloorJob job = RandomJobs.next(random);
    Draft draft = Draft.of(job, FloorPlanner.plan(job));
    if (!draft.pieces().isEmpty()) {
      spoilAndFind(draft, random);
    }
  }

  private static void spoilAndFind(Draft draft, Random random) {
    assertThat(PlanAudit.of(draft.job, draft.plan()).isClean()).isTrue();
    String what = spoil(draft, random);
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(report.isClean()).as(what).isFalse();
  }

  private static String spoil(Draft draft, Random random) {
    List<PieceDraft> pieces = draft.pieces();
    PieceDraft piece = pieces.get(random.nextInt(pieces.size()));
    long much = (TOO_MUCH + (long) Math.pow(10, random.nextDouble() * 8)) * (random.nextBoolean() ? 1 : -1);
    switch (random.nextInt(14)) {
      case 0 -> {
        Ring shell = draft.bays.get(0).shell;
        draft.bays.get(0).shell = withCornerMoved(shell, random.nextInt(shell.size()), much, random);
        return "a corner of the laid area moved by " + much + " nm";
      }
      case 1 -> {
        piece.outline = withCornerMoved(piece.outline, random.nextInt(piece.outline.size()), much, random);
        return "a corner of " + piece.name + " moved by " + much + " nm";
      }
      case 2 -> {
        piece.alongFrom += much;
        return piece.name + ": begins " + much + " nm later along the board";
      }
      case 3 -> {
        piece.acrossTo += much;
        return piece.name + ": ends " + much + " nm later across the board";
      }
      case 4 -> {
        draft.bays.forEach(bay -> bay.rows.forEach(row -> row.pieces.remove(piece)));
        return piece.name + " is left out";
      }
      case 5 -> {
        piece.kind = piece.kind == PieceKind.SINGLE ? PieceKind.START
            : piece.kind == PieceKind.FULL ? PieceKind.SINGLE
            : piece.kind == PieceKind.START ? PieceKind.END : PieceKind.START;
        if (piece.kind == PieceKind.SINGLE && draft.bays.stream().anyMatch(bay -> bay.rows.stream()
            .anyMatch(row -> row.pieces.contains(piece) && row.pieces.stream().filter(p -> p.run == piece.run)
                .count() == 1))) {
          piece.kind = PieceKind.END; // a whole board that is alone in its run may be called single
        }
        return piece.name + " is called " + piece.kind;
      }
      case 6 -> {
        piece.board = draft.boards.size() + 1 + random.nextInt(5);
        return piece.name + " is cut from board " + piece.board;
      }
      case 7 -> {
        piece.name = pieces.get(random.nextInt(pieces.size())).name + random.nextInt(10);
        return "a piece is called " + piece.name;
      }
      case 8 -> {
        piece.run += 1 + random.nextInt(3);
        return piece.name + " is of run " + piece.run;
      }
      case 9 -> {
        Draft.RowDraft row = draft.bays.get(0).rows.get(random.nextInt(draft.bays.get(0).rows.size()));
        row.coverWidth += much;
        return "row " + row.row + " shows " + row.coverWidth + " nm";
      }
      case 10 -> {
        int part = random.nextInt(8);
        draft.ledger[part] = draft.ledger[part].plus(Area.ofHalfSquareNanometres(BigInteger.valueOf(much)));
        return "part " + part + " of the ledger is off by " + much;
      }
      case 11 -> {
        int place = random.nextInt(draft.boards.size());
        OpenedBoard board = draft.boards.get(place);
        draft.boards.set(place, new OpenedBoard(board.board(), Length.ofNanometres(board.length().toNanometres() + much),
            board.openedInRow()));
        return "board " + board.board() + " is " + much + " nm longer";
      }
      case 12 -> {
        piece.outline = shifted(piece.outline, much, random);
        return piece.name + " lies " + much + " nm off";
      }
      default -> {
        switch (random.nextInt(4)) {
          case 0 -> draft.boardsUsed += (int) much;
          case 1 -> draft.boardsInPacks += (int) much;
          case 2 -> draft.packs += 1 + random.nextInt(3);
          default -> draft.spare += 1 + random.nextInt(3);
        }
        return "the order is miscounted";
      }
    }
  }

  private static Ring withCornerMoved(Ring ring, int corner, long by, Random random) {
    long[] xs = new long[ring.size()];
    long[] ys = new long[ring.size()];
    double angle = random.nextDouble() * 2 * Math.PI;
    for (int i = 0; i < xs.length; i++) {
      xs[i] = ring.x(i) + (i == corner ? Math.round(by * Math.cos(angle)) : 0);
      ys[i] = ring.y(i) + (i == corner ? Math.round(by * Math.sin(angle)) : 0);
    }
    return Ring.ofNanometres(xs, ys);
  }

  private static Ring shifted(Ring ring, long by, Random random) {
    long[] xs = new long[ring.size()];
    long[] ys = new long[ring.size()];
    double angle = random.nextDouble() * 2 * Math.PI;
    for (int i = 0; i < xs.length; i++) {
      xs[i] = ring.x(i) + Math.round(by * Math.cos(angle));
      ys[i] = ring.y(i) + Math.round(by * Math.sin(angle));
    }
    return Ring.ofNanometres(xs, ys);
  }

  /** Numbers as nobody would write them, in many places at once. */
  @Property(tries = 800)
  void nothingMakesTheAuditThrow(@ForAll("handMade") String name, @ForAll Random random) {
    Draft draft = HandPlan.named(name);
    LongSupplier odd = () -> switch (random.nextInt(8)) {
      case 0 -> Long.MIN_VALUE;
      case 1 -> Long.MAX_VALUE;
      case 2 -> 0;
      case 3 -> -1;
      case 4 -> random.nextLong();
      case 5 -> BayFrame.RANGE;
      default -> random.nextInt(2_000_000_000);
    };
    for (int n = 1 + random.nextInt(12); n > 0; n--) {
      List<PieceDraft> pieces = draft.pieces();
      if (pieces.isEmpty()) {
        break;
      }
      PieceDraft piece = pieces.get(random.nextInt(pieces.size()));
      switch (random.nextInt(14)) {
        case 0 -> piece.alongFrom = odd.getAsLong();
        case 1 -> piece.alongTo = odd.getAsLong();
        case 2 -> piece.acrossFrom = odd.getAsLong();
        case 3 -> piece.acrossTo = odd.getAsLong();
        case 4 -> piece.board = (int) odd.getAsLong();
        case 5 -> piece.run = (int) odd.getAsLong();
        case 6 -> piece.outline = oddRing(odd, random.nextInt(7));
        case 7 -> piece.holes.add(oddRing(odd, random.nextInt(5)));
        case 8 -> draft.bays.get(0).rows.get(random.nextInt(draft.bays.get(0).rows.size())).coverWidth = odd.getAsLong();
        case 9 -> draft.bays.get(0).rows.remove(random.nextInt(draft.bays.get(0).rows.size()));
        case 10 -> draft.boards.set(random.nextInt(draft.boards.size()), new OpenedBoard((int) odd.getAsLong(),
            Length.ofNanometres(odd.getAsLong()), "study-1." + odd.getAsLong()));
        case 11 -> {
          draft.boardsUsed = (int) odd.getAsLong();
          draft.boardsAtLeast = (int) odd.getAsLong();
          draft.spare = (int) odd.getAsLong();
          draft.packs = (int) odd.getAsLong();
          draft.boardsInPacks = (int) odd.getAsLong();
        }
        case 12 -> draft.ledger[random.nextInt(8)] =
            Area.ofHalfSquareNanometres(BigInteger.valueOf(odd.getAsLong()).pow(1 + random.nextInt(3)));
        default -> {
          Ring shell = draft.bays.get(0).shell;
          draft.bays.get(0).shell = withCornerMoved(shell, random.nextInt(shell.size()),
              random.nextInt(2_000_000_000), random);
        }
      }
      if (draft.bays.get(0).rows.isEmpty()) {
        break;
      }
    }
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(report.toString()).doesNotContain("NaN").doesNotContain("Infinity");
  }

  private static Ring oddRing(LongSupplier odd, int corners) {
    long[] xs = new long[corners];
    long[] ys = new long[corners];
    for (int i = 0; i < corners; i++) {
      xs[i] = odd.getAsLong();
      ys[i] = odd.getAsLong();
    }
    return Ring.ofNanometres(xs, ys);
  }
}
