package vestiary.history;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** How people call what the database keeps; what tells them nothing is left out. */
final class FieldWords {

  private static final Map<String, String> THINGS =
      pairs(
          """
          cluster: Settings
          parish: Parish
          church: Church
          journey: Journey between two churches
          person: Person
          person_mail: Mail address of
          person_height: Height of
          absence: Absence of
          ministry: What is served by
          person_church: Where somebody serves
          child: Whole name of
          arrival: Arrival from outside
          worn: What was worn
          pattern: Recurring Mass
          school_term: School term
          merger: Closing or merging
          mass: Mass
          suit: Suit
          vestment_set: Set
          piece: Piece
          occupation: Piece held, out or in care
          reservation: Vestments set aside
          wish: Vestments asked for
          proper: Day of your own
          proper_church: Day of your own, its church
          app_user: User
          user_church: User, their church
          user_token: User, a token
          user_mail: User, a mail address
          user_passkey: User, a device to sign in by
          user_outside: User, a sign-in by another service
          asking: Journey given to somebody
          consent: Answer of an owner
          applied_remedy: What mends a clash
          accepted_step: Lawful substitute
          plan: Plan
          movement: Journey of a piece
          photo: Photograph of
          stocktake: Stocktake
          stocktake_line: Found in a stocktake
          retention: How long things are kept
          taken_backup: Backup taken out
          import: List brought in
          shared_device: Shared device
          device_hand: Who acts on shared devices
          oversight: Leave to look in
          lending: Lending
          sending: What went out
          sent_piece: Piece that went out
          printed_label: Label
          office_sheet: Sheet for the bishop’s office
          letter_wish: Letters of
          telling: How people are told
          """);

  /** One kind's own words go before the colon as kind and column, those of all kinds alone. */
  private static final Map<String, String> FIELDS =
      pairs(
          """
          name: name
          code: code
          place: place
          note: note
          intention: intention
          minutes: length in minutes
          friday: letter of the week
          arrival: arrival
          vesting_place: where he vests
          parking: parking
          candidates: candidates
          company: concelebrants and deacons
          brought: vestments brought
          wanted: vestments found here
          sent_on: sent on
          changes: letters about changes
          letter_wish.language: language
          mass.language: language
          pattern.language: language
          letter_wish.sacristy: letters about changes in the sacristy
          weekday: weekday
          hour: hour
          office_days: sheet for the bishop’s office, days before
          names_public: celebrants named in public
          journey.minutes: minutes on the way
          starts: start
          ends: end
          pattern.starts: first date
          pattern.ends: last date
          school_term.starts: first date
          school_term.ends: last date
          closed_from: closed from
          merged_into_id: merged into
          merged_from: merged from
          merger.to_id: to
          merger.kind: what was done
          merger.pieces: pieces
          holds_from: holds from
          days: days of the calendar
          seasons: only in
          months: only in the months
          not_in_triduum: not in the Triduum
          not_on_holy_days: not on holy days
          school: by school terms
          except_dates: left out on
          absence.starts: away from
          absence.ends: back
          at: hour
          taken_backup.at: when
          bytes: size in bytes
          rrule: how often
          kind: kind
          mass.kind: which Mass
          pattern.kind: which Mass
          accepted_step.kind: kind of piece
          votive_of: of what, or for what
          leave: by whose leave
          celebration: celebration
          colour: colour
          colours: colours
          celebrant_id: celebrant
          celebrant_lost: celebrant to be found anew
          concelebrants: concelebrants
          deacons: deacons
          named_ids: concelebrants and deacons by name
          brings: who brings their own
          bishop: a bishop presides
          ministers: who else vests
          also: also worn
          set_out_minutes: set out, minutes before
          clearance_minutes: cleared, minutes after
          cancelled: cancelled
          taken_over_by: taken over by
          church_id: church
          home_id: church
          parish_id: parish
          from_id: from
          to_id: to
          person_id: person
          user_id: user
          piece_id: piece
          mass_id: Mass
          set_id: set
          suit_id: suit
          church.slug: short form
          proper.slug: short form
          title: title
          church.title: title of the church
          person.title: title, as in Fr
          titular: the title’s day
          titular_name: name of the title’s day
          titular_month: month of the title’s day
          titular_day: day of the title’s day
          titular_colour: colour of the title’s day
          dedication: date of dedication
          latitude: latitude
          longitude: longitude
          role: role
          visiting: comes from outside
          erased: removed for good
          minor: under 18
          whole_name: whole name
          responsible: who is responsible
          days: usual days
          most_a_day: Masses a day, at most
          wishes: wishes
          own_set: vestments of one’s own
          granted_by: permission given by
          granted_on: permission of
          arrives: arrives
          arrival.brings: brings vestments
          address: mail address
          centimetres: height
          worn: worn
          instead_of: instead of
          worn_at: Mass began
          shade: shade
          grade: for which days
          size: length of the back
          form: cut
          owner: owner
          owner_policy: is it lent
          condition: condition
          piece.place: place in the sacristy
          proper.place: whose day it is
          stays_home: does not leave this church
          description: description
          provenance: where it comes from
          acquired: acquired
          precious: precious
          keeper: kept by
          withdrawn_on: withdrawn from use on
          withdrawn_reason: withdrawn because
          withdrawn_to: where it went
          care_kind: what is wrong
          awaited: away until somebody says it is back
          promised: promised back
          occupation_id: of what was wrong
          held_on: inventory of
          elsewhere: made elsewhere
          finding: found
          settled: what was done about it
          state: state
          reason: why
          latin: name in Latin
          spanish: name in Spanish
          month: month
          day: day
          on_sunday: taken to the Sunday
          kept_on: kept on
          everywhere: in all churches
          password: password
          looks_only: only reads
          feed: for a calendar program
          made_at: made
          ends_at: good until
          riding: drives that way anyway
          leave_by: leave by
          arrive_by: there by
          ready: ready from
          on_asking: its owner is asked
          pieces: pieces
          asked_at: asked
          changed_at: answered
          answered_at: answered
          mail_failed: the mail did not go out
          about: where and when
          sentence: what was done
          applied_at: applied
          import.what: which list
          done_at: brought in
          undone_at: undone
          step: substitute
          accepted_at: accepted
          done: done
          first_date: first day
          last_date: last day
          requested_at: asked for
          calendar: calendar
          epiphany: Epiphany
          ascension: Ascension
          corpus_christi: Body and Blood of Christ
          time_zone: time zone
          languages: languages
          anticipated_from: Sunday’s Mass the evening before, from
          evening_rule: when two days meet in one evening
          open_evening: before a solemnity that does not oblige
          ladder_order: concelebrants first
          white_for_all: white may stand in for all
          turn_minutes: between two Masses, minutes
          weekday_set_out: set out on weekdays, minutes before
          large_set_out: set out for a large liturgy, minutes before
          large_clearance: cleared after a large liturgy, minutes
          count_by: Masses counted by
          permitted_weekday: Masses a priest may say on a weekday
          permitted_sunday: Masses a priest may say on a Sunday
          count_albs: albs are counted
          pontificals: a bishop’s own pieces are asked for
          history_days: history, days
          ended_at: shut out
          sessions_days: ended sessions, days
          tries_days: failed sign-ins, days
          askings_days: askings, days
          contacts_days: mail addresses, days
          absences_days: absences, days
          word: short word of the cluster
          oversight.home_id: cluster of the overseer
          overseer_id: overseer
          granted_at: given
          borrower_id: borrower
          answer: what the borrower said
          wish.answer: what was answered
          keeper_id: church that was asked
          told_at: told that it is free
          ending: how they came back
          offered_at: offered
          lending.ended_at: back
          ended_by: cluster that said they are back
          returned_at: taken in
          printed_at: printed
          item: what went out
          whom: to whom
          borrower: borrower
          went_at: went out
          due: due back
          carrier_id: carried by
          signer_id: signed for by
          sent_by: sent by
          what: what it is
          loan: lent
          condition_out: condition when it went
          back_at: back
          back_id: taken in at
          taker_id: taken in by
          taken_in_by: return noted by
          condition_back: condition when it came back
          """);

  /** Counters, order, and what another field says already. */
  private static final Set<String> SILENT =
      Set.of(
          "import.file_name",
          "import.visitor",
          "import.sent_at",
          "import.status",
          "import.trial",
          "import.lines",
          "import.starts",
          "import.cancelled",
          "import.failure",
          "import.reached",
          "import.undone_by",
          "pattern_id",
          "pattern_date",
          "usual_starts",
          "usual_church_id",
          "touched",
          "trip_id",
          "lending_id",
          "reservation_id",
          "made_by",
          "offered",
          "mailed_at",
          "noted_at",
          "position",
          "ordinal",
          "depth",
          "standing",
          "clash",
          "leaves",
          "applied_remedy.place",
          "set_up",
          "demo_monday",
          "demo",
          "proper_id",
          "kept_year",
          "status",
          "failure",
          "keeping",
          "kept_at",
          "wrong_codes",
          "width",
          "height",
          "added_at",
          "begun_at",
          "begun_by",
          "closed_at",
          "closed_by",
          "stocktake_id",
          "expected",
          "found_at",
          "plan.starts",
          "sending_id",
          "occupation_id",
          "broken_by",
          "displaced",
          "movement_id",
          "plan.cancelled");

  private static final Set<String> TERMS =
      Set.of(
          "kind",
          "leave",
          "celebration",
          "colour",
          "colours",
          "also",
          "titular",
          "titular_colour",
          "role",
          "grade",
          "owner_policy",
          "care_kind",
          "finding",
          "state",
          "step",
          "proper.place",
          "on_sunday",
          "epiphany",
          "ascension",
          "corpus_christi",
          "calendar",
          "evening_rule",
          "open_evening",
          "ladder_order",
          "count_by",
          "brings",
          "ministers");

  private FieldWords() {}

  /** For example "Mass"; what has no word yet is called as the database calls it. */
  static String thing(String kind) {
    return THINGS.getOrDefault(kind, kind.replace('_', ' '));
  }

  /** Whether there is a word for it, or it is left out by intention. */
  static boolean knows(String kind, String column) {
    return isSilent(kind, column) || !find(kind, column).isEmpty();
  }

  static boolean isSilent(String kind, String column) {
    return SILENT.contains(kind + "." + column)
        || SILENT.contains(column) && !FIELDS.containsKey(kind + "." + column);
  }

  /** For example "celebrant". */
  static String field(String kind, String column) {
    String word = find(kind, column);
    return word.isEmpty() ? column.replace('_', ' ') : word;
  }

  /** Whether its values are terms, written with hyphens, and no free text. */
  static boolean isTerm(String kind, String column) {
    return TERMS.contains(column) || TERMS.contains(kind + "." + column);
  }

  private static String find(String kind, String column) {
    return FIELDS.getOrDefault(kind + "." + column, FIELDS.getOrDefault(column, ""));
  }

  private static Map<String, String> pairs(String lines) {
    Map<String, String> read = new HashMap<>();
    for (List<String> pair : lines.lines().map(l -> Arrays.asList(l.split(": ", 2))).toList()) {
      read.put(pair.get(0), pair.get(1));
    }
    return Map.copyOf(read);
  }
}
