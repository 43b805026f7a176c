package floorcalc.examples.explain;

import floorcalc.examples.job.Mistake;
import floorcalc.examples.readings.BadReadingsException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A file of readings named on the command line. */
public final class ReadingInput {
  private static final int READ_AT_MOST = 5_000_001;

  private ReadingInput() {
  }

  /**
   * Reads a file.
   *
   * @param <T> what it holds
   * @param file where it is, not null
   * @param reader what makes sense of its bytes, not null
   * @return what the reader made of it, not null
   * @throws IllegalArgumentException if it cannot be read or is wrong; the message says it, one mistake on each line
   */
  public static <T> T read(Path file, Function<byte[], T> reader) {
    try (InputStream in = Files.newInputStream(file)) {
      return reader.apply(in.readNBytes(READ_AT_MOST));
    } catch (BadReadingsException bad) {
      int count = bad.mistakes().size();
      throw new IllegalArgumentException(file + ": " + count + (count == 1 ? " mistake" : " mistakes") + ", nothing was worked out\n"
          + bad.mistakes().stream().map(Mistake::toString).collect(Collectors.joining("\n")), bad);
    } catch (NoSuchFileException missing) {
      throw unreadable(file, "there is no such file", missing);
    } catch (AccessDeniedException denied) {
      throw unreadable(file, "access is denied", denied);
    } catch (IOException fault) {
      throw unreadable(file, Files.isDirectory(file) ? "it is a folder" : String.valueOf(fault.getMessage()), fault);
    }
  }

  private static IllegalArgumentException unreadable(Path file, String why, IOException fault) {
    return new IllegalArgumentException(file + ": cannot be read: " + why, fault);
  }
}
