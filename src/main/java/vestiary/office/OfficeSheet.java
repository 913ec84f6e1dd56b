package vestiary.office;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.people.Person;
import vestiary.people.PersonRole;
import vestiary.planning.CheckClashes;
import vestiary.planning.MassWords;
import vestiary.planning.PieceNouns;
import vestiary.planning.SpanToCheck;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.vesting.Need;
import vestiary.vesting.Role;
import vestiary.web.DayWords;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out the sheet: what the Mass says already, and what was filled in. */
@ApplicationScoped
class OfficeSheet {

  private final ReadMasses masses;
  private final CheckClashes check;
  private final KeepOfficeSheet keep;
  private final ReadDueSheets due;
  private final CurrentVisitor visitor;
  private final Frames frames;

  OfficeSheet(
      ReadMasses masses,
      CheckClashes check,
      KeepOfficeSheet keep,
      ReadDueSheets due,
      CurrentVisitor visitor,
      Frames frames) {
    this.masses = masses;
    this.check = check;
    this.keep = keep;
    this.due = due;
    this.visitor = visitor;
    this.frames = frames;
  }

  /**
   * The page.
   *
   * @param typed what stands in the form; nothing for what is kept
   * @throws Refused if there is no such Mass
   */
  @Transactional
  OfficeView view(String id, String done, Entries typed, String problem) {
    DatedMass mass = masses.get(id);
    SpanToCheck span = check.load(mass.date(), mass.date());
    OfficeSheetRow row = keep.of(mass);
    DueSheet sheet = due.of(mass);
    LocalDate today = due.today();
    String address = sheet.address();
    return new OfficeView(
        frames.of("review", address),
        done,
        say("For the bishop’s office"),
        "%s, %s".formatted(Speech.day(mass.date()), Speech.clock(mass.start())),
        List.of(
            new Link(say("The Mass"), "/masses/" + id),
            new Link(say("The day"), "/day/" + mass.date()),
            new Link(say("The review"), "/review/" + mass.date()),
            new Link(say("Set-out sheet"), "/masses/%s/set-out".formatted(id))),
        sheet.isLate(today),
        sheet.sentence(today),
        DayWords.ribbon(mass.colour()),
        facts(mass, row, span),
        visitor.visitor().may(Action.PUBLISH_TIMES)
            ? List.of(forms(address, row, typed, problem, mass, span))
            : List.of());
  }

  private static List<OfficeView.Fact> facts(DatedMass mass, OfficeSheetRow row, SpanToCheck span) {
    List<OfficeView.Fact> facts = new ArrayList<>();
    facts.add(fact(say("Church"), church(mass)));
    facts.add(
        fact(
            say("Day and hour"),
            say(
                "%s, %s to about %s",
                Speech.dateAndYear(mass.date()),
                Speech.clock(mass.start()),
                Speech.clock(mass.end()))));
    facts.add(
        fact(
            say("Celebration"),
            Speech.sentence(MassWords.whole(mass, Speech.localeOr(span.cluster().language())))));
    facts.add(fact(say("Presides"), presides(mass)));
    facts.add(fact(say("He arrives at"), row.arrival == null ? "" : row.arrival.toString()));
    facts.add(fact(say("He vests in"), row.vestingPlace));
    facts.add(fact(say("Parking"), row.parking));
    facts.add(
        fact(say("Candidates"), row.candidates == null ? "" : String.valueOf(row.candidates)));
    facts.add(fact(say("Concelebrants and deacons"), company(mass, row)));
    facts.add(fact(say("Vestments that he brings"), brought(mass, row)));
    facts.add(fact(say("Vestments that he finds here"), wanted(mass, row, span)));
    facts.add(fact(say("Also"), row.note));
    return facts;
  }

  private static OfficeView.Fact fact(String name, String value) {
    return new OfficeView.Fact(name, value);
  }

  private static String church(DatedMass mass) {
    return List.of(mass.church().name(), mass.church().place(), mass.church().parish()).stream()
        .filter(part -> !part.isEmpty())
        .distinct()
        .reduce((one, other) -> one + ", " + other)
        .orElse("");
  }

  private static String presides(DatedMass mass) {
    return mass.findCelebrant()
        .filter(person -> person.role() == PersonRole.BISHOP || !mass.ministers().bishop())
        .map(Person::calledName)
        .orElse(say("the bishop"));
  }

  private static String company(DatedMass mass, OfficeSheetRow row) {
    String counted = MassWords.company(mass);
    String named = Speech.list(mass.named().stream().map(Person::calledName).toList());
    return List.of(counted, named, row.company).stream()
        .filter(part -> !part.isEmpty())
        .reduce((one, other) -> one + "; " + other)
        .map(Speech::sentence)
        .orElse(say("None"));
  }

  /** What the Mass says that he brings, unless somebody has said otherwise. */
  private static String brought(DatedMass mass, OfficeSheetRow row) {
    if (!row.brought.isEmpty()) {
      return row.brought;
    }
    List<String> kinds =
        mass.brings().stream()
            .filter(brings -> brings.role() == Role.PRINCIPAL)
            .flatMap(brings -> brings.kinds().stream())
            .distinct()
            .sorted()
            .map(kind -> Speech.noun(1, PieceNouns.of(kind)))
            .toList();
    return Speech.sentence(Speech.list(kinds));
  }

  /** What the norms ask for whoever presides, unless somebody has said otherwise. */
  private static String wanted(DatedMass mass, OfficeSheetRow row, SpanToCheck span) {
    if (!row.wanted.isEmpty()) {
      return row.wanted;
    }
    List<String> kinds =
        span.needs(mass).stream()
            .filter(need -> need.role() == Role.PRINCIPAL || need.role() == Role.MINISTER)
            .map(Need::kind)
            .distinct()
            .map(kind -> Speech.noun(1, PieceNouns.of(kind)))
            .toList();
    return kinds.isEmpty()
        ? ""
        : Speech.sentence("%s, %s".formatted(Speech.colour(mass.colour()), Speech.list(kinds)));
  }

  private static OfficeView.Forms forms(
      String address,
      OfficeSheetRow row,
      Entries typed,
      String problem,
      DatedMass mass,
      SpanToCheck span) {
    Entries entries =
        typed.values().isEmpty() ? stored(row, brought(mass, row), wanted(mass, row, span)) : typed;
    return new OfficeView.Forms(
        address,
        problem,
        String.valueOf(row.version),
        row.sentOn != null,
        entries.field("sentOn"),
        entries.field("arrival"),
        entries.field("vestingPlace"),
        entries.field("parking"),
        entries.field("candidates"),
        entries.field("company"),
        entries.field("brought"),
        entries.field("wanted"),
        entries.field("note"));
  }

  private static Entries stored(OfficeSheetRow row, String brought, String wanted) {
    return Entries.empty()
        .with("sentOn", row.sentOn == null ? "" : row.sentOn.toString())
        .with("arrival", row.arrival == null ? "" : row.arrival.toString())
        .with("vestingPlace", row.vestingPlace)
        .with("parking", row.parking)
        .with("candidates", row.candidates == null ? "" : String.valueOf(row.candidates))
        .with("company", row.company)
        .with("brought", brought)
        .with("wanted", wanted)
        .with("note", row.note);
  }
}
