package vestiary.setout;

import java.util.List;
import vestiary.calendar.Colour;
import vestiary.web.Celebrated;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/**
 * Set-out sheets for the vesting table, one a Mass.
 *
 * @param over for example "Saint Anne, Millferry"
 * @param lead how many Masses, in a sentence
 * @param papers A4 and A6
 * @param churches all of them, and each; empty on the page of one Mass
 * @param paper the one that is printed on, {@code a4} or {@code a6}
 * @param nothing what is said where there is no sheet; else empty
 */
public record SetOutView(
    Frame frame,
    String title,
    String over,
    String lead,
    List<Link> turn,
    List<Option> papers,
    List<Option> churches,
    String paper,
    List<Sheet> sheets,
    String nothing) {

  public SetOutView {
    turn = List.copyOf(turn);
    papers = List.copyOf(papers);
    churches = List.copyOf(churches);
    sheets = List.copyOf(sheets);
  }

  /** A choice that is a link. */
  public record Option(Link link, boolean chosen) {}

  /**
   * One Mass.
   *
   * @param address of the Mass
   * @param churchId of its church
   * @param number of the day in the month
   * @param over church, place and date
   * @param head for example "Set out by 18:00 for Mass at 18:30"
   * @param ribbons that hang from the head
   * @param what kind of Mass where it is not that of the day; may be empty
   * @param why this colour
   * @param note for the sacristan; may be empty
   * @param serving who serves, for example "Servers: Anna K., Tom L."; empty if nobody is named
   * @param open what is said where nothing is planned; else empty
   * @param also what else must be ready
   * @param heights those who are asked how tall they are
   * @param ways what whoever sets out can do about it now
   */
  public record Sheet(
      String address,
      String churchId,
      String number,
      boolean redLetter,
      String over,
      String head,
      List<Colour> ribbons,
      Ribbon ribbon,
      Celebrated celebration,
      String what,
      String why,
      String note,
      String serving,
      String open,
      List<Pile> piles,
      List<Pile> beside,
      List<Spare> spares,
      List<Coming> coming,
      List<String> also,
      List<Asked> heights,
      List<Link> ways) {

    public Sheet {
      ribbons = List.copyOf(ribbons);
      piles = List.copyOf(piles);
      beside = List.copyOf(beside);
      spares = List.copyOf(spares);
      coming = List.copyOf(coming);
      also = List.copyOf(also);
      heights = List.copyOf(heights);
      ways = List.copyOf(ways);
    }
  }

  /**
   * One who is asked how tall he is.
   *
   * @param person short name in addresses
   */
  public record Asked(String person, String question) {}

  /**
   * One who vests, or all servers together.
   *
   * @param role for example "Concelebrant"; empty where the name says it
   */
  public record Pile(String who, String role, List<Line> lines) {
    public Pile {
      lines = List.copyOf(lines);
    }
  }

  /**
   * One thing on the table.
   *
   * @param what for example "chasuble HT-W1-C, 132 cm"
   * @param ribbons its colour; none for what has none
   * @param note what it stands for, or why it is left out; may be empty
   * @param state planned, held or out; empty where no piece is named
   * @param isLaid whether there is anything to lay out and tick
   */
  public record Line(
      String what, List<Ribbon> ribbons, String where, String note, String state, boolean isLaid) {
    public Line {
      ribbons = List.copyOf(ribbons);
    }
  }

  /**
   * What may stand in.
   *
   * @param what for example "chasuble"
   * @param free codes with their places, or that none is free
   * @param instead lawful steps with their norms; may be empty
   */
  public record Spare(String what, List<Ribbon> ribbons, String free, String instead) {
    public Spare {
      ribbons = List.copyOf(ribbons);
    }
  }

  /** Pieces on their way, and their way back. */
  public record Coming(String pieces, String brought, String back) {}
}
