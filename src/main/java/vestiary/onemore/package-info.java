/**
 * Five minutes before Mass one more has come: what is still at hand for him, taken by one press and
 * given back by another. It plans nothing anew. Start at {@link vestiary.onemore.TakeOneMore}.
 */
package vestiary.onemore;
