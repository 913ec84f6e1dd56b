package vestiary.calendar;

/** What a celebration honours, as far as its colour and its place in the table hang on it. */
enum Kind implements Term {
  ADVENT,
  CHRISTMAS,
  LENT,
  EASTER,
  PASSION,
  HOLY_SPIRIT,
  ORDINARY,
  LORD,
  BVM,
  ANGELS,
  JOHN_THE_BAPTIST,
  MARTYR,
  APOSTLE,
  EVANGELIST,
  VIRGIN,
  DOCTOR,
  PASTOR,
  RELIGIOUS,
  HOLY_MAN,
  HOLY_WOMAN,
  DEDICATION,
  ALL_SAINTS,
  DEAD,
  PRAYER_DAY,
  CIVIL_DAY,
  /** A Mass of its own beside the Mass of the day; it never takes the day. */
  SEPARATE_MASS
}
