package vestiary.sending;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Map;
import java.util.stream.Collectors;
import vestiary.pool.WhereItIs;

/** Tells the pages of the pool where its pieces are. */
@ApplicationScoped
@Transactional
class TellPool implements WhereItIs {

  private final FindItem items;
  private final ReadPlaces places;
  private final ReadSent sent;
  private final SendingWords words;
  private final Clock clock;

  TellPool(FindItem items, ReadPlaces places, ReadSent sent, SendingWords words, Clock clock) {
    this.items = items;
    this.places = places;
    this.sent = sent;
    this.words = words;
    this.clock = clock;
  }

  @Override
  public Told of(String piece) {
    Item item = items.getKept(piece);
    Place place = places.of(item).get(0);
    PlaceWords telling = new PlaceWords(words.read(), clock.instant());
    return new Told(telling.now(place, item.first()), telling.before(place.history()));
  }

  @Override
  public Map<String, String> out() {
    SendingWords.Said said = words.read();
    Instant now = clock.instant();
    return sent.open().stream()
        .collect(
            Collectors.toMap(
                Sent::code,
                one ->
                    one.churches().isEmpty()
                        ? say("Out, with %s, %s", one.whom(), said.due(one, now))
                        : say("Out at %s, %s", said.place(one), said.due(one, now)),
                (first, second) -> first));
  }
}
