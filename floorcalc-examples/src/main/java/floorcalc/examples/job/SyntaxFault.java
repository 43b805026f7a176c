package floorcalc.examples.job;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.io.JsonEOFException;

/** Says where a text stops being JSON, what stands there and what to write, in words that name no parser's features. */
final class SyntaxFault {
  private final String line;

  SyntaxFault(String text, JsonProcessingException fault) {
    String original = fault.getOriginalMessage();
    int offset = (int) Math.max(0, fault.getLocation() == null ? 0 : fault.getLocation().getCharOffset());
    if (fault instanceof JsonEOFException || offset >= text.length()) {
      line = new TextPlace(text, text.length()) + ": the text ends too early; " + open(original);
      return;
    }
    int at = startOfWord(text, offset, original);
    line = new TextPlace(text, at) + ": found " + found(text, at) + "; " + advice(text, at, offset, original);
  }

  /** The start of the number or word that the fault is in, or right behind it. */
  private static int startOfWord(String text, int offset, String original) {
    boolean behind = original.startsWith("Non-standard token") || original.contains("numeric value");
    int at = behind && !isWord(text.charAt(offset)) && offset > 0 ? offset - 1 : offset;
    if (!isWord(text.charAt(at))) {
      return offset;
    }
    while (at > 0 && isWord(text.charAt(at - 1))) {
      at--;
    }
    return at;
  }

  private static String open(String original) {
    return original.contains("closing quote") ? "a text in double quotes is not closed"
        : "an object or an array is not closed";
  }

  private static String found(String text, int at) {
    int end = at;
    while (end < text.length() && end - at < 40 && isWord(text.charAt(end))) {
      end++;
    }
    int stop = end > at ? end : at + Character.charCount(text.codePointAt(at));
    return "[" + Shown.plain(text.substring(at, stop), 40) + "]";
  }

  private static boolean isWord(char c) {
    return Character.isLetterOrDigit(c) || c == '_' || c == '.' || c == '-' || c == '+';
  }

  private static String advice(String text, int at, int offset, String original) {
    char c = text.charAt(at);
    if (c == '/' || c == '#') {
      return "comments are not allowed in JSON";
    }
    if (original.startsWith("Non-standard token")) {
      return "a number is written with digits; NaN and infinity are not numbers of a job";
    }
    if (c == '\'' || c == '“' || c == '”' || c == '‘' || c == '’') {
      return "names and texts stand in straight double quotes";
    }
    if (original.contains("Leading zeroes")) {
      return "a number has no zeros in front";
    }
    if (original.contains("plus sign")) {
      return "a number has no plus sign";
    }
    if (original.contains("in numeric value")) {
      return "a number is written like 12, -4 or 2405.5";
    }
    if (original.contains("start field name")) {
      return c == '}' ? "no comma may stand before a closing brace"
          : "a name in double quotes must stand here" + (isDigit(c) ? "; a decimal sign is written as a point" : "");
    }
    if (original.contains("colon")) {
      return "a colon must stand between a name and its value";
    }
    if (original.contains("comma to separate")) {
      return isDigit(c) && offset > at ? "a number stands alone; a length with its unit is a text such as \"185 mm\""
          : "a comma must stand between two values";
    }
    if (original.contains("close marker")) {
      return "this closes something that is not open here";
    }
    if (original.contains("character escape")) {
      return "the only escapes in a text are \\\" \\\\ \\/ \\b \\f \\n \\r \\t and \\u with four hexadecimal digits";
    }
    if (original.contains("unquoted character")) {
      return "the text is not closed with a double quote, or holds a line break or a tab that is not written as \\n or \\t";
    }
    return c == ']' || c == '}' || c == ',' ? "a value is missing here"
        : "a value is text in double quotes, a number, true, false, null, an array or an object";
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  @Override
  public String toString() {
    return line;
  }
}
