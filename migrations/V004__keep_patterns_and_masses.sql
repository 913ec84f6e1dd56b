-- A pattern yields dated Masses. A Mass keeps only what was chosen; celebration and colour follow
-- from the calendar each time they are asked for.
CREATE TABLE pattern (
  cluster_id    uuid NOT NULL,
  id            uuid NOT NULL,
  church_id     uuid NOT NULL,
  rrule         text NOT NULL,
  starts        date NOT NULL,
  at            time NOT NULL,
  minutes       int NOT NULL CHECK (minutes BETWEEN 5 AND 360),
  kind          text NOT NULL,
  celebrant_id  uuid,
  concelebrants int NOT NULL CHECK (concelebrants BETWEEN 0 AND 200),
  deacons       int NOT NULL CHECK (deacons BETWEEN 0 AND 200),
  note          text NOT NULL,
  version       int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, church_id) REFERENCES church (cluster_id, id),
  FOREIGN KEY (cluster_id, celebrant_id) REFERENCES person (cluster_id, id)
);

CREATE TABLE mass (
  cluster_id      uuid NOT NULL,
  id              uuid NOT NULL,
  church_id       uuid NOT NULL,
  pattern_id      uuid,
  pattern_date    date,
  starts          timestamptz NOT NULL,
  minutes         int NOT NULL CHECK (minutes BETWEEN 5 AND 360),
  kind            text NOT NULL,
  votive_of       text NOT NULL,
  leave           text NOT NULL,
  celebration     text NOT NULL,
  colour          text NOT NULL,
  celebrant_id    uuid,
  concelebrants   int NOT NULL CHECK (concelebrants BETWEEN 0 AND 200),
  deacons         int NOT NULL CHECK (deacons BETWEEN 0 AND 200),
  brings          jsonb NOT NULL,
  set_out_minutes int CHECK (set_out_minutes BETWEEN 0 AND 240),
  note            text NOT NULL,
  intention       text NOT NULL,
  touched         boolean NOT NULL,
  cancelled       boolean NOT NULL,
  version         int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, church_id) REFERENCES church (cluster_id, id),
  FOREIGN KEY (cluster_id, pattern_id) REFERENCES pattern (cluster_id, id),
  FOREIGN KEY (cluster_id, celebrant_id) REFERENCES person (cluster_id, id),
  CONSTRAINT mass_of_pattern_once UNIQUE (cluster_id, pattern_id, pattern_date),
  CHECK ((pattern_id IS NULL) = (pattern_date IS NULL))
);
CREATE INDEX mass_by_start ON mass (cluster_id, starts) WHERE NOT cancelled;
