-- Which event of somebody's calendar a Mass was brought in from (RFC 5545, 3.8.4.7 and 3.8.4.4), so
-- that the same file again changes nothing, and a later one changes that Mass and enters no other.
CREATE TABLE mass_origin (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  uid        text NOT NULL,
  instance   text NOT NULL,
  mass_id    uuid NOT NULL,
  sequence   int NOT NULL,
  said       text NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, mass_id) REFERENCES mass (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT mass_origin_once UNIQUE (cluster_id, uid, instance)
);
COMMENT ON COLUMN mass_origin.uid IS 'Of the event';
COMMENT ON COLUMN mass_origin.instance IS 'When it would be by the rule of its event; empty without a rule';
COMMENT ON COLUMN mass_origin.said IS 'Place, time, length and kind as the calendar had them the last time';
CREATE INDEX mass_origin_by_mass ON mass_origin (cluster_id, mass_id);
SELECT fence_off('mass_origin');
CREATE TRIGGER keep_for_undo AFTER INSERT OR UPDATE OR DELETE ON mass_origin FOR EACH ROW
  WHEN (current_setting('app.import', true) <> '') EXECUTE FUNCTION keep_for_undo();
