package floorcalc.examples.job;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Reads one JSON document as a tree: UTF-8, nothing that RFC 8259 does not allow, nothing after the document, each name
 * once in its object, numbers exact. One byte order mark at the start is passed over.
 */
final class StrictJson {
  private static final JsonFactory JSON = JsonFactory.builder().build();
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final String text;
  private final Mistakes mistakes;
  private JsonParser parser;
  private int values;

  private StrictJson(String text, Mistakes mistakes) {
    this.text = text;
    this.mistakes = mistakes;
  }

  /** Stops the reading at a place where the text is not JSON that is read here. */
  private static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;

    private final Mistake.Kind kind;

    Unreadable(Mistake.Kind kind, String message) {
      super(message);
      this.kind = kind;
    }
  }

  /** Returns the tree, or nothing if the text is not JSON; names that stand twice are noted and the first one kept. */
  static Optional<JsonNode> read(byte[] bytes, Mistakes mistakes) {
    if (bytes.length > JobLimits.FILE_BYTES) {
      mistakes.add(Mistake.Kind.TOO_LARGE, Place.ROOT, "found more than " + JobLimits.FILE_BYTES / 1_000_000
          + " MB; a job file may have at most " + JobLimits.FILE_BYTES + " bytes");
      return Optional.empty();
    }
    return decode(bytes, mistakes).flatMap(text -> new StrictJson(text, mistakes).read());
  }

  private static Optional<String> decode(byte[] bytes, Mistakes mistakes) {
    int mark = bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF ? 3 : 0;
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes, mark, bytes.length - mark);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    out.flip();
    if (result.isError()) {
      mistakes.add(Mistake.Kind.NOT_JSON.code(), new TextPlace(out.toString(), out.length()).toString(),
          "found a byte that is not UTF-8; save the file in UTF-8");
      return Optional.empty();
    }
    return Optional.of(out.toString());
  }

  private Optional<JsonNode> read() {
    try (JsonParser opened = JSON.createParser(new StringReader(text))) {
      parser = opened;
      if (parser.nextToken() == null) {
        throw new Unreadable(Mistake.Kind.NOT_JSON, new TextPlace(text, text.length()) + ": the text is empty; a job is one JSON object");
      }
      JsonNode root = node(Place.ROOT, 1);
      int end = nextVisible((int) parser.currentLocation().getCharOffset());
      if (end < text.length()) {
        throw new Unreadable(Mistake.Kind.NOT_JSON, new TextPlace(text, end) + ": found more after the end of the job; a file holds one job");
      }
      return Optional.of(root);
    } catch (Unreadable fault) {
      note(fault.kind, fault.getMessage());
    } catch (StreamConstraintsException fault) {
      note(Mistake.Kind.TOO_LARGE, new TextPlace(text, (int) parser.currentTokenLocation().getCharOffset())
          + ": found a number or a text that is far too long; no value of a job is");
    } catch (JsonProcessingException fault) {
      note(Mistake.Kind.NOT_JSON, new SyntaxFault(text, fault).toString());
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return Optional.empty();
  }

  private void note(Mistake.Kind kind, String line) {
    int colon = line.indexOf(": ");
    mistakes.add(kind.code(), line.substring(0, colon), line.substring(colon + 2));
  }

  private int nextVisible(int from) {
    int at = from;
    while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    return at;
  }

  private JsonNode node(Place place, int depth) throws IOException, Unreadable {
    if (++values > JobLimits.VALUES) {
      throw new Unreadable(Mistake.Kind.TOO_LARGE, new TextPlace(text, (int) parser.currentTokenLocation().getCharOffset())
          + ": found more than " + JobLimits.VALUES + " values; split the job");
    }
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(place, depth);
      case START_ARRAY -> array(place, depth);
      case VALUE_STRING -> NODES.textNode(parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number();
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      default -> NODES.nullNode();
    };
  }

  private JsonNode number() throws IOException, Unreadable {
    try {
      return DecimalNode.valueOf(parser.getDecimalValue());
    } catch (NumberFormatException beyond) {
      throw new Unreadable(Mistake.Kind.TOO_LARGE, new TextPlace(text, (int) parser.currentTokenLocation().getCharOffset())
          + ": found a number whose exponent is beyond all bounds; no value of a job is that large or small");
    }
  }

  private JsonNode object(Place place, int depth) throws IOException, Unreadable {
    checkDepth(depth);
    ObjectNode object = NODES.objectNode();
    Map<String, Integer> lines = new HashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      int line = parser.currentTokenLocation().getLineNr();
      parser.nextToken();
      JsonNode value = node(place.field(name), depth + 1);
      Integer first = lines.putIfAbsent(name, line);
      if (first == null) {
        object.set(name, value);
      } else {
        mistakes.add(Mistake.Kind.GIVEN_TWICE, place.field(name), "stands twice, in lines " + first + " and " + line
            + "; each name may stand once in its object");
      }
    }
    return object;
  }

  private JsonNode array(Place place, int depth) throws IOException, Unreadable {
    checkDepth(depth);
    ArrayNode array = NODES.arrayNode();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      array.add(node(place.item(array.size()), depth + 1));
    }
    return array;
  }

  private void checkDepth(int depth) throws Unreadable {
    if (depth > JobLimits.DEPTH) {
      int at = (int) parser.currentTokenLocation().getCharOffset();
      throw new Unreadable(Mistake.Kind.TOO_LARGE, new TextPlace(text, at) + ": found objects and arrays nested more than " + JobLimits.DEPTH
          + " deep; a job needs at most 8");
    }
  }
}
