package reseat.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.AllowedPreload;
import reseat.check.PreloadDeviceCheck;
import reseat.check.StudLoads;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.StudMount;
import reseat.design.StudThread;
import reseat.design.Support;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.design.Tolerances;
import reseat.interchange.LinearStack;
import reseat.interchange.Sensitivity;
import reseat.interchange.ToleranceModel;
import reseat.making.CatchRange;
import reseat.making.Clearance;
import reseat.making.GaugeReading;
import reseat.making.GaugeStock;
import reseat.making.HeightSetting;
import reseat.making.PinSpacing;
import reseat.making.TwoGaugeAngle;
import reseat.numerics.DistributionShape;
import reseat.preload.BenchBand;
import reseat.readings.AcceptancePlan;
import reseat.space.Vec3;

/**
 * Everything that the papers for the shop floor tell, of a coupling that stands.
 *
 * @param check the check; its design is the one that is made
 * @param readings heights over gauges, support by support, only gauges that go in
 * @param unusable gauges of the shop that must not be used in a seat
 * @param angles angles from two gauges, where a seat has plane flanks
 * @param spacings spacing of pins, where there are any
 * @param settings how balls are set to height, where they stand on threads
 * @param allowed how far all preloads together may be scaled
 * @param clearances room of what must not touch
 * @param catchRange how far off sideways the seats catch the holder, m; infinite if nothing says
 * @param liftOut how far the holder is lifted before it may move sideways, m
 * @param perParticle shift of the tool point along each machine axis over the size of a particle
 *     under the ball of the flank that is worst for that axis
 * @param betweenHolders how the tool points of holders on one post differ; empty without tolerances
 * @param acceptance the test that proves each wanted repeatability
 * @param hopeless why there is none, a sentence for each wanted repeatability that no test would
 *     prove
 */
public record ShopStudy(
    SeatedCheck check,
    List<GaugeReading> readings,
    List<GaugeStock.Unusable> unusable,
    List<TwoGaugeAngle> angles,
    List<PinSpacing> spacings,
    List<HeightSetting> settings,
    Optional<AllowedPreload> allowed,
    List<Clearance> clearances,
    double catchRange,
    double liftOut,
    Vec3 perParticle,
    Optional<LinearStack.Sum> betweenHolders,
    List<AcceptancePlan> acceptance,
    List<String> hopeless) {

  /** Copies the lists. */
  public ShopStudy {
    readings = List.copyOf(readings);
    unusable = List.copyOf(unusable);
    angles = List.copyOf(angles);
    spacings = List.copyOf(spacings);
    settings = List.copyOf(settings);
    clearances = List.copyOf(clearances);
    acceptance = List.copyOf(acceptance);
    hopeless = List.copyOf(hopeless);
  }

  /**
   * Runs the study.
   *
   * @param check the check of a coupling that stands
   * @param inchSizes whether gauges that nobody named are proposed in inch sizes
   * @return all results
   * @throws InterruptedException if the thread is interrupted
   */
  public static ShopStudy run(SeatedCheck check, boolean inchSizes) throws InterruptedException {
    CouplingDesign design = check.design();
    AcceptanceStudy acceptance = AcceptanceStudy.of(design);
    List<GaugeReading> readings = new ArrayList<>();
    List<GaugeStock.Unusable> unusable = new ArrayList<>();
    List<TwoGaugeAngle> angles = new ArrayList<>();
    List<PinSpacing> spacings = new ArrayList<>();
    for (Support s : design.supports()) {
      GaugeStock stock = GaugeStock.of(s, design.shop(), inchSizes);
      unusable.addAll(stock.unusable());
      for (double diameter : stock.heightGauges()) {
        GaugeReading.of(s, design.tolerances(), diameter).ifPresent(readings::add);
      }
      stock
          .anglePair()
          .flatMap(p -> TwoGaugeAngle.of(s, design.tolerances(), p.small(), p.large()))
          .ifPresent(angles::add);
      PinSpacing.of(s, design.tolerances()).ifPresent(spacings::add);
    }
    return new ShopStudy(
        check,
        readings,
        unusable,
        angles,
        spacings,
        settings(check),
        check.preload().get(),
        Clearance.all(check.standing(), check.cases(), check.preloadScatter()),
        CatchRange.of(design),
        CatchRange.liftOut(design),
        perParticle(design),
        betweenHolders(design),
        acceptance.plans(),
        acceptance.hopeless());
  }

  private static List<HeightSetting> settings(SeatedCheck check) {
    CouplingDesign design = check.design();
    List<Sensitivity.Effect> heights = effects(design, ToleranceKind.BALL_HEIGHT);
    List<HeightSetting> settings = new ArrayList<>();
    for (int b = 0; b < design.supports().size(); b++) {
      Support s = design.supports().get(b);
      BallMounting mounting = s.mounting();
      Optional<StudThread> thread = mounting.stud().flatMap(StudMount::thread);
      if (thread.isPresent()) {
        double push = -StudLoads.of(check.standing(), check.cases(), b).sustained().pull();
        // the height of a ball counts away from its seat, its rise along the stud toward it
        double outward = mounting.axis().dot(s.seat().frame().up());
        Vec3 perRise = heights.get(b).shiftInMachineAxes().times(outward);
        settings.add(
            new HeightSetting(
                s.name(),
                thread.get(),
                thread.get().lockNut().map(n -> n.withPush(push)),
                perRise));
      }
    }
    return settings;
  }

  /** What each dimension of a kind does to the tool point, all of them counted. */
  private static List<Sensitivity.Effect> effects(CouplingDesign design, ToleranceKind kind) {
    Tolerance unit = Tolerance.ofEach(kind, 1e-6, DistributionShape.UNIFORM);
    CouplingDesign counted = design.toBuilder().tolerances(Tolerances.of(unit)).build();
    return Sensitivity.of(ToleranceModel.of(counted)).effects();
  }

  /** A particle at a contact lifts the ball there as a proud spot of the ball would. */
  private static Vec3 perParticle(CouplingDesign design) {
    Vec3 worst = Vec3.ZERO;
    for (Sensitivity.Effect e : effects(design, ToleranceKind.BALL_FORM)) {
      Vec3 s = e.shiftInMachineAxes();
      worst =
          new Vec3(
              Math.max(worst.x(), Math.abs(s.x())),
              Math.max(worst.y(), Math.abs(s.y())),
              Math.max(worst.z(), Math.abs(s.z())));
    }
    return worst;
  }

  private static Optional<LinearStack.Sum> betweenHolders(CouplingDesign design) {
    ToleranceModel tolerances = ToleranceModel.of(design);
    return tolerances.contributors().isEmpty()
        ? Optional.empty()
        : Optional.of(new LinearStack(Sensitivity.of(tolerances)).sum(LinearStack.BETWEEN_HOLDERS));
  }

  /**
   * Returns the band to set a preload's device to.
   *
   * @param preload one of the design's preloads
   * @return the band; empty if no device is described or nothing limits it
   */
  public Optional<BenchBand> band(Preload preload) {
    return preload.modelled().flatMap(d -> PreloadDeviceCheck.band(preload, d, allowed));
  }

  /**
   * Returns the design.
   *
   * @return the coupling that is to be made
   */
  public CouplingDesign design() {
    return check.design();
  }
}
