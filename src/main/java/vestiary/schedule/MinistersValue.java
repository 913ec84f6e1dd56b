package vestiary.schedule;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import vestiary.calendar.Term;
import vestiary.vesting.FurtherMinisters;
import vestiary.vesting.Role;

/** Who vests besides celebrants and deacons, in words, as the API and the rows have it. */
public record MinistersValue(
    @Schema(
            description =
                "server, acolyte, reader or other; at an ordination new-priest or new-deacon")
        String kind,
    @Schema(minimum = "0", maximum = "200") Integer count,
    @Schema(description = "of their albs, as the labels have them; not more than persons")
        List<String> sizes) {

  static MinistersValue from(FurtherMinisters ministers) {
    return new MinistersValue(ministers.role().id(), ministers.count(), ministers.sizes());
  }

  FurtherMinisters toMinisters() {
    return new FurtherMinisters(Term.find(Role.class, kind).orElseThrow(), count, sizes);
  }
}
