package vestiary.users;

import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * The page of whoever forgot the password.
 *
 * @param problem over the form; empty if nothing is wrong
 * @param canMail whether a mail server is named, so that a link can be sent
 * @param sent whether one was asked for just now
 */
record RecoveryView(Frame frame, String problem, Field login, boolean canMail, boolean sent) {}
