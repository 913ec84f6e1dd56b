-- What is wrong with a piece, and when it was promised back: while nobody has said that it is back,
-- it is away, whatever was promised.
ALTER TABLE occupation
  ADD COLUMN care_kind text NOT NULL DEFAULT 'other'
    CHECK (care_kind IN ('mending', 'cleaner', 'stain', 'missing-button', 'missing', 'other')),
  ADD COLUMN awaited   boolean NOT NULL DEFAULT false,
  ADD COLUMN promised  timestamptz;
UPDATE occupation SET promised = ends WHERE state = 'care' AND lending_id IS NULL;
COMMENT ON COLUMN occupation.awaited IS 'In care until somebody says that it is back, even past its end';
COMMENT ON COLUMN occupation.promised IS 'When care was to be over, as it was said; stays when it is over earlier';

-- What an inventory says of each thing: CIC 1283, 2 asks for a description; its value is kept apart.
ALTER TABLE piece
  ADD COLUMN description      text NOT NULL DEFAULT '',
  ADD COLUMN provenance       text NOT NULL DEFAULT '',
  ADD COLUMN acquired         text NOT NULL DEFAULT '',
  ADD COLUMN precious         boolean NOT NULL DEFAULT false,
  ADD COLUMN keeper           text NOT NULL DEFAULT '',
  ADD COLUMN withdrawn_on     date,
  ADD COLUMN withdrawn_reason text NOT NULL DEFAULT '',
  ADD COLUMN withdrawn_to     text NOT NULL DEFAULT '';
COMMENT ON COLUMN piece.provenance IS 'Its maker, and by whose gift it came; may name people';
COMMENT ON COLUMN piece.keeper IS 'Who keeps it where that is not the sacristy of its church';
COMMENT ON COLUMN piece.withdrawn_on IS 'Since when it is out of use for good; its history stays';

-- Givers and keepers are people. Their surnames are taken out before what V033 does, which cleans the
-- history of it at the end.
CREATE FUNCTION carry_erasure_into_pieces() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
BEGIN
    PERFORM take_out(NEW.cluster_id, ARRAY[]::text[], ARRAY[
        'piece.description', 'piece.provenance', 'piece.keeper', 'piece.withdrawn_reason',
        'piece.withdrawn_to', 'piece_value.basis', 'stocktake_line.note', 'stocktake_line.settled'], NEW.surnames, 'c');
    RETURN NEW;
END
$$;
-- Triggers fire in the order of their names: this one comes before carry_out_erasure.
CREATE TRIGGER carry_erasure_into_pieces BEFORE INSERT ON erasure
  FOR EACH ROW EXECUTE FUNCTION carry_erasure_into_pieces();

-- What a piece is worth is for those who answer for the goods, so that no general list or history has
-- it: a table of its own, in which every valuation stays.
CREATE TABLE piece_value (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  piece_id   uuid NOT NULL,
  amount     numeric(12, 2) NOT NULL CHECK (amount >= 0),
  currency   text NOT NULL CHECK (currency ~ '^[A-Z]{3}$'),
  basis      text NOT NULL,
  valued_at  timestamptz NOT NULL,
  visitor    text NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, piece_id) REFERENCES piece (cluster_id, id) ON DELETE CASCADE
);
COMMENT ON COLUMN piece_value.basis IS 'Whose estimate it is, or what it was bought for';
CREATE INDEX piece_value_by_piece ON piece_value (cluster_id, piece_id, valued_at);
SELECT fence_off('piece_value');
