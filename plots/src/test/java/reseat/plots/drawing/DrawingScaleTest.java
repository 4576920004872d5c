package reseat.plots.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.design.CouplingDesign;
import reseat.equilibrium.ContactLines;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.LiftOff;
import reseat.plots.ExampleDesigns;
import reseat.plots.Picture;
import reseat.plots.scene.LineStyle;
import reseat.plots.scene.Mark;
import reseat.plots.scene.Point;
import reseat.plots.scene.Tone;

/** Whether drawings are to scale, and show what the results say. */
class DrawingScaleTest {

  private static List<Mark.Oval> balls(Picture p) {
    return p.scene().marks().stream()
        .filter(Mark.Oval.class::isInstance)
        .map(Mark.Oval.class::cast)
        .filter(o -> o.fill().tone() == Tone.SKY && o.fill().opacity() > 0)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void ballsInThePlanHaveTheirPlacesAndSizesAtOneScale(int which) {
    CouplingDesign d = ExampleDesigns.all().get(which);
    List<Mark.Oval> drawn = balls(PlanView.draw(d, List.of(), List.of(), DrawingUnits.BOTH));
    assertThat(drawn).hasSize(3);
    double scale = drawn.get(0).rx() / d.supports().get(0).ball().radius();
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < 3; k++) {
        double real =
            d.supports().get(i).ball().centre().distanceTo(d.supports().get(k).ball().centre());
        double onSheet = drawn.get(i).centre().distanceTo(drawn.get(k).centre());
        assertThat(onSheet / scale).isCloseTo(real, within(1e-9));
      }
      double up = drawn.get(0).centre().y() - drawn.get(i).centre().y();
      double realUp =
          d.supports().get(i).ball().centre().y() - d.supports().get(0).ball().centre().y();
      assertThat(up / scale).as("y points up").isCloseTo(realUp, within(1e-9));
    }
  }

  @Test
  void thePatchInTheSectionIsAsLongAsTheResultSays() {
    CouplingDesign d = ExampleDesigns.toolPost();
    List<Equilibrium.Contact> contacts = ExampleDesigns.contacts(d, 0);
    Picture p = SeatSection.draw("s", d.supports().get(0), contacts, DrawingUnits.BOTH);
    double scale = balls(p).get(0).rx() / d.supports().get(0).ball().radius();
    Mark.Path patch =
        p.scene().marks().stream()
            .filter(Mark.Path.class::isInstance)
            .map(Mark.Path.class::cast)
            .filter(m -> m.line().equals(SectionContact.PATCH))
            .findFirst()
            .orElseThrow();
    List<Point> ends = patch.parts().get(0);
    double a = contacts.get(0).hertz().semiMajor(contacts.get(0).force());
    assertThat(ends.get(0).distanceTo(ends.get(1)) / scale).isCloseTo(2 * a, within(1e-9));
  }

  @Test
  void contactsInTheSectionTouchTheBallAndTheFlank() {
    CouplingDesign d = ExampleDesigns.toolPost();
    for (SectionContact c : SectionContact.of(d.supports().get(0), ExampleDesigns.contacts(d, 0))) {
      Point ball =
          SeatProfile.inCut(d.supports().get(0).seat(), d.supports().get(0).ball().centre());
      assertThat(c.at().distanceTo(ball)).isCloseTo(0.00635, within(1e-12));
      // On a flank at 45 degrees through the apex, height equals distance from the middle.
      assertThat(c.at().y()).isCloseTo(Math.abs(c.at().x()), within(1e-12));
      // Flank called left lies on the left when seen along the groove.
      assertThat(Math.signum(c.at().x())).isEqualTo(c.flank().startsWith("left") ? -1 : 1);
    }
  }

  @Test
  void theLiftOffMapComesAsNearToTheMiddleAsTheWeakestForce() {
    CouplingDesign d = ExampleDesigns.toolPost();
    Picture p = PolarLiftOff.of(d, DrawingUnits.BOTH);
    LiftOff liftOff = new LiftOff(ContactLines.nominal(d), d.standingLoad());
    Mark.Oval ring =
        p.scene().marks().stream()
            .filter(Mark.Oval.class::isInstance)
            .map(Mark.Oval.class::cast)
            .filter(o -> o.line().equals(LineStyle.THIN))
            .findFirst()
            .orElseThrow();
    Mark.Oval weakest =
        p.scene().marks().stream()
            .filter(Mark.Oval.class::isInstance)
            .map(Mark.Oval.class::cast)
            .filter(o -> o.fill().tone() == Tone.BLUE && o.fill().opacity() == 1)
            .findFirst()
            .orElseThrow();
    double share = weakest.centre().distanceTo(ring.centre()) / ring.rx();
    double angle = ring.centre().angleTo(weakest.centre());
    double force =
        liftOff
            .forceAlong(d.toolPoint(), new reseat.space.Vec3(Math.cos(angle), Math.sin(angle), 0))
            .factor();
    assertThat(800 * share).isCloseTo(force, within(1e-6));
  }

  @Test
  void hatchingStaysInsideItsPolygon() {
    List<Point> vee =
        List.of(
            new Point(0, 0),
            new Point(40, 60),
            new Point(80, 0),
            new Point(120, 0),
            new Point(120, 100),
            new Point(0, 100));
    Mark.Path lines = (Mark.Path) Hatch.of(vee, 7, false).orElseThrow();
    double length = 0;
    for (List<Point> part : lines.parts()) {
      Point middle = part.get(0).plus(part.get(1)).times(0.5);
      assertThat(middle.y() >= 0 && middle.y() <= 100).isTrue();
      boolean inGap = middle.x() < 80 && middle.y() < 60 - 1.5 * Math.abs(middle.x() - 40);
      assertThat(inGap).as("in the gap at " + middle).isFalse();
      length += part.get(0).distanceTo(part.get(1));
    }
    // Area by the trapezium rule of the lines: length times pitch; true area 12000 - 2400.
    assertThat(length * 7).isCloseTo(9600, within(300.0));
  }
}
