package vestiary.planning;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.Instant;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Brings;
import vestiary.vesting.Grade;
import vestiary.vesting.Make;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.web.DayWords;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.NormWords;
import vestiary.web.Speech;

/** Sets out what everybody wears at one Mass, wearer by wearer, each piece with its norm. */
final class VestureSheet {

  private static final Map<String, String> GRADES =
      Map.of(
          Grade.FERIAL.id(), word("weekdays"),
          Grade.FESTIVE.id(), word("Sundays and feasts"),
          Grade.SOLEMN.id(), word("solemnities"));

  private final DatedMass mass;
  private final List<Need> needs;
  private final ZoneId zone;
  private final Locale locale;

  VestureSheet(DatedMass mass, List<Need> needs, ZoneId zone, Locale locale) {
    this.mass = mass;
    this.needs = List.copyOf(needs);
    this.zone = zone;
    this.locale = locale;
  }

  VestureView view(Frame frame) {
    return new VestureView(
        frame,
        "%s, %s, %s"
            .formatted(mass.church().name(), Speech.day(mass.date()), Speech.clock(mass.start())),
        say("Who wears what"),
        lead(),
        List.of(
            new Link(say("The Mass"), "/masses/" + mass.id().value()),
            new Link(say("The day"), "/day/" + mass.date())),
        wearers(),
        mass.brings().stream().map(VestureSheet::brought).toList(),
        unasked());
  }

  private String lead() {
    String what =
        "%s, %s."
            .formatted(
                Speech.sentence(MassWords.whole(mass, locale)), Speech.colour(mass.colour()));
    if (mass.chosen().cancelled()) {
      return what + say(" This Mass is cancelled; nothing is laid out.");
    }
    return needs.isEmpty()
        ? what + say(" Nothing is asked of the vestments of the cluster.")
        : say(
            "%s Set out by %s, put away by %s. %s",
            what,
            clock(needs.get(0).window().setOut()),
            clock(needs.get(0).window().cleared()),
            best());
  }

  /** The same for every piece of a Mass, but for the size of albs. */
  private String best() {
    Make make = needs.get(0).preferred();
    String shade =
        needs.stream()
            .map(n -> n.preferred().shade())
            .filter(s -> !s.isEmpty())
            .findFirst()
            .map(s -> say(", violet in the shade of ") + Speech.sentence(s))
            .orElse("");
    return say("Best are vestments meant for %s%s.", say(GRADES.get(make.grade())), shade);
  }

  private List<VestureView.Wearers> wearers() {
    Map<Role, List<Need>> byRole =
        needs.stream()
            .collect(
                Collectors.groupingBy(
                    Need::role, () -> new EnumMap<>(Role.class), Collectors.toList()));
    return byRole.entrySet().stream()
        .map(e -> new VestureView.Wearers(who(e.getKey(), e.getValue()), lines(e.getValue())))
        .toList();
  }

  private String who(Role role, List<Need> asked) {
    int persons = (int) asked.stream().map(Need::ordinal).distinct().count();
    if (!RoleWords.isTheOne(role)) {
      return Speech.sentence(Speech.count(persons, RoleWords.noun(role)));
    }
    String name = role == Role.DECEASED ? "" : MassWords.celebrant(mass);
    String one = Speech.sentence(Speech.the(RoleWords.noun(role)));
    return name.isEmpty() ? one : one + ", " + name;
  }

  private static List<VestureView.Line> lines(List<Need> asked) {
    Map<PieceKind, List<Need>> byKind =
        asked.stream()
            .collect(Collectors.groupingBy(Need::kind, TreeMap::new, Collectors.toList()));
    return byKind.values().stream().map(VestureSheet::line).toList();
  }

  private static VestureView.Line line(List<Need> alike) {
    Need one = alike.get(0);
    return new VestureView.Line(
        Speech.sentence(Speech.count(alike.size(), PieceNouns.of(one.kind()))),
        PieceNouns.hasColour(one.kind()) ? List.of(DayWords.ribbon(one.colour())) : List.of(),
        Speech.sentence(NormWords.source(one.source())),
        instead(one, alike.size()),
        sizes(alike));
  }

  private static String instead(Need need, int number) {
    if (!need.ladder().isEmpty()) {
      return need.ladder().stream()
          .map(step -> "%s (%s)".formatted(say(step.sentence()), NormWords.source(step.source())))
          .collect(Collectors.joining(say("; or "), say("Lawful instead: "), "."));
    }
    boolean one = number == 1;
    return need.isMust()
        ? say(one ? word("Nothing may stand in for it.") : word("Nothing may stand in for them."))
        : say(one ? word("It may be left out.") : word("They may be left out."));
  }

  private static String sizes(List<Need> alike) {
    List<String> sizes =
        alike.stream().map(n -> n.preferred().size()).filter(s -> !s.isEmpty()).toList();
    if (sizes.isEmpty()) {
      return "";
    }
    return say(
        sizes.size() == 1 ? word("Best in size %s.") : word("Best in sizes %s."),
        Speech.list(sizes));
  }

  private static String brought(Brings brings) {
    String who =
        RoleWords.isTheOne(brings.role())
            ? Speech.sentence(Speech.the(RoleWords.noun(brings.role())))
            : Speech.sentence(Speech.count(brings.count(), RoleWords.noun(brings.role())));
    String what =
        brings.kinds().isEmpty()
            ? "all"
            : Speech.list(
                brings.kinds().stream()
                    .sorted()
                    .map(kind -> Speech.noun(1, PieceNouns.of(kind)))
                    .toList());
    boolean one = RoleWords.isTheOne(brings.role()) || brings.count() == 1;
    return "%s %s %s.".formatted(who, one ? "brings" : "bring", what);
  }

  private String unasked() {
    return needs.stream().anyMatch(n -> n.kind() == PieceKind.ALB)
        ? ""
        : say(
            "Albs are not counted here: the list of vestments has none of this church, or the settings leave them out.");
  }

  private String clock(Instant moment) {
    return Speech.clock(moment.atZone(zone));
  }
}
