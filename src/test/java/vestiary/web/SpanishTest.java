package vestiary.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * Articles before titles of people. Source for al and del: Nueva gramática de la lengua española
 * (2009), 14.1 (from memory).
 */
class SpanishTest {

  private static final String PRIEST = Spanish.titled("Padre") + " Cosmas Ilverton";

  @Test
  void titles_have_their_article_within_a_sentence() {
    assertEquals(
        "Entonces el\u00A0padre Cosmas Ilverton puede tomarla.",
        Spanish.say("Entonces %s puede tomarla.", PRIEST));
  }

  @Test
  void articles_grow_together_with_the_word_before_them() {
    assertEquals("en lugar del padre Cosmas Ilverton", Spanish.say("en lugar de %s", PRIEST));
    assertEquals("Pregunte al padre Cosmas Ilverton.", Spanish.say("Pregunte a %s.", PRIEST));
    assertEquals("para el\u00A0padre Cosmas Ilverton", Spanish.say("para %s", PRIEST));
  }

  @Test
  void what_people_wrote_themselves_stays_as_they_wrote_it() {
    assertEquals("la iglesia de El Salvador", Spanish.say("la iglesia de %s", "El Salvador"));
    assertEquals("Nota: llave de el armario.", Spanish.say("Nota: %s.", "llave de el armario"));
  }

  @Test
  void only_a_sentence_takes_a_capital() {
    assertEquals(
        "El\u00A0padre Cosmas Ilverton puede tomarla.", Spanish.say("%s puede tomarla.", PRIEST));
    assertEquals(
        "El\u00A0padre Cosmas Ilverton no celebra entonces. Más tarde, sí.",
        Spanish.say("%s no celebra entonces.%s", PRIEST, " Más tarde, sí."));
    assertEquals(
        "el\u00A0padre Cosmas Ilverton, en la sacristía",
        Spanish.say("%s, en la sacristía", PRIEST));
  }
}
