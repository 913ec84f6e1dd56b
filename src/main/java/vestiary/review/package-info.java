/**
 * The pastor's look at a week: what is covered, what is not, and what has changed since he signed.
 */
package vestiary.review;
