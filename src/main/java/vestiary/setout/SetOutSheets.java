package vestiary.setout;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.Cluster;
import vestiary.planning.MassWords;
import vestiary.planning.PieceNouns;
import vestiary.planning.RoleWords;
import vestiary.planning.WearerNames;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ServingWords;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.web.DayWords;
import vestiary.web.Link;
import vestiary.web.NormWords;
import vestiary.web.Speech;

/** Sets out in words what lies on the table for each Mass. */
final class SetOutSheets {

  private static final String NOTHING_NAMED =
      word(
          "No plan says yet who wears what: below stands what is asked for, and what is free here.");

  private final Instant now;
  private final ZoneId zone;
  private final Locale locale;

  /**
   * @param now decides what can be said and asked for at a Mass
   */
  SetOutSheets(Cluster cluster, Instant now) {
    this.now = now;
    this.zone = cluster.zone();
    this.locale = Speech.localeOr(cluster.language());
  }

  SetOutView.Sheet sheet(SetOut found) {
    DatedMass mass = found.mass();
    return new SetOutView.Sheet(
        "/masses/" + mass.id().value(),
        mass.church().id().value().toString(),
        String.valueOf(mass.date().getDayOfMonth()),
        mass.isOnHolyDay(),
        over(mass),
        say(
            "Set out by %s for %s at %s",
            clock(found.window().setOut()),
            mass.kind().isMass() ? say("Mass") : MassWords.whole(mass, locale),
            Speech.clock(mass.start())),
        List.of(mass.colour()),
        DayWords.ribbon(mass.colour()),
        DayWords.celebrated("", mass.option().celebration(), locale),
        what(mass),
        NormWords.of(mass.option().why()),
        mass.chosen().note(),
        Speech.sentence(ServingWords.of(mass)),
        found.named() ? "" : say(NOTHING_NAMED),
        piles(found),
        beside(found),
        found.spares().stream().map(SetOutSheets::spare).toList(),
        found.coming().stream().map(this::coming).toList(),
        also(mass),
        found.asked().stream()
            .map(
                person ->
                    new SetOutView.Asked(
                        person.slug(), say("How tall is %s, in cm?", person.inWords())))
            .toList(),
        ways(mass));
  }

  /** Until it is over somebody may come, and from its beginning on it can be said what is worn. */
  private List<Link> ways(DatedMass mass) {
    String address = "/masses/" + mass.id().value();
    List<Link> ways = new ArrayList<>();
    if (mass.end().toInstant().isAfter(now)) {
      ways.add(new Link(say("One more has come"), address + "/one-more"));
    }
    if (!mass.start().toInstant().isAfter(now)) {
      ways.add(new Link(say("What was worn"), address + "/worn"));
    }
    return ways;
  }

  static String over(DatedMass mass) {
    String place = mass.church().place();
    return "%s%s · %s"
        .formatted(
            mass.church().name(),
            place.isEmpty() ? "" : ", " + place,
            say("%s %d", Speech.day(mass.date()), mass.date().getYear()));
  }

  /** What kind of Mass it is, where the celebration does not say it. */
  private String what(DatedMass mass) {
    String name = mass.option().celebration().name().in(locale);
    String whole = MassWords.whole(mass, locale);
    return whole.equals(name)
        ? ""
        : Speech.sentence(whole.replace(", " + name, "").replace(name + ", ", ""));
  }

  /** The ordained one by one, those of each lay ministry together. */
  private static List<SetOutView.Pile> piles(SetOut found) {
    Map<Role, List<SetOut.Vested>> lay = new LinkedHashMap<>();
    List<SetOutView.Pile> piles = new ArrayList<>();
    for (SetOut.Vested person : found.people()) {
      if (person.wearer().role().isLay()) {
        lay.computeIfAbsent(person.wearer().role(), role -> new ArrayList<>()).add(person);
      } else if (!person.laid().isEmpty()) {
        piles.add(
            new SetOutView.Pile(
                person.who(), role(found.mass(), person), LineWords.lines(person.laid())));
      }
    }
    lay.forEach((role, people) -> piles.add(together(role, people)));
    return piles;
  }

  /** A name alone does not say in what capacity; a number does. */
  private static String role(DatedMass mass, SetOut.Vested person) {
    return WearerNames.find(mass, person.wearer()).isEmpty()
        ? ""
        : switch (person.wearer().role()) {
          case PRINCIPAL -> say("Principal celebrant");
          default -> Speech.sentence(Speech.noun(1, RoleWords.noun(person.wearer().role())));
        };
  }

  private static SetOutView.Pile together(Role role, List<SetOut.Vested> people) {
    Map<SetOutView.Line, Long> counted =
        people.stream()
            .flatMap(person -> LineWords.lines(person.laid()).stream())
            .collect(
                Collectors.groupingBy(line -> line, LinkedHashMap::new, Collectors.counting()));
    return new SetOutView.Pile(
        Speech.sentence(Speech.count(people.size(), RoleWords.noun(role))),
        say("alb or other approved dress (GIRM 119, 339)"),
        counted.entrySet().stream().map(e -> times(e.getKey(), e.getValue())).toList());
  }

  private static SetOutView.Line times(SetOutView.Line line, long count) {
    return count == 1
        ? line
        : new SetOutView.Line(
            "%s × %d".formatted(line.what(), count),
            line.ribbons(),
            line.where(),
            line.note(),
            line.state(),
            line.isLaid());
  }

  private static List<SetOutView.Pile> beside(SetOut found) {
    return found.people().stream()
        .filter(person -> !person.beside().isEmpty())
        .map(person -> new SetOutView.Pile(person.who(), "", LineWords.lines(person.beside())))
        .toList();
  }

  private static SetOutView.Spare spare(SetOut.Spare spare) {
    return new SetOutView.Spare(
        Speech.sentence(Speech.noun(1, PieceNouns.of(spare.kind()))),
        PieceNouns.hasColour(spare.kind()) ? List.of(DayWords.ribbon(spare.colour())) : List.of(),
        spare.free().isEmpty()
            ? say("none is free here")
            : say("free here: ")
                + Speech.list(
                    spare.free().stream()
                        .map(piece -> piece.code() + LineWords.size(piece))
                        .toList()),
        spare.ladder().stream().map(SetOutSheets::lawful).collect(Collectors.joining("; ")));
  }

  private static String lawful(Step step) {
    return "%s (%s)".formatted(say(step.sentence()), NormWords.source(step.source()));
  }

  private SetOutView.Coming coming(SetOut.Coming coming) {
    return new SetOutView.Coming(
        Speech.list(coming.pieces()),
        say(
            "from %s, %s%s",
            coming.from(),
            coming.carrier().isEmpty() ? "" : coming.carrier() + ", ",
            clock(coming.arriveBy())),
        coming.back());
  }

  /**
   * For an entrance procession, with incense on Sundays and feasts: GIRM 119. The look at the
   * pieces afterwards: common practice, no source.
   */
  private static List<String> also(DatedMass mass) {
    boolean solemn = mass.isOnHolyDay();
    return Stream.of(
            mass.kind().isMass()
                ? say(
                    "with an entrance procession: cross, candlesticks, Book of the Gospels%s",
                    solemn ? say(", thurible and boat if incense is used") : "")
                : "",
            say("afterwards: neck, hem and front looked at for wax, wine and make-up"))
        .filter(line -> !line.isEmpty())
        .toList();
  }

  private String clock(Instant moment) {
    ZonedDateTime local = moment.atZone(zone);
    return Speech.clock(local);
  }
}
