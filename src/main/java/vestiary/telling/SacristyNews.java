package vestiary.telling;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.schedule.DatedMass;

/**
 * Says to a sacristan what has become of what they were told of one church; of the past nothing.
 */
final class SacristyNews {

  private final WeekSeen week;
  private final Tongue tongue;
  private final SacristanWeek whole;
  private final TroubleWords troubles;
  private final Instant now;

  SacristyNews(WeekSeen week, Tongue tongue, Instant now) {
    this.week = week;
    this.tongue = tongue;
    this.whole = new SacristanWeek(week, tongue, Map.of());
    this.troubles = new TroubleWords(week, tongue);
    this.now = now;
  }

  /** None where all is as it was. */
  List<LetterView.Section> sections(Church church, ChurchWeek before, ChurchWeek after) {
    RideNews rides = new RideNews(week, tongue, whole, now);
    return Stream.of(
            new LetterView.Section(church.name(), masses(before, after)),
            new LetterView.Section(
                tongue.say("leaves", church.name()), rides.items(before, after, true)),
            new LetterView.Section(
                tongue.say("comes", church.name()), rides.items(before, after, false)),
            new LetterView.Section(
                tongue.say("sacristy.troubles", church.name()), troubles(before, after)))
        .filter(section -> !section.items().isEmpty())
        .toList();
  }

  private List<LetterView.Item> masses(ChurchWeek before, ChurchWeek after) {
    Map<UUID, ChurchWeek.AtMass> was = byMass(before);
    Map<UUID, ChurchWeek.AtMass> is = byMass(after);
    return Stream.concat(
            before.masses().stream()
                .filter(mass -> !is.containsKey(mass.mass()) && isAhead(mass.starts()))
                .map(mass -> item(mass, List.of(tongue.say("sacristy.gone")))),
            after.masses().stream()
                .filter(mass -> isAhead(mass.starts()))
                .flatMap(
                    mass ->
                        was.containsKey(mass.mass())
                            ? changed(was.get(mass.mass()), mass).stream()
                            : entered(mass).stream()))
        .toList();
  }

  private static Map<UUID, ChurchWeek.AtMass> byMass(ChurchWeek of) {
    return of.masses().stream()
        .collect(Collectors.toMap(ChurchWeek.AtMass::mass, Function.identity()));
  }

  private Optional<LetterView.Item> entered(ChurchWeek.AtMass mass) {
    return find(mass.mass())
        .map(whole::mass)
        .map(
            item ->
                new LetterView.Item(
                    item.head(),
                    Stream.concat(Stream.of(tongue.say("change.new")), item.lines().stream())
                        .toList()));
  }

  private Optional<LetterView.Item> changed(ChurchWeek.AtMass was, ChurchWeek.AtMass is) {
    List<String> lines = new ArrayList<>();
    if (!was.starts().equals(is.starts())) {
      lines.add(tongue.say("change.moved", moment(was.starts()), moment(is.starts())));
    }
    if (!was.setOut().equals(is.setOut())) {
      lines.add(tongue.say("sacristy.setout", clock(was.setOut()), clock(is.setOut())));
    }
    if (!was.colour().equals(is.colour())) {
      lines.add(tongue.say("change.colour", colour(was.colour()), colour(is.colour())));
    }
    listed("sacristy.lay.now", is.lay(), was.lay()).ifPresent(lines::add);
    listed("sacristy.lay.not", was.lay(), is.lay()).ifPresent(lines::add);
    listed("sacristy.held.now", is.held(), was.held()).ifPresent(lines::add);
    listed("sacristy.held.not", was.held(), is.held()).ifPresent(lines::add);
    return lines.isEmpty() ? Optional.empty() : Optional.of(item(is, lines));
  }

  /** What is in the one list and not in the other. */
  private Optional<String> listed(String words, List<String> these, List<String> without) {
    List<String> left = these.stream().filter(name -> !without.contains(name)).toList();
    return left.isEmpty() ? Optional.empty() : Optional.of(tongue.say(words, tongue.list(left)));
  }

  private LetterView.Item item(ChurchWeek.AtMass mass, List<String> lines) {
    String celebration = find(mass.mass()).map(one -> ", " + tongue.whole(one)).orElse("");
    return new LetterView.Item(moment(mass.starts()) + celebration, lines);
  }

  private List<LetterView.Item> troubles(ChurchWeek before, ChurchWeek after) {
    return Stream.concat(
            without(after, before).map(troubles::standing),
            without(before, after).map(troubles::gone))
        .toList();
  }

  private Stream<ChurchWeek.Trouble> without(ChurchWeek these, ChurchWeek others) {
    return these.troubles().stream()
        .filter(one -> isAhead(one.starts()))
        .filter(
            one -> others.troubles().stream().noneMatch(two -> two.clash().equals(one.clash())));
  }

  private String colour(String id) {
    return Term.find(Colour.class, id).map(tongue::colour).orElse("");
  }

  private Optional<DatedMass> find(UUID mass) {
    return week.span().masses().stream().filter(one -> one.id().value().equals(mass)).findFirst();
  }

  private boolean isAhead(Instant moment) {
    return moment.isAfter(now);
  }

  private String moment(Instant moment) {
    return tongue.moment(week.local(moment));
  }

  private String clock(Instant moment) {
    return tongue.clock(week.local(moment));
  }
}
