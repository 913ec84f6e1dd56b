-- A program that keeps calendars can send nothing but an address: the key in it opens feeds, which
-- are read, and nothing else.
ALTER TABLE user_token ADD COLUMN feed boolean NOT NULL DEFAULT false;
ALTER TABLE user_token ADD CONSTRAINT user_token_feed_looks_only CHECK (looks_only OR NOT feed);
