package vestiary.exchange;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import vestiary.cluster.Church;
import vestiary.cluster.OneByOne;
import vestiary.cluster.ReadCluster;
import vestiary.problem.FieldFault;
import vestiary.schedule.SaveMass;
import vestiary.schedule.SaveMasses;
import vestiary.web.Speech;

/**
 * Brings in the Masses of somebody's calendar. Events that are no Masses, or cannot be understood,
 * are named and left out; the rest is brought in. Which celebration it is, and so which colour, is
 * never taken from the file.
 */
@ApplicationScoped
class ImportCalendar {

  private static final int SHORTEST = 5;
  private static final int LONGEST = 360;

  private final ReadCluster cluster;
  private final KnownNames names;
  private final SaveMasses masses;
  private final MassOriginRows origins;
  private final OneByOne turns;

  ImportCalendar(
      ReadCluster cluster,
      KnownNames names,
      SaveMasses masses,
      MassOriginRows origins,
      OneByOne turns) {
    this.cluster = cluster;
    this.names = names;
    this.masses = masses;
    this.origins = origins;
    this.turns = turns;
  }

  /** What came of it, with a sentence for each Mass. */
  record Outcome(ImportCsv.Outcome outcome, List<String> found) {
    Outcome {
      found = List.copyOf(found);
    }
  }

  /**
   * Reads a calendar and, unless it is a dry run, brings in what can be.
   *
   * @throws BadFile if it cannot be read at all
   */
  @Transactional
  Outcome bringIn(byte[] file, CalendarSpan span, boolean dryRun, ImportCsv.Steps steps)
      throws BadFile {
    if (!dryRun) {
      turns.waitForTurn();
    }
    CalendarFile.Read read = CalendarFile.read(file, cluster.cluster().zone(), span);
    Run run = new Run(span, read, dryRun);
    int worked = 0;
    for (CalendarMass mass : read.inOrder()) {
      run.take(mass);
      steps.at(++worked);
    }
    return run.outcome();
  }

  /** One calendar on its way in. */
  private final class Run {
    private final CalendarSpan span;
    private final boolean dryRun;
    private final EventWords words = new EventWords(names.read());
    private final SaveMasses.Lot lot;
    private final Map<CalendarMass.Origin, MassOriginRow> known;
    private final Map<String, String> churches;
    private final List<BadLine> bad;
    private final List<String> found = new ArrayList<>();
    private final Set<Integer> noMasses = new HashSet<>();
    private int good;
    private int unchanged;

    private Run(CalendarSpan span, CalendarFile.Read read, boolean dryRun) {
      this.span = span;
      this.dryRun = dryRun;
      this.lot = masses.lot(span.from(), span.to());
      this.bad = new ArrayList<>(read.bad());
      this.known =
          origins.of(read.masses().stream().map(mass -> mass.origin().uid()).distinct().toList());
      this.churches =
          cluster.churches().stream().collect(Collectors.toMap(Church::slug, Church::name));
    }

    private void take(CalendarMass mass) {
      Optional<String> kind = EventWords.findKind(mass.summary());
      if (kind.isEmpty()) {
        if (noMasses.add(mass.event())) {
          bad.add(refused(mass, say("Its title names no Mass or other liturgy; it is left out.")));
        }
        return;
      }
      Optional<String> church =
          span.church().isEmpty()
              ? words.findChurch(mass.place(), mass.summary())
              : Optional.of(span.church());
      if (church.isEmpty()) {
        bad.add(
            refused(
                mass,
                say(
                    "Neither its place nor its title names a church of the cluster; choose one for all, or leave it out.")));
        return;
      }
      if (mass.minutes() != 0 && (mass.minutes() < SHORTEST || mass.minutes() > LONGEST)) {
        bad.add(
            refused(
                mass,
                say(
                    "It lasts %,d minutes; a Mass lasts %d to %d.",
                    mass.minutes(), SHORTEST, LONGEST)));
        return;
      }
      keep(mass, church.get(), kind.get());
    }

    private void keep(CalendarMass mass, String church, String kind) {
      MassOriginRow before = known.get(mass.origin());
      String said =
          "%s %s %d %s%s"
              .formatted(
                  church, mass.start(), mass.minutes(), kind, mass.cancelled() ? " cancelled" : "");
      boolean isOld =
          before != null && (before.said.equals(said) || before.sequence > mass.sequence());
      if (isOld || before == null && mass.cancelled()) {
        unchanged++;
        good++;
        return;
      }
      SaveMass.Request request = SaveMasses.request(church, mass.start(), mass.minutes(), kind);
      List<FieldFault> faults = lot.findFaults(request);
      if (!faults.isEmpty()) {
        faults.forEach(fault -> bad.add(refused(mass, fault.sentence())));
        return;
      }
      good++;
      found.add(sentence(mass, church, before));
      if (dryRun) {
        return;
      }
      if (before == null) {
        MassOriginRow origin = new MassOriginRow();
        origin.uid = mass.origin().uid();
        origin.instance = mass.origin().instance();
        origin.massId = lot.enterOrFind(request);
        note(origin, mass, said);
        origins.persist(origin);
        known.put(mass.origin(), origin);
        return;
      }
      if (mass.cancelled()) {
        lot.cancel(before.massId);
      } else {
        lot.change(before.massId, request);
      }
      note(before, mass, said);
    }

    private void note(MassOriginRow origin, CalendarMass mass, String said) {
      origin.sequence = mass.sequence();
      origin.said = said;
    }

    private String sentence(CalendarMass mass, String church, MassOriginRow before) {
      String pattern =
          before == null
              ? word("%s %d, %s, %s: %s (new)")
              : mass.cancelled()
                  ? word("%s %d, %s, %s: %s (cancelled)")
                  : word("%s %d, %s, %s: %s (changed)");
      return say(
          pattern,
          Speech.day(mass.start().toLocalDate()),
          mass.start().getYear(),
          LocalTime.of(mass.start().getHour(), mass.start().getMinute()),
          churches.getOrDefault(church, church),
          mass.summary());
    }

    private static BadLine refused(CalendarMass mass, String sentence) {
      return new BadLine(mass.event(), mass.summary(), sentence);
    }

    private Outcome outcome() {
      bad.sort(Comparator.comparingInt(BadLine::line));
      boolean done = !dryRun && good > 0;
      return new Outcome(
          new ImportCsv.Outcome(ImportWhat.MASSES, good, unchanged, bad, List.of(), done), found);
    }
  }
}
