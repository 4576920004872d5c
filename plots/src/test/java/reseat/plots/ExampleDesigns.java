package reseat.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.ballmount.Adhesive;
import reseat.ballmount.BallStud;
import reseat.ballmount.BondJoint;
import reseat.ballmount.LockNut;
import reseat.ballmount.RootFixing;
import reseat.ballmount.ScrewThread;
import reseat.ballmount.ThreadFit;
import reseat.ballmount.ThreadTolerance;
import reseat.ballmount.ThreadTorque;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Holder;
import reseat.design.LoadCase;
import reseat.design.MachineAxes;
import reseat.design.MachineAxis;
import reseat.design.Preload;
import reseat.design.StudMount;
import reseat.design.StudThread;
import reseat.design.Support;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.PreloadZone;
import reseat.material.ElasticConstants;
import reseat.material.Material;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.seat.Ball;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** Three invented couplings of different kind and size, for looking at pictures. */
public final class ExampleDesigns {

  /** Typical values for hard bearing steel. */
  private static final Material STEEL =
      new Material("hard steel", new ElasticConstants(208e9, 0.3));

  private ExampleDesigns() {}

  /** A quick-change tool post: three equal radial vee grooves on a 2.75 inch circle. */
  public static CouplingDesign toolPost() {
    return toolPost(0);
  }

  /** The same with the triangle turned, degrees. */
  public static CouplingDesign toolPost(double turnDeg) {
    double r = 0.00635;
    List<Support> supports = new ArrayList<>();
    String[] names = {"front", "rear left", "rear right"};
    for (int i = 0; i < 3; i++) {
      double azimuth = Math.toRadians(turnDeg + 120 * i);
      Vec3 c = Vec3.atAzimuth(azimuth).times(0.034925);
      Seat seat =
          VeeGroove.forBall(
              SeatFrame.level(c, azimuth),
              r,
              Math.toRadians(45),
              new GrooveExtent(0.01049, 0.01905, 0.0015, 0.001));
      supports.add(support(names[i], c, r, seat));
    }
    Vec3 tip = new Vec3(0.047, 0, 0.0152);
    return CouplingDesign.builder()
        .title("quick-change post of a small facing lathe")
        .supports(supports)
        .preloads(List.of(preload("drawbolt", 600, Vec3.Z.negated(), 0, 0, 0.02, 0.0003)))
        .holder(new Holder(1.43, new Vec3(0.010, 0, 0.020), new Vec3(0.03, 0.03, 0.035)))
        .cases(
            List.of(
                force("finish", -6, -4, -12, tip),
                force("rough", -30, -25, -70, tip),
                force("crash", 0, 0, -400, tip),
                force("diamond", -0.3, -0.1, -0.4, tip)))
        .toolPoint(tip)
        .axes(axes("X", Vec3.X, "Z", Vec3.Y, "height", Vec3.Z))
        .build();
  }

  /** The tool post with round-bottomed grooves that fit closer. */
  public static CouplingDesign gothicPost() {
    CouplingDesign post = toolPost();
    List<Support> supports = new ArrayList<>();
    for (Support s : post.supports()) {
      Vec3 c = s.ball().centre();
      supports.add(
          s.withSeat(
              GothicGroove.forBall(
                  SeatFrame.level(c, Math.atan2(c.y(), c.x())),
                  0.00635,
                  0.0070,
                  Math.toRadians(45),
                  new GrooveExtent(0.0112, 0.01905, 0.0015, 0.0008))));
    }
    return post.toBuilder().supports(supports).build();
  }

  /** A grinding pallet on pairs of pins, one preload through each ball. */
  public static CouplingDesign pallet() {
    double[][] at = {{-80, -60, 30.96}, {80, -60, 149.04}, {0, 90, -90}};
    String[] names = {"south-west", "south-east", "north"};
    List<Support> supports = new ArrayList<>();
    List<Preload> preloads = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      Vec3 c = new Vec3(1e-3 * at[i][0], 1e-3 * at[i][1], 0);
      Seat seat =
          CylinderPair.forBall(
              SeatFrame.level(c, Math.toRadians(at[i][2])), 0.010, 0.005, 0.021213, 0.032, 0.006);
      supports.add(support(names[i], c, 0.010, seat));
      preloads.add(
          preload("springs " + names[i], 400, Vec3.Z.negated(), c.x(), c.y(), 0.05, 0.001));
    }
    return CouplingDesign.builder()
        .title("pallet of a grinding fixture")
        .supports(supports)
        .preloads(preloads)
        .holder(new Holder(12, new Vec3(0.005, 0.008, 0.045), Vec3.ZERO))
        .cases(
            List.of(
                force("grind", 0, -30, -60, new Vec3(0.070, 0.050, 0.060)),
                force("corner strike", 0, -150, -900, new Vec3(0.095, 0.095, 0.060))))
        .toolPoint(new Vec3(0.070, 0.050, 0.060))
        .axes(axes("X", Vec3.X, "Y", Vec3.Y, "Z", Vec3.Z))
        .build();
  }

  /** A sensor mount on a wall: trihedral seat, vee and flat, magnets, gravity along the wall. */
  public static CouplingDesign sensorMount() {
    double r = 0.003;
    Vec3 vee = new Vec3(0.060, 0, 0);
    Vec3 flat = new Vec3(0.025, 0.045, 0);
    double a = Math.toRadians(45);
    List<Support> supports =
        List.of(
            support(
                "corner",
                Vec3.ZERO,
                r,
                TrihedralSeat.forBall(
                    SeatFrame.level(Vec3.ZERO, Math.toRadians(90)), r, a, 0.0056, 0.001)),
            support(
                "slot",
                vee,
                r,
                VeeGroove.forBall(
                    SeatFrame.level(vee, 0), r, a, new GrooveExtent(0.0056, 0.009, 0, 0))),
            support("pad", flat, r, FlatSeat.forBall(SeatFrame.level(flat, 0), r, 0.008)));
    Vec3 point = new Vec3(0.028, 0.016, 0.030);
    Vec3 mass = new Vec3(0.028, 0.016, 0.018);
    return CouplingDesign.builder()
        .title("sensor mount on a wall")
        .ballsOn(Half.HOLDER)
        .supports(supports)
        .preloads(
            List.of(
                preload("magnet 1", 28, Vec3.Z.negated(), 0.012, 0.008, 0.03, 0),
                preload("magnet 2", 28, Vec3.Z.negated(), 0.048, 0.008, 0.03, 0),
                preload("magnet 3", 28, Vec3.Z.negated(), 0.027, 0.034, 0.03, 0)))
        .holder(new Holder(0.42, mass, Vec3.ZERO))
        .gravity(Vec3.Y.negated())
        .cases(
            List.of(
                force("probe push", 0, 0, 0.5, point),
                force("handling", 0, 0, 12.4, mass),
                force("cable", 3, 0, 0, new Vec3(0.028, 0.016, 0.025))))
        .toolPoint(point)
        .axes(axes("across", Vec3.X, "up", Vec3.Y, "out", Vec3.Z))
        .build();
  }

  /** The tool post's front ball, bonded on a turned set screw with a conical bottom. */
  public static Support bondedStud() {
    BallStud stud = BallStud.plain(0.0079248, 0.01143, STEEL.elastic(), RootFixing.RIGID);
    BondJoint bond =
        BondJoint.ring(40e-6, Math.toRadians(50), 0.0079248, 0.08e-3, true, Adhesive.EPOXY, 313.15);
    ThreadTolerance limits = ThreadTolerance.of(ScrewThread.parse("3/8-40"), ThreadFit.MEDIUM);
    LockNut nut =
        new LockNut(
            limits, new ThreadTorque(limits.thread(), 0.15, 0.15, 0.012), 1500, 200, 0.003, 206e9);
    StudThread thread = new StudThread(limits, 0.0095, STEEL, STEEL, 0.15, Optional.of(nut));
    return withStud(new StudMount(stud, STEEL, Optional.of(bond), Optional.of(thread)));
  }

  /** The same ball drilled and glued on a boss, the stud of one piece with the plate. */
  public static Support sleevedStud() {
    BallStud stud =
        new BallStud(0.006, 0.012, 0.004, 0.010, 0.003, STEEL.elastic(), RootFixing.RIGID);
    BondJoint bond = BondJoint.sleeve(0.004, 0.006, 0.05e-3, false, Adhesive.ANAEROBIC, 313.15);
    return withStud(new StudMount(stud, STEEL, Optional.of(bond), Optional.empty()));
  }

  private static Support withStud(StudMount mount) {
    return toolPost().supports().get(0).withMounting(BallMounting.on(Vec3.Z.negated(), mount));
  }

  /** All three. */
  public static List<CouplingDesign> all() {
    return List.of(toolPost(), pallet(), sensorMount());
  }

  /** Where the resultant of the preloads may stand; all pull along one direction. */
  public static List<PreloadZone> zones(CouplingDesign design) {
    double sum = 0;
    Vec3 through = Vec3.ZERO;
    for (Preload p : design.preloads()) {
      sum += p.force();
      through = through.plus(p.at().times(p.force()));
    }
    Vec3 pull = design.preloads().get(0).direction().times(sum);
    return List.of(
        PreloadZone.of(
            ContactLines.nominal(design),
            design.weight(),
            pull,
            through.times(1 / sum),
            3 * design.couplingRadius(),
            0.1));
  }

  /** The contacts of one support as it stands idle. */
  public static List<Equilibrium.Contact> contacts(CouplingDesign design, int support) {
    return CouplingModel.of(design).standing().contacts().stream()
        .filter(c -> c.line().ballIndex() == support)
        .toList();
  }

  public static Support support(String name, Vec3 centre, double radius, Seat seat) {
    return new Support(
        name,
        new Ball(centre, radius),
        STEEL,
        seat,
        STEEL,
        Double.POSITIVE_INFINITY,
        BallMounting.rigid());
  }

  private static Preload preload(
      String name,
      double force,
      Vec3 direction,
      double x,
      double y,
      double scatter,
      double wander) {
    return new Preload(
        name,
        force,
        direction,
        new Vec3(x, y, 0),
        new Distribution(scatter, DistributionShape.UNIFORM),
        new Distribution(wander, DistributionShape.UNIFORM),
        Distribution.NONE,
        "invented");
  }

  private static LoadCase force(String name, double x, double y, double z, Vec3 at) {
    return new LoadCase(name, Wrench.ofForce(new Vec3(x, y, z), at));
  }

  private static MachineAxes axes(String a, Vec3 da, String b, Vec3 db, String c, Vec3 dc) {
    return new MachineAxes(new MachineAxis(a, da), new MachineAxis(b, db), new MachineAxis(c, dc));
  }
}
