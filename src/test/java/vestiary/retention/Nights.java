package vestiary.retention;

import jakarta.enterprise.context.ApplicationScoped;
import vestiary.scenario.Scenario;

/** Lets a night pass in the default cluster. */
@ApplicationScoped
public class Nights {

  private final Scenario scenario;
  private final TidyUp tidy;

  Nights(Scenario scenario, TidyUp tidy) {
    this.scenario = scenario;
    this.tidy = tidy;
  }

  /** What is old goes, unless it went today already. */
  public void tidy() {
    scenario.within(scenario.ours(), tidy::today);
  }
}
