package vestiary.problem;

/**
 * What is wrong with one field, in a sentence that repeats the offending value and names what is
 * allowed.
 *
 * @param field name as the API and the forms call it
 * @param sentence for the person who typed it
 */
public record FieldFault(String field, String sentence) {}
