package vestiary.telling;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.mail.LetterKind;
import vestiary.mail.MailServer;
import vestiary.mail.ReaderAddresses;
import vestiary.people.Attendance;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.planning.AttendanceAtMasses;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;

/**
 * Writes to everybody something of whose has changed, many changes in one letter. Of a Mass that
 * was changed twice only the first and the last are told; of what is past, nothing.
 */
@ApplicationScoped
class TellChanges {

  private final MailServer mail;
  private final MassChangeRows changes;
  private final ReadMasses masses;
  private final ReadCluster cluster;
  private final FindPeople people;
  private final AttendanceAtMasses attendance;
  private final ReaderAddresses addresses;
  private final ChooseLetters choices;
  private final PostLetter post;

  TellChanges(
      MailServer mail,
      MassChangeRows changes,
      ReadMasses masses,
      ReadCluster cluster,
      FindPeople people,
      AttendanceAtMasses attendance,
      ReaderAddresses addresses,
      ChooseLetters choices,
      PostLetter post) {
    this.mail = mail;
    this.changes = changes;
    this.masses = masses;
    this.cluster = cluster;
    this.people = people;
    this.attendance = attendance;
    this.addresses = addresses;
    this.choices = choices;
    this.post = post;
  }

  /**
   * A Mass that was changed.
   *
   * @param last id of the last of its changes
   * @param now none if it is there no more
   */
  private record Changed(UUID last, MassBefore before, Optional<DatedMass> now) {

    /** Whether any of it is still to come. */
    boolean isAhead(Instant moment) {
      boolean was = !before.absent() && before.starts().isAfter(moment);
      return was || now.filter(mass -> mass.start().toInstant().isAfter(moment)).isPresent();
    }
  }

  /** Looks in the present cluster whether there is something to tell, and writes. */
  void look(Instant now) {
    changes.tellOnce(
        now,
        rows -> {
          if (mail.isOn()) {
            tell(gather(rows).stream().filter(one -> one.isAhead(now)).toList());
          }
        });
  }

  /** Each Mass once, as it was before its first change. */
  private List<Changed> gather(List<MassChangeRow> rows) {
    Map<UUID, MassChangeRow> first = new LinkedHashMap<>();
    Map<UUID, UUID> last = new LinkedHashMap<>();
    for (MassChangeRow row : rows) {
      first.putIfAbsent(row.massId, row);
      last.put(row.massId, row.id);
    }
    List<Changed> changed = new ArrayList<>();
    first.forEach((mass, row) -> changed.add(new Changed(last.get(mass), row.before, find(mass))));
    return changed;
  }

  private Optional<DatedMass> find(UUID mass) {
    try {
      return Optional.of(masses.get(mass.toString()));
    } catch (Refused gone) {
      return Optional.empty();
    }
  }

  private void tell(List<Changed> changed) {
    Cluster here = cluster.cluster();
    Map<UUID, Person> persons = people.byId();
    Map<UUID, Church> churches =
        cluster.churches().stream()
            .collect(Collectors.toMap(c -> c.id().value(), Function.identity()));
    Attendance there = attendance.of(changed.stream().flatMap(one -> one.now().stream()).toList());
    Set<UUID> concerned = new LinkedHashSet<>();
    changed.forEach(
        one -> {
          concerned.addAll(one.before().people());
          one.now().ifPresent(mass -> mass.people().forEach(p -> concerned.add(p.id())));
          one.now().ifPresent(mass -> mass.serving().forEach(s -> concerned.add(s.person().id())));
        });
    for (UUID reader : concerned) {
      LetterWish wish = choices.of(reader);
      if (wish.changes() && addresses.find(reader).isPresent()) {
        Tongue tongue = ChooseLetters.tongue(wish, here);
        tell(
            reader,
            changed,
            new ChangeWords(tongue, reader, persons, churches, here.zone(), there),
            tongue);
      }
    }
  }

  private void tell(UUID reader, List<Changed> changed, ChangeWords words, Tongue tongue) {
    List<LetterView.Item> items = new ArrayList<>();
    UUID last = null;
    for (Changed one : changed) {
      Optional<LetterView.Item> item = words.item(one.before(), one.now());
      if (item.isPresent()) {
        items.add(item.get());
        last = one.last();
      }
    }
    if (!items.isEmpty()) {
      String subject =
          items.size() == 1
              ? tongue.say("change.subject", items.get(0).head())
              : tongue.say("change.subject.several", items.size());
      post.post(
          new PostLetter.Draft(
              reader,
              LetterKind.CHANGE,
              "change %s %s".formatted(last, reader),
              "",
              subject,
              tongue.say("change.lead"),
              List.of(new LetterView.Section("", items)),
              List.of(PostLetter.Way.MINE)),
          tongue);
    }
  }
}
