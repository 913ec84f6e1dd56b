package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.util.List;

/** Knows by its first bytes a file that is no list, whatever its name ends in. */
final class FirstBytes {

  /**
   * ZIP (APPNOTE 4.3.7), as spreadsheets use it, gzip (RFC 1952), and the compound files of older
   * spreadsheets (MS-CFB 2.2).
   */
  private static final List<int[]> PACKED =
      List.of(
          new int[] {'P', 'K', 3, 4},
          new int[] {'P', 'K', 5, 6},
          new int[] {0x1F, 0x8B},
          new int[] {0xD0, 0xCF, 0x11, 0xE0});

  /** JPEG (ITU-T T.81, B.1.1.3), PNG (ISO/IEC 15948, 5.2) and PDF (ISO 32000-1, 7.5.2). */
  private static final List<int[]> PICTURES =
      List.of(
          new int[] {0xFF, 0xD8, 0xFF},
          new int[] {0x89, 'P', 'N', 'G'},
          new int[] {'%', 'P', 'D', 'F', '-'});

  private FirstBytes() {}

  static void refuseForeign(byte[] file) throws BadFile {
    if (PACKED.stream().anyMatch(first -> begins(file, first))) {
      throw new BadFile(
          1,
          say(
              "The file is packed, as a spreadsheet keeps its own files, even if its name ends in .csv. Open it in the spreadsheet, save it there as CSV UTF-8, and send that file."));
    }
    if (PICTURES.stream().anyMatch(first -> begins(file, first))) {
      throw new BadFile(
          1,
          say(
              "The file is a picture or a document, and no list. Choose the file that was saved from the spreadsheet as CSV UTF-8."));
    }
  }

  private static boolean begins(byte[] file, int[] first) {
    if (file.length < first.length) {
      return false;
    }
    for (int place = 0; place < first.length; place++) {
      if ((file[place] & 0xFF) != first[place]) {
        return false;
      }
    }
    return true;
  }
}
