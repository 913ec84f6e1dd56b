package vestiary.planning;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.acceptance.AcceptSteps;
import vestiary.allocation.Journey;
import vestiary.allocation.Journeys;
import vestiary.allocation.Severity;
import vestiary.allocation.Shortage;
import vestiary.allocation.ShortageKind;
import vestiary.calendar.Verdict;
import vestiary.cluster.Church;
import vestiary.cluster.ChurchCalendars;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.people.KeepHeight;
import vestiary.people.ReadAbsences;
import vestiary.people.ReadMinistries;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.pool.ReadTaken;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.vesting.KeptKinds;
import vestiary.vesting.MassId;
import vestiary.web.NormWords;
import vestiary.web.Speech;

/**
 * Finds what cannot stand in a span of dates. Nothing is kept: each look works it out from the rows
 * as they are, so that a warning is never older than the Mass it is about.
 */
@ApplicationScoped
public class CheckClashes {

  private final ReadCluster cluster;
  private final ReadMasses masses;
  private final ReadPool pool;
  private final ReadTaken taken;
  private final AcceptSteps steps;
  private final KeepHeight heights;
  private final ReadAbsences absences;
  private final ReadMinistries ministries;
  private final ChurchCalendars calendars;

  CheckClashes(
      ReadCluster cluster,
      ReadMasses masses,
      ReadPool pool,
      ReadTaken taken,
      AcceptSteps steps,
      KeepHeight heights,
      ReadAbsences absences,
      ReadMinistries ministries,
      ChurchCalendars calendars) {
    this.ministries = ministries;
    this.calendars = calendars;
    this.absences = absences;
    this.heights = heights;
    this.steps = steps;
    this.cluster = cluster;
    this.masses = masses;
    this.pool = pool;
    this.taken = taken;
  }

  /**
   * Loads what decides a span.
   *
   * @param first first date in the cluster's zone, included
   * @param last last date, included
   */
  @Transactional
  public SpanToCheck load(LocalDate first, LocalDate last) {
    Cluster here = cluster.cluster();
    Instant from = first.minusDays(1).atStartOfDay(here.zone()).toInstant();
    Instant until = last.plusDays(2).atStartOfDay(here.zone()).toInstant();
    List<PooledPiece> pieces = pool.pieces(from);
    List<Church> churches = cluster.churches();
    List<DatedMass> around = masses.between(first.minusDays(1), last.plusDays(1), here, churches);
    return new SpanToCheck(
        here,
        churches,
        first,
        last,
        around,
        pieces,
        Journeys.of(
            cluster.journeys().stream()
                .map(j -> new Journey(j.from(), j.to(), Duration.ofMinutes(j.minutes())))
                .toList()),
        KeptKinds.of(pieces.stream().map(PooledPiece::toPiece).toList()),
        taken.between(from, until),
        taken.lying(from, until),
        steps.of(around.stream().map(DatedMass::id).toList()),
        heights.all(),
        absences.attendance(from, until),
        new Serving(
            ministries.all(),
            churches.stream()
                .collect(Collectors.toMap(Church::id, church -> calendars.of(here, church)))));
  }

  /** The clashes with a Mass that begins in the span, by the first of their Masses. */
  @Transactional
  public List<Clash> between(LocalDate first, LocalDate last) {
    return in(load(first, last));
  }

  /** The same of a span that is loaded already. */
  public List<Clash> in(SpanToCheck span) {
    List<Clash> clashes = new ArrayList<>();
    span.masses().stream().map(CheckClashes::againstNorms).forEach(clashes::addAll);
    span.masses().stream()
        .filter(m -> m.chosen().celebrantLost())
        .map(CheckClashes::withoutCelebrant)
        .forEach(clashes::add);
    clashes.addAll(WhatPeopleServe.of(span));
    clashes.addAll(ServingTwice.of(span));
    span.asked().stream().map(m -> AwayFromMass.of(m, span)).forEach(clashes::addAll);
    span.masses().stream().map(m -> SubstituteWords.of(m, span)).forEach(clashes::addAll);
    Map<MassId, DatedMass> byId =
        span.masses().stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
    span.asked().stream().flatMap(m -> AlbsThatFit.of(m, span).stream()).forEach(clashes::add);
    span.shortages().forEach(s -> clashes.add(shortage(s, byId, span)));
    return clashes.stream()
        .filter(c -> c.masses().stream().anyMatch(span::isAsked))
        .sorted(
            Comparator.comparing((Clash c) -> c.first().start().toInstant())
                .thenComparing(Clash::severity)
                .thenComparing(Clash::id))
        .toList();
  }

  private static Clash shortage(Shortage s, Map<MassId, DatedMass> byId, SpanToCheck span) {
    ClashKind kind =
        s.kind() == ShortageKind.UNREACHABLE ? ClashKind.UNREACHABLE : ClashKind.SHORTAGE;
    List<DatedMass> concerned =
        s.masses().stream()
            .map(byId::get)
            .sorted(Comparator.comparing(m -> m.start().toInstant()))
            .toList();
    return new Clash(
        ClashId.of(kind, concerned, s.level().id(), s.pieceKind().id(), s.colour().id()),
        kind,
        s.severity() == Severity.MUST ? ClashSeverity.MUST : ClashSeverity.DECIDE,
        concerned,
        new ShortageWords(s, byId, span.cluster().zone()).words(),
        List.of(s));
  }

  /** What the norms say against a Mass by itself: its kind on that day, or its colour. */
  private static List<Clash> againstNorms(DatedMass mass) {
    if (mass.ruling().permission().verdict() == Verdict.NOT_PERMITTED) {
      return List.of(
          alone(
              mass,
              ClashKind.NOT_PERMITTED,
              new ClashWords(
                  about(mass),
                  withoutStop(NormWords.of(mass.ruling().permission().said())),
                  say("not permitted"),
                  say("Source: ") + NormWords.source(mass.ruling().permission().source()) + ".",
                  "")));
    }
    if (!mass.isColourLawful()) {
      String lawful = Speech.colours(mass.option().colours());
      return List.of(
          alone(
              mass,
              ClashKind.COLOUR,
              new ClashWords(
                  about(mass),
                  say(
                      "%s is chosen; the colour of this Mass is %s",
                      Speech.sentence(Speech.colour(mass.colour())), lawful),
                  say("%s chosen", Speech.colour(mass.colour())),
                  NormWords.of(mass.option().why()),
                  "")));
    }
    return List.of();
  }

  private static Clash withoutCelebrant(DatedMass mass) {
    return alone(
        mass,
        ClashKind.NO_CELEBRANT,
        new ClashWords(
            about(mass),
            say("Its celebrant was removed, and nobody is named in his place"),
            say("no celebrant"),
            say("Name somebody else, or cancel the Mass."),
            ""));
  }

  private static Clash alone(DatedMass mass, ClashKind kind, ClashWords words) {
    return new Clash(
        ClashId.of(kind, List.of(mass)), kind, ClashSeverity.MUST, List.of(mass), words, List.of());
  }

  static String about(DatedMass mass) {
    return "%s, %s, %s"
        .formatted(mass.church().name(), Speech.day(mass.date()), Speech.clock(mass.start()));
  }

  private static String withoutStop(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }
}
