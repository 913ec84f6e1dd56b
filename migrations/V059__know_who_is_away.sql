-- When somebody is not available. Why is the administrator's and the pastor's to know, and nobody
-- must say it; so it stands in no history and goes with the person.
CREATE TABLE absence (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  person_id  uuid NOT NULL,
  starts     timestamptz NOT NULL,
  ends       timestamptz,
  reason     text NOT NULL CHECK (length(reason) <= 300),
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, person_id) REFERENCES person (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT absence_has_length CHECK (ends > starts),
  CONSTRAINT absence_said_once UNIQUE NULLS NOT DISTINCT (cluster_id, person_id, starts, ends)
);
COMMENT ON COLUMN absence.ends IS 'Not included; empty until somebody knows';
CREATE INDEX absence_by_time ON absence (cluster_id, starts);
SELECT fence_off('absence');
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON absence
  FOR EACH ROW EXECUTE FUNCTION announce_change();

-- Cluster by cluster, as the other times; the usual is a quarter of a year.
ALTER TABLE retention ADD COLUMN absences_days int NOT NULL DEFAULT 90;
ALTER TABLE retention
  ALTER COLUMN absences_days DROP DEFAULT,
  ADD CONSTRAINT retention_absences_days CHECK (absences_days BETWEEN 1 AND 3660);

-- When somebody was away is kept; why is not, only that another reason was given.
CREATE FUNCTION keep_absence_change() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    told    text[] := ARRAY['starts', 'ends'];
    old_row jsonb := CASE WHEN TG_OP = 'INSERT' THEN '{}' ELSE to_jsonb(OLD) END;
    new_row jsonb := CASE WHEN TG_OP = 'DELETE' THEN '{}' ELSE to_jsonb(NEW) END;
    whole   jsonb := CASE WHEN TG_OP = 'DELETE' THEN to_jsonb(OLD) ELSE to_jsonb(NEW) END;
    was     jsonb;
    became  jsonb;
BEGIN
    SELECT coalesce(jsonb_object_agg(key, value), '{}') INTO was
    FROM jsonb_each(old_row) WHERE key = ANY (told) AND new_row -> key IS DISTINCT FROM value;
    SELECT coalesce(jsonb_object_agg(key, value), '{}') INTO became
    FROM jsonb_each(new_row) WHERE key = ANY (told) AND old_row -> key IS DISTINCT FROM value;
    IF TG_OP = 'UPDATE' AND old_row ->> 'reason' <> new_row ->> 'reason' THEN
        became := became || '{"reason": "another"}';
    END IF;
    IF TG_OP = 'UPDATE' AND was = '{}' AND became = '{}' THEN
        RETURN NULL;
    END IF;
    INSERT INTO audit (cluster_id, id, at, visitor, kind, row_id, deed, before, after)
    VALUES (
        (whole ->> 'cluster_id')::uuid, gen_random_uuid(), clock_timestamp(),
        coalesce(current_setting('app.visitor', true), ''), TG_TABLE_NAME, (whole ->> 'person_id')::uuid,
        CASE TG_OP WHEN 'INSERT' THEN 'entered' WHEN 'UPDATE' THEN 'changed' ELSE 'removed' END,
        was, became);
    RETURN NULL;
END
$$;
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON absence
  FOR EACH ROW EXECUTE FUNCTION keep_absence_change();

-- Reasons speak of people by their surnames. Triggers run in the order of their names, and
-- carry_out_erasure forgets what it was told (PostgreSQL documentation, 37.1).
CREATE FUNCTION also_forget_in_absences() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    PERFORM take_out(NEW.cluster_id, ARRAY[]::text[], ARRAY['absence.reason'], NEW.surnames, 'c');
    RETURN NEW;
END
$$;
CREATE TRIGGER also_forget_in_absences BEFORE INSERT ON erasure
  FOR EACH ROW EXECUTE FUNCTION also_forget_in_absences();
