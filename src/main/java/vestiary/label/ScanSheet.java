package vestiary.label;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.ReadCluster;
import vestiary.pool.Care;
import vestiary.pool.PieceWords;
import vestiary.pool.PooledPiece;
import vestiary.sending.Item;
import vestiary.sending.NextUse;
import vestiary.sending.Place;
import vestiary.sending.PlaceWords;
import vestiary.sending.ReadNextUses;
import vestiary.sending.ReadPlaces;
import vestiary.sending.SendingWords;
import vestiary.sending.Sent;
import vestiary.sending.UndoSending;
import vestiary.vesting.ChurchId;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Ribbon;
import vestiary.web.Speech;

/** Sets out what a label's scan opens. */
@ApplicationScoped
@Transactional
class ScanSheet {

  /** Farther ahead nobody hangs it in the car yet: one press would be a slip. */
  private static final Duration SOON = Duration.ofHours(36);

  private static final Duration AHEAD = Duration.ofDays(31);

  private final ReadPlaces places;
  private final ReadNextUses uses;
  private final SendingWords words;
  private final ReadCluster cluster;
  private final Here here;
  private final Frames frames;
  private final Clock clock;

  ScanSheet(
      ReadPlaces places,
      ReadNextUses uses,
      SendingWords words,
      ReadCluster cluster,
      Here here,
      Frames frames,
      Clock clock) {
    this.places = places;
    this.uses = uses;
    this.words = words;
    this.cluster = cluster;
    this.here = here;
    this.frames = frames;
    this.clock = clock;
  }

  /**
   * The page of an item.
   *
   * @param done out, back, home or undone, if that was just said; else empty
   * @param problem what kept a press from being carried out; empty else
   */
  ScanView view(Item item, String done, String problem) {
    SendingWords.Said said = words.read();
    PlaceWords telling = new PlaceWords(said, clock.instant());
    List<Place> found = places.of(item);
    List<NextUse> next = uses.of(item.codes(), AHEAD);
    List<String> apart = telling.apart(item, found);
    List<Sent> history = found.stream().flatMap(place -> place.history().stream()).toList();
    String address = "/s/" + item.code();
    return new ScanView(
        frames.of("vestments", address),
        item.code(),
        title(item),
        item.name(),
        new Ribbon(item.first().colour(), Speech.colour(item.first().colour())),
        about(item),
        isHome(item, found) ? "" : belongs(item, said),
        apart.isEmpty() ? telling.now(found.get(0), item.first()) : "",
        apart,
        next.stream().findFirst().map(ScanSheet::next).orElse(ScanView.Next.NONE),
        done(done, history, said),
        problem,
        doing(item, found, next, history, done, said),
        telling.before(
            history.stream().filter(one -> one.code().equals(item.first().code())).toList()),
        turn(item, said));
  }

  private static String title(Item item) {
    Set<String> kinds =
        item.pieces().stream()
            .map(piece -> PieceWords.kind(piece.kind()))
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return Speech.sentence(Speech.list(List.copyOf(kinds)));
  }

  private static String about(Item item) {
    PooledPiece first = item.first();
    String size = first.size().matches("\\d+") ? first.size() + " cm" : first.size();
    return List.of(first.suit(), size, first.condition()).stream()
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private static String belongs(Item item, SendingWords.Said said) {
    String place = item.first().place();
    return say("Belongs at %s%s.", said.church(item.home()), place.isEmpty() ? "" : ": " + place);
  }

  /** Where it is says then where it belongs. */
  private static boolean isHome(Item item, List<Place> found) {
    return found.stream()
        .allMatch(
            place ->
                !place.isOut() && place.care().isEmpty() && place.church().equals(item.home()));
  }

  private static ScanView.Next next(NextUse use) {
    String mass = SendingWords.Said.mass(use.mass());
    return use.who().isEmpty()
        ? new ScanView.Next(say("Wanted next"), mass)
        : new ScanView.Next(say("For ") + use.who(), mass);
  }

  private List<Link> turn(Item item, SendingWords.Said said) {
    String today = said.local(clock.instant()).toLocalDate().toString();
    return Stream.of(
            Stream.of(
                new Link(
                    say("Something is wrong with it"),
                    "/vestments/%s#care".formatted(item.first().code())),
                new Link(
                    say("Its next days"),
                    item.isSet()
                        ? "/vestments/sets/%s/week/%s".formatted(item.code(), today)
                        : "")),
            pieces(item))
        .flatMap(some -> some)
        .toList();
  }

  private static Stream<Link> pieces(Item item) {
    return item.pieces().stream()
        .map(
            piece ->
                new Link(
                    "%s, %s".formatted(piece.code(), PieceWords.kind(piece.kind())),
                    "/vestments/" + piece.code()));
  }

  private static String done(String done, List<Sent> history, SendingWords.Said said) {
    Optional<Sent> last = history.stream().findFirst();
    return switch (done) {
      case "out" ->
          last.filter(Sent::isOut)
              .map(one -> say("Out, to %s, due %s.", said.place(one), said.due(one.due())))
              .orElse("");
      case "back" ->
          last.flatMap(Sent::findReturn)
              .map(one -> say("Back, at %s.", said.church(one.church())))
              .orElse("");
      case "home" -> say("It is home.");
      case "undone" -> say("Taken back, as if it had never been said.");
      default -> "";
    };
  }

  private ScanView.Doing doing(
      Item item,
      List<Place> found,
      List<NextUse> next,
      List<Sent> history,
      String done,
      SendingWords.Said said) {
    boolean out = found.stream().anyMatch(Place::isOut);
    boolean allOut = found.stream().allMatch(Place::isOut);
    ChurchId church = here.church().orElse(item.home());
    ScanView.Press back =
        new ScanView.Press(say("Back, at ") + said.church(church), "church", said.slug(church));
    String address = "/s/" + item.code();
    ScanView.Press undo = undo(history, done);
    boolean settled = !undo.words().isEmpty();
    boolean kept = found.size() == 1 && !found.get(0).care().isEmpty();
    return new ScanView.Doing(
        address,
        allOut || settled || kept ? ScanView.Press.NONE : soon(next),
        out && !settled ? back : ScanView.Press.NONE,
        out || settled ? ScanView.Press.NONE : home(item, found, said),
        otherwise(address, allOut, found),
        undo);
  }

  /** What is in care comes back from there before it can go anywhere. */
  private static Link otherwise(String address, boolean allOut, List<Place> found) {
    if (allOut) {
      return new Link(say("Back elsewhere, or with a word about it"), address + "/back");
    }
    return found.size() == 1
        ? found.get(0).care().stream()
            .findFirst()
            .map(care -> new Link(say("In care: say that it is back"), careOf(care)))
            .orElseGet(() -> out(address))
        : out(address);
  }

  private static Link out(String address) {
    return new Link(say("Out, to another church"), address + "/out");
  }

  private static String careOf(Care care) {
    return "/care/%s/%s".formatted(care.piece(), care.id());
  }

  private ScanView.Press soon(List<NextUse> next) {
    Instant last = clock.instant().plus(SOON);
    return next.stream()
        .findFirst()
        .filter(use -> use.from().isBefore(last))
        .map(
            use ->
                new ScanView.Press(
                    say("Out, for ") + use.inShort(), "mass", use.mass().id().value().toString()))
        .orElse(ScanView.Press.NONE);
  }

  private static ScanView.Press home(Item item, List<Place> found, SendingWords.Said said) {
    boolean astray = found.stream().anyMatch(place -> !place.church().equals(item.home()));
    return astray
        ? new ScanView.Press(say("It is home, at ") + said.church(item.home()), "home", "true")
        : ScanView.Press.NONE;
  }

  private ScanView.Press undo(List<Sent> history, String done) {
    Instant since = clock.instant().minus(UndoSending.WITHIN);
    Optional<Sent> last = history.stream().findFirst();
    return switch (done) {
      case "out" ->
          last.filter(one -> one.isOut() && !one.went().isBefore(since))
              .map(one -> new ScanView.Press(say("Undo"), "out", one.sending().toString()))
              .orElse(ScanView.Press.NONE);
      case "back" ->
          history.stream()
              .filter(one -> one.findReturn().filter(r -> !r.at().isBefore(since)).isPresent())
              .findFirst()
              .map(one -> new ScanView.Press(say("Undo"), "back", one.sending().toString()))
              .orElse(ScanView.Press.NONE);
      default -> ScanView.Press.NONE;
    };
  }
}
