package floorcalc.examples;

import floorcalc.drawing.FloorDrawing;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.planfile.PlanWriter;
import floorcalc.examples.sheet.CsvFiles;
import floorcalc.examples.sheet.CutCard;
import floorcalc.examples.sheet.JobSheet;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorPlan;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The files that one job gives, made in full before any is written.
 *
 * @param folder the folder they go to
 * @param files their bytes by name
 */
record Results(Path folder, Map<String, byte[]> files) {
  static Results of(Path folder, JobFile file, FloorPlan plan) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("plan.json", PlanWriter.write(plan));
    files.put("job-sheet.html", JobSheet.of(file, plan));
    for (Bay bay : plan.bays()) {
      files.put("floor-" + bay.bay() + ".svg",
          FloorDrawing.of(file.job(), plan, bay, file.tape().measures()).toSvg().getBytes(StandardCharsets.UTF_8));
      List<FloorDrawing> parts = FloorDrawing.parts(file.job(), plan, bay, file.tape().measures());
      for (int i = 0; i < parts.size(); i++) {
        files.put("floor-" + bay.bay() + "-part-" + (i + 1) + ".svg", parts.get(i).toSvg().getBytes(StandardCharsets.UTF_8));
      }
    }
    FloorDrawing.ofAllRooms(file.job(), plan, file.tape().measures())
        .ifPresent(drawing -> files.put("rooms.svg", drawing.toSvg().getBytes(StandardCharsets.UTF_8)));
    for (Bay bay : plan.bays()) {
      List<Bay> ofRoom = plan.bays().stream().filter(other -> other.room().equals(bay.room())).toList();
      if (ofRoom.size() > 1 && ofRoom.get(0).equals(bay)) {
        String name = "bays-" + bay.bay().replaceFirst("-[0-9]+$", "") + ".svg";
        files.put(name, FloorDrawing.ofRoom(file.job(), plan, bay.room(), file.tape().measures()).toSvg().getBytes(StandardCharsets.UTF_8));
      }
    }
    files.put("cut-card.csv", CsvFiles.cutCard(CutCard.of(file.job(), plan)));
    files.put("order.csv", CsvFiles.order(plan));
    return new Results(folder, files);
  }

  /** Refuses a place that cannot be written to before any work is done. */
  static void checkPlace(Path out) {
    for (Path place = out.toAbsolutePath(); place != null; place = place.getParent()) {
      if (Files.exists(place)) {
        if (!Files.isDirectory(place)) {
          throw new Refusal("--out " + out + ": " + place + " is a file; name a folder to write to");
        }
        if (!Files.isWritable(place)) {
          throw new Refusal("--out " + out + ": " + place + " cannot be written to; name a folder that can");
        }
        return;
      }
    }
  }

  void write() {
    try {
      Files.createDirectories(folder);
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Files.write(folder.resolve(file.getKey()), file.getValue());
      }
    } catch (FileAlreadyExistsException fault) {
      throw new Refusal(folder + ": is a file; name another --out folder");
    } catch (AccessDeniedException fault) {
      throw new Refusal(fault.getFile() + ": cannot be written: access is denied");
    } catch (IOException fault) {
      throw new Refusal(folder + ": cannot be written: " + fault.getMessage());
    }
  }

  /** Drawings that lie in the folder but do not belong to this plan: an earlier run's, which nobody should lay by. */
  List<String> strangers() {
    try (Stream<Path> there = Files.list(folder)) {
      return there.map(path -> path.getFileName().toString())
          .filter(name -> name.matches("(floor-|bays-).*\\.svg|rooms\\.svg") && !files.containsKey(name)).sorted().toList();
    } catch (IOException fault) {
      return List.of();
    }
  }
}
