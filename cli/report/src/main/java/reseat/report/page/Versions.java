package reseat.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import reseat.material.MaterialCatalog;
import reseat.verification.PhysicsVersion;

/** The versions on which a result rests: of the program, of the materials table, of the physics. */
public final class Versions {

  private Versions() {}

  /**
   * Returns the version of the program, as the build wrote it.
   *
   * @return three numbers with points between them
   */
  public static String program() {
    Properties build = new Properties();
    try (InputStream stored = Versions.class.getResourceAsStream("build.properties")) {
      build.load(stored);
    } catch (IOException e) {
      throw new UncheckedIOException("the program was packed without its version", e);
    }
    return build.getProperty("version");
  }

  /**
   * Returns the version of the materials table.
   *
   * @return a whole number; a higher one where a value, a name or a source changed
   */
  public static int catalog() {
    return MaterialCatalog.VERSION;
  }

  /**
   * Returns the version of the physics.
   *
   * @return a whole number; a higher one where a law changed
   */
  public static int physics() {
    return PhysicsVersion.NUMBER;
  }
}
