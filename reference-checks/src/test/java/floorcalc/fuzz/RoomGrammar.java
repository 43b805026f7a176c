package floorcalc.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Writes one room of a job document by chance. */
final class RoomGrammar {
  private final JobGrammar job;
  private final Chance chance;
  private final String name;
  private final long[] shell;

  RoomGrammar(JobGrammar job, String name) {
    this.job = job;
    this.chance = job.chance();
    this.name = name;
    this.shell = job.ring();
  }

  String text() {
    StringBuilder text = new StringBuilder("{\"name\": ").append(job.value("\"" + name + "\""));
    if (chance.oneIn(12)) {
      text.append(", \"survey\": ").append(new SurveyGrammar(job).text());
    } else {
      text.append(", \"outline\": ").append(ring(shell));
      if (chance.oneIn(3)) {
        text.append(", \"voids\": ").append(list(3, () -> ring(inside())));
      }
    }
    job.optional(text, 2, "doors", doors());
    job.optional(text, 4, "pipes", list(4, () -> "{\"at\": " + (job.isTame() ? point(within()) : place()) + ", \"diameter\": " + job.millimetres(12, 120) + "}"));
    job.optional(text, rare(), "openings", list(2, () -> "{\"name\": " + job.name("Arch") + ", \"from\": " + place() + ", \"to\": " + place() + "}"));
    job.optional(text, rare(), "breaks", list(2, () -> "{\"from\": " + place() + ", \"to\": " + place() + "}"));
    job.optional(text, 3, "subfloor", job.choice("\"concrete\"", "\"screed\"", "\"timber\"", "\"sheet\"", "\"old floor\""));
    job.optional(text, 10, "wet", job.choice("true", "false"));
    job.optional(text, 4, "site", site());
    return text.append("}").toString();
  }

  private String list(int most, Supplier<String> item) {
    List<String> items = new ArrayList<>();
    for (int i = chance.below(most + 1); i > 0; i--) {
      items.add(item.get());
    }
    return "[" + String.join(", ", items) + "]";
  }

  private String ring(long[] ring) {
    List<String> corners = new ArrayList<>();
    for (int i = 0; i < ring.length; i += 2) {
      corners.add(point(ring[i], ring[i + 1]));
    }
    return "[" + String.join(", ", corners) + "]";
  }

  private String point(long[] at) {
    return point(at[0], at[1]);
  }

  /** Openings and breaks by chance hardly ever lie from wall to wall. */
  private int rare() {
    return job.isTame() ? 60 : 8;
  }

  private String point(long x, long y) {
    return "[" + job.length(x) + ", " + job.length(y) + "]";
  }

  /** A ring about where the room is, in a tame room inside it. */
  private long[] inside() {
    long[] small = chance.oneIn(3) ? Rings.round((int) chance.between(3, 9), job.rings().size(30, 300))
        : Rings.rectangle(job.rings().size(5, 700), job.rings().size(5, 700));
    long[] at = within();
    long[] there = Rings.moved(small, at[0], at[1]);
    for (int i = 0; job.isTame() && i < there.length; i += 2) {
      if (!Rings.holds(shell, there[i], there[i + 1])) {
        return Rings.moved(Rings.rectangle(5 * Rings.MM, 5 * Rings.MM), at[0], at[1]);
      }
    }
    return there;
  }

  /** A place between two corners and the middle of all, in a tame room inside it. */
  private long[] within() {
    long[] middle = new long[2];
    for (int i = 0; i < shell.length; i++) {
      middle[i % 2] += shell[i] / (shell.length / 2);
    }
    long[] place = middle;
    for (int tries = job.isTame() ? 20 : 1; tries > 0; tries--) {
      int corner = 2 * chance.below(shell.length / 2);
      double share = 0.95 * chance.share();
      int next = (corner + 2) % shell.length;
      long x = chance.oneIn(2) ? (shell[corner] + shell[next]) / 2 : shell[corner];
      long y = chance.oneIn(2) ? (shell[corner + 1] + shell[next + 1]) / 2 : shell[corner + 1];
      place = new long[] {middle[0] + Math.round((x - middle[0]) * share), middle[1] + Math.round((y - middle[1]) * share)};
      if (Rings.holds(shell, place[0], place[1])) {
        return place;
      }
    }
    return place;
  }

  private String place() {
    int walls = shell.length / 2;
    return switch (chance.below(4)) {
      case 0 -> {
        long[] at = within();
        yield point(at[0], at[1]);
      }
      case 1 -> "{\"wall\": " + job.whole(1, walls) + ", \"at\": " + job.millimetres(0, 1500) + ", \"off\": " + job.millimetres(1, 600) + "}";
      case 2 -> "{\"wall\": " + job.whole(1, walls) + ", \"at\": " + job.millimetres(0, 1500) + "}";
      default -> {
        int corner = 2 * chance.below(walls);
        int next = (corner + 2) % shell.length;
        long share = chance.between(0, 1000);
        yield point(shell[corner] + (shell[next] - shell[corner]) / 1000 * share, shell[corner + 1] + (shell[next + 1] - shell[corner + 1]) / 1000 * share);
      }
    };
  }

  private String doors() {
    int[] number = {0};
    return list(3, () -> {
      StringBuilder door = new StringBuilder("{\"name\": ").append(job.value("\"D" + ++number[0] + "\""));
      int corner = 2 * chance.below(shell.length / 2);
      int wall = corner / 2 + 1;
      int next = (corner + 2) % shell.length;
      double wide = StrictMath.hypot((double) shell[next] - shell[corner], (double) shell[next + 1] - shell[corner + 1]) / Rings.MM;
      long from = Math.round(chance.share() * wide * 0.6);
      long most = job.isTame() ? Math.max(1, Math.min(900, (long) (wide * 0.95) - from)) : 900;
      if (!job.isTame() && chance.oneIn(5)) {
        door.append(", \"from\": ").append(place()).append(", \"to\": ").append(place());
      } else {
        door.append(", \"from\": {\"wall\": ").append(wall).append(", \"at\": ").append(job.length(from * Rings.MM)).append("}, \"to\": {\"wall\": ")
            .append(wall).append(", \"at\": ").append(job.length((from + chance.between((most + 1) / 2, most)) * Rings.MM)).append("}");
      }
      job.optional(door, 2, "leadsTo", job.value("\"" + job.neighbour() + "\""));
      job.optional(door, 2, "beyond", "{\"finish\": " + job.choice("\"same floor\"", "\"tile\"", "\"carpet\"", "\"step\"", "\"fixed edge\"")
          + ", \"higherBy\": " + job.millimetres(-20, 20) + "}");
      job.optional(door, 4, "casing", job.choice("\"cut\"", "\"cannot be cut\""));
      job.optional(door, 4, "leaf", "{\"aboveSubfloor\": " + job.millimetres(5, 40) + "}");
      job.optional(door, 6, "fire", job.choice("true", "false"));
      return door.append("}").toString();
    });
  }

  private String site() {
    StringBuilder text = new StringBuilder("{\"daysInRoom\": ").append(job.whole(0, 10));
    String air = "{\"temperature\": " + job.choice("\"21 °C\"", "\"70 °F\"", "\"-3 °C\"") + ", \"relativeHumidity\": " + job.decimal(20, 80) + "}";
    job.optional(text, 2, "air", air);
    job.optional(text, 3, "seasons", "{\"driest\": {\"temperature\": \"20 °C\", \"relativeHumidity\": " + job.decimal(20, 45)
        + "}, \"dampest\": {\"temperature\": \"24 °C\", \"relativeHumidity\": " + job.decimal(45, 75) + "}}");
    job.optional(text, 3, "subfloorMoisture", list(3, () -> "{\"method\": " + job.choice("\"CM\"", "\"in-slab RH\"", "\"wood meter\"") + ", \"value\": "
        + job.decimal(5, 20) + "}"));
    job.optional(text, 3, "boardMoisture", list(4, () -> job.decimal(5, 13)));
    job.optional(text, 3, "packsClosed", job.choice("true", "false"));
    job.optional(text, 3, "heated", job.choice("true", "false"));
    job.optional(text, 3, "lines", list(2, () -> "{\"name\": " + job.name("A") + ", \"spacing\": " + job.millimetres(50, 400) + ", \"heights\": "
        + list(40, () -> job.decimal(-3, 3)) + "}"));
    job.optional(text, 3, "heights", list(30, () -> {
      long[] at = within();
      return "[" + job.length(at[0]) + ", " + job.length(at[1]) + ", " + job.decimal(-4, 4) + "]";
    }));
    job.optional(text, 4, "straightedge", list(2, () -> "{\"span\": " + job.choice("\"8 ft\"", "\"10 in\"", "2000") + ", \"gap\": " + job.decimal(0, 5) + "}"));
    return text.append("}").toString();
  }
}
