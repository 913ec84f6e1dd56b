-- To know what must be carried is to know where pieces lie, and who drives anyway.
-- A piece lies where it was last worn or carried, until somebody takes it home: the last of its rows
-- before a moment says where, so it must be found at once.
CREATE INDEX occupation_by_piece ON occupation (cluster_id, piece_id, starts) WHERE standing;
CREATE INDEX movement_by_piece ON movement (cluster_id, piece_id, arrive_by);

ALTER TABLE movement ADD COLUMN done boolean;
UPDATE movement SET done = false;
ALTER TABLE movement ALTER COLUMN done SET NOT NULL;
COMMENT ON COLUMN movement.done IS 'Somebody said that it was made; no plan takes it back';

-- Who is named at two churches on one day can take a piece along, whatever he does there.
ALTER TABLE mass ADD COLUMN named_ids uuid[];
UPDATE mass SET named_ids = '{}';
ALTER TABLE mass ALTER COLUMN named_ids SET NOT NULL;
COMMENT ON COLUMN mass.named_ids IS 'Concelebrants and deacons known by name; they are counted in the numbers of both';
