-- A person who is removed for good leaves a nameless row behind, so that the record of what was
-- celebrated stays readable and its counts stay right.
ALTER TABLE person ADD COLUMN erased boolean;
UPDATE person SET erased = false;
ALTER TABLE person ALTER COLUMN erased SET NOT NULL;

ALTER TABLE mass ADD COLUMN celebrant_lost boolean;
UPDATE mass SET celebrant_lost = false;
ALTER TABLE mass ALTER COLUMN celebrant_lost SET NOT NULL;
COMMENT ON COLUMN mass.celebrant_lost IS 'Its celebrant was removed for good, and nobody is named in his place';

ALTER TABLE pattern ADD COLUMN celebrant_lost boolean;
UPDATE pattern SET celebrant_lost = false;
ALTER TABLE pattern ALTER COLUMN celebrant_lost SET NOT NULL;

CREATE TABLE erasure (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  at         timestamptz NOT NULL,
  subject    uuid NOT NULL,
  visitor    text NOT NULL,
  names      text[] NOT NULL,
  surnames   text[] NOT NULL,
  PRIMARY KEY (cluster_id, id)
);
COMMENT ON TABLE erasure IS 'That somebody was removed for good, when and by whom; not who it was';
COMMENT ON COLUMN erasure.names IS 'Said with the insert, taken out of every text of the cluster, and not kept';
COMMENT ON COLUMN erasure.surnames IS 'Likewise, but only where texts speak of people';
SELECT fence_off('erasure');

-- Whole words of a text.
CREATE FUNCTION words_pattern(words text[]) RETURNS text LANGUAGE sql IMMUTABLE AS $$
    SELECT '(?<![[:alnum:]])('
        || string_agg(regexp_replace(word, '([^[:alnum:][:space:]])', '\\\1', 'g'), '|' ORDER BY length(word) DESC)
        || ')(?![[:alnum:]])'
    FROM unnest(words) AS word
$$;

CREATE FUNCTION take_out(cluster uuid, tables text[], columns text[], words text[], flags text) RETURNS void
LANGUAGE plpgsql SET search_path = public, pg_temp AS $$
DECLARE
    pattern text := words_pattern(words);
    found   record;
    instead text;
BEGIN
    IF pattern IS NULL THEN
        RETURN;
    END IF;
    FOR found IN
        SELECT c.table_name, c.column_name, c.data_type
        FROM information_schema.columns c JOIN information_schema.tables t USING (table_schema, table_name)
        WHERE c.table_schema = 'public' AND t.table_type = 'BASE TABLE' AND c.is_generated = 'NEVER'
          AND (c.data_type IN ('text', 'jsonb') OR c.udt_name = '_text')
          AND (columns IS NULL OR c.table_name::text || '.' || c.column_name::text = ANY (columns))
          AND NOT c.table_name::text = ANY (tables)
          AND EXISTS (
              SELECT 1 FROM information_schema.columns k
              WHERE k.table_schema = 'public' AND k.table_name = c.table_name AND k.column_name = 'cluster_id')
    LOOP
        instead := CASE found.data_type
            WHEN 'text' THEN format('regexp_replace(%I, $2, $3, $4)', found.column_name)
            WHEN 'jsonb' THEN format('regexp_replace(%I::text, $2, $3, $4)::jsonb', found.column_name)
            ELSE format(
                'array(SELECT regexp_replace(one, $2, $3, $4) FROM unnest(%I) WITH ORDINALITY AS o (one, n) ORDER BY n)',
                found.column_name)
        END;
        EXECUTE format(
            'UPDATE %1$I SET %2$I = %3$s WHERE cluster_id = $1 AND regexp_count(%2$I::text, $2, 1, $5) > 0',
            found.table_name, found.column_name, instead)
        USING cluster, pattern, 'a person who was removed', 'g' || flags, flags;
    END LOOP;
END
$$;

CREATE FUNCTION carry_out_erasure() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
    -- Names of places and of others, which may be the same.
    spared text[] := ARRAY['erasure', 'cluster', 'parish', 'church', 'person', 'app_user', 'user_token', 'audit'];
    -- Where people are called by their surnames.
    spoken text[] := ARRAY[
        'mass.note', 'mass.intention', 'pattern.note', 'piece.owner', 'piece.condition', 'piece.place',
        'occupation.reason', 'asking.rider', 'asking.asked_by', 'asking.changed_by', 'consent.answered_by',
        'accepted_step.person', 'accepted_step.accepted_by', 'movement.carrier', 'applied_remedy.about',
        'applied_remedy.title', 'applied_remedy.sentence', 'applied_remedy.deed', 'plan.progress',
        'plan.result', 'plan.replaced', 'plan.failure', 'plan_basis.facts'];
BEGIN
    PERFORM take_out(NEW.cluster_id, spared, NULL, NEW.names, 'i');
    PERFORM take_out(NEW.cluster_id, spared, spoken, NEW.surnames, 'c');
    UPDATE user_token SET name = left(regexp_replace(name, words_pattern(NEW.names), 'somebody', 'gi'), 100)
    WHERE cluster_id = NEW.cluster_id AND words_pattern(NEW.names) IS NOT NULL;
    -- Taking names out was written down as well, with the names; so the history comes last.
    PERFORM take_out(NEW.cluster_id, ARRAY[]::text[], ARRAY['audit.before', 'audit.after'], NEW.names, 'i');
    PERFORM take_out(NEW.cluster_id, ARRAY[]::text[], ARRAY['audit.before', 'audit.after'], NEW.surnames, 'c');
    DELETE FROM audit
    WHERE cluster_id = NEW.cluster_id AND at >= now() AND deed = 'changed' AND before = after;
    NEW.names := '{}';
    NEW.surnames := '{}';
    RETURN NEW;
END
$$;
CREATE TRIGGER carry_out_erasure BEFORE INSERT ON erasure FOR EACH ROW EXECUTE FUNCTION carry_out_erasure();
REVOKE ALL ON FUNCTION take_out(uuid, text[], text[], text[], text) FROM PUBLIC;
