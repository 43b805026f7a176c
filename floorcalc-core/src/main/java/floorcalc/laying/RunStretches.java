package floorcalc.laying;

import floorcalc.boards.Edges;
import floorcalc.boards.Stretch;
import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * A run divided into stretches whose pieces all need the same factory edges. Where a stretch is shorter than the least piece,
 * every piece in it reaches into what lies on one side of it or the other, and needs the edges needed there too: so with the
 * slanted ends of a run, and with gaps in its contacts.
 */
final class RunStretches {
  /** A part that tapers is divided into parts of this length in nanometres or more, and into no more than so many. */
  private static final long PART = 300_000_000;
  private static final int MOST_PARTS = 64;
  /** A taper of less is none. */
  private static final long LITTLE = 1_000_000;

  private final FrameRun run;
  private final long from;
  private final long to;
  private final long minimumPiece;
  private final Length pitch;
  private Sections sections;

  /**
   * Looks at a run.
   *
   * @param from the low end of what its pieces cover
   * @param to the high end
   * @param minimumPiece the least piece of a plan that keeps the rules; 0 if this is not sure
   * @param pitch the laid pitch of the boards
   */
  RunStretches(FrameRun run, long from, long to, long minimumPiece, Length pitch) {
    this.run = run;
    this.from = from;
    this.to = to;
    this.minimumPiece = minimumPiece;
    this.pitch = pitch;
  }

  /** The stretches that meet a row line, from the low end on. */
  List<Stretch> all() {
    long[] low = Contacts.within(run.lowContacts(), from, to);
    long[] high = Contacts.within(run.highContacts(), from, to);
    if (isAllButShortEnds(Contacts.shared(low, high))) {
      return List.of(new Stretch(Length.ofNanometres(to - from), pitch, Edges.BOTH));
    }
    long[] places = places(low, high);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i + 1 < places.length; i++) {
      parts.add(new Part(places[i], places[i + 1], edges(low, high, places[i], places[i + 1])));
    }
    List<Part> last = List.of();
    parts = joined(parts);
    while (!parts.equals(last)) {
      last = parts;
      parts = joined(closed(parts));
    }
    return parts.stream().filter(part -> part.edges != Edges.NONE).flatMap(this::stretches).toList();
  }

  /** Tells whether both lines are met all along, but for ends shorter than any piece. */
  private boolean isAllButShortEnds(long[] both) {
    long end = Math.max(1, minimumPiece);
    return both.length == 2 && both[0] - from < end && to - both[1] < end;
  }

  private long[] places(long[] low, long[] high) {
    long[] all = new long[low.length + high.length + 2];
    System.arraycopy(low, 0, all, 0, low.length);
    System.arraycopy(high, 0, all, low.length, high.length);
    all[all.length - 2] = from;
    all[all.length - 1] = to;
    return Arrays.stream(all).sorted().distinct().toArray();
  }

  private static Edges edges(long[] low, long[] high, long from, long to) {
    return edges(Contacts.total(Contacts.within(low, from, to)) > 0, Contacts.total(Contacts.within(high, from, to)) > 0);
  }

  private static List<Part> joined(List<Part> parts) {
    List<Part> joined = new ArrayList<>();
    for (Part part : parts) {
      Part last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (last != null && last.edges == part.edges) {
        joined.set(joined.size() - 1, new Part(last.from, part.to, last.edges));
      } else {
        joined.add(part);
      }
    }
    return joined;
  }

  /** Gives parts shorter than any piece the edges that the parts on both sides share, or the part on one side at the run's ends. */
  private List<Part> closed(List<Part> parts) {
    List<Part> closed = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      boolean isShort = parts.size() > 1 && part.to - part.from < minimumPiece;
      Edges before = i > 0 ? parts.get(i - 1).edges : Edges.BOTH;
      Edges after = i + 1 < parts.size() ? parts.get(i + 1).edges : Edges.BOTH;
      boolean low = needsLow(part.edges) || isShort && needsLow(before) && needsLow(after);
      boolean high = needsHigh(part.edges) || isShort && needsHigh(before) && needsHigh(after);
      closed.add(new Part(part.from, part.to, edges(low, high)));
    }
    return closed;
  }

  private static boolean needsLow(Edges edges) {
    return edges == Edges.LOW || edges == Edges.BOTH;
  }

  private static boolean needsHigh(Edges edges) {
    return edges == Edges.HIGH || edges == Edges.BOTH;
  }

  private static Edges edges(boolean low, boolean high) {
    return low ? high ? Edges.BOTH : Edges.LOW : high ? Edges.HIGH : Edges.NONE;
  }

  /** A part as stretches; where it tapers, several, each with its own least width. */
  private Stream<Stretch> stretches(Part part) {
    if (part.edges == Edges.BOTH) {
      return Stream.of(new Stretch(Length.ofNanometres(part.to - part.from), pitch, Edges.BOTH));
    }
    Sections sections = sections();
    long count = sections.areAlike(LITTLE) ? 1
        : Math.min(MOST_PARTS, Math.max(1, (part.to - part.from) / Math.max(PART, minimumPiece)));
    List<Stretch> stretches = new ArrayList<>();
    for (long i = 0; i < count; i++) {
      long low = part.from + (part.to - part.from) / count * i;
      long high = i + 1 == count ? part.to : part.from + (part.to - part.from) / count * (i + 1);
      Length width = Length.ofNanometres(Math.max(1, sections.highestIn(low, high)));
      stretches.add(new Stretch(Length.ofNanometres(high - low), width, part.edges));
    }
    return stretches.stream();
  }

  /** Looked at once, and only where a part needs them. */
  private Sections sections() {
    if (sections == null) {
      sections = new Sections(run.floor(), from, to, minimumPiece);
    }
    return sections;
  }

  private record Part(long from, long to, Edges edges) {}
}
