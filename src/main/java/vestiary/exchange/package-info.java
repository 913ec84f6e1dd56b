/**
 * Lists brought in from a spreadsheet, and the demo, which is brought in as such lists. CSV files
 * (RFC 4180) are read into typed lines; each line is then handed to the use case that a form or the
 * API would call, so that no rule is written twice. Start at {@link vestiary.exchange.ImportWhat}.
 *
 * <p>Nothing here is null; a cell that was left empty is the empty text, an empty list, or the
 * sentinel that the record names.
 */
package vestiary.exchange;
