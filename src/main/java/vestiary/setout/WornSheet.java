package vestiary.setout;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.planning.PieceNouns;
import vestiary.planning.WearerNames;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.pool.Worn;
import vestiary.schedule.DatedMass;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Field;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out the form in which it is put right what was worn. */
@ApplicationScoped
class WornSheet {

  private final PutRight worn;
  private final ReadPool pool;
  private final Frames frames;
  private final Clock clock;

  WornSheet(PutRight worn, ReadPool pool, Frames frames, Clock clock) {
    this.worn = worn;
    this.pool = pool;
    this.frames = frames;
    this.clock = clock;
  }

  /** As it is kept. */
  @Transactional
  WornView stored(String id, String done) {
    WornOfMass found = worn.read(id);
    return view(found, WornEntries.from(found), done, "");
  }

  /** As it was typed and not kept. */
  @Transactional
  WornView typed(String id, Entries entries, String problem) {
    return view(worn.read(id), entries, "", problem);
  }

  private WornView view(WornOfMass found, Entries entries, String done, String problem) {
    DatedMass mass = found.mass();
    String address = "/masses/%s/worn".formatted(mass.id().value());
    Map<String, PooledPiece> pieces =
        pool.pieces(clock.instant()).stream()
            .collect(Collectors.toMap(PooledPiece::code, Function.identity()));
    boolean begun = !mass.start().toInstant().isAfter(clock.instant());
    return new WornView(
        frames.of("day", address),
        "%s · %s, %s"
            .formatted(mass.church().name(), Speech.day(mass.date()), Speech.clock(mass.start())),
        mass.church().id().value().toString(),
        done,
        problem,
        List.of(
            new Link(say("Set-out sheet"), "/masses/%s/set-out".formatted(mass.id().value())),
            new Link(say("The Mass"), "/masses/" + mass.id().value())),
        found.isPutRight() ? address + "/as-planned" : "",
        begun ? address : "",
        found.lines().stream().map(line -> line(mass, line, pieces, entries)).toList(),
        new Field(entries.text(WornEntries.BESIDES), entries.error(WornEntries.BESIDES)),
        pieces.keySet().stream().sorted().toList());
  }

  private static WornView.Line line(
      DatedMass mass, WornOfMass.Line line, Map<String, PooledPiece> pieces, Entries entries) {
    PooledPiece piece = pieces.get(line.piece());
    return new WornView.Line(
        "%s %s".formatted(Speech.noun(1, PieceNouns.of(piece.kind())), piece.code()),
        line.wearers().stream().findFirst().map(wearer -> WearerNames.of(mass, wearer)).orElse(""),
        WornEntries.worn(line.piece()),
        !entries.text(WornEntries.worn(line.piece())).equals(WornEntries.NO),
        WornEntries.instead(line.piece()),
        say("Instead of ") + line.piece(),
        entries.choice(
            WornEntries.instead(line.piece()),
            Stream.concat(
                Stream.of(Choice.Option.of("", say("nothing else"))),
                pieces.values().stream()
                    .filter(other -> other.kind() == piece.kind() && other != piece)
                    .sorted(
                        Comparator.comparing(
                                (PooledPiece other) -> !other.home().equals(mass.church().id()))
                            .thenComparing(PooledPiece::code))
                    .map(
                        other ->
                            Choice.Option.of(
                                other.code(),
                                "%s, %s"
                                    .formatted(other.code(), Speech.colour(other.colour())))))));
  }

  /** Pieces worn in the place of nothing, as they stand in one field. */
  static String besides(List<Worn> besides) {
    return besides.stream().map(Worn::piece).collect(Collectors.joining(", "));
  }
}
