package vestiary.exchange;

/**
 * Why a line of a file cannot be brought in.
 *
 * @param line physical line in the file, counted from 1, the header included; of a record over
 *     several lines the first
 * @param column name of the column, or empty where the whole line or file is meant
 * @param reason a sentence that repeats what stood there and says what may stand there
 */
public record BadLine(int line, String column, String reason) {}
