package vestiary.pool;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.Stream;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Grade;
import vestiary.vesting.PieceKind;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frame;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out the form of a piece, with what stands in it. */
@ApplicationScoped
@Transactional
class PieceSheets {

  private final ReadPool pool;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;
  private final CurrentVisitor visitor;
  private final ReadWear wear;
  private final PiecePhotos photos;
  private final WhereItIs where;

  PieceSheets(
      ReadPool pool,
      ReadCluster cluster,
      Frames frames,
      Clock clock,
      CurrentVisitor visitor,
      ReadWear wear,
      PiecePhotos photos,
      WhereItIs where) {
    this.wear = wear;
    this.photos = photos;
    this.where = where;
    this.visitor = visitor;
    this.pool = pool;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  /**
   * What is said over the form.
   *
   * @param done what was just done; may be empty
   * @param problem what keeps the form from being saved; may be empty
   */
  record Note(String done, String problem) {

    static final Note NONE = new Note("", "");

    static Note done(String done) {
      return new Note(done, "");
    }

    static Note problem(String problem) {
      return new Note("", problem);
    }
  }

  /** The form of a piece that is not in the pool yet. */
  PieceForm fresh(Entries entries, Note note) {
    return form(
        say("A new piece"),
        "",
        "",
        entries,
        note,
        PieceForm.Care.NONE,
        PieceForm.Leave.NONE,
        PieceForm.Where.NONE);
  }

  /** The form of a piece as it is stored. */
  PieceForm stored(PooledPiece piece, Note note) {
    return of(piece, entries(piece), Entries.empty(), note);
  }

  /** The same with changes that were typed and not saved. */
  PieceForm typed(PooledPiece piece, Entries entries, Note note) {
    return of(piece, entries, Entries.empty(), note);
  }

  /** The same with a withdrawal that was typed and not saved. */
  PieceForm typedLeave(PooledPiece piece, Entries leave, Note note) {
    return of(piece, entries(piece), leave, note);
  }

  private PieceForm of(PooledPiece piece, Entries entries, Entries leave, Note note) {
    String title = Speech.sentence(PieceWords.kind(piece.kind())) + " " + piece.code();
    return form(
        title,
        piece.code(),
        piece.home().value().toString(),
        entries,
        note,
        care(piece),
        leave(piece, leave),
        where(piece));
  }

  private PieceForm form(
      String title,
      String code,
      String church,
      Entries entries,
      Note note,
      PieceForm.Care care,
      PieceForm.Leave leave,
      PieceForm.Where where) {
    String address = code.isEmpty() ? "/vestments" : "/vestments/" + code;
    Frame frame = frames.of("vestments", code.isEmpty() ? "/vestments/new" : address);
    return new PieceForm(
        frame,
        title,
        code.isEmpty() ? "" : lastWorn(code),
        address,
        note.done(),
        note.problem(),
        new Link(say("All vestments"), "/vestments"),
        entries.field("code"),
        entries.choice("kind", kinds()),
        entries.choice("colour", colours()),
        entries.colours("serves", PieceEntries.allColours().map(PieceWords::ribbon)),
        entries.field("shade"),
        entries.choice("grade", grades()),
        entries.field("size"),
        entries.field("form"),
        entries.field("set"),
        pool.setCodes(),
        entries.field("suit"),
        entries.choice("home", churches()),
        entries.field("owner"),
        entries.choice("ownerPolicy", policies()),
        entries.field("condition"),
        entries.field("place"),
        entries.isTicked("staysHome"),
        new PieceForm.Told(
            entries.field("description"),
            entries.field("provenance"),
            entries.field("acquired"),
            entries.isTicked("precious"),
            entries.field("keeper")),
        church,
        entries.text("version"),
        code.isEmpty() ? "" : address + "/removal",
        care,
        leave,
        where);
  }

  /** For example "Last worn on Sunday 6 December 2026, 10:00." */
  private String lastWorn(String code) {
    return wear.findLast(code)
        .map(last -> last.at().atZone(zone()))
        .map(at -> say("Last worn on %s %d.", Speech.day(at.toLocalDate()), at.getYear()))
        .orElse("");
  }

  private PieceForm.Where where(PooledPiece piece) {
    WhereItIs.Told told = where.of(piece.code());
    return new PieceForm.Where(
        told.now(), told.before(), new Link(say("Out or back"), "/s/" + piece.code()));
  }

  private Entries entries(PooledPiece piece) {
    return PieceEntries.from(piece, slug(piece.home()));
  }

  private String slug(ChurchId home) {
    return cluster.churches().stream()
        .filter(c -> c.id().equals(home))
        .map(Church::slug)
        .findFirst()
        .orElse("");
  }

  private PieceForm.Care care(PooledPiece piece) {
    String action = "/care/" + piece.code();
    Instant now = clock.instant();
    ZoneId zone = zone();
    return new PieceForm.Care(
        action,
        piece.care().stream()
            .sorted(Comparator.comparing(Care::from).reversed())
            .map(c -> spell(c, action, now, zone))
            .toList(),
        photos.of(piece.code()));
  }

  private static PieceForm.Leave leave(PooledPiece piece, Entries typed) {
    String gone = piece.withdrawn().stream().map(PieceWords::withdrawn).findFirst().orElse("");
    return new PieceForm.Leave(
        gone,
        "/vestments/%s/%s".formatted(piece.code(), gone.isEmpty() ? "withdrawal" : "return"),
        typed.field("on"),
        typed.field("reason"),
        typed.field("to"));
  }

  private static PieceForm.Spell spell(Care care, String action, Instant now, ZoneId zone) {
    return new PieceForm.Spell(
        PieceWords.span(care, zone),
        care.reason(),
        care.isOverAt(now) ? "" : "%s/%s/end".formatted(action, care.id()),
        care.from().isAfter(now) ? say("Strike it out") : say("It is back"));
  }

  private ZoneId zone() {
    return cluster.cluster().zone();
  }

  private static Stream<Choice.Option> kinds() {
    return Arrays.stream(PieceKind.values()).map(k -> Choice.Option.of(k.id(), PieceWords.kind(k)));
  }

  private static Stream<Choice.Option> colours() {
    return Stream.concat(
        Stream.of(Choice.Option.of("", say("none, as for albs"))),
        PieceEntries.allColours().map(c -> Choice.Option.of(c.id(), Speech.colour(c))));
  }

  private static Stream<Choice.Option> grades() {
    return Stream.of(
        Choice.Option.of("", say("any day")),
        Choice.Option.of(Grade.FERIAL.id(), say("weekdays")),
        Choice.Option.of(Grade.FESTIVE.id(), say("Sundays and feasts")),
        Choice.Option.of(Grade.SOLEMN.id(), say("solemnities")));
  }

  private Stream<Choice.Option> churches() {
    return cluster.churches().stream()
        .filter(c -> visitor.isOffered(Action.KEEP_VESTMENTS, c.id().value()))
        .map(c -> Choice.Option.of(c.slug(), c.name()));
  }

  private static Stream<Choice.Option> policies() {
    return Stream.of(
        Choice.Option.of(OwnerPolicy.FREELY.id(), say("yes, freely")),
        Choice.Option.of(OwnerPolicy.ASKING.id(), say("yes, on asking the owner")),
        Choice.Option.of(OwnerPolicy.NEVER.id(), say("no")));
  }
}
