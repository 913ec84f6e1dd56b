-- A cluster comes back from its backup with the rows that it had: no trigger writes beside them
-- what was written already, and the history comes back as well, which the server may otherwise
-- only read. Only into a cluster that the same transaction made, so that no other can be added to.
CREATE FUNCTION restore_rows(what text, lines text) RETURNS bigint
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    here    uuid := nullif(current_setting('app.cluster', true), '')::uuid;
    names   text;
    strange bigint;
    kept    bigint;
BEGIN
    IF what <> 'cluster' AND NOT EXISTS (
        SELECT 1 FROM cluster WHERE cluster_id = here AND xmin = pg_current_xact_id()::xid)
    THEN
        RAISE EXCEPTION 'only a cluster that is made in this transaction'
            USING ERRCODE = 'check_violation', CONSTRAINT = 'restored_whole';
    END IF;
    SELECT string_agg(quote_ident(a.attname), ', ') INTO names
    FROM pg_attribute a JOIN pg_class c ON c.oid = a.attrelid
    WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p') AND c.relname = what
      AND a.attnum > 0 AND NOT a.attisdropped AND a.attgenerated = ''
      AND EXISTS (
          SELECT 1 FROM pg_attribute k WHERE k.attrelid = c.oid AND k.attname = 'cluster_id');
    IF names IS NULL THEN
        RAISE EXCEPTION 'no such table' USING ERRCODE = 'check_violation', CONSTRAINT = 'restored_whole';
    END IF;
    EXECUTE format(
        'SELECT count(*) FROM json_populate_recordset(NULL::%I, $1::json) WHERE cluster_id IS DISTINCT FROM $2', what)
    INTO strange USING lines, here;
    IF strange > 0 THEN
        RAISE EXCEPTION 'rows of another cluster'
            USING ERRCODE = 'check_violation', CONSTRAINT = 'restored_whole';
    END IF;
    EXECUTE format('ALTER TABLE %I DISABLE TRIGGER USER', what);
    IF what = 'cluster' THEN
        DELETE FROM cluster WHERE cluster_id = here AND NOT set_up;
    END IF;
    EXECUTE format(
        'INSERT INTO %1$I (%2$s) SELECT %2$s FROM json_populate_recordset(NULL::%1$I, $1::json)', what, names)
    USING lines;
    GET DIAGNOSTICS kept = ROW_COUNT;
    EXECUTE format('ALTER TABLE %I ENABLE TRIGGER USER', what);
    RETURN kept;
END
$$;

-- Tells which migration is the newest, and nothing else of them.
CREATE FUNCTION schema_version() RETURNS text
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
    SELECT max(version::int)::text FROM flyway_schema_history WHERE version IS NOT NULL AND success
$$;

-- That a backup was taken out, which holds all that is known of people.
CREATE TABLE taken_backup (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  at         timestamptz NOT NULL,
  bytes      bigint NOT NULL CHECK (bytes > 0),
  PRIMARY KEY (cluster_id, id)
);
SELECT fence_off('taken_backup');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON taken_backup
  FOR EACH ROW EXECUTE FUNCTION keep_change();
