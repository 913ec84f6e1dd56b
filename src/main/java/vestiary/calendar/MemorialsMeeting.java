package vestiary.calendar;

import java.util.List;

/**
 * Two obligatory memorials on one date. Mary, Mother of the Church, is kept; the Immaculate Heart
 * and the memorial it meets both become optional, as on Saturday 13 June 2026 with Anthony of
 * Padua.
 *
 * <p>Source: Congregation for Divine Worship, notifications of 8 December 1998 and 24 March 2018;
 * two others that meet are treated alike by common practice.
 */
final class MemorialsMeeting {

  private static final String MOTHER_OF_THE_CHURCH = "mary-mother-of-the-church";
  private static final String IMMACULATE_HEART = "immaculate-heart-of-mary";
  private static final String BOTH_OPTIONAL =
      "Congregation for Divine Worship, notification of 8 December 1998; UNLY 59 III.12";

  private MemorialsMeeting() {}

  /** Rewrites the entries of one day, sorted by precedence, and notes what is left out. */
  static void settle(List<Entry> entries, List<Omission> omitted) {
    if (entries.size() < 2 || !isMemorial(entries.get(0)) || !isMemorial(entries.get(1))) return;
    if (isOn(entries, MOTHER_OF_THE_CHURCH)) {
      keepMotherOfTheChurch(entries, omitted);
    } else if (isOn(entries, IMMACULATE_HEART) || stand(entries.get(0), entries.get(1))) {
      entries.replaceAll(MemorialsMeeting::optional);
    }
  }

  private static void keepMotherOfTheChurch(List<Entry> entries, List<Omission> omitted) {
    Entry kept = get(entries, MOTHER_OF_THE_CHURCH);
    entries.removeIf(entry -> isMemorial(entry) && leave(entry, kept, omitted));
    entries.add(0, kept);
  }

  private static boolean leave(Entry entry, Entry kept, List<Omission> omitted) {
    if (entry == kept) return true;
    Sentence reason =
        Sentence.of(
            "%s is kept when two memorials meet.", Sentence.Named.alone(kept.celebration().name()));
    String source = "Congregation for Divine Worship, notification of 24 March 2018";
    return omitted.add(
        new Omission(entry.id(), entry.celebration().name(), List.of(), reason, source));
  }

  private static Entry optional(Entry entry) {
    return isMemorial(entry)
        ? entry.with(Rank.OPTIONAL_MEMORIAL, Precedence.OPTIONAL_MEMORIAL, BOTH_OPTIONAL)
        : entry;
  }

  private static boolean isMemorial(Entry entry) {
    return entry.rank() == Rank.MEMORIAL;
  }

  private static boolean stand(Entry first, Entry second) {
    return first.precedence() == second.precedence();
  }

  private static boolean isOn(List<Entry> entries, String id) {
    return entries.stream().anyMatch(entry -> entry.id().equals(id) && isMemorial(entry));
  }

  private static Entry get(List<Entry> entries, String id) {
    return entries.stream().filter(entry -> entry.id().equals(id)).findFirst().orElseThrow();
  }
}
