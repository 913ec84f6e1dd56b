package vestiary.web;

import vestiary.calendar.Colour;

/**
 * A colour as a page shows it: never the ribbon without the word.
 *
 * @param colour what the ribbon is
 * @param name the colour in the reader's language, for example "violet"
 */
public record Ribbon(Colour colour, String name) {}
