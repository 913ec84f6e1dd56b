package vestiary.label;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import vestiary.access.CurrentVisitor;
import vestiary.access.Visitor;
import vestiary.vesting.ChurchId;

/** In whose sacristy the phone is held, where that can be told. */
@ApplicationScoped
class Here {

  private final CurrentVisitor visitor;

  Here(CurrentVisitor visitor) {
    this.visitor = visitor;
  }

  /**
   * The church of a shared device, or the one church named for a user; empty for everybody else.
   */
  Optional<ChurchId> church() {
    Visitor known = visitor.visitor();
    if (known instanceof Visitor.Device device) {
      return Optional.of(new ChurchId(device.church()));
    }
    return known instanceof Visitor.User user && user.churches().size() == 1
        ? user.churches().stream().findFirst().map(ChurchId::new)
        : Optional.empty();
  }
}
