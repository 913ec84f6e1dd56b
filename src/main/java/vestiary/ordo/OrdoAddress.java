package vestiary.ordo;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import vestiary.cluster.Church;

/**
 * Where an ordo is found.
 *
 * @param church short name; empty for the whole cluster
 */
record OrdoAddress(LiturgicalYear year, String church, Paper paper) {

  static OrdoAddress of(Ordo ordo, Paper paper) {
    return new OrdoAddress(ordo.year(), ordo.findChurch().map(Church::slug).orElse(""), paper);
  }

  OrdoAddress with(LiturgicalYear other) {
    return new OrdoAddress(other, church, paper);
  }

  OrdoAddress with(String other) {
    return new OrdoAddress(year, other, paper);
  }

  OrdoAddress with(Paper other) {
    return new OrdoAddress(year, church, other);
  }

  /** Its page; A4 is not said, since it is what is laid out unless another is asked for. */
  String page() {
    List<String> query = new ArrayList<>();
    if (!church.isEmpty()) query.add(churchQuery());
    if (paper != Paper.A4) query.add("paper=" + paper.id());
    return "/year/" + year.number() + (query.isEmpty() ? "" : "?" + String.join("&", query));
  }

  /** Its file of that kind. */
  String file(String kind) {
    return "/year/%d.%s%s"
        .formatted(year.number(), kind, church.isEmpty() ? "" : "?" + churchQuery());
  }

  private String churchQuery() {
    return "church=" + URLEncoder.encode(church, StandardCharsets.UTF_8);
  }
}
