package crumbtrail.oven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.ode.nonstiff.EulerIntegrator;
import org.junit.jupiter.api.Test;

/** The step in place is the step of the library's integrator. */
class HeatFlowTest {
  @Test
  void stepsAsTheLibraryDoes() {
    Loaf loaf = Loaf.tin(900, 200, 100, 100);
    HeatFlow ours = flow(loaf);
    HeatFlow other = flow(loaf);
    double[] inPlace = ours.start(25);
    double[] library = other.start(25);
    EulerIntegrator euler = new EulerIntegrator(1);
    for (int step = 0; step < 300; step++) {
      double seconds = ours.step(inPlace);
      ours.advance(inPlace, seconds);
      library = euler.singleStep(other, 0, library, seconds);
      ours.boil(inPlace, Boiling.at(0));
      other.boil(library, Boiling.at(0));
    }
    assertThat(ours.temperature(inPlace, 0)).isGreaterThan(60);
    assertThat(inPlace).containsExactly(library, within(1e-9));
  }

  private static HeatFlow flow(Loaf loaf) {
    Constants usual = Constants.USUAL;
    Crumb crumb = new Crumb(loaf.density(), Boiling.at(0), usual.transport());
    HeatFlow flow = new HeatFlow(loaf, crumb, usual.skin());
    flow.surround(Surroundings.oven(loaf, OvenStage.still(60, 220), usual));
    return flow;
  }
}
