package reseat.repeatability;

import java.util.ArrayList;
import java.util.List;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Holder;
import reseat.design.MachineAxes;
import reseat.design.MachineAxis;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.seat.Ball;
import reseat.seat.SeatFrame;
import reseat.space.Pose;
import reseat.space.Vec3;

/** A design turned with its machine about the coupling's origin, or with its halves exchanged. */
final class TurnedDesign {

  private TurnedDesign() {}

  static CouplingDesign of(CouplingDesign d, Vec3 rotation) {
    Pose turn = Pose.of(rotation, Vec3.ZERO);
    List<Support> supports = new ArrayList<>();
    for (Support s : d.supports()) {
      SeatFrame f = s.seat().frame();
      SeatFrame frame =
          new SeatFrame(turn.apply(f.origin()), turn.rotate(f.axis()), turn.rotate(f.up()));
      BallMounting m = s.mounting();
      supports.add(
          s.withBall(new Ball(turn.apply(s.ball().centre()), s.ball().radius()))
              .withSeat(s.seat().withFrame(frame))
              .withMounting(
                  new BallMounting(
                      turn.rotate(m.axis()), m.compliance(), m.stud(), m.description())));
    }
    List<Preload> preloads = new ArrayList<>();
    for (Preload p : d.preloads()) {
      preloads.add(
          new Preload(
              p.name(),
              p.force(),
              turn.rotate(p.direction()),
              turn.apply(p.at()),
              p.forceSpread(),
              p.lineSpread(),
              p.tiltSpread(),
              p.device()));
    }
    Holder h = d.holder();
    MachineAxes axes = d.axes();
    return d.toBuilder()
        .supports(supports)
        .preloads(preloads)
        .holder(new Holder(h.mass(), turn.apply(h.centreOfMass()), h.gyration()))
        .gravity(turn.rotate(d.gravity()))
        .toolPoint(turn.apply(d.toolPoint()))
        .axes(
            new MachineAxes(
                turned(axes.first(), turn),
                turned(axes.second(), turn),
                turned(axes.third(), turn)))
        .cases(List.of())
        .build();
  }

  /** The same coupling with the balls on the base, standing up, and the seats over them. */
  static CouplingDesign ballsOnBase(CouplingDesign d) {
    List<Support> supports = new ArrayList<>();
    for (Support s : d.supports()) {
      SeatFrame f = s.seat().frame();
      Vec3 over = s.ball().centre().times(2).minus(f.origin());
      BallMounting m = s.mounting();
      supports.add(
          s.withSeat(s.seat().withFrame(new SeatFrame(over, f.axis(), f.up().negated())))
              .withMounting(
                  new BallMounting(m.axis().negated(), m.compliance(), m.stud(), m.description())));
    }
    return d.toBuilder().ballsOn(Half.BASE).supports(supports).build();
  }

  private static MachineAxis turned(MachineAxis axis, Pose turn) {
    return new MachineAxis(axis.name(), turn.rotate(axis.direction()));
  }
}
