package floorcalc.examples.explain;

import floorcalc.transitions.Layer;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a layer of a floor: {@code name: thickness}. */
final class LayerTyped implements ITypeConverter<Layer> {
  @Override
  public Layer convert(String text) {
    int colon = text.indexOf(':');
    if (colon < 1) {
      throw new TypeConversionException("found [" + text + "]; write a name, a colon and the thickness, such as \"underlay: 2\"");
    }
    try {
      return new Layer(text.substring(0, colon).strip(), Typed.length(text.substring(colon + 1).strip()));
    } catch (IllegalArgumentException fault) {
      throw new TypeConversionException(fault.getMessage());
    }
  }

}
