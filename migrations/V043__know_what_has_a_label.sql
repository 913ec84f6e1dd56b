-- Which codes have a label that came out of a printer: a code that is changed has none any more.
CREATE TABLE printed_label (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  code       text NOT NULL CHECK (length(code) BETWEEN 1 AND 100),
  printed_at timestamptz NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT printed_label_once UNIQUE (cluster_id, code)
);
COMMENT ON COLUMN printed_label.code IS 'Of the set or piece';
SELECT fence_off('printed_label');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON printed_label FOR EACH ROW EXECUTE FUNCTION keep_change();
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON printed_label FOR EACH ROW EXECUTE FUNCTION announce_change();
