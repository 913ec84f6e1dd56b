package vestiary.pool;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.ColourChoice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * One piece to be entered or changed, with its care.
 *
 * @param title for example "Chasuble HT-W1-C" or "A new piece"
 * @param lastWorn when it was worn last, in a sentence; empty if that is not known
 * @param action where the form is sent
 * @param done what was just done, for example "Saved."; may be empty
 * @param problem what keeps the whole form from being saved; empty if nothing does
 * @param back to the pool
 * @param colour what it is; options carry colour ids
 * @param serves what it may serve as besides
 * @param form its cut, for example "full"
 * @param sets codes of known sets, for completion
 * @param told what an inventory says of it
 * @param staysHome whether it never leaves this church
 * @param church id of the one where it is at home; empty for a new piece
 * @param version of what was read, to notice a lost race; empty for a new piece
 * @param removal where a request to delete is sent; empty where none is offered
 * @param care what follows below; {@link Care#NONE} for a new piece
 * @param leave how it is withdrawn; {@link Leave#NONE} for a new piece
 * @param where where it is now and who had it; {@link Where#NONE} for a new piece
 */
public record PieceForm(
    Frame frame,
    String title,
    String lastWorn,
    String action,
    String done,
    String problem,
    Link back,
    Field code,
    Choice kind,
    Choice colour,
    ColourChoice serves,
    Field shade,
    Choice grade,
    Field size,
    Field form,
    Field set,
    List<String> sets,
    Field suit,
    Choice home,
    Field owner,
    Choice ownerPolicy,
    Field condition,
    Field place,
    boolean staysHome,
    Told told,
    String church,
    String version,
    String removal,
    Care care,
    Leave leave,
    Where where) {

  public PieceForm {
    sets = List.copyOf(sets);
  }

  /** What an inventory says of it beside. */
  public record Told(
      Field description, Field provenance, Field acquired, boolean precious, Field keeper) {}

  /**
   * @param now for example "At Holy Trinity, press 2."
   * @param before who had it before, the latest first
   * @param press the page on which it goes out and comes back
   */
  public record Where(String now, List<String> before, Link press) {

    public static final Where NONE = new Where("", List.of(), Link.NONE);

    public Where {
      before = List.copyOf(before);
    }
  }

  /**
   * @param action where something is said to be wrong with it; empty for a new piece
   * @param spells newest first
   * @param photos of the piece and of what ailed it
   */
  public record Care(String action, List<Spell> spells, List<PiecePhotos.Shown> photos) {

    public static final Care NONE = new Care("", List.of(), List.of());

    public Care {
      spells = List.copyOf(spells);
      photos = List.copyOf(photos);
    }
  }

  /**
   * @param span for example "27 November to 11 December"
   * @param returned where its end is sent; empty if it is over already
   * @param press what ends it: "It is back", or "Strike it out" before it began
   */
  public record Spell(String span, String reason, String returned, String press) {}

  /**
   * How it is withdrawn from use.
   *
   * @param gone since when, why and where it went, in a sentence; empty while it is in use
   * @param action where it is sent that it is, or that it is in use again; empty for a new piece
   */
  public record Leave(String gone, String action, Field on, Field reason, Field to) {

    public static final Leave NONE = new Leave("", "", Field.empty(), Field.empty(), Field.empty());
  }
}
