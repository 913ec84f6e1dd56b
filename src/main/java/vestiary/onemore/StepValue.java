package vestiary.onemore;

import java.time.Instant;
import vestiary.acceptance.AcceptedStep;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.Wearer;

/** A lawful substitute that somebody took, as the row has it. */
record StepValue(int ordinal, String kind, String colour, String step) {

  static StepValue of(Way.Taken taken) {
    return new StepValue(
        taken.need().ordinal(),
        taken.need().kind().id(),
        taken.need().colour().id(),
        taken.step().id());
  }

  Step toStep() {
    return Term.find(Step.class, step).orElseThrow();
  }

  AcceptedStep accepted(MassId mass, ChurchId church, Role role, String by, Instant at) {
    return new AcceptedStep(
        new Wearer(mass, role, ordinal),
        Term.find(PieceKind.class, kind).orElseThrow(),
        church,
        Term.find(Colour.class, colour).orElseThrow(),
        toStep(),
        "",
        by,
        at);
  }
}
