/**
 * What comes in and goes out as files. The records named {@code …View} hold what a page prints,
 * already in words.
 */
package vestiary.exchange;
