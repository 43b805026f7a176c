package floorcalc.outline.survey;

/**
 * The lengths that a survey gives between pairs of corners, counted from 0; one given twice is their mean. A measured turn
 * gives the length across its corner. Millimetres.
 */
final class KnownLengths {
  private final double[][] sum;
  private final int[][] count;
  private final double[][] across;

  /**
   * Takes the lengths of a survey.
   *
   * @param leftOut the one that is left out, walls first, then ties; -1 if none is
   */
  KnownLengths(Survey survey, int leftOut) {
    int n = survey.size();
    sum = new double[n][n];
    count = new int[n][n];
    across = new double[n][n];
    for (int i = 0; i < n; i++) {
      if (i != leftOut) {
        add(i, (i + 1) % n, survey.walls().get(i).length().toMillimetres());
      }
    }
    for (int i = 0; i < survey.ties().size(); i++) {
      if (n + i != leftOut) {
        Tie tie = survey.ties().get(i);
        add(tie.from() - 1, tie.to() - 1, tie.length().toMillimetres());
      }
    }
    for (int i = 0; i < n; i++) {
      Turn turn = survey.walls().get(i).turn();
      if (turn.isMeasured() && i != leftOut && (i + 1) % n != leftOut) {
        double in = survey.walls().get(i).length().toMillimetres();
        double out = survey.walls().get((i + 1) % n).length().toMillimetres();
        int to = (i + 2) % n;
        across[i][to] = StrictMath.sqrt(Math.max(0,
            in * in + out * out + 2 * in * out * Walk.cos(turn.degrees().getAsDouble())));
        across[to][i] = across[i][to];
      }
    }
  }

  private void add(int a, int b, double length) {
    sum[a][b] += length;
    sum[b][a] += length;
    count[a][b]++;
    count[b][a]++;
  }

  /** Whether a length was measured. */
  boolean has(int a, int b) {
    return count[a][b] > 0;
  }

  /** Whether a length was measured or follows from a turn. */
  boolean tells(int a, int b) {
    return has(a, b) || across[a][b] > 0;
  }

  double get(int a, int b) {
    return has(a, b) ? sum[a][b] / count[a][b] : across[a][b];
  }
}
