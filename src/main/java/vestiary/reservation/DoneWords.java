package vestiary.reservation;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.stream.Stream;
import vestiary.web.Entries;
import vestiary.web.Speech;

/** What was just done with reservations, and how it is undone. */
@ApplicationScoped
class DoneWords {

  private final ReadReservations read;

  DoneWords(ReadReservations read) {
    this.read = read;
  }

  /**
   * What a page says of it.
   *
   * @param week in which it is, ISO 8601; empty if nothing was done
   */
  record Done(String sentence, HeldView.Undo undo, String week) {

    static final Done NOTHING = new Done("", HeldView.Undo.NONE, "");

    /** The page's own questions, about that week unless another is asked for. */
    Entries in(Entries typed) {
      return week.isEmpty() || !typed.text("week").isEmpty() ? typed : typed.with("week", week);
    }
  }

  /** That which the address of a page names. */
  Done of(Entries typed) {
    if (!typed.text("released").isEmpty()) {
      return released(read.get(typed.text("released")));
    }
    List<Reservation> held =
        Stream.of(typed.text("held").split(","))
            .filter(id -> !id.isEmpty())
            .map(read::get)
            .toList();
    return held.isEmpty() ? Done.NOTHING : held(held);
  }

  private static Done released(Reservation one) {
    return one.state() == ReservationState.RELEASED
        ? new Done(
            say("%s is given up; others may have it now.", one.code()),
            new HeldView.Undo(
                HeldSheet.ADDRESS + "/" + one.id() + "/restoration",
                say("Set it aside again"),
                one.mass().church().id().value().toString()),
            one.mass().date().toString())
        : Done.NOTHING;
  }

  private static Done held(List<Reservation> held) {
    Reservation first = held.get(0);
    List<String> codes = held.stream().filter(Reservation::stands).map(Reservation::code).toList();
    if (codes.isEmpty()) {
      return Done.NOTHING;
    }
    String sentence =
        say(
            "%s %s set aside for %s.",
            Speech.list(codes),
            codes.size() == 1 ? say("is") : say("are"),
            ReservationWords.about(first.mass()));
    HeldView.Undo undo =
        codes.size() == 1
            ? new HeldView.Undo(
                HeldSheet.ADDRESS + "/" + first.id() + "/release",
                say("Give it up again"),
                first.mass().church().id().value().toString())
            : HeldView.Undo.NONE;
    return new Done(sentence, undo, first.mass().date().toString());
  }
}
