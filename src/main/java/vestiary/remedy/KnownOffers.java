package vestiary.remedy;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import vestiary.allocation.Journey;
import vestiary.cluster.Church;
import vestiary.planning.Clash;
import vestiary.planning.SpanToCheck;

/**
 * Remembers what was offered last, by all that decides it: where anything is different it is worked
 * out anew, so that no offer is ever out of date.
 */
@ApplicationScoped
class KnownOffers {

  /** A few fortnights. */
  private static final int MOST = 100;

  private final Map<Question, List<OfferRemedies.Offer>> known =
      Collections.synchronizedMap(
          new LinkedHashMap<>(MOST, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(
                Map.Entry<Question, List<OfferRemedies.Offer>> eldest) {
              return size() > MOST;
            }
          });

  /** All that decides an offer; the cluster is part of it. */
  private record Question(String clash, List<Object> span, List<Journey> journeys) {

    static Question of(Clash clash, SpanToCheck days, KeptBack kept) {
      return new Question(
          clash.id(),
          List.of(
              days.cluster(),
              days.churches(),
              days.first(),
              days.last(),
              days.masses(),
              days.pieces(),
              days.kept(),
              days.taken(),
              days.lying(),
              days.accepted(),
              kept),
          days.churches().stream().flatMap(from -> from(from, days).stream()).toList());
    }

    private static List<Journey> from(Church from, SpanToCheck days) {
      return days.churches().stream()
          .flatMap(
              to ->
                  days.journeys().find(from.id(), to.id()).stream()
                      .map(time -> new Journey(from.id(), to.id(), time)))
          .toList();
    }
  }

  /** What was offered before, or is found now. Two who ask at once both work it out. */
  List<OfferRemedies.Offer> of(
      Clash clash, SpanToCheck days, KeptBack kept, Supplier<List<OfferRemedies.Offer>> find) {
    Question question = Question.of(clash, days, kept);
    List<OfferRemedies.Offer> offers = known.get(question);
    if (offers == null) {
      offers = List.copyOf(find.get());
      known.put(question, offers);
    }
    return offers;
  }
}
