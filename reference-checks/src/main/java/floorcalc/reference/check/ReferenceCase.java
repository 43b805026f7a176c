package floorcalc.reference.check;

import java.util.List;
import java.util.Objects;

/**
 * A question and the figures that a source prints for it.
 *
 * @param id what tells it from the other cases of its file: a row's own name or number, not null, not empty
 * @param file the name of the file of figures, not null
 * @param kind what stands behind the figures, not null
 * @param question what is asked, not null
 * @param expected the figures, at least one, not null
 */
public record ReferenceCase(String id, String file, Kind kind, Question question, List<Expected> expected) {
  /** Checks that nothing is null or empty. */
  public ReferenceCase {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(question, "question");
    expected = List.copyOf(expected);
    if (id.isBlank() || expected.isEmpty()) {
      throw new IllegalArgumentException("a case needs a name and a figure: " + file + " " + id + " " + question);
    }
  }
}
