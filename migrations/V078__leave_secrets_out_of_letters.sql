-- A letter that is of use for a while only, as one that leads to a new password, goes unsent after
-- that. The link itself is in no letter here: it is made in the moment in which the letter leaves.
ALTER TABLE letter ADD COLUMN good_until timestamptz;
COMMENT ON COLUMN letter.good_until IS 'After this it is dropped unsent; NULL for one that is tried as long as any';
