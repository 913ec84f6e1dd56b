/**
 * How long what is said of people is kept, and what goes every night. Start at {@link
 * vestiary.retention.TidyUp}.
 */
package vestiary.retention;
