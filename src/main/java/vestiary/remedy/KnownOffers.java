package vestiary.remedy;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;
import vestiary.allocation.Journey;
import vestiary.cluster.Church;
import vestiary.planning.Clash;
import vestiary.planning.SpanToCheck;
import vestiary.web.Speech;

/**
 * Remembers what was offered last, by all that decides it: where anything is different it is worked
 * out anew, so that no offer is ever out of date.
 */
@ApplicationScoped
class KnownOffers {

  /** A few fortnights. */
  private static final int MOST = 100;

  private final Map<Question, FutureTask<List<OfferRemedies.Offer>>> known =
      Collections.synchronizedMap(
          new LinkedHashMap<>(MOST, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(
                Map.Entry<Question, FutureTask<List<OfferRemedies.Offer>>> eldest) {
              return size() > MOST;
            }
          });

  /** All that decides an offer and how it is said; the cluster is part of it. */
  private record Question(
      String clash, List<Object> span, List<Journey> journeys, Locale language) {

    static Question of(Clash clash, SpanToCheck days) {
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
              days.attendance(),
              days.serving().ministries()),
          days.churches().stream().flatMap(from -> from(from, days).stream()).toList(),
          Speech.localeOr(Locale.ENGLISH));
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

  /** What was offered before, or is found now; who asks meanwhile waits for the same answer. */
  List<OfferRemedies.Offer> of(
      Clash clash, SpanToCheck days, Supplier<List<OfferRemedies.Offer>> find) {
    Question question = Question.of(clash, days);
    FutureTask<List<OfferRemedies.Offer>> mine = new FutureTask<>(() -> List.copyOf(find.get()));
    FutureTask<List<OfferRemedies.Offer>> first = known.putIfAbsent(question, mine);
    if (first == null) {
      mine.run();
      return answer(question, mine);
    }
    return answer(question, first);
  }

  /** What failed is not remembered. */
  private List<OfferRemedies.Offer> answer(
      Question question, FutureTask<List<OfferRemedies.Offer>> task) {
    try {
      return task.get();
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
      throw new CancellationException();
    } catch (ExecutionException failed) {
      known.remove(question, task);
      throw failed.getCause() instanceof RuntimeException ours
          ? ours
          : new IllegalStateException(failed.getCause());
    }
  }
}
