package vestiary.people;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out the form of one person. */
@ApplicationScoped
@Transactional
class PersonFormSheet {

  /** The hidden field by which a form that is overtaken is known. */
  static final String SEEN = "seen";

  /** Those that the form shows, by the names of their fields. */
  static final List<String> FIELDS =
      List.of(
          "name",
          "title",
          "role",
          "churches",
          "days",
          "languages",
          "mostADay",
          "wishes",
          "ownSet",
          "permittedWeekday",
          "permittedSunday",
          "grantedBy",
          "grantedOn",
          "responsible");

  private final FindPeople people;
  private final Children children;
  private final ReadMinistries ministries;
  private final ReadCluster cluster;
  private final Frames frames;

  PersonFormSheet(
      FindPeople people,
      Children children,
      ReadMinistries ministries,
      ReadCluster cluster,
      Frames frames) {
    this.people = people;
    this.children = children;
    this.ministries = ministries;
    this.cluster = cluster;
    this.frames = frames;
  }

  /** The form of somebody new, with what was typed so far. */
  PersonForm fresh(Entries typed, String problem) {
    return form(
        say("Somebody new"), "/people/new", new Link(say("Everybody"), "/people"), typed, problem);
  }

  /** The form of somebody as is known. */
  PersonForm stored(String slug) {
    Entries stored = entries(people.get(slug));
    return typed(slug, stored.with(SEEN, seen(slug)), "");
  }

  /**
   * @param seen what was seen of somebody when the form was opened; empty to change it anyway
   * @throws Refused if somebody else has changed it since
   */
  void refuseIfChangedSince(String slug, String seen) {
    if (!seen.isEmpty() && !seen.equals(seen(slug))) {
      throw new Refused(new Refusal.Outdated("this person"));
    }
  }

  /** The same in whatever language it is asked. */
  private String seen(String slug) {
    return SeenOfPerson.fingerprint(Speech.forTheRecord(() -> entries(people.get(slug))));
  }

  /** The form of somebody with what was typed over it. */
  PersonForm typed(String slug, Entries typed, String problem) {
    Person person = people.get(slug);
    String page = "/people/" + person.slug();
    return form(
        person.calledName(), page + "/change", new Link(person.name(), page), typed, problem);
  }

  private Entries entries(Person person) {
    Ministry ministry = ministries.of(person.id());
    Entries entries =
        Entries.empty()
            .with("name", person.name())
            .with("title", person.title())
            .with("role", person.role().id())
            .with("visiting", String.valueOf(person.isVisiting()))
            .with("churches", slugs(ministry))
            .with("days", ministry.days().stream().map(PersonBody::word).toArray(String[]::new))
            .with(
                "languages",
                String.join(", ", ministry.languages().stream().map(Tongues::name).toList()))
            .with("mostADay", ministry.mostADay() == 0 ? "" : String.valueOf(ministry.mostADay()))
            .with("wishes", ministry.wishes())
            .with("ownSet", ministry.ownSet());
    return withChild(person, withPermission(ministry, entries));
  }

  private static Entries withPermission(Ministry ministry, Entries entries) {
    return ministry
        .findPermission()
        .map(
            one ->
                entries
                    .with("permittedWeekday", String.valueOf(one.weekday()))
                    .with("permittedSunday", String.valueOf(one.sunday()))
                    .with("grantedBy", one.grantedBy())
                    .with("grantedOn", one.findGranted().map(String::valueOf).orElse("")))
        .orElse(entries);
  }

  private Entries withChild(Person person, Entries entries) {
    return children
        .find(person.id())
        .map(
            child ->
                entries
                    .with("name", child.wholeName())
                    .with("minor", "true")
                    .with("responsible", child.responsible()))
        .orElse(entries);
  }

  private String[] slugs(Ministry ministry) {
    return cluster.churches().stream()
        .filter(church -> ministry.churches().contains(church.id()))
        .map(Church::slug)
        .toArray(String[]::new);
  }

  private PersonForm form(String title, String action, Link back, Entries typed, String problem) {
    return new PersonForm(
        frames.of("settings", action),
        title,
        problem,
        action,
        typed.text(SEEN),
        typed.field("name"),
        typed.field("title"),
        typed.choice(
            "role",
            Stream.of(PersonRole.values())
                .map(
                    role ->
                        Choice.Option.of(role.id(), Speech.sentence(Speech.noun(1, role.id()))))),
        typed.isTicked("visiting"),
        ticks(
            typed,
            "churches",
            cluster.churches().stream().map(c -> Choice.Option.of(c.slug(), c.name()))),
        ticks(
            typed,
            "days",
            Arrays.stream(DayOfWeek.values())
                .map(
                    day ->
                        Choice.Option.of(
                            PersonBody.word(day),
                            day.getDisplayName(TextStyle.FULL, Speech.localeOr(Locale.ENGLISH))))),
        typed.field("languages"),
        typed.field("mostADay"),
        typed.field("wishes"),
        typed.field("ownSet"),
        typed.field("permittedWeekday"),
        typed.field("permittedSunday"),
        typed.field("grantedBy"),
        typed.field("grantedOn"),
        typed.isTicked("minor"),
        typed.field("responsible"),
        back);
  }

  private static Choice ticks(Entries typed, String field, Stream<Choice.Option> options) {
    List<String> ticked = typed.all(field);
    return new Choice(
        options
            .map(o -> new Choice.Option(o.value(), o.text(), ticked.contains(o.value())))
            .toList(),
        typed.error(field));
  }
}
