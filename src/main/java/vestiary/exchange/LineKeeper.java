package vestiary.exchange;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import vestiary.cluster.ChangeSettings;
import vestiary.cluster.SaveChurch;
import vestiary.cluster.SetJourney;
import vestiary.inventory.NoteInventory;
import vestiary.people.FindPeople;
import vestiary.people.SaveAbsence;
import vestiary.people.SaveMinistry;
import vestiary.people.SavePerson;
import vestiary.pool.PutInCare;
import vestiary.pool.SavePiece;
import vestiary.problem.FieldFault;
import vestiary.proper.ProperTrial;
import vestiary.proper.SaveProper;
import vestiary.schedule.BringsValue;
import vestiary.schedule.MinistersValue;
import vestiary.schedule.SaveMass;
import vestiary.schedule.SaveMasses;
import vestiary.schedule.SavePattern;
import vestiary.sending.BringSent;
import vestiary.serving.NameServing;
import vestiary.web.Speech;

/**
 * Hands each line to the use case that a form or the API would call; no rule is written twice. A
 * line that names something the cluster has already changes it, so a list can be sent again.
 */
@ApplicationScoped
@Transactional
class LineKeeper {

  private static final Comparator<LocalDate> NATURAL = Comparator.naturalOrder();

  private final ChangeSettings settings;
  private final SaveChurch churches;
  private final SaveProper propers;
  private final SetJourney journeys;
  private final SavePerson people;
  private final SaveMinistry ministries;
  private final SaveAbsence absences;
  private final FindPeople known;
  private final SavePattern patterns;
  private final SaveMasses masses;
  private final SavePiece pieces;
  private final PutInCare care;
  private final NoteInventory inventories;
  private final BringSent out;
  private final NameServing serving;

  LineKeeper(
      ChangeSettings settings,
      SaveChurch churches,
      SaveProper propers,
      SetJourney journeys,
      SavePerson people,
      SaveMinistry ministries,
      SaveAbsence absences,
      FindPeople known,
      SavePattern patterns,
      SaveMasses masses,
      SavePiece pieces,
      PutInCare care,
      NoteInventory inventories,
      BringSent out,
      NameServing serving) {
    this.serving = serving;
    this.inventories = inventories;
    this.settings = settings;
    this.churches = churches;
    this.propers = propers;
    this.journeys = journeys;
    this.people = people;
    this.ministries = ministries;
    this.absences = absences;
    this.known = known;
    this.patterns = patterns;
    this.masses = masses;
    this.pieces = pieces;
    this.care = care;
    this.out = out;
  }

  List<FieldFault> faults(ClusterLine line) {
    return settings.findFaults(request(line));
  }

  void keep(ClusterLine line) {
    settings.change(request(line));
  }

  List<FieldFault> faults(ChurchLine line) {
    List<FieldFault> all = new ArrayList<>(churches.findFaults(request(line)));
    inventories.findFault("lastInventory", line.lastInventory()).ifPresent(all::add);
    return all;
  }

  void keep(ChurchLine line) {
    churches.enterOrChange(request(line));
    if (!line.lastInventory().equals(LocalDate.MIN)) {
      inventories.heldElsewhere(line.slug(), line.lastInventory());
    }
  }

  /** Looks for faults line by line: one that is good may be named by those below it. */
  Function<ProperLine, List<FieldFault>> properFaults() {
    ProperTrial trial = propers.trial();
    return line -> trial.findFaults(line.toRequest());
  }

  void keep(ProperLine line) {
    propers.enterOrChange(line.toRequest());
  }

  List<FieldFault> faults(JourneyLine line) {
    return journeys.findFaults(request(line));
  }

  void keep(JourneyLine line) {
    journeys.set(request(line));
  }

  List<FieldFault> faults(PersonLine line) {
    List<FieldFault> all = new ArrayList<>(people.findFaults(line.person()));
    all.addAll(ministries.findFaults(line.ministry()));
    return all;
  }

  void keep(PersonLine line) {
    ministries.keep(people.keep(line.person()).slug(), line.ministry());
  }

  List<FieldFault> faults(PatternLine line) {
    return withCelebrant(line.celebrant(), patterns.findFaults(request(line)));
  }

  void keep(PatternLine line) {
    patterns.enterOrChange(request(line));
  }

  /** Many Masses, which are held against what is read once. */
  MassesAtOnce massesAtOnce(List<MassLine> lines) {
    LocalDate first = lines.stream().map(MassLine::date).min(NATURAL).orElse(LocalDate.EPOCH);
    LocalDate last = lines.stream().map(MassLine::date).max(NATURAL).orElse(LocalDate.EPOCH);
    return new MassesAtOnce(masses.lot(first, last));
  }

  /** Masses of one list. */
  final class MassesAtOnce {
    private final SaveMasses.Lot lot;
    private final Map<String, Boolean> isKnown = new HashMap<>();

    private MassesAtOnce(SaveMasses.Lot lot) {
      this.lot = lot;
    }

    List<FieldFault> faults(MassLine line) {
      List<FieldFault> all = new ArrayList<>(lot.findFaults(request(line)));
      Stream.of(line.celebrant())
          .filter(name -> !name.isEmpty() && !isKnown(name))
          .forEach(name -> all.add(nobody("celebrant", name)));
      line.named().stream()
          .filter(name -> !isKnown(name))
          .forEach(name -> all.add(nobody("named", name)));
      line.serving().stream()
          .map(ServingEntry::person)
          .filter(name -> !isKnown(name))
          .forEach(name -> all.add(nobody("serving", name)));
      if (all.isEmpty()) {
        serving
            .findFaults(line.serving().stream().map(ServingEntry::toWanted).toList())
            .forEach(fault -> all.add(new FieldFault("serving", fault.sentence())));
      }
      return all;
    }

    UUID keep(MassLine line) {
      UUID mass = lot.enterOrChange(request(line), line.replaces());
      if (!line.serving().isEmpty()) {
        serving.bringIn(mass, line.serving().stream().map(ServingEntry::toWanted).toList());
      }
      return mass;
    }

    private boolean isKnown(String name) {
      return isKnown.computeIfAbsent(name, one -> known.findCalled(one).isPresent());
    }
  }

  /** In a list a name that nobody bears is a slip of the pen; at a form it is a visitor. */
  private List<FieldFault> withCelebrant(String celebrant, List<FieldFault> faults) {
    if (celebrant.isEmpty() || known.findCalled(celebrant).isPresent()) {
      return faults;
    }
    List<FieldFault> all = new ArrayList<>(faults);
    all.add(nobody("celebrant", celebrant));
    return all;
  }

  private static FieldFault nobody(String field, String name) {
    return new FieldFault(
        field,
        say(
            "%s \"%s\" is nobody in this cluster; bring in the list of people first.",
            field, name));
  }

  List<FieldFault> faults(AbsenceLine line) {
    List<FieldFault> all = new ArrayList<>(absences.findFaults(line.toRequest()));
    if (known.findBySlug(line.person()).isEmpty()) {
      all.add(nobody("person", line.person()));
    }
    return all;
  }

  void keep(AbsenceLine line) {
    absences.enter(line.person(), line.toRequest());
  }

  List<FieldFault> faults(PieceLine line) {
    return pieces.findFaults(request(line));
  }

  void keep(PieceLine line) {
    pieces.enterOrChange(request(line));
  }

  List<FieldFault> faults(CareLine line) {
    return care.findFaults(line.piece(), line.set(), request(line));
  }

  void keep(CareLine line) {
    if (line.piece().isEmpty()) {
      care.putSet(line.set(), request(line));
    } else {
      care.putOrChange(line.piece(), request(line));
    }
  }

  List<FieldFault> faults(OutLine line) {
    return out.findFaults(request(line));
  }

  void keep(OutLine line) {
    out.enterOrChange(request(line));
  }

  private static BringSent.Request request(OutLine line) {
    return new BringSent.Request(
        line.piece(),
        line.set(),
        line.church(),
        line.whom(),
        line.from(),
        line.due(),
        line.carrier(),
        line.condition());
  }

  private static ChangeSettings.Request request(ClusterLine line) {
    return new ChangeSettings.Request(
        line.name(),
        line.calendar(),
        line.settings().get("epiphany"),
        line.settings().get("ascension"),
        line.settings().get("corpusChristi"),
        line.timeZone().getId(),
        line.languages(),
        new ChangeSettings.PolicyRequest(
            line.settings().get("anticipatedFrom"),
            line.settings().get("eveningRule"),
            line.settings().get("openEvening"),
            line.settings().get("ladderOrder"),
            flag(line.settings().get("whiteForAll")),
            number(line.settings().get("turnMinutes")),
            number(line.settings().get("weekdaySetOut")),
            number(line.settings().get("largeSetOut")),
            number(line.settings().get("largeClearance")),
            line.settings().get("countBy"),
            number(line.settings().get("permittedWeekday")),
            number(line.settings().get("permittedSunday")),
            flag(line.settings().get("countAlbs")),
            flag(line.settings().get("pontificals"))),
        null);
  }

  private static SaveChurch.Request request(ChurchLine line) {
    boolean located = !Double.isNaN(line.latitude());
    return new SaveChurch.Request(
        line.slug(),
        line.name(),
        line.parish(),
        line.place(),
        line.title(),
        line.titular(),
        ownTitular(line),
        line.dedication().equals(LocalDate.MIN) ? null : line.dedication().toString(),
        said(line.setOutMinutes()),
        said(line.clearanceMinutes()),
        located ? line.latitude() : null,
        located ? line.longitude() : null,
        null);
  }

  private static SaveChurch.OwnTitular ownTitular(ChurchLine line) {
    if (line.titularDay().isEmpty()) {
      return null;
    }
    MonthDay day = MonthDay.parse("--" + line.titularDay());
    return new SaveChurch.OwnTitular(
        line.title(), day.getMonthValue(), day.getDayOfMonth(), line.titularColour());
  }

  private static SetJourney.Request request(JourneyLine line) {
    return new SetJourney.Request(line.from(), line.to(), line.minutes(), line.oneWay());
  }

  private static SavePattern.Request request(PatternLine line) {
    return new SavePattern.Request(
        line.church(),
        line.rrule(),
        line.starts().toString(),
        line.time().toString(),
        line.minutes(),
        line.mass(),
        line.celebrant(),
        line.concelebrants(),
        line.deacons(),
        ministers(line.ministers()),
        line.note(),
        line.language(),
        line.bounds());
  }

  private static SaveMass.Request request(MassLine line) {
    return new SaveMass.Request(
        line.church(),
        line.date().atTime(line.time()).toString(),
        line.minutes(),
        line.mass(),
        line.votiveOf(),
        line.leave(),
        line.celebration(),
        line.colour(),
        line.celebrant(),
        line.concelebrants(),
        line.deacons(),
        line.named(),
        line.brings().stream().map(b -> new BringsValue(b.role(), b.count(), b.kinds())).toList(),
        line.bishop(),
        ministers(line.ministers()),
        line.also(),
        said(line.setOutMinutes()),
        line.note(),
        line.intention(),
        line.language(),
        null);
  }

  private static List<MinistersValue> ministers(List<MinistersEntry> entries) {
    return entries.stream().map(m -> new MinistersValue(m.kind(), m.count(), m.sizes())).toList();
  }

  private static SavePiece.Request request(PieceLine line) {
    return new SavePiece.Request(
        line.code(),
        line.kind(),
        line.colours(),
        line.shade(),
        line.grade(),
        line.size(),
        line.form(),
        line.set(),
        line.suit(),
        line.home(),
        line.owner(),
        line.ownerPolicy(),
        line.condition(),
        line.place(),
        line.staysHome(),
        line.particulars().stream().findFirst().orElse(null),
        null);
  }

  private static PutInCare.Request request(CareLine line) {
    boolean awaited = !line.due().equals(LocalDate.MAX);
    return new PutInCare.Request(
        line.from().toString(),
        line.to().equals(LocalDate.MAX) ? null : line.to().toString(),
        awaited
            ? say("%s (due back %s)", line.reason(), Speech.dateAndYear(line.due()))
            : line.reason(),
        line.kind());
  }

  private static Integer said(int number) {
    return number == Cells.NOT_SAID ? null : number;
  }

  private static Integer number(String text) {
    return text == null ? null : Integer.valueOf(text);
  }

  private static Boolean flag(String text) {
    return text == null ? null : Boolean.valueOf(text);
  }
}
