-- Where, in what languages and on what days somebody serves, as far as it was said; what was not said
-- binds nobody. How many Masses a day a priest may say, and by whose permission: canon 905.
CREATE TABLE ministry (
  cluster_id        uuid NOT NULL,
  id                uuid NOT NULL,
  languages         text[] NOT NULL,
  days              text[] NOT NULL,
  most_a_day        int CHECK (most_a_day BETWEEN 1 AND 9),
  wishes            text NOT NULL CHECK (length(wishes) <= 1000),
  own_set           text NOT NULL CHECK (length(own_set) <= 300),
  permitted_weekday int CHECK (permitted_weekday BETWEEN 1 AND 9),
  permitted_sunday  int CHECK (permitted_sunday BETWEEN 1 AND 9),
  granted_by        text NOT NULL CHECK (length(granted_by) <= 200),
  granted_on        date,
  version           int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, id) REFERENCES person (cluster_id, id) ON DELETE CASCADE
);
COMMENT ON COLUMN ministry.id IS 'That of the person';
COMMENT ON COLUMN ministry.languages IS 'BCP 47; none: not said';
COMMENT ON COLUMN ministry.days IS 'monday to sunday; none: not said';
COMMENT ON COLUMN ministry.permitted_weekday IS 'Empty: as the cluster has it for all';
SELECT fence_off('ministry');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON ministry
  FOR EACH ROW EXECUTE FUNCTION keep_change();
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON ministry
  FOR EACH ROW EXECUTE FUNCTION announce_change();

-- Which churches; none: all.
CREATE TABLE person_church (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  person_id  uuid NOT NULL,
  church_id  uuid NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, person_id) REFERENCES person (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, church_id) REFERENCES church (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT person_church_once UNIQUE (cluster_id, person_id, church_id)
);
SELECT fence_off('person_church');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON person_church
  FOR EACH ROW EXECUTE FUNCTION keep_change();
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON person_church
  FOR EACH ROW EXECUTE FUNCTION announce_change();

-- Wishes speak of others by their surnames; see V059 for the order of such triggers.
CREATE FUNCTION also_forget_in_ministries() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    PERFORM take_out(
        NEW.cluster_id, ARRAY[]::text[], ARRAY['ministry.wishes', 'ministry.own_set', 'ministry.granted_by'],
        NEW.surnames, 'c');
    RETURN NEW;
END
$$;
CREATE TRIGGER also_forget_in_ministries BEFORE INSERT ON erasure
  FOR EACH ROW EXECUTE FUNCTION also_forget_in_ministries();
