package vestiary.schedule;

import vestiary.people.Person;

/** Somebody who serves at a Mass, and as what; of a child the first name and an initial. */
public record WhoServes(Person person, ServesAs as) {}
