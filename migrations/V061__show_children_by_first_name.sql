-- Of somebody under 18 everybody reads the first name and an initial, which is all that the row of
-- the person holds. The rest of the name stands apart, with who is responsible, and is read by those
-- who are. How a child is reached is kept nowhere.
ALTER TABLE person ADD COLUMN minor boolean NOT NULL DEFAULT false;
ALTER TABLE person ALTER COLUMN minor DROP DEFAULT;
COMMENT ON COLUMN person.minor IS 'Under 18';

CREATE TABLE child (
  cluster_id  uuid NOT NULL,
  id          uuid NOT NULL,
  whole_name  text NOT NULL CHECK (length(whole_name) BETWEEN 1 AND 200),
  responsible text NOT NULL CHECK (length(responsible) BETWEEN 1 AND 300),
  version     int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, id) REFERENCES person (cluster_id, id) ON DELETE CASCADE
);
COMMENT ON COLUMN child.id IS 'That of the person';
COMMENT ON COLUMN child.responsible IS 'Names of parents or guardians, and nothing by which they are reached';
SELECT fence_off('child');
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON child
  FOR EACH ROW EXECUTE FUNCTION announce_change();

-- That it was changed is kept, and what it was is not.
CREATE FUNCTION keep_child_change() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    whole jsonb := CASE WHEN TG_OP = 'DELETE' THEN to_jsonb(OLD) ELSE to_jsonb(NEW) END;
BEGIN
    INSERT INTO audit (cluster_id, id, at, visitor, kind, row_id, deed, before, after)
    VALUES (
        (whole ->> 'cluster_id')::uuid, gen_random_uuid(), clock_timestamp(),
        coalesce(current_setting('app.visitor', true), ''), TG_TABLE_NAME, (whole ->> 'id')::uuid,
        CASE TG_OP WHEN 'INSERT' THEN 'entered' WHEN 'UPDATE' THEN 'changed' ELSE 'removed' END,
        '{}', CASE TG_OP WHEN 'UPDATE' THEN '{"whole_name": "another"}'::jsonb ELSE '{}' END);
    RETURN NULL;
END
$$;
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON child
  FOR EACH ROW EXECUTE FUNCTION keep_child_change();

-- Whatever a program does: no address of a child.
CREATE FUNCTION refuse_contact_of_a_child() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    IF EXISTS (SELECT 1 FROM child WHERE cluster_id = NEW.cluster_id AND id = NEW.id) THEN
        RAISE EXCEPTION 'no contact data of a child'
            USING ERRCODE = 'check_violation', CONSTRAINT = 'no_contact_of_a_child', TABLE = TG_TABLE_NAME;
    END IF;
    RETURN NEW;
END
$$;
CREATE TRIGGER refuse_contact_of_a_child BEFORE INSERT OR UPDATE ON person_mail
  FOR EACH ROW EXECUTE FUNCTION refuse_contact_of_a_child();
