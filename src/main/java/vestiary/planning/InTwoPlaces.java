package vestiary.planning;

import static vestiary.web.Speech.say;

import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.allocation.celebrant.Overload;
import vestiary.allocation.celebrant.Pace;
import vestiary.allocation.celebrant.Stay;
import vestiary.allocation.celebrant.WhyNot;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.web.Speech;

/**
 * Says that somebody is named at two liturgies and cannot serve both. Where they overlap it cannot
 * stay so; where only the time between is too short a later start mends it. Another liturgy right
 * before or after a Mass in the same church is often meant so.
 */
final class InTwoPlaces {

  private final NamedPeople people;
  private final Person person;
  private final DatedMass first;
  private final DatedMass second;
  private final Overload.Both both;

  InTwoPlaces(
      NamedPeople people, Person person, DatedMass first, DatedMass second, Overload.Both both) {
    this.people = people;
    this.person = person;
    this.first = first;
    this.second = second;
    this.both = both;
  }

  Clash clash() {
    List<DatedMass> masses = List.of(first, second);
    return new Clash(
        ClashId.of(ClashKind.DOUBLE_BOOKED, masses, person.id().toString()),
        ClashKind.DOUBLE_BOOKED,
        severity(),
        masses,
        new ClashWords(
            CheckClashes.about(first),
            Speech.sentence(
                say(
                    "%s is named here and %s, and %s",
                    person.inWords(),
                    there(),
                    both.overlap() ? say("the two overlap") : say("cannot be there in time"))),
            person.tightName() + say(" twice"),
            more(),
            ""),
        List.of(),
        WhoElse.ways(masses, person));
  }

  private ClashSeverity severity() {
    if (both.overlap()) {
      return ClashSeverity.MUST;
    }
    boolean oneAfterTheOther =
        first.church().equals(second.church())
            && !(first.kind().isMass() && second.kind().isMass());
    return oneAfterTheOther ? ClashSeverity.KNOW : ClashSeverity.DECIDE;
  }

  private String there() {
    String there =
        first.church().equals(second.church())
            ? say("again at ") + Speech.clock(second.start())
            : WhoElse.which(second);
    return second.date().equals(first.date())
        ? there
        : there + say(" on ") + Speech.day(second.date());
  }

  private String more() {
    List<String> more = new ArrayList<>(List.of(why()));
    findLaterStart()
        .map(start -> say("From %s on it would do.", Speech.clock(start)))
        .ifPresent(more::add);
    WhoElse others = new WhoElse(people);
    Stream.of(first, second)
        .flatMap(one -> others.sentence(one, person).stream())
        .forEach(more::add);
    return String.join(" ", more);
  }

  private String why() {
    if (both.why() instanceof WhyNot.Before before) {
      ZonedDateTime leaves = first.end().plus(Pace.USUAL.after());
      return say(
          "He is here until %s (%s at %s)%s: he could begin there at %s at the earliest.",
          Speech.clock(leaves),
          MassWords.noun(first),
          Speech.clock(first.start()),
          road(before.journey()),
          Speech.clock(at(before.earliest())));
    }
    return say("No way between the two is known.");
  }

  private static String road(Duration journey) {
    return journey.isZero() ? "" : say(", %d minutes away", journey.toMinutes());
  }

  /** The earliest start of the second, if that day has room for it and he is free then. */
  private Optional<ZonedDateTime> findLaterStart() {
    return both.why() instanceof WhyNot.Before before
        ? Optional.of(before.earliest())
            .filter(start -> at(start).toLocalDate().equals(second.date()))
            .filter(start -> people.findWhyNot(person, second, moved(start)).isEmpty())
            .map(this::at)
        : Optional.empty();
  }

  private Stay moved(Instant start) {
    Stay stay = Serving.stay(second);
    return new Stay(stay.mass(), stay.church(), stay.date(), start, start.plus(second.length()));
  }

  private ZonedDateTime at(Instant moment) {
    return moment.atZone(second.start().getZone());
  }
}
