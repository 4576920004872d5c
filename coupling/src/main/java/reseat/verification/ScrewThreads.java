package reseat.verification;

import reseat.ballmount.ScrewThread;
import reseat.ballmount.ThreadFit;
import reseat.ballmount.ThreadStrength;
import reseat.ballmount.ThreadTolerance;
import reseat.ballmount.ThreadTorque;
import reseat.elementary.Elementary;
import reseat.preload.ForceScatter;
import reseat.preload.TightenedScrew;
import reseat.verification.Topic.Gatherer;
import reseat.verification.Topic.Gatherer.From;

/** Stress areas, limit diameters, strip areas, torque and travel of screw threads. */
final class ScrewThreads {

  private static final double INCH = 0.0254;
  private static final double SQUARE_INCH = INCH * INCH;

  private ScrewThreads() {}

  static Topic topic() {
    Gatherer all = new Gatherer();
    metricStressAreas(all);
    unifiedStressAreas(all);
    metricStripAreas(all);
    unifiedStripAreas(all);
    workedLimits(all);
    loads(all);
    torque(all);
    travel(all);
    return all.topic("Screw threads");
  }

  private static void metricStressAreas(Gatherer all) {
    From from = all.from("tables of metric threads after ASME B1.13M", Standing.SEEN, 2.5e-4);
    stressArea(from, "CV-097", "M3x0.5", 5.031);
    stressArea(from, "CV-098", "M4x0.7", 8.779);
    stressArea(from, "CV-099", "M5x0.8", 14.18);
    stressArea(from, "CV-100", "M6x1", 20.12);
    stressArea(from, "CV-101", "M8x1.25", 36.61);
    stressArea(from, "CV-102", "M8x1", 39.17);
    stressArea(from, "CV-103", "M10x1.5", 57.99);
  }

  private static void stressArea(From from, String id, String thread, double squareMillimetres) {
    from.add(
        id,
        thread + ": stress area",
        squareMillimetres,
        "mm2",
        () -> ScrewThread.parse(thread).stressArea() * 1e6);
  }

  private static void unifiedStressAreas(Gatherer all) {
    From from =
        all.from(
            "(pi/4)(D - 0.9743/n)^2; agrees with a table of Unified fine threads that was read",
            Standing.COMPUTED,
            2e-5);
    unifiedStressArea(from, "CV-104", "1/2-20", 0.1599527);
    unifiedStressArea(from, "CV-105", "10-32", 0.0199940);
    unifiedStressArea(from, "CV-106", "1/4-28", 0.0363738);
    unifiedStressArea(from, "CV-107", "5/16-24", 0.058066);
    unifiedStressArea(from, "CV-107", "3/8-24", 0.0878281);
    unifiedStressArea(from, "CV-107", "7/16-20", 0.118716);
  }

  private static void unifiedStressArea(From from, String id, String thread, double squareInches) {
    from.add(
        id,
        thread + ": stress area",
        squareInches,
        "in2",
        () -> ScrewThread.parse(thread).stressArea() / SQUARE_INCH);
  }

  private static void metricStripAreas(Gatherer all) {
    From from =
        all.from(
            "Bickford, Introduction to the Design and Behavior of Bolted Joints, metric strip"
                + " areas, as reproduced",
            Standing.SEEN,
            5e-5);
    metricStrip(from, "CV-108", "M5", 35.366, 49.994);
    metricStrip(from, "CV-109", "M6", 51.875, 73.145);
    metricStrip(from, "CV-110", "M8", 97.290, 134.63);
    metricStrip(from, "CV-111", "M10", 155.80, 214.77);
  }

  private static void metricStrip(From from, String id, String thread, double screw, double nut) {
    String name = thread + " 6H/6g, engaged one diameter: ";
    double diameter = ScrewThread.parse(thread).diameter();
    from.add(
            id,
            name + "strip area of the screw",
            screw,
            "mm2",
            () -> strength(thread, diameter).screwShearArea() * 1e6)
        .add(
            id,
            name + "strip area of the nut",
            nut,
            "mm2",
            () -> strength(thread, diameter).nutShearArea() * 1e6);
  }

  private static void unifiedStripAreas(Gatherer all) {
    From from =
        all.from(
            "formula of FED-STD-H28 with limits of ASME B1.1 recalled from memory",
            Standing.COMPUTED,
            1e-6);
    unifiedStrip(from, "CV-112", "1/2-20", 0.79908674, 1.0820802);
    unifiedStrip(from, "CV-113", "10-32", 0.27474447, 0.38857323);
    unifiedStrip(from, "CV-114", "1/4-28", 0.37350770, 0.52131706);
  }

  private static void unifiedStrip(From from, String id, String thread, double screw, double nut) {
    String name = thread + " 2B/2A, engaged one inch: ";
    from.add(
            id,
            name + "strip area of the screw",
            screw,
            "in2",
            () -> strength(thread, INCH).screwShearArea() / SQUARE_INCH)
        .add(
            id,
            name + "strip area of the nut",
            nut,
            "in2",
            () -> strength(thread, INCH).nutShearArea() / SQUARE_INCH);
  }

  private static ThreadStrength strength(String thread, double engagement) {
    return ThreadStrength.of(
        ThreadTolerance.of(ScrewThread.parse(thread), ThreadFit.MEDIUM), engagement, 1e9, 1e9);
  }

  private static void workedLimits(Gatherer all) {
    ThreadTolerance limits = ThreadTolerance.of(ScrewThread.parse("1/2-28 UNEF"), ThreadFit.MEDIUM);
    String name = "1/2-28 UNEF 2A/2B: ";
    all.from("Machinery's Handbook, 31st edition, worked example", Standing.SEEN, 1e-9)
        .add(
            "CV-115",
            name + "largest major diameter",
            0.4989,
            "in",
            () -> limits.screwMajorMax() / INCH)
        .add(
            "CV-115",
            name + "smallest major diameter",
            0.4924,
            "in",
            () -> limits.screwMajorMin() / INCH)
        .add(
            "CV-115",
            name + "largest pitch diameter",
            0.4757,
            "in",
            () -> limits.screwPitchMax() / INCH)
        .add(
            "CV-115",
            name + "smallest pitch diameter",
            0.4720,
            "in",
            () -> limits.screwPitchMin() / INCH)
        .add(
            "CV-115",
            name + "smallest minor diameter of the nut",
            0.461,
            "in",
            () -> limits.nutMinorMin() / INCH);
  }

  private static void loads(Gatherer all) {
    From from =
        all.from(
            "minimum tensile loads of ISO 898-1 in a fastener table; its stress areas are rounded",
            Standing.SEEN,
            3.5e-3);
    load(from, "M6", "8.8", 800e6, 16100);
    load(from, "M8", "8.8", 800e6, 29200);
    load(from, "M6", "12.9", 1220e6, 24500);
  }

  private static void load(
      From from, String thread, String property, double strength, double newtons) {
    from.add(
        "CV-116",
        thread + " class " + property + ": tensile load",
        newtons,
        "N",
        () -> ScrewThread.parse(thread).stressArea() * strength);
  }

  private static void torque(Gatherer all) {
    ScrewThread m6 = ScrewThread.parse("M6");
    ThreadTorque friction = new ThreadTorque(m6, 0.12, 0.12, 8.5e-3);
    all.from("T = K d F", Standing.COMPUTED, 1e-9)
        .add(
            "CV-117",
            "M6, 2000 N, K = 0.2: torque",
            2.4,
            "N.m",
            () -> TightenedScrew.byNutFactor(m6, 0.2) * 2000);
    all.from(
            "T = F [P/(2 pi) + 0.577 mu d2 + 0.5 mu Dm] with 0.577 and d2 rounded",
            Standing.COMPUTED,
            4e-4)
        .add(
            "CV-117",
            "M6, 2000 N, mu = 0.12: torque",
            2.0796,
            "N.m",
            () -> friction.tightening(2000))
        .add("CV-117", "M6, mu = 0.12: nut factor", 0.17330, "", friction::nutFactor);
    all.from("75 % of a proof stress of 580 MPa, K = 0.2", Standing.COMPUTED, 5e-5)
        .add("CV-118", "M6 class 8.8: preload", 8753.67, "N", () -> 0.75 * 580e6 * m6.stressArea())
        .add(
            "CV-118",
            "M6 class 8.8: torque",
            10.504,
            "N.m",
            () -> TightenedScrew.byNutFactor(m6, 0.2) * 0.75 * 580e6 * m6.stressArea());
    From factor = all.from("(1 + x)/(1 - x), VDI 2230", Standing.COMPUTED, 3e-5);
    factor
        .add("CV-119", "scatter 25 %: tightening factor", 1.6667, "", () -> tightening(0.25))
        .add("CV-119", "scatter 30 %: tightening factor", 1.8571, "", () -> tightening(0.30));
  }

  private static double tightening(double halfRange) {
    return ForceScatter.uniform(halfRange, "stated").largestOverSmallest();
  }

  private static void travel(Gatherer all) {
    From from = all.from("lead/360", Standing.COMPUTED, 6e-7);
    travel(from, "M6x1", 2.777778);
    travel(from, "M6x0.5", 1.388889);
    travel(from, "1/4-28", 2.519841);
    travel(from, "1/2-20", 3.527778);
    travel(from, "1/4-80", 0.881944);
    travel(from, "10-32", 2.204861);
    travel(from, "3/8-24", 2.939815);
    from.add(
            "CV-121",
            "differential screw of 24 and 28 threads per inch: travel for one degree",
            0.4199735,
            "um",
            () ->
                Elementary.toRadians(
                    ScrewThread.parse("3/8-24")
                            .differentialTravelPerRadian(ScrewThread.parse("1/4-28"))
                        * 1e6))
        .add(
            "CV-122",
            "M6x1 at a pitch diameter of 5.350 mm: lead angle",
            3.404923,
            "deg",
            () -> Elementary.toDegrees(ScrewThread.parse("M6x1").leadAngleAt(5.350e-3)));
  }

  private static void travel(From from, String thread, double micrometres) {
    from.add(
        "CV-120",
        thread + ": travel for one degree",
        micrometres,
        "um",
        () -> ScrewThread.parse(thread).travelPerDegree() * 1e6);
  }
}
