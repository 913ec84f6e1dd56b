package vestiary.sending;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Puts pieces that went and came together into one line. */
final class SentLines {

  private final SendingWords.Said said;
  private final Instant now;

  SentLines(SendingWords.Said said, Instant now) {
    this.said = said;
    this.now = now;
  }

  /** In the order of the first piece of each. */
  List<LoansView.Line> of(List<Sent> sent) {
    Map<String, List<Sent>> together = new LinkedHashMap<>();
    sent.forEach(
        one ->
            together
                .computeIfAbsent(
                    "%s %s %s %s".formatted(one.sending(), one.owner(), one.loan(), one.returns()),
                    unknown -> new ArrayList<>())
                .add(one));
    return together.values().stream().map(this::line).toList();
  }

  private LoansView.Line line(List<Sent> pieces) {
    Sent first = pieces.get(0);
    return new LoansView.Line(
        new Link(first.item(), "/s/" + first.item()),
        what(pieces),
        first.owner(),
        with(first),
        out(first),
        first.findReturn().map(this::back).orElseGet(() -> Speech.sentence(said.due(first, now))),
        first.isOverdue(now),
        condition(first));
  }

  private static String what(List<Sent> pieces) {
    return pieces.stream()
        .map(one -> one.code().equals(one.item()) ? said(one) : one.code() + ", " + said(one))
        .collect(Collectors.joining("; "));
  }

  private static String said(Sent one) {
    return WhatWent.said(one.what());
  }

  /** The parish, and its church where that is called otherwise. */
  private String with(Sent one) {
    String place = said.place(one);
    return place.equals(one.borrower()) ? place : one.borrower() + ", " + place;
  }

  private String out(Sent one) {
    return Stream.of(
            Stream.of(said.moment(one.went())),
            one.carriers().stream().map(id -> say("carried by ") + said.person(id)),
            one.signers().stream().map(id -> say("signed for by ") + said.person(id)),
            Stream.of(said.marked(one.sentBy()))
                .filter(name -> !name.isEmpty())
                .map(name -> say("sent by ") + name))
        .flatMap(some -> some)
        .collect(Collectors.joining(", "));
  }

  private String back(Sent.Return one) {
    String taker =
        one.takers().stream().findFirst().map(said::person).orElse(said.marked(one.notedBy()));
    return say(
        "Back %s, at %s%s",
        said.moment(one.at()),
        said.church(one.church()),
        taker.isEmpty() ? "" : say(", taken in by ") + taker);
  }

  private static String condition(Sent one) {
    String back = one.findReturn().map(Sent.Return::condition).orElse("");
    return back.isEmpty() ? one.condition() : say("%s; back: %s", one.condition(), back);
  }
}
