-- Who changed what, from what to what: written by the database in the same transaction, so that no
-- program can forget it, and readable alone to the role that the server works as (afterMigrate), so
-- that none can edit it. People are kept as ids; their names are left out, so that they can be
-- forgotten while the record stands.
CREATE TABLE audit (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  at         timestamptz NOT NULL,
  visitor    text NOT NULL,
  kind       text NOT NULL,
  row_id     uuid NOT NULL,
  deed       text NOT NULL CHECK (deed IN ('entered', 'changed', 'removed')),
  before     jsonb NOT NULL,
  after      jsonb NOT NULL,
  PRIMARY KEY (cluster_id, id)
);
COMMENT ON COLUMN audit.visitor IS 'Id of the user, server for the token in its environment, empty for its own jobs';
COMMENT ON COLUMN audit.before IS 'By column, those alone that were changed';
CREATE INDEX audit_by_row ON audit (cluster_id, row_id, at);
CREATE INDEX audit_by_time ON audit (cluster_id, at);
SELECT fence_off('audit');

CREATE FUNCTION keep_change() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    -- Counters, what follows from other columns, secrets, and names of people as they were typed.
    left_out text[] := ARRAY['cluster_id', 'id', 'version', 'during', 'unfolded_until', 'fingerprint',
        'used_at', 'progress', 'result', 'replaced', 'created_at', 'deed', 'person', 'carrier', 'rider',
        'accepted_by', 'asked_by', 'changed_by', 'answered_by'];
    old_row jsonb := CASE WHEN TG_OP = 'INSERT' THEN '{}' ELSE to_jsonb(OLD) END;
    new_row jsonb := CASE WHEN TG_OP = 'DELETE' THEN '{}' ELSE to_jsonb(NEW) END;
    whole   jsonb := CASE WHEN TG_OP = 'DELETE' THEN to_jsonb(OLD) ELSE to_jsonb(NEW) END;
    was     jsonb;
    became  jsonb;
BEGIN
    IF TG_TABLE_NAME IN ('app_user', 'person') THEN
        left_out := left_out || ARRAY['name', 'short_name', 'slug', 'login'];
    END IF;
    IF TG_TABLE_NAME = 'app_user' THEN
        old_row := old_row - 'password';
        IF TG_OP = 'UPDATE' AND OLD.password <> NEW.password THEN
            new_row := new_row || '{"password": "another"}';
        ELSE
            new_row := new_row - 'password';
        END IF;
    END IF;
    IF TG_TABLE_NAME = 'person_mail' THEN
        IF TG_OP = 'UPDATE' AND OLD.address <> NEW.address THEN
            new_row := new_row || '{"address": "another"}';
        ELSE
            new_row := new_row - 'address';
        END IF;
        old_row := old_row - 'address';
    END IF;
    -- A remedy ends with who takes the substitute, in brackets.
    IF TG_TABLE_NAME = 'applied_remedy' THEN
        IF old_row ? 'sentence' THEN
            old_row := old_row || jsonb_build_object('sentence', regexp_replace(OLD.sentence, ' \(.*\)\.$', '.'));
        END IF;
        IF new_row ? 'sentence' THEN
            new_row := new_row || jsonb_build_object('sentence', regexp_replace(NEW.sentence, ' \(.*\)\.$', '.'));
        END IF;
    END IF;
    old_row := old_row - left_out;
    new_row := new_row - left_out;
    SELECT coalesce(jsonb_object_agg(key, value), '{}') INTO was
    FROM jsonb_each(old_row) WHERE new_row -> key IS DISTINCT FROM value;
    SELECT coalesce(jsonb_object_agg(key, value), '{}') INTO became
    FROM jsonb_each(new_row) WHERE old_row -> key IS DISTINCT FROM value;
    IF TG_OP = 'UPDATE' AND was = '{}' AND became = '{}' THEN
        RETURN NULL;
    END IF;
    INSERT INTO audit (cluster_id, id, at, visitor, kind, row_id, deed, before, after)
    VALUES (
        (whole ->> 'cluster_id')::uuid, gen_random_uuid(), clock_timestamp(),
        coalesce(current_setting('app.visitor', true), ''), TG_TABLE_NAME,
        coalesce(
            whole ->> 'piece_id', whole ->> 'user_id',
            CASE WHEN TG_TABLE_NAME = 'accepted_step' THEN whole ->> 'mass_id' END,
            whole ->> 'id', whole ->> 'cluster_id')::uuid,
        CASE TG_OP WHEN 'INSERT' THEN 'entered' WHEN 'UPDATE' THEN 'changed' ELSE 'removed' END,
        was, became);
    RETURN NULL;
END
$$;

DO $$
DECLARE
    kept text;
BEGIN
    FOREACH kept IN ARRAY ARRAY[
        'cluster', 'parish', 'church', 'journey', 'person', 'pattern', 'suit', 'vestment_set', 'piece',
        'proper', 'proper_church', 'app_user', 'user_church', 'user_token', 'person_mail', 'asking', 'consent',
        'applied_remedy', 'accepted_step']
    LOOP
        EXECUTE format(
            'CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON %I '
            || 'FOR EACH ROW EXECUTE FUNCTION keep_change()', kept);
    END LOOP;
END
$$;

-- Masses that patterns yield are kept from the moment that somebody touches them.
CREATE TRIGGER keep_change AFTER UPDATE ON mass FOR EACH ROW EXECUTE FUNCTION keep_change();
CREATE TRIGGER keep_entry AFTER INSERT ON mass FOR EACH ROW WHEN (NEW.touched) EXECUTE FUNCTION keep_change();
CREATE TRIGGER keep_removal AFTER DELETE ON mass FOR EACH ROW WHEN (OLD.touched) EXECUTE FUNCTION keep_change();

-- What is planned changes with every plan; what somebody holds, takes out or puts in care is kept.
CREATE TRIGGER keep_change AFTER UPDATE ON occupation FOR EACH ROW WHEN (NEW.state <> 'planned') EXECUTE FUNCTION keep_change();
CREATE TRIGGER keep_entry AFTER INSERT ON occupation FOR EACH ROW WHEN (NEW.state <> 'planned') EXECUTE FUNCTION keep_change();
CREATE TRIGGER keep_removal AFTER DELETE ON occupation FOR EACH ROW WHEN (OLD.state <> 'planned') EXECUTE FUNCTION keep_change();
CREATE TRIGGER keep_change AFTER UPDATE ON plan FOR EACH ROW
    WHEN (OLD.applied_at IS DISTINCT FROM NEW.applied_at) EXECUTE FUNCTION keep_change();

-- Journeys are planned; that one was made is said by somebody.
CREATE TRIGGER keep_change AFTER UPDATE ON movement FOR EACH ROW WHEN (NEW.done) EXECUTE FUNCTION keep_change();
CREATE TRIGGER keep_entry AFTER INSERT ON movement FOR EACH ROW WHEN (NEW.done) EXECUTE FUNCTION keep_change();
