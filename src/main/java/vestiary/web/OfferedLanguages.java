package vestiary.web;

import java.util.List;
import java.util.Locale;

/** The languages of the people; this room knows no feature, so the one that knows answers. */
public interface OfferedLanguages {

  /** Of the cluster of the present request, its first one first; empty if it cannot be read now. */
  List<Locale> languages();
}
