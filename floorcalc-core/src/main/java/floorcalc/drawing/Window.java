package floorcalc.drawing;

/**
 * The part of a sheet where the room is shown. Where a bay is much smaller than its room the sheet shows the bay and what borders on
 * it, and all else is left out.
 *
 * @param left its left side on paper
 * @param top its upper side
 * @param right its right side
 * @param bottom its lower side
 */
record Window(double left, double top, double right, double bottom) {
  /** Everything is shown. */
  static final Window ALL = new Window(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY);
  /** How much is shown round a bay. */
  private static final double ROUND = 9;

  /** Returns the window round what a paper is made for. */
  static Window round(Paper paper) {
    return new Window(paper.planLeft() - ROUND, paper.planTop() - ROUND, paper.planRight() + ROUND, paper.planBottom() + ROUND);
  }

  boolean isAll() {
    return left == Double.NEGATIVE_INFINITY;
  }

  boolean contains(double x, double y) {
    return x >= left && x <= right && y >= top && y <= bottom;
  }

  boolean holds(Box box) {
    return isAll() || box.within(left, top, right, bottom);
  }

  /** Returns from which share to which of a line lies inside, both 0 if none of it does. */
  double[] share(double x1, double y1, double x2, double y2) {
    if (isAll()) {
      return new double[] {0, 1};
    }
    double from = 0;
    double to = 1;
    double[] steps = {x2 - x1, x1 - x2, y2 - y1, y1 - y2};
    double[] room = {right - x1, x1 - left, bottom - y1, y1 - top};
    for (int i = 0; i < 4; i++) {
      if (steps[i] == 0 && room[i] < 0) {
        return new double[] {0, 0};
      }
      if (steps[i] > 0) {
        to = Math.min(to, room[i] / steps[i]);
      } else if (steps[i] < 0) {
        from = Math.max(from, room[i] / steps[i]);
      }
    }
    return from < to ? new double[] {from, to} : new double[] {0, 0};
  }

  boolean meets(double x1, double y1, double x2, double y2) {
    double[] share = share(x1, y1, x2, y2);
    return share[0] < share[1] || contains(x1, y1);
  }

  /** Covers all of a sheet but the window in white. */
  void cover(Sheet sheet) {
    if (isAll()) {
      return;
    }
    // Wider than the sheet on every side, for strips are windows onto a sheet of their own.
    double far = 20;
    sheet.floor.line("<path id=\"" + sheet.id + "-frame\" fill=\"#fff\" fill-rule=\"evenodd\" stroke=\"none\" d=\"" + rectangle(-far, -far,
        sheet.paper.width() + far, sheet.paper.highest() + far) + rectangle(left, top, right, bottom) + "\"/>");
  }

  private static String rectangle(double x1, double y1, double x2, double y2) {
    return "M" + Svg.number(x1) + ' ' + Svg.number(y1) + 'L' + Svg.number(x2) + ' ' + Svg.number(y1) + 'L' + Svg.number(x2) + ' '
        + Svg.number(y2) + 'L' + Svg.number(x1) + ' ' + Svg.number(y2) + 'Z';
  }
}
