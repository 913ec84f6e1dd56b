package vestiary.planning;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import vestiary.allocation.LateArrival;
import vestiary.allocation.Level;
import vestiary.allocation.Shortage;
import vestiary.cluster.Church;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.Role;
import vestiary.web.Speech;

/** Draws the proof of a shortage: the two to be counted, or the journey that is too long. */
final class ClashPictures {

  private final ClashScene scene;

  ClashPictures(ClashScene scene) {
    this.scene = scene;
  }

  /** Needs above, pieces below. */
  CountPicture.Drawing count(Shortage s) {
    return CountPicture.of(counted(s, scene.words(s)));
  }

  private CountPicture.Count counted(Shortage s, ShortageWords words) {
    Instant latestStart =
        s.needs().stream()
            .map(n -> n.window().start())
            .max(Comparator.naturalOrder())
            .orElseThrow();
    boolean atOnce = s.needs().stream().allMatch(n -> n.window().end().isAfter(latestStart));
    String pieces =
        Speech.sentence(words.isOfOneColour() ? words.tinted(words.noun(2)) : words.noun(2));
    String where =
        s.level() == Level.LOCAL
            ? say("%s at %s", pieces, scene.church(s.needs().get(0)))
            : say("%s in the cluster", pieces);
    return new CountPicture.Count(
        scene.clash().words().title() + ".",
        atOnce ? scene.minutes(latestStart) : -1,
        say("%s needed", pieces),
        s.needed() + say(" needed"),
        s.needs().stream().map(this::needBar).toList(),
        where,
        s.available() + (s.level() == Level.LOCAL ? say(" there") : say(" could serve")),
        pieceBars(s),
        atOnce
            ? say(
                "Thin line: from set-out until put away. Bar: the Mass. On the red line: %s above, %s below.",
                Speech.count(s.needed(), "mark"), Speech.count(s.available()))
            : say("Thin line: from set-out until put away. Bar: the Mass."));
  }

  private CountPicture.Need needBar(Need need) {
    DatedMass mass = scene.mass(need);
    return new CountPicture.Need(
        who(need, mass),
        need.colour(),
        scene.minutes(need.window().setOut()),
        scene.minutes(need.window().start()),
        scene.minutes(need.window().end()),
        scene.minutes(need.window().cleared()),
        scene.clash().masses().size() > 1 ? mass.church().place() : say("at the altar"));
  }

  private static String who(Need need, DatedMass mass) {
    return switch (need.role()) {
      case PRINCIPAL, MINISTER ->
          mass.findCelebrant().map(p -> p.shortName()).orElse(role(need.role()));
      case DECEASED -> role(need.role());
      default -> role(need.role()) + " " + need.ordinal();
    };
  }

  private static String role(Role role) {
    return Speech.sentence(Speech.noun(1, RoleWords.noun(role)));
  }

  private List<CountPicture.Piece> pieceBars(Shortage s) {
    List<CountPicture.Piece> bars = new ArrayList<>();
    s.pieces()
        .forEach(
            p -> bars.add(bar(p, true, s.level() == Level.LOCAL ? say("there") : scene.home(p))));
    s.notServing().stream()
        .filter(
            n -> s.level() == Level.CLUSTER || n.piece().home().equals(s.needs().get(0).church()))
        .forEach(n -> bars.add(bar(n.piece(), false, scene.reason(n))));
    return bars;
  }

  private static CountPicture.Piece bar(Piece piece, boolean counts, String words) {
    return new CountPicture.Piece(ClashScene.name(piece), piece.colours().get(0), counts, words);
  }

  /** The journey as a slope; nothing to draw where none is known. */
  JourneyPicture.Drawing journey(LateArrival late) {
    if (late.arrives().equals(Instant.MAX)) {
      return JourneyPicture.Drawing.NONE;
    }
    return JourneyPicture.of(
        new JourneyPicture.Late(
            scene.clash().words().title() + ".",
            stop(late.from()),
            stop(late.to()),
            scene.minutes(late.from().window().cleared()),
            scene.minutes(late.arrives()),
            scene.minutes(late.due()),
            say("due ") + scene.clock(late.due()),
            say("there at ") + scene.clock(late.arrives()),
            scene.road(late)));
  }

  private JourneyPicture.Stop stop(Need need) {
    Church church = scene.church(need.church());
    return new JourneyPicture.Stop(
        church.name(),
        church.place(),
        need.colour(),
        scene.minutes(need.window().start()),
        scene.minutes(need.window().end()));
  }
}
