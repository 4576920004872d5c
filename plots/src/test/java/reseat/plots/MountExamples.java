package reseat.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.ballmount.ConePivot;
import reseat.ballmount.FlatPivot;
import reseat.ballmount.PivotSeat;
import reseat.ballmount.ScrewThread;
import reseat.ballmount.SocketPivot;
import reseat.ballmount.TrihedralPivot;
import reseat.design.CouplingDesign;
import reseat.design.PivotDuty;
import reseat.design.Support;
import reseat.equilibrium.Equilibrium;
import reseat.material.ElasticConstants;
import reseat.material.ElasticPair;
import reseat.material.Material;
import reseat.plots.chart.DeviceBand;
import reseat.plots.drawing.DrawingUnits;
import reseat.plots.drawing.PivotSection;
import reseat.plots.drawing.PlanView;
import reseat.plots.drawing.SeatSection;
import reseat.preload.AirCylinder;
import reseat.preload.DiscSpring;
import reseat.preload.DiscSpringStack;
import reseat.preload.ForceScatter;
import reseat.preload.MagnetPair;
import reseat.preload.PreloadDevice;
import reseat.preload.TightenedScrew;
import reseat.seat.ConeSeat;
import reseat.seat.SeatFrame;
import reseat.space.Vec3;

/** Pictures of seats that a ball turns in, of a cone among three seats and of preload devices. */
final class MountExamples {

  private static final Material STEEL =
      new Material("hard steel", new ElasticConstants(208e9, 0.3));
  private static final double R = 0.005;

  private MountExamples() {}

  static List<Picture> all() {
    List<Picture> all = new ArrayList<>();
    ElasticPair pair = ElasticPair.ofEqual(STEEL.elastic());
    all.add(pivot("pivot-trihedral", new TrihedralPivot(R, Math.atan(Math.sqrt(2)), pair)));
    all.add(pivot("pivot-cone", new ConePivot(R, Math.toRadians(45), pair)));
    all.add(pivot("pivot-flat", new FlatPivot(R, pair)));
    all.add(
        pivot("pivot-socket", new SocketPivot(R, Math.toRadians(15), Math.toRadians(55), pair)));
    all.add(pivot("pivot-whole-socket", new SocketPivot(R, 0, Math.toRadians(70), pair)));
    CouplingDesign stand = coneVeeFlat();
    all.add(SeatSection.draw("seat-ring", stand.supports().get(0), contacts(stand), DrawingUnits.BOTH));
    all.add(PlanView.draw(stand, ExampleDesigns.zones(stand), List.of(), DrawingUnits.BOTH));
    for (PreloadDevice device : devices()) {
      DeviceBand.draw("device", "the device", device, Optional.of(device.band(60, 260)))
          .ifPresent(all::add);
    }
    return all;
  }

  private static List<Equilibrium.Contact> contacts(CouplingDesign stand) {
    return ExampleDesigns.contacts(stand, 0);
  }

  private static Picture pivot(String name, PivotSeat seat) {
    return PivotSection.draw(
        name,
        new PivotDuty(seat, STEEL, 0.12, "invented", Optional.empty(), Optional.empty()),
        STEEL,
        250,
        DrawingUnits.BOTH);
  }

  /** The sensor mount with a cone in place of its trihedral seat, level on a table. */
  static CouplingDesign coneVeeFlat() {
    CouplingDesign mount = ExampleDesigns.sensorMount();
    List<Support> supports = new ArrayList<>(mount.supports());
    supports.set(
        0,
        supports
            .get(0)
            .withSeat(
                ConeSeat.forBall(
                    SeatFrame.level(Vec3.ZERO, 1), 0.003, Math.toRadians(45), 0.0056, 0.0012)));
    return mount.toBuilder().supports(supports).gravity(Vec3.Z.negated()).build();
  }

  static List<PreloadDevice> devices() {
    ScrewThread m6 = ScrewThread.parse("M6");
    return List.of(
        DiscSpringStack.of(DiscSpring.ofSteel(25e-3, 12.2e-3, 0.9e-3, 1.6e-3), 1, 6, 0.5e-3, 5e-5),
        new MagnetPair(
            MagnetPair.Counterpart.EQUAL_MAGNET, 10e-3, 10e-3, 1.2, 1e-3, 1e-4, 0.05, -1e-3),
        new TightenedScrew(
            m6,
            TightenedScrew.byNutFactor(m6, 0.2),
            0.18,
            20e-3,
            206e9,
            0,
            ForceScatter.uniform(0.23, "invented")),
        new AirCylinder(20e-3, 8e-3, 0.5e6, 0.05, 0.04, 10e-3));
  }
}
