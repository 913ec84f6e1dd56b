package vestiary.planning;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Comparator;
import java.util.List;
import vestiary.schedule.DatedMass;
import vestiary.schedule.MassForm;
import vestiary.schedule.MassWarnings;
import vestiary.web.Link;

/** Checks the day of a Mass at once, for the page that has just saved it. */
@ApplicationScoped
class ClashesOfMass implements MassWarnings {

  private final CheckClashes check;

  ClashesOfMass(CheckClashes check) {
    this.check = check;
  }

  @Override
  public List<MassForm.Found> of(DatedMass mass) {
    return check.between(mass.date(), mass.date()).stream()
        .filter(c -> c.concerns(mass))
        .sorted(Comparator.comparing(Clash::severity))
        .map(
            c ->
                new MassForm.Found(
                    c.severity().mark(), c.words().told(), new Link(say("See why"), c.address())))
        .toList();
  }
}
