package floorcalc.examples.sheet;

import floorcalc.measure.Length;
import floorcalc.plan.Cut;
import floorcalc.plan.LaidPiece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What is left of one board as its pieces are cut, one after the other. Each cut is made in the rest that holds it.
 * Normally that rest is crosscut to length and the piece then ripped; where a later piece reaches past the end of this
 * one, the rest is ripped first, or the section in which pieces lie side by side is crosscut and ripped. Not thread-safe.
 */
final class Rests {
  private final Length kerf;
  private final List<Part> free = new ArrayList<>();

  /** A rectangle of the board. */
  private record Part(Length alongFrom, Length alongTo, Length acrossFrom, Length acrossTo) {
    boolean isSomething() {
      return alongTo.compareTo(alongFrom) > 0 && acrossTo.compareTo(acrossFrom) > 0;
    }

    boolean holds(Cut cut) {
      return cut.alongFrom().compareTo(alongFrom) >= 0 && cut.alongTo().compareTo(alongTo) <= 0
          && cut.acrossFrom().compareTo(acrossFrom) >= 0 && cut.acrossTo().compareTo(acrossTo) <= 0;
    }
  }

  Rests(Length boardLength, Length boardWidth, Length kerf) {
    this.kerf = kerf;
    free.add(new Part(Length.ZERO, boardLength, Length.ZERO, boardWidth));
  }

  /** Makes a cut and returns what it leaves of the rest it is made in, longest first. */
  List<Rest> cut(Cut cut, List<LaidPiece> later) {
    Part stock = free.stream().filter(part -> part.holds(cut)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("board " + cut.board()
            + " has no room left for the piece at " + cut.alongFrom() + ", or its pieces cannot be sawn apart"));
    List<LaidPiece> fromStock = later.stream().filter(piece -> stock.holds(piece.from())).toList();
    List<Part> parts = List.of(crosscutFirst(stock, cut), ripFirst(stock, cut), sectionFirst(stock, cut, fromStock)).stream()
        .filter(way -> fromStock.stream().allMatch(piece -> way.stream().anyMatch(part -> part.holds(piece.from()))))
        .findFirst().orElseGet(() -> crosscutFirst(stock, cut)).stream().filter(Part::isSomething).toList();
    free.remove(stock);
    free.addAll(parts);
    List<Rest> rests = new ArrayList<>();
    for (Part part : parts) {
      rests.add(new Rest(part.alongTo.minus(part.alongFrom), part.acrossTo.minus(part.acrossFrom),
          fromStock.stream().filter(piece -> part.holds(piece.from())).map(LaidPiece::piece).toList()));
    }
    rests.sort(Comparator.comparing(Rest::length).thenComparing(Rest::width).reversed());
    return rests;
  }

  private List<Part> crosscutFirst(Part stock, Cut cut) {
    return List.of(
        new Part(stock.alongFrom, cut.alongFrom().minus(kerf), stock.acrossFrom, stock.acrossTo),
        new Part(cut.alongTo().plus(kerf), stock.alongTo, stock.acrossFrom, stock.acrossTo),
        new Part(cut.alongFrom(), cut.alongTo(), stock.acrossFrom, cut.acrossFrom().minus(kerf)),
        new Part(cut.alongFrom(), cut.alongTo(), cut.acrossTo().plus(kerf), stock.acrossTo));
  }

  /** The section in which this piece lies beside later ones, ripped above its low strips. */
  private List<Part> sectionFirst(Part stock, Cut cut, List<LaidPiece> later) {
    Length from = cut.alongFrom();
    Length to = cut.alongTo();
    Length ripAt = cut.acrossFrom().equals(stock.acrossFrom) ? cut.acrossTo() : stock.acrossFrom;
    List<Cut> others = new ArrayList<>(later.stream().map(LaidPiece::from).toList());
    for (int i = 0; i < others.size(); i++) {
      Cut other = others.get(i);
      if (other.alongFrom().compareTo(to) < 0 && other.alongTo().compareTo(from) > 0) {
        from = from.min(other.alongFrom());
        to = to.max(other.alongTo());
        ripAt = other.acrossFrom().equals(stock.acrossFrom) ? ripAt.max(other.acrossTo()) : ripAt;
        others.remove(i);
        i = -1;
      }
    }
    Part low = new Part(from, to, stock.acrossFrom, ripAt);
    Part high = new Part(from, to, ripAt.plus(kerf), stock.acrossTo);
    List<Part> parts = new ArrayList<>(List.of(new Part(stock.alongFrom, from.minus(kerf), stock.acrossFrom, stock.acrossTo),
        new Part(to.plus(kerf), stock.alongTo, stock.acrossFrom, stock.acrossTo)));
    parts.addAll(low.holds(cut) ? crosscutFirst(low, cut) : high.holds(cut) ? crosscutFirst(high, cut) : List.of());
    parts.add(low.holds(cut) ? high : low);
    return parts;
  }

  private List<Part> ripFirst(Part stock, Cut cut) {
    return List.of(
        new Part(stock.alongFrom, stock.alongTo, stock.acrossFrom, cut.acrossFrom().minus(kerf)),
        new Part(stock.alongFrom, stock.alongTo, cut.acrossTo().plus(kerf), stock.acrossTo),
        new Part(stock.alongFrom, cut.alongFrom().minus(kerf), cut.acrossFrom(), cut.acrossTo()),
        new Part(cut.alongTo().plus(kerf), stock.alongTo, cut.acrossFrom(), cut.acrossTo()));
  }
}
