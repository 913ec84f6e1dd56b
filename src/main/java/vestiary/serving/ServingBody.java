package vestiary.serving;

import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import vestiary.schedule.WhoServes;

/** Somebody who serves at a Mass, as the API writes it. */
record ServingBody(
    @Schema(
            description = "short name of the person; a full name is understood too",
            required = true)
        String person,
    @Schema(
            description =
                "server, acolyte, reader, communion-minister or sacristan; what the person usually is where none is given; an administrator needs one")
        String role,
    @Schema(readOnly = true, description = "of a child the first name and an initial")
        String name) {

  static ServingBody from(WhoServes one) {
    return new ServingBody(one.person().slug(), one.as().id(), one.person().name());
  }

  NameServing.Wanted toWanted() {
    return new NameServing.Wanted(person, role);
  }

  /** Those who are to serve, and no others. */
  record Wanted(List<ServingBody> serving) {

    /** {@code null} if nothing was said of it. */
    List<NameServing.Wanted> toWanted() {
      return serving == null
          ? null
          : serving.stream().map(one -> one == null ? null : one.toWanted()).toList();
    }
  }
}
