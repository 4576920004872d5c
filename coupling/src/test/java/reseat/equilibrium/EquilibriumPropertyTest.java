package reseat.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import reseat.space.RandomDirection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.Support;
import reseat.numerics.RandomStream;
import reseat.seat.Flank;
import reseat.space.Pose;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** Laws that any coupling must obey, on random layouts of all kinds of seats. */
class EquilibriumPropertyTest {

  private static final long SEED = 20260201;
  private static final int LAYOUTS = 40;

  private interface Claim {
    void of(RandomCoupling coupling, RandomStream draw);
  }

  private static void onRandomLayouts(int stream, Claim claim) {
    for (int i = 0; i < LAYOUTS; i++) {
      RandomStream draw = RandomStream.of(SEED + stream, i);
      RandomCoupling coupling = RandomCoupling.draw(draw);
      try {
        claim.of(coupling, draw);
      } catch (AssertionError e) {
        throw new AssertionError("seed " + (SEED + stream) + ", layout " + i, e);
      }
    }
  }

  private static double[] forces(Equilibrium state) {
    return state.contacts().stream().mapToDouble(Equilibrium.Contact::force).toArray();
  }

  private static Equilibrium solve(CouplingDesign design, Wrench load) {
    return CouplingModel.of(design).equilibriumUnder(load);
  }

  private static void same(Vec3 found, Vec3 expected, double tolerance) {
    assertThat(found.distanceTo(expected)).isLessThan(tolerance);
  }

  @Test
  void contactForcesBalanceTheLoadAboutAnyPoint() {
    onRandomLayouts(
        1,
        (coupling, draw) -> {
          Equilibrium state = solve(coupling.design(), coupling.load());
          Wrench sum = coupling.load().movedTo(RandomDirection.of(draw));
          for (Equilibrium.Contact c : state.contacts()) {
            // through the contact point, not the ball's centre: the line must pass through both
            sum = sum.plus(Wrench.ofForce(c.line().push().times(c.force()), c.line().point()));
          }
          double size = coupling.load().force().norm();
          assertThat(sum.force().norm()).isLessThan(1e-11 * size);
          assertThat(sum.moment().norm()).isLessThan(1e-11 * size);
          assertThat(state.lifted()).isFalse();
        });
  }

  @Test
  void everyGapIsClosedByWhatItsHertzContactGivesWay() {
    onRandomLayouts(
        2,
        (coupling, draw) -> {
          Equilibrium state = solve(coupling.design(), coupling.load());
          boolean onHolder = coupling.design().ballsOn() == Half.HOLDER;
          Pose ballsInSeats = onHolder ? state.holderInBase() : state.holderInBase().inverse();
          Pose seatsInBase = onHolder ? Pose.identity() : state.holderInBase();
          int i = 0;
          for (Support s : coupling.design().supports()) {
            // the ball's own shift on its mounting, from the forces as pushed on it in base axes
            Vec3 push = Vec3.ZERO;
            int n = s.seat().flanks().size();
            for (int k = i; k < i + n; k++) {
              Equilibrium.Contact c = state.contacts().get(k);
              push = push.plus(c.line().normal().times(c.force()));
            }
            Pose ballHalfInBase = seatsInBase.compose(ballsInSeats);
            Vec3 shift = s.mounting().displacement(ballHalfInBase.inverse().rotate(push));
            Vec3 centre = ballsInSeats.apply(s.ball().centre().plus(shift));
            for (Flank f : s.seat().flanks()) {
              Equilibrium.Contact c = state.contacts().get(i);
              assertThat(f.gap(centre, s.ball().radius())).isCloseTo(-c.approach(), within(2e-14));
              assertThat(c.hertz().approach(c.force()))
                  .isCloseTo(c.approach(), within(1e-12 * c.approach()));
              i++;
            }
          }
        });
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 3, 1000})
  void aCouplingOfAnotherSizeActsAlikeUnderAsMuchPressure(double scale) {
    // lengths by s, forces by s^2, moments by s^3: every stress is the same, every displacement
    // grows by s; exact, because nothing in the theory has a length of its own
    onRandomLayouts(
        3,
        (coupling, draw) -> {
          Equilibrium small = solve(coupling.design(), coupling.load());
          Wrench w = coupling.load().movedTo(Vec3.ZERO);
          double s2 = scale * scale;
          Equilibrium large =
              solve(
                  ChangedCoupling.enlarged(coupling.design(), scale),
                  new Wrench(w.force().times(s2), w.moment().times(s2 * scale), Vec3.ZERO));
          for (int i = 0; i < 6; i++) {
            Equilibrium.Contact a = small.contacts().get(i);
            Equilibrium.Contact b = large.contacts().get(i);
            assertThat(b.force()).isCloseTo(s2 * a.force(), within(1e-9 * s2 * a.force()));
            assertThat(b.hertz().peakPressure(b.force()) / a.hertz().peakPressure(a.force()))
                .isCloseTo(1, within(1e-9));
            assertThat(b.normalStiffness() / a.normalStiffness())
                .isCloseTo(scale, within(1e-9 * scale));
          }
          Vec3 tool = coupling.design().toolPoint();
          Vec3 shift = small.displacementOf(tool);
          same(
              large.displacementOf(tool.times(scale)).times(1 / scale),
              shift,
              1e-8 * shift.norm() + 1e-13 / Math.min(1, scale));
        });
  }

  @Test
  void stifferPartsUnderMoreLoadStandAlike() {
    onRandomLayouts(
        4,
        (coupling, draw) -> {
          Equilibrium soft = solve(coupling.design(), coupling.load());
          Equilibrium stiff =
              solve(ChangedCoupling.stiffened(coupling.design(), 7), coupling.load().times(7));
          Vec3 tool = coupling.design().toolPoint();
          Vec3 shift = soft.displacementOf(tool);
          same(stiff.displacementOf(tool), shift, 1e-8 * shift.norm());
        });
  }

  @Test
  void eightTimesTheForceSinksFourTimesAsDeepTwiceAsStiff() {
    // δ ∝ N^(2/3), k ∝ N^(1/3); exact but for the turning of the lines of action, N/(k L), which is
    // itself four times as large under eight times the force. Mountings are linear springs and so
    // must be rigid here
    for (int i = 0; i < LAYOUTS; i++) {
      RandomCoupling coupling = RandomCoupling.draw(RandomStream.of(SEED + 5, i), false);
      Equilibrium one = solve(coupling.design(), coupling.load());
      Equilibrium eight = solve(coupling.design(), coupling.load().times(8));
      double tolerance = 20 * RandomCoupling.geometricShare(eight);
      Vec3 tool = coupling.design().toolPoint();
      Vec3 sink = one.displacementOf(tool);
      double largest = one.contacts().stream().mapToDouble(c -> c.approach()).max().orElseThrow();
      same(
          eight.displacementOf(tool),
          sink.times(4),
          4 * tolerance * Math.max(sink.norm(), largest));
      for (int c = 0; c < 6; c++) {
        assertThat(
                eight.contacts().get(c).normalStiffness() / one.contacts().get(c).normalStiffness())
            .as("seed %d, layout %d", SEED + 5, i)
            .isCloseTo(2, within(2 * tolerance));
      }
    }
  }

  @Test
  void aCouplingTurnedAndMovedAnswersTurnedAndMoved() {
    onRandomLayouts(
        6,
        (coupling, draw) -> {
          Pose move = Pose.of(RandomDirection.of(draw).times(draw.uniform(0, 3)), RandomDirection.of(draw));
          Wrench w = coupling.load();
          Equilibrium here = solve(coupling.design(), w);
          Equilibrium there =
              solve(
                  ChangedCoupling.moved(coupling.design(), move),
                  new Wrench(move.rotate(w.force()), move.rotate(w.moment()), move.apply(w.at())));
          for (int i = 0; i < 6; i++) {
            assertThat(forces(there)[i]).isCloseTo(forces(here)[i], within(1e-9));
          }
          Vec3 tool = coupling.design().toolPoint();
          same(
              there.displacementOf(move.apply(tool)),
              move.rotate(here.displacementOf(tool)),
              1e-13);
        });
  }

  @Test
  void aCouplingInTheMirrorAnswersMirrored() {
    onRandomLayouts(
        7,
        (coupling, draw) -> {
          Wrench w = coupling.load().movedTo(Vec3.ZERO);
          Equilibrium here = solve(coupling.design(), w);
          Equilibrium there =
              solve(
                  ChangedCoupling.mirrored(coupling.design()),
                  new Wrench(
                      ChangedCoupling.mirrored(w.force()),
                      ChangedCoupling.mirrored(w.moment()).negated(),
                      Vec3.ZERO));
          for (int i = 0; i < 6; i++) {
            int twin = ChangedCoupling.mirroredContact(coupling.design(), i);
            assertThat(forces(there)[twin]).isCloseTo(forces(here)[i], within(1e-9));
          }
          Vec3 tool = coupling.design().toolPoint();
          same(
              there.displacementOf(ChangedCoupling.mirrored(tool)),
              ChangedCoupling.mirrored(here.displacementOf(tool)),
              1e-14);
        });
  }

  @Test
  void exchangingTheHalvesChangesNoForceAndInvertsThePose() {
    // the same surfaces pressed together by the same loads, told from the other half: its load is
    // the reaction, turned into the axes of what has become the base
    onRandomLayouts(
        8,
        (coupling, draw) -> {
          Wrench w = coupling.load().movedTo(Vec3.ZERO);
          Equilibrium here = solve(coupling.design(), w);
          Pose back = here.holderInBase().inverse();
          Wrench reaction =
              new Wrench(
                  back.rotate(w.force()).negated(),
                  back.rotate(w.moment()).negated(),
                  back.apply(Vec3.ZERO));
          Equilibrium there = solve(ChangedCoupling.halvesExchanged(coupling.design()), reaction);
          for (int i = 0; i < 6; i++) {
            assertThat(forces(there)[i]).isCloseTo(forces(here)[i], within(1e-9));
          }
          for (Vec3 p : List.of(Vec3.ZERO, Vec3.X, Vec3.Y, Vec3.Z)) {
            same(there.holderInBase().apply(p), back.apply(p), 1e-13);
          }
        });
  }
}
