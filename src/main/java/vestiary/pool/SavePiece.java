package vestiary.pool;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.Grade;
import vestiary.vesting.PieceKind;

/** Enters a piece, changes one, takes one out of the pool. */
@ApplicationScoped
@Transactional
public class SavePiece {

  private static final int LONGEST_CODE = 40;
  private static final int LONGEST_NAME = 200;

  /** Only these are worn in the colour of the Mass; linen and the like count as white. */
  private static final Set<String> COLOURED =
      Set.of(
          PieceKind.CHASUBLE.id(),
          PieceKind.STOLE.id(),
          PieceKind.DEACON_STOLE.id(),
          PieceKind.DALMATIC.id(),
          PieceKind.COPE.id(),
          PieceKind.HUMERAL_VEIL.id());

  private final PieceRows pieces;
  private final SetRows sets;
  private final SuitRows suits;
  private final ReadCluster cluster;
  private final CurrentVisitor visitor;
  private final LentPieces lent;

  SavePiece(
      PieceRows pieces,
      SetRows sets,
      SuitRows suits,
      ReadCluster cluster,
      CurrentVisitor visitor,
      LentPieces lent) {
    this.visitor = visitor;
    this.lent = lent;
    this.pieces = pieces;
    this.sets = sets;
    this.suits = suits;
    this.cluster = cluster;
  }

  /**
   * A piece as it was typed; what is {@code null} or blank is not known.
   *
   * @param colours what it may serve as; the first is what it is
   * @param set code of its set, made if there is none of that code
   * @param suit name of the suit its set belongs to; {@code null} leaves the set's suit as it is
   * @param home short name of the church it belongs in
   * @param owner whose it is; the parish of its church if not given
   * @param particulars for the inventory; {@code null} leaves them as they are
   * @param version of the piece that the person looked at, or {@code null} to change it anyway
   */
  public record Request(
      String code,
      String kind,
      List<String> colours,
      String shade,
      String grade,
      String size,
      String form,
      String set,
      String suit,
      String home,
      String owner,
      String ownerPolicy,
      String condition,
      String place,
      Boolean staysHome,
      Particulars particulars,
      Integer version) {}

  /** What is wrong with a request; empty if it can be kept. Nothing is changed. */
  public List<FieldFault> findFaults(Request request) {
    Asked asked = new Asked();
    fill(new PieceRow(), request, asked);
    return asked.faults();
  }

  /**
   * Enters a new piece.
   *
   * @return its code
   * @throws Refused if a field is unfit or the code is taken
   */
  public String enter(Request request) {
    PieceRow row = new PieceRow();
    keep(row, request);
    if (pieces.findByCode(row.code).isPresent()) {
      throw new Refused(
          new Refusal.Taken("code", say("The code \"%s\" belongs to another piece.", row.code)));
    }
    pieces.persistAndFlush(row);
    return row.code;
  }

  /**
   * Changes a piece, its code included.
   *
   * @return its code
   * @throws Refused if there is none of that code, it was changed meanwhile, or a field is unfit
   */
  public String change(String code, Request request) {
    PieceRow row = pieces.getByCode(code);
    if (request.version() != null && request.version() != row.version) {
      throw new Refused(new Refusal.Outdated("piece " + code));
    }
    visitor.refuseOutsideOwn(Action.KEEP_VESTMENTS, row.homeId);
    LentPieces.refuseIfBorrowed(row);
    UUID before = row.setId;
    keep(row, request);
    pieces.flush();
    removeIfEmpty(before);
    return row.code;
  }

  /** Enters the piece, or changes the one of that code; so a list can be sent twice. */
  public void enterOrChange(Request request) {
    PieceRow row = pieces.findByCode(String.valueOf(request.code()).strip()).orElse(new PieceRow());
    LentPieces.refuseIfBorrowed(row);
    keep(row, request);
    pieces.persist(row);
  }

  /**
   * Takes a piece that was entered by mistake out of the list, and its set with the last piece of
   * it. What was in use is withdrawn instead, see {@link WithdrawPiece}.
   *
   * @throws Refused if there is none of that code
   */
  public void remove(String code) {
    PieceRow row = pieces.getByCode(code);
    visitor.refuseOutsideOwn(Action.KEEP_VESTMENTS, row.homeId);
    LentPieces.refuseIfBorrowed(row);
    lent.refuseIfLent(row);
    pieces.delete(row);
    pieces.flush();
    removeIfEmpty(row.setId);
  }

  private void keep(PieceRow row, Request request) {
    Asked asked = new Asked();
    fill(row, request, asked);
    asked.refuseIfFaulty();
    visitor.refuseOutsideOwn(Action.KEEP_VESTMENTS, row.homeId);
    String set = asked.text("set", request.set());
    String suit = asked.text("suit", request.suit());
    row.setId = set.isEmpty() ? null : setCalled(set, request.suit() == null, suit).id;
  }

  private SetRow setCalled(String code, boolean leaveSuit, String suit) {
    SetRow set = sets.called(code);
    if (!leaveSuit) {
      set.suitId = suit.isEmpty() ? null : suits.called(suit).id;
    }
    return set;
  }

  private void removeIfEmpty(UUID set) {
    if (set != null && pieces.count("setId", set) == 0) {
      sets.deleteById(set);
    }
  }

  private void fill(PieceRow row, Request request, Asked asked) {
    row.code = asked.needed("code", request.code(), LONGEST_CODE);
    if (!row.code.isEmpty() && !row.code.matches("[\\p{L}\\p{N}][\\p{L}\\p{N}._-]*")) {
      asked.fault(
          "code",
          say(
              "code \"%s\" must be of letters, digits, hyphens, dots or underscores, as in HT-W1-C.",
              row.code));
    }
    if (row.code.equalsIgnoreCase("new")) {
      asked.fault(
          "code", say("code \"new\" is the address of the form for new pieces; choose another."));
    }
    if (asked.needed("kind", request.kind(), LONGEST_CODE).isEmpty()) {
      row.kind = "";
    } else {
      row.kind = asked.findTerm(PieceKind.class, "kind", request.kind()).map(Term::id).orElse("");
    }
    row.colours = colours(row.kind, request.colours(), asked);
    row.shade = asked.text("shade", request.shade());
    row.grade = asked.findTerm(Grade.class, "grade", request.grade()).map(Term::id).orElse("");
    row.size = asked.text("size", request.size());
    row.form = asked.text("form", request.form());
    row.ownerPolicy = asked.term("ownerPolicy", request.ownerPolicy(), OwnerPolicy.FREELY).id();
    row.condition = asked.text("condition", request.condition());
    row.place = asked.text("place", request.place());
    row.staysHome = Boolean.TRUE.equals(request.staysHome());
    if (request.particulars() != null) {
      fill(row, request.particulars(), asked);
    }
    String set = asked.text("set", request.set(), LONGEST_CODE);
    if (!asked.text("suit", request.suit(), LONGEST_NAME).isEmpty() && set.isEmpty()) {
      asked.fault("suit", say("A suit is made of sets; name the set as well."));
    }
    fillHome(row, request, asked);
  }

  private static void fill(PieceRow row, Particulars given, Asked asked) {
    row.description = asked.text("description", given.description());
    row.provenance = asked.text("provenance", given.provenance());
    row.acquired = asked.text("acquired", given.acquired(), LONGEST_NAME);
    row.precious = given.precious();
    row.keeper = asked.text("keeper", given.keeper(), LONGEST_NAME);
  }

  private void fillHome(PieceRow row, Request request, Asked asked) {
    String slug = asked.needed("home", request.home(), LONGEST_CODE);
    Optional<Church> home = slug.isEmpty() ? Optional.empty() : cluster.findChurch(slug);
    if (home.isEmpty() && !slug.isEmpty()) {
      asked.fault("home", say("home \"%s\" is no church of this cluster.", slug));
    }
    row.homeId = home.map(c -> c.id().value()).orElse(null);
    String owner = asked.text("owner", request.owner());
    row.owner = owner.isEmpty() ? home.map(Church::parish).orElse("") : owner;
  }

  private static String[] colours(String kind, List<String> given, Asked asked) {
    if (given == null || given.isEmpty()) {
      if (!kind.isEmpty() && !COLOURED.contains(kind)) {
        return new String[] {Colour.WHITE.id()};
      }
      asked.fault("colours", say("colours is missing; name at least what the piece is."));
      return new String[0];
    }
    Set<String> colours = new LinkedHashSet<>();
    given.forEach(
        c ->
            asked
                .findTerm(Colour.class, "colours", c == null || c.isBlank() ? "none" : c)
                .ifPresent(found -> colours.add(found.id())));
    return colours.toArray(String[]::new);
  }
}
