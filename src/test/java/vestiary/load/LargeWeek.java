package vestiary.load;

import java.util.List;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;

/** The week that plans are measured by, and the same before a change. */
final class LargeWeek {

  private static final long SEED = 20270607;

  private LargeWeek() {}

  static Situation of(int churches, int masses, int sets) {
    return Situation.of(RandomWeek.of(churches, masses, sets, SEED));
  }

  static Situation withoutOneMass(Situation situation) {
    Span span = situation.span();
    MassId mass = span.needs().get(0).mass();
    List<Need> others = span.needs().stream().filter(need -> !need.mass().equals(mass)).toList();
    return situation.with(new Span(others, span.pieces(), span.journeys(), span.policies()));
  }
}
