package vestiary.pool;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/**
 * All vestments of the cluster, in words for their page.
 *
 * @param done what was just done; empty else
 * @param lead for example "Fifty-one sets in six churches; three are away."
 * @param add the form for a new piece
 * @param churches to sift by, the first option being all of them
 * @param colours to sift by, likewise
 * @param kinds to sift by, likewise
 * @param tally {@link Tally#NONE} where there is nothing to count
 * @param stores what each church keeps, after sifting
 * @param nothing said where nothing is found; otherwise empty
 */
public record PoolView(
    Frame frame,
    String done,
    String lead,
    Link add,
    Choice churches,
    Choice colours,
    Choice kinds,
    Tally tally,
    List<Store> stores,
    String nothing) {

  public PoolView {
    stores = List.copyOf(stores);
  }

  /**
   * Chasubles by church and colour. The sums are given, so that the page proves itself.
   *
   * @param heads the colours of the columns
   * @param rows one a church, each with one cell a colour
   * @param sums one a colour
   * @param total of all
   */
  public record Tally(List<Ribbon> heads, List<Row> rows, List<Integer> sums, int total) {

    public static final Tally NONE = new Tally(List.of(), List.of(), List.of(), 0);

    public Tally {
      heads = List.copyOf(heads);
      rows = List.copyOf(rows);
      sums = List.copyOf(sums);
    }
  }

  /**
   * @param address of the pool sifted to this church
   */
  public record Row(String church, String place, String address, List<Cell> cells, int sum) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * @param ready those that can be used now
   * @param away those in care or lent out
   */
  public record Cell(Ribbon ribbon, int ready, int away) {
    public int sum() {
      return ready + away;
    }
  }

  /**
   * @param count for example "17 sets and 4 pieces besides"
   */
  public record Store(String church, String place, String count, List<Group> groups) {
    public Store {
      groups = List.copyOf(groups);
    }
  }

  /**
   * A set, or the pieces that belong to none.
   *
   * @param code for example "HT-W1"; empty for pieces of no set
   * @param name for example "the jubilee gold", or "Pieces of no set"
   * @param suit for example "matches HT-W2 and HT-W3"; may be empty
   */
  public record Group(String code, String name, String suit, List<Piece> pieces) {
    public Group {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * @param address of the piece's form
   * @param also colours it may serve as besides, for example "also as white"; may be empty
   * @param details size, place and condition, for example "132 cm, press 2, good"
   * @param staysHome "does not leave this church"; empty if it may
   * @param care where it is and until when, for example "at the cleaner until 11 December"; may be
   *     empty
   */
  public record Piece(
      String code,
      String address,
      String kind,
      Ribbon ribbon,
      String also,
      String details,
      String staysHome,
      String care) {}
}
