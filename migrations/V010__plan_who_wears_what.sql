-- A plan is worked out in the background, shown, and only then applied. Applied it is rows of
-- occupation in the state 'planned', one a piece worn, and one row a piece carried.
CREATE TABLE plan (
  cluster_id   uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id           uuid NOT NULL,
  first_date   date NOT NULL,
  last_date    date NOT NULL,
  status       text NOT NULL CHECK (status IN ('queued', 'running', 'proven', 'stopped', 'failed')),
  progress     jsonb,
  result       jsonb,
  replaced     jsonb,
  failure      text NOT NULL,
  cancelled    boolean NOT NULL,
  starts       int NOT NULL,
  requested_at timestamptz NOT NULL,
  applied_at   timestamptz,
  version      int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT plan_ends_after_it_begins CHECK (last_date >= first_date)
);
COMMENT ON COLUMN plan.starts IS 'How often a copy of the server began it; the last one alone may write its result';
COMMENT ON COLUMN plan.replaced IS 'What was planned before it was applied, to be put back';

-- Whoever presses second gets the plan that the first asked for.
CREATE UNIQUE INDEX plan_one_at_work ON plan (cluster_id, first_date, last_date)
  WHERE status IN ('queued', 'running');
CREATE INDEX plan_by_request ON plan (cluster_id, requested_at);

-- Who wears a planned piece, and how far down the ladder of lawful substitutes it lies.
ALTER TABLE occupation
  ADD COLUMN role    text,
  ADD COLUMN ordinal int,
  ADD COLUMN depth   int NOT NULL DEFAULT 0;
CREATE INDEX occupation_by_start ON occupation (cluster_id, starts);

-- A Mass that its pattern no longer yields takes what was planned for it along.
ALTER TABLE occupation DROP CONSTRAINT occupation_cluster_id_mass_id_fkey;
ALTER TABLE occupation ADD CONSTRAINT occupation_of_mass
  FOREIGN KEY (cluster_id, mass_id) REFERENCES mass (cluster_id, id) ON DELETE CASCADE;

CREATE TABLE movement (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  piece_id   uuid NOT NULL,
  from_id    uuid NOT NULL,
  to_id      uuid NOT NULL,
  ready      timestamptz,
  leave_by   timestamptz NOT NULL,
  arrive_by  timestamptz NOT NULL,
  carrier    text NOT NULL,
  on_asking  boolean NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, piece_id) REFERENCES piece (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, from_id) REFERENCES church (cluster_id, id),
  FOREIGN KEY (cluster_id, to_id) REFERENCES church (cluster_id, id),
  CONSTRAINT movement_arrives_after_it_leaves CHECK (arrive_by >= leave_by)
);
CREATE INDEX movement_by_arrival ON movement (cluster_id, arrive_by);

-- The queue of the library that runs jobs: its own names, no cluster in the key, since any copy of
-- the server takes the next job of any cluster. The job's data names the cluster.
CREATE TABLE scheduled_tasks (
  task_name            text NOT NULL,
  task_instance        text NOT NULL,
  task_data            bytea,
  execution_time       timestamptz NOT NULL,
  picked               boolean NOT NULL,
  picked_by            text,
  last_success         timestamptz,
  last_failure         timestamptz,
  consecutive_failures int,
  last_heartbeat       timestamptz,
  version              bigint NOT NULL,
  priority             smallint,
  PRIMARY KEY (task_name, task_instance)
);
CREATE INDEX scheduled_tasks_by_time ON scheduled_tasks (execution_time);
CREATE INDEX scheduled_tasks_by_heartbeat ON scheduled_tasks (last_heartbeat);
