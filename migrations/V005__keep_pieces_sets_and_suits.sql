-- One row a garment. A set is what one minister wears together, a suit is sets made to match; both
-- are named by people and scanned as one, yet every piece is tracked for itself.
CREATE TABLE suit (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  name       text NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT suit_name_once UNIQUE (cluster_id, name)
);

CREATE TABLE vestment_set (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  code       text NOT NULL CHECK (length(code) BETWEEN 1 AND 40),
  name       text NOT NULL,
  suit_id    uuid,
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, suit_id) REFERENCES suit (cluster_id, id)
);
CREATE UNIQUE INDEX set_code_once ON vestment_set (cluster_id, lower(code));

CREATE TABLE piece (
  cluster_id   uuid NOT NULL,
  id           uuid NOT NULL,
  code         text NOT NULL CHECK (length(code) BETWEEN 1 AND 40),
  kind         text NOT NULL,
  colours      text[] NOT NULL,
  shade        text NOT NULL,
  grade        text NOT NULL,
  size         text NOT NULL,
  form         text NOT NULL,
  set_id       uuid,
  home_id      uuid NOT NULL,
  owner        text NOT NULL,
  owner_policy text NOT NULL,
  condition    text NOT NULL,
  place        text NOT NULL,
  stays_home   boolean NOT NULL,
  version      int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, set_id) REFERENCES vestment_set (cluster_id, id),
  FOREIGN KEY (cluster_id, home_id) REFERENCES church (cluster_id, id)
);
-- A code is read aloud and typed by hand: ht-w1-c and HT-W1-C are one.
CREATE UNIQUE INDEX piece_code_once ON piece (cluster_id, lower(code));
CREATE INDEX piece_by_set ON piece (cluster_id, set_id);
