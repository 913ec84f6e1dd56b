-- What leaves its place, for whom, carried by whom, and that it came back. While a piece is out its
-- occupation says when it is due; it stays unavailable past that moment until its return is noted.
ALTER TABLE occupation ADD COLUMN returned_at timestamptz;
COMMENT ON COLUMN occupation.returned_at IS 'When what was out was taken in again; empty while it is awaited';
CREATE INDEX occupation_awaited ON occupation (cluster_id, piece_id)
  WHERE state = 'out' AND standing AND returned_at IS NULL;

-- One row for each time that a set or a piece goes out. It stands when the piece, the Mass or the
-- person is gone: a loan between two parishes is never forgotten.
CREATE TABLE sending (
  cluster_id uuid NOT NULL REFERENCES cluster ON DELETE CASCADE,
  id         uuid NOT NULL,
  item       text NOT NULL,
  church_id  uuid,
  whom       text NOT NULL,
  borrower   text NOT NULL,
  mass_id    uuid,
  went_at    timestamptz NOT NULL,
  due        timestamptz NOT NULL,
  carrier_id uuid,
  signer_id  uuid,
  sent_by    text NOT NULL,
  condition  text NOT NULL,
  version    int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, church_id) REFERENCES church (cluster_id, id),
  FOREIGN KEY (cluster_id, mass_id) REFERENCES mass (cluster_id, id) ON DELETE SET NULL (mass_id),
  FOREIGN KEY (cluster_id, carrier_id) REFERENCES person (cluster_id, id) ON DELETE SET NULL (carrier_id),
  FOREIGN KEY (cluster_id, signer_id) REFERENCES person (cluster_id, id) ON DELETE SET NULL (signer_id),
  CONSTRAINT sending_due_after_it_went CHECK (due > went_at),
  CONSTRAINT sending_to_one_place CHECK ((church_id IS NULL) <> (whom = ''))
);
COMMENT ON COLUMN sending.item IS 'Code of the set or piece, as it was then';
COMMENT ON COLUMN sending.whom IS 'Who has it outside the cluster; empty for a church of the cluster';
COMMENT ON COLUMN sending.borrower IS 'The parish of that church as it was then, or whom';
COMMENT ON COLUMN sending.signer_id IS 'Who signed for it there';
COMMENT ON COLUMN sending.sent_by IS 'Who noted it, as the history of changes knows them';
CREATE INDEX sending_by_time ON sending (cluster_id, went_at);

CREATE TABLE sent_piece (
  cluster_id     uuid NOT NULL,
  id             uuid NOT NULL,
  sending_id     uuid NOT NULL,
  piece_id       uuid,
  code           text NOT NULL,
  what           text NOT NULL,
  owner          text NOT NULL,
  loan           boolean NOT NULL,
  condition_out  text NOT NULL,
  occupation_id  uuid NOT NULL,
  displaced      uuid[] NOT NULL,
  back_at        timestamptz,
  back_id        uuid,
  taker_id       uuid,
  taken_in_by    text NOT NULL,
  condition_back text NOT NULL,
  movement_id    uuid,
  version        int NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, sending_id) REFERENCES sending (cluster_id, id) ON DELETE CASCADE,
  FOREIGN KEY (cluster_id, piece_id) REFERENCES piece (cluster_id, id) ON DELETE SET NULL (piece_id),
  FOREIGN KEY (cluster_id, back_id) REFERENCES church (cluster_id, id),
  FOREIGN KEY (cluster_id, taker_id) REFERENCES person (cluster_id, id) ON DELETE SET NULL (taker_id),
  CONSTRAINT sent_piece_back_somewhere CHECK ((back_at IS NULL) = (back_id IS NULL))
);
COMMENT ON COLUMN sent_piece.loan IS 'Whether its owner is another than the borrower: goods belong to the parish that acquired them (CIC 1256), and each parish is a juridic person (CIC 515 §3)';
COMMENT ON COLUMN sent_piece.displaced IS 'Occupations that stand no longer since it went, for an undo';
COMMENT ON COLUMN sent_piece.back_id IS 'The church where it was taken in';
COMMENT ON COLUMN sent_piece.taken_in_by IS 'Who noted the return, as the history of changes knows them; empty until then';
COMMENT ON COLUMN sent_piece.movement_id IS 'The carriage that the return noted, for an undo; empty if it made none';
CREATE INDEX sent_piece_by_piece ON sent_piece (cluster_id, piece_id);
CREATE INDEX sent_piece_by_sending ON sent_piece (cluster_id, sending_id);

DO $$
DECLARE
    entered text;
BEGIN
    FOREACH entered IN ARRAY ARRAY['sending', 'sent_piece'] LOOP
        PERFORM fence_off(entered);
        EXECUTE format(
            'CREATE TRIGGER keep_change AFTER INSERT OR UPDATE OR DELETE ON %I '
            || 'FOR EACH ROW EXECUTE FUNCTION keep_change()', entered);
        EXECUTE format(
            'CREATE TRIGGER announce_change AFTER INSERT OR UPDATE OR DELETE ON %I '
            || 'FOR EACH ROW EXECUTE FUNCTION announce_change()', entered);
    END LOOP;
END
$$;
