/**
 * The front door: how the server starts, and on which database. What it does afterwards lives in
 * the packages below; begin with {@code planning}, which joins them.
 */
package vestiary;
