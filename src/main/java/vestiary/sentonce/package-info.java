/**
 * Forms that a browser sends again after a lost connection, carried out once. It knows no form and
 * keeps nothing that was typed. Start at {@link vestiary.sentonce.AnswerOnce}.
 */
package vestiary.sentonce;
