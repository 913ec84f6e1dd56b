-- Letters that wait to be mailed, written in the transaction of what they tell, and what became of
-- each. What they say goes as soon as they are sent; that they were sent stays a year.
CREATE TABLE letter (
  cluster_id  uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id          uuid NOT NULL,
  reader      uuid NOT NULL,
  kind        text NOT NULL CHECK (length(kind) BETWEEN 1 AND 40),
  once        text NOT NULL CHECK (length(once) BETWEEN 1 AND 200),
  language    text NOT NULL CHECK (length(language) BETWEEN 2 AND 35),
  subject     text NOT NULL,
  plain       text NOT NULL,
  html        text NOT NULL,
  stop_link   text NOT NULL,
  fingerprint text NOT NULL CHECK (length(fingerprint) IN (0, 64)),
  state       text NOT NULL CHECK (state IN ('waiting', 'sent', 'refused', 'given-up')),
  tries       int NOT NULL CHECK (tries >= 0),
  made_at     timestamptz NOT NULL,
  next_at     timestamptz NOT NULL,
  ended_at    timestamptz,
  answer      text NOT NULL CHECK (length(answer) <= 500),
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT letter_once UNIQUE (cluster_id, once),
  CONSTRAINT letter_sent_says_nothing CHECK (state <> 'sent' OR subject || plain || html || stop_link = ''),
  CHECK ((state = 'waiting') = (ended_at IS NULL))
);
COMMENT ON COLUMN letter.reader IS 'Id of the person, or of the user who is nobody of the schedule; the address is looked up when it is sent';
COMMENT ON COLUMN letter.once IS 'What it is about; there are never two of the same';
COMMENT ON COLUMN letter.fingerprint IS 'Of the link that stops letters of this kind without signing in; empty where there is none';
COMMENT ON COLUMN letter.next_at IS 'When it is tried again; moved on before each try, so that two copies of the server never try at once';
COMMENT ON COLUMN letter.answer IS 'What the mail server said last, without addresses';
CREATE INDEX letter_due ON letter (cluster_id, next_at) WHERE state = 'waiting';
CREATE INDEX letter_by_link ON letter (cluster_id, fingerprint) WHERE fingerprint <> '';
SELECT fence_off('letter');

-- Letters to somebody who is removed for good go with them, and their surname goes from the others.
-- Triggers fire in the order of their names: this one comes before carry_out_erasure.
CREATE FUNCTION also_forget_in_letters() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    DELETE FROM letter WHERE cluster_id = NEW.cluster_id AND reader = NEW.subject;
    PERFORM take_out(NEW.cluster_id, ARRAY[]::text[],
        ARRAY['letter.subject', 'letter.plain', 'letter.html'], NEW.surnames, 'c');
    RETURN NEW;
END
$$;
CREATE TRIGGER also_forget_in_letters BEFORE INSERT ON erasure
  FOR EACH ROW EXECUTE FUNCTION also_forget_in_letters();
