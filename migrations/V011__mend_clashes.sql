-- What mends a clash is applied by one press and undone by another. Of two who press at once for
-- the same clash, the second finds the first one's row and changes nothing.
CREATE TABLE applied_remedy (
  cluster_id  uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id          uuid NOT NULL,
  clash       text NOT NULL,
  leaves      text NOT NULL,
  place       int NOT NULL,
  fingerprint text NOT NULL,
  about       text NOT NULL,
  title       text NOT NULL,
  sentence    text NOT NULL,
  deed        jsonb NOT NULL,
  applied_at  timestamptz NOT NULL,
  undone_at   timestamptz,
  standing    boolean NOT NULL,
  version     int NOT NULL,
  PRIMARY KEY (cluster_id, id)
);
COMMENT ON COLUMN applied_remedy.leaves IS 'The clash that is only worth knowing and stands in its place; often empty';
COMMENT ON COLUMN applied_remedy.deed IS 'What was changed, from what to what, so that it can be put back';
CREATE UNIQUE INDEX applied_remedy_once ON applied_remedy (cluster_id, clash) WHERE standing;

-- A lawful substitute that somebody accepted by name for one person at one Mass. What the person
-- needs is asked accordingly as long as the Mass is in that church and colour.
CREATE TABLE accepted_step (
  cluster_id  uuid NOT NULL,
  id          uuid NOT NULL,
  mass_id     uuid NOT NULL,
  role        text NOT NULL,
  ordinal     int NOT NULL,
  kind        text NOT NULL,
  church_id   uuid NOT NULL,
  colour      text NOT NULL,
  step        text NOT NULL,
  person      text NOT NULL,
  accepted_by text NOT NULL,
  accepted_at timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT accepted_step_of_mass
    FOREIGN KEY (cluster_id, mass_id) REFERENCES mass (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT accepted_step_once UNIQUE (cluster_id, mass_id, role, ordinal, kind)
);
COMMENT ON COLUMN accepted_step.person IS 'Who wears it, as typed; empty where only the number is known';
