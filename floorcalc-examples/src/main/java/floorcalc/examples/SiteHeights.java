package floorcalc.examples;

import floorcalc.examples.explain.ReadingInput;
import floorcalc.examples.readings.ReadingFile;
import floorcalc.levels.SpotLevel;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Heights of rooms from tables beside the job. */
final class SiteHeights {
  private final Map<String, List<SpotLevel>> byRoom = new LinkedHashMap<>();
  private final List<String> lines = new ArrayList<>();

  private SiteHeights() {}

  /**
   * Returns the job with the heights of the tables in its rooms.
   *
   * @param typed of each table the room, an equals sign and the file
   * @throws Refusal with all that is wrong with them
   */
  static FloorJob added(FloorJob job, List<String> typed) {
    SiteHeights heights = new SiteHeights();
    typed.forEach(one -> heights.read(job, one));
    if (!heights.lines.isEmpty()) {
      throw new Refusal(heights.lines);
    }
    return typed.isEmpty() ? job : job.withRooms(job.rooms().stream().map(heights::added).toList());
  }

  private Room added(Room room) {
    return byRoom.containsKey(room.name()) ? room.withSite(room.site().withHeights(byRoom.get(room.name()))) : room;
  }

  private void read(FloorJob job, String typed) {
    Optional<Room> room = job.rooms().stream().filter(one -> typed.startsWith(one.name() + "=")).findFirst();
    if (room.isEmpty()) {
      lines.add("--heights " + typed + ": must be a room of the job, an equals sign and a file; the rooms are: "
          + String.join(", ", job.rooms().stream().map(Room::name).toList()));
      return;
    }
    String name = room.get().name();
    if (byRoom.containsKey(name) || !room.get().site().heights().isEmpty()) {
      lines.add("--heights " + typed + ": room '" + name + "' has heights already"
          + (byRoom.containsKey(name) ? "" : " in the job") + "; give one of the two");
      return;
    }
    try {
      byRoom.put(name, ReadingInput.read(Path.of(typed.substring(name.length() + 1)), ReadingFile::room).levels().spots());
    } catch (InvalidPathException noName) {
      lines.add("--heights " + typed + ": this is not the name of a file here");
    } catch (IllegalArgumentException fault) {
      lines.addAll(fault.getMessage().lines().toList());
    }
  }
}
