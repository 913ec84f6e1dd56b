/**
 * Lawful substitutes that people accepted by name, for one person at one Mass. Knows no stock and
 * no clash; those who load a span ask it what is accepted. Start at {@link
 * vestiary.acceptance.AcceptedStep}.
 */
package vestiary.acceptance;
