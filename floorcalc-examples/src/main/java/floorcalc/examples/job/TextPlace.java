package floorcalc.examples.job;

/** A place in a text as line and column, both from 1. */
record TextPlace(String text, int offset) {
  @Override
  public String toString() {
    int line = 1;
    int start = 0;
    int end = Math.min(offset, text.length());
    for (int i = 0; i < end; i++) {
      char c = text.charAt(i);
      if (c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n')) {
        line++;
        start = i + 1;
      }
    }
    return "line " + line + ", column " + (text.codePointCount(start, end) + 1);
  }
}
