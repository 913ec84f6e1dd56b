package vestiary.access;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.RequestScoped;
import java.util.UUID;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Who makes the present request; nobody in a job of the server. */
@RequestScoped
public class CurrentVisitor {

  private Visitor visitor = new Visitor.Nobody();
  private String formToken = "";

  public Visitor visitor() {
    return visitor;
  }

  /** What every form of the session sends along; empty without a session. */
  public String formToken() {
    return formToken;
  }

  /** Whether somebody asks who may not do that; jobs of the server may do all they need. */
  public boolean isForbidden(Action action) {
    return !(visitor instanceof Visitor.Nobody) && !visitor.may(action);
  }

  /** Whether a form offers that church: where somebody may do it at all, only where they may. */
  public boolean isOffered(Action action, UUID church) {
    return !visitor.may(action) || visitor.mayIn(action, church);
  }

  /** The forms of this very answer belong to a session that was just opened. */
  public void begin(Secret session) {
    formToken = session.formToken();
  }

  void assign(Visitor known) {
    visitor = known;
  }

  /** The same person in another cluster; the session stays that of their own. */
  void becomes(Visitor.Overseer overseer) {
    visitor = overseer;
  }

  void assign(Visitor known, Secret session) {
    visitor = known;
    formToken = session.formToken();
  }

  /** Says in whose hands a shared device is; anybody else is who they are. */
  public void actAs(UUID person) {
    if (visitor instanceof Visitor.Device device) {
      visitor = new Visitor.Device(device.id(), device.name(), device.church(), person.toString());
    }
  }

  /**
   * Whoever may do it in some churches only must be in one of them. All others have passed the door
   * already, or are jobs of the server.
   *
   * @param church id of the church that is to be changed
   * @throws Refused if it is none of theirs
   */
  public void refuseOutsideOwn(Action action, UUID church) {
    if (visitor.reach(action) == Reach.OWN_CHURCHES && !visitor.mayIn(action, church)) {
      throw new Refused(
          new Refusal.NotAllowed(
              say(
                  "That church is not among those named for you, so nothing was changed. Whoever keeps the users of your cluster can add it.")));
    }
  }
}
