package vestiary.pool;

import java.util.UUID;

/**
 * Something held by a reservation went out or came back, or one of these was taken back as never
 * true. Whoever keeps reservations hears of it within the same transaction.
 *
 * @param reservation its id
 */
public record HeldTurned(UUID reservation) {}
