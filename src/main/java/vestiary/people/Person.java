package vestiary.people;

import static vestiary.web.Speech.say;

import java.util.UUID;
import vestiary.web.Speech;

/**
 * Somebody who appears in a schedule.
 *
 * @param slug short name in addresses and files, lower case
 * @param shortName what stands in tight places, usually the surname
 * @param title as in Fr, or empty
 * @param isVisiting whether he comes from outside the cluster
 */
public record Person(
    UUID id,
    String slug,
    String name,
    String shortName,
    String title,
    PersonRole role,
    boolean isVisiting) {

  /** With the title as it is spoken, for example "Father Cosmas Ilverton". */
  public String calledName() {
    return (spokenTitle() + " " + name).strip();
  }

  /**
   * The same within a sentence: "Father Cosmas Ilverton", "el padre Cosmas Ilverton". Sentences
   * that begin with it get their capital from {@link Speech}.
   */
  public String inWords() {
    return spokenTitle().equals(title) ? calledName() : Speech.titled(spokenTitle()) + " " + name;
  }

  /** Short name, with the title where a bishop's is due. */
  public String tightName() {
    return role == PersonRole.BISHOP ? spokenTitle() + " " + shortName : shortName;
  }

  /** The usual ones in the language of whoever reads; others as they were entered. */
  private String spokenTitle() {
    return switch (title) {
      case "Fr" -> say("Father");
      case "Deacon" -> say("Deacon");
      case "Bishop" -> say("Bishop");
      default -> title;
    };
  }
}
