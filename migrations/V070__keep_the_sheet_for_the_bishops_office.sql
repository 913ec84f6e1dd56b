-- What the bishop's office is told before he comes, beside what the Mass says already, and when it
-- was sent.
CREATE TABLE office_sheet (
  cluster_id    uuid NOT NULL,
  id            uuid NOT NULL,
  arrival       time,
  vesting_place text NOT NULL CHECK (length(vesting_place) <= 500),
  parking       text NOT NULL CHECK (length(parking) <= 500),
  candidates    int CHECK (candidates BETWEEN 0 AND 2000),
  company       text NOT NULL CHECK (length(company) <= 1000),
  brought       text NOT NULL CHECK (length(brought) <= 1000),
  wanted        text NOT NULL CHECK (length(wanted) <= 1000),
  note          text NOT NULL CHECK (length(note) <= 2000),
  sent_on       date,
  version       int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, id) REFERENCES mass (cluster_id, id) ON DELETE CASCADE
);
COMMENT ON COLUMN office_sheet.id IS 'That of the Mass';
COMMENT ON COLUMN office_sheet.company IS 'Who concelebrates and assists, where more is to be said than their number';
COMMENT ON COLUMN office_sheet.brought IS 'Vestments that he brings';
COMMENT ON COLUMN office_sheet.wanted IS 'Vestments that he finds here';
SELECT fence_off('office_sheet');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON office_sheet FOR EACH ROW EXECUTE FUNCTION keep_change();
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON office_sheet FOR EACH ROW EXECUTE FUNCTION announce_change();

CREATE FUNCTION also_forget_in_office_sheets() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    PERFORM take_out(NEW.cluster_id, ARRAY[]::text[],
        ARRAY['office_sheet.company', 'office_sheet.brought', 'office_sheet.wanted', 'office_sheet.note'],
        NEW.surnames, 'c');
    RETURN NEW;
END
$$;
CREATE TRIGGER also_forget_in_office_sheets BEFORE INSERT ON erasure
  FOR EACH ROW EXECUTE FUNCTION also_forget_in_office_sheets();
