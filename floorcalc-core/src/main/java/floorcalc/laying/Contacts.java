package floorcalc.laying;

import java.util.Arrays;

/** Stretches of a line as sorted pairs of places: {@code [from, to, from, to, …]}. */
final class Contacts {
  static final long[] NONE = new long[0];

  private Contacts() {}

  /** The stretches that two lists share, longer than nothing. */
  static long[] shared(long[] a, long[] b) {
    long[] shared = new long[a.length + b.length];
    int n = 0;
    int i = 0;
    int j = 0;
    while (i < a.length && j < b.length) {
      long from = Math.max(a[i], b[j]);
      long to = Math.min(a[i + 1], b[j + 1]);
      if (from < to) {
        shared[n++] = from;
        shared[n++] = to;
      }
      if (a[i + 1] < b[j + 1]) {
        i += 2;
      } else {
        j += 2;
      }
    }
    return n == shared.length ? shared : Arrays.copyOf(shared, n);
  }

  /** What lies between two places. */
  static long[] within(long[] contacts, long from, long to) {
    return from < to ? shared(contacts, new long[] {from, to}) : NONE;
  }

  /** Two lists that share no more than ends, as one. */
  static long[] joined(long[] a, long[] b) {
    long[][] pairs = new long[(a.length + b.length) / 2][];
    int n = 0;
    for (int i = 0; i < a.length; i += 2) {
      pairs[n++] = new long[] {a[i], a[i + 1]};
    }
    for (int i = 0; i < b.length; i += 2) {
      pairs[n++] = new long[] {b[i], b[i + 1]};
    }
    Arrays.sort(pairs, (p, q) -> Long.compare(p[0], q[0]));
    long[] all = new long[2 * n];
    for (int k = 0; k < n; k++) {
      all[2 * k] = pairs[k][0];
      all[2 * k + 1] = pairs[k][1];
    }
    return all;
  }

  /** The length of the longest stretch. */
  static long longest(long[] contacts) {
    long longest = 0;
    for (int i = 0; i < contacts.length; i += 2) {
      longest = Math.max(longest, contacts[i + 1] - contacts[i]);
    }
    return longest;
  }

  static long total(long[] contacts) {
    long sum = 0;
    for (int i = 0; i < contacts.length; i += 2) {
      sum += contacts[i + 1] - contacts[i];
    }
    return sum;
  }
}
