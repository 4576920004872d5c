package reseat.cli.command;

import java.io.PrintWriter;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.NoEquilibriumException;

/** Looks whether a coupling stands under preload and weight, and says why if it does not. */
final class StandingDesign {

  private StandingDesign() {}

  /**
   * Finds the state of rest.
   *
   * @param design the coupling
   * @param prefix what messages begin with, such as {@code reseat remount: post.toml: }
   * @param err gets one line if there is none
   * @return the state with all contacts pressed; empty if there is none
   */
  static Optional<Equilibrium> of(CouplingDesign design, String prefix, PrintWriter err) {
    try {
      Equilibrium standing = CouplingModel.of(design).standing();
      for (Equilibrium.Contact c : standing.contacts()) {
        if (c.opens()) {
          err.println(
              prefix
                  + "preload and weight do not seat the holder: "
                  + c.line().name()
                  + " is not pressed at rest; 'reseat check' says what to change");
          return Optional.empty();
        }
      }
      return Optional.of(standing);
    } catch (NoEquilibriumException e) {
      err.println(prefix + e.getMessage());
      return Optional.empty();
    }
  }
}
