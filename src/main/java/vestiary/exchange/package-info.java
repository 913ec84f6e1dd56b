/**
 * Lists brought in from a spreadsheet. This half reads CSV files (RFC 4180) into typed lines and
 * says what is wrong with a file line by line; it knows no database, and whether a church or person
 * that a line names is there is not asked here. Start at {@link vestiary.exchange.ImportWhat}.
 *
 * <p>Nothing here is null; a cell that was left empty is the empty text, an empty list, or the
 * sentinel that the record names.
 */
package vestiary.exchange;
