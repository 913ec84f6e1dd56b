package vestiary.reservation;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.planning.PieceNouns;
import vestiary.problem.Asked;
import vestiary.schedule.DatedMass;
import vestiary.vesting.PieceKind;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Speech;

/** How many of what somebody wants proposed, and what is said of the proposal. */
final class ProposalForm {

  /** What sets are named after, and so what is wished for by number. */
  static final List<PieceKind> WISHED =
      List.of(PieceKind.CHASUBLE, PieceKind.DALMATIC, PieceKind.COPE, PieceKind.HUMERAL_VEIL);

  /** Instead of a colour. */
  static final String ALL = "all";

  private static final int MOST = 60;

  private ProposalForm() {}

  static SetAsideView.Wish shown(Entries typed, DatedMass mass) {
    Entries shown = given(given(typed, "colour", mass.colour().id()), "number", usualNumber(mass));
    return new SetAsideView.Wish(
        shown.field("number"),
        shown.choice(
            "kind",
            WISHED.stream().map(kind -> Choice.Option.of(kind.id(), WareWords.group(kind)))),
        shown.choice(
            "colour",
            Stream.concat(
                Stream.of(Colour.values()).map(c -> Choice.Option.of(c.id(), Speech.colour(c))),
                Stream.of(Choice.Option.of(ALL, say("all colours"))))),
        typed.isTicked("matching"));
  }

  /** What somebody left open shows what the Mass itself says. */
  private static Entries given(Entries typed, String field, String usual) {
    return typed.text(field).isEmpty() ? typed.with(field, usual) : typed;
  }

  /** All who celebrate, where several do. */
  private static String usualNumber(DatedMass mass) {
    int concelebrants = mass.concelebrants();
    return concelebrants == 0 ? "" : Integer.toString(concelebrants + 1);
  }

  static Optional<ProposeSets.Wish> find(Entries typed, DatedMass mass, Asked asked) {
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

  static String words(Offers offers, ProposeSets.Wish wish, List<Offer> proposed) {
    int missing = wish.number() - proposed.size();
    String kind = PieceNouns.of(wish.kind());
    String colour = Speech.colour(wish.colour());
    if (proposed.isEmpty()) {
      return say(
          "No %s is to be had in the whole cluster at that time.",
          Speech.tinted(colour, Speech.noun(1, kind)));
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
            ? say("All of them lie here")
            : say("They come in %s", Speech.count((int) journeys, "journey"));
    String less =
        missing == 0
            ? ""
            : say(
                missing == 1
                    ? word(" There are no more: %s is too few.")
                    : word(" There are no more: %s are too few."),
                Speech.count(missing));
    return say(
        "%s %s ticked below, the fewest journeys first and then what goes together. %s.%s",
        Speech.sentence(
            Speech.count(
                proposed.size(), kind, Speech.tinted(colour, Speech.noun(proposed.size(), kind)))),
        proposed.size() == 1 ? say("is") : say("are"),
        from,
        less);
  }
}
