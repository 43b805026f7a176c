package floorcalc.trims;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;

class TrimCuttingPropertyTest {
  private static final Length BAR = Length.ofMillimetres(2400);

  @Provide
  Arbitrary<List<TrimPiece>> walls() {
    Arbitrary<TrimPiece> piece = Combinators.combine(Arbitraries.integers().between(0, 9),
        Arbitraries.longs().between(1_000_000, 2_300_000_000L), Arbitraries.longs().between(0, 100_000_000L),
        Arbitraries.integers().between(1, 6)).as((name, length, allowance, count) -> new TrimPiece("wall " + name,
            Length.ofNanometres(length), Length.ofNanometres(allowance), count));
    return piece.list().ofMinSize(1).ofMaxSize(12);
  }

  @Property(tries = 60)
  void everyPieceOnceNoBarOverfullAndTheLedgerCloses(@ForAll("walls") List<TrimPiece> pieces,
      @ForAll @LongRange(max = 6_000_000) long kerfNanometres) {
    Length kerf = Length.ofNanometres(kerfNanometres);
    Calculated<TrimCutting> calculated = TrimCutting.of(pieces, List.of(TrimStock.sold(BAR)), kerf);
    TrimCutting cutting = calculated.value();

    assertThat(names(cutting)).containsExactlyInAnyOrderElementsOf(names(pieces));
    for (TrimBar bar : cutting.bars()) {
      Length taken = kerf.multipliedBy(bar.pieces().size() - 1L);
      for (TrimPiece piece : bar.pieces()) {
        taken = taken.plus(piece.cutLength());
      }
      assertThat(taken).isLessThanOrEqualTo(BAR);
      assertThat(bar.leftover().isNegative()).isFalse();
      assertThat(bar.dust()).isLessThanOrEqualTo(kerf.multipliedBy(bar.cuts()));
      Length all = bar.leftover().plus(bar.dust());
      for (TrimPiece piece : bar.pieces()) {
        all = all.plus(piece.cutLength());
      }
      assertThat(all).isEqualTo(bar.stock().length());
    }
    assertThat(cutting.leastBarsBought()).isLessThanOrEqualTo(cutting.barsBought());
    assertThat(cutting.isLeast()).isEqualTo(cutting.leastBarsBought() == cutting.barsBought());
    assertThat(cutting.barsBought()).isLessThanOrEqualTo(longestFirst(pieces, kerf));
    assertStepsHold(calculated);
  }

  private static List<String> names(TrimCutting cutting) {
    return cutting.bars().stream().flatMap(bar -> bar.pieces().stream())
        .map(piece -> piece.name() + " " + piece.length() + " " + piece.allowance() + " " + piece.count()).toList();
  }

  private static List<String> names(List<TrimPiece> pieces) {
    return pieces.stream().flatMap(piece -> Collections.nCopies(piece.count(), piece.times(1)).stream())
        .map(piece -> piece.name() + " " + piece.length() + " " + piece.allowance() + " 1").toList();
  }

  /** The habit: longest piece first, into the first bar that has room; written here anew. */
  private static int longestFirst(List<TrimPiece> pieces, Length kerf) {
    List<Length> lengths = pieces.stream().flatMap(piece -> Collections.nCopies(piece.count(), piece.cutLength()).stream())
        .sorted(Collections.reverseOrder()).collect(Collectors.toList());
    List<Length> rests = new ArrayList<>();
    for (Length length : lengths) {
      int at = 0;
      while (at < rests.size() && rests.get(at).compareTo(length) < 0) {
        at++;
      }
      if (at == rests.size()) {
        rests.add(BAR);
      }
      rests.set(at, rests.get(at).minus(length).minus(kerf));
    }
    return rests.size();
  }

  @Property(tries = 100)
  void fewestAsByTryingAll(@ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 20) Integer> lengths,
      @ForAll @IntRange(max = 2) int kerf) {
    TrimCutting cutting = cut(lengths, List.of(TrimStock.sold(mm(20))), kerf);

    assertThat(cutting.isLeast()).isTrue();
    assertThat(cutting.isLongestLeftoverProven()).isTrue();
    AllCuttings all = new AllCuttings(lengths, new int[] {20}, new int[] {1}, new int[] {99}, kerf);
    assertThat(cutting.barsBought()).isEqualTo((int) all.leastCost());
    assertThat(cutting.longestLeftover()).isEqualTo(mm(all.longestLeftover()));
  }

  @Property(tries = 100)
  void leastOfSeveralLengthsAsByTryingAll(@ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 20) Integer> lengths,
      @ForAll @IntRange(max = 2) int kerf, @ForAll @IntRange(min = 10, max = 19) int shorter,
      @ForAll @IntRange(min = 3, max = 12) int offcut, @ForAll @IntRange(min = 1, max = 2) int offcuts) {
    TrimCutting cutting = cut(lengths,
        List.of(TrimStock.sold(mm(shorter)), TrimStock.onHand(mm(offcut), offcuts), TrimStock.sold(mm(20))), kerf);

    AllCuttings all = new AllCuttings(lengths, new int[] {20, shorter, offcut}, new int[] {20, shorter, 0},
        new int[] {99, 99, offcuts}, kerf);
    assertThat(cutting.lengthBought()).isEqualTo(mm(all.leastCost()));
    assertThat(cutting.leastLengthBought()).contains(mm(all.leastCost()));
    assertThat(cutting.isLeast()).isTrue();
  }

  /** An offcut of one nanometre holds nothing, but lets no coarser grid be used. */
  @Property(tries = 100)
  void theSameOnTheFinestGrid(@ForAll @Size(min = 1, max = 7) List<@IntRange(min = 1, max = 20) Integer> lengths,
      @ForAll @IntRange(max = 2) int kerf) {
    TrimCutting cutting =
        cut(lengths, List.of(TrimStock.sold(mm(20)), TrimStock.onHand(Length.ofNanometres(1), 1)), kerf);

    AllCuttings all = new AllCuttings(lengths, new int[] {20}, new int[] {1}, new int[] {99}, kerf);
    assertThat(cutting.barsBought()).isEqualTo((int) all.leastCost());
    assertThat(cutting.isLeast()).isTrue();
    assertThat(cutting.longestLeftover()).isEqualTo(mm(all.longestLeftover()));
  }

  @Property(tries = 100)
  void leastCostAsByTryingAll(@ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 20) Integer> lengths,
      @ForAll @IntRange(max = 1) int kerf, @ForAll @IntRange(min = 10, max = 19) int shorter,
      @ForAll @IntRange(min = 1, max = 40) int price, @ForAll @IntRange(min = 1, max = 40) int otherPrice,
      @ForAll @IntRange(min = 1, max = 3) int limit) {
    TrimCutting cutting = cut(lengths, List.of(TrimStock.sold(mm(20)).at(new Price(BigDecimal.valueOf(price, 1), "EUR")),
        TrimStock.sold(mm(shorter)).at(new Price(BigDecimal.valueOf(otherPrice, 1), "EUR")).atMost(limit)), kerf);

    AllCuttings all = new AllCuttings(lengths, new int[] {20, shorter}, new int[] {price, otherPrice},
        new int[] {99, limit}, kerf);
    assertThat(cutting.price().orElseThrow().amount()).isEqualByComparingTo(BigDecimal.valueOf(all.leastCost(), 1));
    assertThat(cutting.leastPrice().orElseThrow().amount()).isEqualByComparingTo(BigDecimal.valueOf(all.leastCost(), 1));
    assertThat(cutting.leastBarsBought()).isLessThanOrEqualTo(cutting.barsBought());
  }

  private static TrimCutting cut(List<Integer> lengths, List<TrimStock> stock, int kerf) {
    Calculated<TrimCutting> calculated = TrimCutting.of(
        lengths.stream().map(length -> TrimPiece.of("", mm(length))).toList(), stock, mm(kerf));
    assertStepsHold(calculated);
    return calculated.value();
  }

  private static Length mm(long number) {
    return Length.ofMillimetres(number);
  }

  /**
   * Whole bars of two lengths sawn up without loss: no cutting of these pieces buys less than those bars were long, and no
   * bound is above it.
   */
  @Property(tries = 40)
  void barsSawnUpWithoutLoss(@ForAll @Size(min = 2, max = 25) List<@IntRange(min = 2, max = 5) Integer> parts,
      @ForAll Random random) {
    List<TrimPiece> pieces = new ArrayList<>();
    Length planted = Length.ZERO;
    for (int number : parts) {
      int bar = random.nextInt(3) == 0 ? 3000 : 2100;
      planted = planted.plus(mm(bar));
      int left = bar;
      for (int k = 1; k < number; k++) {
        int length = 50 + random.nextInt(left - 50 * (number - k) - 49);
        pieces.add(TrimPiece.of("", mm(length)));
        left -= length;
      }
      pieces.add(TrimPiece.of("", mm(left)));
    }
    Calculated<TrimCutting> calculated =
        TrimCutting.of(pieces, List.of(TrimStock.sold(mm(2100)), TrimStock.sold(mm(3000))), mm(0));
    TrimCutting cutting = calculated.value();

    assertThat(cutting.lengthBought()).isGreaterThanOrEqualTo(planted);
    assertThat(cutting.leastLengthBought().orElseThrow()).isLessThanOrEqualTo(planted);
    assertThat(cutting.isLeast()).isEqualTo(calculated.findings().isEmpty());
    assertStepsHold(calculated);
  }

  /** Pieces and bar a kerf shorter, with that kerf between: the published problem in other words. */
  @Property(tries = 9)
  void aKerfTakenOffPiecesAndBarChangesNothing(@ForAll @IntRange(min = 1, max = 9) int kerf) {
    Instances.Instance instance = Instances.published("N1W1B1R0");
    List<TrimPiece> pieces = new ArrayList<>();
    for (long length : instance.lengths()) {
      pieces.add(TrimPiece.of("", mm(length - kerf)));
    }
    TrimCutting cutting = TrimCutting.of(pieces, List.of(TrimStock.sold(mm(instance.bar() - kerf))), mm(kerf)).value();

    assertThat(cutting.barsBought()).isEqualTo((int) instance.optimum());
    assertThat(cutting.isLeast()).isTrue();
  }

  @Property(tries = 30)
  void aBarMoreOnHandIsNeverWorse(@ForAll("walls") List<TrimPiece> pieces,
      @ForAll @LongRange(min = 1, max = 2400) long offcut) {
    List<TrimStock> stock = new ArrayList<>(List.of(TrimStock.sold(BAR)));
    TrimCutting without = TrimCutting.of(pieces, stock, mm(3)).value();
    stock.add(TrimStock.onHand(mm(offcut), 1));
    TrimCutting with = TrimCutting.of(pieces, stock, mm(3)).value();

    assertThat(with.lengthBought()).isLessThanOrEqualTo(without.lengthBought());
    assertThat(with.barsBought()).isGreaterThanOrEqualTo(without.isLeast() ? without.barsBought() - 1 : 0);
  }
}
