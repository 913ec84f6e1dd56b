/**
 * The Masses and the patterns they recur by. The records named {@code …Form} hold what a page
 * prints, already in words.
 */
package vestiary.schedule;
