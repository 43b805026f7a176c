package floorcalc.audit;

import floorcalc.plan.Bay;
import floorcalc.plan.FloorPlan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rows of a plan in laying order: bays as the plan lists them, the rows of each upwards. */
final class RowIndex {
  private final List<String> names = new ArrayList<>();
  private final Map<String, Integer> places = new HashMap<>();

  static RowIndex of(FloorPlan plan) {
    RowIndex index = new RowIndex();
    for (Bay bay : plan.bays()) {
      for (int row = 1; row <= bay.rows().size(); row++) {
        String name = bay.bay() + "." + row;
        index.places.putIfAbsent(name, index.names.size());
        index.names.add(name);
      }
    }
    return index;
  }

  /** The place of a row in laying order, from 0; -1 if there is none of that name. */
  int indexOf(String name) {
    return places.getOrDefault(name, -1);
  }

  String name(int place) {
    return names.get(place);
  }
}
