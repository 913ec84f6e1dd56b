package vestiary.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;

/** A plan as a program reads it, once it is over. */
public record Planned(Map<String, Object> body) {

  private static final List<Integer> NONE = List.of(0, 0, 0);

  /** Asks for the plan of these dates, both included, and waits for it. */
  public static Planned of(String from, String to) {
    return new Planned(Planning.finished(Planning.ask(from, to)));
  }

  /** The plan of one date. */
  public static Planned on(String date) {
    return of(date, date);
  }

  /** It is proven, leaves nothing unmet and takes no step. */
  public Planned isWhole(int carriages, int minutes) {
    return comesTo(NONE, NONE, carriages, minutes);
  }

  /** It is proven, and so many needs are unmet, steps taken and minutes driven. */
  public Planned comesTo(List<Integer> unmet, List<Integer> steps, int carriages, int minutes) {
    Map<?, ?> score = (Map<?, ?>) body.get("score");
    assertEquals("proven", body.get("status"), () -> body.toString());
    assertEquals(
        List.of(unmet, steps, carriages, minutes),
        List.of(
            score.get("unmet"), score.get("steps"), score.get("carriages"), score.get("minutes")),
        () -> "%s, carried: %s".formatted(score, movements()));
    return this;
  }

  public List<Map<String, Object>> movements() {
    return Planning.list(body, "movements");
  }

  /** The journeys on which a piece rides, by the hour of leaving. */
  public List<Map<String, Object>> journeysOf(String piece) {
    return movements().stream()
        .filter(one -> ((List<?>) one.get("pieces")).contains(piece))
        .toList();
  }

  /** Codes of the pieces of a kind that are worn at a Mass, in order of wearers. */
  public List<Object> worn(Map<String, Object> mass, String kind) {
    return Planning.list(body, "assignments").stream()
        .filter(one -> one.get("mass").equals(mass.get("id")) && one.get("kind").equals(kind))
        .map(one -> one.get("piece"))
        .toList();
  }

  /** What a Mass has a substitute for, in order of wearers. */
  public List<Object> substitutes(Map<String, Object> mass, String kind) {
    return List.of("assignments", "leftOut").stream()
        .flatMap(list -> Planning.list(body, list).stream())
        .filter(one -> one.get("mass").equals(mass.get("id")) && one.get("kind").equals(kind))
        .filter(one -> one.get("substitute") != null)
        .map(one -> one.get("substitute"))
        .toList();
  }
}
