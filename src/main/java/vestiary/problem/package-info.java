/**
 * What the server refuses, in one list: {@link vestiary.problem.Refusal}. Use cases throw {@link
 * vestiary.problem.Refused}; one mapper turns it, and every fault, into an RFC 9457 problem
 * document or into a page. Knows nothing of any feature.
 */
package vestiary.problem;
