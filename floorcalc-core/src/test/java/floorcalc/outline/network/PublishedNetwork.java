package floorcalc.outline.network;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A network of the published collection, read from the files under {@code reference}. */
record PublishedNetwork(String id, List<NetworkPoint> points, List<Observation> observations) {

  static PublishedNetwork distances(String id) {
    List<NetworkPoint> points = new ArrayList<>();
    for (Map<String, String> row : rows("survey_distance_networks_points.csv", id)) {
      points.add(point(row, "x", "y"));
    }
    List<Observation> observations = new ArrayList<>();
    for (Map<String, String> row : rows("survey_distance_networks_obs.csv", id)) {
      observations.add(Observation.distance(row.get("from"), row.get("to"), number(row, "distance"), number(row, "sigma")));
    }
    return new PublishedNetwork(id, points, observations);
  }

  /** Their angles are clockwise and their azimuths clockwise from y: the other way round from the first to the second. */
  static PublishedNetwork mixed(String id) {
    List<NetworkPoint> points = new ArrayList<>();
    for (Map<String, String> row : rows("survey_mixed_networks_points.csv", id)) {
      points.add(point(row, "x_approx", "y_approx"));
    }
    List<Observation> observations = new ArrayList<>();
    for (Map<String, String> row : rows("survey_mixed_networks_obs.csv", id)) {
      String at = row.get("station_or_from");
      double sigma = number(row, "sigma");
      switch (row.get("kind")) {
        case "dist" -> observations.add(Observation.distance(at, row.get("a"), number(row, "value"), sigma));
        case "angle" -> observations.add(
            Observation.angle(at, row.get("b"), row.get("a"), degrees(row.get("value")), sigma / 3600));
        case "azimuth" -> observations.add(
            Observation.bearing(at, row.get("a"), 90 - degrees(row.get("value")), sigma / 3600));
        case "azimuth_fixed" -> points.add(mark(points, at, row.get("a"), number(row, "value")));
        default -> throw new IllegalStateException(row.toString());
      }
    }
    return new PublishedNetwork(id, points, observations);
  }

  /** A mark sighted at an azimuth that is exact: a held point there, as far off as you like. */
  private static NetworkPoint mark(List<NetworkPoint> points, String at, String name, double azimuth) {
    NetworkPoint from = points.stream().filter(point -> point.name().equals(at)).findFirst().orElseThrow();
    double way = Math.toRadians(azimuth);
    return NetworkPoint.held(name, from.x() + 1000 * Math.sin(way), from.y() + 1000 * Math.cos(way));
  }

  private static NetworkPoint point(Map<String, String> row, String x, String y) {
    Held held = switch (row.get("held")) {
      case "xy" -> Held.BOTH;
      case "x" -> Held.X;
      case "y" -> Held.Y;
      default -> Held.NONE;
    };
    return new NetworkPoint(row.get("point"), number(row, x), number(row, y), held);
  }

  static double degrees(String dms) {
    String[] parts = dms.split("-");
    return Double.parseDouble(parts[0]) + Double.parseDouble(parts[1]) / 60 + Double.parseDouble(parts[2]) / 3600;
  }

  static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }

  /** The rows of a network, columns by name; a column that ends early is empty. */
  static List<Map<String, String>> rows(String file, String id) {
    try (BufferedReader in = new BufferedReader(new InputStreamReader(Objects.requireNonNull(
        PublishedNetwork.class.getResourceAsStream("/reference/" + file), file), StandardCharsets.UTF_8))) {
      List<String> lines = in.lines().filter(line -> !line.startsWith("#")).toList();
      String[] names = lines.get(0).split(",");
      List<Map<String, String>> rows = new ArrayList<>();
      for (String line : lines.subList(1, lines.size())) {
        String[] cells = line.split(",", names.length);
        if (cells[0].equals(id)) {
          Map<String, String> row = new LinkedHashMap<>();
          for (int i = 0; i < names.length; i++) {
            row.put(names[i], i < cells.length ? cells[i] : "");
          }
          rows.add(row);
        }
      }
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
