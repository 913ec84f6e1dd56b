package vestiary.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What the browser prints of a page, on the paper that the page asks for. */
record PrintedPages(List<Sheet> sheets) {

  /**
   * One page of paper, in points of PDF, 72 to the inch.
   *
   * @param lines as they are read, blanks run together, none of them empty
   * @param left the least distance of a letter from the left edge, likewise the others
   */
  record Sheet(
      double width,
      double height,
      List<String> lines,
      double left,
      double right,
      double top,
      double bottom) {}

  static PrintedPages of(Browser browser, String address) {
    try (Page page = browser.newPage()) {
      page.navigate(address);
      return read(page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true)));
    }
  }

  private static PrintedPages read(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<Sheet> sheets = new ArrayList<>();
      for (int number = 1; number <= document.getNumberOfPages(); number++) {
        sheets.add(new Letters(document, number).sheet());
      }
      return new PrintedPages(sheets);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads one page and remembers how far its letters reach. */
  private static final class Letters extends PDFTextStripper {

    private final PDPage page;
    private final String text;
    private double left = Double.MAX_VALUE;
    private double right = Double.MAX_VALUE;
    private double top = Double.MAX_VALUE;
    private double bottom = Double.MAX_VALUE;

    Letters(PDDocument document, int number) throws IOException {
      page = document.getPage(number - 1);
      setSortByPosition(true);
      setStartPage(number);
      setEndPage(number);
      text = getText(document);
    }

    @Override
    protected void processTextPosition(TextPosition letter) {
      left = Math.min(left, letter.getXDirAdj());
      right =
          Math.min(
              right, page.getMediaBox().getWidth() - letter.getXDirAdj() - letter.getWidthDirAdj());
      top = Math.min(top, letter.getYDirAdj() - letter.getHeightDir());
      bottom = Math.min(bottom, page.getMediaBox().getHeight() - letter.getYDirAdj());
      super.processTextPosition(letter);
    }

    Sheet sheet() {
      List<String> lines =
          text.lines()
              .map(l -> l.strip().replaceAll("\\s+", " "))
              .filter(l -> !l.isEmpty())
              .toList();
      return new Sheet(
          page.getMediaBox().getWidth(),
          page.getMediaBox().getHeight(),
          lines,
          left,
          right,
          top,
          bottom);
    }
  }
}
