-- What a cluster keeps beside the calendar of its country: days of its diocese, of a place, of an
-- order or of a church, and what its bishop has set elsewhere, every year or in one.
CREATE TABLE proper (
  cluster_id  uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id          uuid NOT NULL,
  slug        text NOT NULL CHECK (slug ~ '^[a-z0-9]+(-[a-z0-9]+)*$'),
  celebration text NOT NULL CHECK (length(celebration) BETWEEN 1 AND 60),
  name        text NOT NULL,
  latin       text NOT NULL,
  spanish     text NOT NULL,
  month       int,
  day         int,
  colour      text NOT NULL CHECK (colour NOT IN ('gold', 'silver')),
  place       text NOT NULL,
  on_sunday   text NOT NULL,
  kept_on     date CHECK (kept_on BETWEEN DATE '1970-01-01' AND DATE '2300-12-31'),
  kept_year   int NOT NULL GENERATED ALWAYS AS (coalesce(extract(year FROM kept_on)::int, 0)) STORED,
  everywhere  boolean NOT NULL,
  version     int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT proper_slug_once UNIQUE (cluster_id, slug),
  CONSTRAINT proper_of_church_points_at UNIQUE (cluster_id, id, celebration, kept_year),
  CONSTRAINT proper_says_something CHECK (place <> '' OR on_sunday <> '' OR kept_on IS NOT NULL),
  CONSTRAINT proper_of_one_year_says_nothing_else
    CHECK (kept_on IS NULL OR (place = '' AND on_sunday = '' AND name = '' AND month IS NULL)),
  CONSTRAINT proper_brings_its_celebration_whole
    CHECK (name = '' OR (celebration = slug AND month IS NOT NULL AND colour <> '' AND place <> '')),
  CONSTRAINT proper_day_is_whole CHECK ((month IS NULL) = (day IS NULL)),
  -- A day that every year has; 2001 was no leap year.
  CONSTRAINT proper_day_is_a_day CHECK (month IS NULL OR day IS NULL OR make_date(2001, month, day) IS NOT NULL)
);
COMMENT ON COLUMN proper.celebration IS 'Id in the calendar; its own slug where name brings one';
COMMENT ON COLUMN proper.kept_year IS 'Year of kept_on; 0 for what holds every year';
COMMENT ON COLUMN proper.everywhere IS 'Binds all churches, those of proper_church being none; a proper that has lost its last church must not bind all of a sudden';

-- One proper for all churches of each celebration, and one of each place that can be held once.
CREATE UNIQUE INDEX proper_of_all_once ON proper (cluster_id, celebration, kept_year) WHERE everywhere;
CREATE UNIQUE INDEX proper_place_once ON proper (cluster_id, place)
  WHERE everywhere AND place IN ('patron-of-the-place', 'patron-of-the-diocese', 'dedication-of-the-cathedral');

-- The churches of a proper that does not bind all: one row a church, since the patron of a town
-- binds each of its churches and is still one entry. Celebration and year stand here again so that
-- the database refuses a second proper of the same celebration in one church.
CREATE TABLE proper_church (
  cluster_id  uuid NOT NULL,
  id          uuid NOT NULL,
  proper_id   uuid NOT NULL,
  celebration text NOT NULL,
  kept_year   int NOT NULL,
  church_id   uuid NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, proper_id, celebration, kept_year)
    REFERENCES proper (cluster_id, id, celebration, kept_year) ON UPDATE CASCADE ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, church_id) REFERENCES church (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT proper_of_church_once UNIQUE (cluster_id, church_id, celebration, kept_year)
);
CREATE INDEX proper_church_by_proper ON proper_church (cluster_id, proper_id);

-- A day has a colour; gold and silver are facts of a vestment. A title that had one kept every page
-- from being read, so that none can be in use.
UPDATE church SET titular_colour = 'white' WHERE titular_colour IN ('gold', 'silver');
ALTER TABLE church ADD CONSTRAINT church_title_is_no_metal CHECK (titular_colour NOT IN ('gold', 'silver'));
