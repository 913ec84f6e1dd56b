package vestiary.web;

/**
 * A celebration's name, set in the type of its rank.
 *
 * @param lead a word before the name, for example "or" or "evening:"; may be empty
 * @param rank the rank as the API writes it, for example {@code optional-memorial}
 * @param rankWord the rank for those who hear the page, for example "Optional memorial"; empty if
 *     there is nothing to say
 * @param name for example "Saint John Damascene"
 */
public record Celebrated(String lead, String rank, String rankWord, String name) {}
