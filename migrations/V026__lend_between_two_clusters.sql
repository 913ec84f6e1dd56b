-- Vestments lent by one cluster to another: offered by the one, answered by the other, seen by both
-- and by nobody else. While it holds, the pieces are in care in the lender's pool, and stand in the
-- borrower's as pieces of their own that can be used in that time only.
CREATE TABLE lending (
  cluster_id  uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id          uuid NOT NULL,
  borrower_id uuid NOT NULL,
  starts      timestamptz NOT NULL,
  ends        timestamptz NOT NULL,
  state       text NOT NULL CHECK (state IN ('offered', 'accepted', 'declined', 'withdrawn', 'returned')),
  pieces      jsonb NOT NULL CHECK (jsonb_array_length(pieces) BETWEEN 1 AND 200),
  note        text NOT NULL,
  answer      text NOT NULL,
  ending      text NOT NULL,
  church_id   uuid,
  offered_at  timestamptz NOT NULL,
  answered_at timestamptz,
  ended_at    timestamptz,
  ended_by    uuid,
  version     int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  CONSTRAINT lending_ends_after_it_starts CHECK (ends > starts),
  CONSTRAINT lending_goes_elsewhere CHECK (borrower_id <> cluster_id)
);
COMMENT ON COLUMN lending.cluster_id IS 'The lender';
COMMENT ON COLUMN lending.pieces IS 'As they were when they were offered, condition included';
COMMENT ON COLUMN lending.church_id IS 'Where they lie, in the borrower''s cluster';
COMMENT ON COLUMN lending.ended_by IS 'The cluster that said they are back';
CREATE INDEX lending_by_borrower ON lending (borrower_id, starts);

ALTER TABLE piece ADD COLUMN lending_id uuid;
ALTER TABLE vestment_set ADD COLUMN lending_id uuid;
ALTER TABLE occupation ADD COLUMN lending_id uuid;
COMMENT ON COLUMN piece.lending_id IS 'By which it is borrowed; empty for the cluster''s own';
COMMENT ON COLUMN occupation.lending_id IS 'By which the piece is lent and not yet back, or borrowed only from then to then';
CREATE INDEX occupation_by_lending ON occupation (cluster_id, lending_id) WHERE lending_id IS NOT NULL;

ALTER TABLE lending ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_cluster ON lending
  USING (nullif(current_setting('app.cluster', true), '')::uuid IN (cluster_id, borrower_id));
CREATE POLICY offered_by_the_lender ON lending AS RESTRICTIVE FOR INSERT
  WITH CHECK (cluster_id = nullif(current_setting('app.cluster', true), '')::uuid AND state = 'offered');

-- Only through what follows does a row of one cluster ever come of a deed in another: it works as
-- the owner of the tables, and does nothing but what both sides have said.
CREATE FUNCTION hand_over(lent lending) RETURNS void LANGUAGE plpgsql AS $$
DECLARE
    lender   cluster;
    borrower cluster;
    ids      uuid[] := ARRAY(SELECT (given ->> 'id')::uuid FROM jsonb_array_elements(lent.pieces) given);
    visitor  text := coalesce(current_setting('app.visitor', true), '');
    before   text;
    one      record;
    fresh    uuid;
BEGIN
    SELECT * INTO lender FROM cluster WHERE cluster_id = lent.cluster_id;
    SELECT * INTO borrower FROM cluster WHERE cluster_id = lent.borrower_id;
    -- Of two that want one piece the second waits here; in order of codes, as whoever plans them does, so that no two wait for each other.
    PERFORM 1 FROM piece WHERE cluster_id = lent.cluster_id AND id = ANY (ids) ORDER BY code FOR UPDATE;
    IF (SELECT count(*) FROM piece WHERE cluster_id = lent.cluster_id AND id = ANY (ids) AND lending_id IS NULL)
        <> cardinality(ids) THEN
        RAISE EXCEPTION 'a piece is gone' USING ERRCODE = 'check_violation', CONSTRAINT = 'lending_pieces_there';
    END IF;

    -- In the lender's history nobody of the borrower's people is named.
    PERFORM set_config('app.visitor', '', true);
    UPDATE occupation SET standing = false
    WHERE cluster_id = lent.cluster_id AND piece_id = ANY (ids) AND state = 'planned' AND standing
      AND during && tstzrange(lent.starts, lent.ends, '[)');
    BEGIN
        INSERT INTO occupation (cluster_id, id, piece_id, state, starts, ends, reason, standing, version, lending_id)
        SELECT lent.cluster_id, gen_random_uuid(), piece, 'care', lent.starts, lent.ends,
               'Lent to ' || borrower.name, true, 0, lent.id
        FROM unnest(ids) piece;
    EXCEPTION WHEN exclusion_violation THEN
        RAISE EXCEPTION 'a piece is taken' USING ERRCODE = 'check_violation', CONSTRAINT = 'lending_taken';
    END;

    PERFORM set_config('app.visitor', visitor, true);
    before := 'Not yet borrowed from ' || lender.name;
    FOR one IN
        SELECT p.*, s.code AS set_code, s.name AS set_name
        FROM piece p LEFT JOIN vestment_set s ON s.cluster_id = p.cluster_id AND s.id = p.set_id
        WHERE p.cluster_id = lent.cluster_id AND p.id = ANY (ids) ORDER BY p.code
    LOOP
        fresh := gen_random_uuid();
        INSERT INTO piece (cluster_id, id, code, kind, colours, shade, grade, size, form, set_id, home_id,
                           owner, owner_policy, condition, place, stays_home, version, lending_id)
        VALUES (borrower.cluster_id, fresh, borrowed_code('piece', one.code, lent, lender.word), one.kind,
                one.colours, one.shade, one.grade, one.size, one.form,
                borrowed_set(one.set_code, one.set_name, lent, lender.word), lent.church_id,
                one.owner || ', ' || lender.name, 'freely', one.condition,
                'Borrowed from ' || lender.name, false, 0, lent.id);
        INSERT INTO occupation (cluster_id, id, piece_id, state, starts, ends, reason, standing, version, lending_id)
        VALUES (borrower.cluster_id, gen_random_uuid(), fresh, 'care', '1970-01-01 00:00Z', lent.starts, before, true, 0, lent.id),
               (borrower.cluster_id, gen_random_uuid(), fresh, 'care', lent.ends, NULL,
                'Goes back to ' || lender.name, true, 0, lent.id);
    END LOOP;
EXCEPTION WHEN unique_violation THEN
    RAISE EXCEPTION 'a code is taken' USING ERRCODE = 'check_violation', CONSTRAINT = 'lending_code_once';
END
$$;

-- The lender's code where the borrower has none such, else with the lender's word before it.
CREATE FUNCTION borrowed_code(what text, wanted text, lent lending, word text) RETURNS text LANGUAGE sql AS $$
    SELECT CASE WHEN EXISTS (
        SELECT 1 FROM piece WHERE what = 'piece' AND cluster_id = lent.borrower_id AND lower(code) = lower(wanted)
        UNION ALL
        SELECT 1 FROM vestment_set s WHERE what = 'set' AND s.cluster_id = lent.borrower_id
          AND lower(s.code) = lower(wanted) AND s.lending_id IS DISTINCT FROM lent.id)
    THEN left(word || '.' || wanted, 40) ELSE wanted END
$$;

-- The set that stands for the lender's in the borrower's pool; none for a piece of no set.
CREATE FUNCTION borrowed_set(wanted text, named text, lent lending, word text) RETURNS uuid LANGUAGE plpgsql AS $$
DECLARE
    its_code text := borrowed_code('set', wanted, lent, word);
    found_id uuid;
BEGIN
    IF wanted IS NULL THEN
        RETURN NULL;
    END IF;
    SELECT id INTO found_id FROM vestment_set
    WHERE cluster_id = lent.borrower_id AND lending_id = lent.id AND code = its_code;
    IF found_id IS NULL THEN
        found_id := gen_random_uuid();
        INSERT INTO vestment_set (cluster_id, id, code, name, suit_id, version, lending_id)
        VALUES (lent.borrower_id, found_id, its_code, named, NULL, 0, lent.id);
    END IF;
    RETURN found_id;
END
$$;

CREATE FUNCTION take_back(lent lending, here uuid) RETURNS void LANGUAGE plpgsql AS $$
DECLARE
    visitor text := coalesce(current_setting('app.visitor', true), '');
BEGIN
    PERFORM set_config('app.visitor', CASE WHEN here = lent.cluster_id THEN visitor ELSE '' END, true);
    DELETE FROM occupation
    WHERE cluster_id = lent.cluster_id AND lending_id = lent.id AND starts >= lent.ended_at;
    UPDATE occupation SET ends = least(ends, lent.ended_at), lending_id = NULL, version = version + 1
    WHERE cluster_id = lent.cluster_id AND lending_id = lent.id;
    PERFORM set_config('app.visitor', CASE WHEN here = lent.cluster_id THEN '' ELSE visitor END, true);
    -- What the borrower put into a set of the lender's stays in the pool by itself.
    UPDATE piece SET set_id = NULL
    WHERE cluster_id = lent.borrower_id AND lending_id IS DISTINCT FROM lent.id AND set_id IN (
        SELECT id FROM vestment_set WHERE cluster_id = lent.borrower_id AND lending_id = lent.id);
    DELETE FROM piece WHERE cluster_id = lent.borrower_id AND lending_id = lent.id;
    DELETE FROM vestment_set WHERE cluster_id = lent.borrower_id AND lending_id = lent.id;
    PERFORM set_config('app.visitor', visitor, true);
END
$$;

-- Each side says what is its own to say, and nothing else of a lending ever changes.
CREATE FUNCTION keep_to_the_lending() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    here uuid := nullif(current_setting('app.cluster', true), '')::uuid;
    may  boolean := CASE
        WHEN OLD.state = NEW.state THEN true
        WHEN OLD.state = 'offered' AND NEW.state IN ('accepted', 'declined') THEN here = NEW.borrower_id
        WHEN OLD.state = 'offered' AND NEW.state = 'withdrawn' THEN here = NEW.cluster_id
        WHEN OLD.state = 'accepted' AND NEW.state = 'returned' THEN here IN (NEW.cluster_id, NEW.borrower_id)
        ELSE false END;
BEGIN
    IF may IS NOT TRUE
        OR (OLD.cluster_id, OLD.id, OLD.borrower_id, OLD.starts, OLD.ends, OLD.pieces)
            IS DISTINCT FROM (NEW.cluster_id, NEW.id, NEW.borrower_id, NEW.starts, NEW.ends, NEW.pieces) THEN
        RAISE EXCEPTION 'not this side''s to say'
            USING ERRCODE = 'check_violation', CONSTRAINT = 'lending_by_its_side';
    END IF;
    IF OLD.state = 'offered' AND NEW.state = 'accepted' THEN
        PERFORM hand_over(NEW);
    ELSIF OLD.state = 'accepted' AND NEW.state = 'returned' THEN
        PERFORM take_back(NEW, here);
    END IF;
    RETURN NEW;
END
$$;
CREATE TRIGGER keep_to_the_lending BEFORE UPDATE ON lending
  FOR EACH ROW EXECUTE FUNCTION keep_to_the_lending();

-- Both hear of it; each keeps in its history what its own people did.
CREATE FUNCTION announce_to_both() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    PERFORM pg_notify('vestiary_change', coalesce(NEW.cluster_id, OLD.cluster_id)::text);
    PERFORM pg_notify('vestiary_change', coalesce(NEW.borrower_id, OLD.borrower_id)::text);
    RETURN NULL;
END
$$;
CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON lending
  FOR EACH ROW EXECUTE FUNCTION announce_to_both();

CREATE FUNCTION keep_own_part() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    here uuid := nullif(current_setting('app.cluster', true), '')::uuid;
BEGIN
    IF here IS NOT NULL THEN
        INSERT INTO audit (cluster_id, id, at, visitor, kind, row_id, deed, before, after)
        VALUES (here, gen_random_uuid(), clock_timestamp(), coalesce(current_setting('app.visitor', true), ''),
                'lending', NEW.id, CASE TG_OP WHEN 'INSERT' THEN 'entered' ELSE 'changed' END,
                CASE TG_OP WHEN 'INSERT' THEN '{}' ELSE jsonb_build_object('state', OLD.state) END,
                jsonb_build_object('state', NEW.state));
    END IF;
    RETURN NULL;
END
$$;
CREATE TRIGGER keep_change AFTER INSERT OR UPDATE ON lending
  FOR EACH ROW EXECUTE FUNCTION keep_own_part();
