-- After a change only what it touches is planned anew, which takes what the plan was made from.
ALTER TABLE plan ADD COLUMN keeping boolean NOT NULL DEFAULT false;
COMMENT ON COLUMN plan.keeping IS 'Whether it leaves alone whatever no change has touched';
DROP INDEX plan_one_at_work;
CREATE UNIQUE INDEX plan_one_at_work ON plan (cluster_id, first_date, last_date, keeping)
  WHERE status IN ('queued', 'running');

CREATE TABLE plan_basis (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  facts      text NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, id) REFERENCES plan (cluster_id, id) ON DELETE CASCADE
);
COMMENT ON COLUMN plan_basis.id IS 'That of the plan';
COMMENT ON COLUMN plan_basis.facts IS 'JSON; what cannot be read any more makes the next plan a whole one';

-- Pieces that ride together are one trip, whichever plan has it: who was asked for it stays asked
-- when another plan has the same trip.
ALTER TABLE movement ADD COLUMN trip_id uuid;
UPDATE movement
  SET trip_id = md5(concat_ws('|', from_id, to_id, leave_by, arrive_by, carrier))::uuid;
ALTER TABLE movement ALTER COLUMN trip_id SET NOT NULL;
CREATE INDEX movement_by_trip ON movement (cluster_id, trip_id);

-- How a person is written to, apart from the name that everybody sees.
CREATE TABLE person_mail (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  address    text NOT NULL CHECK (length(address) BETWEEN 3 AND 254),
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, id) REFERENCES person (cluster_id, id) ON DELETE CASCADE
);

COMMENT ON COLUMN person_mail.id IS 'That of the person';

-- One row for each person asked for a trip: the record stands when the person is erased.
CREATE TABLE asking (
  cluster_id  uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id          uuid NOT NULL,
  trip_id     uuid NOT NULL,
  from_id     uuid NOT NULL,
  to_id       uuid NOT NULL,
  leave_by    timestamptz NOT NULL,
  rider       text NOT NULL,
  riding      boolean NOT NULL,
  pieces      text[] NOT NULL,
  person_id   uuid,
  state       text NOT NULL CHECK (state IN ('asked', 'accepted', 'declined', 'done', 'withdrawn')),
  asked_by    text NOT NULL,
  asked_at    timestamptz NOT NULL,
  changed_by  text NOT NULL,
  changed_at  timestamptz NOT NULL,
  mailed_at   timestamptz,
  mail_failed boolean NOT NULL,
  offered     uuid,
  version     int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, from_id) REFERENCES church (cluster_id, id),
  FOREIGN KEY (cluster_id, to_id) REFERENCES church (cluster_id, id),
  FOREIGN KEY (cluster_id, person_id) REFERENCES person (cluster_id, id) ON DELETE SET NULL (person_id),
  FOREIGN KEY (cluster_id, offered) REFERENCES plan (cluster_id, id) ON DELETE SET NULL (offered)
);
COMMENT ON COLUMN asking.rider IS 'Who drives that way anyway, as the plan calls him; empty if nobody does';
COMMENT ON COLUMN asking.riding IS 'Whether the person asked is that rider';
COMMENT ON COLUMN asking.offered IS 'The plan that was made after a refusal';
CREATE UNIQUE INDEX asking_one_at_a_time ON asking (cluster_id, trip_id)
  WHERE state IN ('asked', 'accepted', 'done');
CREATE INDEX asking_by_trip ON asking (cluster_id, trip_id, asked_at);
CREATE INDEX asking_by_leaving ON asking (cluster_id, leave_by);

-- Whether an owner lets a piece go to a Mass elsewhere; no row: he has not been asked.
CREATE TABLE consent (
  cluster_id  uuid NOT NULL,
  id          uuid NOT NULL,
  mass_id     uuid NOT NULL,
  piece_id    uuid NOT NULL,
  state       text NOT NULL CHECK (state IN ('granted', 'refused')),
  answered_by text NOT NULL,
  answered_at timestamptz NOT NULL,
  version     int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT consent_once UNIQUE (cluster_id, mass_id, piece_id),
  FOREIGN KEY (cluster_id, mass_id) REFERENCES mass (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, piece_id) REFERENCES piece (cluster_id, id) ON DELETE CASCADE
);
