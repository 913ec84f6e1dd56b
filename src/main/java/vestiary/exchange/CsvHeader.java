package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which column of a file holds what.
 *
 * @param width number of columns in the file
 * @param places place in the record, from 0, by the name of each known column that the file has
 * @param unknownColumns names that no column of this list bears, as written
 */
record CsvHeader(int width, Map<String, Integer> places, List<String> unknownColumns) {

  CsvHeader {
    places = Map.copyOf(places);
    unknownColumns = List.copyOf(unknownColumns);
  }

  static CsvHeader parse(List<String> header, ImportWhat what) throws BadFile {
    Map<String, Integer> places = new LinkedHashMap<>();
    List<String> unknown = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (int place = 0; place < header.size(); place++) {
      String written = header.get(place);
      Optional<String> known = knownName(written, what);
      if (!written.isEmpty() && !seen.add(known.orElse(written))) {
        throw new BadFile(1, say("The column \"%s\" is there twice.", written));
      }
      if (known.isPresent()) {
        places.put(known.get(), place);
      } else if (!written.isEmpty()) {
        unknown.add(written);
      }
    }
    refuseMissing(places.keySet(), what);
    return new CsvHeader(header.size(), places, unknown);
  }

  private static Optional<String> knownName(String written, ImportWhat what) {
    return what.columns().stream()
        .map(Column::name)
        .filter(name -> name.equalsIgnoreCase(written))
        .findFirst();
  }

  private static void refuseMissing(Set<String> present, ImportWhat what) throws BadFile {
    String missing =
        what.columns().stream()
            .filter(Column::required)
            .map(Column::name)
            .filter(name -> !present.contains(name))
            .collect(Collectors.joining(", "));
    if (!missing.isEmpty()) {
      throw new BadFile(
          1, say("The first line must name the columns of %s; missing: %s.", what.id(), missing));
    }
  }
}
