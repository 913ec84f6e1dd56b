package vestiary.access;

import vestiary.calendar.Term;

/** What somebody is in the cluster; what that lets them do stands in {@link Action}. */
public enum Role implements Term {
  ADMINISTRATOR("Administrator"),
  SACRISTAN("Sacristan"),
  PASTOR("Pastor"),
  MINISTER("Minister"),
  READER("Reader"),

  /** Of the diocese: in their own cluster, and in those that let them look in. */
  OVERSEER("Overseer");

  private final String word;

  Role(String word) {
    this.word = word;
  }

  /** As pages say it, for example "Sacristan". */
  public String word() {
    return word;
  }
}
