package vestiary.people;

import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * One person.
 *
 * @param about for example "Priest, from outside"
 * @param heightAction where it is kept how tall the person is; empty where that is not asked
 * @param done what was just done; empty if nothing was
 * @param height in centimetres
 * @param history of what was changed about the person
 * @param erasure the question whether to remove the person for good
 */
record PersonView(
    Frame frame,
    String name,
    String shortName,
    String about,
    String heightAction,
    String done,
    Field height,
    String history,
    String erasure) {}
