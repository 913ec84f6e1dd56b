package vestiary.users;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * One who may come in.
 *
 * @param link by which they choose a password, just made; empty otherwise
 * @param linkAction where the press for a new link is sent; empty while there is nobody yet
 * @param person whom they are in the schedule
 * @param sessionsEnd where the press is sent that signs them out everywhere; empty as above
 * @param tokensEnd where the press is sent that ends their programs' tokens; empty as above
 * @param removal where the press is sent that lets them in no more; empty as above
 */
record UserForm(
    Frame frame,
    String title,
    String done,
    String problem,
    String action,
    Field login,
    Field name,
    Choice role,
    Choice churches,
    Choice person,
    String link,
    String linkAction,
    String sessionsEnd,
    String tokensEnd,
    String removal,
    List<RoleLine> roles) {

  UserForm {
    roles = List.copyOf(roles);
  }

  /** What a role may do, in words. */
  record RoleLine(String role, String may) {}
}
