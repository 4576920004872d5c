package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.seat.Ball;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** The stiffness told for the tool point against differences of exact states of rest. */
class ToolStiffnessTest {

  /** The tool post with its first ball too high or too low. */
  private static CouplingDesign post(double off) {
    CouplingDesign post = DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow();
    List<Support> supports = new ArrayList<>(post.supports());
    Support s = supports.get(0);
    Vec3 centre = s.ball().centre().plus(new Vec3(0, 0, off));
    supports.set(0, s.withBall(new Ball(centre, s.ball().radius())));
    return post.toBuilder().supports(supports).build();
  }

  @ParameterizedTest
  @CsvSource({"0", "0.0007", "-0.0007"})
  void aForceOnTheToolMovesTheToolByTheStiffnessTold(double off) {
    CouplingDesign design = post(off);
    SeatedCheck check = (SeatedCheck) CheckStudy.run(design);
    CouplingModel model = CouplingModel.of(design);
    Equilibrium standing = model.standing();
    Vec3 tool = standing.placeOf(design.toolPoint());
    assertThat(tool.distanceTo(design.toolPoint())).isGreaterThanOrEqualTo(0.5 * Math.abs(off));
    Vec3 told = check.frictionless().toolPoint().alongAxes();
    double force = 0.05;
    for (int k = 0; k < 3; k++) {
      Vec3 along = design.axes().axis(k).direction();
      Wrench extra = Wrench.ofForce(along.times(force), tool);
      Vec3 there = model.equilibriumUnder(standing.load().plus(extra)).placeOf(design.toolPoint());
      Vec3 back = model.equilibriumUnder(standing.load().plus(extra.times(-1))).placeOf(design.toolPoint());
      double expected = 2 * force / there.minus(back).dot(along);
      assertThat(told.component(k)).isCloseTo(expected, within(1e-4 * expected));
    }
  }
}
