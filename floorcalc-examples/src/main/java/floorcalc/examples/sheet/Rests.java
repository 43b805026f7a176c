package floorcalc.examples.sheet;

import floorcalc.measure.Length;
import floorcalc.plan.Cut;
import floorcalc.plan.LaidPiece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Works out what one cut leaves of its board, given the cuts before it and the pieces that are still to come from it.
 * Normally a board is crosscut to length and the piece then ripped; where a later piece reaches past the end of this one,
 * the board is ripped first.
 */
final class Rests {
  private final Cut cut;
  private final List<LaidPiece> later;
  private final Length kerf;
  private final Length boardWidth;
  private Length left = Length.ZERO;
  private Length right;
  private Length near = Length.ZERO;
  private Length far;

  /** A part of the board. */
  private record Part(Length alongFrom, Length alongTo, Length acrossFrom, Length acrossTo) {
    boolean isSomething() {
      return alongTo.compareTo(alongFrom) > 0 && acrossTo.compareTo(acrossFrom) > 0;
    }

    boolean holds(Cut other) {
      return other.alongFrom().compareTo(alongFrom) >= 0 && other.alongTo().compareTo(alongTo) <= 0
          && other.acrossFrom().compareTo(acrossFrom) >= 0 && other.acrossTo().compareTo(acrossTo) <= 0;
    }
  }

  private Rests(Cut cut, List<LaidPiece> later, Length boardLength, Length boardWidth, Length kerf) {
    this.cut = cut;
    this.later = later;
    this.kerf = kerf;
    this.boardWidth = boardWidth;
    this.right = boardLength;
    this.far = boardWidth;
  }

  static List<Rest> of(Cut cut, List<LaidPiece> earlier, List<LaidPiece> later, Length boardLength, Length boardWidth,
      Length kerf) {
    Rests rests = new Rests(cut, later, boardLength, boardWidth, kerf);
    earlier.forEach(piece -> rests.exclude(piece.from()));
    List<Part> crosscut = rests.crosscutFirst();
    boolean fits = later.stream().allMatch(piece -> crosscut.stream().anyMatch(part -> part.holds(piece.from())));
    return rests.named(fits ? crosscut : rests.ripFirst());
  }

  private void exclude(Cut other) {
    if (other.alongTo().compareTo(cut.alongFrom()) <= 0) {
      left = left.max(other.alongTo().plus(kerf));
    } else if (other.alongFrom().compareTo(cut.alongTo()) >= 0) {
      right = right.min(other.alongFrom().minus(kerf));
    } else if (other.acrossTo().compareTo(cut.acrossFrom()) <= 0) {
      near = near.max(other.acrossTo().plus(kerf));
    } else {
      far = far.min(other.acrossFrom().minus(kerf));
    }
  }

  private List<Part> crosscutFirst() {
    return List.of(
        new Part(left, cut.alongFrom().minus(kerf), Length.ZERO, boardWidth),
        new Part(cut.alongTo().plus(kerf), right, Length.ZERO, boardWidth),
        new Part(cut.alongFrom(), cut.alongTo(), near, cut.acrossFrom().minus(kerf)),
        new Part(cut.alongFrom(), cut.alongTo(), cut.acrossTo().plus(kerf), far));
  }

  private List<Part> ripFirst() {
    return List.of(
        new Part(left, right, near, cut.acrossFrom().minus(kerf)),
        new Part(left, right, cut.acrossTo().plus(kerf), far),
        new Part(left, cut.alongFrom().minus(kerf), cut.acrossFrom(), cut.acrossTo()),
        new Part(cut.alongTo().plus(kerf), right, cut.acrossFrom(), cut.acrossTo()));
  }

  private List<Rest> named(List<Part> parts) {
    List<Rest> rests = new ArrayList<>();
    for (Part part : parts) {
      if (part.isSomething()) {
        rests.add(new Rest(part.alongTo.minus(part.alongFrom), part.acrossTo.minus(part.acrossFrom),
            later.stream().filter(piece -> part.holds(piece.from())).map(LaidPiece::piece).toList()));
      }
    }
    rests.sort(Comparator.comparing(Rest::length).thenComparing(Rest::width).reversed());
    return rests;
  }
}
