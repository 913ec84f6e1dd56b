-- Which letters somebody wants, and in which language; whoever chose nothing gets both kinds.
CREATE TABLE letter_wish (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  friday     boolean NOT NULL,
  changes    boolean NOT NULL,
  language   text NOT NULL CHECK (length(language) <= 35),
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id)
);
COMMENT ON COLUMN letter_wish.id IS 'That of the person, or of the user who is nobody of the schedule';
COMMENT ON COLUMN letter_wish.language IS 'BCP 47; empty for the language of the cluster';
SELECT fence_off('letter_wish');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON letter_wish FOR EACH ROW EXECUTE FUNCTION keep_change();

CREATE FUNCTION also_forget_letter_wishes() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    DELETE FROM letter_wish WHERE cluster_id = NEW.cluster_id AND id = NEW.subject;
    RETURN NEW;
END
$$;
CREATE TRIGGER also_forget_letter_wishes BEFORE INSERT ON erasure
  FOR EACH ROW EXECUTE FUNCTION also_forget_letter_wishes();

-- How a cluster tells its people; one that has chosen nothing does as usual.
CREATE TABLE telling (
  cluster_id    uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id            uuid NOT NULL,
  weekday       int NOT NULL CHECK (weekday BETWEEN 1 AND 7),
  hour          time NOT NULL,
  office_days   int NOT NULL CHECK (office_days BETWEEN 1 AND 90),
  names_public  boolean NOT NULL,
  version       int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT telling_once UNIQUE (cluster_id)
);
COMMENT ON COLUMN telling.weekday IS 'On which the letter of the week leaves, 1 for Monday';
COMMENT ON COLUMN telling.office_days IS 'Days before a Mass with a bishop by which his office has its sheet';
COMMENT ON COLUMN telling.names_public IS 'Whether celebrants are named in the Mass times for the people';
SELECT fence_off('telling');
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON telling FOR EACH ROW EXECUTE FUNCTION keep_change();

-- That the letters of a week were written. Entered first, so that copies of the server that run at
-- the same time write them once.
CREATE TABLE week_told (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  day        date NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT week_told_once UNIQUE (cluster_id, day)
);
COMMENT ON COLUMN week_told.day IS 'The day on which they left; they tell of the seven days after it';
SELECT fence_off('week_told');
