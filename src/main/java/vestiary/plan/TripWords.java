package vestiary.plan;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.cluster.Church;
import vestiary.people.CarrierName;
import vestiary.pool.PieceWords;
import vestiary.pool.PooledPiece;
import vestiary.vesting.PieceKind;
import vestiary.web.Speech;

/** Says of a journey what rides, from where, with whom and when. */
public final class TripWords {

  private static final Set<PieceKind> STOLES = Set.of(PieceKind.STOLE, PieceKind.DEACON_STOLE);

  private final Map<UUID, Church> churches;
  private final Map<String, PooledPiece> pieces;
  private final ZoneId zone;

  /** Words for trips between these churches, of these pieces; others are called by their code. */
  public TripWords(List<Church> churches, List<PooledPiece> pieces, ZoneId zone) {
    this.churches =
        churches.stream().collect(Collectors.toMap(church -> church.id().value(), c -> c));
    this.pieces = pieces.stream().collect(Collectors.toMap(PooledPiece::code, piece -> piece));
    this.zone = zone;
  }

  /** The trip for a table of trips. */
  public TripView view(PlanResult.Trip trip) {
    return new TripView(
        Speech.day(trip.leaveBy().atZone(zone).toLocalDate()),
        clock(trip.leaveBy()),
        clock(trip.arriveBy()),
        church(trip.from()),
        church(trip.to()),
        named(trip.pieces()),
        trip.carrier().isEmpty()
            ? say("a journey of its own")
            : say("with %s", CarrierName.of(trip.carrier())),
        note(trip),
        "",
        "");
  }

  /** For example "from Saint Anne, with Father Ilverton, leaves by 09:10". */
  String inShort(PlanResult.Trip trip) {
    return say(
        "from %s, %s, leaves by %s",
        church(trip.from()),
        trip.carrier().isEmpty()
            ? say("a journey of its own")
            : say("with %s", CarrierName.of(trip.carrier())),
        clock(trip.leaveBy()));
  }

  /** Sets by their own code with what of them is meant, single pieces by theirs. */
  public String named(List<String> codes) {
    Map<String, Set<String>> kinds = new LinkedHashMap<>();
    for (String code : codes.stream().sorted(Comparator.comparing(this::kind)).toList()) {
      PooledPiece piece = pieces.get(code);
      String name = name(code);
      String kind = piece == null ? Speech.noun(1, "piece") : PieceWords.kind(piece.kind());
      kinds.computeIfAbsent(name, unknown -> new LinkedHashSet<>()).add(kind);
    }
    Map<String, List<String>> alike = new LinkedHashMap<>();
    kinds.forEach(
        (name, of) ->
            alike
                .computeIfAbsent(Speech.list(List.copyOf(of)), unknown -> new ArrayList<>())
                .add(name));
    return alike.entrySet().stream()
        .map(like -> Speech.list(like.getValue()) + ", " + like.getKey())
        .collect(Collectors.joining("; "));
  }

  /** Sets by their own code, single pieces by theirs, and no more. */
  public String codes(Collection<String> codes) {
    return Speech.list(names(codes));
  }

  /** The same, each once: the vestment before the stole that comes with it, then by code. */
  public List<String> names(Collection<String> codes) {
    return codes.stream()
        .sorted(Comparator.comparing(this::kind).thenComparing(Comparator.naturalOrder()))
        .map(this::name)
        .distinct()
        .toList();
  }

  private String name(String code) {
    PooledPiece piece = pieces.get(code);
    return piece == null || piece.set().isEmpty() ? code : piece.set();
  }

  /** The vestment before the stole that comes with it; what is gone stands last. */
  private int kind(String code) {
    if (!pieces.containsKey(code)) {
      return Integer.MAX_VALUE;
    }
    PieceKind kind = pieces.get(code).kind();
    return STOLES.contains(kind) ? PieceKind.values().length : kind.ordinal();
  }

  /** Never absent: one that is gone is called so. */
  public String church(UUID id) {
    return churches.containsKey(id) ? churches.get(id).name() : say("a church that is gone");
  }

  /** For example "17:46". */
  public String clock(Instant moment) {
    return Speech.clock(moment.atZone(zone));
  }

  /** For example "Tuesday 8 December". */
  public String day(Instant moment) {
    return Speech.day(moment.atZone(zone).toLocalDate());
  }

  /** ISO 8601. */
  public String date(Instant moment) {
    return moment.atZone(zone).toLocalDate().toString();
  }

  /** For example "Tuesday 8 December, 17:46". */
  public String moment(Instant moment) {
    return day(moment) + ", " + clock(moment);
  }

  private String note(PlanResult.Trip trip) {
    String ready =
        trip.ready().stream()
            .filter(moment -> moment.isBefore(trip.leaveBy()))
            .map(this::from)
            .findFirst()
            .orElse("");
    return (ready + (trip.onAsking() ? say(" Ask the owner first.") : "")).strip();
  }

  private String from(Instant ready) {
    return say("Free from %s, %s.", Speech.day(ready.atZone(zone).toLocalDate()), clock(ready));
  }
}
