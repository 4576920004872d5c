package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import reseat.ballmount.BondJoint;
import reseat.ballmount.ThreadStrength;
import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.contact.RingContact;
import reseat.design.CouplingDesign;
import reseat.design.StudMount;
import reseat.design.StudThread;
import reseat.design.Support;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.material.MaterialCatalog;
import reseat.seat.ConeSeat;

/** Where a stud, its bond, its thread and a ring of contact pass from well to worse. */
class MountThresholdsTest {

  private static final StudMount MOUNT = Looked.postStud();
  private static final StudThread THREAD = MOUNT.thread().orElseThrow();

  private static StudLoads bears(double pull, double lateral) {
    BondJoint.Load idle = new BondJoint.Load(0, 0);
    return new StudLoads(
        idle, List.of(new StudLoads.Peak("hit", new BondJoint.Load(pull, lateral))));
  }

  private static void passes(
      DoubleFunction<Finding> at, double force, Judged before, Judged after) {
    assertThat(at.apply(0.999 * force).judged()).isEqualTo(before);
    assertThat(at.apply(1.001 * force).judged()).isEqualTo(after);
  }

  @Test
  void aStudFailsAboveItsStrength() {
    DoubleFunction<Finding> at = side -> StudStressCheck.of("front", MOUNT, bears(0, side));
    // bending stress goes with the force across
    double yields = 100 * at.apply(100).limit() / at.apply(100).value();
    passes(at, yields, Judged.HOLDS, Judged.FAILS);
    assertThat(Looked.name(at.apply(100).said(), 0)).isEqualTo("front");
    assertThat(Looked.name(at.apply(100).said(), 4)).isEqualTo("hit");
    assertThat(at.apply(0.9 * yields).advice().isEmpty()).isTrue();
    assertThat(at.apply(1.1 * yields).advice().key()).isEqualTo(Said.THICKEN_NECK);
  }

  @Test
  void aBondFailsAboveItsDesignStrength() {
    BondJoint bond = MOUNT.bond().orElseThrow();
    DoubleFunction<Finding> at = side -> BondCheck.of("front", bond, bears(0, side)).get(0);
    double breaks = 100 / at.apply(100).value();
    passes(at, breaks, Judged.HOLDS, Judged.FAILS);
    assertThat(Looked.name(at.apply(breaks).said(), 2)).isEqualTo("hit");
    StudLoads stays = new StudLoads(new BondJoint.Load(0, 100), List.of());
    Finding creep = BondCheck.of("front", bond, stays).get(0);
    assertThat(Looked.name(creep.said(), 2)).as("the load that stays").isEmpty();
    // what stays is allowed less than what strikes, in the proportion of the two shares
    assertThat(creep.value() / at.apply(100).value())
        .isCloseTo(bond.derating().peakShare() / bond.derating().sustainedShare(), within(1e-9));
  }

  @Test
  void aThreadBearsTwiceItsLoadOrIsUpForDecision() {
    StudThread loose = Looked.withoutNut(THREAD, 0.15);
    double capacity = loose.strength().orElseThrow().capacity();
    DoubleFunction<Finding> at = pull -> ThreadCheck.of("front", loose, bears(pull, 0));
    passes(at, capacity / 2, Judged.HOLDS, Judged.DECIDE);
    passes(at, capacity, Judged.DECIDE, Judged.FAILS);
    assertThat(at.apply(-1.001 * capacity).judged())
        .as("pressed as pulled")
        .isEqualTo(Judged.FAILS);
    assertThat(at.apply(100).value()).isEqualTo(capacity);
    assertThat(at.apply(100).limit()).isEqualTo(200);
    assertThat(at.apply(1.001 * capacity).limit()).isEqualTo(1.001 * capacity);
    assertThat(at.apply(100).advice().isEmpty()).isTrue();
    assertThat(at.apply(capacity).advice().isEmpty()).isFalse();
  }

  @Test
  void theEngagementAdvisedGivesTheFactorWanted() {
    StudThread shallow =
        new StudThread(
            THREAD.limits(), 0.002, THREAD.screw(), THREAD.body(), 0.15, Optional.empty());
    double force = 0.7 * shallow.strength().orElseThrow().capacity();
    Finding f = ThreadCheck.of("front", shallow, bears(force, 0));
    assertThat(f.judged()).isEqualTo(Judged.DECIDE);
    assertThat(f.advice().key()).isEqualTo(Said.ENGAGE_MORE);
    double engagement = Looked.amount(f.advice(), 0);
    assertThat(engagement).isBetween(0.002, Looked.amount(f.advice(), 1));
    StudThread deeper =
        new StudThread(
            THREAD.limits(), engagement, THREAD.screw(), THREAD.body(), 0.15, Optional.empty());
    assertThat(deeper.strength().orElseThrow().capacity()).isCloseTo(2 * force, within(1e-6));
  }

  @Test
  void aDeepThreadBreaksTheScrewAndIsToldOtherwiseThanAShallowOne() {
    StudThread deep =
        new StudThread(
            THREAD.limits(), 0.05, THREAD.screw(), THREAD.body(), 0.15, Optional.empty());
    Finding f = ThreadCheck.of("front", deep, bears(1e6, 0));
    assertThat(Looked.term(f.said(), 3)).isEqualTo(ThreadStrength.Weakest.SCREW_BREAKS);
    assertThat(f.advice().key()).isEqualTo(Said.TIGHTEN_LESS);
    StudThread soft =
        new StudThread(
            THREAD.limits(),
            0.003,
            MaterialCatalog.standard().find("6061-T6").orElseThrow(),
            MaterialCatalog.standard().find("1045").orElseThrow(),
            0.15,
            Optional.empty());
    assertThat(Looked.term(ThreadCheck.of("front", soft, bears(1e6, 0)).said(), 3))
        .isEqualTo(ThreadStrength.Weakest.SCREW_STRIPS);
  }

  @Test
  void aSlipperyThreadWithoutANutDoesNotHoldItself() {
    double limit = THREAD.limits().thread().selfLockingFriction();
    DoubleFunction<Finding> at =
        mu -> ThreadCheck.of("front", Looked.withoutNut(THREAD, mu), bears(10, 0));
    assertThat(at.apply(0.99 * limit).judged()).isEqualTo(Judged.FAILS);
    assertThat(at.apply(0.99 * limit).said().key()).isEqualTo(Said.THREAD_SLIPS);
    assertThat(at.apply(1.01 * limit).judged()).isEqualTo(Judged.HOLDS);
    // a nut holds it however slippery it is
    StudThread nut =
        new StudThread(
            THREAD.limits(),
            THREAD.engagement(),
            THREAD.screw(),
            THREAD.body(),
            0.001,
            THREAD.lockNut());
    assertThat(ThreadCheck.of("front", nut, bears(10, 0)).said().key())
        .isEqualTo(Said.THREAD_BEARS);
  }

  @Test
  void aNutTakesUpThePlayWhenItPullsHarderThanTheLoadPresses() {
    double clamp = THREAD.lockNut().orElseThrow().clampForce();
    DoubleFunction<Finding> at =
        push -> LockNutCheck.of("front", THREAD, push, Double.POSITIVE_INFINITY).get(0);
    assertThat(at.apply(0.99 * clamp).judged()).isEqualTo(Judged.ADVICE);
    Finding slack = at.apply(1.01 * clamp);
    assertThat(slack.judged()).isEqualTo(Judged.FAILS);
    assertThat(slack.advice().key()).isEqualTo(Said.TIGHTEN_NUT);
    assertThat(LockNutCheck.of("front", THREAD, 0, Double.POSITIVE_INFINITY)).hasSize(1);
  }

  @Test
  void aHeightToleranceIsHeldAgainstTheNutAndAgainstTheHand() {
    double play = LockNutCheck.of("front", THREAD, 0, 1).get(0).value();
    DoubleFunction<Finding> nut = t -> LockNutCheck.of("front", THREAD, 0, t).get(0);
    assertThat(nut.apply(1.01 * play).judged()).isEqualTo(Judged.HOLDS);
    assertThat(nut.apply(1.01 * play).advice().isEmpty()).isTrue();
    assertThat(nut.apply(0.99 * play).judged()).isEqualTo(Judged.DECIDE);
    assertThat(nut.apply(0.99 * play).advice().key()).isEqualTo(Said.SET_LOCK_READ);
    assertThat(nut.apply(0.99 * play).limit()).isEqualTo(0.99 * play);
    // 40 threads to the inch, 2 deg of a turn: 3.53 um
    double step = 0.0254 / 40 * 2 / 360;
    DoubleFunction<Finding> hand = t -> LockNutCheck.of("front", THREAD, 0, t).get(1);
    assertThat(hand.apply(1).value()).isCloseTo(step, within(1e-12));
    assertThat(hand.apply(1.01 * step).judged()).isEqualTo(Judged.HOLDS);
    assertThat(hand.apply(1.01 * step).advice().isEmpty()).isTrue();
    assertThat(hand.apply(0.99 * step).judged()).isEqualTo(Judged.DECIDE);
    assertThat(hand.apply(0.99 * step).advice().key()).isEqualTo(Said.FINER_PITCH);
  }

  @Test
  void aRingOfContactIsToldTheSinkThatRoundnessMustStayUnder() {
    CouplingDesign stand = DesignFile.read(Starter.CONE_VEE_FLAT.text()).design().orElseThrow();
    Equilibrium standing = CouplingModel.of(stand).standing();
    List<Finding> found = RingContactCheck.of(standing);
    assertThat(found).hasSize(1);
    Finding ring = found.get(0);
    assertThat(ring.judged()).isEqualTo(Judged.ADVICE);
    assertThat(ring.subject().name()).isEqualTo(stand.supports().get(0).name());
    double least = Double.POSITIVE_INFINITY;
    double greatest = 0;
    double mean = 0;
    for (Equilibrium.Contact c : standing.contacts().subList(0, 3)) {
      least = Math.min(least, c.leastForce());
      greatest = Math.max(greatest, c.greatestForce());
      mean += c.force() / 3;
    }
    // the same sink and pressure from a whole ring that is pressed evenly: its axial force is the
    // sum of three thirds, each of which leans by the flank angle
    ConeSeat cone = (ConeSeat) stand.supports().get(0).seat();
    double radius = stand.supports().get(0).ball().radius();
    var pair = standing.contacts().get(0).hertz().elasticity();
    RingContact whole = RingContact.of(radius, cone.angle(), pair);
    double lean = Math.cos(cone.angle());
    double allRound = whole.peakPressure(3 * greatest * lean);
    double onThree =
        EllipticContact.of(RelativeCurvature.ballOnPlane(radius), pair).peakPressure(mean);
    assertThat(Looked.amount(ring.said(), 2)).isCloseTo(allRound, within(1e-3 * allRound));
    assertThat(Looked.amount(ring.said(), 3)).isCloseTo(onThree, within(1e-9 * onThree));
    assertThat(ring.value())
        .isCloseTo(standing.contacts().get(0).hertz().approach(least), within(1e-15));
    assertThat(ring.value()).isPositive();
    // the same cone told last
    List<Support> last = new ArrayList<>(stand.supports().subList(1, 3));
    last.add(stand.supports().get(0));
    Finding same =
        RingContactCheck.of(CouplingModel.of(stand.toBuilder().supports(last).build()).standing())
            .get(0);
    assertThat(same.subject().name()).isEqualTo(ring.subject().name());
    assertThat(same.value()).isCloseTo(ring.value(), within(1e-6 * ring.value()));
    // no cone, nothing to tell
    assertThat(
            RingContactCheck.of(
                CouplingModel.of(
                        DesignFile.read(Starter.SENSOR_MOUNT.text()).design().orElseThrow())
                    .standing()))
        .isEmpty();
  }
}
