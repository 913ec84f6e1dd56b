-- Patterns as people say them: days of the calendar, an end, seasons, months, school terms, not in
-- the Triduum, single days left out.
ALTER TABLE pattern
  ADD COLUMN days            text NOT NULL DEFAULT '',
  ADD COLUMN ends            date,
  ADD COLUMN seasons         text[] NOT NULL DEFAULT '{}',
  ADD COLUMN months          int[] NOT NULL DEFAULT '{}',
  ADD COLUMN not_in_triduum  boolean NOT NULL DEFAULT false,
  ADD COLUMN not_on_holy_days boolean NOT NULL DEFAULT false,
  ADD COLUMN school          text NOT NULL DEFAULT 'always',
  ADD COLUMN except_dates    date[] NOT NULL DEFAULT '{}',
  ADD CONSTRAINT pattern_says_days CHECK ((days = '') <> (rrule = '')),
  ADD CONSTRAINT pattern_ends_after_its_start CHECK (ends >= starts),
  ADD CONSTRAINT pattern_school_known CHECK (school IN ('always', 'in-term', 'in-holidays'));
ALTER TABLE pattern
  ALTER COLUMN days DROP DEFAULT,
  ALTER COLUMN seasons DROP DEFAULT,
  ALTER COLUMN months DROP DEFAULT,
  ALTER COLUMN not_in_triduum DROP DEFAULT,
  ALTER COLUMN not_on_holy_days DROP DEFAULT,
  ALTER COLUMN school DROP DEFAULT,
  ALTER COLUMN except_dates DROP DEFAULT;
COMMENT ON COLUMN pattern.days IS 'Days taken from the calendar in place of a rule; empty where the rule says them';
COMMENT ON COLUMN pattern.ends IS 'Last date, included';

CREATE TABLE school_term (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  name       text NOT NULL CHECK (name <> ''),
  starts     date NOT NULL,
  ends       date NOT NULL,
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT school_term_once UNIQUE (cluster_id, name),
  CONSTRAINT school_term_ends_after_its_start CHECK (ends >= starts)
);
COMMENT ON COLUMN school_term.ends IS 'Last date, included';
SELECT fence_off('school_term');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON school_term
  FOR EACH ROW EXECUTE FUNCTION keep_change();
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON school_term
  FOR EACH ROW EXECUTE FUNCTION announce_change();
