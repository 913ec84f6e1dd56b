-- A cluster is the unit of isolation: every table carries its id in every key, so that a row of one
-- cluster can never point into another, and the schema can be distributed by it.
CREATE EXTENSION IF NOT EXISTS btree_gist;

CREATE TABLE cluster (
  cluster_id         uuid PRIMARY KEY,
  name               text NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  calendar           text NOT NULL,
  epiphany           text NOT NULL,
  ascension          text NOT NULL,
  corpus_christi     text NOT NULL,
  time_zone          text NOT NULL,
  languages          text[] NOT NULL,
  anticipated_from   time NOT NULL,
  evening_rule       text NOT NULL,
  ladder_order       text NOT NULL,
  white_for_all      boolean NOT NULL,
  turn_minutes       int NOT NULL CHECK (turn_minutes BETWEEN 0 AND 60),
  weekday_set_out    int NOT NULL CHECK (weekday_set_out BETWEEN 0 AND 240),
  large_set_out      int NOT NULL CHECK (large_set_out BETWEEN 0 AND 240),
  large_clearance    int NOT NULL CHECK (large_clearance BETWEEN 0 AND 240),
  count_by           text NOT NULL,
  permitted_weekday  int NOT NULL CHECK (permitted_weekday BETWEEN 1 AND 9),
  permitted_sunday   int NOT NULL CHECK (permitted_sunday BETWEEN 1 AND 9),
  set_up             boolean NOT NULL,
  demo_monday        date,
  unfolded_until     date NOT NULL,
  created_at         timestamptz NOT NULL DEFAULT now(),
  version            int NOT NULL
);
COMMENT ON COLUMN cluster.demo_monday IS 'Monday of the week that the demo was made for; empty in a real cluster';
COMMENT ON COLUMN cluster.unfolded_until IS 'Last date for which the patterns have yielded their Masses';
