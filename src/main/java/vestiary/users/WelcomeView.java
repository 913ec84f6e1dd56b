package vestiary.users;

import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * The page where somebody who was let in chooses a password.
 *
 * @param action where the form is sent
 * @param outside what people call the other service to sign in by instead; empty without one
 * @param link by which they were let in
 * @param login what they sign in by from then on
 */
record WelcomeView(
    Frame frame,
    String problem,
    String action,
    String login,
    Field password,
    Field again,
    String outside,
    String link) {}
