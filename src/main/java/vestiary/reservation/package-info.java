/**
 * Sets and pieces that somebody sets aside for a Mass: what is free for it and why not, who holds
 * what, who asks for what another has. Start at {@link vestiary.reservation.ReserveSets}; whether a
 * piece is free, {@link vestiary.reservation.JudgePieces} alone says.
 */
package vestiary.reservation;
