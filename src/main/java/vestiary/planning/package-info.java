/**
 * The week, the day and the clashes. Loads a span, calls the core and words what it found; the
 * records named {@code …View} hold what a page prints, already in words.
 */
package vestiary.planning;
