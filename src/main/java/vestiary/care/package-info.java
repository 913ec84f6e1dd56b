/**
 * What is wrong with a piece, from the phone in the sacristy: said, shown, planned round, ended.
 * Start at {@link vestiary.care.ReportWrong}.
 */
package vestiary.care;
