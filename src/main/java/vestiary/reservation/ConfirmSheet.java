package vestiary.reservation;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.planning.Clash;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out what is about to be set aside, before it is. */
@ApplicationScoped
class ConfirmSheet {

  private static final List<String> CHOSEN = List.of("set", "piece");

  private final Frames frames;
  private final HoldEffects effects;

  ConfirmSheet(Frames frames, HoldEffects effects) {
    this.frames = frames;
    this.effects = effects;
  }

  /**
   * The page.
   *
   * @throws Refused if nothing is chosen, or something of it cannot be had
   */
  @Transactional
  ConfirmView view(Offers offers, Entries typed, boolean isScheduled) {
    List<Offer> chosen = chosen(offers, typed);
    OfferWords words = new OfferWords(offers);
    HoldEffects.Effects found = effects.of(offers, chosen);
    List<String> fields = new ArrayList<>(isScheduled ? List.of("mass") : ToBeForm.FIELDS);
    fields.addAll(CHOSEN);
    List<Hidden> carried = SetAsideSheet.carried(typed, fields);
    return new ConfirmView(
        frames.of("week", SetAsideSheet.ADDRESS),
        ReservationWords.about(offers.mass()),
        say(
            "%s, from set-out at %s to clearance at %s.",
            Speech.sentence(Speech.count(chosen.size(), "thing")),
            clock(offers, offers.window().setOut()),
            clock(offers, offers.window().cleared())),
        !isScheduled,
        carried,
        new Link(say("Choose others"), SetAsideSheet.ADDRESS + query(carried)),
        chosen.stream().map(offer -> SetAsideSheet.free(offer, words, List.of())).toList(),
        chosen.stream()
            .filter(offer -> !offer.losing().isEmpty())
            .map(offer -> say("%s is %s.", offer.code(), words.takes(offer)))
            .toList(),
        found.arising().stream().map(ConfirmSheet::finding).toList(),
        found.mended().stream().map(ConfirmSheet::finding).toList());
  }

  private static List<Offer> chosen(Offers offers, Entries typed) {
    List<Offer> chosen =
        Stream.concat(
                typed.all("set").stream().map(code -> find(offers, code, true)),
                typed.all("piece").stream().map(code -> find(offers, code, false)))
            .toList();
    if (chosen.isEmpty()) {
      throw new Refused(Refusal.Unfit.of("set", say("Tick at least one set or piece.")));
    }
    chosen.stream()
        .filter(offer -> !offer.isFree())
        .findFirst()
        .ifPresent(
            offer -> {
              throw new Refused(new KeptWords(offers).refusal(offer));
            });
    return chosen;
  }

  static Offer find(Offers offers, String code, boolean set) {
    return offers
        .find(code, set)
        .orElseThrow(() -> new Refused(new Refusal.NotThere(set ? "set" : "piece", code)));
  }

  private static ConfirmView.Finding finding(Clash clash) {
    return new ConfirmView.Finding(clash.severity().mark(), clash.words().sentence());
  }

  private static String clock(Offers offers, Instant moment) {
    return Speech.clock(moment.atZone(offers.span().cluster().zone()));
  }

  private static String query(List<Hidden> carried) {
    return carried.stream()
        .map(one -> one.name() + "=" + URLEncoder.encode(one.value(), StandardCharsets.UTF_8))
        .collect(Collectors.joining("&", "?", ""));
  }
}
