package floorcalc.laying;

import floorcalc.plan.Room;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Short names for rooms, of small letters, digits and hyphens, each used once; bays are numbered after them. */
final class Names {
  private static final int LONGEST = 40;

  private Names() {}

  static List<String> of(List<Room> rooms) {
    List<String> names = new ArrayList<>(rooms.size());
    java.util.Set<String> used = new java.util.HashSet<>();
    for (int i = 0; i < rooms.size(); i++) {
      String plain = plain(rooms.get(i).name());
      String name = plain.isEmpty() ? "room" + (i + 1) : plain;
      while (!used.add(name)) {
        name = name + "-room" + (i + 1);
      }
      names.add(name);
    }
    return names;
  }

  private static String plain(String name) {
    String letters = Normalizer.normalize(name, Normalizer.Form.NFD).toLowerCase(Locale.ROOT);
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < letters.length() && plain.length() < LONGEST; i++) {
      char c = letters.charAt(i);
      if (c >= 'a' && c <= 'z' || c >= '0' && c <= '9') {
        plain.append(c);
      } else if (Character.getType(c) != Character.NON_SPACING_MARK && plain.length() > 0
          && plain.charAt(plain.length() - 1) != '-') {
        plain.append('-');
      }
    }
    while (plain.length() > 0 && plain.charAt(plain.length() - 1) == '-') {
      plain.setLength(plain.length() - 1);
    }
    return plain.toString();
  }
}
