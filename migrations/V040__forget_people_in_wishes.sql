-- Words to whoever keeps what is asked for speak of people by their surnames, which are taken out
-- with a person who is removed for good. It runs before carry_out_erasure, which forgets the names
-- that it was told; triggers run in the order of theirs (PostgreSQL documentation, 37.1).
CREATE FUNCTION also_forget_in_wishes() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    PERFORM take_out(NEW.cluster_id, ARRAY[]::text[], ARRAY['wish.note', 'wish.answer'], NEW.surnames, 'c');
    RETURN NEW;
END
$$;
CREATE TRIGGER also_forget_in_wishes BEFORE INSERT ON erasure
  FOR EACH ROW EXECUTE FUNCTION also_forget_in_wishes();
