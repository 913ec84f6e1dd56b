package vestiary.reservation;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import vestiary.pool.SetAside;
import vestiary.problem.Refusal;
import vestiary.web.Speech;

/** What whoever cannot have something is told: who has it, and what lies nearest instead. */
final class KeptWords {

  private static final int MOST_ALTERNATIVES = 3;

  private final Offers offers;
  private final OfferWords words;

  KeptWords(Offers offers) {
    this.offers = offers;
    this.words = new OfferWords(offers);
  }

  Refusal refusal(Offer kept) {
    List<Offer> instead = alternatives(kept);
    Map<String, Object> members = new LinkedHashMap<>();
    members.put(kept.thing().isSet() ? "set" : "piece", kept.code());
    if (kept.findKept().orElseThrow() instanceof Availability.Held held) {
      members.putAll(members(held.by()));
    }
    members.put("alternatives", instead.stream().map(Offer::code).toList());
    return new Refusal.HeldByAnother(sentence(kept, instead), members);
  }

  private String sentence(Offer kept, List<Offer> instead) {
    boolean ours =
        kept.findKept().orElseThrow() instanceof Availability.Held held
            && held.by().masses().contains(offers.mass().id());
    String why =
        ours
            ? say("%s %s already, for this very Mass.", kept.code(), say("is set aside"))
            : "%s %s.".formatted(kept.code(), words.why(kept));
    return say("%s Nothing was set aside. %s", why, instead(kept, instead));
  }

  private String instead(Offer kept, List<Offer> instead) {
    String colour = Speech.colour(kept.thing().main().colour());
    if (instead.isEmpty()) {
      return say("Nothing else in %s is free for it in the whole cluster.", colour);
    }
    return say(
        "Free instead: %s.",
        Speech.list(
            instead.stream()
                .map(offer -> "%s (%s)".formatted(offer.code(), words.lies(offer)))
                .toList()));
  }

  private List<Offer> alternatives(Offer kept) {
    return offers.insteadOf(kept.thing()).stream().limit(MOST_ALTERNATIVES).toList();
  }

  private Map<String, Object> members(SetAside by) {
    Map<String, Object> members = new LinkedHashMap<>();
    words.findHolder(by).ifPresent(name -> members.put("by", name));
    by.masses().stream()
        .findFirst()
        .ifPresent(mass -> members.put("mass", mass.value().toString()));
    if (!by.until().equals(Instant.MAX)) {
      members.put(
          "until",
          by.until()
              .atZone(offers.span().cluster().zone())
              .format(DateTimeFormatter.ISO_OFFSET_DATE_TIME));
    }
    return members;
  }
}
