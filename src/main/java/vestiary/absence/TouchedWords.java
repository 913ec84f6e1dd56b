package vestiary.absence;

import static vestiary.web.Speech.say;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import vestiary.people.AbsenceWords;
import vestiary.people.Attendance;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Says what an absence comes to. */
record TouchedWords(Person person, WhatItTouches.Touched touched, ZoneId zone) {

  /** For example "Father Fintan Oakhallow is down for three Masses in that time:". */
  String sentence() {
    int count = touched.masses().size();
    String until =
        touched.isAll()
            ? ""
            : say(
                " Looked at until %s; later ones show it when their time comes.",
                Speech.dateAndYear(touched.lookedUntil()));
    return count == 0
        ? say("%s is down for no Mass in that time.%s", person.inWords(), until)
        : say(
            "%s is down for %s in that time.%s",
            person.inWords(), Speech.count(count, "Mass"), until);
  }

  /** That nobody is left, in one sentence; empty while somebody is. */
  String nobodyLeft() {
    return nobodyLeft(touched.gaps(), zone);
  }

  /** The same of any times. */
  static String nobodyLeft(List<Attendance.Gap> gaps, ZoneId zone) {
    List<String> when =
        gaps.stream().map(gap -> AbsenceWords.span(gap.from(), gap.until(), zone)).toList();
    return when.isEmpty()
        ? ""
        : say("Nobody of the cluster who could celebrate is left %s.", Speech.list(when));
  }

  /** Each Mass with what the person does there, for example "…, Saint Anne: celebrates". */
  List<Link> masses() {
    return touched.masses().stream().map(this::mass).toList();
  }

  /** Where it is proposed who celebrates instead; no address if the person celebrates none. */
  Link standIn() {
    List<LocalDate> dates =
        touched.masses().stream().filter(this::leads).map(DatedMass::date).toList();
    return dates.isEmpty()
        ? new Link("", "")
        : new Link(
            say("Who could celebrate instead"),
            "/celebrants/proposal?from=%s&to=%s&without=%s"
                .formatted(dates.get(0), dates.get(dates.size() - 1), person.slug()));
  }

  private boolean leads(DatedMass mass) {
    return mass.findCelebrant().filter(p -> p.id().equals(person.id())).isPresent();
  }

  private Link mass(DatedMass mass) {
    return new Link(
        "%s, %s, %s: %s"
            .formatted(
                Speech.day(mass.date()),
                Speech.clock(mass.start()),
                mass.church().name(),
                leads(mass) ? say("celebrates") : say("named")),
        "/masses/" + mass.id().value());
  }
}
