-- That somebody was written to about what is overdue, so that nobody is for the same day twice.
CREATE TABLE overdue_mail (
  cluster_id uuid NOT NULL,
  id         uuid NOT NULL,
  sending_id uuid NOT NULL,
  day        date NOT NULL,
  PRIMARY KEY (cluster_id, id),
  FOREIGN KEY (cluster_id, sending_id) REFERENCES sending (cluster_id, id) ON DELETE CASCADE,
  CONSTRAINT overdue_mail_once_a_day UNIQUE (cluster_id, sending_id, day)
);
SELECT fence_off('overdue_mail');
