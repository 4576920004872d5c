package reseat.remount;

import java.util.Arrays;
import reseat.design.CouplingDesign;
import reseat.equilibrium.CouplingModel;

/** Mechanics made ready for a design, for tests that drive it step by step. */
final class Mounted {

  private Mounted() {}

  static FrictionEquilibrium prepared(CouplingDesign design) {
    FrictionEquilibrium m = new FrictionEquilibrium(CouplingModel.of(design));
    Arrays.fill(m.state.friction.mu, design.friction().nominal());
    return m;
  }
}
