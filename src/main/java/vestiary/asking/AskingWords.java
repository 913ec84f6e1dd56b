package vestiary.asking;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.ZonedDateTime;
import vestiary.cluster.ReadCluster;
import vestiary.web.English;

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
          case ASKED -> "was asked";
          case ACCEPTED -> "said yes";
          case DECLINED -> "said no";
          case DONE -> "brought it";
          case WITHDRAWN -> "was told that it is not needed of him";
        };
    String by =
        one.changedBy().isEmpty() || one.changedBy().equals(one.name())
            ? ""
            : one.state() == AskingState.ASKED
                ? " by " + one.changedBy()
                : ", as %s noted".formatted(one.changedBy());
    return "%s %s on %s%s."
        .formatted(English.sentence(one.name()), deed, moment(one.changedAt()), by);
  }

  private String moment(Instant moment) {
    ZonedDateTime time = moment.atZone(cluster.cluster().zone());
    return English.day(time.toLocalDate()) + ", " + English.clock(time);
  }
}
