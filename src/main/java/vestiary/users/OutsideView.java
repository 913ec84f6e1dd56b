package vestiary.users;

import vestiary.web.Frame;

/** Leads on to another service, by its name. */
record OutsideView(Frame frame, String name) {}
