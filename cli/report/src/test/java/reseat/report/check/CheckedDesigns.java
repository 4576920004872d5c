package reseat.report.check;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.designfile.DesignFile;
import reseat.space.Vec3;
import reseat.study.CheckResult;
import reseat.study.CheckStudy;

/** Results that the tests of the renderers share: one of each kind. */
final class CheckedDesigns {

  private CheckedDesigns() {}

  static String resource(String name) {
    try (InputStream in = CheckedDesigns.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static CouplingDesign design() {
    return DesignFile.read(resource("edge-forward-post.toml")).design().orElseThrow();
  }

  static CheckResult failing() {
    return CheckStudy.run(design());
  }

  static CheckResult unseated() {
    return CheckStudy.run(design().toBuilder().preloads(List.of()).gravity(Vec3.Z).build());
  }

  static CheckResult unconstrained() {
    List<Support> parallel = new ArrayList<>();
    for (Support s : design().supports()) {
      parallel.add(s.withGrooveAlong(Vec3.Y));
    }
    return CheckStudy.run(design().toBuilder().supports(parallel).build());
  }

  static List<CheckResult> all() {
    return List.of(failing(), unseated(), unconstrained());
  }
}
