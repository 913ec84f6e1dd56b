package vestiary.problem;

import static vestiary.web.Speech.say;

import vestiary.web.Speech;

/**
 * What is wrong with one field, in a sentence that repeats the offending value and names what is
 * allowed.
 *
 * @param field name as the API and the forms call it
 * @param sentence for the person who typed it
 */
public record FieldFault(String field, String sentence) {

  /**
   * The sentence for somebody who sees it beside the field: the name that the API gives the field,
   * if the sentence begins with it, would only puzzle there.
   */
  public String besideField() {
    if (!sentence.startsWith(field)) {
      return Speech.sentence(sentence);
    }
    String rest = sentence.substring(field.length());
    if (beginsWithTheValue(rest)) {
      return rest.strip();
    }
    return rest.startsWith(": ") ? Speech.sentence(rest.substring(2)) : say("This%s", rest);
  }

  private static boolean beginsWithTheValue(String rest) {
    return rest.startsWith(" \"") || rest.matches("(?s) [-+]?\\d.*");
  }
}
