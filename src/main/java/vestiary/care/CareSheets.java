package vestiary.care;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import vestiary.cluster.ReadCluster;
import vestiary.pool.Care;
import vestiary.pool.PiecePhotos;
import vestiary.pool.PieceWords;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadCare;
import vestiary.pool.ReadPool;
import vestiary.schedule.MassNames;
import vestiary.schedule.PlanFit;
import vestiary.vesting.MassId;
import vestiary.web.Entries;
import vestiary.web.Field;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out the pages of one time in care. */
@ApplicationScoped
@Transactional
class CareSheets {

  /** Plans farther ahead are looked at when their time comes. */
  private static final int DAYS_AHEAD = 60;

  private final ReadPool pool;
  private final ReadCare care;
  private final ReportWrong report;
  private final PlanFit fit;
  private final MassNames masses;
  private final PiecePhotos photos;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;

  CareSheets(
      ReadPool pool,
      ReadCare care,
      ReportWrong report,
      PlanFit fit,
      MassNames masses,
      PiecePhotos photos,
      ReadCluster cluster,
      Frames frames,
      Clock clock) {
    this.pool = pool;
    this.care = care;
    this.report = report;
    this.fit = fit;
    this.masses = masses;
    this.photos = photos;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  /** The form as it is opened. */
  CareForm fresh(String code) {
    return form(code, Entries.empty().with("from", today().toString()), "");
  }

  /** The form with what was typed and not kept. */
  CareForm form(String code, Entries typed, String problem) {
    PooledPiece piece = pool.get(code);
    List<String> others = report.others(piece).stream().map(PooledPiece::code).toList();
    String address = "/care/" + piece.code();
    return new CareForm(
        frames.of("vestments", address),
        say("Something is wrong with %s", piece.code()),
        CareWords.title(piece),
        piece.home().value().toString(),
        address,
        problem,
        typed.choice("kind", CareWords.kinds()),
        typed.field("from"),
        typed.field("to"),
        typed.field("reason"),
        typed.field("photo"),
        others.isEmpty() ? "" : say("The rest of the set goes with it: %s", Speech.list(others)),
        typed.isTicked("whole"),
        new Link(piece.code(), "/vestments/" + piece.code()));
  }

  /** What a time in care comes to. */
  CareView view(String code, String id, String done) {
    ReadCare.Found found = care.get(code, id);
    PooledPiece piece = found.piece();
    Care spell = found.care();
    String address = "/care/%s/%s".formatted(piece.code(), spell.id());
    boolean over = spell.isOverAt(clock.instant());
    List<String> lost = over ? List.of() : names(found.lost());
    return new CareView(
        frames.of("vestments", address),
        CareWords.title(piece) + (over ? say(" was in care") : say(" is in care")),
        done,
        over ? address + "/reopen" : "",
        "%s, %s."
            .formatted(Speech.sentence(CareWords.reason(spell)), PieceWords.span(spell, zone())),
        CareWords.late(spell, zone()),
        over ? "" : sentence(lost.size()),
        lost,
        over ? List.of() : unfit(spell),
        over ? "" : address + "/end",
        spell.from().isAfter(clock.instant()) ? say("Strike it out") : say("It is back"),
        piece.home().value().toString(),
        photos.of(piece.code()).stream()
            .filter(photo -> photo.care().equals(spell.id().toString()))
            .toList(),
        spell.id().toString(),
        Field.empty(),
        new Link(piece.code(), "/vestments/" + piece.code()));
  }

  private List<String> names(List<MassId> lost) {
    List<UUID> ids = lost.stream().map(MassId::value).toList();
    Map<UUID, String> names = masses.of(ids, zone());
    return ids.stream().map(names::get).filter(Objects::nonNull).toList();
  }

  private static String sentence(int lost) {
    return switch (lost) {
      case 0 -> say("No Mass loses it.");
      case 1 -> say("One Mass loses it:");
      default -> say("%s lose it:", Speech.sentence(Speech.count(lost, "Mass")));
    };
  }

  private List<PlanFit.Unfit> unfit(Care spell) {
    LocalDate first = later(today(), date(spell.from()));
    LocalDate horizon = first.plusDays(DAYS_AHEAD);
    LocalDate last =
        spell.findEnd().map(this::date).filter(end -> end.isBefore(horizon)).orElse(horizon);
    return last.isBefore(first) ? List.of() : fit.within(first, last);
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }

  private LocalDate today() {
    return date(clock.instant());
  }

  private LocalDate date(Instant moment) {
    return moment.atZone(zone()).toLocalDate();
  }

  private ZoneId zone() {
    return cluster.cluster().zone();
  }
}
