-- The history of a person or a church is more than that of its own row: a change also says what it
-- is about, by ids alone, so that all of it is found at once. What keep_change writes stays as it is.
ALTER TABLE audit ADD COLUMN about uuid[], ADD COLUMN device text;
COMMENT ON COLUMN audit.about IS 'Ids of what the change concerns: the row, its church, the people in it';
COMMENT ON COLUMN audit.device IS 'Id of the shared device on which it was made; empty for any other';

CREATE FUNCTION ids_in(kept jsonb) RETURNS uuid[] LANGUAGE sql IMMUTABLE SET search_path = pg_catalog AS $$
    SELECT coalesce(array_agg(DISTINCT found::uuid), '{}')
    FROM jsonb_each(kept) AS field (key, value),
        jsonb_array_elements_text(
            CASE jsonb_typeof(value) WHEN 'array' THEN value ELSE jsonb_build_array(value) END) AS found
    WHERE key ~ '_ids?$' AND found ~ '^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$'
$$;

-- What a row of that kind concerns as it stands now, beside what was changed in it.
CREATE FUNCTION concerns(cluster uuid, kind text, changed uuid) RETURNS uuid[]
LANGUAGE sql STABLE SET search_path = public, pg_temp AS $$
    SELECT coalesce(array_agg(DISTINCT one), '{}') FROM (
        SELECT unnest(ids_in(jsonb_build_object(
            'church_id', church_id, 'celebrant_id', celebrant_id, 'named_ids', named_ids)))
        FROM mass WHERE $2 IN ('mass', 'accepted_step') AND cluster_id = $1 AND id = $3
        UNION ALL
        SELECT unnest(ids_in(jsonb_build_object('church_id', church_id, 'celebrant_id', celebrant_id)))
        FROM pattern WHERE $2 = 'pattern' AND cluster_id = $1 AND id = $3
        UNION ALL
        SELECT unnest(ARRAY[from_id, to_id])
        FROM journey WHERE $2 = 'journey' AND cluster_id = $1 AND id = $3
        UNION ALL
        SELECT home_id
        FROM piece WHERE $2 IN ('piece', 'occupation', 'consent', 'movement') AND cluster_id = $1 AND id = $3
        UNION ALL
        SELECT unnest(ids_in(jsonb_build_object('from_id', from_id, 'to_id', to_id, 'person_id', person_id)))
        FROM asking WHERE $2 = 'asking' AND cluster_id = $1 AND id = $3
    ) AS found (one)
$$;

UPDATE audit SET device = '', about = array(
    SELECT DISTINCT unnest(ids_in(before) || ids_in(after) || concerns(cluster_id, kind, row_id) || row_id));
ALTER TABLE audit ALTER COLUMN about SET NOT NULL, ALTER COLUMN device SET NOT NULL;
CREATE INDEX audit_by_concern ON audit USING gin (about);
CREATE INDEX audit_by_visitor ON audit (cluster_id, visitor, at);

CREATE FUNCTION say_concern() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    NEW.about := array(
        SELECT DISTINCT unnest(
            ids_in(NEW.before) || ids_in(NEW.after) || concerns(NEW.cluster_id, NEW.kind, NEW.row_id) || NEW.row_id));
    NEW.device := coalesce(current_setting('app.device', true), '');
    RETURN NEW;
END
$$;
CREATE TRIGGER say_concern BEFORE INSERT ON audit FOR EACH ROW EXECUTE FUNCTION say_concern();
