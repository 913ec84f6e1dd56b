-- A Mass, or every Mass of a pattern, may be in another language than the first of its cluster.
ALTER TABLE mass ADD COLUMN language text NOT NULL DEFAULT '' CHECK (length(language) <= 35);
COMMENT ON COLUMN mass.language IS 'BCP 47; empty for the first language of the cluster';
ALTER TABLE pattern ADD COLUMN language text NOT NULL DEFAULT '' CHECK (length(language) <= 35);
COMMENT ON COLUMN pattern.language IS 'BCP 47; empty for the first language of the cluster';

-- Calendars say it, and so notice that it has changed.
DROP TRIGGER stamp_mass ON mass;
CREATE TRIGGER stamp_mass AFTER UPDATE ON mass FOR EACH ROW
  WHEN ((OLD.church_id, OLD.starts, OLD.minutes, OLD.kind, OLD.votive_of, OLD.celebration, OLD.colour,
         OLD.celebrant_id, OLD.named_ids, OLD.cancelled, OLD.language)
        IS DISTINCT FROM
        (NEW.church_id, NEW.starts, NEW.minutes, NEW.kind, NEW.votive_of, NEW.celebration, NEW.colour,
         NEW.celebrant_id, NEW.named_ids, NEW.cancelled, NEW.language))
  EXECUTE FUNCTION stamp_mass();
