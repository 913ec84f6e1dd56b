package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDateTime;
import java.util.List;
import vestiary.pattern.SchoolTime;
import vestiary.schedule.BringsValue;
import vestiary.schedule.MinistersValue;
import vestiary.schedule.SaveMass;
import vestiary.schedule.SavePattern;
import vestiary.schedule.TypedAgain;
import vestiary.schedule.WhoServes;

/** Recurring Mass times and single Masses as lists. */
@ApplicationScoped
@Transactional
class WriteSchedule {

  private final TypedAgain schedule;

  WriteSchedule(TypedAgain schedule) {
    this.schedule = schedule;
  }

  List<WrittenLine> patterns() {
    return schedule.patterns().stream().map(WriteSchedule::pattern).toList();
  }

  List<WrittenLine> masses() {
    return schedule.massesByHand().stream()
        .map(
            typed ->
                mass(typed.mass())
                    .withAll("replaces", typed.replaces().stream())
                    .withAll("serving", typed.serving().stream().map(WriteSchedule::text)))
        .toList();
  }

  private static WrittenLine pattern(SavePattern.Request pattern) {
    return bounds(
        new WrittenLine()
            .with("church", pattern.church())
            .with("rrule", pattern.rrule())
            .with("starts", pattern.starts())
            .with("time", pattern.time())
            .with("minutes", pattern.minutes())
            .with("celebrant", pattern.celebrant())
            .withCount("concelebrants", pattern.concelebrants())
            .withCount("deacons", pattern.deacons())
            .with("mass", pattern.mass())
            .withAll("ministers", pattern.ministers().stream().map(WriteSchedule::text))
            .with("note", pattern.note())
            .with("language", pattern.language()),
        pattern.bounds());
  }

  private static WrittenLine bounds(WrittenLine line, SavePattern.Bounds bounds) {
    return line.with("days", bounds.days())
        .with("until", bounds.until())
        .withAll("seasons", bounds.seasons().stream())
        .withAll("months", bounds.months().stream())
        .withFlag("notInTriduum", bounds.notInTriduum())
        .withFlag("notOnHolyDays", bounds.notOnHolyDays())
        .with("school", bounds.school().equals(SchoolTime.ALWAYS.id()) ? "" : bounds.school())
        .withAll("except", bounds.except().stream());
  }

  private static WrittenLine mass(SaveMass.Request mass) {
    LocalDateTime start = LocalDateTime.parse(mass.start());
    return new WrittenLine()
        .with("church", mass.church())
        .with("date", start.toLocalDate())
        .with("time", start.toLocalTime())
        .with("minutes", mass.minutes())
        .with("mass", mass.mass())
        .with("votiveOf", mass.votiveOf())
        .with("leave", mass.leave())
        .with("celebration", mass.celebration())
        .with("colour", mass.colour())
        .with("celebrant", mass.celebrant())
        .withCount("concelebrants", mass.concelebrants())
        .withCount("deacons", mass.deacons())
        .withAll("named", mass.named().stream())
        .withAll("brings", mass.brings().stream().map(WriteSchedule::text))
        .withFlag("bishop", mass.bishop())
        .withAll("ministers", mass.ministers().stream().map(WriteSchedule::text))
        .withAll("also", mass.also().stream())
        .with("setOutMinutes", mass.setOutMinutes() == null ? "" : mass.setOutMinutes())
        .with("note", mass.note())
        .with("intention", mass.intention())
        .with("language", mass.language());
  }

  /** For example concelebrant 2:alb+stole. */
  private static String text(BringsValue brings) {
    return "%s %d:%s".formatted(brings.role(), brings.count(), String.join("+", brings.kinds()));
  }

  /** For example odo-larkspire:reader. */
  private static String text(WhoServes one) {
    return "%s:%s".formatted(one.person().slug(), one.as().id());
  }

  /** For example server 3:120+130. */
  private static String text(MinistersValue ministers) {
    List<String> sizes = ministers.sizes() == null ? List.of() : ministers.sizes();
    String known = sizes.isEmpty() ? "" : ":" + String.join("+", sizes);
    return "%s %d%s".formatted(ministers.kind(), ministers.count(), known);
  }
}
