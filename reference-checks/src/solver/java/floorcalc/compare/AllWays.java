package floorcalc.compare;

import java.util.ArrayList;
import java.util.List;

/** The fewest boards by trying every way to lay and to cut; for tiny cases. Plain, and shares nothing with the model. */
final class AllWays {
  private final BoardCase given;
  private int fewest = Integer.MAX_VALUE;

  private AllWays(BoardCase given) {
    this.given = given;
  }

  /** The fewest boards; {@code Integer.MAX_VALUE} if no way keeps the rules. */
  static int fewest(BoardCase given) {
    AllWays ways = new AllWays(given);
    ways.lay(0, new ArrayList<>());
    return ways.fewest;
  }

  private void lay(int row, List<List<Integer>> joints) {
    if (row == given.rows().size()) {
      fewest = Math.min(fewest, boards(joints));
      return;
    }
    int length = given.rows().get(row);
    for (int start = length <= given.board() ? length : given.minimum(); start <= Math.min(length, given.board()); start++) {
      List<Integer> places = new ArrayList<>();
      for (int place = start; place < length; place += given.board()) {
        places.add(place);
      }
      int end = places.isEmpty() ? length : length - places.get(places.size() - 1);
      boolean longEnough = places.isEmpty() || end >= given.minimum() || end == given.board();
      if (start > 0 && longEnough && (row == 0 || areApart(joints.get(row - 1), places, given.contact(row)))) {
        joints.add(places);
        lay(row + 1, joints);
        joints.remove(row);
      }
    }
  }

  private boolean areApart(List<Integer> one, List<Integer> other, int contact) {
    return one.stream().filter(x -> x <= contact).allMatch(x -> other.stream().filter(y -> y <= contact)
        .allMatch(y -> Math.abs(x - y) >= given.offset()));
  }

  private int boards(List<List<Integer>> joints) {
    int whole = 0;
    List<Integer> starts = new ArrayList<>();
    List<Integer> ends = new ArrayList<>();
    List<Integer> singles = new ArrayList<>();
    for (int k = 0; k < joints.size(); k++) {
      int from = 0;
      List<Integer> places = new ArrayList<>(joints.get(k));
      places.add(given.rows().get(k));
      for (int i = 0; i < places.size(); i++) {
        int piece = places.get(i) - from;
        from = places.get(i);
        if (piece == given.board()) {
          whole++;
        } else if (places.size() == 1) {
          singles.add(piece);
        } else {
          (i == 0 ? starts : ends).add(piece);
        }
      }
    }
    return whole + cut(starts, ends, singles, new ArrayList<>());
  }

  /** Gives every piece in turn to each board opened that has room and no such end yet, or to a new one. */
  private int cut(List<Integer> starts, List<Integer> ends, List<Integer> singles, List<int[]> opened) {
    List<Integer> from = !starts.isEmpty() ? starts : !ends.isEmpty() ? ends : singles;
    if (from.isEmpty()) {
      return opened.size();
    }
    int slot = from == starts ? 1 : from == ends ? 2 : 3;
    int piece = from.remove(from.size() - 1) + given.kerf();
    int least = Integer.MAX_VALUE;
    for (int[] board : List.copyOf(opened)) {
      if (board[slot] == 0 && board[0] >= piece || slot == 3 && board[0] >= piece) {
        board[0] -= piece;
        board[slot]++;
        least = Math.min(least, cut(starts, ends, singles, opened));
        board[0] += piece;
        board[slot]--;
      }
    }
    int[] fresh = {given.board() + given.kerf() - piece, 0, 0, 0};
    fresh[slot]++;
    opened.add(fresh);
    least = Math.min(least, cut(starts, ends, singles, opened));
    opened.remove(opened.size() - 1);
    from.add(piece - given.kerf());
    return least;
  }
}
