package vestiary.mail;

import java.util.Optional;
import java.util.UUID;

/**
 * Makes the links by which a letter opens a door. One is made while the letter leaves, and again
 * for every further try: so none lies in the outbox, and none has run out before it comes. The
 * feature that knows the door answers.
 */
public interface DoorLinks {

  /** A whole address; empty if nobody is to be let in any more. */
  Optional<String> make(UUID reader);
}
