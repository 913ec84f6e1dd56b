package vestiary.cluster;

/**
 * A journey that nobody has timed, guessed from coordinates: the great circle, lengthened for roads
 * and driven at a country road's speed. Both numbers are our own rule of thumb: common practice, no
 * source; a timed journey always replaces it.
 */
final class JourneyEstimate {

  private static final double EARTH_RADIUS_KM = 6371.0088;
  private static final double ROADS_ARE_LONGER = 1.35;
  private static final double KM_PER_MINUTE = 50.0 / 60;
  private static final int LOADING_MINUTES = 3;

  private JourneyEstimate() {}

  /** Whole minutes between two churches, at least one; both must have coordinates. */
  static int minutes(ChurchRow from, ChurchRow to) {
    double kilometres = ROADS_ARE_LONGER * greatCircle(from, to);
    return (int) Math.ceil(LOADING_MINUTES + kilometres / KM_PER_MINUTE);
  }

  /** Haversine formula; R. W. Sinnott, "Virtues of the Haversine", Sky and Telescope 68 (1984). */
  private static double greatCircle(ChurchRow from, ChurchRow to) {
    double latitude = Math.toRadians(to.latitude - from.latitude);
    double longitude = Math.toRadians(to.longitude - from.longitude);
    double a =
        square(Math.sin(latitude / 2))
            + Math.cos(Math.toRadians(from.latitude))
                * Math.cos(Math.toRadians(to.latitude))
                * square(Math.sin(longitude / 2));
    return 2 * EARTH_RADIUS_KM * Math.asin(Math.min(1, Math.sqrt(a)));
  }

  private static double square(double x) {
    return x * x;
  }
}
