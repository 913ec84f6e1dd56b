-- Who serves at a Mass, by name: lay ministers, who are otherwise known by their number alone. Each
-- has one role at one Mass, since everybody does solely what is theirs to do (GIRM 91).
CREATE TABLE serving (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  mass_id    uuid NOT NULL,
  person_id  uuid NOT NULL,
  role       text NOT NULL
    CHECK (role IN ('server', 'acolyte', 'reader', 'communion-minister', 'sacristan')),
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, mass_id) REFERENCES mass (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, person_id) REFERENCES person (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT serving_once UNIQUE (cluster_id, mass_id, person_id)
);
COMMENT ON COLUMN serving.role IS 'communion-minister: extraordinary minister of Holy Communion';
CREATE INDEX serving_by_person ON serving (cluster_id, person_id);
SELECT fence_off('serving');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON serving
  FOR EACH ROW EXECUTE FUNCTION keep_change();
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON serving
  FOR EACH ROW EXECUTE FUNCTION announce_change();
CREATE TRIGGER keep_for_undo AFTER INSERT OR UPDATE OR DELETE ON serving FOR EACH ROW
  WHEN (current_setting('app.import', true) <> '') EXECUTE FUNCTION keep_for_undo();

-- Calendars of those who serve say as what, and so notice that it has changed. A Mass that goes
-- takes its stamp along.
CREATE FUNCTION stamp_serving() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    cluster uuid := coalesce(NEW.cluster_id, OLD.cluster_id);
    changed uuid := coalesce(NEW.mass_id, OLD.mass_id);
BEGIN
    INSERT INTO mass_stamp (cluster_id, id, sequence, changed_at)
    SELECT m.cluster_id, m.id, 1, now() FROM mass m WHERE m.cluster_id = cluster AND m.id = changed
    ON CONFLICT (cluster_id, id)
    DO UPDATE SET sequence = mass_stamp.sequence + 1, changed_at = excluded.changed_at;
    RETURN NULL;
END
$$;
CREATE TRIGGER stamp_serving AFTER INSERT OR UPDATE OR DELETE ON serving
  FOR EACH ROW EXECUTE FUNCTION stamp_serving();

-- Whoever is named or taken off hears of it as of any change of theirs (V068): with what a Mass was
-- goes who served at it.
CREATE FUNCTION serving_at(cluster uuid, mass uuid) RETURNS jsonb
LANGUAGE sql STABLE SET search_path = public, pg_temp AS $$
    SELECT coalesce(jsonb_agg(person_id ORDER BY person_id), '[]') FROM serving
    WHERE cluster_id = cluster AND mass_id = mass
$$;

CREATE OR REPLACE FUNCTION note_change_of_mass() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    IF coalesce(NEW.starts, OLD.starts) > now() - interval '1 year' THEN
        INSERT INTO mass_change (cluster_id, id, mass_id, at, before)
        VALUES (
            coalesce(NEW.cluster_id, OLD.cluster_id), gen_random_uuid(), coalesce(NEW.id, OLD.id), now(),
            CASE WHEN TG_OP = 'INSERT' THEN '{}' ELSE jsonb_build_object(
                'church', OLD.church_id, 'starts', to_char(OLD.starts AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"'),
                'celebrant', OLD.celebrant_id, 'named', to_jsonb(OLD.named_ids), 'colour', OLD.colour,
                'cancelled', OLD.cancelled, 'serving', serving_at(OLD.cluster_id, OLD.id)) END);
    END IF;
    RETURN NULL;
END
$$;

-- Several are named in one moment, and the first change of it tells what was: hence the clock and not
-- the moment of the transaction.
CREATE FUNCTION note_change_of_serving() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    of uuid := coalesce(NEW.mass_id, OLD.mass_id);
    served jsonb := serving_at(coalesce(NEW.cluster_id, OLD.cluster_id), of);
BEGIN
    served := CASE TG_OP WHEN 'INSERT' THEN served - NEW.person_id::text
                         ELSE served || to_jsonb(OLD.person_id) END;
    INSERT INTO mass_change (cluster_id, id, mass_id, at, before)
    SELECT m.cluster_id, gen_random_uuid(), m.id, clock_timestamp(), jsonb_build_object(
        'church', m.church_id, 'starts', to_char(m.starts AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"'),
        'celebrant', m.celebrant_id, 'named', to_jsonb(m.named_ids), 'colour', m.colour,
        'cancelled', m.cancelled, 'serving', served)
    FROM mass m
    WHERE m.cluster_id = coalesce(NEW.cluster_id, OLD.cluster_id) AND m.id = of
        AND m.starts > now() - interval '1 year';
    RETURN NULL;
END
$$;
CREATE TRIGGER note_change AFTER INSERT OR DELETE ON serving
  FOR EACH ROW EXECUTE FUNCTION note_change_of_serving();

-- Whoever is removed for good serves nowhere any more. It runs before carry_out_erasure, which takes
-- the names out of the history as well; triggers run in the order of their names (PostgreSQL
-- documentation, 37.1).
CREATE FUNCTION also_forget_serving() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    DELETE FROM serving WHERE cluster_id = NEW.cluster_id AND person_id = NEW.subject;
    RETURN NEW;
END
$$;
CREATE TRIGGER also_forget_serving BEFORE INSERT ON erasure
  FOR EACH ROW EXECUTE FUNCTION also_forget_serving();
