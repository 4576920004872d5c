package reseat.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the program. */
final class BuildVersion implements IVersionProvider {

  @Override
  public String[] getVersion() throws IOException {
    Properties build = new Properties();
    try (InputStream stored = BuildVersion.class.getResourceAsStream("build.properties")) {
      build.load(stored);
    }
    return new String[] {"reseat " + build.getProperty("version")};
  }
}
