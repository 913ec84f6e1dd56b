package vestiary.telling;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.people.Attendance;
import vestiary.people.Person;
import vestiary.planning.RoleAt;
import vestiary.schedule.DatedMass;

/** Says to one reader what has become of a Mass of theirs. */
final class ChangeWords {

  private final Tongue tongue;
  private final UUID reader;
  private final Map<UUID, Person> people;
  private final Map<UUID, Church> churches;
  private final java.time.ZoneId zone;
  private final Attendance attendance;

  ChangeWords(
      Tongue tongue,
      UUID reader,
      Map<UUID, Person> people,
      Map<UUID, Church> churches,
      java.time.ZoneId zone,
      Attendance attendance) {
    this.tongue = tongue;
    this.reader = reader;
    this.people = people;
    this.churches = churches;
    this.zone = zone;
    this.attendance = attendance;
  }

  /**
   * What is said; empty where nothing of it concerns the reader, or it is again as it was.
   *
   * @param now the Mass as it is; none if it is there no more
   */
  Optional<LetterView.Item> item(MassBefore before, Optional<DatedMass> now) {
    boolean was = !before.absent() && !before.wasCancelled() && wasNamed(before, now);
    boolean stands = now.filter(mass -> !mass.chosen().cancelled()).isPresent();
    boolean is = stands && PersonWeek.concerns(now.orElseThrow(), reader);
    List<String> lines = new ArrayList<>();
    if (was && now.isEmpty()) {
      lines.add(tongue.say("change.gone"));
    } else if (was && !stands) {
      lines.add(tongue.say("change.cancelled", tongue.whole(now.orElseThrow())));
    } else if (was && !is) {
      lines.add(taken(before, now.orElseThrow()));
    } else if (is) {
      changed(before, now.orElseThrow(), was, lines);
    }
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(new LetterView.Item(head(before, now), lines));
  }

  /** Where nobody noted who served, whoever serves now is taken to have done so. */
  private boolean wasNamed(MassBefore before, Optional<DatedMass> now) {
    return before.people().contains(reader)
        || !before.knowsWhoServed()
            && now.filter(mass -> RoleAt.serves(mass, reader).isPresent()).isPresent();
  }

  private void changed(MassBefore before, DatedMass mass, boolean was, List<String> lines) {
    if (!was) {
      lines.add(
          before.wasCancelled()
              ? tongue.say("change.restored")
              : tongue.say(before.absent() ? "change.new" : "change.given"));
      lines.add(
          tongue.deed(mass, reader, attendance)
              + ": "
              + tongue.say("what", tongue.whole(mass), tongue.colour(mass.colour())));
      return;
    }
    String wasAt = place(before);
    String isAt = place(mass);
    if (!wasAt.equals(isAt)) {
      lines.add(tongue.say("change.moved", wasAt, isAt));
    }
    Optional<UUID> celebrant = mass.findCelebrant().map(Person::id);
    if (!celebrant.equals(before.findCelebrant())) {
      lines.add(
          tongue.say("change.other-celebrant", named(before.findCelebrant()), named(celebrant)));
    }
    Term.find(Colour.class, before.colour())
        .filter(colour -> colour != mass.colour())
        .ifPresent(
            colour ->
                lines.add(
                    tongue.say(
                        "change.colour", tongue.colour(colour), tongue.colour(mass.colour()))));
  }

  private String taken(MassBefore before, DatedMass mass) {
    String instead =
        mass.findCelebrant()
            .filter(person -> before.findCelebrant().filter(reader::equals).isPresent())
            .map(person -> tongue.say("change.taken.by", tongue.called(person)))
            .orElse("");
    return tongue.say("change.taken", instead);
  }

  private String head(MassBefore before, Optional<DatedMass> now) {
    return now.map(this::place).orElseGet(() -> place(before));
  }

  private String place(MassBefore before) {
    ZonedDateTime start = before.starts().atZone(zone);
    String church = Optional.ofNullable(churches.get(before.church())).map(Church::name).orElse("");
    return "%s, %s".formatted(tongue.moment(start), church);
  }

  private String place(DatedMass mass) {
    return "%s, %s".formatted(tongue.moment(mass.start()), mass.church().name());
  }

  private String named(Optional<UUID> person) {
    return person
        .flatMap(id -> Optional.ofNullable(people.get(id)))
        .map(tongue::called)
        .orElseGet(() -> tongue.say("change.nobody"));
  }
}
