-- Journeys in calendars follow from Masses and plans and are kept nowhere as such. So that a program
-- notices one that has changed, how often it did is counted when it is asked for (RFC 5545, 3.8.7.4).
CREATE TABLE event_stamp (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  sequence   int NOT NULL CHECK (sequence >= 0),
  changed_at timestamptz NOT NULL,
  ends_at    timestamptz NOT NULL,
  digest     text NOT NULL CHECK (length(digest) = 32),
  PRIMARY KEY (cluster_id, id)
);
COMMENT ON COLUMN event_stamp.id IS 'Made of the UID of the event';
COMMENT ON COLUMN event_stamp.digest IS 'Of all that the calendar said of it last';
CREATE INDEX event_stamp_by_end ON event_stamp (cluster_id, ends_at);
SELECT fence_off('event_stamp');
