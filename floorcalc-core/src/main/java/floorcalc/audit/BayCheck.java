package floorcalc.audit;

import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.Row;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;

/** Checks the rows of a bay one after the other: covered, as cut, meeting as they may. One object serves all bays. */
final class BayCheck {
  private final long pitch;
  private final BoardBook book;
  private final CutList cuts;
  private final Breaches breaches;
  private final Tally tally;
  private final RowRules rules;
  private final StripSweep sweep = new StripSweep();
  private RowSketch now = new RowSketch();
  private RowSketch before = new RowSketch();
  private int rowsSoFar;
  private int crumbs;
  private double crumbArea;

  BayCheck(FloorJob job, BoardBook book, CutList cuts, Compromises compromises, Breaches breaches, Tally tally) {
    this.pitch = job.board().laidPitch().toNanometres();
    this.book = book;
    this.cuts = cuts;
    this.breaches = breaches;
    this.tally = tally;
    this.rules = new RowRules(job, compromises, breaches);
  }

  void check(Bay bay) {
    tally.bays++;
    Outline laid = bay.laid();
    int firstRow = rowsSoFar;
    int firstCut = cuts.size;
    rowsSoFar += bay.rows().size();
    for (int r = 0; r < bay.rows().size(); r++) {
      for (LaidPiece piece : bay.rows().get(r).pieces()) {
        cuts.add(piece, book.indexOf(piece.from().board()), firstRow + r);
      }
    }
    tally.rows += bay.rows().size();
    if (!isUsable(bay) || pitch > BayFrame.RANGE) {
      tally.comparable = false;
      return;
    }
    WideSum laidArea = new WideSum();
    addArea(laid, laidArea);
    tally.laidArea.add(laidArea);
    BayFrame frame = BayFrame.of(bay.direction(), laid.shell());
    double base = baseLine(bay, frame);
    LaidStrips strips = LaidStrips.of(laid, frame, base, pitch, bay.rows().size());
    if (strips.hasSpike) {
      breaches.add(Code.LAID_OUTLINE, bay.bay(), "the laid area of " + bay.bay() + " has a spike without width that ends at "
          + frame.place(strips.spikeX, strips.spikeY) + "; its outline must not turn back on itself");
    } else if (strips.hasSpur) {
      breaches.note(Code.SPUR, bay.bay(), "the laid area of " + bay.bay() + " has a spur of a few nanometres' width that "
          + "ends at " + frame.place(strips.spurX, strips.spurY), Source.DEFINITION);
    }
    int before = coverageBreaches();
    WideSum pieceArea = new WideSum();
    double perimeter = 0;
    crumbs = 0;
    crumbArea = 0;
    int cut = firstCut;
    for (int r = 0; r < bay.rows().size(); r++) {
      checkRow(bay, r, frame, base + (double) r * pitch, strips, cut);
      cut += now.count;
      pieceArea.add(now.twiceArea);
      perimeter += now.perimeter;
    }
    checkReach(bay, frame, base, strips);
    if (crumbs > 0) {
      breaches.note(Code.CRUMBS, bay.bay(), Words.count(crumbs, "tip") + " of the laid area of " + bay.bay()
          + " that a row line cuts off, together " + Words.squareMillimetres(crumbArea)
          + ", have no piece: too small to saw", Source.DEFINITION);
    }
    tally.pieceArea.add(pieceArea);
    tally.visits = sweep.visits;
    // Along slanting walls each corner may be off by rounding; where all edges run along or across the rows of a bay
    // that lies straight, nothing is rounded.
    double rounding = frame.isExact() && strips.square ? 0
        : BayFrame.ROUNDING * (frame.isExact() ? strips.perimeter : strips.perimeter + perimeter);
    rounding += crumbs > 0 ? 1 + crumbArea : 0;
    tally.areaRounding += rounding;
    if (coverageBreaches() == before) {
      checkArea(bay, laidArea.value(), pieceArea.value(), rounding);
    }
  }

  private boolean isUsable(Bay bay) {
    boolean inRange = bay.laid().shell().size() >= 3 && BayFrame.inRange(bay.laid().shell());
    for (Ring hole : bay.laid().voids()) {
      inRange = inRange && hole.size() >= 3 && BayFrame.inRange(hole);
    }
    if (!inRange) {
      breaches.add(Code.LAID_OUTLINE, bay.bay(), "a ring of the laid area of " + bay.bay()
          + " has fewer than three corners or lies further than 1000 km away");
    }
    return inRange;
  }

  private static void addArea(Outline laid, WideSum sum) {
    BayFrame.addTwiceArea(laid.shell(), sum);
    for (Ring hole : laid.voids()) {
      BayFrame.addTwiceArea(hole, sum);
    }
  }

  private int coverageBreaches() {
    int found = 0;
    for (Code code : new Code[] {Code.HOLE, Code.OVERLAP, Code.OUTSIDE, Code.PIECE_OUTLINE, Code.OUTSIDE_ROW,
        Code.LAID_OUTLINE}) {
      found += breaches.count(code);
    }
    return found;
  }

  /**
   * The row line below the first row: what most pieces say, each from its lowest corner and its place across the board.
   * A bay of one row may be ripped along both edges, and its pieces then say nothing: its lowest corner stands for it.
   */
  private double baseLine(Bay bay, BayFrame frame) {
    int pieces = 0;
    for (Row row : bay.rows()) {
      pieces += row.pieces().size();
    }
    int step = 1 + pieces / 4000;
    double[] said = new double[pieces / step + 1];
    int n = 0;
    int k = 0;
    double lowest = Double.POSITIVE_INFINITY;
    for (int r = 0; r < bay.rows().size(); r++) {
      for (LaidPiece piece : bay.rows().get(r).pieces()) {
        boolean one = bay.rows().size() == 1;
        if ((one || k++ % step == 0) && piece.outline().size() > 0 && BayFrame.inRange(piece.outline())) {
          double y = lowest(piece.outline(), frame);
          lowest = Math.min(lowest, y);
          if (!one) {
            said[n++] = y - CutList.clamped(piece.from().acrossFrom().toNanometres()) - (double) r * pitch;
          }
        }
      }
    }
    if (n == 0) {
      return lowest == Double.POSITIVE_INFINITY ? 0 : lowest;
    }
    Arrays.sort(said, 0, n);
    return said[n / 2];
  }

  private static double lowest(Ring ring, BayFrame frame) {
    double lowest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ring.size(); i++) {
      lowest = Math.min(lowest, frame.y(ring.x(i), ring.y(i)));
    }
    return lowest;
  }

  private void checkRow(Bay bay, int r, BayFrame frame, double low, LaidStrips strips, int firstCut) {
    Row row = bay.rows().get(r);
    RowSketch last = now;
    now = before;
    before = last;
    now.read(row.pieces(), frame, low, low + pitch);
    tally.pieces += now.count;
    for (int i = 0; i < now.count; i++) {
      checkPiece(i, firstCut + i, frame);
    }
    boolean sound = strips.addStrip(r, now.low, now.high, frame.slack(), now.slopes);
    sweep.run(now.slopes, now.count, frame);
    if (!sound || sweep.gaveUp) {
      breaches.add(Code.LAID_OUTLINE, bay.bay(), sound
          ? "row " + (r + 1) + " of " + bay.bay() + " has far too many edges one above the other to be a row of boards"
          : "the laid area of " + bay.bay() + " crosses itself or has a hole outside it, in row " + (r + 1));
    }
    for (Defect defect : sweep.defects) {
      report(bay, r, defect, frame);
    }
    now.findJoints(frame.slack());
    tally.joints += now.joints.size;
    EndCheck.check(now, cuts, firstCut, book, sweep.sawnContacts, frame, breaches);
    NameCheck.checkRow(bay, r, now, frame.slack(), breaches);
    rules.checkRow(bay, r, now, cuts, firstCut, book, frame);
    if (r > 0) {
      EdgeCheck edge = EdgeCheck.of(before, now, frame.slack());
      edge.check(cuts, firstCut - before.count, firstCut, pitch, breaches);
      rules.checkJoints(bay, r, before, now, edge, frame);
    }
  }

  private void checkPiece(int i, int cut, BayFrame frame) {
    LaidPiece piece = now.pieces.get(i);
    String name = piece.piece();
    if (!now.sound[i]) {
      tally.comparable = false;
      breaches.add(Code.PIECE_OUTLINE, name, "a ring of piece " + name
          + " has no area or lies further than 1000 km away");
      return;
    }
    double slack = frame.slack();
    double length = now.xMax[i] - now.xMin[i];
    double width = now.yMax[i] - now.yMin[i];
    if (Math.abs(length - (cuts.alongTo[cut] - cuts.alongFrom[cut])) > slack
        || Math.abs(width - (cuts.acrossTo[cut] - cuts.acrossFrom[cut])) > slack) {
      breaches.add(Code.RECTANGLE, name, "piece " + name + " is " + Words.mm(length) + " long and " + Words.mm(width)
          + " wide, but its rectangle of board " + piece.from().board() + " is "
          + Words.mm(cuts.alongTo[cut] - cuts.alongFrom[cut]) + " by "
          + Words.mm(cuts.acrossTo[cut] - cuts.acrossFrom[cut]));
    }
    if (isOutsideRow(i, slack)) {
      breaches.add(Code.OUTSIDE_ROW, name, "piece " + name + " reaches from " + Words.mm(now.yMin[i] - now.low) + " to "
          + Words.mm(now.yMax[i] - now.low) + " above the low line of its row; the row ends at the laid pitch of "
          + Words.mm(pitch));
    }
  }

  private boolean isOutsideRow(int i, double slack) {
    return now.sound[i] && (now.yMin[i] < now.low - slack || now.yMax[i] > now.high + slack);
  }

  private void report(Bay bay, int r, Defect defect, BayFrame frame) {
    if (defect.code == Code.HOLE && Crumbs.isOne(defect, now, frame.slack())) {
      crumbs++;
      crumbArea += defect.area;
      return;
    }
    if (breaches.isFull(defect.code)) {
      breaches.add(defect.code, "", "");
      return;
    }
    String place = " near " + frame.place(defect.x, defect.y);
    String area = Words.squareMillimetres(defect.area);
    String row = bay.bay() + " row " + (r + 1);
    String first = defect.first < 0 ? row : now.pieces.get(defect.first).piece();
    switch (defect.code) {
      case OVERLAP -> breaches.add(defect.code, first, "pieces " + first + " and "
          + (defect.second < 0 ? first : now.pieces.get(defect.second).piece()) + " overlap by " + area + place);
      case HOLE -> breaches.add(defect.code, row, "no piece covers " + area + " of " + row + place);
      case OUTSIDE -> {
        if (defect.first < 0 || !isOutsideRow(defect.first, frame.slack())) {
          breaches.add(defect.code, first, area + " of piece " + first + " lie outside the laid area" + place);
        }
      }
      case PIECE_OUTLINE -> breaches.add(defect.code, first, "the outline of piece " + first + " crosses itself" + place);
      default -> breaches.add(defect.code, bay.bay(), "the laid area of " + bay.bay() + " crosses itself" + place);
    }
  }

  /** Whether any of the laid area lies below the first row line or above the last. */
  private void checkReach(Bay bay, BayFrame frame, double base, LaidStrips strips) {
    double top = base + (double) bay.rows().size() * pitch;
    checkBeyond(bay, frame, strips, strips.yMin - 1, base, "below its first row");
    checkBeyond(bay, frame, strips, top, strips.yMax + 1, "above its last row");
  }

  private void checkBeyond(Bay bay, BayFrame frame, LaidStrips strips, double low, double high, String where) {
    if (high - low - 1 <= frame.slack()) {
      return;
    }
    Segments outline = new Segments();
    strips.addBeyond(low, high, frame.slack(), outline);
    sweep.run(outline, 0, frame);
    RowSketch none = new RowSketch();
    for (Defect defect : sweep.defects) {
      if (Crumbs.isOne(defect, none, frame.slack())) {
        crumbs++;
        crumbArea += defect.area;
        continue;
      }
      breaches.add(Code.HOLE, bay.bay(), "no piece covers " + Words.squareMillimetres(defect.area)
          + " of the laid area of " + bay.bay() + " " + where + ", near " + frame.place(defect.x, defect.y));
    }
  }

  private void checkArea(Bay bay, BigInteger laid, BigInteger pieces, double rounding) {
    BigInteger over = pieces.subtract(laid);
    if (new BigDecimal(over.abs()).compareTo(new BigDecimal(2 * rounding)) > 0) {
      breaches.add(Code.AREA, bay.bay(), "the pieces of " + bay.bay() + " have together "
          + Words.squareMillimetres(over.abs()) + (over.signum() < 0 ? " less" : " more") + " than the laid area");
    }
  }

  static String rowPlace(Bay bay, int r) {
    return bay.bay() + " row " + (r + 1);
  }
}
