package floorcalc.recheck;

/** Counts what is looked at. */
final class Tally {
  int plans = 1;
  int lengths;
  int rooms;
  int walls;
  int bays;
  int rows;
  int pieces;
  int joints;
  int contacts;
  int offsets;
  int boards;
  int pairs;
  int profiles;
  int compromises;
  int checks;
  int boardsByArea;
  int boardsCutAgain;

  Checked checked() {
    return new Checked(plans, lengths, rooms, walls, bays, rows, pieces, joints, contacts, offsets, boards, pairs, profiles, compromises,
        checks, boardsByArea, boardsCutAgain);
  }
}
