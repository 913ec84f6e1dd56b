package vestiary.people;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * A person as the API writes and takes him; what is left out when it is sent stays as it is.
 * Wishes, own vestments and permission are absent for whoever does not plan.
 *
 * @param name first name and initial of whoever is under 18; the whole name may be sent
 * @param churches short names; none: all
 * @param languages BCP 47
 * @param days as in monday; none: any
 * @param mostADay Masses a day that he wishes to say at most
 */
record PersonBody(
    String slug,
    String name,
    String title,
    String role,
    Boolean visiting,
    Boolean minor,
    @Schema(description = "told to those responsible alone") String wholeName,
    @Schema(description = "names of parents or guardians, told likewise") String responsible,
    List<String> churches,
    List<String> languages,
    List<String> days,
    Integer mostADay,
    String wishes,
    String ownSet,
    PermissionBody permission) {

  /**
   * The permission on file (canon 905).
   *
   * @param weekday Masses on a weekday; 0 takes it away
   * @param grantedOn as in 2026-12-08
   */
  record PermissionBody(Integer weekday, Integer sunday, String grantedBy, String grantedOn) {
    static PermissionBody from(Permission one) {
      return new PermissionBody(
          one.weekday(),
          one.sunday(),
          one.grantedBy(),
          one.findGranted().map(LocalDate::toString).orElse(null));
    }
  }

  /** Of one of whom it is told how he serves to those who plan. */
  static PersonBody from(
      Person p,
      boolean isChild,
      Optional<Children.Child> child,
      Ministry ministry,
      List<String> churches,
      boolean plans) {
    return new PersonBody(
        p.slug(),
        p.name(),
        p.title(),
        p.role().id(),
        p.isVisiting(),
        isChild,
        child.map(Children.Child::wholeName).orElse(null),
        child.map(Children.Child::responsible).orElse(null),
        churches,
        ministry.languages(),
        ministry.days().stream().sorted().map(PersonBody::word).toList(),
        plans && ministry.mostADay() > 0 ? ministry.mostADay() : null,
        plans ? given(ministry.wishes()) : null,
        plans ? given(ministry.ownSet()) : null,
        plans ? ministry.findPermission().map(PermissionBody::from).orElse(null) : null);
  }

  SavePerson.Request toRequest() {
    return new SavePerson.Request(slug, name, null, title, role, visiting, minor, responsible);
  }

  SaveMinistry.Request toMinistry() {
    PermissionBody on =
        permission == null ? new PermissionBody(null, null, null, null) : permission;
    return new SaveMinistry.Request(
        churches,
        languages,
        days,
        mostADay,
        wishes,
        ownSet,
        on.weekday(),
        on.sunday(),
        on.grantedBy(),
        on.grantedOn());
  }

  static String word(DayOfWeek day) {
    return day.name().toLowerCase(Locale.ROOT);
  }

  private static String given(String text) {
    return text.isEmpty() ? null : text;
  }
}
