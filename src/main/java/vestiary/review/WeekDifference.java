package vestiary.review;

import static vestiary.web.Speech.say;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.web.Speech;

/** Tells what a week has that it had not when somebody signed it, and the other way round. */
final class WeekDifference {

  /**
   * @param mass of which something is said, or none where it is said of the week
   * @param date under which it stands
   * @param sentence one whole sentence
   */
  record Change(List<UUID> mass, LocalDate date, String sentence) {}

  private final WeekSeen before;
  private final WeekSeen now;
  private final Function<UUID, String> names;

  /**
   * @param names what a person is called now
   */
  WeekDifference(WeekSeen before, WeekSeen now, Function<UUID, String> names) {
    this.before = before;
    this.now = now;
    this.names = names;
  }

  /** By date; empty if the week reads as it did. */
  List<Change> changes() {
    Map<UUID, MassSeen> earlier = byId(before);
    Map<UUID, MassSeen> later = byId(now);
    Stream<Change> gone =
        before.masses().stream()
            .filter(mass -> !later.containsKey(mass.id()))
            .map(mass -> change(mass, say("is no longer said")));
    Stream<Change> there =
        now.masses().stream()
            .flatMap(
                mass ->
                    earlier.containsKey(mass.id())
                        ? changes(earlier.get(mass.id()), mass)
                        : Stream.of(change(mass, say("is new"))));
    return Stream.of(gone, there, clashes())
        .flatMap(Function.identity())
        .sorted(Comparator.comparing(Change::date))
        .toList();
  }

  private static Map<UUID, MassSeen> byId(WeekSeen week) {
    return week.masses().stream().collect(Collectors.toMap(MassSeen::id, Function.identity()));
  }

  private Stream<Change> changes(MassSeen was, MassSeen is) {
    List<String> said = new ArrayList<>();
    if (!was.start().equals(is.start()) || !was.church().equals(is.church())) {
      said.add(say("is now on %s", at(is)));
    }
    if (was.minutes() != is.minutes()) {
      said.add(say("takes %d minutes instead of %d", is.minutes(), was.minutes()));
    }
    instead(said, say("it is"), is.what(), was.what());
    instead(said, say("the colour is"), Speech.colour(is.colour()), Speech.colour(was.colour()));
    instead(said, say("the celebrant is"), celebrant(is), celebrant(was));
    instead(said, say("with him"), alone(is.company()), alone(was.company()));
    if (!Set.copyOf(was.serving()).equals(Set.copyOf(is.serving()))) {
      said.add(say("those who serve are others"));
    }
    instead(said, say("they wear"), worn(is), worn(was));
    if (was.vestments().equals(is.vestments()) && !was.journeys().equals(is.journeys())) {
      said.add(
          is.journeys().isEmpty()
              ? say("nothing is brought any more")
              : say("the journeys are others"));
    }
    return said.isEmpty() ? Stream.empty() : Stream.of(change(was, String.join("; ", said)));
  }

  private static void instead(List<String> said, String lead, String now, String before) {
    if (!now.equals(before)) {
      said.add(say("%s %s instead of %s", lead, now, before));
    }
  }

  private Change change(MassSeen mass, String what) {
    return new Change(
        List.of(mass.id()),
        mass.start().toLocalDate(),
        "%s, %s: %s.".formatted(mass.church(), clock(mass), what));
  }

  private Stream<Change> clashes() {
    Map<String, ClashSeen> earlier = clashesById(before);
    Map<String, ClashSeen> later = clashesById(now);
    Stream<Change> mended =
        before.clashes().stream()
            .filter(clash -> !later.containsKey(clash.id()))
            .map(clash -> ofWeek(say("No longer in the way: ") + told(clash)));
    Stream<Change> arisen =
        now.clashes().stream()
            .filter(clash -> !earlier.containsKey(clash.id()))
            .map(clash -> ofWeek(say("New in the way: ") + told(clash)));
    return Stream.concat(mended, arisen);
  }

  private static Map<String, ClashSeen> clashesById(WeekSeen week) {
    return week.clashes().stream().collect(Collectors.toMap(ClashSeen::id, Function.identity()));
  }

  private Change ofWeek(String sentence) {
    return new Change(List.of(), now.monday(), sentence);
  }

  private static String told(ClashSeen clash) {
    return "%s: %s.".formatted(clash.about(), clash.title());
  }

  private String celebrant(MassSeen mass) {
    return mass.celebrants().stream()
        .map(names)
        .findFirst()
        .orElse(mass.bishop() ? say("a bishop") : say("nobody"));
  }

  private static String alone(String company) {
    return company.isEmpty() ? say("nobody") : company;
  }

  private static String worn(MassSeen mass) {
    return mass.vestments().isEmpty() ? say("nothing planned") : Speech.list(mass.vestments());
  }

  private static String at(MassSeen mass) {
    return say("%s, %s, at %s", Speech.day(mass.start().toLocalDate()), clock(mass), mass.church());
  }

  private static String clock(MassSeen mass) {
    return "%02d:%02d".formatted(mass.start().getHour(), mass.start().getMinute());
  }
}
