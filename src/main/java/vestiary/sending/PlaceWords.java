package vestiary.sending;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.pool.PooledPiece;
import vestiary.web.Speech;

/** Says where something is, since when, by whom, and who had it before. */
public final class PlaceWords {

  /** What happened longer ago is found in the loans and in the history. */
  private static final int MOST_BEFORE = 10;

  private final SendingWords.Said said;
  private final Instant now;

  /** Words of this moment. */
  public PlaceWords(SendingWords.Said said, Instant now) {
    this.said = said;
    this.now = now;
  }

  /** For example "Out at Saint Anne since Monday 30 November, 06:00; due Friday 4 December." */
  public String now(Place place, PooledPiece piece) {
    if (place.isOut()) {
      return out(place);
    }
    if (!place.care().isEmpty()) {
      return care(place);
    }
    boolean home = place.church().equals(piece.home());
    String where =
        say(
            "At %s%s%s",
            said.church(place.church()),
            home ? "" : say(", not at home"),
            home && !piece.place().isEmpty() ? ", " + piece.place() : "");
    String since =
        place.since().stream().findFirst().map(at -> say(", since ") + said.moment(at)).orElse("");
    return where + since + takenIn(place) + ".";
  }

  private String out(Place place) {
    Optional<Sent> sent = place.history().stream().filter(Sent::isOut).findFirst();
    String where =
        place.out().get(0).churches().stream()
            .findFirst()
            .map(church -> say("Out at ") + said.church(church))
            .orElseGet(() -> sent.map(one -> say("Out, with ") + one.whom()).orElse(say("Out")));
    return say(
        "%s since %s; %s%s.",
        where,
        said.moment(place.out().get(0).from()),
        sent.map(one -> said.due(one, now))
            .orElseGet(() -> say("due %s", said.due(place.out().get(0).due()))),
        sent.map(this::by).orElse(""));
  }

  private String care(Place place) {
    LocalDate last =
        place
            .care()
            .get(0)
            .findEnd()
            .map(end -> said.local(end.minusNanos(1)).toLocalDate())
            .orElse(null);
    return say(
        "In care: %s, %s.",
        place.care().get(0).reason(),
        last == null ? say("until further notice") : say("until ") + Speech.dateAndYear(last));
  }

  private String takenIn(Place place) {
    return place.history().stream()
        .limit(1)
        .flatMap(one -> one.returns().stream())
        .filter(one -> one.church().equals(place.church()))
        .findFirst()
        .map(one -> taker(one).map(name -> say(", taken in by ") + name).orElse(""))
        .orElse("");
  }

  /** "; carried by Greta Holm, sent by Martha Kell". */
  private String by(Sent one) {
    List<String> names = new ArrayList<>();
    one.carriers().forEach(id -> names.add(say("carried by ") + said.person(id)));
    one.signers().forEach(id -> names.add(say("signed for by ") + said.person(id)));
    if (!said.marked(one.sentBy()).isEmpty()) {
      names.add(say("sent by ") + said.marked(one.sentBy()));
    }
    return names.isEmpty() ? "" : "; " + String.join(", ", names);
  }

  private Optional<String> taker(Sent.Return one) {
    return one.takers().stream()
        .findFirst()
        .map(this::person)
        .or(() -> Optional.of(said.marked(one.notedBy())).filter(name -> !name.isEmpty()));
  }

  private String person(UUID id) {
    return said.person(id);
  }

  /** Who had it before, the latest first; what is out now is not among them. */
  public List<String> before(List<Sent> history) {
    return history.stream()
        .filter(one -> !one.isOut())
        .limit(MOST_BEFORE)
        .map(this::told)
        .distinct()
        .toList();
  }

  private String told(Sent one) {
    Sent.Return back = one.returns().get(0);
    return say(
        "%s: %s to %s%s%s.",
        said.place(one),
        said.moment(one.went()),
        said.moment(back.at()),
        taker(back).map(name -> say(", taken in by ") + name).orElse(""),
        back.condition().isEmpty() ? "" : " (“" + back.condition() + "”)");
  }

  /** Empty where the pieces of a set are together; else where each is. */
  public List<String> apart(Item item, List<Place> places) {
    if (places.stream().map(Place::together).distinct().count() < 2) {
      return List.of();
    }
    List<String> told = new ArrayList<>();
    for (int at = 0; at < places.size(); at++) {
      told.add(places.get(at).piece() + ": " + now(places.get(at), item.pieces().get(at)));
    }
    return told;
  }
}
