package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.measure.TapeNotationException;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.outline.Outline;
import floorcalc.outline.OutlineCheck;
import floorcalc.outline.OutlineFault;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.outline.Wkt;
import floorcalc.rows.FloorPart;
import floorcalc.rows.RowWay;
import floorcalc.rows.WallFace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** What is typed for an option: lengths, lists of lengths, outlines. A plain number is millimetres. */
final class Typed {
  private Typed() {
  }

  static Length length(String text) {
    try {
      return text.matches("-?[0-9]+(\\.[0-9]+)?") ? Length.ofMillimetres(text) : Length.parse(text);
    } catch (TapeNotationException | ArithmeticException fault) {
      throw new TypeConversionException(fault.getMessage());
    }
  }

  /** Reads a length. */
  static final class OfLength implements ITypeConverter<Length> {
    @Override
    public Length convert(String text) {
      return length(text);
    }
  }

  /** Reads a temperature with its unit. */
  static final class OfTemperature implements ITypeConverter<Temperature> {
    @Override
    public Temperature convert(String text) {
      try {
        return Temperature.parse(text);
      } catch (IllegalArgumentException fault) {
        throw new TypeConversionException(fault.getMessage());
      }
    }
  }

  /** Reads a number of per cent, with or without the sign. */
  static final class OfPercent implements ITypeConverter<Percent> {
    @Override
    public Percent convert(String text) {
      try {
        return Percent.of(text.strip().replaceFirst(" ?%$", ""));
      } catch (IllegalArgumentException fault) {
        throw new TypeConversionException(fault.getMessage());
      }
    }
  }

  /** Reads lengths with commas between them; nothing at all is a row without joints. */
  static final class OfLengths implements ITypeConverter<Lengths> {
    @Override
    public Lengths convert(String text) {
      return new Lengths(text.isBlank() ? List.of()
          : Arrays.stream(text.split(",", -1)).map(part -> length(part.strip())).toList());
    }
  }

  /** Several lengths in one option. */
  record Lengths(List<Length> list) {
  }

  /** Reads {@code 1290}, {@code 3 x 1290} or {@code 3 x 1290, name}: a number of equal lengths, and what stands behind it. */
  static final class OfLot implements ITypeConverter<Lot> {
    private static final Pattern LOT = Pattern.compile("(?:([0-9]{1,9})\\s*x\\s*)?([^,]+)(?:,(.*))?");

    @Override
    public Lot convert(String text) {
      Matcher lot = LOT.matcher(text.strip());
      if (!lot.matches()) {
        throw new TypeConversionException("found [" + text + "]; write a length, 3 x LENGTH, or 3 x LENGTH, NAME");
      }
      return new Lot(Optional.ofNullable(lot.group(1)).map(Integer::valueOf), length(lot.group(2).strip()),
          lot.group(3) == null ? "" : lot.group(3).strip());
    }
  }

  /** A number of equal lengths, and what was typed behind a comma. */
  record Lot(Optional<Integer> number, Length length, String more) {
  }

  /** Reads an outline as well-known text or as corners {@code x,y x,y x,y}. */
  static final class OfOutline implements ITypeConverter<Outline> {
    @Override
    public Outline convert(String text) {
      Outline outline;
      try {
        outline = text.strip().toUpperCase(Locale.ROOT).startsWith("POLYGON") ? Wkt.parse(text) : Outline.of(ring(text));
      } catch (IllegalArgumentException fault) {
        throw new TypeConversionException(fault.getMessage());
      }
      List<OutlineFault> faults = OutlineCheck.faultsOf(outline);
      if (!faults.isEmpty()) {
        throw new TypeConversionException(
            faults.stream().map(OutlineFault::message).collect(Collectors.joining("; also: ")));
      }
      return outline;
    }
  }

  /** The two sides of a doorway. */
  record Jambs(Point from, Point to) {
  }

  /** Reads the two sides of a doorway, {@code x,y x,y}. */
  static final class OfJambs implements ITypeConverter<Jambs> {
    @Override
    public Jambs convert(String text) {
      List<Length[]> ends = pairs(text, "side of a doorway");
      if (ends.size() != 2) {
        throw new TypeConversionException("found [" + text + "] with " + ends.size() + " places; a doorway has two sides, \"x,y x,y\"");
      }
      return new Jambs(Point.of(ends.get(0)[0], ends.get(0)[1]), Point.of(ends.get(1)[0], ends.get(1)[1]));
    }
  }

  private static Ring ring(String text) {
    return Ring.of(pairs(text, "corner").stream().map(pair -> Point.of(pair[0], pair[1])).toList());
  }

  /** Reads {@code a,b a,b ...}. */
  private static List<Length[]> pairs(String text, String what) {
    List<Length[]> pairs = new ArrayList<>();
    for (String pair : text.strip().split("\\s+")) {
      String[] parts = pair.split(",", -1);
      if (parts.length != 2) {
        throw new TypeConversionException("found [" + pair + "] as a " + what + "; write each as two lengths with a comma and no"
            + " blank between them, such as 0,0 4210,0 4195,3620 0,3605");
      }
      pairs.add(new Length[] {length(parts[0]), length(parts[1])});
    }
    return pairs;
  }

  /** Reads the face of a wall: {@code place,distance place,distance ...}. */
  static final class OfWall implements ITypeConverter<WallFace> {
    @Override
    public WallFace convert(String text) {
      try {
        return WallFace.of(pairs(text, "distance of the wall").stream().map(pair -> new WallFace.Offset(pair[0], pair[1])).toList());
      } catch (IllegalArgumentException fault) {
        throw new TypeConversionException(fault.getMessage());
      }
    }
  }

  /** Reads one point. */
  static final class OfPoint implements ITypeConverter<Point> {
    @Override
    public Point convert(String text) {
      List<Length[]> pairs = pairs(text, "point");
      if (pairs.size() != 1) {
        throw new TypeConversionException("found [" + text + "]; write one point as x,y");
      }
      return Point.of(pairs.get(0)[0], pairs.get(0)[1]);
    }
  }

  /** Reads two points. */
  static final class OfTwoPoints implements ITypeConverter<TwoPoints> {
    @Override
    public TwoPoints convert(String text) {
      List<Length[]> pairs = pairs(text, "point");
      if (pairs.size() != 2) {
        throw new TypeConversionException("found [" + text + "]; write two points as x,y x,y");
      }
      return new TwoPoints(Point.of(pairs.get(0)[0], pairs.get(0)[1]), Point.of(pairs.get(1)[0], pairs.get(1)[1]));
    }
  }

  /** Two points of a line or a wall. */
  record TwoPoints(Point from, Point to) {
  }

  /** Reads a part of a floor: {@code name: outline}. */
  static final class OfPart implements ITypeConverter<FloorPart> {
    @Override
    public FloorPart convert(String text) {
      int colon = text.indexOf(':');
      if (colon < 1) {
        throw new TypeConversionException("found [" + text + "]; write a name, a colon and the outline, such as"
            + " \"hall: 0,0 4000,0 4000,3000 0,3000\"");
      }
      return new FloorPart(text.substring(0, colon).strip(), new OfOutline().convert(text.substring(colon + 1)));
    }
  }

  /** Reads a way to choose the first row. */
  static final class OfWay implements ITypeConverter<RowWay> {
    @Override
    public RowWay convert(String text) {
      return Arrays.stream(RowWay.values()).filter(way -> name(way).equals(text)).findFirst()
          .orElseThrow(() -> new TypeConversionException("found [" + text + "]; must be one of "
              + Arrays.stream(RowWay.values()).map(OfWay::name).collect(Collectors.joining(", "))));
    }

    private static String name(RowWay way) {
      return way.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
