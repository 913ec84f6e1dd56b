package vestiary.access;

import io.quarkus.arc.Arc;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import vestiary.web.Speech;

/**
 * What the present visitor may do, for templates: {@code inject:may}. A button stands on a page
 * only where pressing it would be let through.
 */
@Named("may")
@ApplicationScoped
public class May {

  private final CurrentVisitor current;

  May(CurrentVisitor current) {
    this.current = current;
  }

  /** Whether they may do it somewhere at least; nobody may outside a request. */
  public boolean to(Action action) {
    return isAsked() && current.visitor().may(action);
  }

  /**
   * Whether they may do it in that church.
   *
   * @param church its id; empty where none is chosen yet
   */
  public boolean in(Action action, String church) {
    return church.isEmpty()
        ? to(action)
        : isAsked() && current.visitor().mayIn(action, UUID.fromString(church));
  }

  /** Who else may, for example "Only administrators and pastors can change this." */
  public String who(Action action) {
    List<String> roles =
        Arrays.stream(Role.values())
            .map(role -> several(role, action.reach(role)))
            .filter(Objects::nonNull)
            .toList();
    return Speech.say("Only %s can change this.", Speech.list(roles));
  }

  private static String several(Role role, Reach reach) {
    String several = Speech.noun(2, role.id());
    return switch (reach) {
      case EVERYWHERE -> several;
      case OWN_CHURCHES -> Speech.say("%s of this church", several);
      case NOWHERE -> null;
    };
  }

  private static boolean isAsked() {
    return Arc.container().requestContext().isActive();
  }
}
