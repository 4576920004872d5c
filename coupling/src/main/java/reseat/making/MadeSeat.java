package reseat.making;

import static reseat.making.MadeDimension.Kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import reseat.design.Support;
import reseat.design.ToleranceKind;
import reseat.elementary.Elementary;
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
import reseat.units.FilledText;

/** What is made of a seat. */
final class MadeSeat implements Seat.Visitor<List<MadeFeature>> {

  private static final double NONE = Double.POSITIVE_INFINITY;

  private final Support support;
  private final MakerView view;
  private final StatedTolerances stated;

  MadeSeat(Support support, MakerView view, StatedTolerances stated) {
    this.support = support;
    this.view = view;
    this.stated = stated;
  }

  List<MadeFeature> features() {
    List<MadeFeature> all = new ArrayList<>(support.seat().accept(this));
    all.add(
        new MadeFeature(
            MadeFeature.Kind.BALL_REST,
            support.name(),
            view.turnedOver(support.ball().centre()),
            OptionalDouble.empty(),
            PlaceTolerance.UNSTATED,
            List.of(size(Kind.DIAMETER, support.ball().diameter(), NONE)),
            ""));
    return List.copyOf(all);
  }

  private static MadeDimension size(Kind kind, double value, double tolerance) {
    return new MadeDimension(kind, "", value, tolerance);
  }

  private MadeFeature feature(
      MadeFeature.Kind kind, Vec3 at, boolean runs, List<MadeDimension> sizes, String note) {
    SeatFrame f = support.seat().frame();
    OptionalDouble direction =
        runs ? OptionalDouble.of(view.azimuth(f.axis())) : OptionalDouble.empty();
    double lean = Elementary.acos(Math.max(-1, Math.min(1, f.up().dot(view.outOfFace()))));
    String tilted =
        lean < 1e-6
            ? ""
            : FilledText.of(
                "opens %.2f deg off square toward %.2f deg",
                Elementary.toDegrees(lean), Elementary.toDegrees(view.azimuth(f.up())));
    boolean pins = kind == MadeFeature.Kind.PIN || kind == MadeFeature.Kind.POCKET;
    String material = pins ? "" : "of " + support.seatMaterial().name();
    String all =
        Stream.of(note, material, tilted)
            .filter(words -> !words.isEmpty())
            .collect(Collectors.joining("; "));
    List<MadeDimension> withCase = new ArrayList<>(sizes);
    if (Double.isFinite(support.caseDepth()) && kind != MadeFeature.Kind.POCKET) {
      withCase.add(size(Kind.CASE_DEPTH, support.caseDepth(), NONE));
    }
    return new MadeFeature(
        kind,
        support.name(),
        view.turnedOver(at),
        direction,
        stated.ofSeat(support),
        withCase,
        all);
  }

  private List<MadeDimension> faced(Seat seat) {
    List<MadeDimension> sizes = new ArrayList<>();
    Optional<MouthFace> face = MouthFace.of(seat);
    if (face.isPresent()) {
      double ball = seat.frame().upward(support.ball().centre());
      sizes.add(
          size(
              Kind.BALL_OVER_FACE,
              ball - face.get().height(),
              stated.of(ToleranceKind.SEAT_DEPTH, support)));
    }
    return sizes;
  }

  private void flanks(List<MadeDimension> sizes, double... angles) {
    boolean alike = true;
    for (double a : angles) {
      alike &= a == angles[0];
    }
    if (alike) {
      sizes.add(
          size(Kind.FLANK_ANGLE, angles[0], stated.ofFlanks(ToleranceKind.FLANK_ANGLE, support)));
    } else {
      for (int i = 0; i < angles.length; i++) {
        String part = support.seat().flanks().get(i).name();
        double t = stated.of(ToleranceKind.FLANK_ANGLE, support.name(), part);
        sizes.add(new MadeDimension(Kind.FLANK_ANGLE, part, angles[i], t));
      }
    }
    double position = stated.ofFlanks(ToleranceKind.FLANK_POSITION, support);
    if (Double.isFinite(position)) {
      sizes.add(size(Kind.FLANK_POSITION, 0, position));
    }
  }

  private static void extent(List<MadeDimension> sizes, GrooveExtent e) {
    if (Double.isFinite(e.mouthWidth())) {
      sizes.add(size(Kind.MOUTH_WIDTH, e.mouthWidth(), NONE));
    }
    if (Double.isFinite(e.length())) {
      sizes.add(size(Kind.LENGTH, e.length(), NONE));
    }
    if (e.rootWidth() > 0) {
      sizes.add(size(Kind.ROOT_WIDTH, e.rootWidth(), NONE));
    }
  }

  @Override
  public List<MadeFeature> veeGroove(VeeGroove s) {
    List<MadeDimension> sizes = new ArrayList<>();
    extent(sizes, s.extent());
    flanks(sizes, s.leftAngle(), s.rightAngle());
    MouthFace.of(s).ifPresent(f -> sizes.add(size(Kind.DEPTH, f.height(), NONE)));
    if (s.extent().rootWidth() > 0 && MouthFace.of(s).isPresent()) {
      double flanksEnd =
          s.extent().rootWidth() / 2 * Elementary.tan(Math.min(s.leftAngle(), s.rightAngle()));
      double floor = flanksEnd - s.extent().rootDepth();
      sizes.add(size(Kind.FLOOR_DEPTH, MouthFace.of(s).get().height() - floor, NONE));
    }
    sizes.addAll(faced(s));
    return List.of(feature(MadeFeature.Kind.VEE_GROOVE, s.frame().origin(), true, sizes, ""));
  }

  @Override
  public List<MadeFeature> gothicGroove(GothicGroove s) {
    List<MadeDimension> sizes = new ArrayList<>();
    extent(sizes, s.extent());
    double[] radii = {s.leftRadius(), s.rightRadius()};
    for (int i = 0; i < 2; i++) {
      String part = s.flanks().get(i).name();
      double t = stated.of(ToleranceKind.FLANK_RADIUS, support.name(), part);
      sizes.add(new MadeDimension(Kind.FLANK_RADIUS, part, radii[i], t));
    }
    double t = stated.of(ToleranceKind.ARCH_OFFSET, support);
    sizes.add(size(Kind.ARCH_OFFSET, s.axisOffset(), t));
    sizes.addAll(faced(s));
    return List.of(feature(MadeFeature.Kind.GOTHIC_GROOVE, s.frame().origin(), true, sizes, ""));
  }

  @Override
  public List<MadeFeature> cylinderPair(CylinderPair s) {
    List<MadeFeature> all = new ArrayList<>();
    String material = support.seatMaterial().name();
    double[] radii = {s.leftRadius(), s.rightRadius()};
    for (int i = 0; i < 2; i++) {
      String part = s.flanks().get(i).name();
      List<MadeDimension> sizes = new ArrayList<>();
      double t = stated.of(ToleranceKind.PIN_DIAMETER, support.name(), part);
      sizes.add(new MadeDimension(Kind.DIAMETER, part, 2 * radii[i], t));
      if (Double.isFinite(s.length())) {
        sizes.add(new MadeDimension(Kind.LENGTH, part, s.length(), NONE));
      }
      double aside = (i == 0 ? 1 : -1) * s.spacing() / 2;
      Vec3 at = s.frame().point(s.frame().along(support.ball().centre()), aside, 0);
      all.add(feature(MadeFeature.Kind.PIN, at, true, sizes, part + " pin of " + material));
    }
    boolean floored = Double.isFinite(s.floorDepth());
    Vec3 under =
        s.frame().point(s.frame().along(support.ball().centre()), 0, floored ? -s.floorDepth() : 0);
    List<MadeDimension> sizes = new ArrayList<>();
    double t = stated.of(ToleranceKind.PIN_SPACING, support);
    sizes.add(size(Kind.SPACING, s.spacing(), t));
    sizes.add(
        size(
            Kind.BALL_OVER_AXES,
            s.frame().upward(support.ball().centre()),
            stated.of(ToleranceKind.SEAT_DEPTH, support)));
    if (floored) {
      sizes.add(size(Kind.POCKET_DEPTH, s.floorDepth(), NONE));
    }
    all.add(
        feature(MadeFeature.Kind.POCKET, under, true, sizes, floored ? "" : "floor not stated"));
    return all;
  }

  @Override
  public List<MadeFeature> trihedralSeat(TrihedralSeat s) {
    List<MadeDimension> sizes = new ArrayList<>();
    if (Double.isFinite(s.mouthDiameter())) {
      sizes.add(size(Kind.MOUTH_CIRCLE, s.mouthDiameter(), NONE));
    }
    if (s.rootDiameter() > 0) {
      sizes.add(size(Kind.ROOT_CIRCLE, s.rootDiameter(), NONE));
    }
    flanks(sizes, s.firstAngle(), s.secondAngle(), s.thirdAngle());
    MouthFace.of(s).ifPresent(f -> sizes.add(size(Kind.DEPTH, f.height(), NONE)));
    sizes.addAll(faced(s));
    return List.of(feature(MadeFeature.Kind.TRIHEDRAL_SEAT, s.frame().origin(), true, sizes, ""));
  }

  @Override
  public List<MadeFeature> coneSeat(ConeSeat s) {
    List<MadeDimension> sizes = new ArrayList<>();
    if (Double.isFinite(s.mouthDiameter())) {
      sizes.add(size(Kind.MOUTH_DIAMETER, s.mouthDiameter(), NONE));
    }
    if (s.rootDiameter() > 0) {
      sizes.add(size(Kind.ROOT_DIAMETER, s.rootDiameter(), NONE));
    }
    flanks(sizes, s.angle(), s.angle(), s.angle());
    MouthFace.of(s).ifPresent(f -> sizes.add(size(Kind.DEPTH, f.height(), NONE)));
    sizes.addAll(faced(s));
    return List.of(feature(MadeFeature.Kind.CONE, s.frame().origin(), false, sizes, ""));
  }

  @Override
  public List<MadeFeature> flatSeat(FlatSeat s) {
    List<MadeDimension> sizes = new ArrayList<>();
    if (Double.isFinite(s.padDiameter())) {
      sizes.add(size(Kind.DIAMETER, s.padDiameter(), NONE));
    }
    sizes.add(
        size(
            Kind.BALL_OVER_FLAT,
            s.frame().upward(support.ball().centre()),
            stated.of(ToleranceKind.SEAT_DEPTH, support)));
    double position = stated.ofFlanks(ToleranceKind.FLANK_POSITION, support);
    if (Double.isFinite(position)) {
      sizes.add(size(Kind.FLANK_POSITION, 0, position));
    }
    return List.of(feature(MadeFeature.Kind.FLAT, s.frame().origin(), false, sizes, ""));
  }
}
