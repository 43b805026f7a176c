package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.plan.Bay;
import floorcalc.plan.Cut;
import floorcalc.plan.PieceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The pieces one by one: a light grey for what each is in its run, a heavy line where factory ends meet, a comb of
 * short ticks along what is sawn, fine lines along the grain, and the number of the board in each piece that has room.
 */
final class Boards {
  private static final double[] ALONG = {0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.1, 0.9};
  private static final double[] ACROSS = {0.5, 0.47, 0.53, 0.44, 0.56, 0.41, 0.59, 0.38, 0.62, 0.36, 0.64,
      0.34, 0.66, 0.3, 0.7};

  /** Clear space round a number within its piece. */
  private static final double MARGIN = 0.08;
  /** Places are rounded to hundredths. */
  private static final double ROUNDING = 0.02;
  /** How the note on pieces without a number begins. */
  static final String TOO_SMALL = "Pieces too small for a number";
  /** Pieces listed below the drawing because their number finds no room. */
  private static final int MOST_LISTED = 30;
  /** The largest figure of a board, 9.1 point. */
  private static final double LARGEST = 3.2;

  private final Sheet sheet;
  private final Map<Integer, Length> boardLengths;
  private final Length longest;
  private final Length fullWidth;
  private final double pitch;
  private final double tick;
  private final List<PieceShape> pieces = new ArrayList<>();
  private final List<List<Box>> combed = new ArrayList<>();

  Boards(Sheet sheet, Bay bay, Map<Integer, Length> boardLengths, Length longest, Length fullWidth) {
    this.sheet = sheet;
    this.boardLengths = boardLengths;
    this.longest = longest;
    this.fullWidth = fullWidth;
    this.pitch = sheet.paper.of(fullWidth);
    this.tick = tick(pitch);
    bay.rows().forEach(row -> pieces.addAll(PieceShape.of(sheet, row)));
  }

  /** Returns the length of the ticks along a sawn side, for rows of a width on paper. */
  static double tick(double pitch) {
    return Math.max(0.3, Math.min(0.8, pitch * 0.18));
  }

  static String tone(PieceKind kind) {
    return switch (kind) {
      case FULL -> "#fff";
      case START -> "#ededed";
      case END -> "#dadada";
      case SINGLE -> "#cacaca";
    };
  }

  void draw() {
    sheet.floor.line("<g fill=\"#fff\" stroke-width=\"0.18\" stroke-linejoin=\"round\">");
    StringBuilder joints = new StringBuilder();
    StringBuilder combs = new StringBuilder();
    for (PieceShape piece : pieces) {
      PieceKind kind = piece.piece().kind();
      String tone = kind == PieceKind.FULL ? "" : " fill=\"" + tone(kind) + '"';
      sheet.floor.line("<path id=\"" + sheet.id + "-piece-" + piece.row().row() + '-' + piece.number() + '"' + tone
          + (piece.piece().holes().isEmpty() ? "" : " fill-rule=\"evenodd\"") + " d=\"" + piece.shape().path()
          + "\"><title>" + Svg.escaped(tip(piece)) + "</title></path>");
      combed.add(sides(piece, joints, combs));
    }
    sheet.floor.line("</g>");
    sheet.explain(Mark.SAWN);
    if (joints.length() > 0) {
      sheet.explain(Mark.JOINT);
    }
    path(combs, "stroke-width=\"" + Svg.number(tick) + "\" stroke-dasharray=\"0.12 0.55\"");
    path(joints, "stroke-width=\"0.32\"");
  }

  private void path(StringBuilder d, String attributes) {
    if (d.length() > 0) {
      sheet.floor.line("<path " + attributes + " d=\"" + d + "\"/>");
    }
  }

  private String tip(PieceShape piece) {
    Cut cut = piece.piece().from();
    return TextSize.cut(piece.piece().piece(), 1, 60) + ": " + Words.kind(piece.piece().kind()) + ", "
        + size(cut) + ", from board " + cut.board();
  }

  private String size(Cut cut) {
    Measures measures = sheet.measures;
    return measures == Measures.MILLIMETRES
        ? measures.row(cut.length()) + " \u00d7 " + measures.withUnit(cut.width())
        : measures.withUnit(cut.length()) + " \u00d7 " + measures.withUnit(cut.width());
  }

  private List<Box> sides(PieceShape piece, StringBuilder joints, StringBuilder combs) {
    List<Box> combBoxes = new ArrayList<>();
    Shape shape = piece.shape();
    Length board = boardLengths.getOrDefault(piece.piece().from().board(), longest);
    for (int ring = 0; ring < shape.rings(); ring++) {
      // Of a ring that runs clockwise as seen the inside is on the right; a hole has the wood outside it.
      double inward = shape.clockwise(ring) == (ring == 0) ? 1 : -1;
      for (int i = 0; i < shape.size(ring); i++) {
        double x1 = shape.x(ring, i);
        double y1 = shape.y(ring, i);
        double dx = shape.x(ring, i + 1) - x1;
        double dy = shape.y(ring, i + 1) - y1;
        double length = Math.sqrt(dx * dx + dy * dy);
        if (length < 0.05) {
          continue;
        }
        if (piece.sawn(sheet.frame, ring, i, board, fullWidth)) {
          double nx = -dy / length * inward * tick / 2;
          double ny = dx / length * inward * tick / 2;
          Sheet.appendSegment(combs, x1 + nx, y1 + ny, x1 + dx + nx, y1 + dy + ny);
          combBoxes.add(Box.along(x1 + nx, y1 + ny, x1 + dx + nx, y1 + dy + ny, tick + 0.2));
        } else if (ring == 0 && piece.meetsNext() && endsAt(piece, x1, y1, dx, dy)) {
          Sheet.appendSegment(joints, x1, y1, x1 + dx, y1 + dy);
        }
      }
    }
    return combBoxes;
  }

  private boolean endsAt(PieceShape piece, double x, double y, double dx, double dy) {
    return Math.abs(sheet.frame.along(x, y) - piece.a1()) < 2e-4
        && Math.abs(sheet.frame.along(x + dx, y + dy) - piece.a1()) < 2e-4;
  }

  /** Draws two short lines along the grain in each piece that has room for them beside its number. */
  void grain() {
    if (pitch < 2.2) {
      return;
    }
    StringBuilder grain = new StringBuilder();
    for (PieceShape piece : pieces) {
      double length = piece.a1() - piece.a0();
      double width = piece.c1() - piece.c0();
      stroke(grain, piece, piece.a0() + 0.06 * length, 0.3 * length, piece.c0() + 0.33 * width);
      stroke(grain, piece, piece.a0() + 0.64 * length, 0.3 * length, piece.c0() + 0.67 * width);
    }
    path(grain, "stroke=\"#999\" stroke-width=\"0.1\"");
  }

  private void stroke(StringBuilder grain, PieceShape piece, double along, double length, double across) {
    Frame f = sheet.frame;
    double x1 = f.x(along, across);
    double y1 = f.y(along, across);
    double x2 = f.x(along + length, across);
    double y2 = f.y(along + length, across);
    Box box = Box.along(x1, y1, x2, y2, 0.3);
    if (length > 1.5 && piece.shape().holds(box) && sheet.free(box)) {
      Sheet.appendSegment(grain, x1, y1, x2, y2);
    }
  }

  /** Sets the number of its board in each piece; says below which pieces have no room for it. */
  void number() {
    double usual = Math.max(Sheet.SMALLEST, Math.min(LARGEST, pitch * 0.78));
    double less = Math.max(Sheet.SMALLEST, Math.min(LARGEST, pitch * 0.62));
    List<PieceShape> left = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      PieceShape piece = pieces.get(i);
      String number = Integer.toString(piece.piece().from().board());
      List<Box> combs = combed.get(i);
      if (!set(piece, number, List.of(usual, less, Sheet.SMALLEST), combs)
          && !set(piece, number, List.of(Sheet.SMALLEST), List.of())) {
        left.add(piece);
      }
    }
    if (!left.isEmpty()) {
      sheet.noteEarly(TOO_SMALL + ", row by row, with their boards: " + leftOut(left) + ".");
    }
  }

  private static String leftOut(List<PieceShape> left) {
    StringBuilder text = new StringBuilder();
    int last = 0;
    for (PieceShape piece : left.subList(0, Math.min(left.size(), MOST_LISTED))) {
      if (piece.row().row() != last) {
        last = piece.row().row();
        text.append(text.length() == 0 ? "" : "; ").append("row ").append(last).append(": ");
      } else {
        text.append(", ");
      }
      text.append(piece.piece().from().board());
    }
    return left.size() > MOST_LISTED ? text + " and " + (left.size() - MOST_LISTED) + " more" : text.toString();
  }

  /** Tries along the board first, then across it; the larger size first; the middle first, then places further out. */
  private boolean set(PieceShape piece, String number, List<Double> sizes, List<Box> avoided) {
    for (int turned = 0; turned < 2; turned++) {
      for (double size : sizes) {
        for (double across : ACROSS) {
          for (double along : ALONG) {
            double a = piece.a0() + along * (piece.a1() - piece.a0());
            double c = piece.c0() + across * (piece.c1() - piece.c0());
            Box box = turned == 0 ? sheet.frame.textAlong(number, size, a, c)
                : sheet.frame.textAcross(number, size, a, c);
            if (piece.shape().holds(box.grown(MARGIN)) && sheet.free(box.grown(ROUNDING))
                && avoided.stream().noneMatch(box::overlaps)) {
              sheet.writeBoardNumber(number, size, box);
              sheet.explain(Mark.BOARD_NUMBER);
              return true;
            }
          }
        }
      }
    }
    return false;
  }
}
