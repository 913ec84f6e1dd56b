-- Servers, readers, the newly ordained, a bishop who is not in the list of people, and what a
-- procession adds: without them a Mass does not say all that it needs.
ALTER TABLE mass ADD COLUMN bishop boolean, ADD COLUMN ministers jsonb, ADD COLUMN also text[];
UPDATE mass SET bishop = false, ministers = '[]', also = '{}';
ALTER TABLE mass
  ALTER COLUMN bishop SET NOT NULL,
  ALTER COLUMN ministers SET NOT NULL,
  ALTER COLUMN also SET NOT NULL;

ALTER TABLE pattern ADD COLUMN ministers jsonb;
UPDATE pattern SET ministers = '[]';
ALTER TABLE pattern ALTER COLUMN ministers SET NOT NULL;

ALTER TABLE cluster ADD COLUMN count_albs boolean, ADD COLUMN pontificals boolean;
UPDATE cluster SET count_albs = true, pontificals = false;
ALTER TABLE cluster
  ALTER COLUMN count_albs SET NOT NULL,
  ALTER COLUMN pontificals SET NOT NULL;
