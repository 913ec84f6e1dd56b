package vestiary.problem;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Tuple;

/** Texts that somebody who means no good, or a broken program, sends. */
final class OddText {

  private static final List<String> KNOWN =
      List.of(
          "",
          " ",
          "\t\n",
          "x".repeat(41),
          "x".repeat(201),
          "x".repeat(2_001),
          "\u0000",
          "a\u0000b",
          "\u0007",
          "\u202Egnp.exe",
          "\u2066x\u2069",
          "a\u200Bb\u200Dc\uFEFF",
          "e\u0301\u0301\u0301",
          "\uD83D\uDE4F",
          "\uD800",
          "\uDC00x",
          "\uFFFF",
          "ｈｔ",
          "hт",
          "İıſK",
          "Ǆ\u0130",
          "../../etc/passwd",
          "..\\..\\x",
          "%00",
          "%2e%2e%2f",
          "'; drop table church; --",
          "<script>alert(1)</script>",
          "{7*7}{{7*7}}${7*7}",
          "null",
          "NaN",
          "Infinity",
          "-0",
          "1e400",
          "99999999999999999999999999",
          "00000000-0000-0000-0000-000000000000",
          "ffffffff-ffff-ffff-ffff-ffffffffffffff",
          "0-0-0-0-0");

  private static final List<String> TIMES =
      List.of(
          "2026-12-08",
          "2026-12-08T18:30",
          "2026-12-08T18:30+01:00",
          "2026-12-08T18:30:00.000000001Z",
          "2027-03-14T02:30",
          "2026-11-01T01:30",
          "2028-02-29",
          "2027-02-29",
          "2026-13-01",
          "0000-00-00",
          "0000-01-01",
          "0001-01-01",
          "1969-12-31",
          "1970-01-01",
          "2300-12-31",
          "2301-01-01",
          "9999-12-31",
          "+10000-01-01",
          "-999999999-01-01",
          "+999999999-12-31",
          "+999999999-12-31T23:59:59",
          "24:00",
          "23:59",
          "00:00",
          "7:5",
          "18:30:61");

  private OddText() {}

  static Arbitrary<String> any() {
    return Arbitraries.frequencyOf(
        Tuple.of(4, Arbitraries.of(KNOWN)),
        Tuple.of(3, Arbitraries.of(TIMES)),
        Tuple.of(2, Arbitraries.strings().ofMaxLength(30)),
        Tuple.of(1, Arbitraries.strings().ascii().ofMaxLength(60)));
  }

  static Arbitrary<String> time() {
    return Arbitraries.of(TIMES);
  }
}
