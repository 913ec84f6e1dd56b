-- Several clusters on one server: each has a short word by which its people say where they sign in,
-- and may let an overseer of the diocese look in.
ALTER TABLE cluster ADD COLUMN word text;
UPDATE cluster SET word = CASE WHEN cluster_id = first_cluster()
    THEN coalesce(nullif(trim(BOTH '-' FROM left(regexp_replace(lower(name), '[^a-z0-9]+', '-', 'g'), 40)), ''), 'cluster')
    ELSE 'c-' || left(cluster_id::text, 8) END;
ALTER TABLE cluster ALTER COLUMN word SET NOT NULL;
ALTER TABLE cluster ADD CONSTRAINT cluster_word_form
  CHECK (length(word) <= 40 AND word ~ '^[a-z0-9]+(-[a-z0-9]+)*$'
    AND word !~ '^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$');
-- No two clusters have one word; said so that the cluster is part of this key as of every other.
ALTER TABLE cluster ADD CONSTRAINT cluster_word_once
  EXCLUDE USING gist (cluster_id WITH <>, word WITH =);

-- Asked before any cluster is known; they tell ids and nothing else. What a cluster or somebody in it
-- is called is told to whoever knows the ids.
CREATE FUNCTION find_cluster(named text) RETURNS uuid
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
    SELECT cluster_id FROM cluster WHERE word = lower(named) OR cluster_id::text = lower(named)
$$;
CREATE FUNCTION cluster_called(one uuid, OUT name text, OUT word text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
    SELECT c.name, c.word FROM cluster c WHERE c.cluster_id = one
$$;
CREATE FUNCTION user_called(its_cluster uuid, one uuid) RETURNS text
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
    SELECT u.name FROM app_user u WHERE u.cluster_id = its_cluster AND u.id = one
$$;
CREATE FUNCTION demo_clusters() RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
    SELECT cluster_id FROM cluster WHERE demo_monday IS NOT NULL ORDER BY created_at, cluster_id
$$;
CREATE FUNCTION has_several_clusters() RETURNS boolean
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
    SELECT count(*) > 1 FROM cluster
$$;

ALTER TABLE app_user DROP CONSTRAINT app_user_role_check;
ALTER TABLE app_user ADD CONSTRAINT app_user_role_check
  CHECK (role IN ('administrator', 'sacristan', 'pastor', 'minister', 'reader', 'overseer'));

-- Whom a cluster lets look in. The row is the overseen cluster's; the overseer's own cluster sees
-- it too, to tell him where he may look.
CREATE TABLE oversight (
  cluster_id  uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id          uuid NOT NULL,
  home_id     uuid NOT NULL,
  overseer_id uuid NOT NULL,
  granted_at  timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT oversight_once UNIQUE (cluster_id, overseer_id),
  CONSTRAINT oversight_from_elsewhere CHECK (home_id <> cluster_id)
);
COMMENT ON COLUMN oversight.home_id IS 'The cluster in which the overseer signs in';
COMMENT ON COLUMN oversight.overseer_id IS 'Id of the user there';
CREATE INDEX oversight_by_home ON oversight (home_id, overseer_id);

ALTER TABLE oversight ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_cluster ON oversight
  USING (nullif(current_setting('app.cluster', true), '')::uuid IN (cluster_id, home_id));
CREATE POLICY granted_by_the_overseen ON oversight AS RESTRICTIVE FOR INSERT
  WITH CHECK (cluster_id = nullif(current_setting('app.cluster', true), '')::uuid);
CREATE POLICY changed_by_the_overseen ON oversight AS RESTRICTIVE FOR UPDATE
  USING (cluster_id = nullif(current_setting('app.cluster', true), '')::uuid);
CREATE POLICY taken_back_by_the_overseen ON oversight AS RESTRICTIVE FOR DELETE
  USING (cluster_id = nullif(current_setting('app.cluster', true), '')::uuid);

CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON oversight
  FOR EACH ROW EXECUTE FUNCTION keep_change();
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON oversight
  FOR EACH ROW EXECUTE FUNCTION announce_change();
