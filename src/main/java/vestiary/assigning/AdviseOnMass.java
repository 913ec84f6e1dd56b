package vestiary.assigning;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import vestiary.allocation.celebrant.MassToServe;
import vestiary.allocation.celebrant.Priest;
import vestiary.allocation.celebrant.PriestId;
import vestiary.allocation.celebrant.Question;
import vestiary.allocation.celebrant.Timetable;
import vestiary.allocation.celebrant.WaysOut;
import vestiary.cluster.CountBy;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;

/** Says who could celebrate a Mass, and what can be done where nobody can. */
@ApplicationScoped
class AdviseOnMass {

  /** Nobody says a parish Mass before or begins one after (common practice, no source). */
  private static final LocalTime FIRST_HOUR = LocalTime.of(6, 0);

  private static final LocalTime LAST_HOUR = LocalTime.of(21, 0);

  private final ReadScene read;

  AdviseOnMass(ReadScene read) {
    this.read = read;
  }

  /**
   * On a Mass as it is entered.
   *
   * @throws Refused if there is none of that id, or it is no Mass, which can. 905 does not count
   */
  Advice of(String id) {
    Scene scene = read.around(id);
    DatedMass mass =
        scene.masses().stream()
            .filter(one -> one.id().value().toString().equals(id))
            .findFirst()
            .orElseGet(() -> read.mass(id));
    if (!mass.kind().isMass()) {
      throw new Refused(
          new Refusal.AgainstRule(
              "mass",
              say(
                  "This is no Mass, so it is not counted with a priest’s Masses (can. 905) and nobody is looked for. Name whoever presides on its own page.")));
    }
    return of(scene, mass);
  }

  /** On a Mass as it is to be: it takes the place of the one of its id, if there is one. */
  Advice of(Scene all, DatedMass mass) {
    Scene scene = all.with(mass);
    return of(scene, mass, scene.asNow());
  }

  /**
   * On a Mass of a scene.
   *
   * @param given who celebrates what; what it says of the Mass itself is left aside
   */
  Advice of(Scene scene, DatedMass mass, Map<MassId, PriestId> given) {
    CountBy usual = scene.cluster().policies().countBy();
    CountBy other = usual == CountBy.CALENDAR ? CountBy.LITURGICAL : CountBy.CALENDAR;
    Map<MassId, PriestId> others = new HashMap<>(given);
    others.remove(mass.id());
    Side counted = new Side(Ask.about(scene, usual, mass.id()), mass.id(), others);
    Side otherwise = new Side(Ask.about(scene, other, mass.id()), mass.id(), others);
    List<Advice.Advised> priests =
        scene.priests().stream()
            .map(priest -> advised(priest, counted, otherwise))
            .sorted(Comparator.comparing(one -> scene.person(one.priest()).shortName()))
            .toList();
    return new Advice(
        scene,
        counted.mass(),
        counted.question().pace(),
        priests,
        priests.stream().anyMatch(Advice.Advised::can)
            ? Advice.Ways.NONE
            : ways(counted, mass, scene));
  }

  /** The question as days are counted in one of the two ways. */
  private record Side(
      Question question, MassToServe mass, Map<PriestId, Timetable> timetables, WaysOut out) {

    Side(Question question, MassId mass, Map<MassId, PriestId> others) {
      this(
          question,
          question.find(mass).orElseThrow(),
          Timetable.all(question, others),
          new WaysOut(question, others));
    }
  }

  private static Advice.Advised advised(Priest priest, Side counted, Side otherwise) {
    Timetable his = counted.timetables().get(priest.id());
    return new Advice.Advised(
        priest.id(),
        his.findWhyNot(counted.mass()).stream().toList(),
        count(priest, his, counted.mass()),
        count(priest, otherwise.timetables().get(priest.id()), otherwise.mass()),
        his.drive(counted.mass()),
        priest.celebratesIn(counted.mass().language()));
  }

  private static Advice.Count count(Priest priest, Timetable his, MassToServe mass) {
    int number = his.number(mass.id(), mass.day());
    return new Advice.Count(number, mass.day(), number > priest.most(mass.day()));
  }

  private static Advice.Ways ways(Side counted, DatedMass mass, Scene scene) {
    LocalTime evening = scene.cluster().calendar().evenings().from();
    boolean isEvening = !mass.start().toLocalTime().isBefore(evening);
    // On the other side of that hour it may be another day's Mass.
    LocalTime from = isEvening ? evening : FIRST_HOUR;
    LocalTime until = isEvening || isWholeDay(scene, mass) ? LAST_HOUR : evening.minusMinutes(1);
    return new Advice.Ways(
        counted.out().otherTimes(counted.mass(), at(mass, from), at(mass, until)),
        counted.out().exchanges(counted.mass()),
        counted.out().neighbours(counted.mass()));
  }

  private static Instant at(DatedMass mass, LocalTime time) {
    return mass.date().atTime(time).atZone(mass.start().getZone()).toInstant();
  }

  /** Whether the evening is still the day's own. */
  private static boolean isWholeDay(Scene scene, DatedMass mass) {
    return !scene.days().get(mass.church()).get(mass.date()).evening().tomorrow();
  }
}
