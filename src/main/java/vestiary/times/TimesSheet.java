package vestiary.times;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.telling.Tongue;
import vestiary.web.Frames;
import vestiary.web.Link;

/** Sets out what was published: a week of all churches or of one. */
@ApplicationScoped
@Transactional
class TimesSheet {

  static final String ADDRESS = "/times";

  private static final int DAYS = 7;

  private final PublishTimes publish;
  private final ReadCluster cluster;
  private final PressSheet press;
  private final CurrentVisitor visitor;
  private final Frames frames;

  TimesSheet(
      PublishTimes publish,
      ReadCluster cluster,
      PressSheet press,
      CurrentVisitor visitor,
      Frames frames) {
    this.publish = publish;
    this.cluster = cluster;
    this.press = press;
    this.visitor = visitor;
    this.frames = frames;
  }

  /**
   * A week of what was published.
   *
   * @param masses of the church that was asked for, or of all
   */
  record Week(
      Cluster cluster,
      Tongue tongue,
      LocalDate monday,
      List<PublicTimes.Mass> masses,
      List<PublicTimes.Gap> gaps) {

    LocalDate sunday() {
      return monday.plusDays(DAYS - 1L);
    }
  }

  /**
   * The page.
   *
   * @param note what is said to whoever publishes
   * @throws Refused if there is no such church, or the date is none
   */
  TimesView view(TimesAsked asked, PressSheet.Note note) {
    Optional<Published> found = publish.find();
    Week week = week(asked, found);
    TimesWords words = new TimesWords(week.tongue());
    Tongue tongue = week.tongue();
    boolean all = asked.church().isEmpty();
    return new TimesView(
        frames.of("times", asked.at(ADDRESS)),
        tongue.tag(),
        week.cluster().name(),
        tongue.say("times.title"),
        tongue.sentence(tongue.span(week.monday(), week.sunday())),
        turn(asked, week, found),
        choices(asked, week.cluster()),
        tongue.say("times.changes"),
        words.changes(week.masses(), week.gaps(), all),
        days(week, words, all),
        tongue.say("times.none"),
        found
            .map(one -> tongue.say("times.published", tongue.wholeDate(one.at().toLocalDate())))
            .orElse(""),
        visitor.visitor().may(Action.PUBLISH_TIMES) ? List.of(press.of(found, note)) : List.of());
  }

  /** What was published of the week that was asked for. */
  Week week(TimesAsked asked, Optional<Published> found) {
    Cluster here = cluster.cluster();
    if (!asked.church().isEmpty()) {
      cluster.getChurch(asked.church());
    }
    LocalDate monday = PublishTimes.monday(date(asked.week()));
    PublicTimes times = found.map(Published::times).orElse(new PublicTimes(List.of(), List.of()));
    return new Week(
        here,
        tongue(asked, here),
        monday,
        times.masses().stream()
            .filter(mass -> isIn(mass.date(), monday) && isOf(mass.church(), asked))
            .toList(),
        times.gaps().stream()
            .filter(gap -> isIn(gap.date(), monday) && isOf(gap.church(), asked))
            .toList());
  }

  /** That of the cluster, unless another is asked for. */
  static Tongue tongue(TimesAsked asked, Cluster here) {
    return asked.language().isEmpty()
        ? Tongue.of(here.language())
        : Tongue.of(Locale.forLanguageTag(asked.language()));
  }

  private LocalDate date(String typed) {
    if (typed.isEmpty()) {
      return publish.today();
    }
    Asked asked = new Asked();
    LocalDate date = asked.date("week", typed);
    if (asked.isFaulty()) {
      throw new Refused(new Refusal.NotThere("week", typed));
    }
    return date;
  }

  private static boolean isIn(LocalDate date, LocalDate monday) {
    return !date.isBefore(monday) && date.isBefore(monday.plusDays(DAYS));
  }

  private static boolean isOf(PublicTimes.Church church, TimesAsked asked) {
    return asked.church().isEmpty() || church.slug().equals(asked.church());
  }

  private static List<TimesView.Day> days(Week week, TimesWords words, boolean all) {
    Map<LocalDate, List<PublicTimes.Mass>> byDate =
        week.masses().stream()
            .collect(
                Collectors.groupingBy(PublicTimes.Mass::date, TreeMap::new, Collectors.toList()));
    return byDate.entrySet().stream()
        .map(
            entry ->
                new TimesView.Day(
                    week.tongue().sentence(week.tongue().day(entry.getKey())),
                    entry.getKey().getDayOfWeek() == DayOfWeek.SUNDAY,
                    entry.getValue().stream().map(mass -> mass(mass, words, all)).toList()))
        .toList();
  }

  private static TimesView.Mass mass(PublicTimes.Mass mass, TimesWords words, boolean all) {
    String place = mass.church().place();
    String church = place.isEmpty() ? mass.church().name() : mass.church().name() + ", " + place;
    return new TimesView.Mass(
        words.clock(mass.time()), all ? church : "", words.what(mass), words.difference(mass));
  }

  private static List<Link> turn(TimesAsked asked, Week week, Optional<Published> found) {
    List<Link> turn = new ArrayList<>();
    Tongue tongue = week.tongue();
    LocalDate before = week.monday().minusWeeks(1);
    LocalDate after = week.monday().plusWeeks(1);
    if (found.filter(one -> !one.first().isAfter(before.plusDays(DAYS - 1L))).isPresent()) {
      turn.add(
          new Link("← " + tongue.shortDay(before), asked.inWeek(before.toString()).at(ADDRESS)));
    }
    if (found.filter(one -> !one.last().isBefore(after)).isPresent()) {
      turn.add(new Link(tongue.shortDay(after) + " →", asked.inWeek(after.toString()).at(ADDRESS)));
    }
    turn.add(new Link(tongue.say("times.to.bulletin"), asked.at("/times/bulletin.txt")));
    if (!asked.church().isEmpty()) {
      turn.add(new Link(tongue.say("times.to.door"), asked.at("/times/door")));
    }
    turn.add(new Link(tongue.say("times.to.feed"), asked.inWeek("").at("/feeds/times.ics")));
    return turn;
  }

  private List<TimesView.Choice> choices(TimesAsked asked, Cluster here) {
    Tongue tongue = tongue(asked, here);
    Stream<TimesView.Choice> churches =
        Stream.concat(
            Stream.of(
                new TimesView.Choice(
                    new Link(tongue.say("times.all-churches"), asked.of("").at(ADDRESS)),
                    asked.church().isEmpty())),
            cluster.churches().stream()
                .map(
                    church ->
                        new TimesView.Choice(
                            new Link(church.name(), asked.of(church.slug()).at(ADDRESS)),
                            church.slug().equals(asked.church()))));
    Stream<TimesView.Choice> languages =
        Tongue.ALL.stream()
            .filter(locale -> !locale.getLanguage().equals(tongue.locale().getLanguage()))
            .map(
                locale ->
                    new TimesView.Choice(
                        new Link(
                            tongue.sentence(locale.getDisplayLanguage(locale)),
                            asked.in(locale.toLanguageTag()).at(ADDRESS)),
                        false));
    return Stream.concat(churches, languages).toList();
  }
}
