package vestiary.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.planning.MassWords;
import vestiary.planning.PieceNouns;
import vestiary.problem.Asked;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ColourMatch;
import vestiary.vesting.PieceKind;
import vestiary.web.Choice;
import vestiary.web.English;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;

/** Sets out what can be had for a Mass. */
@ApplicationScoped
class SetAsideSheet {

  static final String ADDRESS = "/reservations/new";
  private static final String ALL = "all";
  private static final int MOST = 60;

  /** What sets are named after, and so what is wished for by number. */
  private static final List<PieceKind> WISHED =
      List.of(PieceKind.CHASUBLE, PieceKind.DALMATIC, PieceKind.COPE, PieceKind.HUMERAL_VEIL);

  private final Frames frames;
  private final HeldSheet held;

  SetAsideSheet(Frames frames, HeldSheet held) {
    this.frames = frames;
    this.held = held;
  }

  /**
   * The page.
   *
   * @param typed which Mass, what is ticked and what is wished for
   * @param isScheduled whether the Mass is in the schedule already
   */
  @Transactional
  SetAsideView view(Offers offers, Entries typed, boolean isScheduled, String problem) {
    DatedMass mass = offers.mass();
    Asked asked = new Asked();
    Optional<ProposeSets.Wish> wish = findWish(typed, mass, asked);
    List<Offer> proposed =
        wish.map(one -> new ProposeSets(offers, one).propose()).orElse(List.of());
    List<String> ticked =
        Stream.of(typed.all("set"), typed.all("piece"), proposed.stream().map(Offer::code).toList())
            .flatMap(List::stream)
            .toList();
    List<SetAsideView.Group> groups = groups(offers, typed, ticked);
    return new SetAsideView(
        frames.of("week", ADDRESS),
        English.sentence(MassWords.whole(mass, offers.span().cluster().language()))
            + ", "
            + mass.colour().id(),
        ReservationWords.about(mass),
        lead(offers, groups),
        problem.isEmpty() && asked.isFaulty() ? asked.faults().get(0).sentence() : problem,
        turn(mass, isScheduled),
        carried(typed, isScheduled ? List.of("mass") : ToBeForm.FIELDS),
        isScheduled ? held.lines(mass) : List.of(),
        wish(typed, mass),
        wish.map(one -> proposal(offers, one, proposed)).orElse(""),
        groups,
        mass.church().id().value().toString());
  }

  static List<Hidden> carried(Entries typed, List<String> fields) {
    return fields.stream()
        .flatMap(field -> typed.all(field).stream().map(value -> new Hidden(field, value)))
        .toList();
  }

  private static List<Link> turn(DatedMass mass, boolean isScheduled) {
    List<Link> turn = new ArrayList<>();
    if (isScheduled) {
      turn.add(new Link("The Mass", "/masses/" + mass.id().value()));
    }
    turn.add(new Link("The day", "/day/" + mass.date()));
    turn.add(new Link("All that is set aside", HeldSheet.ADDRESS + "?week=" + mass.date()));
    return turn;
  }

  private static String lead(Offers offers, List<SetAsideView.Group> groups) {
    int free = groups.stream().mapToInt(group -> group.free().size()).sum();
    var zone = offers.span().cluster().zone();
    return "%s can be had in the whole cluster, from set-out at %s to clearance at %s."
        .formatted(
            English.sentence(English.count(free))
                + (free == 1 ? " set or piece" : " sets and pieces"),
            English.clock(offers.window().setOut().atZone(zone)),
            English.clock(offers.window().cleared().atZone(zone)));
  }

  private List<SetAsideView.Group> groups(Offers offers, Entries typed, List<String> ticked) {
    OfferWords words = new OfferWords(offers);
    Map<PieceKind, List<Offer>> byKind =
        offers.all().stream()
            .filter(offer -> isShown(offer, typed.text("colour"), offers.mass()))
            .sorted(Offer.NEAREST)
            .collect(
                Collectors.groupingBy(
                    offer -> offer.thing().main().kind(), TreeMap::new, Collectors.toList()));
    return byKind.entrySet().stream()
        .map(
            kind ->
                new SetAsideView.Group(
                    WareWords.group(kind.getKey()),
                    WISHED.contains(kind.getKey()) || isTicked(kind.getValue(), ticked),
                    kind.getValue().stream()
                        .filter(Offer::isFree)
                        .map(offer -> free(offer, words, ticked))
                        .toList(),
                    kind.getValue().stream()
                        .filter(offer -> !offer.isFree())
                        .sorted(Comparator.comparing(Offer::code))
                        .map(offer -> kept(offer, words, typed))
                        .toList()))
        .toList();
  }

  private static boolean isTicked(List<Offer> offers, List<String> ticked) {
    return offers.stream().anyMatch(offer -> ticked.contains(offer.code()));
  }

  private static boolean isShown(Offer offer, String colour, DatedMass mass) {
    if (colour.equals(ALL)) {
      return true;
    }
    Colour wanted = Term.find(Colour.class, colour).orElse(mass.colour());
    return !PieceNouns.hasColour(offer.thing().main().kind())
        || ColourMatch.of(
                offer.thing().main().colours(), wanted, mass.toVestedMass().colour().festive())
            .serves();
  }

  static SetAsideView.Ware free(Offer offer, OfferWords words, List<String> ticked) {
    return new SetAsideView.Ware(
        offer.thing().isSet() ? "set" : "piece",
        offer.code(),
        ticked.contains(offer.code()),
        WareWords.ribbon(offer.thing()),
        WareWords.what(offer.thing()),
        words.lies(offer),
        words.takes(offer),
        Link.NONE);
  }

  private static SetAsideView.Ware kept(Offer offer, OfferWords words, Entries typed) {
    return new SetAsideView.Ware(
        offer.thing().isSet() ? "set" : "piece",
        offer.code(),
        false,
        WareWords.ribbon(offer.thing()),
        WareWords.what(offer.thing()),
        words.why(offer),
        "",
        ask(offer, typed));
  }

  /** One who is not in the schedule yet asks for nothing. */
  private static Link ask(Offer offer, Entries typed) {
    return ForMass.isScheduled(typed) && AskForSet.isAskable(offer)
        ? new Link(
            "Ask for it",
            "%s/new?mass=%s&%s=%s"
                .formatted(
                    WishPages.ADDRESS,
                    typed.text("mass"),
                    offer.thing().isSet() ? "set" : "piece",
                    URLEncoder.encode(offer.code(), StandardCharsets.UTF_8)))
        : Link.NONE;
  }

  private static SetAsideView.Wish wish(Entries typed, DatedMass mass) {
    Entries shown =
        typed.text("colour").isEmpty() ? typed.with("colour", mass.colour().id()) : typed;
    return new SetAsideView.Wish(
        shown.field("number"),
        shown.choice(
            "kind",
            WISHED.stream().map(kind -> Choice.Option.of(kind.id(), WareWords.group(kind)))),
        shown.choice(
            "colour",
            Stream.concat(
                Stream.of(Colour.values()).map(c -> Choice.Option.of(c.id(), c.id())),
                Stream.of(Choice.Option.of(ALL, "all colours")))),
        typed.isTicked("matching"));
  }

  private static Optional<ProposeSets.Wish> findWish(Entries typed, DatedMass mass, Asked asked) {
    Integer number = asked.number("number", typed.text("number"));
    if (number == null) {
      return Optional.empty();
    }
    int many = asked.whole("number", number, 1, MOST, 1);
    return asked.isFaulty()
        ? Optional.empty()
        : Optional.of(
            new ProposeSets.Wish(
                many,
                Term.find(PieceKind.class, typed.text("kind"))
                    .filter(WISHED::contains)
                    .orElse(PieceKind.CHASUBLE),
                Term.find(Colour.class, typed.text("colour")).orElse(mass.colour()),
                typed.isTicked("matching")));
  }

  private static String proposal(Offers offers, ProposeSets.Wish wish, List<Offer> proposed) {
    int missing = wish.number() - proposed.size();
    String noun = wish.colour().id() + " " + PieceNouns.of(wish.kind());
    if (proposed.isEmpty()) {
      return "No %s is to be had in the whole cluster at that time.".formatted(noun);
    }
    long journeys =
        proposed.stream()
            .flatMap(Offer::main)
            .map(Availability.Free::lies)
            .filter(lies -> !lies.equals(offers.mass().church().id()))
            .distinct()
            .count();
    String from =
        journeys == 0
            ? "All of them lie here"
            : "They come in %s".formatted(English.count((int) journeys, "journey"));
    String less =
        missing == 0
            ? ""
            : " There are no more: %s too few."
                .formatted(English.count(missing) + (missing == 1 ? " is" : " are"));
    return "%s %s ticked below, the fewest journeys first and then what goes together. %s.%s"
        .formatted(
            English.sentence(English.count(proposed.size(), noun)),
            proposed.size() == 1 ? "is" : "are",
            from,
            less);
  }
}
