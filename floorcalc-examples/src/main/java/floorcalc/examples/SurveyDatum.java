package floorcalc.examples;

/** Against what corners are said to be sure or not. */
enum SurveyDatum {
  /** Against the middle of all corners. */
  FREE("free", "± is one standard deviation where a corner is least sure, against the middle of all corners."),
  /** Against the first wall. */
  FIRST_WALL("first-wall",
      "± is one standard deviation where a corner is least sure, with corner 1 and the direction of wall 1 held.");

  private final String typed;
  private final String words;

  SurveyDatum(String typed, String words) {
    this.typed = typed;
    this.words = words;
  }

  String words() {
    return words;
  }

  @Override
  public String toString() {
    return typed;
  }
}
