-- Before a solemnity that does not oblige and has no Vigil Mass no law says whose the evening is.
ALTER TABLE cluster ADD COLUMN open_evening text;
UPDATE cluster SET open_evening = 'solemnity';
ALTER TABLE cluster ALTER COLUMN open_evening SET NOT NULL;
