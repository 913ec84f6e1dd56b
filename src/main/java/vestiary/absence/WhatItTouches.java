package vestiary.absence;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import vestiary.cluster.ReadCluster;
import vestiary.people.Absence;
import vestiary.people.Attendance;
import vestiary.people.ReadAbsences;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;

/** Finds what an absence comes to: Masses that lose somebody, and hours with no celebrant left. */
@ApplicationScoped
@Transactional
class WhatItTouches {

  /** Masses farther ahead are looked at when their time comes. */
  static final int DAYS_AHEAD = 56;

  private final ReadMasses masses;
  private final ReadAbsences absences;
  private final ReadCluster cluster;
  private final Clock clock;

  WhatItTouches(ReadMasses masses, ReadAbsences absences, ReadCluster cluster, Clock clock) {
    this.masses = masses;
    this.absences = absences;
    this.cluster = cluster;
    this.clock = clock;
  }

  /**
   * What it comes to.
   *
   * @param masses at which the person is named, by their start; those that are over are left out
   * @param gaps when nobody of the cluster who could celebrate is there
   * @param lookedUntil last date that was looked at
   * @param isAll whether that is the end of the absence
   */
  record Touched(
      List<DatedMass> masses, List<Attendance.Gap> gaps, LocalDate lookedUntil, boolean isAll) {
    Touched {
      masses = List.copyOf(masses);
      gaps = List.copyOf(gaps);
    }
  }

  Touched by(Absence absence) {
    ZoneId zone = cluster.cluster().zone();
    Instant from = later(absence.from(), clock.instant());
    LocalDate first = from.atZone(zone).toLocalDate();
    LocalDate horizon = first.plusDays(DAYS_AHEAD);
    Instant limit = horizon.plusDays(1).atStartOfDay(zone).toInstant();
    boolean isAll = !absence.to().isAfter(limit);
    Instant until = isAll ? absence.to() : limit;
    LocalDate last = until.minusNanos(1).atZone(zone).toLocalDate();
    if (!until.isAfter(from)) {
      return new Touched(List.of(), List.of(), last, isAll);
    }
    return new Touched(
        masses.between(first.minusDays(1), last).stream()
            .filter(mass -> isNamed(mass, absence))
            .filter(mass -> mass.end().toInstant().isAfter(from))
            .toList(),
        absences.attendance(from, until).gaps(from, until),
        last,
        isAll);
  }

  private static boolean isNamed(DatedMass mass, Absence absence) {
    return absence.meets(mass.start().toInstant(), mass.end().toInstant())
        && mass.isNamed(absence.person());
  }

  private static Instant later(Instant a, Instant b) {
    return a.isAfter(b) ? a : b;
  }
}
