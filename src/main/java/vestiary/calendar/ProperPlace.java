package vestiary.calendar;

/**
 * Where a diocese, a place, an order or a church sets one of its own celebrations in the table of
 * liturgical days, and so with which rank it is kept. Source: UNLY 59 I.4, II.8, III.11 and 12.
 */
public enum ProperPlace implements Term {
  PATRON_OF_THE_PLACE(Rank.SOLEMNITY, Precedence.PATRON_OF_THE_PLACE),
  /** Title, founder or principal patron of an order or congregation. */
  FOUNDER_OF_AN_ORDER(Rank.SOLEMNITY, Precedence.PATRON_OF_AN_ORDER),
  PATRON_OF_THE_DIOCESE(Rank.FEAST, Precedence.PATRON_OF_THE_DIOCESE),
  /** In the cathedral itself a solemnity: there it is the church's own dedication. */
  DEDICATION_OF_THE_CATHEDRAL(Rank.FEAST, Precedence.CATHEDRAL_DEDICATION),
  /** Principal patron of a region, a province or a wider territory. */
  PATRON_OF_THE_REGION(Rank.FEAST, Precedence.PATRON_OF_THE_COUNTRY),
  /** Principal patron of a religious province. */
  FEAST_OF_AN_ORDER(Rank.FEAST, Precedence.FEAST_OF_AN_ORDER),
  FEAST_OF_ONE_CHURCH(Rank.FEAST, Precedence.FEAST_OF_ONE_CHURCH),
  FEAST_OF_THE_DIOCESE(Rank.FEAST, Precedence.OTHER_PROPER_FEAST),
  /** Secondary patron of the place, the diocese, a region or an order. */
  SECONDARY_PATRON(Rank.MEMORIAL, Precedence.MEMORIAL_OF_A_PATRON),
  MEMORIAL(Rank.MEMORIAL, Precedence.OTHER_PROPER_MEMORIAL),
  OPTIONAL_MEMORIAL(Rank.OPTIONAL_MEMORIAL, Precedence.OPTIONAL_MEMORIAL);

  private final Rank rank;
  private final Precedence precedence;

  ProperPlace(Rank rank, Precedence precedence) {
    this.rank = rank;
    this.precedence = precedence;
  }

  /** The rank it is kept with. */
  public Rank rank() {
    return rank;
  }

  /** Its place in the table of liturgical days. */
  public Precedence precedence() {
    return precedence;
  }

  /**
   * Whether whose patron it is may keep the Birth of John the Baptist on 24 June when the Sacred
   * Heart falls there. Source: Congregation for Divine Worship, note of 11 May 2020.
   */
  boolean isPrincipalPatron() {
    return this == PATRON_OF_THE_PLACE
        || this == FOUNDER_OF_AN_ORDER
        || this == PATRON_OF_THE_DIOCESE
        || this == PATRON_OF_THE_REGION;
  }
}
