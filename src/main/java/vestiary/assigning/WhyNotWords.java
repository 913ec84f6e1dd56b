package vestiary.assigning;

import static vestiary.web.Speech.say;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.Map;
import vestiary.allocation.celebrant.Absence;
import vestiary.allocation.celebrant.CountedDay;
import vestiary.allocation.celebrant.Pace;
import vestiary.allocation.celebrant.Portion;
import vestiary.allocation.celebrant.Stay;
import vestiary.allocation.celebrant.WhyNot;
import vestiary.cluster.Church;
import vestiary.cluster.CountBy;
import vestiary.planning.MassWords;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.web.Speech;

/** Why a priest cannot take a Mass, as the rest of a sentence that begins with him. */
final class WhyNotWords {

  private static final int MOST_BY_LEAVE = 3;

  /** Nobody says the day on which he is back so far ahead. */
  private static final Duration FURTHER_NOTICE = Duration.ofDays(400);

  private final Scene scene;
  private final Map<MassId, DatedMass> masses;
  private final Pace pace;

  WhyNotWords(Scene scene, Pace pace) {
    this.scene = scene;
    this.masses = scene.byId();
    this.pace = pace;
  }

  /** For example "is at Holy Trinity until 12:30". */
  String of(WhyNot why, MassId mass) {
    if (why instanceof WhyNot.Away away) {
      return away(away.absence());
    } else if (why instanceof WhyNot.NotServed one) {
      return say(
          "does not serve at %s on a %s",
          church(one.stay().church()), Speech.weekday(one.stay().date()));
    } else if (why instanceof WhyNot.Before before) {
      return before(before, mass);
    } else if (why instanceof WhyNot.After after) {
      return say(
          "has to be at %s (%s)%s: he could begin here at %s at the latest",
          church(after.stay().church()),
          what(after.stay()),
          road(after.journey().toMinutes()),
          clock(after.latest()));
    } else if (why instanceof WhyNot.NoRoad none) {
      return say(
          "is at %s (%s), and no way between the two is known",
          church(none.stay().church()), what(none.stay()));
    }
    return tooMany((WhyNot.TooMany) why);
  }

  /** For example "second Mass on Tuesday 8 December". */
  String number(int number, CountedDay day) {
    return say("%s Mass %s", Speech.ordinal(number), on(day, scene.cluster().policies().countBy()));
  }

  /** The day that a Mass counts on, for example "on Saturday 5 December". */
  static String on(CountedDay day, CountBy countBy) {
    String date = Speech.day(day.date());
    if (day.portion() == Portion.VIGIL) {
      return say("among the Easter Vigils of ") + date;
    }
    return countBy == CountBy.CALENDAR ? say("on ") + date : say("for ") + date;
  }

  private String away(Absence absence) {
    ZonedDateTime back = absence.until().atZone(scene.cluster().zone());
    if (absence.until().isAfter(scene.now().plus(FURTHER_NOTICE))) {
      return say("is away until further notice");
    }
    return back.toLocalTime().equals(LocalTime.MIDNIGHT)
        ? say("is away through ") + Speech.day(back.toLocalDate().minusDays(1))
        : say("is away until %s, %s", Speech.day(back.toLocalDate()), Speech.clock(back));
  }

  private String before(WhyNot.Before before, MassId mass) {
    Stay stay = before.stay();
    if (stay.mass().equals(mass)) {
      return say("concelebrates it");
    }
    return say(
        "is at %s until %s (%s)%s: he could begin here at %s at the earliest",
        church(stay.church()),
        clock(stay.end().plus(pace.after())),
        what(stay),
        road(before.journey().toMinutes()),
        clock(before.earliest()));
  }

  private static String road(long minutes) {
    return minutes == 0 ? "" : say(", %d minutes away", minutes);
  }

  private String tooMany(WhyNot.TooMany many) {
    String others = say("has ") + Speech.list(many.others().stream().map(this::which).toList());
    if (many.own()) {
      return say("takes %s a day and %s", Speech.count(many.most(), "Mass"), others);
    }
    if (many.number() > MOST_BY_LEAVE) {
      return say(
          "%s: a %s is beyond what a bishop can permit (can. 905; the Holy See alone)",
          others, number(many.number(), many.day()));
    }
    return say(
        "%s: it would be his %s, and the leave on file is for %s (can. 905)",
        others, number(many.number(), many.day()), Speech.count(many.most()));
  }

  /** The kind of Mass and its hour, so that one is known from another. */
  private String what(Stay stay) {
    DatedMass mass = masses.get(stay.mass());
    return say("%s at %s", MassWords.noun(mass), Speech.clock(mass.start()));
  }

  private String which(Stay stay) {
    DatedMass mass = masses.get(stay.mass());
    return say("%s at %s", Speech.clock(mass.start()), mass.church().name());
  }

  private String church(ChurchId id) {
    return scene.churches().stream()
        .filter(church -> church.id().equals(id))
        .findFirst()
        .map(Church::name)
        .orElseThrow();
  }

  String clock(Instant moment) {
    return Speech.clock(moment.atZone(scene.cluster().zone()));
  }
}
