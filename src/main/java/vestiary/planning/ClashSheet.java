package vestiary.planning;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import vestiary.allocation.CertificateKind;
import vestiary.allocation.Level;
import vestiary.allocation.Shortage;
import vestiary.calendar.Colour;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Need;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.NormWords;
import vestiary.web.Speech;

/** Sets out one clash with its proof, so that whoever counts both lists has checked it. */
final class ClashSheet {

  private final ClashScene scene;
  private final Clash clash;
  private final Locale locale;

  ClashSheet(SpanToCheck span, Clash clash) {
    this.scene = new ClashScene(span, clash);
    this.clash = clash;
    this.locale = Speech.localeOr(span.cluster().language());
  }

  ClashView view(Frame frame, MendingView mending) {
    return clash
        .findProof()
        .map(s -> shortage(frame, s))
        .orElseGet(() -> againstNorms(frame))
        .with(mending);
  }

  private ClashView againstNorms(Frame frame) {
    return view(
        frame,
        CountPicture.Drawing.NONE,
        JourneyPicture.Drawing.NONE,
        ProofView.COUNTED,
        List.of(clash.words().title() + ".", clash.words().more(), clash.words().lawful()),
        "",
        "",
        List.of(),
        "",
        List.of(),
        List.of());
  }

  private ClashView shortage(Frame frame, Shortage s) {
    ClashPictures pictures = new ClashPictures(scene);
    ClashStock stock = new ClashStock(scene, s);
    ProofView proof = new ProofSheet(scene, s).view();
    boolean late = !s.late().isEmpty();
    return view(
        frame,
        late || proof.pictureTitle().isEmpty() ? CountPicture.Drawing.NONE : pictures.count(s),
        late ? pictures.journey(s.late().get(0)) : JourneyPicture.Drawing.NONE,
        proof,
        words(s, scene.words(s)),
        verdict(s),
        stock.title(),
        stock.lines(),
        stock.total(),
        stock.steps(),
        stock.carriages());
  }

  private static String verdict(Shortage s) {
    if (s.certificate().kind() == CertificateKind.UNPROVEN) {
      return say("Not proven.");
    }
    if (!s.allClash()) {
      return say(
          "%s needed, %s at most can be served, %s short.",
          Speech.sentence(Speech.count(s.needed())),
          Speech.count(s.needed() - s.missing()),
          Speech.count(s.missing()));
    }
    return say(
        "%s needed, %s %s, %s short.",
        Speech.sentence(Speech.count(s.needed())),
        Speech.count(s.available()),
        s.level() == Level.LOCAL ? say("there") : say("that could serve"),
        Speech.count(s.missing()));
  }

  private ClashView view(
      Frame frame,
      CountPicture.Drawing count,
      JourneyPicture.Drawing journey,
      ProofView proof,
      List<String> words,
      String verdict,
      String tallyTitle,
      List<ClashView.TallyLine> tally,
      String total,
      List<String> steps,
      List<String> carriages) {
    DatedMass first = clash.first();
    List<Link> turn = new ArrayList<>();
    turn.add(new Link(say("The week"), "/week/" + WeekSheet.monday(first.date())));
    turn.add(new Link(say("The day"), "/day/" + first.date()));
    clash
        .masses()
        .forEach(
            m ->
                turn.add(
                    new Link(
                        say("Change %s, %s", Speech.clock(m.start()), m.church().name()),
                        "/masses/" + m.id().value())));
    turn.addAll(clash.ways());
    return new ClashView(
        frame,
        clash.severity().mark(),
        clash.words().about(),
        clash.words().title(),
        context(),
        turn,
        count,
        journey,
        proof,
        words.stream().filter(w -> !w.isBlank()).toList(),
        verdict,
        sources(),
        tallyTitle,
        tally,
        total,
        "",
        steps,
        carriages,
        MendingView.NONE);
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
        clash.severity() == ClashSeverity.DECIDE && clash.kind() != ClashKind.DOUBLE_BOOKED
            ? say(" Mass can be celebrated all the same.")
            : "";
    return "%s: %s. %s%s".formatted(Speech.sentence(colours()), which, notes, calm).strip();
  }

  private String colours() {
    return Speech.list(
        clash.masses().stream().map(m -> Speech.colour(m.colour())).distinct().toList());
  }

  private String sources() {
    List<String> sources =
        clash
            .findProof()
            .map(
                s ->
                    s.needs().stream().map(Need::source).map(NormWords::source).distinct().toList())
            .orElse(List.of());
    return sources.isEmpty()
        ? ""
        : say(
                "%s Vesture: %s. %s",
                checked(), String.join("; ", sources), NormWords.of(clash.first().option().why()))
            .strip();
  }

  private String checked() {
    return switch (clash.findProof().orElseThrow().certificate().kind()) {
      case ALL_CLASH -> say("Checked by counting both, not by search.");
      case CHAINS -> say("Checked by adding up what each can serve, not by search.");
      case FORCED_CHOICES -> say("Checked by following each choice, not by search.");
      case EXHAUSTION -> say("Checked by trying all ways once more.");
      case UNPROVEN -> "";
    };
  }

  private List<String> words(Shortage s, ShortageWords words) {
    List<String> said = new ArrayList<>();
    LongList list = new LongList(s);
    for (DatedMass mass : list.isLong() ? List.<DatedMass>of() : clash.masses()) {
      List<Need> needs = s.needs().stream().filter(n -> n.mass().equals(mass.id())).toList();
      Need one = needs.get(0);
      said.add(
          say(
              "%s, %s: %s, set out by %s and cleared by %s.",
              mass.church().name(),
              Speech.clock(mass.start()),
              counted(needs.size(), one.colour(), words),
              scene.clock(one.window().setOut()),
              scene.clock(one.window().cleared())));
    }
    s.late().forEach(l -> said.add(scene.road(l)));
    if (list.isLong() && !list.allInUse().isEmpty()) {
      said.add(
          say(
              "All %s are in use from %s to %s.",
              Speech.count(s.needed()),
              scene.clock(list.allInUse().get(0)),
              scene.clock(list.allInUse().get(1))));
    }
    said.add(s.allClash() ? whyAllClash(s) : scene.proofWords(s).sentence());
    return said;
  }

  private static String counted(int number, Colour colour, ShortageWords words) {
    String noun = words.noun(number);
    return Speech.count(
        number,
        words.noun(),
        words.hasColour() ? Speech.tinted(Speech.colour(colour), noun) : noun);
  }

  private static String whyAllClash(Shortage s) {
    return s.level() == Level.LOCAL
        ? say("No piece can serve two of them: they run at once, or follow with no time between.")
        : say(
            "No two of them can share a piece: they run at once, or the road between them is too long.");
  }
}
