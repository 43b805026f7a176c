package floorcalc.trims;

/** A budget of counted steps: the same on every machine, so that results are too. Used by one thread. */
final class Budget {
  private long left;

  Budget(long steps) {
    this.left = steps;
  }

  /** Takes steps; tells whether the budget lasted. */
  boolean spend(long steps) {
    left -= steps;
    return left > 0;
  }

  boolean isSpent() {
    return left <= 0;
  }

  /** Sets a part of what is left aside as a budget of its own; give back what it did not use. */
  Budget part(long most) {
    return new Budget(Math.max(0, Math.min(most, left)));
  }

  /** Takes what a part has used. */
  void settle(long granted, Budget part) {
    left -= Math.max(0, Math.min(granted, left)) - part.left;
  }

  long left() {
    return left;
  }
}
