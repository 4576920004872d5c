package reseat.interchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.DesignBuilder;
import reseat.design.Half;
import reseat.design.MachineAxes;
import reseat.design.MachineAxis;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.material.ElasticConstants;
import reseat.material.Material;
import reseat.numerics.Distribution;
import reseat.numerics.DistributionShape;
import reseat.seat.Ball;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;

/** Couplings with tolerances that many tests share. */
final class TolerancedCouplings {

  static final double RADIUS = 0.05;
  static final double BALL = 0.00635;
  static final double FORTY_FIVE = Math.toRadians(45);

  private static final Material STEEL =
      new Material("test steel", new ElasticConstants(206e9, 0.3));

  private TolerancedCouplings() {}

  /** Three equal radial vees at 90, 210 and 330 degrees, tool point at the origin, no load. */
  static DesignBuilder threeVees() {
    List<Support> supports = new ArrayList<>();
    for (int azimuth : new int[] {90, 210, 330}) {
      supports.add(vee("ball " + azimuth, Math.toRadians(azimuth)));
    }
    return CouplingDesign.builder().supports(supports);
  }

  private static Support vee(String name, double azimuth) {
    Vec3 c = Vec3.atAzimuth(azimuth).times(RADIUS);
    SeatFrame f = SeatFrame.level(c, azimuth);
    return support(name, c, BALL, VeeGroove.forBall(f, BALL, FORTY_FIVE, GrooveExtent.unlimited()));
  }

  static Support support(String name, Vec3 centre, double radius, Seat seat) {
    return new Support(
        name,
        new Ball(centre, radius),
        STEEL,
        seat,
        STEEL,
        Double.POSITIVE_INFINITY,
        BallMounting.rigid());
  }

  /** A preload of 600 N down the middle. */
  static Preload preload() {
    return new Preload(
        "drawbolt",
        600,
        new Vec3(0, 0, -1),
        Vec3.ZERO,
        Distribution.NONE,
        Distribution.NONE,
        Distribution.NONE,
        "springs");
  }

  /** A tool post: vees, tool point far out, machine axes of its own, every tolerance stated. */
  static CouplingDesign toolPost() {
    return threeVees()
        .preloads(List.of(preload()))
        .toolPoint(new Vec3(0.047, 0.004, 0.0152))
        .axes(
            new MachineAxes(
                new MachineAxis("Z", Vec3.Y),
                new MachineAxis("X", Vec3.X),
                new MachineAxis("height", Vec3.Z)))
        .tolerances(everything())
        .build();
  }

  /** Every kind of dimension that fits every seat, at workshop limits, shapes mixed. */
  static Tolerances everything() {
    return Tolerances.of(
        Tolerance.shared(ToleranceKind.BALL_DIAMETER, 3e-6, DistributionShape.UNIFORM),
        Tolerance.ofEach(ToleranceKind.BALL_DIAMETER, 0.5e-6, DistributionShape.UNIFORM),
        Tolerance.ofEach(ToleranceKind.BALL_FORM, 0.25e-6, DistributionShape.UNIFORM),
        Tolerance.ofEach(ToleranceKind.BALL_ACROSS, 10e-6, DistributionShape.NORMAL),
        Tolerance.ofEach(ToleranceKind.BALL_ALONG, 20e-6, DistributionShape.NORMAL),
        Tolerance.ofEach(ToleranceKind.BALL_HEIGHT, 5e-6, DistributionShape.TRIANGULAR),
        Tolerance.ofEach(ToleranceKind.SEAT_ACROSS, 8e-6, DistributionShape.NORMAL),
        Tolerance.ofEach(ToleranceKind.SEAT_ALONG, 30e-6, DistributionShape.NORMAL),
        Tolerance.ofEach(ToleranceKind.SEAT_DEPTH, 6e-6, DistributionShape.NORMAL),
        Tolerance.ofEach(ToleranceKind.SEAT_DIRECTION, 1e-3, DistributionShape.NORMAL),
        Tolerance.ofEach(ToleranceKind.SEAT_PITCH, 5e-4, DistributionShape.NORMAL),
        Tolerance.ofEach(ToleranceKind.SEAT_ROLL, 5e-4, DistributionShape.NORMAL),
        Tolerance.ofEach(ToleranceKind.TOOL_POINT, 20e-6, DistributionShape.UNIFORM),
        Tolerance.ofEach(ToleranceKind.TEMPERATURE, 1, DistributionShape.ARCSINE));
  }

  /** Couplings of all kinds of seats, balls on either half, rest poses off the drawing. */
  static Map<String, CouplingDesign> zoo() {
    Map<String, CouplingDesign> all = new LinkedHashMap<>();
    all.put("vees", with(threeVees(), plane(), angle()));
    all.put("pins", with(grooves("pins"), pins(), spacing()));
    all.put("gothic", with(grooves("gothic"), radius(), arch()));
    all.put("trihedral, vee and flat", with(trihedralVeeFlat(), plane(), angle()));
    all.put("cone, vee and flat", with(coneVeeFlat(), plane(), angle()));
    CouplingDesign vees = all.get("vees");
    List<Support> off = new ArrayList<>(vees.supports());
    off.set(0, off.get(0).withBall(new Ball(new Vec3(0.0003, 0.0504, 0.0002), 0.0064)));
    all.put("vees off their place", vees.toBuilder().supports(off).build());
    for (String name : List.copyOf(all.keySet())) {
      all.put(name + ", balls on the base", turnedOver(all.get(name)));
    }
    return all;
  }

  private static Tolerance plane() {
    return Tolerance.ofEach(ToleranceKind.FLANK_POSITION, 4e-6, DistributionShape.NORMAL);
  }

  private static Tolerance angle() {
    return Tolerance.ofEach(
        ToleranceKind.FLANK_ANGLE, Math.toRadians(0.05), DistributionShape.UNIFORM);
  }

  private static Tolerance pins() {
    return Tolerance.shared(ToleranceKind.PIN_DIAMETER, 2e-6, DistributionShape.UNIFORM);
  }

  private static Tolerance spacing() {
    return Tolerance.ofEach(ToleranceKind.PIN_SPACING, 10e-6, DistributionShape.NORMAL);
  }

  private static Tolerance radius() {
    return Tolerance.ofEach(ToleranceKind.FLANK_RADIUS, 3e-6, DistributionShape.NORMAL);
  }

  private static Tolerance arch() {
    return Tolerance.ofEach(ToleranceKind.ARCH_OFFSET, 3e-6, DistributionShape.NORMAL);
  }

  static Tolerances andMore(Tolerances some, Tolerance... more) {
    List<Tolerance> all = new ArrayList<>(some.entries());
    all.addAll(List.of(more));
    return new Tolerances(all);
  }

  private static CouplingDesign with(DesignBuilder b, Tolerance... more) {
    return b.preloads(List.of(preload()))
        .toolPoint(new Vec3(0.047, -0.01, 0.0152))
        .axes(
            new MachineAxes(
                new MachineAxis("Z", Vec3.Y),
                new MachineAxis("X", Vec3.X.negated()),
                new MachineAxis("height", Vec3.Z)))
        .tolerances(andMore(everything(), more))
        .build();
  }

  private static DesignBuilder grooves(String kind) {
    List<Support> supports = new ArrayList<>();
    int[] azimuths = {80, 200, 330};
    for (int azimuth : azimuths) {
      double a = Math.toRadians(azimuth);
      Vec3 c = Vec3.atAzimuth(a).times(RADIUS).plus(new Vec3(0, 0, 0.001 * azimuth / 100));
      SeatFrame f = new SeatFrame(c, Vec3.atAzimuth(a + 0.1), new Vec3(0.05, -0.02, 1));
      Seat seat =
          kind.equals("pins")
              ? CylinderPair.forBall(f, BALL, 0.003, 0.0135, 0.02, 0.01)
              : GothicGroove.forBall(f, BALL, 0.0072, 0.8, GrooveExtent.unlimited());
      supports.add(support("g" + azimuth, c, BALL, seat));
    }
    return CouplingDesign.builder().supports(supports);
  }

  private static DesignBuilder trihedralVeeFlat() {
    Vec3 t = new Vec3(-0.04, -0.03, 0);
    return veeFlatWith(
        support(
            "t", t, 0.005, TrihedralSeat.forBall(SeatFrame.level(t, 0.3), 0.005, 0.9, 0.02, 0)));
  }

  private static DesignBuilder coneVeeFlat() {
    Vec3 t = new Vec3(-0.04, -0.03, 0);
    return veeFlatWith(
        support("t", t, 0.005, ConeSeat.forBall(SeatFrame.level(t, 0.3), 0.005, 0.9, 0.02, 0)));
  }

  private static DesignBuilder veeFlatWith(Support first) {
    Vec3 v = new Vec3(0.05, -0.03, 0.002);
    Vec3 f = new Vec3(0.01, 0.05, 0.001);
    return CouplingDesign.builder()
        .support(first)
        .support(
            support(
                "v",
                v,
                0.006,
                VeeGroove.forBall(SeatFrame.level(v, 0), 0.006, 0.8, GrooveExtent.unlimited())))
        .support(support("f", f, 0.004, FlatSeat.forBall(SeatFrame.level(f, 1), 0.004, 0.02)));
  }

  /**
   * The same coupling upside down with the roles of the halves exchanged: the half with the balls
   * becomes the base. Half a turn about x; the load on the holder keeps its direction downward.
   */
  static CouplingDesign turnedOver(CouplingDesign d) {
    List<Support> supports = new ArrayList<>();
    for (Support s : d.supports()) {
      SeatFrame f = s.seat().frame();
      Ball b = s.ball();
      supports.add(
          s.withBall(new Ball(over(b.centre()), b.radius()))
              .withSeat(
                  s.seat()
                      .withFrame(new SeatFrame(over(f.origin()), over(f.axis()), over(f.up())))));
    }
    return d.toBuilder()
        .ballsOn(Half.BASE)
        .supports(supports)
        .toolPoint(over(d.toolPoint()))
        .build();
  }

  static Vec3 over(Vec3 v) {
    return new Vec3(v.x(), -v.y(), -v.z());
  }
}
