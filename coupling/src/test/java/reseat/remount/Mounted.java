package reseat.remount;

import reseat.design.CouplingDesign;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.CouplingModel;
import reseat.space.Vec3;

/** Mechanics made ready for a design, for tests that drive it step by step. */
final class Mounted {

  private Mounted() {}

  static MountMechanics prepared(CouplingDesign design) {
    CouplingModel model = CouplingModel.of(design);
    MountMechanics m = new MountMechanics(model.geometry());
    System.arraycopy(model.hertzConstants(), 0, m.hertz, 0, 6);
    ContactLines lines = ContactLines.nominal(design);
    for (int i = 0; i < 6; i++) {
      m.friction.mu[i] = design.friction().nominal();
      m.friction.ratioLong[i] = model.tangential().get(i).majorRatio();
      m.friction.ratioShort[i] = model.tangential().get(i).minorRatio();
      Vec3 axis = lines.lines().get(i).longAxis();
      for (int k = 0; k < 3; k++) {
        m.friction.longAxis[3 * i + k] = axis.component(k);
      }
    }
    return m;
  }
}
