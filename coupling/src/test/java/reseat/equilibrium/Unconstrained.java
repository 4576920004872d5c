package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.seat.SeatFrame;

/** Three-vee couplings whose grooves run the wrong way. */
final class Unconstrained {

  private Unconstrained() {}

  /** All grooves along y. */
  static CouplingDesign parallelVees() {
    return turned(90, 90, 90);
  }

  /** All grooves along the ball circle. */
  static CouplingDesign tangentialVees() {
    return turned(90, 210, 330);
  }

  /** Balls at azimuths 0, 120, 240 degrees, grooves along the azimuths given. */
  static CouplingDesign turned(double... grooveAzimuthsDeg) {
    CouplingDesign good =
        TestCouplings.threeVees(0.05, 0.00635, Math.toRadians(45), 0, 120, 240).build();
    List<Support> supports = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      Support s = good.supports().get(i);
      SeatFrame frame =
          SeatFrame.level(s.seat().frame().origin(), Math.toRadians(grooveAzimuthsDeg[i]));
      supports.add(s.withSeat(s.seat().withFrame(frame)));
    }
    return good.toBuilder().supports(supports).build();
  }
}
