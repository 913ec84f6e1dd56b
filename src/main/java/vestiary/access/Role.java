package vestiary.access;

import static vestiary.web.Speech.word;

import vestiary.calendar.Term;
import vestiary.web.Speech;

/** What somebody is in the cluster; what that lets them do stands in {@link Action}. */
public enum Role implements Term {
  ADMINISTRATOR(Speech.word("Administrator")),
  SACRISTAN(Speech.word("Sacristan")),
  PASTOR(Speech.word("Pastor")),
  MINISTER(Speech.word("Minister")),
  READER(Speech.word("Reader")),

  /** Of the diocese: in their own cluster, and in those that let them look in. */
  OVERSEER(Speech.word("Overseer"));

  private final String word;

  Role(String word) {
    this.word = word;
  }

  /** As pages say it, for example "Sacristan". */
  public String word() {
    return Speech.say(word);
  }
}
