package reseat.docs;

import java.io.PrintStream;
import java.util.Locale;
import reseat.design.ClassicLayout;
import reseat.design.CouplingDesign;
import reseat.design.Holder;
import reseat.design.Preload;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.CouplingStiffness.Bound;
import reseat.equilibrium.Equilibrium;
import reseat.material.Material;
import reseat.material.MaterialCatalog;
import reseat.space.Vec3;

/** The example of the page about the library. */
final class LibraryExample {

  private LibraryExample() {}

  static void print(PrintStream out) {
    Material steel = MaterialCatalog.standard().find("52100").orElseThrow();
    Vec3 tool = new Vec3(0.047, 0, 0.015);
    CouplingDesign design =
        CouplingDesign.builder()
            .supports(ClassicLayout.onCircle(0.070, 0.0127, steel).threeVees())
            .preload(Preload.down("bolt", 600, 0.05, Vec3.ZERO))
            .holder(Holder.of(1.4, new Vec3(0.02, 0, 0.02)))
            .toolPoint(tool)
            .build();

    Equilibrium standing = CouplingModel.of(design).standing();
    for (Equilibrium.Contact c : standing.contacts()) {
      out.printf(Locale.ROOT, "%s %s %.0f N%n", c.line().support(), c.line().flank(), c.force());
    }
    CouplingStiffness stiffness = CouplingStiffness.of(standing, Bound.FRICTIONLESS);
    out.printf(
        Locale.ROOT, "stiffness along z %.1f N/um%n", stiffness.stiffnessAlong(tool, Vec3.Z) / 1e6);
  }
}
