package vestiary.people;

import vestiary.web.Frame;

/**
 * One person.
 *
 * @param about for example "Priest, from outside"
 * @param history of what was changed about the person
 * @param erasure the question whether to remove the person for good
 */
record PersonView(
    Frame frame, String name, String shortName, String about, String history, String erasure) {}
