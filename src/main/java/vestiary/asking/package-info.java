/**
 * Who was asked to carry something, and what came of it. Knows no plans: a trip is an id, a way and
 * an hour. Start at {@link vestiary.asking.AskCarrier} and {@link vestiary.asking.AnswerAsking}.
 */
package vestiary.asking;
