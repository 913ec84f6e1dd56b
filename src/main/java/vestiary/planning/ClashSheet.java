package vestiary.planning;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.allocation.Hindrance;
import vestiary.allocation.LateArrival;
import vestiary.allocation.Level;
import vestiary.allocation.NotServing;
import vestiary.allocation.Shortage;
import vestiary.cluster.Church;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.web.English;
import vestiary.web.Frame;
import vestiary.web.Link;

/** Sets out one clash with its proof, so that whoever counts both lists has checked it. */
final class ClashSheet {

  private final SpanToCheck span;
  private final Clash clash;
  private final Locale locale;
  private final ZoneId zone;
  private final Map<MassId, DatedMass> masses;
  private final Map<ChurchId, Church> churches;

  ClashSheet(SpanToCheck span, Clash clash) {
    this.span = span;
    this.clash = clash;
    this.locale = span.cluster().language();
    this.zone = span.cluster().zone();
    this.masses =
        span.masses().stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
    this.churches =
        span.churches().stream().collect(Collectors.toMap(Church::id, Function.identity()));
  }

  ClashView view(Frame frame) {
    return clash.findProof().map(s -> shortage(frame, s)).orElseGet(() -> againstNorms(frame));
  }

  private ClashView againstNorms(Frame frame) {
    return view(
        frame,
        CountPicture.Drawing.NONE,
        JourneyPicture.Drawing.NONE,
        List.of(clash.words().title() + ".", clash.words().more()),
        "",
        "",
        List.of(),
        "",
        List.of(),
        List.of());
  }

  private ClashView shortage(Frame frame, Shortage s) {
    ShortageWords words = new ShortageWords(s, masses, zone);
    boolean late = !s.late().isEmpty();
    return view(
        frame,
        late ? CountPicture.Drawing.NONE : CountPicture.of(count(s, words)),
        late ? journey(s.late().get(0)) : JourneyPicture.Drawing.NONE,
        words(s, words),
        "%s needed, %s %s, %s short."
            .formatted(
                English.sentence(English.count(s.needed())),
                English.count(s.available()),
                s.level() == Level.LOCAL ? "there" : "that could serve",
                English.count(s.missing())),
        tallyTitle(s, words),
        tally(s),
        English.sentence(English.count(all(s))) + ", each counted once.",
        steps(s, words),
        carriages(s, words));
  }

  private ClashView view(
      Frame frame,
      CountPicture.Drawing count,
      JourneyPicture.Drawing journey,
      List<String> words,
      String verdict,
      String tallyTitle,
      List<ClashView.TallyLine> tally,
      String total,
      List<String> steps,
      List<String> carriages) {
    DatedMass first = clash.first();
    List<Link> turn = new ArrayList<>();
    turn.add(new Link("The week", "/week/" + WeekSheet.monday(first.date())));
    turn.add(new Link("The day", "/day/" + first.date()));
    clash
        .masses()
        .forEach(
            m ->
                turn.add(
                    new Link(
                        "Change %s, %s".formatted(English.clock(m.start()), m.church().name()),
                        "/masses/" + m.id().value())));
    return new ClashView(
        frame,
        clash.severity().mark(),
        clash.words().about(),
        clash.words().title(),
        context(),
        turn,
        count,
        journey,
        words.stream().filter(w -> !w.isBlank()).toList(),
        verdict,
        sources(),
        tallyTitle,
        tally,
        total,
        "",
        steps,
        carriages);
  }

  private String context() {
    String which =
        clash.masses().stream()
            .map(m -> MassWords.whole(m, locale))
            .distinct()
            .collect(Collectors.joining("; "));
    String notes =
        clash.masses().stream()
            .map(m -> m.chosen().note())
            .filter(n -> !n.isEmpty())
            .distinct()
            .map(n -> n.endsWith(".") ? n : n + ".")
            .collect(Collectors.joining(" "));
    String calm =
        clash.severity() == ClashSeverity.DECIDE ? " Mass can be celebrated all the same." : "";
    return "%s: %s. %s%s"
        .formatted(English.sentence(clash.first().colour().id()), which, notes, calm)
        .strip();
  }

  private String sources() {
    List<String> sources =
        clash
            .findProof()
            .map(s -> s.needs().stream().map(Need::source).distinct().toList())
            .orElse(List.of());
    return sources.isEmpty()
        ? ""
        : "Checked by counting both, not by search. Vesture: %s. %s"
            .formatted(String.join("; ", sources), clash.first().option().reason());
  }

  private List<String> words(Shortage s, ShortageWords words) {
    List<String> said = new ArrayList<>();
    for (DatedMass mass : clash.masses()) {
      List<Need> needs = s.needs().stream().filter(n -> n.mass().equals(mass.id())).toList();
      Need one = needs.get(0);
      said.add(
          "%s, %s: %s, set out by %s and cleared by %s."
              .formatted(
                  mass.church().name(),
                  English.clock(mass.start()),
                  English.count(needs.size())
                      + " "
                      + one.colour().id()
                      + " "
                      + words.noun(needs.size()),
                  clock(one.window().setOut()),
                  clock(one.window().cleared())));
    }
    s.late().forEach(l -> said.add(road(l)));
    said.add(
        s.level() == Level.LOCAL
            ? "No piece can serve two of them, since all are vested at once."
            : "No two of them can share a piece: they run at once, or the road between them is too long.");
    return said;
  }

  private String road(LateArrival late) {
    if (late.arrives().equals(Instant.MAX)) {
      return "No journey from %s to %s is entered."
          .formatted(church(late.from()), church(late.to()));
    }
    Duration journey = Duration.between(late.from().window().cleared(), late.arrives());
    return "From %s, cleared by %s, it is %d minutes to %s: there at %s, due at %s."
        .formatted(
            church(late.from()),
            clock(late.from().window().cleared()),
            journey.toMinutes(),
            church(late.to()),
            clock(late.arrives()),
            clock(late.due()));
  }

  private CountPicture.Count count(Shortage s, ShortageWords words) {
    Instant latestStart =
        s.needs().stream()
            .map(n -> n.window().start())
            .max(Comparator.naturalOrder())
            .orElseThrow();
    boolean atOnce = s.needs().stream().allMatch(n -> n.window().end().isAfter(latestStart));
    String colour = s.colour().id();
    String noun = words.noun(2);
    String where =
        s.level() == Level.LOCAL
            ? "%s %s at %s".formatted(English.sentence(colour), noun, church(s.needs().get(0)))
            : "%s %s in the cluster".formatted(English.sentence(colour), noun);
    return new CountPicture.Count(
        clash.words().title() + ".",
        atOnce ? minutes(latestStart) : -1,
        "%s %s needed".formatted(English.sentence(colour), noun),
        s.needed() + " needed",
        s.needs().stream().map(this::needBar).toList(),
        where,
        s.available() + (s.level() == Level.LOCAL ? " there" : " could serve"),
        pieceBars(s),
        atOnce
            ? "Thin line: from set-out until put away. Bar: the Mass. On the red line: %s above, %s below."
                .formatted(English.count(s.needed(), "mark"), English.count(s.available()))
            : "Thin line: from set-out until put away. Bar: the Mass.");
  }

  private CountPicture.Need needBar(Need need) {
    DatedMass mass = masses.get(need.mass());
    return new CountPicture.Need(
        who(need, mass),
        need.colour(),
        minutes(need.window().setOut()),
        minutes(need.window().start()),
        minutes(need.window().end()),
        minutes(need.window().cleared()),
        clash.masses().size() > 1 ? mass.church().place() : "at the altar");
  }

  private static String who(Need need, DatedMass mass) {
    return switch (need.role()) {
      case PRINCIPAL, MINISTER ->
          mass.findCelebrant().map(p -> p.shortName()).orElse(role(need.role()));
      default -> role(need.role()) + " " + need.ordinal();
    };
  }

  private static String role(Role role) {
    return English.sentence(role == Role.PRINCIPAL ? "celebrant" : role.id());
  }

  private List<CountPicture.Piece> pieceBars(Shortage s) {
    List<CountPicture.Piece> bars = new ArrayList<>();
    s.pieces().forEach(p -> bars.add(bar(p, true, s.level() == Level.LOCAL ? "there" : home(p))));
    s.notServing().stream()
        .filter(
            n -> s.level() == Level.CLUSTER || n.piece().home().equals(s.needs().get(0).church()))
        .forEach(n -> bars.add(bar(n.piece(), false, reason(n))));
    return bars;
  }

  private static CountPicture.Piece bar(Piece piece, boolean counts, String words) {
    return new CountPicture.Piece(name(piece), piece.colours().get(0), counts, words);
  }

  private JourneyPicture.Drawing journey(LateArrival late) {
    if (late.arrives().equals(Instant.MAX)) {
      return JourneyPicture.Drawing.NONE;
    }
    return JourneyPicture.of(
        new JourneyPicture.Late(
            clash.words().title() + ".",
            stop(late.from()),
            stop(late.to()),
            minutes(late.from().window().cleared()),
            minutes(late.arrives()),
            minutes(late.due()),
            "due " + clock(late.due()),
            "there at " + clock(late.arrives()),
            road(late)));
  }

  private JourneyPicture.Stop stop(Need need) {
    Church church = churches.get(need.church());
    return new JourneyPicture.Stop(
        church.name(),
        church.place(),
        need.colour(),
        minutes(need.window().start()),
        minutes(need.window().end()));
  }

  private static int all(Shortage s) {
    return s.pieces().size() + s.elsewhere().size() + s.notServing().size();
  }

  private static String tallyTitle(Shortage s, ShortageWords words) {
    return "The %s of the cluster that %s as %s"
        .formatted(
            all(s) == 1 ? "one " + words.noun(1) : English.count(all(s)) + " " + words.noun(all(s)),
            all(s) == 1 ? "counts" : "count",
            s.colour().id());
  }

  private List<ClashView.TallyLine> tally(Shortage s) {
    List<ClashView.TallyLine> lines = new ArrayList<>();
    if (!s.pieces().isEmpty()) {
      lines.add(line(s.pieces(), s.level() == Level.LOCAL ? "here and free" : "could serve", true));
    }
    Map<String, List<Piece>> hindered = new LinkedHashMap<>();
    s.notServing()
        .forEach(n -> hindered.computeIfAbsent(reason(n), k -> new ArrayList<>()).add(n.piece()));
    hindered.forEach((reason, pieces) -> lines.add(line(pieces, reason, false)));
    if (!s.elsewhere().isEmpty()) {
      lines.add(line(s.elsewhere(), "elsewhere, could be carried here", true));
    }
    return lines;
  }

  private static ClashView.TallyLine line(List<Piece> pieces, String words, boolean canBeHad) {
    return new ClashView.TallyLine(
        pieces.size(),
        pieces.stream().map(p -> canBeHad ? p.colours().get(0).id() : "away").toList(),
        words,
        pieces.stream().map(ClashSheet::name).collect(Collectors.joining(", ")));
  }

  private String reason(NotServing not) {
    if (not.hindrance() == Hindrance.STAYS_HOME) {
      return "stays at " + home(not.piece());
    }
    if (not.hindrance() == Hindrance.NO_JOURNEY) {
      return "at " + home(not.piece()) + ", from where no journey is entered";
    }
    return not.away().stream().map(this::away).collect(Collectors.joining("; "));
  }

  private String away(Away away) {
    String reason = away.reason().isEmpty() ? "away" : away.reason();
    if (away.until().equals(Instant.MAX)) {
      return reason + ", until further notice";
    }
    LocalDate last = away.until().minusSeconds(1).atZone(zone).toLocalDate();
    return "%s, to %s".formatted(reason, English.date(last));
  }

  private static List<String> steps(Shortage s, ShortageWords words) {
    return words.steps().stream()
        .map(step -> "%s (%s).".formatted(English.sentence(step.sentence()), step.source()))
        .toList();
  }

  private List<String> carriages(Shortage s, ShortageWords words) {
    if (s.level() == Level.CLUSTER) {
      return List.of();
    }
    ChurchId here = s.needs().get(0).church();
    Map<ChurchId, List<Piece>> byHome =
        s.elsewhere().stream()
            .collect(Collectors.groupingBy(Piece::home, LinkedHashMap::new, Collectors.toList()));
    return byHome.entrySet().stream()
        .sorted(
            Comparator.comparing(
                e -> span.journeys().find(e.getKey(), here).orElse(Duration.ofDays(1))))
        .map(e -> carriage(e.getKey(), e.getValue(), here, s, words))
        .toList();
  }

  private String carriage(
      ChurchId from, List<Piece> pieces, ChurchId here, Shortage s, ShortageWords words) {
    Church church = churches.get(from);
    String minutes =
        span.journeys()
            .find(from, here)
            .map(d -> ": %d minutes".formatted(d.toMinutes()))
            .orElse("");
    return "%s %s %s from %s, %s%s."
        .formatted(
            English.sentence(English.count(pieces.size())),
            s.colour().id(),
            words.noun(pieces.size()),
            church.name(),
            church.place(),
            minutes);
  }

  /** People know the set; a piece by itself goes by its own code. */
  private static String name(Piece piece) {
    boolean setSpeaksForIt =
        piece.kind() == PieceKind.CHASUBLE || piece.kind() == PieceKind.DALMATIC;
    return setSpeaksForIt && !piece.set().isEmpty() ? piece.set() : piece.code();
  }

  private String home(Piece piece) {
    return churches.get(piece.home()).name();
  }

  private String church(Need need) {
    return churches.get(need.church()).name();
  }

  private String clock(Instant moment) {
    return English.clock(moment.atZone(zone));
  }

  /** Minutes on the clock since the midnight that began the first Mass's day. */
  private int minutes(Instant moment) {
    ZonedDateTime time = moment.atZone(zone);
    int days = (int) (time.toLocalDate().toEpochDay() - clash.first().date().toEpochDay());
    return days * 24 * 60 + time.toLocalTime().toSecondOfDay() / 60;
  }
}
