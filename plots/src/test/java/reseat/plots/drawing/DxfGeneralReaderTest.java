package reseat.plots.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.making.MadeFeature;
import reseat.making.MadeHalf;

/**
 * Opens the DXF files with an open general-purpose reader, ezdxf, and its audit; skipped where
 * there is none (.ci/run installs it).
 */
class DxfGeneralReaderTest {

  private static final List<String> PYTHONS = List.of("/usr/bin/python3", "python3");

  private static final String SCRIPT =
      """
      import sys, ezdxf
      for name in sys.argv[1:]:
          doc = ezdxf.readfile(name)
          audit = doc.audit()
          print('file', doc.dxfversion, len(audit.errors), len(audit.fixes))
          for e in doc.modelspace():
              if e.dxftype() == 'CIRCLE':
                  c = e.dxf.center
                  print('circle', e.dxf.layer, c.x, c.y, e.dxf.radius)
              elif e.dxftype() == 'TEXT':
                  print('text', e.plain_text())
      """;

  @TempDir static Path folder;
  private static String python;

  @BeforeAll
  static void findReader() throws Exception {
    for (String p : PYTHONS) {
      if (python == null && run(p, List.of("-c", "import ezdxf; print('here')")).equals("here\n")) {
        python = p;
      }
    }
    assumeTrue(python != null, "no ezdxf on this machine");
  }

  private static String run(String python, List<String> args) throws Exception {
    List<String> command = new ArrayList<>(List.of(python));
    command.addAll(args);
    Path out = Files.createTempFile(folder, "out", ".txt");
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectOutput(out.toFile())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      assertThat(process.waitFor(120, TimeUnit.SECONDS)).as("the reader ended").isTrue();
    } catch (java.io.IOException notThere) {
      return "";
    }
    return Files.readString(out, StandardCharsets.UTF_8);
  }

  @Test
  void aGeneralReaderFindsTheDesignAndNoFault() throws Exception {
    for (Map.Entry<String, CouplingDesign> e : ShopSheets.designs().entrySet()) {
      for (Half half : Half.values()) {
        Path file = folder.resolve(e.getKey() + half + ".dxf");
        Files.write(file, ShopSheets.sheet(e.getValue(), half, false).dxf());
        List<String> told = run(python, List.of("-c", SCRIPT, file.toString())).lines().toList();
        assertThat(told.get(0)).isEqualTo("file AC1009 0 0");
        assertThat(told).anyMatch(w -> w.startsWith("text ") && w.contains("\u00b1"));
        MadeHalf made = MadeHalf.of(e.getValue(), half);
        boolean balls = made.carriesBalls();
        String wanted = "circle " + (balls ? "BALLS" : "REFERENCE") + " ";
        List<String> circles = told.stream().filter(t -> t.startsWith(wanted)).toList();
        List<MadeFeature> features =
            made.ofKind(balls ? MadeFeature.Kind.BALL : MadeFeature.Kind.BALL_REST);
        for (int i = 0; i < features.size(); i++) {
          String[] numbers = circles.get(i).split(" ", -1);
          MadeFeature f = features.get(i);
          assertThat(Double.parseDouble(numbers[2])).isCloseTo(1e3 * f.at().x(), within(1e-6));
          assertThat(Double.parseDouble(numbers[3])).isCloseTo(1e3 * f.at().y(), within(1e-6));
          assertThat(2 * Double.parseDouble(numbers[4]))
              .isCloseTo(1e3 * f.sizes().get(0).value(), within(2e-6));
        }
      }
    }
  }
}
