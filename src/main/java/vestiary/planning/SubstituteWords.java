package vestiary.planning;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import vestiary.acceptance.AcceptedStep;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Need;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.Wearer;
import vestiary.web.NormWords;
import vestiary.web.Speech;

/**
 * Says who wears a lawful substitute that was accepted by name, which is worth knowing; and of one
 * that answers nothing any more that it has fallen away.
 */
final class SubstituteWords {

  private record Alike(Step step, Role role, boolean answers) {}

  private final DatedMass mass;
  private final SpanToCheck span;

  private SubstituteWords(DatedMass mass, SpanToCheck span) {
    this.mass = mass;
    this.span = span;
  }

  /** One finding for all who take the same at a Mass; none if nobody does. */
  static List<Clash> of(DatedMass mass, SpanToCheck span) {
    return new SubstituteWords(mass, span).clashes();
  }

  private List<Clash> clashes() {
    List<AcceptedStep> own =
        span.accepted().stream().filter(one -> one.wearer().mass().equals(mass.id())).toList();
    if (own.isEmpty()) {
      return List.of();
    }
    List<Need> needs = span.needsByNorm(mass);
    Map<Alike, List<AcceptedStep>> alike = new LinkedHashMap<>();
    own.forEach(
        one ->
            alike
                .computeIfAbsent(
                    new Alike(
                        one.step(), one.wearer().role(), needs.stream().anyMatch(one::answers)),
                    unknown -> new ArrayList<>())
                .add(one));
    return alike.entrySet().stream().map(e -> clash(e.getKey(), e.getValue())).toList();
  }

  private Clash clash(Alike alike, List<AcceptedStep> taken) {
    String about =
        "%s, %s, %s"
            .formatted(mass.church().name(), Speech.day(mass.date()), Speech.clock(mass.start()));
    return new Clash(
        ClashId.of(
            ClashKind.SHORTAGE,
            List.of(mass),
            "accepted",
            alike.step().id(),
            alike.role().id(),
            taken.stream()
                .map(one -> String.valueOf(one.wearer().ordinal()))
                .distinct()
                .collect(Collectors.joining(","))),
        ClashKind.SHORTAGE,
        ClashSeverity.KNOW,
        List.of(mass),
        alike.answers() ? words(about, alike, taken) : fallen(about, alike, taken),
        List.of());
  }

  private ClashWords words(String about, Alike alike, List<AcceptedStep> taken) {
    return new ClashWords(
        about,
        say(
            "%s, accepted on %s (%s)",
            worn(alike, taken), date(taken), NormWords.source(alike.step().source())),
        StepWords.worn(alike.step()),
        "",
        "");
  }

  private ClashWords fallen(String about, Alike alike, List<AcceptedStep> taken) {
    return new ClashWords(
        about,
        say(
            "%s: that was accepted on %s and counts no more, since the Mass was changed",
            worn(alike, taken), date(taken)),
        StepWords.worn(alike.step()) + say(": counts no more"),
        "",
        "");
  }

  private static String worn(Alike alike, List<AcceptedStep> taken) {
    return "%s %s"
        .formatted(Speech.sentence(who(alike.role(), taken)), StepWords.worn(alike.step()));
  }

  /** Those known by name, then how many others. */
  private static String who(Role role, List<AcceptedStep> taken) {
    Set<String> names = new LinkedHashSet<>();
    Set<Wearer> nameless = new LinkedHashSet<>();
    for (AcceptedStep one : taken) {
      if (one.person().isEmpty()) {
        nameless.add(one.wearer());
      } else {
        names.add(one.person());
      }
    }
    List<String> all = new ArrayList<>(names);
    if (!nameless.isEmpty()) {
      String noun = RoleWords.noun(role);
      all.add(RoleWords.isTheOne(role) ? Speech.the(noun) : Speech.count(nameless.size(), noun));
    }
    return Speech.list(all);
  }

  private String date(List<AcceptedStep> taken) {
    return Speech.dateAndYear(taken.get(0).at().atZone(span.cluster().zone()).toLocalDate());
  }
}
