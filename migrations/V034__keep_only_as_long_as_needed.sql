-- How long what is said of people is kept, by each cluster; a cluster that has chosen nothing keeps
-- the usual. The history is deleted by the database, since no program may.
CREATE TABLE retention (
  cluster_id     uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id             uuid NOT NULL,
  history_days   int NOT NULL CHECK (history_days BETWEEN 30 AND 3660),
  sessions_days  int NOT NULL CHECK (sessions_days BETWEEN 1 AND 366),
  tries_days     int NOT NULL CHECK (tries_days BETWEEN 1 AND 90),
  askings_days   int NOT NULL CHECK (askings_days BETWEEN 30 AND 3660),
  contacts_days  int NOT NULL CHECK (contacts_days BETWEEN 30 AND 3660),
  version        int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT retention_once UNIQUE (cluster_id)
);
SELECT fence_off('retention');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON retention FOR EACH ROW EXECUTE FUNCTION keep_change();

-- One row a day and cluster: that it was tidied. Entered first, so that copies of the server that
-- run at the same time do it once.
CREATE TABLE tidying (
  cluster_id   uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id           uuid NOT NULL,
  day          date NOT NULL,
  at           timestamptz NOT NULL,
  history_from timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT tidying_once UNIQUE (cluster_id, day)
);
COMMENT ON COLUMN tidying.history_from IS 'Changes before it are gone';
SELECT fence_off('tidying');

CREATE FUNCTION forget_history() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    -- Whatever the program says, a month stays.
    DELETE FROM audit
    WHERE cluster_id = NEW.cluster_id AND at < least(NEW.history_from, now() - interval '30 days');
    RETURN NULL;
END
$$;
CREATE TRIGGER forget_history AFTER INSERT ON tidying FOR EACH ROW EXECUTE FUNCTION forget_history();

-- Asked by jobs, before any cluster is known; it tells ids and nothing else.
CREATE FUNCTION every_cluster() RETURNS SETOF uuid
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
    SELECT cluster_id FROM cluster ORDER BY created_at, cluster_id
$$;

ALTER TABLE person_mail ADD COLUMN kept_at timestamptz;
UPDATE person_mail SET kept_at = now();
ALTER TABLE person_mail ALTER COLUMN kept_at SET NOT NULL;
