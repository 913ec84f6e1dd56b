-- People are kept apart from what they do, so that a person can be erased while the record stands.
CREATE TABLE person (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  slug       text NOT NULL CHECK (slug ~ '^[a-z0-9]+(-[a-z0-9]+)*$'),
  name       text NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  short_name text NOT NULL CHECK (length(short_name) BETWEEN 1 AND 200),
  title      text NOT NULL,
  role       text NOT NULL,
  visiting   boolean NOT NULL,
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT person_slug_once UNIQUE (cluster_id, slug)
);
