package floorcalc.examples.job;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tells rooms apart: each needs a name of its own. */
final class RoomNames {
  private RoomNames() {
  }

  static void check(List<Value> rooms) {
    Map<String, Place> first = new HashMap<>();
    for (Value room : rooms) {
      Optional<String> name = room.peek("name");
      if (name.isPresent()) {
        Place earlier = first.putIfAbsent(name.get(), room.place());
        if (earlier != null) {
          room.mistakes().add(Mistake.Kind.GIVEN_TWICE, room.place().field("name"), "found text \"" + Shown.plain(name.get(), 60)
              + "\", the name of " + earlier + " already; must be a name of its own");
        }
      }
    }
  }
}
