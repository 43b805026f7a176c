package floorcalc.examples.sheet;

import floorcalc.measure.Length;
import floorcalc.plan.Cut;
import floorcalc.plan.LaidPiece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What is left of one board as its pieces are cut, one after the other. Each cut is made in the rest that holds it.
 * Normally that rest is crosscut to length and the piece then ripped; where a later piece reaches past the end of this
 * one, the rest is ripped first, or the section in which pieces lie side by side is crosscut and ripped. Where none of these spares all
 * later pieces, the rest is parted by straight cuts between pieces until this one lies alone: pieces that can be sawn apart at all can be
 * so after any such cut. Not thread-safe.
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
        .findFirst().orElseGet(() -> partedUntilAlone(stock, cut, fromStock)).stream().filter(Part::isSomething).toList();
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

  /** The rest parted between its pieces until this one lies alone, and then crosscut and ripped. */
  private List<Part> partedUntilAlone(Part stock, Cut cut, List<LaidPiece> later) {
    List<Part> parts = new ArrayList<>();
    Part part = stock;
    List<Cut> pieces = new ArrayList<>(later.stream().map(LaidPiece::from).toList());
    pieces.add(cut);
    while (pieces.size() > 1) {
      Optional<List<Part>> halves = parted(part, pieces);
      if (halves.isEmpty()) {
        break;
      }
      int mine = halves.get().get(0).holds(cut) ? 0 : 1;
      part = halves.get().get(mine);
      parts.add(halves.get().get(1 - mine));
      pieces.removeIf(halves.get().get(1 - mine)::holds);
    }
    parts.addAll(crosscutFirst(part, cut));
    return parts;
  }

  /** The two parts on either side of a cut between pieces, across the board or along it; empty if each would meet a piece. */
  private Optional<List<Part>> parted(Part part, List<Cut> pieces) {
    for (Cut piece : pieces) {
      Length at = piece.alongTo();
      if (isBetween(pieces, Cut::alongFrom, Cut::alongTo, at)) {
        return Optional.of(List.of(new Part(part.alongFrom, at, part.acrossFrom, part.acrossTo),
            new Part(at.plus(kerf), part.alongTo, part.acrossFrom, part.acrossTo)));
      }
    }
    for (Cut piece : pieces) {
      Length at = piece.acrossTo();
      if (isBetween(pieces, Cut::acrossFrom, Cut::acrossTo, at)) {
        return Optional.of(List.of(new Part(part.alongFrom, part.alongTo, part.acrossFrom, at),
            new Part(part.alongFrom, part.alongTo, at.plus(kerf), part.acrossTo)));
      }
    }
    return Optional.empty();
  }

  /** Tells whether a cut from a place on has pieces on both sides and meets none. */
  private boolean isBetween(List<Cut> pieces, Function<Cut, Length> from, Function<Cut, Length> to, Length at) {
    return pieces.stream().allMatch(piece -> to.apply(piece).compareTo(at) <= 0 || from.apply(piece).compareTo(at.plus(kerf)) >= 0)
        && pieces.stream().anyMatch(piece -> from.apply(piece).compareTo(at) >= 0);
  }

  private List<Part> ripFirst(Part stock, Cut cut) {
    return List.of(
        new Part(stock.alongFrom, stock.alongTo, stock.acrossFrom, cut.acrossFrom().minus(kerf)),
        new Part(stock.alongFrom, stock.alongTo, cut.acrossTo().plus(kerf), stock.acrossTo),
        new Part(stock.alongFrom, cut.alongFrom().minus(kerf), cut.acrossFrom(), cut.acrossTo()),
        new Part(cut.alongTo().plus(kerf), stock.alongTo, cut.acrossFrom(), cut.acrossTo()));
  }
}
