package floorcalc.drawing;

import floorcalc.plan.Bay;
import floorcalc.plan.Row;
import java.util.ArrayList;
import java.util.List;

/** Dimension lines: how wide the first and the last row show. */
final class Dimensions {
  /** A row that is narrower at its other end by this much on the floor is measured there too. */
  private static final double TAPER = 0.5;
  private static final double THIN = 0.13;

  private final Sheet sheet;
  private final Walls walls;

  Dimensions(Sheet sheet, Walls walls) {
    this.sheet = sheet;
    this.walls = walls;
  }

  /** Measures the first row on the side of the starting wall and the last row on the other side. */
  void rows(Bay bay) {
    List<Row> rows = bay.rows();
    if (rows.isEmpty()) {
      return;
    }
    measure(rows.get(0), -1);
    if (rows.size() > 1) {
      measure(rows.get(rows.size() - 1), 1);
    }
  }

  /** Where a row is measured: the place along it, and its lower and upper side there. */
  private record Place(double along, double low, double high) {
    double width() {
      return high - low;
    }
  }

  private void measure(Row row, int side) {
    List<PieceShape> pieces = PieceShape.of(sheet, row);
    List<Place> places = places(pieces);
    if (places.isEmpty()) {
      return;
    }
    double start = places.get(0).along();
    double end = places.get(places.size() - 1).along();
    double widest = places.stream().mapToDouble(Place::width).max().orElse(0);
    Place widestPlace = places.stream().filter(p -> p.width() > widest - 1e-6).findFirst().orElseThrow();
    String label = "row " + row.row() + ": ";
    boolean set = set(pieces, widestPlace, label + sheet.measures.row(row.coverWidth()), side, start, end);
    if (!set) {
      sheet.note("Row " + row.row() + " shows " + sheet.measures.withUnit(row.coverWidth()) + " at its widest.");
    }
    boolean nearStart = widestPlace.along() - start <= end - widestPlace.along();
    Place other = widestPlace;
    for (Place place : places) {
      boolean farHalf = nearStart ? place.along() > (start + end) / 2 : place.along() < (start + end) / 2;
      boolean further = nearStart ? place.along() > other.along() : place.along() < other.along();
      if (farHalf && (further || other == widestPlace) && place.width() > widest / 4) {
        other = place;
      }
    }
    double less = sheet.paper.floor(widest - other.width());
    if (set && other != widestPlace && less >= TAPER) {
      double width = row.coverWidth().toMillimetres() - less;
      set(pieces, other, label + sheet.measures.row(Words.fromMillimetres(width)), side, start, end);
    }
  }

  /** Returns the corners of a row along it, each with the width just beside it. */
  private List<Place> places(List<PieceShape> pieces) {
    List<Place> places = new ArrayList<>();
    for (PieceShape piece : pieces) {
      for (int i = 0; i < piece.shape().size(0); i++) {
        double along = sheet.frame.along(piece.shape().x(0, i), piece.shape().y(0, i));
        for (double beside : new double[] {-1e-4, 1e-4}) {
          Place place = place(pieces, along + beside);
          if (place != null) {
            places.add(place);
          }
        }
      }
    }
    places.sort((p, q) -> Double.compare(p.along(), q.along()));
    return places;
  }

  private Place place(List<PieceShape> pieces, double along) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    Frame f = sheet.frame;
    for (PieceShape piece : pieces) {
      if (along < piece.a0() || along > piece.a1()) {
        continue;
      }
      Shape shape = piece.shape();
      for (int i = 0; i < shape.size(0); i++) {
        double a1 = f.along(shape.x(0, i), shape.y(0, i));
        double a2 = f.along(shape.x(0, i + 1), shape.y(0, i + 1));
        if (a1 > along != a2 > along) {
          double c1 = f.across(shape.x(0, i), shape.y(0, i));
          double c2 = f.across(shape.x(0, i + 1), shape.y(0, i + 1));
          double across = c1 + (along - a1) / (a2 - a1) * (c2 - c1);
          low = Math.min(low, across);
          high = Math.max(high, across);
        }
      }
    }
    return low < high ? new Place(along, low, high) : null;
  }

  private boolean set(List<PieceShape> pieces, Place wanted, String text, int side, double start, double end) {
    double inward = wanted.along() - start <= end - wanted.along() ? 1 : -1;
    for (double shift : new double[] {1.5, 3, 5, 8, 12, 17, 23, 30, 40, 0}) {
      Place place = place(pieces, wanted.along() + inward * shift);
      if (place == null || sheet.paper.floor(Math.abs(place.width() - wanted.width())) > 0.6) {
        continue;
      }
      double out = side < 0 ? place.low() : place.high();
      double in = side < 0 ? place.high() : place.low();
      for (double away = walls.outerFace() + 2; away < 11; away += 0.8) {
        double tip = out + side * away;
        Box box = sheet.frame.textAlong(text, Sheet.TEXT, place.along(), tip + side * 0.7 * Sheet.TEXT);
        if (walls.clear(box)) {
          draw(place.along(), in, out, tip);
          sheet.write(text, Sheet.TEXT, box);
          return true;
        }
      }
    }
    return false;
  }

  private void draw(double along, double in, double out, double tip) {
    Frame f = sheet.frame;
    sheet.stroke(f.x(along, in), f.y(along, in), f.x(along, tip), f.y(along, tip), THIN);
    if (Math.abs(out - in) < 0.8) {
      return;
    }
    OverallDimensions.tick(sheet, f.x(along, in), f.y(along, in), f.ux(), f.uy());
    OverallDimensions.tick(sheet, f.x(along, out), f.y(along, out), f.ux(), f.uy());
  }
}
