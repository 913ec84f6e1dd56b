-- Parishes own; churches hold; journeys say how long a piece is on its way between two of them.
CREATE TABLE parish (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  name       text NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT parish_name_once UNIQUE (cluster_id, name)
);

CREATE TABLE church (
  cluster_id        uuid NOT NULL,
  id                uuid NOT NULL,
  parish_id         uuid NOT NULL,
  slug              text NOT NULL CHECK (slug ~ '^[a-z0-9]+(-[a-z0-9]+)*$'),
  name              text NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  place             text NOT NULL,
  title             text NOT NULL,
  titular           text NOT NULL,
  titular_name      text NOT NULL,
  titular_month     int,
  titular_day       int,
  titular_colour    text NOT NULL,
  dedication        date,
  set_out_minutes   int NOT NULL CHECK (set_out_minutes BETWEEN 0 AND 240),
  clearance_minutes int NOT NULL CHECK (clearance_minutes BETWEEN 0 AND 240),
  latitude          double precision CHECK (latitude BETWEEN -90 AND 90),
  longitude         double precision CHECK (longitude BETWEEN -180 AND 180),
  position          int NOT NULL,
  version           int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, parish_id) REFERENCES parish (cluster_id, id),
  CONSTRAINT church_slug_once UNIQUE (cluster_id, slug)
);

CREATE TABLE journey (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  from_id    uuid NOT NULL,
  to_id      uuid NOT NULL,
  minutes    int NOT NULL CHECK (minutes BETWEEN 1 AND 1440),
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, from_id) REFERENCES church (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, to_id) REFERENCES church (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT journey_once UNIQUE (cluster_id, from_id, to_id),
  CONSTRAINT journey_leads_elsewhere CHECK (from_id <> to_id)
);
