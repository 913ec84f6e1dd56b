package vestiary.remedy;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hibernate.exception.ConstraintViolationException;
import vestiary.planning.CheckClashes;
import vestiary.planning.Clash;
import vestiary.planning.ClashSeverity;
import vestiary.planning.FindClash;
import vestiary.planning.MendClashes;
import vestiary.planning.OfferedRemedy;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Applies a remedy in one transaction, all of it or nothing, and keeps how to put it back. */
@ApplicationScoped
class ApplyRemedy {

  private static final String ONCE = "applied_remedy_once";

  private final FindClash find;
  private final OfferRemedies offers;
  private final CheckClashes check;
  private final AppliedRemedyRows rows;
  private final DoDeed deeds;
  private final Clock clock;

  ApplyRemedy(
      FindClash find,
      OfferRemedies offers,
      CheckClashes check,
      AppliedRemedyRows rows,
      DoDeed deeds,
      Clock clock) {
    this.find = find;
    this.offers = offers;
    this.check = check;
    this.rows = rows;
    this.deeds = deeds;
    this.clock = clock;
  }

  /**
   * Applies the remedy in a place of the list; once it holds, doing it again changes nothing. Of
   * two who press at once for the same clash the second is told what the first did.
   *
   * @throws Refused if there is no such clash or place, what was read is not offered any more, or
   *     something stands in the way
   */
  AppliedRemedyRow apply(String clash, int place, MendClashes.Press press) {
    try {
      return QuarkusTransaction.requiringNew().call(() -> once(clash, place, press));
    } catch (ConstraintViolationException second) {
      if (!ONCE.equals(second.getConstraintName())) {
        throw second;
      }
      return QuarkusTransaction.requiringNew().call(() -> once(clash, place, press));
    }
  }

  private AppliedRemedyRow once(String clash, int place, MendClashes.Press press) {
    Optional<FindClash.Found> found = find.find(clash);
    Optional<AppliedRemedyRow> before = rows.findStandingLocked(clash);
    boolean stands = found.filter(one -> isOpen(one.clash())).isPresent();
    if (before.filter(row -> isMeant(row, place, press, stands)).isPresent()) {
      return before.get();
    }
    if (!stands) {
      throw gone(before);
    }
    OfferRemedies.Offer offer = offered(found.get(), place, press);
    before.ifPresent(row -> row.standing = false);
    rows.flush();
    return apply(offer, found.get(), press);
  }

  private AppliedRemedyRow apply(
      OfferRemedies.Offer offer, FindClash.Found found, MendClashes.Press press) {
    Clash clash = found.clash();
    AppliedRemedyRow row = new AppliedRemedyRow();
    row.clash = clash.id();
    row.place = offer.words().place();
    row.fingerprint = offer.words().fingerprint();
    row.about = clash.words().about();
    row.title = clash.words().title();
    row.sentence = sentence(offer.words(), press.person());
    row.appliedAt = clock.instant();
    row.deed = offer.deed().by(press.person(), row.appliedAt);
    // The first row that is written: whoever presses at the same moment waits here.
    rows.persistAndFlush(row);
    deeds.perform(row.deed);
    row.leaves = leaves(found);
    return row;
  }

  private static String sentence(OfferedRemedy words, String person) {
    return words.takesName() && !person.isEmpty()
        ? "%s (%s)".formatted(withoutStop(words.sentence()), person) + "."
        : words.sentence();
  }

  private static String withoutStop(String sentence) {
    return sentence.substring(0, sentence.length() - 1);
  }

  /**
   * Looks once more: the clash must be gone, or stand in its place what is only worth knowing.
   *
   * @return the id of that, or nothing
   */
  private String leaves(FindClash.Found found) {
    Set<String> known =
        check.in(found.span()).stream()
            .map(Clash::id)
            .collect(Collectors.toCollection(HashSet::new));
    List<Clash> after = check.between(found.span().first(), found.span().last());
    if (after.stream().anyMatch(one -> one.id().equals(found.clash().id()) && isOpen(one))) {
      throw new Refused(
          new Refusal.Taken(
              "",
              say(
                  "Something was changed at this very moment, and this would not mend it any more. Nothing was changed; look again.")));
    }
    return after.stream()
        .filter(one -> !isOpen(one) && !known.contains(one.id()))
        .map(Clash::id)
        .findFirst()
        .orElse("");
  }

  private static boolean isOpen(Clash clash) {
    return clash.severity() != ClashSeverity.KNOW;
  }

  /** Whether a press asks for what holds already. */
  private static boolean isMeant(
      AppliedRemedyRow row, int place, MendClashes.Press press, boolean stands) {
    if (!press.fingerprint().isEmpty()) {
      return press.fingerprint().equals(row.fingerprint);
    }
    return press.sentence().isEmpty()
        ? !stands && row.place == place
        : press.sentence().equals(row.sentence);
  }

  private static Refused gone(Optional<AppliedRemedyRow> before) {
    return new Refused(
        new Refusal.Taken(
            "",
            before
                .map(
                    row ->
                        say("This is mended already: %s Nothing more was changed.", row.sentence))
                .orElse(
                    say(
                        "This clash does not stand any more, so that there is nothing to mend. Nothing was changed."))));
  }

  private OfferRemedies.Offer offered(FindClash.Found found, int place, MendClashes.Press press) {
    List<OfferRemedies.Offer> list = offers.of(found.clash(), found.span());
    boolean plain = press.fingerprint().isEmpty() && press.sentence().isEmpty();
    if (plain && place > list.size()) {
      throw new Refused(new Refusal.NotThere("remedy", String.valueOf(place)));
    }
    OfferRemedies.Offer offer =
        plain
            ? list.get(place - 1)
            : list.stream()
                .filter(one -> isRead(one.words(), press))
                .findFirst()
                .orElseThrow(ApplyRemedy::otherwise);
    if (offer.words().isAdvice()) {
      throw new Refused(
          new Refusal.AgainstRule(
              "n",
              say(
                  "This is advice, which people must follow themselves: \"%s\" Enter what comes of it under Vestments.",
                  offer.words().sentence())));
    }
    return offer;
  }

  private static boolean isRead(OfferedRemedy words, MendClashes.Press press) {
    return press.fingerprint().isEmpty()
        ? press.sentence().equals(words.sentence())
        : press.fingerprint().equals(words.fingerprint());
  }

  private static Refused otherwise() {
    return new Refused(
        new Refusal.Taken(
            "",
            say(
                "What mends this has changed since you looked, and that way out is not there any more. Nothing was changed; look at the list again.")));
  }
}
