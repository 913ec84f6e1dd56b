package vestiary.access;

import java.util.Optional;

/**
 * Knows the shared devices of sacristies by what they hold. The cluster of the secret is the
 * current one when it is asked.
 */
public interface SharedDevices {

  /** The device that holds it, unless it was shut out. */
  Optional<Visitor> findDevice(Secret secret);
}
