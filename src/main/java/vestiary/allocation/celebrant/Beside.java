package vestiary.allocation.celebrant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.vesting.MassId;

/** Another priest beside the one who is given a Mass, all else staying as it is. */
public sealed interface Beside {

  PriestId priest();

  /** He cannot take it. */
  record Cannot(PriestId priest, WhyNot why) implements Beside {}

  /**
   * He could, and the division would be worse.
   *
   * @param level the weightiest that differs
   * @param more how much more it would be
   */
  record Worse(PriestId priest, Level level, long more) implements Beside {}

  /** He could, and it would be as good, or better if it were not for other Masses. */
  record Alike(PriestId priest) implements Beside {}

  /** What a division is judged by, the weightiest first, as in {@link Levels}. */
  enum Level {
    UNSERVED_FIRST,
    UNSERVED,
    BEYOND_ONE,
    NOT_AS_ASKED,
    OTHER_TONGUE,
    MINUTES,
    WORST_SHARE,
    SQUARES,
    CHANGES
  }

  /** Each of the other priests, in the order of their ids. */
  static List<Beside> all(Question question, Map<MassId, PriestId> given, MassToServe mass) {
    Map<PriestId, Timetable> timetables = Timetable.all(question, given);
    List<Beside> all = new ArrayList<>();
    for (Priest priest : question.priests()) {
      if (!priest.id().equals(given.get(mass.id()))) {
        Optional<WhyNot> why = timetables.get(priest.id()).findWhyNot(mass);
        all.add(
            why.isPresent()
                ? new Cannot(priest.id(), why.get())
                : instead(question, given, mass, priest.id()));
      }
    }
    return all;
  }

  private static Beside instead(
      Question question, Map<MassId, PriestId> given, MassToServe mass, PriestId other) {
    Map<MassId, PriestId> otherwise = new HashMap<>(given);
    otherwise.put(mass.id(), other);
    Reckoning reckoning = new Reckoning(question);
    List<Long> is = reckoning.levels(given).asList();
    List<Long> wouldBe = reckoning.levels(otherwise).asList();
    for (Level level : Level.values()) {
      long more = wouldBe.get(level.ordinal()) - is.get(level.ordinal());
      if (more != 0) {
        return more > 0 ? new Worse(other, level, more) : new Alike(other);
      }
    }
    return new Alike(other);
  }
}
