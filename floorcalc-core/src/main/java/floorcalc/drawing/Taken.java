package floorcalc.drawing;

import java.util.ArrayList;
import java.util.List;

/** The boxes of a sheet that are taken, in bands from top to bottom: a box is held against its neighbours only. */
final class Taken {
  private static final double BAND = 6;
  private static final int BANDS = (int) (Paper.LONG_SIDE / BAND) + 1;

  private final List<List<Box>> bands = new ArrayList<>(BANDS);

  Taken() {
    for (int i = 0; i < BANDS; i++) {
      bands.add(new ArrayList<>());
    }
  }

  void add(Box box) {
    for (int i = band(box, -1); i <= band(box, 1); i++) {
      bands.get(i).add(box);
    }
  }

  boolean free(Box box) {
    for (int i = band(box, -1); i <= band(box, 1); i++) {
      for (Box other : bands.get(i)) {
        if (box.overlaps(other)) {
          return false;
        }
      }
    }
    return true;
  }

  private static int band(Box box, int side) {
    int band = (int) Math.floor((box.y() + side * box.extent(0, 1)) / BAND);
    return Math.max(0, Math.min(BANDS - 1, band));
  }
}
