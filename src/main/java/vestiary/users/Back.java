package vestiary.users;

/** Where somebody is led after signing in: an address of this server, whatever was sent. */
final class Back {

  static final String WEEK = "/week";

  private Back() {}

  /** The address if it is one of ours, else that of the week. */
  static String of(String asked) {
    return asked.matches("/([^/\\\\\\p{Cntrl}\\s][^\\\\\\p{Cntrl}\\s]*)?") ? asked : WEEK;
  }
}
