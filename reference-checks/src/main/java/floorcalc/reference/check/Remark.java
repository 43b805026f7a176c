package floorcalc.reference.check;

import java.util.Objects;

/**
 * Something about sources that a reader should know.
 *
 * @param sort what it is about, not null
 * @param file the file of figures it is about, empty if none, not null
 * @param text the remark, one or two sentences, not null
 */
public record Remark(Sort sort, String file, String text) {
  /** Checks that nothing is null. */
  public Remark {
    Objects.requireNonNull(sort, "sort");
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(text, "text");
  }

  /** What a remark is about. */
  public enum Sort {
    /** A figure is printed wrong. */
    MISPRINT("Misprints"),
    /** Two sources, or a source and its own formula, do not agree. */
    DISAGREEMENT("Where sources disagree"),
    /** Figures of a file are not checked against. */
    LEFT_OUT("Figures left out"),
    /** No source says anything. */
    NO_SOURCE("What no source covers");

    private final String words;

    Sort(String words) {
      this.words = words;
    }

    /**
     * Returns a heading for such remarks.
     *
     * @return the words, not null
     */
    public String words() {
      return words;
    }
  }
}
