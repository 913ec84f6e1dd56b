package vestiary.care;

import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * What is wrong with a piece, to be filled in.
 *
 * @param title for example "Something is wrong with HT-W1-C"
 * @param piece for example "Chasuble HT-W1-C"
 * @param church id of the one where the piece is at home
 * @param action where it is sent
 * @param problem what keeps the whole form from being sent; empty if nothing does
 * @param others the rest of its set, in words; empty if there is none to go with it
 * @param whole whether these go with it
 */
record CareForm(
    Frame frame,
    String title,
    String piece,
    String church,
    String action,
    String problem,
    Choice kind,
    Field from,
    Field to,
    Field reason,
    Field photo,
    String others,
    boolean whole,
    Link back) {}
