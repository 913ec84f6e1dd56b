package vestiary.reservation;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

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
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out what can be had for a Mass. */
@ApplicationScoped
class SetAsideSheet {

  static final String ADDRESS = "/reservations/new";

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
    Optional<ProposeSets.Wish> wish = ProposalForm.find(typed, mass, asked);
    List<Offer> proposed =
        wish.map(one -> new ProposeSets(offers, one).propose()).orElse(List.of());
    List<String> ticked =
        Stream.of(typed.all("set"), typed.all("piece"), proposed.stream().map(Offer::code).toList())
            .flatMap(List::stream)
            .toList();
    List<SetAsideView.Group> groups = groups(offers, typed, ticked);
    return new SetAsideView(
        frames.of("week", ADDRESS),
        Speech.sentence(MassWords.whole(mass, Speech.localeOr(offers.span().cluster().language())))
            + ", "
            + Speech.colour(mass.colour()),
        ReservationWords.about(mass),
        lead(offers, groups),
        problem.isEmpty() && asked.isFaulty() ? asked.faults().get(0).sentence() : problem,
        turn(mass, isScheduled),
        carried(typed, isScheduled ? List.of("mass") : ToBeForm.FIELDS),
        isScheduled ? held.lines(mass) : List.of(),
        ProposalForm.shown(typed, mass),
        wish.map(one -> ProposalForm.words(offers, one, proposed)).orElse(""),
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
      turn.add(new Link(say("The Mass"), "/masses/" + mass.id().value()));
    }
    turn.add(new Link(say("The day"), "/day/" + mass.date()));
    turn.add(new Link(say("All that is set aside"), HeldSheet.ADDRESS + "?week=" + mass.date()));
    return turn;
  }

  private static String lead(Offers offers, List<SetAsideView.Group> groups) {
    int free = groups.stream().mapToInt(group -> group.free().size()).sum();
    var zone = offers.span().cluster().zone();
    return say(
        "%s can be had in the whole cluster, from set-out at %s to clearance at %s.",
        say(
            free == 1 ? word("%s set or piece") : word("%s sets and pieces"),
            Speech.sentence(Speech.count(free))),
        Speech.clock(offers.window().setOut().atZone(zone)),
        Speech.clock(offers.window().cleared().atZone(zone)));
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
                    ProposalForm.WISHED.contains(kind.getKey())
                        || isTicked(kind.getValue(), ticked),
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
    if (colour.equals(ProposalForm.ALL)) {
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
            say("Ask for it"),
            "%s/new?mass=%s&%s=%s"
                .formatted(
                    WishPages.ADDRESS,
                    typed.text("mass"),
                    offer.thing().isSet() ? "set" : "piece",
                    URLEncoder.encode(offer.code(), StandardCharsets.UTF_8)))
        : Link.NONE;
  }
}
