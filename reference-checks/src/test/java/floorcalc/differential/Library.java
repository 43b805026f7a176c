package floorcalc.differential;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The other side of a comparison. */
public enum Library {
  /** Plane geometry in floating point. */
  JTS("JTS", "org.locationtech.jts", "jts-core"),
  /** Plane geometry by binary space partitioning. */
  COMMONS_GEOMETRY("Apache Commons Geometry", "org.apache.commons", "commons-geometry-euclidean"),
  /** Plane geometry on a grid of its own. */
  ESRI_GEOMETRY("Esri Geometry API", "com.esri.geometry", "esri-geometry-api"),
  /** Linear algebra and integer programs. */
  OJALGO("ojAlgo", "org.ojalgo", "ojalgo"),
  /** Statistics, root finding, least squares. */
  HIPPARCHUS("Hipparchus", "org.hipparchus", "hipparchus-core"),
  /** Units of measurement, JSR 385. */
  INDRIYA("Indriya", "tech.units", "indriya"),
  /** No library: every way tried, in whole numbers and fractions, slow and plain. */
  ALL_WAYS("every way tried, in fractions", "", "");

  private final String title;
  private final String group;
  private final String artifact;

  Library(String title, String group, String artifact) {
    this.title = title;
    this.group = group;
    this.artifact = artifact;
  }

  /** {@return the name} */
  public String title() {
    return title;
  }

  /** {@return the version that runs, by the jar's own word; empty where there is no library} */
  public String version() {
    if (artifact.isEmpty()) {
      return "";
    }
    String path = "/META-INF/maven/" + group + "/" + artifact + "/pom.properties";
    try (InputStream in = Library.class.getResourceAsStream(path)) {
      Properties properties = new Properties();
      properties.load(in);
      return properties.getProperty("version");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** {@return name and version} */
  @Override
  public String toString() {
    return (title + " " + version()).strip();
  }
}
