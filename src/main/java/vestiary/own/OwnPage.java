package vestiary.own;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.access.Needs;
import vestiary.access.Visitor;
import vestiary.cluster.ReadCluster;
import vestiary.movement.ReadDriving;
import vestiary.people.AbsenceWords;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.people.ReadAbsences;
import vestiary.plan.TripView;
import vestiary.planning.CheckClashes;
import vestiary.users.PersonOfUser;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** What concerns whoever asks, for the fortnight that begins today. */
@Path("/mine")
@Produces(MediaType.TEXT_HTML)
class OwnPage {

  private static final int DAYS = 14;

  private static final List<Link> WAYS =
      List.of(
          new Link(word("The week"), "/week"),
          new Link(word("Your letters"), "/letters/mine"),
          new Link(word("Your account"), "/account"));

  private final CurrentVisitor current;
  private final PersonOfUser who;
  private final FindPeople people;
  private final CheckClashes check;
  private final ReadDriving driving;
  private final ReadAbsences absences;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;

  OwnPage(
      CurrentVisitor current,
      PersonOfUser who,
      FindPeople people,
      CheckClashes check,
      ReadDriving driving,
      ReadAbsences absences,
      ReadCluster cluster,
      Frames frames,
      Clock clock) {
    this.current = current;
    this.who = who;
    this.people = people;
    this.check = check;
    this.driving = driving;
    this.absences = absences;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "own")
  static class Templates {
    private Templates() {}

    static native TemplateInstance mine(OwnView view);
  }

  @GET
  @Needs(Action.KEEP_OWN_ACCOUNT)
  @Transactional
  public TemplateInstance mine() {
    return Templates.mine(findPerson().map(this::view).orElseGet(this::nobody));
  }

  private Optional<Person> findPerson() {
    return current.visitor() instanceof Visitor.User user
        ? who.find(user.id()).flatMap(people::find)
        : Optional.empty();
  }

  private OwnView view(Person person) {
    LocalDate today = LocalDate.now(clock.withZone(cluster.cluster().zone()));
    LocalDate last = today.plusDays(DAYS - 1L);
    OwnSheet sheet = new OwnSheet(check.load(today, last), person.id());
    List<OwnView.Own> masses = sheet.masses();
    List<TripView> trips = driving.of(person.id(), today, last);
    return new OwnView(
        frames.of("mine", "/mine"),
        person.calledName(),
        "%s: %s."
            .formatted(
                Speech.span(today, last), counted(masses.size(), sheet.away(), trips.size())),
        turn(),
        absences.of(person.id(), clock.instant()).stream()
            .map(one -> AbsenceWords.span(one, cluster.cluster().zone()))
            .toList(),
        masses,
        trips);
  }

  private List<Link> turn() {
    return List.of(
        new Link(
            say("Say when you are away"),
            current.visitor().may(Action.SAY_OWN_ABSENCE) ? "/mine/absences" : ""),
        new Link(say("The week"), "/week"),
        new Link(say("Your letters"), "/letters/mine"),
        new Link(say("Your account"), "/account"));
  }

  private static String counted(int named, int away, int trips) {
    String asked = counted(named - away, trips);
    return away == 0 ? asked : say("%s; named while away: %d", asked, away);
  }

  private static String counted(int masses, int trips) {
    if (masses == 0 && trips == 0) {
      return say("nothing is asked of you");
    }
    String said =
        masses == 1
            ? say("one Mass or other liturgy")
            : say("%s Masses and other liturgies", Speech.count(masses));
    return "%s, %s".formatted(said, Speech.count(trips, "journey"));
  }

  private OwnView nobody() {
    return new OwnView(
        frames.of("mine", "/mine"),
        say("What concerns you"),
        say(
            "Nobody of the schedule is named for you yet. Whoever keeps the users of your cluster can do it under Settings, Who may come in; then your Masses and journeys stand here."),
        WAYS.stream().map(Link::said).toList(),
        List.of(),
        List.of(),
        List.of());
  }
}
