package vestiary.schedule;

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
import vestiary.web.English;

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
        "set aside",
        "They go along where they are free then, and are given up where they are not.",
        sentences);
    aside(of(found, "out"), "out", "They stay out until they are back.", sentences);
    ministers(masses, sentences);
    return sentences;
  }

  private static void planned(List<PlannedWear> planned, List<String> sentences) {
    long masses = planned.stream().map(one -> one.wearer().mass()).distinct().count();
    if (masses > 0) {
      sentences.add(
          "%s planned for %s: %s. The plan no longer fits; plan anew afterwards."
              .formatted(
                  pieces(planned.stream().map(PlannedWear::piece)),
                  English.count((int) masses, "Mass"),
                  named(planned.stream().map(PlannedWear::piece))));
    }
  }

  private static void aside(List<SetAside> aside, String how, String then, List<String> sentences) {
    if (!aside.isEmpty()) {
      sentences.add(
          "%s %s: %s. %s"
              .formatted(
                  pieces(aside.stream().map(SetAside::piece)),
                  how,
                  named(aside.stream().map(SetAside::piece)),
                  then));
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
                              known.get(entry.getKey()).calledName(),
                              English.count(entry.getValue(), "Mass")))
              .toList();
      sentences.add("Named at these Masses, and to be told: %s.".formatted(English.list(names)));
    }
  }

  private static List<SetAside> of(Taken found, String word) {
    return found.setAside().stream().filter(one -> one.word().equals(word)).toList();
  }

  private static String pieces(Stream<String> codes) {
    int count = (int) codes.distinct().count();
    return English.sentence(English.count(count, "piece")) + (count == 1 ? " is" : " are");
  }

  private static String named(Stream<String> codes) {
    List<String> all = codes.distinct().sorted().toList();
    return all.size() <= NAMED
        ? English.list(all)
        : String.join(", ", all.subList(0, NAMED)) + " and " + (all.size() - NAMED) + " more";
  }
}
