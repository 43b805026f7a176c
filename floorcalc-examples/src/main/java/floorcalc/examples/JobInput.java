package floorcalc.examples;

import floorcalc.examples.job.BadJobException;
import floorcalc.examples.job.JobFile;
import floorcalc.examples.job.JobReader;
import floorcalc.examples.job.Mistake;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * A job named on the command line.
 *
 * @param typed what was typed: a path, or {@code -} for standard input
 * @param folder the name of the folder that its results go to
 */
record JobInput(String typed, String folder) {
  static final String STANDARD_INPUT = "-";
  private static final int READ_AT_MOST = JobReader.MOST_BYTES + 1;
  private static final String ENDING = ".json";

  static JobInput of(String typed) {
    if (typed.equals(STANDARD_INPUT)) {
      return new JobInput(typed, "standard-input");
    }
    Path file = Path.of(typed).getFileName();
    String name = file == null ? "" : file.toString();
    boolean ends = name.toLowerCase(Locale.ROOT).endsWith(ENDING);
    return new JobInput(typed, ends ? name.substring(0, name.length() - ENDING.length()) : name);
  }

  /** Says what is wrong with the names: two jobs that would write to one folder, or none to write to. */
  static List<String> clashes(List<JobInput> inputs) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      JobInput input = inputs.get(i);
      if (input.folder.isEmpty() || input.folder.equals(".") || input.folder.equals("..")) {
        lines.add(input.typed + ": the results go to a folder named after the file without .json, and nothing is left of"
            + " this name; rename the file");
      }
      for (int j = 0; j < i; j++) {
        if (input.folder.equalsIgnoreCase(inputs.get(j).folder)) {
          lines.add(input.typed + ": the results go to a folder named after the file, and " + inputs.get(j).typed
              + " has that name already; rename one of the two or plan them with different --out folders");
          break;
        }
      }
    }
    return lines;
  }

  /** Reads the job; what is wrong with it is added to the lines. */
  List<JobFile> read(InputStream standardInput, List<String> lines) {
    return read(standardInput, lines, JobReader::read).stream().toList();
  }

  /** Reads what a reader makes of the file likewise. */
  <T> Optional<T> read(InputStream standardInput, List<String> lines, Function<byte[], T> reader) {
    try (InputStream in = open(standardInput)) {
      return Optional.of(reader.apply(in.readNBytes(READ_AT_MOST)));
    } catch (IOException fault) {
      lines.add(unreadable(fault));
    } catch (BadJobException bad) {
      int count = bad.mistakes().size();
      lines.add(typed + ": " + count + (count == 1 ? " mistake" : " mistakes") + ", nothing was planned or written");
      bad.mistakes().stream().map(Mistake::toString).forEach(lines::add);
    }
    return Optional.empty();
  }

  /** Opens the file; standard input stays open when what is returned is closed. */
  InputStream open(InputStream standardInput) throws IOException {
    return typed.equals(STANDARD_INPUT) ? new Borrowed(standardInput) : Files.newInputStream(Path.of(typed));
  }

  /** Says why the file cannot be read. */
  String unreadable(IOException fault) {
    String reason = fault instanceof NoSuchFileException ? "there is no such file"
        : fault instanceof AccessDeniedException ? "access is denied"
        : Files.isDirectory(Path.of(typed)) ? "it is a folder"
        : fault.getMessage() == null ? fault.getClass().getSimpleName() : fault.getMessage();
    return typed + ": cannot be read: " + reason;
  }

  /** A stream that belongs to someone else. */
  private static final class Borrowed extends FilterInputStream {
    Borrowed(InputStream in) {
      super(in);
    }

    @Override
    public void close() {
      // It is not ours to close.
    }
  }
}
