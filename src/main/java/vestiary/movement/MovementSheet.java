package vestiary.movement;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import vestiary.asking.Asking;
import vestiary.asking.AskingState;
import vestiary.people.CarrierName;
import vestiary.people.Person;
import vestiary.plan.PlanResult;
import vestiary.plan.TripWords;
import vestiary.pool.Cautions;
import vestiary.pool.OwnerPolicy;
import vestiary.pool.PieceWords;
import vestiary.pool.PooledPiece;
import vestiary.web.Entries;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out one journey for whoever is asked to make it. */
final class MovementSheet {

  private static final Link NOWHERE = new Link("", "");

  private final ReadErrands.Found found;
  private final List<PooledPiece> pieces;
  private final List<Person> people;
  private final ErrandWords asked;
  private final boolean mails;
  private final Predicate<Asking> mailFailed;
  private final MovementView.Riding riding;
  private final TripWords words;

  /**
   * @param pieces the whole pool
   * @param people who can be asked
   * @param mails whether a mail server is named
   * @param mailFailed whether a mail to whoever was asked came to nothing
   * @param riding what can be said of what rides
   */
  MovementSheet(
      ReadErrands.Found found,
      List<PooledPiece> pieces,
      List<Person> people,
      ErrandWords asked,
      boolean mails,
      Predicate<Asking> mailFailed,
      MovementView.Riding riding) {
    this.riding = riding;
    this.found = found;
    this.pieces = pieces;
    this.people = people;
    this.asked = asked;
    this.mails = mails;
    this.mailFailed = mailFailed;
    this.words =
        new TripWords(List.copyOf(found.churches().values()), pieces, found.cluster().zone());
  }

  MovementView view(Frame frame, Entries typed, String problem) {
    return found
        .findErrand()
        .map(errand -> needed(frame, errand, typed, problem))
        .orElseGet(() -> dropped(frame, problem));
  }

  private MovementView needed(Frame frame, Errand errand, Entries typed, String problem) {
    PlanResult.Trip trip = errand.trip();
    List<PooledPiece> riding =
        pieces.stream().filter(piece -> trip.pieces().contains(piece.code())).toList();
    return new MovementView(
        frame,
        words.day(trip.leaveBy()),
        say("%s to %s", words.church(trip.from()), words.church(trip.to())),
        turn(words.date(trip.leaveBy())),
        asked.whole(errand),
        problem,
        List.of(
            new MovementView.Fact(say("Leave by"), words.clock(trip.leaveBy())),
            new MovementView.Fact(say("Be there by"), words.clock(trip.arriveBy())),
            new MovementView.Fact(say("How"), how(trip))),
        labels(riding),
        Cautions.of(riding),
        doing(errand, typed),
        this.riding,
        history(errand.askings(), errand));
  }

  private String how(PlanResult.Trip trip) {
    String note = words.view(trip).note();
    String way =
        trip.carrier().isEmpty()
            ? say("A journey of its own, for the vestments alone.")
            : say("%s drives that way anyway.", CarrierName.of(trip.carrier()));
    return (way + " " + note).strip();
  }

  /** Who was asked for what no plan has any more need not drive, and is told so. */
  private MovementView dropped(Frame frame, String problem) {
    Asking last = found.askings().get(found.askings().size() - 1);
    boolean open = last.state() == AskingState.ASKED || last.state() == AskingState.ACCEPTED;
    return new MovementView(
        frame,
        words.day(last.trip().leaveBy()),
        say(
            "%s to %s",
            words.church(last.trip().from().value()), words.church(last.trip().to().value())),
        turn(words.date(last.trip().leaveBy())),
        say(
            "The plan has changed: nothing is to be carried on this journey any more, and nobody need drive."),
        problem,
        List.of(),
        List.of(),
        List.of(),
        doing(last.trip().id(), false, false, false, open, last.version() + "", Entries.empty()),
        MovementView.Riding.NONE,
        found.askings().stream().map(this::told).toList());
  }

  private List<Link> turn(String date) {
    return List.of(
        new Link(say("The journeys"), "/movements?week=" + date),
        new Link(say("The week"), "/week/" + date));
  }

  private List<MovementView.Label> labels(List<PooledPiece> riding) {
    Map<String, List<PooledPiece>> sets =
        riding.stream()
            .collect(
                Collectors.groupingBy(
                    piece -> piece.set().isEmpty() ? piece.code() : piece.set(),
                    LinkedHashMap::new,
                    Collectors.toList()));
    return sets.entrySet().stream().map(set -> label(set.getKey(), set.getValue())).toList();
  }

  private MovementView.Label label(String code, List<PooledPiece> of) {
    PooledPiece first = of.get(0);
    Set<String> kinds =
        of.stream()
            .map(PooledPiece::kind)
            .sorted()
            .map(PieceWords::kind)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    String home = words.church(first.home().value());
    return new MovementView.Label(
        code,
        Speech.sentence(
            Speech.tinted(Speech.colour(first.colour()), Speech.list(List.copyOf(kinds)))),
        first.place().isEmpty() ? home : home + ": " + first.place(),
        first.ownerPolicy() == OwnerPolicy.ASKING
            ? say("Owner: %s; goes on asking.", first.owner())
            : "");
  }

  private MovementView.Doing doing(Errand errand, Entries typed) {
    AskingState state = errand.findOpen().map(Asking::state).orElse(AskingState.WITHDRAWN);
    String version = errand.findOpen().map(one -> one.version() + "").orElse("");
    Entries filled =
        typed.text("carrier").isEmpty() && errand.findDeclined().isEmpty()
            ? typed.with("carrier", errand.trip().carrier())
            : typed;
    return doing(
        errand.trip().id(),
        errand.findOpen().isEmpty(),
        state == AskingState.ASKED,
        state == AskingState.ACCEPTED,
        state == AskingState.ASKED || state == AskingState.ACCEPTED,
        version,
        filled);
  }

  private MovementView.Doing doing(
      UUID trip,
      boolean asking,
      boolean answering,
      boolean accepted,
      boolean withdrawing,
      String version,
      Entries typed) {
    return new MovementView.Doing(
        "/movements/" + trip,
        asking,
        answering,
        accepted,
        withdrawing,
        version,
        typed.field("carrier"),
        typed.field("by"),
        typed.field("mail"),
        mails,
        people.stream().map(Person::calledName).toList());
  }

  private List<MovementView.Told> history(List<Asking> askings, Errand errand) {
    List<MovementView.Told> told = new ArrayList<>();
    askings.stream()
        .filter(one -> !errand.findOpen().filter(one::equals).isPresent())
        .forEach(one -> told.add(told(one)));
    errand.findOpen().filter(mailFailed).ifPresent(one -> told.add(unsent()));
    return told;
  }

  private static MovementView.Told unsent() {
    return new MovementView.Told(
        say(
            "The mail that asks did not reach him. Tell him yourself; why it did not stands under Letters."),
        NOWHERE);
  }

  private MovementView.Told told(Asking one) {
    return new MovementView.Told(
        asked.told(one),
        one.offered().stream()
            .findFirst()
            .map(plan -> new Link(say("What that would change"), "/plans/" + plan))
            .orElse(NOWHERE));
  }
}
