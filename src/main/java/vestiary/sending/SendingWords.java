package vestiary.sending;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.users.UserNames;
import vestiary.vesting.ChurchId;
import vestiary.web.Speech;

/** Makes words for one answer: names and hours are read once. */
@ApplicationScoped
public class SendingWords {

  private static final String SERVER = "server";

  private final ReadCluster cluster;
  private final FindPeople people;
  private final UserNames users;

  SendingWords(ReadCluster cluster, FindPeople people, UserNames users) {
    this.cluster = cluster;
    this.people = people;
    this.users = users;
  }

  /** The words of this moment. */
  @Transactional
  public Said read() {
    return new Said(cluster.cluster().zone(), cluster.churches(), people.byId(), users.all());
  }

  /** Names of churches and people, and how moments are said in the cluster's zone. */
  public static final class Said {

    private final ZoneId zone;
    private final Map<ChurchId, Church> churches;
    private final Map<UUID, Person> people;
    private final Map<UUID, String> users;

    Said(ZoneId zone, List<Church> churches, Map<UUID, Person> people, Map<UUID, String> users) {
      this.zone = zone;
      this.churches = churches.stream().collect(Collectors.toMap(Church::id, church -> church));
      this.people = people;
      this.users = users;
    }

    public ZoneId zone() {
      return zone;
    }

    public String church(ChurchId id) {
      return churches.containsKey(id) ? churches.get(id).name() : say("a church that is gone");
    }

    public String slug(ChurchId id) {
      return churches.containsKey(id) ? churches.get(id).slug() : "";
    }

    public String person(UUID id) {
      return people.containsKey(id) ? people.get(id).calledName() : say("a person who was removed");
    }

    /** Who noted something, as the history of changes knows them; empty for the server itself. */
    public String marked(String mark) {
      return switch (mark) {
        case "" -> "";
        case SERVER -> say("the token of the server");
        default -> {
          UUID id = UUID.fromString(mark);
          yield users.containsKey(id) ? users.get(id) : person(id);
        }
      };
    }

    /** Where it went, for example "Saint Anne" or "the cathedral". */
    public String place(Sent sent) {
      return sent.churches().stream().findFirst().map(this::church).orElse(sent.whom());
    }

    public ZonedDateTime local(Instant moment) {
      return moment.atZone(zone);
    }

    /** For example "Tuesday 8 December, 17:42"; the day alone where nobody said the hour. */
    public String moment(Instant moment) {
      String day = Speech.day(local(moment).toLocalDate());
      boolean dayAlone = local(moment).toLocalTime().equals(LocalTime.MIDNIGHT);
      return dayAlone ? day : day + ", " + Speech.clock(local(moment));
    }

    /** For example "8 December 2026". */
    public String date(Instant moment) {
      return Speech.dateAndYear(local(moment).toLocalDate());
    }

    /** When something is due: the day alone where it may come back until its end. */
    public String due(Instant due) {
      LocalDate last = LocalDate.ofInstant(due.minusNanos(1), zone);
      boolean wholeDay = local(due).toLocalTime().equals(LocalTime.MIDNIGHT);
      return wholeDay ? Speech.day(last) : moment(due);
    }

    /** "due Friday 27 November, three days overdue". */
    public String due(Sent sent, Instant now) {
      return say("due %s%s", due(sent.due()), overdue(sent, now));
    }

    /** ", three days overdue"; empty if it is not. */
    String overdue(Sent sent, Instant now) {
      int days = sent.daysOverdue(now, zone);
      if (!sent.isOverdue(now)) {
        return "";
      }
      return days == 0
          ? say(", overdue since then")
          : say(", %s overdue", Speech.count(days, "day"));
    }

    /** For example "Mass at Saint Anne on Tuesday 8 December, 18:30". */
    public static String mass(DatedMass mass) {
      return say(
          "Mass at %s on %s, %s",
          mass.church().name(), Speech.day(mass.date()), Speech.clock(mass.start()));
    }
  }
}
