package floorcalc.outline.survey;

/** The lengths that a survey gives between pairs of corners, counted from 0; one given twice is their mean. Millimetres. */
final class KnownLengths {
  private final double[][] sum;
  private final int[][] count;

  KnownLengths(Survey survey) {
    int n = survey.size();
    sum = new double[n][n];
    count = new int[n][n];
    for (int i = 0; i < n; i++) {
      add(i, (i + 1) % n, survey.walls().get(i).length().toMillimetres());
    }
    for (Tie tie : survey.ties()) {
      add(tie.from() - 1, tie.to() - 1, tie.length().toMillimetres());
    }
  }

  private void add(int a, int b, double length) {
    sum[a][b] += length;
    sum[b][a] += length;
    count[a][b]++;
    count[b][a]++;
  }

  boolean has(int a, int b) {
    return count[a][b] > 0;
  }

  double get(int a, int b) {
    return sum[a][b] / count[a][b];
  }
}
