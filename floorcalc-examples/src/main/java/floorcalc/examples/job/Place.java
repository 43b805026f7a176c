package floorcalc.examples.job;

/** A place in a file as a JSON Pointer (RFC 6901). Immutable. */
final class Place {
  /** The whole document. */
  static final Place ROOT = new Place(null, "");
  private static final int SHOWN_OF_LONG_NAME = 60;

  private final Place parent;
  private final String step;

  private Place(Place parent, String step) {
    this.parent = parent;
    this.step = step;
  }

  Place field(String name) {
    return new Place(this, name);
  }

  Place item(int index) {
    return new Place(this, Integer.toString(index));
  }

  /** The pointer, with names that are very long cut short and characters that do not show written as their code. */
  @Override
  public String toString() {
    return parent == null ? "(the whole file)" : pointer();
  }

  private String pointer() {
    return parent == null ? "" : parent.pointer() + "/"
        + Shown.plain(step.replace("~", "~0").replace("/", "~1"), SHOWN_OF_LONG_NAME);
  }
}
