package vestiary.schedule;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.pool.PlannedWear;
import vestiary.pool.ReadTaken;
import vestiary.pool.SetAside;
import vestiary.pool.Taken;
import vestiary.vesting.MassId;
import vestiary.web.Speech;

/** What hangs on Masses that move or are said no more: vestments, holds, ministers. */
@ApplicationScoped
class TouchedThings {

  private static final int NAMED = 12;

  private final ReadTaken taken;
  private final FindPeople people;

  TouchedThings(ReadTaken taken, FindPeople people) {
    this.taken = taken;
    this.people = people;
  }

  /** In whole sentences; empty if nothing hangs on them. */
  List<String> by(List<MassRow> masses) {
    Taken found = taken.forMasses(masses.stream().map(mass -> new MassId(mass.id)).toList());
    List<String> sentences = new ArrayList<>();
    planned(found.planned(), sentences);
    aside(
        of(found, "held"),
        word(
            "%s is set aside: %s. They go along where they are free then, and are given up where they are not."),
        word(
            "%s are set aside: %s. They go along where they are free then, and are given up where they are not."),
        sentences);
    aside(
        of(found, "out"),
        word("%s is out: %s. They stay out until they are back."),
        word("%s are out: %s. They stay out until they are back."),
        sentences);
    ministers(masses, sentences);
    return sentences;
  }

  private static void planned(List<PlannedWear> planned, List<String> sentences) {
    long masses = planned.stream().map(one -> one.wearer().mass()).distinct().count();
    if (masses > 0) {
      sentences.add(
          say(
              isOne(planned.stream().map(PlannedWear::piece))
                  ? word("%s is planned for %s: %s. The plan no longer fits; plan anew afterwards.")
                  : word(
                      "%s are planned for %s: %s. The plan no longer fits; plan anew afterwards."),
              pieces(planned.stream().map(PlannedWear::piece)),
              Speech.count((int) masses, "Mass"),
              named(planned.stream().map(PlannedWear::piece))));
    }
  }

  /**
   * Says where they are.
   *
   * @param one of one piece
   * @param many of several
   */
  private static void aside(List<SetAside> aside, String one, String many, List<String> sentences) {
    if (!aside.isEmpty()) {
      sentences.add(
          say(
              isOne(aside.stream().map(SetAside::piece)) ? one : many,
              pieces(aside.stream().map(SetAside::piece)),
              named(aside.stream().map(SetAside::piece))));
    }
  }

  private void ministers(List<MassRow> masses, List<String> sentences) {
    Map<UUID, Integer> counts = new LinkedHashMap<>();
    masses.stream()
        .flatMap(
            mass -> Stream.concat(Stream.of(mass.namedIds), Stream.ofNullable(mass.celebrantId)))
        .filter(Objects::nonNull)
        .forEach(id -> counts.merge(id, 1, Integer::sum));
    if (!counts.isEmpty()) {
      Map<UUID, Person> known = people.byId();
      List<String> names =
          counts.entrySet().stream()
              .filter(entry -> known.containsKey(entry.getKey()))
              .map(
                  entry ->
                      "%s (%s)"
                          .formatted(
                              known.get(entry.getKey()).inWords(),
                              Speech.count(entry.getValue(), "Mass")))
              .toList();
      sentences.add(say("Named at these Masses, and to be told: %s.", Speech.list(names)));
    }
  }

  private static List<SetAside> of(Taken found, String word) {
    return found.setAside().stream().filter(one -> one.word().equals(word)).toList();
  }

  private static String pieces(Stream<String> codes) {
    return Speech.sentence(Speech.count((int) codes.distinct().count(), "piece"));
  }

  private static boolean isOne(Stream<String> codes) {
    return codes.distinct().count() == 1;
  }

  private static String named(Stream<String> codes) {
    List<String> all = codes.distinct().sorted().toList();
    return all.size() <= NAMED
        ? Speech.list(all)
        : String.join(", ", all.subList(0, NAMED)) + say(" and %d more", all.size() - NAMED);
  }
}
