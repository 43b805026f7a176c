package floorcalc.examples.stock;

/** What a room of the stock is used as: it sets how large it is, in millimetres. */
enum RoomKind {
  /** A box room. */
  STORE("store", 900, 1900, 1400, 2600),
  /** A hall or a passage. */
  HALL("hall", 1000, 1800, 2600, 7800),
  /** A bedroom. */
  BEDROOM("bedroom", 2400, 4200, 2900, 5200),
  /** A study. */
  STUDY("study", 2000, 3600, 2600, 4600),
  /** A kitchen. */
  KITCHEN("kitchen", 2200, 3800, 2800, 5200),
  /** A living room. */
  LIVING("living room", 3200, 5600, 3900, 7600);

  private final String words;
  private final int least;
  private final int most;
  private final int leastLong;
  private final int mostLong;

  RoomKind(String words, int least, int most, int leastLong, int mostLong) {
    this.words = words;
    this.least = least;
    this.most = most;
    this.leastLong = leastLong;
    this.mostLong = mostLong;
  }

  String words() {
    return words;
  }

  int depth(Chance chance) {
    return chance.between(least, most);
  }

  int width(Chance chance) {
    return chance.between(leastLong, mostLong);
  }
}
