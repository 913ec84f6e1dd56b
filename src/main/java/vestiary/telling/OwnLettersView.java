package vestiary.telling;

import vestiary.web.Frame;

/**
 * Which letters whoever has signed in wants.
 *
 * @param lead where they are sent, in a sentence
 */
record OwnLettersView(Frame frame, String done, String lead, StopView.Choice choice) {}
