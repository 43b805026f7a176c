package floorcalc.reference.architecture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Who knows whom. The arrows must not run in a circle. */
final class PackageGraph {
  private final SortedMap<String, SortedSet<String>> known = new TreeMap<>();

  PackageGraph(Map<String, ? extends Set<String>> known) {
    known.forEach((name, others) -> {
      this.known.computeIfAbsent(name, key -> new TreeSet<>()).addAll(others);
      others.forEach(other -> this.known.computeIfAbsent(other, key -> new TreeSet<>()));
    });
    this.known.forEach((name, others) -> others.remove(name));
  }

  SortedSet<String> names() {
    return new TreeSet<>(known.keySet());
  }

  SortedSet<String> knownBy(String name) {
    return known.get(name);
  }

  /** The same graph without the arrows that a longer way stands for. */
  PackageGraph reduced() {
    Map<String, Set<String>> kept = new TreeMap<>();
    known.forEach((name, others) -> {
      Set<String> direct = new TreeSet<>(others);
      others.forEach(other -> direct.removeAll(below(other)));
      kept.put(name, direct);
    });
    return new PackageGraph(kept);
  }

  /** All that can be reached from a name, without the name itself. */
  SortedSet<String> below(String name) {
    SortedSet<String> reached = new TreeSet<>();
    List<String> open = new ArrayList<>(known.get(name));
    while (!open.isEmpty()) {
      String next = open.remove(open.size() - 1);
      if (reached.add(next)) {
        open.addAll(known.get(next));
      }
    }
    return reached;
  }

  /** How many arrows the longest way down from a name has. */
  int height(String name) {
    if (below(name).contains(name)) {
      throw new IllegalStateException(name + " knows itself by way of " + known.get(name));
    }
    return known.get(name).stream().mapToInt(other -> height(other) + 1).max().orElse(0);
  }
}
