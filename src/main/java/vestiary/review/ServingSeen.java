package vestiary.review;

import java.util.UUID;

/**
 * Somebody who served at a Mass as it stood when somebody looked at the week.
 *
 * @param role id of a {@link vestiary.schedule.ServesAs}
 * @param person their id; the name is put to it when it is read
 */
record ServingSeen(String role, UUID person) {}
