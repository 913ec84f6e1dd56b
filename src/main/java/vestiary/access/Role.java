package vestiary.access;

import vestiary.calendar.Term;

/** What somebody is in the cluster; what that lets them do stands in {@link Action}. */
public enum Role implements Term {
  ADMINISTRATOR("Administrator"),
  SACRISTAN("Sacristan"),
  PASTOR("Pastor"),
  MINISTER("Minister"),
  READER("Reader");

  private final String word;

  Role(String word) {
    this.word = word;
  }

  /** As pages say it, for example "Sacristan". */
  public String word() {
    return word;
  }
}
