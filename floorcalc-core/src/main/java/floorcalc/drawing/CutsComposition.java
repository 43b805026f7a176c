package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.plan.PieceKind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Puts boards or bars under each other. */
final class CutsComposition {
  /** So many have room on a sheet. */
  static final int MOST = 17;
  private static final double PITCH = 11.5;
  private static final double HEIGHT = 7;

  private final List<CutStock> all;
  private final List<CutStock> shown;
  private final String unit;
  private final String title;
  private final Measures measures;
  private final Figure figure;
  private final Sheet sheet;

  CutsComposition(List<CutStock> all, String unit, String title, Measures measures) {
    this.all = all;
    this.unit = unit;
    this.title = title;
    this.measures = measures;
    List<CutStock> cut = all.stream().filter(stock -> !stock.isWhole()).toList();
    this.shown = cut.subList(0, Math.min(MOST, cut.size()));
    this.figure = new Figure("cuts", title, measures, Figure.scale(CutsDrawing.longest(shown.isEmpty() ? all : shown).toMillimetres()),
        Figure.TOP + shown.size() * PITCH);
    this.sheet = figure.sheet;
  }

  String draw() {
    long number = all.stream().mapToLong(stock -> stock.numbers().size()).sum();
    figure.caption(title.isBlank() ? "Cuts" : title, "Scale 1:" + Words.grouped(sheet.paper.scale()) + " along, heights not to scale \u00b7 "
        + Words.count(number, unit, unit + "s") + " \u00b7 lengths " + measures.words());
    for (int i = 0; i < shown.size(); i++) {
      draw(shown.get(i), Figure.TOP + i * PITCH);
    }
    notes();
    figure.foot.scaleBar();
    key();
    return figure.svg(title.isBlank() ? "Pieces cut from " + unit + "s" : "Pieces cut from " + unit + "s: " + title, description(number));
  }

  private double x(Length place) {
    return Figure.LEFT + sheet.paper.of(place);
  }

  private void draw(CutStock stock, double top) {
    int count = stock.numbers().size();
    String name = count == 1 ? unit + ' ' + stock.numbers().get(0) : count + " x";
    String shorter = count == 1 ? Integer.toString(stock.numbers().get(0)) : name;
    figure.writeUpTo(Figure.LEFT - 1.2, top + HEIGHT / 2, name, shorter);
    figure.rectangle(Figure.LEFT, top, x(stock.length()), top + HEIGHT, "#fff", 0.2);
    double width = stock.width().toMillimetres();
    left(stock, top);
    for (CutStock.Part part : stock.parts()) {
      double x1 = x(part.cut().alongFrom());
      double x2 = x(part.cut().alongTo());
      // The factory edge that a piece is measured from lies in front.
      double y1 = top + HEIGHT * (1 - part.cut().acrossTo().toMillimetres() / width);
      double y2 = top + HEIGHT * (1 - part.cut().acrossFrom().toMillimetres() / width);
      figure.rectangle(x1, y1, x2, y2, part.tone(), Figure.FIRM);
      label(stock, part, x1, x2, (y1 + y2) / 2);
    }
  }

  private void label(CutStock stock, CutStock.Part part, double x1, double x2, double y) {
    String length = measures.row(part.cut().length());
    boolean strip = part.cut().width().compareTo(stock.width()) < 0;
    String size = strip ? length + " x " + measures.row(part.cut().width()) : length;
    boolean written = figure.writeWithin(part.name() + ": " + size, x1, x2, y) || figure.writeWithin(size, x1, x2, y)
        || figure.writeWithin(length, x1, x2, y);
    if (!written) {
      sheet.note(capital(unit) + ' ' + stock.numbers().get(0) + ": " + part.name() + ", " + measures.withUnit(part.cut().length()) + ".");
    }
  }

  /** What is left before, between and beyond the pieces, where no piece lies beside it. */
  private void left(CutStock stock, double top) {
    List<CutStock.Part> inOrder = new ArrayList<>(stock.parts());
    inOrder.sort((p, q) -> p.cut().alongFrom().compareTo(q.cut().alongFrom()));
    Length reached = Length.ZERO;
    for (CutStock.Part part : inOrder) {
      if (part.cut().alongFrom().compareTo(reached) > 0) {
        free(reached, part.cut().alongFrom(), stock, top);
      }
      reached = reached.max(part.cut().alongTo());
    }
    if (reached.compareTo(stock.length()) < 0) {
      free(reached, stock.length(), stock, top);
    }
  }

  /** A saw cut beside each piece, what is left between them. */
  private void free(Length from, Length to, CutStock stock, double top) {
    Length before = from.isZero() ? Length.ZERO : stock.kerf();
    Length after = to.equals(stock.length()) ? Length.ZERO : stock.kerf();
    Length rest = to.minus(from).minus(before).minus(after);
    if (rest.compareTo(Length.ZERO) <= 0) {
      saw((x(from) + x(to)) / 2, sheet.paper.of(to.minus(from)), top);
      return;
    }
    double x1 = x(from.plus(before));
    double x2 = x(to.minus(after));
    figure.path(Sheet.segment(x1, top + HEIGHT, x2, top), "", Figure.THIN);
    if (!before.isZero()) {
      saw(x(from) + sheet.paper.of(before) / 2, sheet.paper.of(before), top);
    }
    if (!after.isZero()) {
      saw(x(to) - sheet.paper.of(after) / 2, sheet.paper.of(after), top);
    }
    String text = measures.row(rest);
    Box box = Figure.box(text, Sheet.TEXT, (x1 + x2) / 2, top + HEIGHT / 2);
    if (2 * box.halfWidth() + 0.6 <= x2 - x1 && figure.free(box)) {
      sheet.ground(box);
      sheet.write(text, Sheet.TEXT, box);
    }
  }

  /** A saw cut, at least so wide that it shows. */
  private void saw(double middle, double width, double top) {
    double half = Math.max(width, 0.6) / 2;
    figure.rectangle(middle - half, top, middle + half, top + HEIGHT, "#000", 0);
  }

  private void notes() {
    Set<Integer> whole = new TreeSet<>();
    all.stream().filter(CutStock::isWhole).forEach(stock -> whole.addAll(stock.numbers()));
    if (!whole.isEmpty()) {
      sheet.note("Laid whole: " + unit + (whole.size() == 1 ? " " : "s ") + Words.list(whole.stream().map(n -> Integer.toString(n)).toList(), 60)
          + ".");
    }
    long drawn = shown.stream().mapToLong(stock -> stock.numbers().size()).sum();
    long rest = all.stream().mapToLong(stock -> stock.numbers().size()).sum() - whole.size() - drawn;
    if (rest > 0) {
      sheet.note(Words.count(rest, "more " + unit + " is", "more " + unit + "s are") + " cut and not drawn.");
    }
    Set<String> alike = new LinkedHashSet<>();
    shown.stream().filter(stock -> stock.numbers().size() > 1).forEach(stock -> alike.add(unit + "s "
        + Words.list(stock.numbers().stream().map(n -> Integer.toString(n)).toList(), 30)));
    if (!alike.isEmpty()) {
      sheet.note("Cut alike: " + String.join("; ", alike) + ".");
    }
  }

  private void key() {
    Set<String> tones = new LinkedHashSet<>();
    shown.forEach(stock -> stock.parts().forEach(part -> tones.add(part.tone())));
    if (all.stream().anyMatch(stock -> stock.isBoard())) {
      for (PieceKind kind : PieceKind.values()) {
        if (tones.contains(Boards.tone(kind))) {
          sign(Words.kind(kind), Boards.tone(kind));
        }
      }
    } else {
      sign("piece", Boards.tone(PieceKind.START));
    }
    double x = figure.foot.next("left over");
    double y = figure.foot.middle();
    sheet.lines.line("<rect " + figure.foot.rectangle(x) + " fill=\"#fff\" stroke-width=\"0.2\"/>");
    sheet.lines.line("<path" + Figure.stroke(Figure.THIN) + " d=\"" + Sheet.segment(x, y + 1.5, x + 6, y - 1.5) + "\"/>");
    if (shown.stream().allMatch(stock -> stock.kerf().isZero())) {
      return;
    }
    double cut = figure.foot.next("saw cut, drawn at least 0.6 mm wide");
    sheet.lines.line("<path" + Figure.stroke(0.6) + " d=\"" + Sheet.segment(cut + 3, y(-1.6), cut + 3, y(1.6)) + "\"/>");
  }

  private double y(double down) {
    return figure.foot.middle() + down;
  }

  private void sign(String words, String tone) {
    double x = figure.foot.next(words);
    sheet.lines.line("<rect " + figure.foot.rectangle(x) + " fill=\"" + tone + "\" stroke-width=\"0.3\"/>");
  }

  private String description(long number) {
    StringBuilder text = new StringBuilder("What is cut from ").append(Words.count(number, unit, unit + "s")).append(", to scale along.");
    for (CutStock stock : shown.subList(0, Math.min(12, shown.size()))) {
      text.append(' ').append(capital(unit)).append(stock.numbers().size() == 1 ? " " : "s ")
          .append(Words.list(stock.numbers().stream().map(n -> Integer.toString(n)).toList(), 12)).append(": ")
          .append(Words.list(stock.parts().stream().map(part -> part.name() + " " + part.cut().length()).toList(), 12)).append('.');
    }
    return text.toString();
  }

  private static String capital(String word) {
    return word.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + word.substring(1);
  }
}
