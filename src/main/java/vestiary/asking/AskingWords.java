package vestiary.asking;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.ZonedDateTime;
import vestiary.cluster.ReadCluster;
import vestiary.web.Speech;

/** Says how an asking stands. */
@ApplicationScoped
public class AskingWords {

  private final ReadCluster cluster;

  AskingWords(ReadCluster cluster) {
    this.cluster = cluster;
  }

  /** One sentence, for example "Father Ilverton said yes on Monday 7 December, 10:42." */
  public String lately(Asking one) {
    String deed =
        switch (one.state()) {
          case ASKED -> say("was asked");
          case ACCEPTED -> say("said yes");
          case DECLINED -> say("said no");
          case DONE -> say("brought it");
          case WITHDRAWN -> say("was told that it is not needed of him");
        };
    String by =
        one.changedBy().isEmpty() || one.changedBy().equals(one.name())
            ? ""
            : one.state() == AskingState.ASKED
                ? say(" by %1$s", one.changedBy())
                : say(", as %s noted", one.changedBy());
    return say("%s %s on %s%s.", Speech.sentence(one.name()), deed, moment(one.changedAt()), by);
  }

  private String moment(Instant moment) {
    ZonedDateTime time = moment.atZone(cluster.cluster().zone());
    return Speech.day(time.toLocalDate()) + ", " + Speech.clock(time);
  }
}
