package vestiary.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.allocation.Certificate;
import vestiary.allocation.CertificateKind;
import vestiary.allocation.ClashCheck;
import vestiary.allocation.Minutes;
import vestiary.allocation.Shortage;
import vestiary.allocation.Span;
import vestiary.calendar.Colour;

class CheckedShortagesTest {

  private final Span span =
      new Span(
          List.of(
              Minutes.need(1, Minutes.A, 0, 60, Colour.RED),
              Minutes.need(2, Minutes.A, 30, 90, Colour.RED)),
          List.of(Minutes.piece("r1", Minutes.A, Colour.RED)),
          Minutes.nowhere(),
          Minutes.NO_TURN);
  private final List<Shortage> found = ClashCheck.find(span);

  @Test
  void what_holds_is_shown_as_it_was_found() {
    assertEquals(found, new CheckedShortages(span).all(found));
  }

  @Test
  void what_does_not_hold_is_never_shown_as_proof() {
    Shortage tampered = found.get(0).with(new Certificate.Chains(List.of()));

    List<Shortage> shown = new CheckedShortages(span).all(List.of(tampered));

    assertEquals(CertificateKind.UNPROVEN, shown.get(0).certificate().kind());
    assertEquals(found.get(0).needs(), shown.get(0).needs());
  }
}
