-- A list may enter 10,000 Masses, and for each row the history is written: three quarters of the
-- time that the database took went into saying what a change is about. What is written stays the
-- same; the functions of V016, V032 and V074 no longer ask what the row in hand says already.
CREATE OR REPLACE FUNCTION ids_in(kept jsonb) RETURNS uuid[] LANGUAGE sql IMMUTABLE SET search_path = pg_catalog AS $$
    SELECT coalesce(array_agg(DISTINCT found::uuid), '{}')
    FROM jsonb_each(kept) AS field (key, value),
        jsonb_array_elements_text(
            CASE jsonb_typeof(value) WHEN 'array' THEN value ELSE jsonb_build_array(value) END) AS found
    WHERE (right(key, 3) = '_id' OR right(key, 4) = '_ids')
      AND found ~ '^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$'
$$;

-- One query for the kind in hand, where each row asked all five tables.
CREATE OR REPLACE FUNCTION concerns(cluster uuid, kind text, changed uuid) RETURNS uuid[]
LANGUAGE plpgsql STABLE SET search_path = public, pg_temp AS $$
DECLARE
    found uuid[];
BEGIN
    CASE
        WHEN $2 IN ('mass', 'accepted_step') THEN
            SELECT ARRAY[m.church_id, m.celebrant_id] || m.named_ids INTO found
            FROM mass m WHERE m.cluster_id = $1 AND m.id = $3;
        WHEN $2 = 'pattern' THEN
            SELECT ARRAY[p.church_id, p.celebrant_id] INTO found
            FROM pattern p WHERE p.cluster_id = $1 AND p.id = $3;
        WHEN $2 = 'journey' THEN
            SELECT ARRAY[j.from_id, j.to_id] INTO found
            FROM journey j WHERE j.cluster_id = $1 AND j.id = $3;
        WHEN $2 IN ('piece', 'occupation', 'consent', 'movement') THEN
            SELECT ARRAY[p.home_id] INTO found
            FROM piece p WHERE p.cluster_id = $1 AND p.id = $3;
        WHEN $2 = 'asking' THEN
            SELECT ARRAY[a.from_id, a.to_id, a.person_id] INTO found
            FROM asking a WHERE a.cluster_id = $1 AND a.id = $3;
        ELSE
            NULL;
    END CASE;
    RETURN coalesce(array_remove(found, NULL), '{}');
END
$$;

-- A row that was entered just now says in its columns what it concerns.
CREATE OR REPLACE FUNCTION say_concern() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    found uuid[] := ARRAY[NEW.row_id];
BEGIN
    IF NEW.before <> '{}' THEN
        found := found || ids_in(NEW.before);
    END IF;
    IF NEW.after <> '{}' THEN
        found := found || ids_in(NEW.after);
    END IF;
    IF NEW.deed <> 'entered' OR NEW.kind NOT IN ('mass', 'pattern', 'journey', 'piece', 'asking') THEN
        found := found || concerns(NEW.cluster_id, NEW.kind, NEW.row_id);
    END IF;
    NEW.about := array(SELECT DISTINCT unnest(found));
    NEW.device := coalesce(current_setting('app.device', true), '');
    RETURN NEW;
END
$$;

-- As in V016, but a row that was entered or removed has nothing to be compared with.
CREATE OR REPLACE FUNCTION keep_change() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    -- Counters, what follows from other columns, secrets, and names of people as they were typed.
    left_out text[] := ARRAY['cluster_id', 'id', 'version', 'during', 'unfolded_until', 'fingerprint',
        'used_at', 'progress', 'result', 'replaced', 'created_at', 'deed', 'person', 'carrier', 'rider',
        'accepted_by', 'asked_by', 'changed_by', 'answered_by'];
    old_row jsonb := CASE WHEN TG_OP = 'INSERT' THEN '{}' ELSE to_jsonb(OLD) END;
    new_row jsonb := CASE WHEN TG_OP = 'DELETE' THEN '{}' ELSE to_jsonb(NEW) END;
    whole   jsonb := CASE WHEN TG_OP = 'DELETE' THEN old_row ELSE new_row END;
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
    was := old_row - left_out;
    became := new_row - left_out;
    IF TG_OP = 'UPDATE' THEN
        old_row := was;
        new_row := became;
        SELECT coalesce(jsonb_object_agg(key, value), '{}') INTO was
        FROM jsonb_each(old_row) WHERE new_row -> key IS DISTINCT FROM value;
        SELECT coalesce(jsonb_object_agg(key, value), '{}') INTO became
        FROM jsonb_each(new_row) WHERE old_row -> key IS DISTINCT FROM value;
        IF was = '{}' AND became = '{}' THEN
            RETURN NULL;
        END IF;
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

-- As in V074, but the patterns of the list are looked for once, not once for each Mass that came
-- about beside it.
CREATE OR REPLACE FUNCTION settle_import(of_import uuid) RETURNS bigint LANGUAGE plpgsql AS $$
DECLARE
    here uuid := nullif(current_setting('app.cluster', true), '')::uuid;
    listed uuid[] := array(
        SELECT DISTINCT p.row_id FROM import_change p
        WHERE p.cluster_id = here AND p.import_id = of_import AND p.kind = 'pattern');
    left_over bigint;
BEGIN
    DELETE FROM import_change c
    WHERE c.cluster_id = here AND c.import_id = of_import AND c.kind = 'mass' AND c.before IS NULL
      AND NOT (c.after ->> 'touched')::boolean AND (c.after ->> 'pattern_id')::uuid <> ALL (listed);
    DELETE FROM import_change c
    WHERE c.cluster_id = here AND c.import_id = of_import AND c.kind = 'cluster'
      AND c.before - 'unfolded_until' - 'version' = c.after - 'unfolded_until' - 'version';
    SELECT count(*) INTO left_over FROM import_change c
    WHERE c.cluster_id = here AND c.import_id = of_import;
    RETURN left_over;
END
$$;
