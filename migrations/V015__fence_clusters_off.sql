-- The second fence between clusters: whatever the program asks, the database shows the role that it
-- works as no row but those of the cluster that the connection is set to, and none without one. The
-- owner of the tables, who migrates them, is not held by it.
CREATE FUNCTION fence_off(fenced regclass) RETURNS void LANGUAGE plpgsql AS $$
BEGIN
    EXECUTE format('ALTER TABLE %s ENABLE ROW LEVEL SECURITY', fenced);
    -- Once set and taken back, the setting is empty and not null.
    EXECUTE format(
        'CREATE POLICY own_cluster ON %s '
        || 'USING (cluster_id = nullif(current_setting(''app.cluster'', true), '''')::uuid)', fenced);
END
$$;
COMMENT ON FUNCTION fence_off IS 'For every new table with a cluster_id, in the migration that makes it';

SELECT fence_off(c.oid)
FROM pg_class c
JOIN pg_namespace n ON n.oid = c.relnamespace
WHERE n.nspname = 'public' AND c.relkind IN ('r', 'p')
  AND EXISTS (SELECT 1 FROM pg_attribute a WHERE a.attrelid = c.oid AND a.attname = 'cluster_id');

-- Asked before any cluster is known; it tells an id and nothing else.
CREATE FUNCTION first_cluster() RETURNS uuid
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
    SELECT cluster_id FROM cluster ORDER BY created_at, cluster_id LIMIT 1
$$;
