package floorcalc.compare;

/**
 * What a solver made of a case.
 *
 * @param number the case
 * @param boards the fewest boards found, 0 if no way was found
 * @param bound no way takes fewer
 * @param status its word: OPTIMAL if the number is proven the fewest, FEASIBLE if time ran out before
 * @param seconds time from start to end on the clock
 */
record SolvedBoards(int number, int boards, int bound, String status, double seconds) {

  boolean isProven() {
    return status.equals("OPTIMAL");
  }
}
