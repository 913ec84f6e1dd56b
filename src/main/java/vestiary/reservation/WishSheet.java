package vestiary.reservation;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out what is asked for. */
@ApplicationScoped
class WishSheet {

  private final Frames frames;
  private final ReadWishes wishes;

  WishSheet(Frames frames, ReadWishes wishes) {
    this.frames = frames;
    this.wishes = wishes;
  }

  @Transactional
  WishesView all(String problem) {
    List<Wish> all = wishes.all();
    List<Wish> open = all.stream().filter(one -> one.state() == WishState.OPEN).toList();
    return new WishesView(
        frames.of("week", WishPages.ADDRESS),
        open.isEmpty()
            ? say("Nobody waits for an answer.")
            : say(
                "%s for an answer.",
                say(
                    open.size() == 1 ? word("%s waits") : word("%s wait"),
                    Speech.sentence(Speech.count(open.size(), "wish")))),
        problem,
        List.of(new Link(say("All that is set aside"), HeldSheet.ADDRESS)),
        open.stream().map(WishSheet::line).toList(),
        all.stream().filter(one -> one.state() != WishState.OPEN).map(WishSheet::line).toList());
  }

  /** The form; what is asked for is said by its code. */
  @Transactional
  WishesView.Form form(Offers offers, Entries typed, String problem) {
    Offer offer = found(offers, typed);
    return new WishesView.Form(
        frames.of("week", WishPages.ADDRESS + "/new"),
        ReservationWords.about(offers.mass()),
        say(
            "%s %s. Whoever keeps it is asked; if somebody has it, you are also told when it becomes free.",
            offer.code(), new OfferWords(offers).why(offer)),
        problem,
        SetAsideSheet.carried(typed, List.of("mass", "set", "piece")),
        typed.field("note"),
        new Link(say("Leave it"), SetAsideSheet.ADDRESS + "?mass=" + offers.mass().id().value()),
        offers.mass().church().id().value().toString());
  }

  private static Offer found(Offers offers, Entries typed) {
    boolean set = !typed.text("set").isEmpty();
    return ConfirmSheet.find(offers, typed.text(set ? "set" : "piece"), set);
  }

  private static WishesView.Line line(Wish wish) {
    boolean isFree = !wish.told().isEmpty() && wish.state().waits();
    return new WishesView.Line(
        wish.code(),
        WishWords.asked(wish),
        isFree ? WishWords.free(wish) : WishWords.answered(wish),
        WishPages.ADDRESS + "/" + wish.id(),
        wish.keeper().id().value().toString(),
        wish.mass().church().id().value().toString(),
        wish.state().waits(),
        isFree,
        new Link(
            say("Set it aside"),
            "%s?mass=%s&%s=%s"
                .formatted(
                    SetAsideSheet.ADDRESS,
                    wish.mass().id().value(),
                    wish.isSet() ? "set" : "piece",
                    wish.code())));
  }
}
