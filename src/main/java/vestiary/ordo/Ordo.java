package vestiary.ordo;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import vestiary.calendar.Day;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.web.Speech;

/**
 * A liturgical year of the whole cluster, with what single churches keep instead, or of one church.
 *
 * @param churches all of the cluster, in the order in which people list them
 * @param of the one church whose ordo it is, or none for the cluster's
 * @param plain the cluster's days without any church's own
 * @param days those of the one church, or the plain ones
 * @param others every church with its days; none in the ordo of one church
 */
record Ordo(
    LiturgicalYear year,
    Cluster cluster,
    List<Church> churches,
    List<Church> of,
    YearDays plain,
    YearDays days,
    List<ChurchDays> others) {

  Ordo {
    churches = List.copyOf(churches);
    of = List.copyOf(of);
    others = List.copyOf(others);
  }

  /** A church with the days that it keeps. */
  record ChurchDays(Church church, YearDays days) {}

  /** The one church whose ordo it is; empty for the cluster's. */
  Optional<Church> findChurch() {
    return of.stream().findFirst();
  }

  /** The language of the names: the cluster's, but for whoever reads another than English. */
  Locale locale() {
    return Speech.isOfTheRecord() ? cluster.language() : Speech.localeOr(cluster.language());
  }

  /** Whether that church keeps this day otherwise than the cluster's plain calendar. */
  boolean isOwn(YearDays church, LocalDate date) {
    return !church.on(date).kept().isKeptLike(plain.on(date).kept());
  }

  /** The churches that keep this day otherwise, each with its own day. */
  List<OwnDay> own(LocalDate date) {
    return others.stream()
        .filter(o -> isOwn(o.days(), date))
        .map(o -> new OwnDay(o.church(), o.days().on(date)))
        .toList();
  }

  record OwnDay(Church church, Day day) {}
}
