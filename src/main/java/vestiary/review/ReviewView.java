package vestiary.review;

import java.util.List;
import vestiary.assigning.Done;
import vestiary.assigning.StandInsView;
import vestiary.web.ClashMark;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;
import vestiary.web.Standing;

/**
 * A week on one page, church by church, in words.
 *
 * @param over for example "Review · Advent, second week"
 * @param title for example "7 to 13 December 2026"
 * @param turn to the weeks before and after
 * @param signed who has signed it and when; empty if nobody has
 * @param word the note that was signed with it; may be empty
 * @param churches those with a Mass, in the order in which people list them
 * @param notes what stands in the way, by number from 1
 * @param since what the changes are since, for example "you signed"; empty if nothing was signed
 * @param changes by date; none if the week reads as it was signed
 * @param priests how many Masses each has on each day; nobody in a week that is looked back at
 * @param earlier to the week as it was signed each time, the last first
 * @param office sheets for the bishop's office that are due by the end of the week and not sent
 * @param standIns who could take the Masses whose celebrant is away; none if nobody is
 * @param done what the last press did, with what undoes it; none or one
 * @param signing the form; only for a week that is not merely looked back at
 */
record ReviewView(
    Frame frame,
    String over,
    String title,
    List<Link> turn,
    Standing standing,
    String signed,
    String word,
    List<Church> churches,
    List<Note> notes,
    String since,
    List<WeekChange> changes,
    Tally priests,
    List<Link> earlier,
    List<Office> office,
    List<StandInsView> standIns,
    List<Done> done,
    List<Signing> signing) {

  ReviewView {
    turn = List.copyOf(turn);
    churches = List.copyOf(churches);
    notes = List.copyOf(notes);
    changes = List.copyOf(changes);
    earlier = List.copyOf(earlier);
    office = List.copyOf(office);
    standIns = List.copyOf(standIns);
    done = List.copyOf(done);
    signing = List.copyOf(signing);
  }

  record Church(String name, List<Mass> masses) {
    Church {
      masses = List.copyOf(masses);
    }
  }

  /**
   * @param day for example "Tue 8"
   * @param redLetter a Sunday or a holy day
   * @param what the celebration, or which Mass is said
   * @param who the celebrant and whom he has with him
   * @param serving for example "servers: Anna K., Tom L."; may be empty
   * @param worn sets and pieces; empty where nothing is planned
   * @param journeys that bring them
   * @param marks of the notes that concern it
   */
  record Mass(
      String day,
      boolean redLetter,
      String time,
      String address,
      Ribbon ribbon,
      String what,
      String celebrant,
      String company,
      String serving,
      String worn,
      List<String> journeys,
      List<Mark> marks) {
    Mass {
      journeys = List.copyOf(journeys);
      marks = List.copyOf(marks);
    }
  }

  record Mark(ClashMark mark, int number) {}

  /**
   * @param isLate whether its day is past
   * @param about where and when the Mass is
   */
  record Office(boolean isLate, String about, String sentence, String address) {}

  /**
   * @param about where and when
   * @param more to the clash; without an address in a week that is looked back at
   * @param mends to what mends it; without an address there, and where there is no page for it
   */
  record Note(int number, ClashMark mark, String about, String sentence, Link more, Link mends) {}

  /**
   * @param days numbers of the days of the month
   * @param permitted how many are permitted, as far as it is on file
   * @param differing where the other kind of day gives another number, one sentence each
   */
  record Tally(List<String> days, List<Priest> priests, String permitted, List<String> differing) {
    Tally {
      days = List.copyOf(days);
      priests = List.copyOf(priests);
      differing = List.copyOf(differing);
    }
  }

  /**
   * @param masses as many as there are days; empty where there is none
   */
  record Priest(String name, List<String> masses, int all) {
    Priest {
      masses = List.copyOf(masses);
    }
  }

  /**
   * @param address to which it is sent
   * @param seen by which it is known what was looked at
   * @param turn of the last signature
   * @param problem what is wrong, one or more whole sentences; may be empty
   */
  record Signing(String address, String seen, int turn, Field note, String problem) {}
}
