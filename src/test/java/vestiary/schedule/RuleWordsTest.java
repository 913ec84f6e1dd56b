package vestiary.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RuleWordsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '/',
      textBlock =
          """
          FREQ=WEEKLY;BYDAY=SU                        / Sundays
          FREQ=WEEKLY;BYDAY=MO,WE,FR                  / Mondays, Wednesdays and Fridays
          FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR,SA         / Mondays to Saturdays
          FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR,SA,SU      / every day
          FREQ=WEEKLY;INTERVAL=2;BYDAY=SA             / every other Saturday
          FREQ=MONTHLY;BYDAY=1FR                      / first Fridays of the month
          FREQ=MONTHLY;BYDAY=-1SU                     / last Sundays of the month
          FREQ=MONTHLY;BYDAY=1TH,3TH,4TH,5TH          / first, third, fourth and fifth Thursdays of the month
          """)
  void a_rule_is_said_in_plain_words_and_written_back_as_it_was(String rule, String words) {
    RuleWords found = RuleWords.find(rule).orElseThrow();

    assertEquals(words, found.words());
    assertEquals(rule, found.toRule());
  }

  @Test
  void the_last_of_the_month_is_said_last() {
    assertEquals(
        "first and last Saturdays of the month",
        RuleWords.find("FREQ=MONTHLY;BYDAY=-1SA,1SA").orElseThrow().words());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "FREQ=DAILY;COUNT=9",
        "FREQ=WEEKLY;INTERVAL=3;BYDAY=SU",
        "FREQ=MONTHLY;INTERVAL=2;BYDAY=1FR",
        "FREQ=MONTHLY;BYDAY=1FR,2SA",
        "FREQ=MONTHLY;BYDAY=FR",
        "FREQ=WEEKLY;BYDAY=SU;UNTIL=20271231",
        "FREQ=YEARLY;BYMONTH=7;BYDAY=SU",
        ""
      })
  void what_the_form_does_not_ask_is_left_to_the_rule(String rule) {
    assertTrue(RuleWords.find(rule).isEmpty());
  }
}
