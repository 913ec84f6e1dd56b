-- How often and when a Mass was changed, for calendars that are to notice it (RFC 5545, 3.8.7.4), and
-- what it was before, until those whom it concerns are told. Written by the database with the change,
-- so that no program can forget it. People are in it by id alone.
CREATE TABLE mass_stamp (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  sequence   int NOT NULL CHECK (sequence >= 1),
  changed_at timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, id) REFERENCES mass (cluster_id, id) ON DELETE CASCADE
);
COMMENT ON COLUMN mass_stamp.id IS 'That of the Mass';
SELECT fence_off('mass_stamp');

-- It outlives what it is about, and so points at nothing.
CREATE TABLE mass_change (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  mass_id    uuid NOT NULL,
  at         timestamptz NOT NULL,
  before     jsonb NOT NULL,
  PRIMARY KEY (cluster_id, id)
);
COMMENT ON COLUMN mass_change.before IS 'The Mass as it was; empty for one that was entered';
CREATE INDEX mass_change_by_time ON mass_change (cluster_id, at);
SELECT fence_off('mass_change');

CREATE FUNCTION stamp_mass() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    INSERT INTO mass_stamp (cluster_id, id, sequence, changed_at)
    VALUES (NEW.cluster_id, NEW.id, 1, now())
    ON CONFLICT (cluster_id, id)
    DO UPDATE SET sequence = mass_stamp.sequence + 1, changed_at = excluded.changed_at;
    RETURN NULL;
END
$$;

CREATE FUNCTION note_change_of_mass() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    IF coalesce(NEW.starts, OLD.starts) > now() - interval '1 year' THEN
        INSERT INTO mass_change (cluster_id, id, mass_id, at, before)
        VALUES (
            coalesce(NEW.cluster_id, OLD.cluster_id), gen_random_uuid(), coalesce(NEW.id, OLD.id), now(),
            CASE WHEN TG_OP = 'INSERT' THEN '{}' ELSE jsonb_build_object(
                'church', OLD.church_id, 'starts', to_char(OLD.starts AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"'),
                'celebrant', OLD.celebrant_id, 'named', to_jsonb(OLD.named_ids), 'colour', OLD.colour,
                'cancelled', OLD.cancelled) END);
    END IF;
    RETURN NULL;
END
$$;

CREATE TRIGGER stamp_mass AFTER UPDATE ON mass FOR EACH ROW
  WHEN ((OLD.church_id, OLD.starts, OLD.minutes, OLD.kind, OLD.votive_of, OLD.celebration, OLD.colour,
         OLD.celebrant_id, OLD.named_ids, OLD.cancelled)
        IS DISTINCT FROM
        (NEW.church_id, NEW.starts, NEW.minutes, NEW.kind, NEW.votive_of, NEW.celebration, NEW.colour,
         NEW.celebrant_id, NEW.named_ids, NEW.cancelled))
  EXECUTE FUNCTION stamp_mass();
CREATE TRIGGER note_change AFTER UPDATE ON mass FOR EACH ROW
  WHEN ((OLD.church_id, OLD.starts, OLD.colour, OLD.celebrant_id, OLD.named_ids, OLD.cancelled)
        IS DISTINCT FROM
        (NEW.church_id, NEW.starts, NEW.colour, NEW.celebrant_id, NEW.named_ids, NEW.cancelled))
  EXECUTE FUNCTION note_change_of_mass();
-- What patterns yield is no news; what somebody enters for one day is.
CREATE TRIGGER note_entry AFTER INSERT ON mass FOR EACH ROW
  WHEN (NEW.pattern_id IS NULL AND (NEW.celebrant_id IS NOT NULL OR NEW.named_ids <> '{}'))
  EXECUTE FUNCTION note_change_of_mass();
CREATE TRIGGER note_removal AFTER DELETE ON mass FOR EACH ROW
  WHEN (NOT OLD.cancelled AND OLD.celebrant_id IS NOT NULL)
  EXECUTE FUNCTION note_change_of_mass();
