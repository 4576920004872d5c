package reseat.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.check.AllowedPreload;
import reseat.check.Depth;
import reseat.check.StandingCoupling;
import reseat.check.Verdict;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.SizeTargets;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;
import reseat.numerics.RandomStream;

/** Searches whose answer is known in closed form. */
class SizingValidationTest {

  private static final String POST = Starter.TOOL_POST.text();

  /** Rigid balls, no weight, no load case, no targets: Hertz's laws alone. */
  private static CouplingDesign bare(String ball, double pressureShare) {
    String text =
        "[tool_point]\nat = [\"0 mm\", \"0 mm\", \"0 mm\"]\n"
            + "[layout]\nkind = \"three-vee\"\ncircle_diameter = \"70 mm\"\n"
            + "ball = { diameter = \""
            + ball
            + "\", material = \"52100\" }\n"
            + "groove = { kind = \"vee\", flank_angle = \"45 deg\", material = \"A2\" }\n"
            + "[[preload]]\nforce = \"300 N\"\nscatter = \"0 %\"\n"
            + "[holder]\nmass = \"0 kg\"\n"
            + "[targets]\npressure_share = \""
            + 100 * pressureShare
            + " %\"\n";
    return DesignFile.read(text).design().orElseThrow();
  }

  private static AllowedPreload band(String ball, double share) {
    return sought(bare(ball, share)).orElseThrow();
  }

  private static Optional<AllowedPreload> sought(CouplingDesign design) {
    return new StandingCoupling(CouplingModel.of(design).standing(), List.of(), Depth.CLOSED_FORM)
        .allowedPreload();
  }

  /** Force at a pressure goes with its cube and the ball's square: from Hertz's formulas. */
  @Test
  void theLargestPreloadGoesWithTheCubeOfThePressureAllowedAndTheSquareOfTheBall() {
    AllowedPreload full = band("12 mm", 1);
    assertEquals("contact pressure", full.most().check());
    assertEquals(
        full.most().force() / 8, band("12 mm", 0.5).most().force(), 1e-3 * full.most().force() / 8);
    assertEquals(
        full.most().force() * 4, band("24 mm", 1).most().force(), 1e-3 * full.most().force() * 4);
    assertEquals("", full.least().check());
    assertEquals(0, full.least().force());
  }

  @Test
  void theLowerEndOfTheBandIsWhereTheLoadKeepsItsLiftOffFactor() {
    CouplingDesign post = DesignFile.read(POST).design().orElseThrow();
    AllowedPreload band = sought(post).orElseThrow();
    assertEquals("lift-off", band.least().check());
    double factor = band.least().force() / band.nominal();
    CouplingDesign at =
        post.toBuilder()
            .preloads(List.of(post.preloads().get(0).withForce(factor * band.nominal())))
            .build();
    Judgement j = CandidateCheck.of(at, SizeTargets.NONE);
    assertNotEquals(Verdict.FAILS, j.verdict());
    assertEquals(1, j.used(), 1e-3);
    assertTrue(band.coversScatter());
  }

  @Test
  void aPreloadThatNoSizeOfHelpsHasNoBand() {
    String aside =
        POST.replace("at = [\"0 mm\", \"0 mm\", \"0 mm\"]", "at = [\"0 mm\", \"90 mm\", \"0 mm\"]");
    CouplingDesign post = DesignFile.read(aside).design().orElseThrow();
    CouplingModel model = CouplingModel.of(post);
    assertTrue(model.standing().lifted());
    assertEquals(
        Optional.empty(),
        new StandingCoupling(model.standing(), List.of(), Depth.STATICS).allowedPreload());
  }

  /** The valley of Rosenbrock has its only minimum, 0, at (1, 1); scaled here to a unit square. */
  @Test
  void refinementFindsTheEndOfACurvedValley() {
    double[] found =
        Refinement.from(
            x -> {
              double a = 2 * x[0];
              double b = 2 * x[1];
              return Math.pow(1 - a, 2) + 10 * Math.pow(b - a * a, 2);
            },
            new double[] {0.1, 0.8});
    assertArrayEquals(new double[] {0.5, 0.5}, found, 1e-3);
  }

  @Test
  void refinementFindsTheKinkWhereTwoLimitsMeetAndTheEndOfARange() {
    double[] kink =
        Refinement.from(
            x -> Math.max(0.3 + x[0], 1.1 - x[0]) + Math.abs(x[1] - 0.7), new double[] {0, 0});
    assertArrayEquals(new double[] {0.4, 0.7}, kink, 1e-4);
    assertArrayEquals(new double[] {1}, Refinement.from(x -> -x[0], new double[] {0.2}), 1e-6);
    assertEquals(0, Refinement.from(x -> 1, new double[0]).length);
  }

  /** Steps that leave the range are cut back to its end and tell nothing. */
  @Test
  void atAnEndOfTheRangeRefinementStepsInward() {
    List<Double> tried = new ArrayList<>();
    for (double end : new double[] {0, 1}) {
      tried.clear();
      Refinement.from(
          x -> {
            tried.add(x[0]);
            return Math.abs(x[0] - end);
          },
          new double[] {end});
      assertTrue(tried.size() > 3);
      assertTrue(tried.get(2) > 0 && tried.get(2) < 1, "first step to " + tried.get(2));
    }
    tried.clear();
    Refinement.from(
        x -> {
          tried.add(x[0]);
          return x[0];
        },
        new double[] {0.3});
    // begun anew at 0 with a third of the first step, which would have gone the other way
    assertTrue(tried.stream().anyMatch(v -> Math.abs(v - 0.04) < 1e-12), tried.toString());
    assertTrue(tried.size() < 750, "three searches of 250 at most");
  }

  /** Nowhere worse, and not the same. */
  private static boolean beats(Merits a, Merits b) {
    return a.repeatability() <= b.repeatability()
        && a.stiffness() >= b.stiffness()
        && a.pressure() <= b.pressure()
        && a.size() <= b.size()
        && !a.equals(b);
  }

  @ParameterizedTest
  @ValueSource(ints = {8, 1000}) // with many ties and few members, and with hundreds of members
  void aParetoSetHoldsExactlyThoseThatNoOtherBeats(int levels) {
    long seed = 20261125;
    RandomStream luck = RandomStream.of(seed, 0);
    List<Candidate> all = new ArrayList<>();
    ParetoSet set = new ParetoSet();
    for (int i = 0; i < 400; i++) {
      Merits m =
          new Merits(
              Math.rint(levels * luck.uniform()),
              Math.rint(levels * luck.uniform()),
              Math.rint(levels * luck.uniform()),
              Math.rint(levels * luck.uniform()));
      Candidate c = new Candidate(i, i, new Judgement("size", 0.5, Optional.of(m)));
      all.add(c);
      set.offer(c);
    }
    List<Candidate> expected = new ArrayList<>();
    for (Candidate c : all) {
      Merits m = c.judgement().merits().orElseThrow();
      boolean stays = true;
      for (Candidate o : all) {
        Merits n = o.judgement().merits().orElseThrow();
        stays &= !beats(n, m) && !(n.equals(m) && o.number() < c.number());
      }
      if (stays) {
        expected.add(c);
      }
    }
    assertEquals(expected, set.members(), "seed " + seed);
  }
}
